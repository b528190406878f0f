// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/for_people.h"
#include "exchange/report.h"

#include <algorithm>
#include <optional>
#include <tuple>
#include <vector>

namespace halfcup::exchange {

/// What a report is made from: all records of the selection, with the names they need.
struct ReportRecords {
    Names names;
    std::vector<records::Yard> yards;                // of the selection, as the store orders them
    std::vector<records::Sample> samples;            // finished ones, oldest first
    std::vector<records::ColonyEvent> events;        // oldest first
    std::vector<records::ColonyEvent> before;        // before the period: what held when it began
    std::vector<records::GivenTreatment> treatments; // oldest first
};

/// Twelve months of a yard, to be drawn in its report.
struct ReportSeason {
    records::Date first; // the first of a month
    std::optional<records::Date> turnDate;
};

struct ReportRequest {
    Selection selection;
    PositionDetail detail = PositionDetail::Blurred;        // blurred: a report shows no position at all
    records::Moment writtenAt;                              // the keeper's local time
    std::map<records::RecordId, ReportSeason> seasons = {}; // by yard; without one none is drawn
};

/// Whether it happened to a colony of the selection before the period.
[[nodiscard]] bool isBefore(const Selection& selection, const records::ColonyEvent& event);

/// Reads what the selection holds. Memory grows with the records: about 1 kB a wash.
template <typename Keeper>
ReportRecords readForReport(Keeper& keeper, const Selection& selection) {
    ReportRecords read;
    read.names = readNames(keeper);
    keeper.forEachSample([&](const records::Sample& sample) {
        if (sample.state == records::SampleState::Finished && selection.holds(sample))
            read.samples.push_back(sample);
    });
    for (const auto& [id, colony] : read.names.colonies)
        if (!colony.removed)
            for (records::ColonyEvent& event : keeper.eventsOf(id)) {
                if (event.colonyId == id && selection.holds(event))
                    read.events.push_back(std::move(event));
                else if (event.colonyId == id && isBefore(selection, event))
                    read.before.push_back(std::move(event));
            }
    std::ranges::stable_sort(read.events, [](const auto& a, const auto& b) {
        return std::tie(a.day, a.recordedAtMs) < std::tie(b.day, b.recordedAtMs);
    });
    for (records::GivenTreatment& given : keeper.allTreatments())
        if (selection.holds(given))
            read.treatments.push_back(std::move(given));
    std::ranges::reverse(read.treatments); // the newest came first
    std::ranges::stable_sort(read.samples, {}, [](const auto& sample) { return momentOf(sample).utcMs; });
    const auto colony = read.names.colonies.find(selection.colonyId);
    for (const records::Yard& yard : keeper.yards())
        if (selection.holdsYard(yard.id) &&
            (colony == read.names.colonies.end() || colony->second.yardId == yard.id))
            read.yards.push_back(yard);
    return read;
}

/// The report of one colony, one yard or all yards: page one has what an inspector or a vet asks for first
/// (which yard, its registration number, the period, the treatments with every field the law names), then
/// washes, events, the lines that held, how it was counted, sources and cautions. Texts are in the language
/// of the application, numbers and dates by QLocale(). Control characters and marks that turn the direction
/// of text are taken out, and long texts cut: the tables (CSV) have them whole.
[[nodiscard]] Report buildReport(const ReportRecords& records, const ReportRequest& request,
                                 const handbook::Handbook& handbook);

} // namespace halfcup::exchange
