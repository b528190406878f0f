// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_insets.h"

#include "device/web/browser.h"
#include "device/web/listeners.h"

namespace halfcup::device {

void BrowserInsets::watch(QWindow*) {
    listen(halfcupOnResized, this, &BrowserInsets::look);
    look();
}

void BrowserInsets::look() {
    double found[4] = {0, 0, 0, 0};
    halfcupInsets(found);
    const Insets insets{found[0], found[1], found[2], found[3]};
    if (insets == m_insets)
        return;
    m_insets = insets;
    Q_EMIT changed();
}

} // namespace halfcup::device
