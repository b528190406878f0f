// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"

namespace halfcup::device {

/// A page is told the wall clock, and a steady clock that starts anew with the page (performance.now()). On
/// most phones the latter stands still while the phone sleeps, so a shake that was slept through reads
/// shorter than it was, never longer. bootId is drawn anew for each loading of the page, for the same reason:
/// two loadings cannot be compared.
class BrowserClock final : public Clock {
public:
    BrowserClock();
    [[nodiscard]] ClockReading now() const override;
    [[nodiscard]] int utcOffsetMinutes(std::int64_t utcMs) const override;

private:
    std::string m_bootId;
};

} // namespace halfcup::device
