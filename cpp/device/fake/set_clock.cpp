// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/fake/set_clock.h"

#include <iterator>
#include <stdexcept>

namespace halfcup::device {

namespace {

std::string bootName(int number) {
    return "set-clock-boot-" + std::to_string(number);
}

void mustNotBeNegative(std::int64_t ms) {
    if (ms < 0) {
        throw std::invalid_argument("SetClock: a step of time must not be negative");
    }
}

} // namespace

// The phone has been on for an hour, a minute of which it slept: a program that takes one clock for another
// is found out.
SetClock::SetClock(std::int64_t utcMs, int offsetMinutes)
    : m_base{3'600'000, 3'540'000, utcMs, bootName(1)}
    , m_since(std::chrono::steady_clock::now())
    , m_offsetMinutes(offsetMinutes) {}

std::int64_t SetClock::ranMs() const {
    if (m_speed <= 0.0) {
        return 0;
    }
    const std::chrono::duration<double, std::milli> real = std::chrono::steady_clock::now() - m_since;
    return static_cast<std::int64_t>(real.count() * m_speed);
}

// Brings what ran by itself into the base, so that a change of speed does not rewrite the past.
void SetClock::settle() {
    m_base = now();
    m_since = std::chrono::steady_clock::now();
}

ClockReading SetClock::now() const {
    ClockReading reading = m_base;
    const std::int64_t ran = ranMs();
    reading.bootMs += ran;
    reading.monotonicMs += ran;
    reading.utcMs += ran;
    return reading;
}

int SetClock::utcOffsetMinutes(std::int64_t utcMs) const {
    const auto next = m_offsetFrom.upper_bound(utcMs);
    return next == m_offsetFrom.begin() ? m_offsetMinutes : std::prev(next)->second;
}

void SetClock::advance(std::int64_t ms) {
    mustNotBeNegative(ms);
    settle();
    m_base.bootMs += ms;
    m_base.monotonicMs += ms;
    m_base.utcMs += ms;
}

void SetClock::suspend(std::int64_t ms) {
    mustNotBeNegative(ms);
    settle();
    m_base.bootMs += ms;
    m_base.utcMs += ms;
}

void SetClock::setUtc(std::int64_t utcMs) {
    settle();
    m_base.utcMs = utcMs;
}

void SetClock::reboot(std::int64_t offMs) {
    mustNotBeNegative(offMs);
    settle();
    m_base.bootMs = 0;
    m_base.monotonicMs = 0;
    m_base.utcMs += offMs;
    m_base.bootId = bootName(++m_boots);
}

void SetClock::setSpeed(double speed) {
    if (!(speed >= 0.0)) {
        throw std::invalid_argument("SetClock: a speed must be 0 or more");
    }
    settle();
    m_speed = speed;
}

void SetClock::setOffset(int minutes) {
    m_offsetMinutes = minutes;
}

void SetClock::setOffsetFrom(std::int64_t utcMs, int minutes) {
    m_offsetFrom[utcMs] = minutes;
}

} // namespace halfcup::device
