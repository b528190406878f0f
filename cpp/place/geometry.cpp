// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace halfcup::place {

namespace {

constexpr double kRadPerDeg = std::numbers::pi / 180.0;

double sinSquaredOfHalf(double angleRad) {
    const double s = std::sin(angleRad / 2.0);
    return s * s;
}

} // namespace

bool isPlace(const Place& place) {
    return std::abs(place.latitudeDeg) <= 90.0 && std::abs(place.longitudeDeg) <= 180.0 &&
           !(place.latitudeDeg == 0.0 && place.longitudeDeg == 0.0);
}

double distanceM(const Place& from, const Place& to) {
    const double lat1 = from.latitudeDeg * kRadPerDeg;
    const double lat2 = to.latitudeDeg * kRadPerDeg;
    // Not the law of cosines: that loses all its digits below some metres, and metres are what counts here.
    const double h = sinSquaredOfHalf(lat2 - lat1) +
                     std::cos(lat1) * std::cos(lat2) *
                         sinSquaredOfHalf((to.longitudeDeg - from.longitudeDeg) * kRadPerDeg);
    if (!std::isfinite(h))
        return std::nan("");
    return 2.0 * kEarthRadiusM * std::asin(std::sqrt(std::clamp(h, 0.0, 1.0)));
}

Offset offsetFrom(const Place& origin, const Place& to) {
    const double lat1 = origin.latitudeDeg * kRadPerDeg;
    const double lat2 = to.latitudeDeg * kRadPerDeg;
    const double dLon = (to.longitudeDeg - origin.longitudeDeg) * kRadPerDeg;
    const double east = std::sin(dLon) * std::cos(lat2);
    // cos(lat1) sin(lat2) - sin(lat1) cos(lat2) cos(dLon), written so that near places keep their digits.
    const double north =
        std::sin(lat2 - lat1) + 2.0 * std::sin(lat1) * std::cos(lat2) * sinSquaredOfHalf(dLon);
    const double length = std::hypot(east, north);
    if (!(length > 0.0))
        return {};
    const double distance = distanceM(origin, to);
    return {distance * east / length, distance * north / length};
}

Place placeAt(const Place& origin, const Offset& offset) {
    const double distance = std::hypot(offset.eastM, offset.northM);
    if (!(distance > 0.0))
        return origin;
    const double lat1 = origin.latitudeDeg * kRadPerDeg;
    const double angle = distance / kEarthRadiusM;
    const double eastShare = offset.eastM / distance;
    const double northShare = offset.northM / distance;
    // The place as a vector: up along the Earth's axis, along the meridian of the origin, and east. Latitude
    // from all three, because an arc sine alone is good for centimetres only beside a pole.
    const double up = std::sin(lat1) * std::cos(angle) + std::cos(lat1) * std::sin(angle) * northShare;
    const double along = std::cos(lat1) * std::cos(angle) - std::sin(lat1) * std::sin(angle) * northShare;
    const double east = eastShare * std::sin(angle);
    const double lat2 = std::atan2(up, std::hypot(along, east));
    const double dLon = std::atan2(east, along);
    const double longitude = origin.longitudeDeg + dLon / kRadPerDeg;
    return {lat2 / kRadPerDeg, std::remainder(longitude, 360.0)};
}

} // namespace halfcup::place
