// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Geometry on the sphere for distances of a yard to those of a globe. Pure C++; angles in degrees, lengths in
// metres.

namespace halfcup::place {

// Mean radius of the Earth, (2 a + b) / 3 of GRS 80 (IUGG 1980).
inline constexpr double kEarthRadiusM = 6'371'008.8;

struct Place {
    double latitudeDeg = 0.0;
    double longitudeDeg = 0.0;
};

// Metres east and north of an origin.
struct Offset {
    double eastM = 0.0;
    double northM = 0.0;
};

// Whether both coordinates are finite and in range, and not exactly 0/0 (what receivers and empty columns say
// when they know nothing; that spot of sea holds no yard).
[[nodiscard]] bool isPlace(const Place& place);

// Great-circle distance, haversine; NaN where a coordinate is not finite.
[[nodiscard]] double distanceM(const Place& from, const Place& to);

// Where `to` lies as seen from `origin`: distance and bearing laid out flat (azimuthal equidistant
// projection), so distances from the origin are true, also over a pole or the antimeridian.
[[nodiscard]] Offset offsetFrom(const Place& origin, const Place& to);

// The inverse: the place at an offset from `origin`; longitude comes out in -180 to 180.
[[nodiscard]] Place placeAt(const Place& origin, const Offset& offset);

} // namespace halfcup::place
