// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/wash_table.h"
#include "records/sample.h"
#include "records/yard.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// From washes of a table to records, as a plan that is looked at before anything is kept.
///
/// Two phones that take in the same table make the same records, and taking it in twice adds nothing: ids are
/// not drawn but derived. An id has the form of a UUID of version 7 (RFC 9562); in the place of its 74 random
/// bits stand bits of a SHA-256 (bytes 0 to 7 of the hash, read as one number with the highest byte first,
/// then bytes 8 to 15) of UTF-8 text with U+001F between its parts:
///   a wash:   "wash", yard, colony, day (ISO), minute of the day or "-", mites, bees (six significant
///             digits), method, n; its time is the wash's. n counts rows of the table that are the same in
///             all of these, from 0.
///   a colony: "colony", yard, label; a yard: "yard", name; their time is 2000-01-01, before any phone made
///             one.
/// Names go in as comparableLabel() writes them. A wash out of a table of this app's own keeps its id.
namespace halfcup::exchange {

/// What is on this phone, and how it judges. Removed yards and colonies belong in the lists.
struct OnThisPhone {
    std::vector<records::Yard> yards;
    std::vector<records::Colony> colonies;
    std::function<bool(const records::RecordId&)> hasSample;
    std::function<std::vector<records::Sample>(const records::RecordId& colonyId)> samplesOf;
    /// The lines in force in a yard on a day: a wash of a table is held against the same as one made here.
    std::function<records::Lines(const records::Yard&, const records::Date&)> linesOn;
};

/// What became of one row.
struct PlannedRow {
    enum class Fate { New, Here, Question, Refused }; // Here: it was taken in before
    Fate fate = Fate::Refused;
    std::size_t line = 0;
    TableSentence sentence;   // of a question or a refusal
    records::Sample sample;   // unless refused; without its answer
    std::string yard, colony; // as they are called on this phone, for a list
};

struct ImportPlan {
    std::vector<PlannedRow> rows; // as many as the table has, in its order

    [[nodiscard]] std::size_t count(PlannedRow::Fate fate) const;
};

/// What is kept: rows that are new, and with them those in question if the keeper wants them.
struct ImportRecords {
    std::vector<records::Yard> yards; // new ones that have something to keep
    std::vector<records::Colony> colonies;
    std::vector<records::Sample> samples; // with their answers
};

/// Yards are found by name and colonies by label, case and blanks ignored; new ones are planned where there
/// are none. Invented (demo) and removed ones are never found. Where two here have the same name, the row is
/// refused and says so. A row that has the day, colony and count of a wash made on this phone is in question.
/// source: what is written under the note of each wash, "From a table: washes 2023.csv".
[[nodiscard]] ImportPlan planImport(const std::vector<ReadRow>& rows, const OnThisPhone& here,
                                    const std::string& source);

/// New yards and colonies that the kept rows need, and the washes without their answers (they take time).
[[nodiscard]] ImportRecords recordsOf(const ImportPlan& plan, const OnThisPhone& here, bool withQuestions);

/// The answers, computed as for a wash made here (records/judgement.h).
void judge(ImportRecords& records, const OnThisPhone& here);

/// One wash with its answer, for a preview.
[[nodiscard]] records::Sample judged(const PlannedRow& row, const OnThisPhone& here);

} // namespace halfcup::exchange
