// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_event.h"
#include "records/yard.h"

#include <optional>
#include <span>
#include <string>

namespace halfcup::records {

/// A fact and the day since when it is known.
template <typename T>
struct Since {
    T value;
    Date day;
    friend bool operator==(const Since&, const Since&) = default;
};

/// What is known of a colony on one day, told from its events alone. Nothing (nullopt) means that no event
/// says so.
struct ColonyState {
    RecordId yardId; // where it stands that day
    std::optional<Since<bool>> supersOn;
    std::optional<Since<Brood>> brood;
    std::optional<Since<double>> frames; // frames covered with bees
    std::optional<Since<Floor>> floor;
    std::optional<Since<std::string>> stock; // of the last requeening
    std::optional<Since<EventKind>> ended;   // Dead or Merged
    /// The last day on which bees and mites were taken out or put in (split, another colony merged into it,
    /// swarmed, requeened): washes from before it are another series.
    std::optional<Date> seriesBroken;

    [[nodiscard]] bool alive() const { return !ended; }
};

/// The state at the end of the day, from events in any order, removed ones left out. Events of one day count
/// in the order in which they were recorded. An event of another colony that was merged into this one may be
/// among them: it breaks the series.
[[nodiscard]] ColonyState stateOn(const Colony& colony, std::span<const ColonyEvent> events, const Date& day);

} // namespace halfcup::records
