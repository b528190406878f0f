// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What each colony was found to have last, held against its line.
#include "exchange/report_parts.h"
#include "exchange/report_words.h"

#include "records/judgement.h"

#include <QCollator>
#include <QCoreApplication>

#include <array>

namespace halfcup::exchange::report {

namespace {

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

} // namespace

records::Date lastDayOf(const Making& making, const records::RecordId& yardId) {
    const records::Date today = records::localDate(making.request.writtenAt);
    const auto period = making.request.selection.periods.find(yardId);
    return period == making.request.selection.periods.end() ? today : std::min(today, period->second.last);
}

std::optional<records::Since<records::EventKind>> endOf(const Making& making, const records::Colony& colony) {
    std::vector<records::ColonyEvent> its;
    for (const auto* events : {&making.records.before, &making.records.events})
        std::ranges::copy_if(*events, std::back_inserter(its),
                             [&](const records::ColonyEvent& event) { return event.colonyId == colony.id; });
    return records::stateOn(colony, its, lastDayOf(making, colony.yardId)).ended;
}

std::vector<Latest> latestOf(const Making& making, const records::RecordId& yardId) {
    std::vector<Latest> all;
    std::map<records::RecordId, const records::Sample*> newest; // samples come oldest first
    for (const records::Sample& sample : making.records.samples)
        if (sample.answer)
            newest[sample.colonyId] = &sample;
    for (const auto& [id, colony] : making.records.names.colonies) {
        if (colony.yardId != yardId || colony.removed || !making.request.selection.holdsColony(id))
            continue;
        if (!making.oneColony() && endOf(making, colony))
            continue;
        const auto found = newest.find(id);
        all.push_back({&colony, found == newest.end() ? nullptr : found->second});
    }
    QCollator order{QLocale(QLocale::English)};
    order.setNumericMode(true);
    std::ranges::stable_sort(all, [&](const Latest& a, const Latest& b) {
        return order.compare(clean(a.colony->label), clean(b.colony->label)) < 0;
    });
    return all;
}

QString standingsOf(const std::vector<Latest>& latest) {
    constexpr std::array graverFirst{mites::Standing::Over, mites::Standing::Close,
                                     mites::Standing::CannotTell, mites::Standing::Under};
    constexpr qsizetype most = 40; // labels named, more are counted
    QStringList told;
    const auto tell = [&](const QString& words, const QStringList& labels) {
        if (labels.size() > most)
            told.append(ReportText::tr("%1: %n colony(ies).", "standing", static_cast<int>(labels.size()))
                            .arg(words));
        else if (!labels.isEmpty())
            told.append(ReportText::tr("%1: %2.", "standing, colonies")
                            .arg(words, labels.join(ReportText::tr("; ", "between labels"))));
    };
    for (const mites::Standing standing : graverFirst) {
        QStringList labels;
        QString words;
        for (const Latest& each : latest)
            if (each.sample && records::graverStanding(*each.sample) == standing) {
                labels.append(clean(each.colony->label));
                words = report::standing(*each.sample);
            }
        tell(words, labels);
    }
    QStringList unwashed;
    for (const Latest& each : latest)
        if (!each.sample)
            unwashed.append(clean(each.colony->label));
    tell(ReportText::tr("Not washed"), unwashed);
    return told.join(QLatin1Char(' '));
}

void addLatest(const Making& making) {
    ReportTable table;
    table.columns = {{ReportText::tr("Colony"), making.manyYards() ? 22.0 : 14.0},
                     {ReportText::tr("Last wash"), 15},
                     {ReportText::tr("What it means"), 20},
                     {ReportText::tr("Load per 100 bees (90 % range)"), 24},
                     {ReportText::tr("Line"), 14},
                     {ReportText::tr("Chance over the line"), 18, true}};
    for (const records::Yard& yard : making.records.yards)
        for (const Latest& latest : latestOf(making, yard.id)) {
            const QString name = making.colony(latest.colony->id, yard.id);
            if (latest.sample)
                table.rows.push_back({name, dayOf(*latest.sample), standing(*latest.sample),
                                      loadAndRange(*latest.sample->answer), linesOf(*latest.sample->answer),
                                      chance(latest.sample->answer->chanceOver)});
            else
                table.rows.push_back(
                    {name, ReportText::tr("not washed", "a colony, in this period"), {}, {}, {}, {}});
        }
    if (table.rows.empty())
        return;
    making.blocks.emplace_back(ReportHeading{making.oneColony()
                                                 ? ReportText::tr("The last wash")
                                                 : ReportText::tr("The last wash of each colony")});
    making.blocks.emplace_back(std::move(table));
}

} // namespace halfcup::exchange::report
