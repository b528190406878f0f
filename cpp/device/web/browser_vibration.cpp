// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_vibration.h"

#include "device/web/browser.h"

#include <algorithm>

namespace halfcup::device {

void BrowserVibration::buzz(std::chrono::milliseconds length) {
    const auto within = std::min(length, kLongest);
    if (m_on && within.count() >= 1)
        halfcupVibrate(static_cast<int>(within.count()));
}

bool BrowserVibration::works() const {
    return halfcupHasVibration() != 0;
}

} // namespace halfcup::device
