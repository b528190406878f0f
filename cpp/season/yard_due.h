// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_event.h"
#include "records/sample.h"
#include "records/treatment.h"
#include "records/yard.h"
#include "season/due.h"

#include <span>
#include <vector>

/// From what is kept to what is due.
namespace halfcup::season {

/// A treatment and the colonies that got it.
struct GivenTreatment {
    records::Treatment treatment;
    std::vector<records::RecordId> colonyIds;
};

/// What is kept of one yard, as far as it decides what is due.
struct YardRecords {
    records::Yard yard;
    std::vector<records::Colony> colonies;     // that stand in it and are not removed
    std::vector<records::ColonyEvent> events;  // of these colonies
    std::vector<GivenTreatment> treatments;    // in any order
    std::vector<records::Sample> latestWashes; // the newest finished one of each colony
};

/// The colonies of the yard that live, most urgent first. A colony that died or went into another is left
/// out.
[[nodiscard]] std::vector<DueColony> dueInYard(const YardRecords& kept, const records::Moment& now);

/// The lists of several yards as one, most urgent first, each with its yard's place in the span.
struct DueInYard {
    std::size_t yard = 0;
    DueColony due;
};
[[nodiscard]] std::vector<DueInYard> dueInYards(std::span<const YardRecords> yards,
                                                const records::Moment& now);

} // namespace halfcup::season
