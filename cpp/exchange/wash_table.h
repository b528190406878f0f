// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/table_reader.h"
#include "exchange/table_values.h"
#include "exchange/wash_columns.h"
#include "records/moment.h"
#include "records/record_id.h"
#include "records/scoop.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Rows of a table as washes, each with what is to be said of it.
namespace halfcup::exchange {

/// Washes before this year are a slip: this mite reached most keepers of the western honey bee later, and
/// nobody washed before [own choice].
inline constexpr int earliestYear = 1990;
inline constexpr double mostPer100 = 1'000; // mites per 100 bees; above it is a slip [own choice]
inline constexpr std::size_t longestNoteBytes = 2'000;

/// How a table is to be read.
struct WashRules {
    ColumnMatch match;
    std::optional<DayOrder> order; // the keeper's word; nothing: as the column shows
    std::string yardForAll;        // the name of the yard where no column names it
    records::Date today;           // of the keeper; no wash is later
};

/// A row as a wash. The moment: at the time given, else at noon; where the table says no offset from UTC, as
/// if it were 0, so that day and clock read as in the table and two phones take in the same.
struct TableWash {
    records::Moment at;
    bool timeGiven = false;
    std::string yard;   // as written
    std::string colony; // as written
    std::string method; // an id of records/method.h
    records::Scoop scoop;
    std::int64_t mites = 0;
    std::optional<std::int64_t> secondRinse;
    std::string note;
    std::optional<records::RecordId> sampleId;
};

enum class RowState {
    Good,
    Question, // can be taken, but the keeper should look at it: mites and bees swapped, ...
    Refused,
};

struct ReadRow {
    RowState state = RowState::Refused;
    std::size_t line = 0;   // of the file, from 1
    TableSentence sentence; // of a question or a refusal; begins small: "Line 4: " stands before it
    TableWash wash;         // unless refused
};

/// What is missing before rows can be read: no column for the day, the colony, the yard or the mites, or an
/// order of days that has to be asked. Empty: nothing is.
struct Missing {
    TableSentence sentence;
    bool dayOrder = false; // it is the order of days that is asked
};
[[nodiscard]] Missing missingFor(const TextTable& table, const WashRules& rules);

/// All rows in the order of the table, none left out. Only where nothing is missing.
[[nodiscard]] std::vector<ReadRow> readWashes(const TextTable& table, const WashRules& rules);

/// What is taken for granted of the whole table, to be said before anything is kept: the code it is written
/// in, noon, half a cup, the alcohol wash.
[[nodiscard]] std::vector<TableSentence> takenForGranted(const TextTable& table, const WashRules& rules);

} // namespace halfcup::exchange
