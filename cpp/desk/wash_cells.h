// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The cells several calculators share, read the same way in all of them.
#include "desk/table.h"
#include "mites/scoop.h"

#include <optional>

namespace halfcup::desk {

// Bounds of the cells; they mirror what mites/ takes, so that a slip is told with its column.
inline constexpr Bounds kBeesBounds{0, 1e9, false, false};
inline constexpr Bounds kCvBounds{0, 5, true, false};
inline constexpr Bounds kRecoveryBounds{0, 1, false, false};
inline constexpr Bounds kRecoverySdBounds{0, 0.5, true, false};
inline constexpr Bounds kShapeBounds{0.01, 1e300, true, true};
inline constexpr Bounds kLineBounds{0, 1e9, false, false};

// The half cup nobody counted scoops of.
inline const mites::BeesInScoop& bookScoop() {
    static const mites::BeesInScoop scoop = mites::scoopFromVolume(mites::kHalfCupMl);
    return scoop;
}

// bees and bees_cv where only the scoop's own spread counts, because what all scoops share is given elsewhere
// or cancels.
struct OwnBees {
    double mean, ownCv;
};
inline OwnBees ownBees(const Table& row, std::size_t bees, std::optional<double> ownCv) {
    return {row.number(bees, bookScoop().mean, kBeesBounds), ownCv.value_or(mites::kScoopOwnCv)};
}

} // namespace halfcup::desk
