// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/yard_records.h"
#include "season/due.h"

#include <span>
#include <vector>

/// From what is kept to what is due.
namespace halfcup::season {

using records::GivenTreatment;
using records::YardRecords;

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
