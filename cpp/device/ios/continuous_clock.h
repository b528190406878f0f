// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"

namespace halfcup::device {

/// Darwin's clocks, as its manual (clock_gettime, section 3) tells them apart: CLOCK_MONOTONIC_RAW goes on
/// while the phone sleeps and so is bootMs, CLOCK_UPTIME_RAW does not. The name of this start is the kernel's
/// (kern.bootsessionuuid), empty where iOS hides it.
class ContinuousClock final : public Clock {
public:
    ContinuousClock();
    [[nodiscard]] ClockReading now() const override;
    [[nodiscard]] int utcOffsetMinutes(std::int64_t utcMs) const override;

private:
    std::string m_bootId;
};

} // namespace halfcup::device
