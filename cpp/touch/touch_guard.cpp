// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/touch_guard.h"

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

bool TouchGuard::counts(const Press& press, double glassWidthMm) {
    if (press.wideMm && *press.wideMm > palmMm)
        return false;
    if (press.atMm.x() < edgeMm || press.atMm.x() > glassWidthMm - edgeMm)
        return false;
    // A clock that was set back makes all before it old.
    std::erase_if(m_lately, [&](const Press& each) {
        return press.atMs - each.atMs > ghostMs || press.atMs < each.atMs;
    });
    const bool ghost = std::ranges::any_of(m_lately, [&](const Press& each) {
        return std::hypot(each.atMm.x() - press.atMm.x(), each.atMm.y() - press.atMm.y()) <= samePointMm;
    });
    m_lately.push_back(press);
    return !ghost;
}

} // namespace halfcup::touch
