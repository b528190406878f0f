// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/fix.h"

#include <cmath>
#include <limits>

namespace halfcup::place {

FixVerdict judge(const Fix& fix, std::int64_t nowUtcMs) {
    if (!std::isfinite(fix.latitudeDeg) || !std::isfinite(fix.longitudeDeg))
        return FixVerdict::NoCoordinates;
    if (std::abs(fix.latitudeDeg) > 90.0 || std::abs(fix.longitudeDeg) > 180.0)
        return FixVerdict::OutOfRange;
    if (fix.latitudeDeg == 0.0 && fix.longitudeDeg == 0.0)
        return FixVerdict::NullIsland;
    if (effectiveAccuracyM(fix) > kHopelessAccuracyM)
        return FixVerdict::TooCoarse;
    if (ageMs(fix.takenAtUtcMs, nowUtcMs) > kStaleAfterMs)
        return FixVerdict::Stale;
    return FixVerdict::Usable;
}

const char* wordsFor(FixVerdict verdict) {
    switch (verdict) {
    case FixVerdict::Usable:
        return "usable";
    case FixVerdict::NoCoordinates:
        return "no coordinates";
    case FixVerdict::OutOfRange:
        return "coordinates that do not exist";
    case FixVerdict::NullIsland:
        return "latitude and longitude both zero";
    case FixVerdict::TooCoarse:
        return "too coarse";
    case FixVerdict::Stale:
        return "too old";
    }
    return "unknown";
}

double effectiveAccuracyM(const Fix& fix) {
    if (!fix.accuracyM || std::isnan(*fix.accuracyM) || *fix.accuracyM <= 0.0)
        return kUnknownAccuracyM;
    return std::fmax(*fix.accuracyM, kBestAccuracyM);
}

std::int64_t ageMs(std::int64_t takenAtUtcMs, std::int64_t nowUtcMs) {
    if (takenAtUtcMs >= nowUtcMs)
        return 0;
    // Unsigned arithmetic holds every difference of two signed numbers.
    const std::uint64_t age = static_cast<std::uint64_t>(nowUtcMs) - static_cast<std::uint64_t>(takenAtUtcMs);
    constexpr auto most = std::numeric_limits<std::int64_t>::max();
    return age > static_cast<std::uint64_t>(most) ? most : static_cast<std::int64_t>(age);
}

std::int64_t resolveTakenAtUtcMs(std::int64_t arrivedUtcMs, std::optional<std::int64_t> receiverUtcMs,
                                 ReceiverClock clock) {
    if (!receiverUtcMs || *receiverUtcMs > arrivedUtcMs)
        return arrivedUtcMs;
    constexpr std::int64_t plausibleLagMs = 10'000;
    if (clock == ReceiverClock::Foreign && ageMs(*receiverUtcMs, arrivedUtcMs) > plausibleLagMs)
        return arrivedUtcMs;
    return *receiverUtcMs;
}

double widenTo95(double radius68M) {
    return radius68M * std::sqrt(std::log(0.05) / std::log(0.32));
}

} // namespace halfcup::place
