// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_event.h"
#include "records/sample.h"
#include "records/treatment.h"

#include <map>
#include <optional>

/// Which records a file is to hold.
namespace halfcup::exchange {

/// Days from first to last, both counted.
struct Period {
    records::Date first;
    records::Date last;

    friend bool operator==(const Period&, const Period&) = default;
};

/// One colony, or one yard, or all; of all years, or of one. A bee year begins in January or in July
/// (season/bee_year.h), so the period is told for each yard; a yard that is not in the map has none of its
/// records in the file. An empty map: all years.
struct Selection {
    records::RecordId colonyId; // empty: all
    records::RecordId yardId;   // empty: all
    std::map<records::RecordId, Period> periods;

    [[nodiscard]] bool holds(const records::Sample& sample) const; // by the day of the scoop
    [[nodiscard]] bool holds(const records::ColonyEvent& event) const;
    /// Treatments that ran, or held the honey, on a day of the period.
    [[nodiscard]] bool holds(const records::GivenTreatment& given) const;
    [[nodiscard]] bool holdsYard(const records::RecordId& yard) const;
    /// Of a treatment's colonies: all, but one where one was asked for.
    [[nodiscard]] bool holdsColony(const records::RecordId& colony) const;
};

/// The moment of a sample: bees scooped, a board pulled, brood opened; where that is not known, its start.
[[nodiscard]] records::Moment momentOf(const records::Sample& sample);

} // namespace halfcup::exchange
