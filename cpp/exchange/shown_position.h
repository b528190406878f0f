// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "records/yard.h"

#include <optional>

namespace halfcup::exchange {

/// Positions of yards are worth stealing. Blurred: rounded to 0.01 degree, about 1 km.
enum class PositionDetail { Blurred, Exact };

/// A place as a file shows it.
struct ShownPosition {
    double latitudeDeg = 0; // WGS 84, already rounded to the decimals
    double longitudeDeg = 0;
    int decimals = 6; // 6 is 0.1 m
    /// 95 % radius, metres; of a blurred place with that of the blurring added, rounded up to whole metres.
    std::optional<double> accuracyM;
    bool exact = false; // "exact", else "blurred"
};

/// A yard's place.
[[nodiscard]] ShownPosition shownPosition(const records::Position& position, PositionDetail detail);

/// A sample's place; nothing where it was not stamped. Blurred samples show the yard's place, where it is
/// known, in place of the scoop's: so many washes of one yard do not add up to a sharper place than one does.
[[nodiscard]] std::optional<ShownPosition> shownPosition(const records::PositionStamp& stamp,
                                                         const std::optional<records::Position>& yardPosition,
                                                         PositionDetail detail);

} // namespace halfcup::exchange
