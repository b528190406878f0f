// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"

#include <chrono>
#include <map>

namespace halfcup::device {

/// A clock that stands still until told otherwise. For tests, journeys and the tour.
///
/// The laws it keeps, which are those of a phone:
///   advance(ms)   all three clocks move by ms;
///   suspend(ms)   the phone sleeps: boot time and wall time move by ms, the monotonic clock does not;
///   setUtc(t)     somebody sets the wall clock: nothing else moves, either way;
///   reboot(offMs) the phone is off for offMs: wall time moves, boot and monotonic time start at 0, new
///   bootId.
/// With a speed above 0 it also runs by itself, speed times as fast as real time.
/// One thread only.
class SetClock final : public Clock {
public:
    /// Where a SetClock starts unless told otherwise: 2026-06-15 09:00 UTC, a Monday in the bee season.
    static constexpr std::int64_t kStartUtcMs = 1'781'514'000'000;

    explicit SetClock(std::int64_t utcMs = kStartUtcMs, int offsetMinutes = 0);

    [[nodiscard]] ClockReading now() const override;
    [[nodiscard]] int utcOffsetMinutes(std::int64_t utcMs) const override;

    /// ms must be 0 or more; a negative step is a mistake of the test and throws std::invalid_argument.
    void advance(std::int64_t ms);
    void advance(std::chrono::milliseconds step) { advance(step.count()); }
    void suspend(std::int64_t ms);
    void suspend(std::chrono::milliseconds step) { suspend(step.count()); }
    void setUtc(std::int64_t utcMs);
    void reboot(std::int64_t offMs = 30'000);

    /// 0 (the default) stands still, 1 runs as fast as real time, 60 makes a minute of a second.
    void setSpeed(double speed);

    /// The offset before any change given by setOffsetFrom.
    void setOffset(int minutes);
    /// From utcMs on the offset is minutes: daylight saving begins or ends.
    void setOffsetFrom(std::int64_t utcMs, int minutes);

private:
    void settle();
    [[nodiscard]] std::int64_t ranMs() const;

    ClockReading m_base;
    int m_boots = 1;
    double m_speed = 0.0;
    std::chrono::steady_clock::time_point m_since;
    int m_offsetMinutes;
    std::map<std::int64_t, int> m_offsetFrom;
};

} // namespace halfcup::device
