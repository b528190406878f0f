// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_parts.h"
#include "exchange/report_words.h"

#include <QCoreApplication>

#include <map>
#include <set>

namespace halfcup::exchange::report {

namespace {

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

/// One line that held for some of the washes.
struct Held {
    int washes = 0;
    records::Date first;
    records::Date last;
};

QString sourceOf(const handbook::Handbook& handbook, const std::string& id) {
    if (id == "own")
        return ReportText::tr("typed by the keeper");
    const handbook::Entry* entry = handbook.find(id);
    return entry ? ReportText::tr("%1. %2 (%3)", "title, source, how well it is known")
                       .arg(clean(entry->title), clean(entry->source), mark(entry->mark))
                 : clean(id);
}

QString cited(const handbook::Handbook& handbook, const char* id) {
    return sourceOf(handbook, id);
}

} // namespace

void addLines(const Making& making) {
    std::map<std::pair<double, std::string>, Held> held;
    const auto note = [&](double line, const std::string& source, const records::Date& day) {
        Held& one = held[{line, source}];
        if (one.washes++ == 0)
            one.first = day;
        one.last = day; // samples come oldest first
    };
    for (const records::Sample& sample : making.records.samples) {
        if (!sample.answer)
            continue;
        const records::Date day = records::localDate(momentOf(sample));
        note(sample.answer->lines.treat, sample.answer->lines.treatSource, day);
        if (sample.answer->lines.own)
            note(*sample.answer->lines.own, "own", day);
    }
    if (held.empty())
        return;
    making.blocks.emplace_back(ReportHeading{ReportText::tr("Lines that held")});
    ReportTable table;
    table.columns = {{ReportText::tr("Mites per 100 bees"), 12, true},
                     {ReportText::tr("Washes"), 8, true},
                     {ReportText::tr("First"), 12},
                     {ReportText::tr("Last"), 12},
                     {ReportText::tr("Where it comes from"), 48}};
    for (const auto& [line, one] : held)
        table.rows.push_back({figure(line.first), QString::number(one.washes), day(one.first), day(one.last),
                              sourceOf(making.handbook, line.second)});
    making.blocks.emplace_back(std::move(table));
}

void addMethods(const Making& making) {
    making.blocks.emplace_back(ReportHeading{ReportText::tr("How it was counted, and sources")});
    std::set<std::pair<std::string, double>> methods;
    for (const records::Sample& sample : making.records.samples)
        if (sample.answer)
            methods.emplace(sample.method, sample.answer->recovery);
    for (const auto& [id, recovery] : methods) {
        const QString share = chance(recovery);
        making.blocks.emplace_back(ReportParagraph{
            recovery == 1
                ? ReportText::tr("%1: held against the lines as counted.").arg(method(id))
                : ReportText::tr(
                      "%1: taken to find %2 of what an alcohol wash finds; allowed for in the load.")
                      .arg(method(id), share),
            {}});
    }
    making.blocks.emplace_back(ReportParagraph{
        ReportText::tr("Difference between jars of one colony, the reason why the range is wide: %1.")
            .arg(cited(making.handbook, "jar-shape")),
        {}});
    making.blocks.emplace_back(
        ReportParagraph{ReportText::tr("Bees in half a cup, where they were not counted: %1.")
                            .arg(cited(making.handbook, "half-cup-300")),
                        {}});
}

} // namespace halfcup::exchange::report
