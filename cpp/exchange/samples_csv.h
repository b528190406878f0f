// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/csv_writer.h"
#include "exchange/shown_position.h"
#include "mites/standing.h"
#include "records/sample.h"
#include "records/yard.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace halfcup::exchange {

/// One row: a sample with the names that belong to its ids.
struct SampleRow {
    records::Sample sample;
    std::string colonyLabel;
    std::string yardName;
    /// Where the yard lies, if known. Blurred rows show this place in place of the scoop's, so that many
    /// washes of one yard do not add up to a sharper place than one does.
    std::optional<records::Position> yardPosition;
};

/// "under", "close", "over", "cannot_tell": a standing in a file for machines.
[[nodiscard]] std::string_view wordOf(mites::Standing standing);

/// The column names in order, units in the names. See samples_csv.cpp for what each holds.
[[nodiscard]] std::span<const std::string_view> sampleColumns();

/// The header row. Write it once, before the first sample.
void writeSampleHeader(CsvWriter& csv);

/// Any sample, also a draft or an abandoned one: cells for what it does not have are empty.
///   position_is: "exact", "blurred" or "none"; position_state says why there is none.
///   position_accuracy_m: 95 % radius in metres; for a blurred position that of the blurring added.
///   demo: "yes" for invented data.
void writeSampleRow(CsvWriter& csv, const SampleRow& row, PositionDetail detail);

} // namespace halfcup::exchange
