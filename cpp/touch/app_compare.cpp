// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

namespace halfcup::touch {

void App::wireCompare() {
    connect(&m_here, &HereController::compareWanted, this, [this](const QString& yardId) {
        if (m_compare.show(yardId))
            m_navigator.open(Navigator::Compare);
    });
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        if (m_navigator.page() == Navigator::Compare)
            m_compare.refresh();
    });
}

} // namespace halfcup::touch
