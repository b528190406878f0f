// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "records/yard.h"

#include <optional>
#include <span>
#include <vector>

// Where a hive stands, from the positions that its samples were stamped with. Pure C++.

namespace halfcup::place {

// The mean of the positions, weighted by 1 / accuracy^2, where accuracy is not believed to be better than
// kBestAccuracyM and is kUnknownAccuracyM where it is not known. Metres are laid out flat around the first
// usable one, so the antimeridian and the poles are places like any other. accuracyM of the mean is
// 1 / sqrt(sum of weights), because a hive is washed on different days and their errors do not hang together
// [convention]. Nothing where no position is usable: not finite, out of range, exactly 0/0, or coarser than
// kHopelessAccuracyM.
[[nodiscard]] std::optional<records::Position> meanPosition(std::span<const records::Position> positions);

// A hive on the plan of its yard.
struct SampledStand {
    records::Stand stand;   // metres east and north of the origin
    double accuracyM = 0.0; // 95 % radius
    int used = 0;           // positions that went into it
};

// The mean of the positions as metres from the origin (the yard's position). Positions further from it than
// reachM and their own accuracy together are left out: the hive stood elsewhere then, or the receiver was
// wrong. reachM that is NaN, zero or negative counts as kYardReachM. Nothing where the origin is no place or
// no position is usable.
[[nodiscard]] std::optional<SampledStand> standFromPositions(std::span<const records::Position> positions,
                                                             const records::Position& origin, double reachM);

// A colony with a place on the plan of its yard.
struct HiveStand {
    records::RecordId colonyId;
    records::Stand stand;
    bool fromPositions = false; // else the keeper put it there
    double accuracyM = 0.0;     // from positions: 95 % radius
    int used = 0;               // positions that went into it
};

// Those of the colonies that have a place, in their order: where the keeper put them, else by the positions
// of their samples that were taken in this yard and are not removed. Where the yard has no position, the mean
// of all those positions is the origin. A stand that is not finite counts as none.
[[nodiscard]] std::vector<HiveStand> hiveStands(const records::Yard& yard,
                                                std::span<const records::Colony> colonies,
                                                std::span<const records::Sample> samples);

} // namespace halfcup::place
