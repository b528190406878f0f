// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/report_content.h"
#include "records/colony_state.h"

/// The parts of a report, each one adding its blocks. Used by report_content.cpp alone.
namespace halfcup::exchange::report {

/// What all parts look at.
struct Making {
    const ReportRecords& records;
    const ReportRequest& request;
    const handbook::Handbook& handbook;
    std::vector<ReportBlock>& blocks;

    [[nodiscard]] bool oneColony() const { return !request.selection.colonyId.empty(); }
    [[nodiscard]] bool manyYards() const { return records.yards.size() > 1; }
    /// "2026", "1 Jul 2025 to 30 Jun 2026", "all records until 18 May 2026".
    [[nodiscard]] QString period(const records::RecordId& yardId) const;
    /// "4" within one yard, "4, Alder Bend" where the report has several; marked where it is invented.
    [[nodiscard]] QString colony(const records::RecordId& id, const records::RecordId& yardId) const;
};

/// The last day that the report tells of in that yard.
[[nodiscard]] records::Date lastDayOf(const Making& making, const records::RecordId& yardId);
/// How and when the colony ended, where it did by that day.
[[nodiscard]] std::optional<records::Since<records::EventKind>> endOf(const Making& making,
                                                                      const records::Colony& colony);

/// The newest answered wash of each colony that is kept in the yard (or the one asked for), labels in natural
/// order.
struct Latest {
    const records::Colony* colony = nullptr;
    const records::Sample* sample = nullptr; // nothing: not washed in the period
};
[[nodiscard]] std::vector<Latest> latestOf(const Making& making, const records::RecordId& yardId);
/// "Over your line: 4; 7. Under your line: 1.", the graver ones first; empty where there is no colony.
[[nodiscard]] QString standingsOf(const std::vector<Latest>& latest);

/// The labels in natural order (2 before 10), in pieces of a hundred, so that a piece fits a page.
void addLabels(ReportFacts& facts, const QString& name, QStringList labels);

void addYards(const Making& making);
void addTreatments(const Making& making);
void addLatest(const Making& making);
void addPictures(const Making& making);
void addWashes(const Making& making);
void addOtherCounts(const Making& making);
void addEvents(const Making& making);
void addLines(const Making& making);
void addMethods(const Making& making);
void addCautions(const Making& making);

} // namespace halfcup::exchange::report
