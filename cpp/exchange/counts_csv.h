// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/samples_csv.h"
#include "records/count.h"

#include <span>
#include <string_view>

namespace halfcup::exchange {

/// The acts of counting as a table, one row an act: every tap, every figure typed, every undo.
[[nodiscard]] std::span<const std::string_view> countColumns();
void writeCountHeader(CsvWriter& csv);
/// All acts of one sample, in their order. Returns the number of rows.
///   act: tap, typed, undo; typed_count only where a figure was typed.
///   mites_so_far: what the rinse stands at after the act.
int writeCountRows(CsvWriter& csv, const SampleRow& row, std::span<const records::CountEvent> events);

} // namespace halfcup::exchange
