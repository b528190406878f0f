// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_parts.h"
#include "exchange/report_words.h"

#include <QCoreApplication>

#include <cmath>

namespace halfcup::exchange::report {

namespace {

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

QString beesOf(const records::Sample& sample) {
    return sample.scoop.beesMean > 0 ? QString::number(std::llround(sample.scoop.beesMean)) : QString();
}

} // namespace

void addWashes(const Making& making) {
    making.blocks.emplace_back(ReportHeading{ReportText::tr("Mite washes")});
    ReportTable table;
    table.columns = {{ReportText::tr("Day"), 16},
                     {ReportText::tr("Colony"), making.manyYards() ? 19.0 : 13.0},
                     {ReportText::tr("What it means"), 20},
                     {ReportText::tr("Load per 100 bees (90 % range)"), 19},
                     {ReportText::tr("Chance over the line"), 13.5, true},
                     {ReportText::tr("Mites"), 8.5, true},
                     {ReportText::tr("Bees"), 7.5, true},
                     {ReportText::tr("Line"), 10},
                     {ReportText::tr("Method"), 15.5}};
    table.nothing = ReportText::tr("No colony was washed in this period.");
    for (const records::Sample& sample : making.records.samples) {
        if (!sample.answer)
            continue;
        const records::Answer& answer = *sample.answer;
        table.rows.push_back({dayOf(sample), making.colony(sample.colonyId, sample.yardId), standing(sample),
                              loadAndRange(answer), chance(answer.chanceOver), QString::number(answer.mites),
                              beesOf(sample), linesOf(answer), method(sample.method)});
    }
    making.blocks.emplace_back(std::move(table));
    making.blocks.emplace_back(ReportParagraph{
        ReportText::tr(
            "Load: mites per 100 adult bees as a wash finds them, first rinse, nothing added for "
            "mites a wash misses. The range holds the true load of the colony's adult bees in "
            "about nine of ten washes. \"Over your line\": the figure is at the line or over it, or "
            "the chance is above 50 %; \"close\": 20 to 50 %; \"under\": below 20 %; \"can't tell "
            "yet\": too few bees, or too wide a range. None found is not none there."),
        ReportParagraph::Small});
}

void addOtherCounts(const Making& making) {
    ReportTable table;
    table.columns = {{ReportText::tr("Day"), 16},
                     {ReportText::tr("Colony"), making.manyYards() ? 20.0 : 11.0},
                     {ReportText::tr("Method"), 16},
                     {ReportText::tr("Found"), 10, true},
                     {ReportText::tr("Figure (90 % range)"), 24},
                     {ReportText::tr("Line, same unit"), 12, true}};
    for (const records::Sample& sample : making.records.samples) {
        if (!sample.otherAnswer)
            continue;
        const records::OtherAnswer& answer = *sample.otherAnswer;
        const QString range = ReportText::tr("%1 to %2", "a range")
                                  .arg(load(answer.count == 0 ? 0 : answer.q05), load(answer.q95));
        const QString told = sample.openedCells
                                 ? ReportText::tr("%1 (%2) of 100 drone cells").arg(load(answer.q50), range)
                                 : ReportText::tr("%1 (%2) mites a day").arg(load(answer.q50), range);
        table.rows.push_back({dayOf(sample), making.colony(sample.colonyId, sample.yardId),
                              method(sample.method), QString::number(answer.count), told,
                              answer.line ? figure(*answer.line) : ReportText::tr("none")});
    }
    if (table.rows.empty())
        return;
    making.blocks.emplace_back(ReportHeading{ReportText::tr("Boards and drone brood")});
    making.blocks.emplace_back(std::move(table));
    making.blocks.emplace_back(ReportParagraph{
        ReportText::tr("These are no loads: they are in terms of their own."), ReportParagraph::Small});
}

void addEvents(const Making& making) {
    making.blocks.emplace_back(ReportHeading{ReportText::tr("What happened")});
    ReportTable table;
    table.columns = {{ReportText::tr("Day"), 16},
                     {ReportText::tr("Colony"), making.manyYards() ? 24.0 : 14.0},
                     {ReportText::tr("What"), 60}};
    table.nothing = ReportText::tr("Nothing else was written down for this period.");
    for (const records::ColonyEvent& event : making.records.events) {
        const QString other = event.kind == records::EventKind::Moved
                                  ? clean(making.records.names.yard(event.otherYardId).name)
                                  : clean(making.records.names.label(event.otherColonyId));
        table.rows.push_back(
            {day(event.day), making.colony(event.colonyId, event.yardId), happened(event, other)});
    }
    making.blocks.emplace_back(std::move(table));
}

} // namespace halfcup::exchange::report
