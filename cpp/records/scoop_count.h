// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/scoop.h"
#include "records/fields.h"
#include "records/record_id.h"
#include "records/scoop.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>

namespace halfcup::records {

/// One scoop whose bees the keeper counted one by one. Half a cup is 300, 350 or 400 bees depending on whom
/// you ask; the keeper's own counted scoops settle it for the keeper's own hand.
struct ScoopCount {
    RecordId id;
    RecordId sampleId; // the wash whose bees were counted; may be empty
    double volumeMl = halfCupMl;
    Packing packing = Packing::Loose;
    double bees = 0;              // counted, a whole number
    std::int64_t countedAtMs = 0; // UTC
    bool odd = false;             // the app asked whether this can be right, and the keeper said yes
    bool demo = false;
    bool removed = false;
};

/// Scoops count for each other where they were filled alike: same packing, volume within this share.
inline constexpr double alikeVolume = 0.02; // [convention]

/// Bees in a millilitre by the book, for bees as they fell in and for bees rapped down: the handbook's
/// figures, handed in because the handbook stands beside this layer.
struct BookDensity {
    double loosePerMl = mites::kBeesPerHalfCup / mites::kHalfCupMl;
    double settledPerMl = 3.0; // handbook bees-per-ml-settled

    [[nodiscard]] double of(Packing packing) const {
        return packing == Packing::Settled ? settledPerMl : loosePerMl;
    }
};

/// What the keeper's own scoops of this kind say, over the book's figure as where they start (mites/scoop.h).
/// With none: nothing, the book alone speaks. Removed ones and those of other volumes or packings are left
/// out; odd ones the keeper stood by count in full.
[[nodiscard]] std::optional<mites::BeesInScoop> ownScoops(std::span<const ScoopCount> counts, double volumeMl,
                                                          Packing packing, const BookDensity& book = {});

/// How many of them count for such a scoop.
[[nodiscard]] int scoopsAlike(std::span<const ScoopCount> counts, double volumeMl, Packing packing);

/// True where a count is so far from what this scoop is expected to hold, by the keeper's other scoops or the
/// book, that a slip is likelier: beyond four standard deviations of ln(bees) [convention]. It is then asked
/// about, never dropped.
[[nodiscard]] bool isOdd(double bees, std::span<const ScoopCount> others, double volumeMl, Packing packing,
                         const BookDensity& book = {});

[[nodiscard]] Fields toFields(const ScoopCount& count);
[[nodiscard]] ScoopCount scoopCountFrom(const RecordId& id, const Fields& fields);

} // namespace halfcup::records
