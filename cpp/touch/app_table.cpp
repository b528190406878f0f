// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

namespace halfcup::touch {

void App::wireTable() {
    connect(&m_table, &ImportController::backWanted, this, [this] { m_navigator.back(); });
    connect(&m_table, &ImportController::homeWanted, this, [this] { m_navigator.home(); });
    connect(&m_table, &ImportController::recordsChanged, &m_here, &HereController::refresh);
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        if (m_navigator.page() == Navigator::ImportTable)
            m_table.begin();
    });
}

} // namespace halfcup::touch
