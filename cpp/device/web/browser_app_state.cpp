// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_app_state.h"

#include "device/web/browser.h"
#include "device/web/listeners.h"

namespace halfcup::device {

BrowserAppState::BrowserAppState(QObject* parent)
    : AppState(parent) {
    listen(halfcupOnSeen, this, &BrowserAppState::look);
}

void BrowserAppState::look() {
    const bool inFront = halfcupIsSeen() != 0;
    if (inFront == m_inFront)
        return;
    m_inFront = inFront;
    if (inFront)
        Q_EMIT cameBack();
    else
        Q_EMIT wentAway();
}

} // namespace halfcup::device
