// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/csv_writer.h"
#include "records/treatment.h"
#include "records/yard.h"

#include <span>
#include <string>
#include <string_view>

namespace halfcup::exchange {

/// Treatments as a table, one row a treatment and colony, with all that the law asks for (handbook
/// "records"). Days are the keeper's local dates, ISO 8601.
struct TreatmentRow {
    records::Treatment treatment;
    std::string substanceName; // the handbook's; the id where it knows none
    records::Yard yard;        // where the colonies stood
    records::RecordId colonyId;
    std::string colonyLabel; // empty, with the id, where no colony is left in the entry
};

[[nodiscard]] std::span<const std::string_view> treatmentColumns();
void writeTreatmentHeader(CsvWriter& csv);
/// Cells for what was not written down are empty: an empty withdrawal_days is not 0.
void writeTreatmentRow(CsvWriter& csv, const TreatmentRow& row);

} // namespace halfcup::exchange
