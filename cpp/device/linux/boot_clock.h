// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"

namespace halfcup::device {

/// The clocks of Linux (and of Android, whose kernel is the same): CLOCK_BOOTTIME, CLOCK_MONOTONIC,
/// CLOCK_REALTIME and /proc/sys/kernel/random/boot_id. See clock_gettime(2) and random(4). Where the kernel
/// refuses CLOCK_BOOTTIME (before 2.6.39, some sandboxes) bootMs is the monotonic clock: a sleep then goes
/// unnoticed. Where boot_id cannot be read the id is empty.
class BootClock final : public Clock {
public:
    BootClock();
    [[nodiscard]] ClockReading now() const override;
    /// By the time zone of the system (or TZ). 0 for a moment no calendar has.
    [[nodiscard]] int utcOffsetMinutes(std::int64_t utcMs) const override;

private:
    std::string m_bootId;
};

} // namespace halfcup::device
