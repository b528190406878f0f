// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_content.h"

#include "exchange/report_parts.h"
#include "exchange/report_words.h"

#include <QCollator>
#include <QCoreApplication>

#include <algorithm>

namespace halfcup::exchange {

namespace {

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

bool holdsDemo(const ReportRecords& records) {
    const auto isDemo = [](const auto& each) { return each.demo; };
    return std::ranges::any_of(records.yards, isDemo) || std::ranges::any_of(records.samples, isDemo) ||
           std::ranges::any_of(records.events, isDemo) ||
           std::ranges::any_of(records.treatments, [](const auto& each) { return each.treatment.demo; });
}

QString subjectOf(const ReportRecords& records, const Selection& selection) {
    if (!selection.colonyId.empty()) {
        const auto colony = records.names.colonies.find(selection.colonyId);
        const records::RecordId yard =
            colony == records.names.colonies.end() ? records::RecordId() : colony->second.yardId;
        return ReportText::tr("Colony %1, %2", "label, yard")
            .arg(report::clean(records.names.label(selection.colonyId)),
                 report::clean(records.names.yard(yard).name));
    }
    if (!selection.yardId.empty())
        return ReportText::tr("Yard %1").arg(report::clean(records.names.yard(selection.yardId).name));
    return ReportText::tr("All yards");
}

} // namespace

namespace report {

QString Making::period(const records::RecordId& yardId) const {
    const auto& periods = request.selection.periods;
    if (periods.empty())
        return ReportText::tr("all records until %1").arg(day(records::localDate(request.writtenAt)));
    const auto found = periods.find(yardId);
    if (found == periods.end())
        return ReportText::tr("none");
    const auto& [first, last] = found->second;
    if (first.month == 1 && first.day == 1 && first.year == last.year)
        return QString::number(first.year);
    return ReportText::tr("%1 to %2", "days").arg(day(first), day(last));
}

QString Making::colony(const records::RecordId& id, const records::RecordId& yardId) const {
    QString label = clean(records.names.label(id));
    if (label.isEmpty())
        label = ReportText::tr("not known", "a colony");
    if (manyYards())
        label = ReportText::tr("%1, %2", "colony, yard").arg(label, clean(records.names.yard(yardId).name));
    const auto found = records.names.colonies.find(id);
    const bool demo = found != records.names.colonies.end() && found->second.demo;
    return demo ? ReportText::tr("%1 (demo)", "an invented colony").arg(label) : label;
}

void addLabels(ReportFacts& facts, const QString& name, QStringList labels) {
    constexpr qsizetype atOnce = 100;
    QCollator order{QLocale(QLocale::English)};
    order.setNumericMode(true);
    std::ranges::sort(labels, order);
    if (labels.isEmpty())
        facts.facts.emplace_back(name, ReportText::tr("none"));
    for (qsizetype from = 0; from < labels.size(); from += atOnce) {
        const qsizetype to = std::min(from + atOnce, labels.size());
        facts.facts.emplace_back(labels.size() <= atOnce
                                     ? name
                                     : ReportText::tr("%1, %2 to %3 of %4", "a list, part of it")
                                           .arg(name, QString::number(from + 1), QString::number(to),
                                                QString::number(labels.size())),
                                 labels.mid(from, atOnce).join(ReportText::tr("; ", "between labels")));
    }
}

void addYards(const Making& making) {
    for (const records::Yard& yard : making.records.yards) {
        ReportFacts facts;
        facts.title = yard.demo ? ReportText::tr("Yard %1 (invented)").arg(clean(yard.name))
                                : ReportText::tr("Yard %1").arg(clean(yard.name));
        const QString number = clean(yard.registrationNumber);
        facts.facts.emplace_back(ReportText::tr("Registration number"),
                                 number.isEmpty() ? ReportText::tr("not written down") : number);
        facts.facts.emplace_back(ReportText::tr("Period"), making.period(yard.id));
        if (making.request.detail == PositionDetail::Exact && yard.position) {
            const ShownPosition shown = shownPosition(*yard.position, PositionDetail::Exact);
            facts.facts.emplace_back(ReportText::tr("Position (WGS 84)"),
                                     ReportText::tr("latitude %1, longitude %2")
                                         .arg(QString::number(shown.latitudeDeg, 'f', shown.decimals),
                                              QString::number(shown.longitudeDeg, 'f', shown.decimals)));
        }
        QStringList labels, ended;
        for (const auto& [id, colony] : making.records.names.colonies) {
            if (colony.yardId != yard.id || colony.removed || !making.request.selection.holdsColony(id))
                continue;
            const auto end = endOf(making, colony);
            if (!end)
                labels.append(clean(colony.label));
            else if (end->value == records::EventKind::Dead)
                ended.append(
                    ReportText::tr("%1 (dead, %2)", "colony, day").arg(clean(colony.label), day(end->day)));
            else
                ended.append(ReportText::tr("%1 (put into another, %2)", "colony, day")
                                 .arg(clean(colony.label), day(end->day)));
        }
        addLabels(facts, making.oneColony() ? ReportText::tr("Colony") : ReportText::tr("Colonies kept"),
                  std::move(labels));
        if (!ended.isEmpty())
            addLabels(facts, ReportText::tr("No longer kept"), std::move(ended));
        if (const QString told = standingsOf(latestOf(making, yard.id)); !told.isEmpty())
            facts.facts.emplace_back(making.oneColony() ? ReportText::tr("At the last wash")
                                                        : ReportText::tr("At their last washes"),
                                     told);
        making.blocks.emplace_back(std::move(facts));
    }
    if (making.records.yards.empty())
        making.blocks.emplace_back(ReportParagraph{ReportText::tr("There is no yard."), {}});
}

} // namespace report

bool isBefore(const Selection& selection, const records::ColonyEvent& event) {
    const auto period = selection.periods.find(event.yardId);
    return period != selection.periods.end() && selection.holdsColony(event.colonyId) &&
           selection.holdsYard(event.yardId) && event.day < period->second.first;
}

Report buildReport(const ReportRecords& records, const ReportRequest& request,
                   const handbook::Handbook& handbook) {
    Report made;
    const report::Making making{records, request, handbook, made.blocks};
    QStringList periods; // more than one where the report has yards of both hemispheres
    for (const records::Yard& yard : records.yards)
        if (const QString one = making.period(yard.id); !periods.contains(one))
            periods.append(one);
    made.title = ReportText::tr("Varroa record");
    made.subtitle = ReportText::tr("%1: %2", "yard or colony, period")
                        .arg(subjectOf(records, request.selection), periods.join(QStringLiteral("; ")));
    made.running = ReportText::tr("Varroa record. %1. Written on %2 with Halfcup.")
                       .arg(made.subtitle, report::day(records::localDate(request.writtenAt)));
    if (holdsDemo(records))
        made.mark = ReportText::tr("DEMO: holds invented data");
    report::addYards(making);
    report::addCautions(making);
    report::addTreatments(making);
    report::addLatest(making);
    report::addPictures(making);
    report::addWashes(making);
    report::addOtherCounts(making);
    report::addEvents(making);
    report::addLines(making);
    report::addMethods(making);
    return made;
}

} // namespace halfcup::exchange
