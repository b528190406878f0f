// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/yards.h"

#include "place/geometry.h"

#include <algorithm>
#include <cmath>

namespace halfcup::place {

namespace {

struct Candidate {
    NearYard yard;
    double reachM;
};

std::vector<Candidate> nearestFirst(const Place& here, std::span<const YardPlace> yards) {
    std::vector<Candidate> found;
    for (const YardPlace& yard : yards) {
        const Place place{yard.latitudeDeg, yard.longitudeDeg};
        if (!isPlace(place))
            continue;
        const bool ownReach = std::isfinite(yard.reachM) && yard.reachM > 0.0;
        found.push_back({{yard.id, distanceM(here, place)}, ownReach ? yard.reachM : kYardReachM});
    }
    // Yards at one and the same place keep the order they came in.
    std::stable_sort(found.begin(), found.end(), [](const Candidate& a, const Candidate& b) {
        return a.yard.distanceM < b.yard.distanceM;
    });
    return found;
}

} // namespace

YardAnswer recogniseYard(const Stamp& stamp, std::span<const YardPlace> yards) {
    const Place here{stamp.latitudeDeg, stamp.longitudeDeg};
    if (!isPlace(here))
        return NoYard{};
    const bool knownAccuracy = std::isfinite(stamp.accuracyM) && stamp.accuracyM > 0.0;
    const double accuracyM = knownAccuracy ? stamp.accuracyM : kUnknownAccuracyM;

    const std::vector<Candidate> all = nearestFirst(here, yards);
    std::vector<Candidate> within;
    std::copy_if(all.begin(), all.end(), std::back_inserter(within),
                 [&](const Candidate& c) { return c.yard.distanceM <= c.reachM + accuracyM; });
    if (within.empty()) {
        if (all.empty())
            return NoYard{};
        return NoYard{all.front().yard};
    }

    const Candidate& nearest = within.front();
    Ambiguous cannotTell;
    for (const Candidate& c : within) {
        const double toHalfWayM = (c.yard.distanceM - nearest.yard.distanceM) / 2.0;
        if (toHalfWayM <= accuracyM + kYardPlaceErrorM)
            cannotTell.yards.push_back(c.yard);
    }
    const bool tooCoarse = accuracyM > nearest.reachM;
    if (cannotTell.yards.size() > 1 || tooCoarse)
        return cannotTell;
    return Here{nearest.yard.id, nearest.yard.distanceM};
}

double distanceM(double fromLatitudeDeg, double fromLongitudeDeg, double toLatitudeDeg,
                 double toLongitudeDeg) {
    return distanceM(Place{fromLatitudeDeg, fromLongitudeDeg}, Place{toLatitudeDeg, toLongitudeDeg});
}

} // namespace halfcup::place
