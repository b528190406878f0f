// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/shifted_clock.h"

#include <utility>

namespace halfcup::device {

ShiftedClock::ShiftedClock(std::unique_ptr<Clock> real, std::int64_t startUtcMs)
    : m_real(std::move(real))
    , m_shiftMs(startUtcMs - m_real->now().utcMs) {}

ClockReading ShiftedClock::now() const {
    ClockReading reading = m_real->now();
    reading.utcMs += m_shiftMs;
    return reading;
}

int ShiftedClock::utcOffsetMinutes(std::int64_t utcMs) const {
    return m_real->utcOffsetMinutes(utcMs);
}

} // namespace halfcup::device
