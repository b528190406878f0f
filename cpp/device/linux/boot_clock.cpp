// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/linux/boot_clock.h"

#include <QDateTime>

#include <ctime>
#include <fstream>
#include <optional>

namespace halfcup::device {

namespace {

std::optional<std::int64_t> readMs(clockid_t id) {
    timespec ts{};
    if (clock_gettime(id, &ts) != 0) {
        return std::nullopt;
    }
    return static_cast<std::int64_t>(ts.tv_sec) * 1000 + ts.tv_nsec / 1'000'000;
}

std::string readBootId() {
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    std::string id;
    std::getline(file, id);
    return id;
}

} // namespace

BootClock::BootClock()
    : m_bootId(readBootId()) {}

ClockReading BootClock::now() const {
    ClockReading reading;
    reading.bootId = m_bootId;
    // The clocks are read one after the other. If the system takes the processor away in between, the gap
    // would look like a sleep; so read again unless the monotonic clock moved by 1 ms at most meanwhile.
    for (int attempt = 0; attempt < 5; ++attempt) {
        reading.monotonicMs = readMs(CLOCK_MONOTONIC).value_or(0);
        reading.bootMs = readMs(CLOCK_BOOTTIME).value_or(reading.monotonicMs);
        reading.utcMs = readMs(CLOCK_REALTIME).value_or(0);
        if (readMs(CLOCK_MONOTONIC).value_or(0) - reading.monotonicMs <= 1) {
            break;
        }
    }
    return reading;
}

int BootClock::utcOffsetMinutes(std::int64_t utcMs) const {
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(utcMs);
    return local.isValid() ? local.offsetFromUtc() / 60 : 0;
}

} // namespace halfcup::device
