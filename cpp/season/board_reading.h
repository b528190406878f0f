// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "mites/mite_fall.h"
#include "records/colony_state.h"
#include "records/sample.h"
#include "season/phrase.h"

#include <span>
#include <vector>

/// What a sticky board says: first in mites a day, held against the handbook's lines for that month; and,
/// where it honestly can, as mites per 100 bees, with a range that is wide on purpose.
namespace halfcup::season {

/// What a board's reading depends on besides its count.
struct BoardContext {
    int month = 7;                                   // 1 to 12, of the north's year: July is high summer
    records::Brood brood = records::Brood::NotKnown; // as far as what was seen still holds
    std::optional<double> frames;                    // covered with bees, where it was looked at lately
};

[[nodiscard]] BoardContext boardContext(const records::Yard& yard, const records::Colony& colony,
                                        std::span<const records::ColonyEvent> events,
                                        const records::Date& day);

/// The handbook's figures for a board in that month, any-time ones last.
[[nodiscard]] std::vector<const handbook::Entry*> boardLines(int month, const handbook::Handbook& handbook);

/// The lowest of them that says "treat" (not "watch", not for young colonies alone) and is one figure;
/// nullptr where the handbook has none.
[[nodiscard]] const handbook::Entry* boardLine(int month, const handbook::Handbook& handbook);

/// Mites in the colony for one mite a day on the board: the handbook's factor of the season, and half and
/// double of it as its range [own choice, handbook fall-factor-spread].
[[nodiscard]] mites::FallFactor fallFactor(int month, const handbook::Handbook& handbook);

/// Why no load can be read from the board; empty where one can. The factors hold only with brood, and a load
/// needs to know how many bees there are.
[[nodiscard]] Phrase noLoadBecause(const BoardContext& context);

/// What a board of this sample said. Loads: the fall's range times the factor's, times the share of mites on
/// bees (half, 25 to 75 %: handbook share-on-bees and its spread), per bee of the frames covered (1400 a
/// frame, a third more or fewer) [the combination: own choice; ends multiplied, so wider than 90 %]. Throws
/// std::domain_error with a sentence where the hours or the share are not known or cannot be.
[[nodiscard]] records::OtherAnswer boardAnswer(const records::Sample& sample, std::int64_t mites,
                                               const BoardContext& context,
                                               const handbook::Handbook& handbook);

} // namespace halfcup::season
