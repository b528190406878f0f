// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <string>

namespace halfcup::device {

/// One look at every clock of the phone, taken together.
///
/// Three clocks, because each lies in its own way: the wall clock is set by people and networks and jumps;
/// the monotonic clock of most systems stands still while the phone sleeps; the boot-time clock does neither,
/// but starts anew with the phone. A stretch of time (a shake, a settle) is measured on bootMs and is good
/// only while bootId is the same; a date is taken from utcMs.
struct ClockReading {
    /// Milliseconds since the phone was started, sleep included (CLOCK_BOOTTIME). Never goes back within one
    /// bootId. Where a system has no such clock, the implementation says what it uses instead.
    std::int64_t bootMs = 0;
    /// Milliseconds on the monotonic clock, sleep not included. bootMs minus monotonicMs grows by exactly the
    /// time slept, which is how a page can say "the phone slept for 3 min".
    std::int64_t monotonicMs = 0;
    /// Milliseconds since 1970-01-01 00:00 UTC; may jump either way.
    std::int64_t utcMs = 0;
    /// Changes with every start of the phone; empty where the system does not tell (then no two readings of
    /// different runs of the program may be compared on bootMs).
    std::string bootId;
};

/// Time as the program sees it. Every class that needs the time takes one of these in its constructor.
/// Readings do not fail. May be called from any thread.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual ClockReading now() const = 0;
    /// Minutes to add to UTC for the local wall time at the moment utcMs (positive east of Greenwich), with
    /// the daylight saving in force at that moment.
    [[nodiscard]] virtual int utcOffsetMinutes(std::int64_t utcMs) const = 0;
};

} // namespace halfcup::device
