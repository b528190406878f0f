// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_state.h"
#include "season/choices.h"
#include "season/yard_due.h"

#include <span>

/// From what is kept to the question which treatment fits.
namespace halfcup::season {

/// What is known of one colony, or of several at once: supers are on where they are on any of them, brood is
/// capped where it is on any, unknown on one is unknown unless another decides; strength is that of the
/// weakest; courses count that were given to any. Old looks into the hive do not count (below). Forecasts are
/// left empty: nobody keeps them.
[[nodiscard]] Situation situationOf(const records::Yard& yard, std::span<const records::Colony> colonies,
                                    std::span<const records::ColonyEvent> events,
                                    std::span<const GivenTreatment> treatments, const records::Date& from,
                                    const handbook::Handbook& handbook);

/// How long a look into the hive holds, days after it; then the fact counts as not known. A cell is capped 8
/// to 9 days after its egg (textbook, from memory), so a colony without brood may have capped brood after
/// that, and one with open brood sooner. Capped brood holds until something else is seen: it is the cautious
/// answer.
inline constexpr int noBroodHoldsDays = 8;
inline constexpr int openBroodHoldsDays = 2; // [own choice]
inline constexpr int strengthHoldsDays = 60; // [own choice] colonies grow and shrink by a third in that time

/// What was seen of the brood, as far as it still holds on the day; NotKnown where it does not.
[[nodiscard]] records::Brood broodHolding(const records::ColonyState& state, const records::Date& day);

/// 1 to 12: the month, or in the south the one half a year away. A yard without a position counts as north.
[[nodiscard]] int northernMonth(const records::Yard& yard, const records::Date& day);

/// Months in which colonies raise drones: March to August, half a year later in the south: those with drone
/// cells in the season model's usual colony.
[[nodiscard]] bool isDroneSeason(const records::Yard& yard, const records::Date& day);

} // namespace halfcup::season
