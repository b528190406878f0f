// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_state.h"
#include "records/sample.h"
#include "records/treatment.h"

#include <optional>
#include <span>
#include <vector>

namespace halfcup::records {

/// When honey may be taken from a colony, asked on one day.
struct HoneyOnDay {
    /// The first day from the one asked about on which no treatment holds the honey; the day itself where
    /// none does. A treatment holds it from its first day until its withdrawal is over. One that begins
    /// before the honey is free moves the day on.
    Date from;
    bool held = false; // on the day asked about
    /// A treatment on the way has no withdrawal written down, so that the date counts its course only: say
    /// so. Those that ended within the year before the day count too.
    bool withdrawalMissing = false;

    friend bool operator==(const HoneyOnDay&, const HoneyOnDay&) = default;
};

[[nodiscard]] HoneyOnDay honeyOn(std::span<const GivenTreatment> treatments, const Date& day);

/// What an inspector asks of a colony: where it stood, what was in the hive, when honey may be taken.
struct ColonyOnDay {
    ColonyState state;                     // at the end of the day
    bool beforeRecords = false;            // nothing was written down of it until later
    std::vector<GivenTreatment> inHive;    // whose course held the day, first begun first
    std::vector<GivenTreatment> withdrawn; // over, but honey had to wait still
    HoneyOnDay honey;
    std::optional<Sample> lastWash; // the last finished one scooped on the day or before
};

/// Told from records alone. Events, treatments and samples may be those of a whole yard, in any order: what
/// is not the colony's, and what was removed, is left out. The day must be valid.
[[nodiscard]] ColonyOnDay onDay(const Colony& colony, std::span<const ColonyEvent> events,
                                std::span<const GivenTreatment> treatments, std::span<const Sample> samples,
                                const Date& day);

} // namespace halfcup::records
