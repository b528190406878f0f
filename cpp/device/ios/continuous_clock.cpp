// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/ios/continuous_clock.h"

#include <QDateTime>

#include <ctime>
#include <sys/sysctl.h>

namespace halfcup::device {

namespace {

std::int64_t readMs(clockid_t id) {
    return static_cast<std::int64_t>(clock_gettime_nsec_np(id) / 1'000'000);
}

std::string readBootId() {
    char text[64] = {};
    std::size_t size = sizeof(text) - 1;
    return sysctlbyname("kern.bootsessionuuid", text, &size, nullptr, 0) == 0 ? std::string(text)
                                                                              : std::string();
}

} // namespace

ContinuousClock::ContinuousClock()
    : m_bootId(readBootId()) {}

ClockReading ContinuousClock::now() const {
    ClockReading reading;
    reading.bootId = m_bootId;
    // As in BootClock: read again where the processor was taken away in between, which would look like a
    // sleep.
    for (int attempt = 0; attempt < 5; ++attempt) {
        reading.monotonicMs = readMs(CLOCK_UPTIME_RAW);
        reading.bootMs = readMs(CLOCK_MONOTONIC_RAW);
        reading.utcMs = readMs(CLOCK_REALTIME);
        if (readMs(CLOCK_UPTIME_RAW) - reading.monotonicMs <= 1)
            break;
    }
    return reading;
}

int ContinuousClock::utcOffsetMinutes(std::int64_t utcMs) const {
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(utcMs);
    return local.isValid() ? local.offsetFromUtc() / 60 : 0;
}

} // namespace halfcup::device
