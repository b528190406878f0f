// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/stamp.h"

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

// Which yard is this? Pure C++.

namespace halfcup::place {

// How far a yard reaches from the place recorded for it, unless the keeper says otherwise [convention: a row
// of hives, the car beside it and the error of the recorded place].
inline constexpr double kYardReachM = 150.0;
// How far the recorded place of a yard may be off [convention: two phone fixes, and the yard has a length].
inline constexpr double kYardPlaceErrorM = 10.0;

// What place needs to know of a yard. A yard whose coordinates are NaN, out of range or exactly 0/0 is left
// out.
struct YardPlace {
    std::string id;
    std::string name;
    double latitudeDeg = 0.0;
    double longitudeDeg = 0.0;
    double reachM = kYardReachM; // NaN, zero or negative: kYardReachM
};

struct NearYard {
    std::string id;
    double distanceM = 0.0;
};

// This yard and no other.
struct Here {
    std::string id;
    double distanceM = 0.0;
};
// Cannot tell: ask which, nearest first. One entry alone means "probably this one, but the position is too
// coarse to be sure": ask that too.
struct Ambiguous {
    std::vector<NearYard> yards;
};
// No yard within reach: offer to make one here; the nearest is named where there is any.
struct NoYard {
    std::optional<NearYard> nearest;
};
using YardAnswer = std::variant<Here, Ambiguous, NoYard>;

// A yard is within reach if its distance is at most its reach plus the stamp's accuracy. Of several, the
// nearest is Here only if a line half way between it and the next lies further off than the stamp's accuracy
// and kYardPlaceErrorM together: (d2 - d1) / 2 > accuracy + 10 m. Otherwise Ambiguous holds all that cannot
// be told from the nearest. A stamp coarser than the yard's own reach is never sure of it.
[[nodiscard]] YardAnswer recogniseYard(const Stamp& stamp, std::span<const YardPlace> yards);

// Great-circle distance in metres (haversine, mean Earth radius 6 371 008.8 m of IUGG; within 0.6 % of the
// ellipsoid, right across the antimeridian and at the poles). NaN for coordinates that are not finite.
[[nodiscard]] double distanceM(double fromLatitudeDeg, double fromLongitudeDeg, double toLatitudeDeg,
                               double toLongitudeDeg);

} // namespace halfcup::place
