// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/navigator.h"

namespace halfcup::touch {

void Navigator::open(Page page) {
    if (page == m_trail.last())
        return;
    m_trail.append(page);
    emit pageChanged();
}

void Navigator::replace(Page page) {
    if (m_trail.size() > 1)
        m_trail.removeLast();
    if (page != m_trail.last())
        m_trail.append(page);
    emit pageChanged();
}

void Navigator::home() {
    if (m_trail.size() == 1)
        return;
    m_trail = {Here};
    emit pageChanged();
}

void Navigator::back() {
    if (m_trail.size() == 1)
        return;
    m_trail.removeLast();
    emit pageChanged();
}

} // namespace halfcup::touch
