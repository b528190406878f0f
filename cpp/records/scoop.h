// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

namespace halfcup::records {

/// How the bees lie in the scoop: as they fell in (what the trade's half cup of 300 means), or rapped down,
/// which fits more bees into the same cup.
enum class Packing { Loose, Settled };

/// A US half cup in millilitres (118.294, exact to the digits kept).
inline constexpr double halfCupMl = 118.294;

/// Doubt about a figure for the bees of one jar that nobody saw counted: as for one scoop from another, a
/// coefficient of variation [convention].
inline constexpr double typedBeesCv = 0.10;

/// The scoop of a sample: what was filled, and how many bees that is taken to be.
struct Scoop {
    double volumeMl = halfCupMl;
    Packing packing = Packing::Loose;
    /// Bees in the jar and their coefficient of variation, as used for this sample. Set from the book or the
    /// keeper's own counted scoops when the scoop is taken, and kept, so that an old answer stays what it
    /// was.
    double beesMean = 0;
    double beesCv = 0;
    /// "book", "own scoops", "typed" or "counted": where beesMean comes from.
    enum class BeesSource { Book, OwnScoops, Typed, Counted } source = BeesSource::Book;
};

} // namespace halfcup::records
