// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_clock.h"

#include <QDateTime>
#include <QRandomGenerator>

#include <chrono>

namespace halfcup::device {

BrowserClock::BrowserClock()
    : m_bootId("page-" + std::to_string(QRandomGenerator::system()->generate64())) {}

ClockReading BrowserClock::now() const {
    using namespace std::chrono;
    ClockReading reading;
    reading.monotonicMs = duration_cast<milliseconds>(steady_clock::now().time_since_epoch()).count();
    reading.bootMs = reading.monotonicMs;
    reading.utcMs = duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
    reading.bootId = m_bootId;
    return reading;
}

int BrowserClock::utcOffsetMinutes(std::int64_t utcMs) const {
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(utcMs);
    return local.isValid() ? local.offsetFromUtc() / 60 : 0;
}

} // namespace halfcup::device
