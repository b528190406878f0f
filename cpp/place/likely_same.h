// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/yard.h"

#include <optional>
#include <set>
#include <span>
#include <string>
#include <utility>
#include <vector>

// Which yards or colonies may be one, made twice on two phones that had not met? Only a guess to ask the
// keeper about: nothing is ever joined by it. Pure, no clock, no chance: the same records give the same pairs
// in the same order, in whatever order they are handed over.

namespace halfcup::place {

// Two yards this near to each other are asked about, whatever their reach [convention: twice the usual
// reach].
inline constexpr double kLargestSameM = 300.0;

struct LikelyPair {
    records::Kind kind = records::Kind::Yard; // or Colony
    records::RecordId one;                    // the smaller id: the one that was made first
    records::RecordId other;
    bool namedAlike = false;         // of colonies always
    bool near = false;               // yards within the smaller of their reaches, kLargestSameM at most
    std::optional<double> distanceM; // between two yards that both have a position; for the sentence
    bool oneYard = false;            // colonies: both stand in the same yard, not in two that may be one

    friend bool operator==(const LikelyPair&, const LikelyPair&) = default;
};

// Pairs of ids, the smaller first.
using ApartIds = std::set<std::pair<records::RecordId, records::RecordId>>;

// Yards that are named alike or lie near each other; colonies with equal labels that stand in one yard or in
// two of which this says that they may be one. What is removed or joined already, and a demo's record beside
// one that is real, is left out; and so are the pairs that the keeper said are two.
//
// The surest first: yards before colonies; named alike and near, named alike with a position unknown, near
// alone, named alike and far apart; colonies of one yard before those of two. Then the nearer, then by id.
[[nodiscard]] std::vector<LikelyPair> likelySame(std::span<const records::Yard> yards,
                                                 std::span<const records::Colony> colonies,
                                                 const ApartIds& apart = {});

// What is left of a name where neither case, accents' encoding, blanks nor punctuation count: "The Ford!" and
// "the  ford" are alike. Between two figures a gap stays, so that "1-2" is not 12. Empty where nothing is
// left; two of those are not alike. Unicode's case folding and compatibility forms (NFKC) by Qt.
[[nodiscard]] std::u32string comparableName(const std::string& name);

} // namespace halfcup::place
