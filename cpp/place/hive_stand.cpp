// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/hive_stand.h"

#include "place/fix.h"
#include "place/geometry.h"
#include "place/yards.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace halfcup::place {

namespace {

Place placeOf(const records::Position& position) {
    return {position.latitudeDeg, position.longitudeDeg};
}

/// The radius to reckon with.
double accuracyOf(const records::Position& position) {
    const double said = position.accuracyM.value_or(0.0);
    return std::isfinite(said) && said > 0.0 ? std::max(said, kBestAccuracyM) : kUnknownAccuracyM;
}

bool canWeigh(const records::Position& position) {
    return isPlace(placeOf(position)) && accuracyOf(position) <= kHopelessAccuracyM;
}

/// The mean of those that lie within reach of the origin.
std::optional<SampledStand> meanAround(const Place& origin, std::span<const records::Position> positions,
                                       double reachM) {
    SampledStand mean;
    double weights = 0.0;
    for (const records::Position& position : positions) {
        const double accuracyM = accuracyOf(position);
        if (!canWeigh(position) || distanceM(origin, placeOf(position)) > reachM + accuracyM)
            continue;
        const Offset offset = offsetFrom(origin, placeOf(position));
        const double weight = 1.0 / (accuracyM * accuracyM);
        mean.stand.eastM += weight * offset.eastM;
        mean.stand.northM += weight * offset.northM;
        weights += weight;
        ++mean.used;
    }
    if (mean.used == 0)
        return std::nullopt;
    mean.stand.eastM /= weights;
    mean.stand.northM /= weights;
    mean.accuracyM = 1.0 / std::sqrt(weights);
    return mean;
}

} // namespace

std::optional<records::Position> meanPosition(std::span<const records::Position> positions) {
    const auto first = std::ranges::find_if(positions, canWeigh);
    if (first == positions.end())
        return std::nullopt;
    const Place origin = placeOf(*first);
    const auto mean = meanAround(origin, positions, std::numeric_limits<double>::infinity());
    if (!mean)
        return std::nullopt;
    const Place place = placeAt(origin, {mean->stand.eastM, mean->stand.northM});
    return records::Position{place.latitudeDeg, place.longitudeDeg, mean->accuracyM};
}

std::optional<SampledStand> standFromPositions(std::span<const records::Position> positions,
                                               const records::Position& origin, double reachM) {
    if (!isPlace(placeOf(origin)))
        return std::nullopt;
    return meanAround(placeOf(origin), positions,
                      std::isfinite(reachM) && reachM > 0.0 ? reachM : kYardReachM);
}

std::vector<HiveStand> hiveStands(const records::Yard& yard, std::span<const records::Colony> colonies,
                                  std::span<const records::Sample> samples) {
    std::map<records::RecordId, std::vector<records::Position>> taken;
    std::vector<records::Position> all;
    for (const records::Sample& sample : samples)
        if (sample.yardId == yard.id && !sample.removed &&
            sample.stamp.state == records::PositionState::Stamped) {
            taken[sample.colonyId].push_back(sample.stamp.position);
            all.push_back(sample.stamp.position);
        }
    const std::optional<records::Position> origin = yard.position ? yard.position : meanPosition(all);
    std::vector<HiveStand> stands;
    for (const records::Colony& colony : colonies) {
        if (colony.stand && std::isfinite(colony.stand->eastM) && std::isfinite(colony.stand->northM)) {
            stands.push_back({colony.id, *colony.stand});
            continue;
        }
        const auto found = taken.find(colony.id);
        if (!origin || found == taken.end())
            continue;
        if (const auto mean = standFromPositions(found->second, *origin, yard.reachM))
            stands.push_back({colony.id, mean->stand, true, mean->accuracyM, mean->used});
    }
    return stands;
}

} // namespace halfcup::place
