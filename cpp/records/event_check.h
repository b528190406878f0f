// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_state.h"
#include "records/treatment.h"

#include <optional>
#include <span>
#include <vector>

namespace halfcup::records {

/// What is wrong with an event by what is known of its colony. The first group may not be kept; the second is
/// asked about, because the keeper knows better than the records.
enum class EventProblem {
    ImpossibleDay,
    DayInFuture,
    NothingChosen, // of Brood, Floor, Strength: what was seen; of Merged and Moved: with whom, where to
    FramesOutOfRange,
    SameColony, // merged with itself
    SameYard,   // moved to where it stands
    // To be asked about:
    HoneyHeld,   // supers go on inside a treatment's course or withdrawal
    EndedBefore, // the colony is dead, or went into another, on an earlier day
    SaidAlready, // supers on where they are on, off where they are off
    EndsIt,      // dead or merged: it leaves the lists
};
[[nodiscard]] bool isForbidding(EventProblem problem);

/// events: those of the colony so far. treatments: those given to it. today: the keeper's local date.
[[nodiscard]] std::vector<EventProblem> problemsOf(const ColonyEvent& event, const Colony& colony,
                                                   std::span<const ColonyEvent> events,
                                                   std::span<const GivenTreatment> treatments,
                                                   const Date& today);

/// The treatment of those given that holds the honey longest on the day; nullptr where none does.
[[nodiscard]] const GivenTreatment* holdingHoney(std::span<const GivenTreatment> treatments, const Date& day);

/// Where the colony stands after the events, the one that was taken back among them and marked as removed:
/// where nothing moved it any more, that is where it stood before. today: the keeper's local date.
[[nodiscard]] RecordId yardAfterTakingBack(const Colony& colony, const ColonyEvent& takenBack,
                                           std::span<const ColonyEvent> events, const Date& today);

} // namespace halfcup::records
