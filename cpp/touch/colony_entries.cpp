// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/colony_entries.h"

#include "touch/words.h"

#include <QCoreApplication>

#include <map>

namespace halfcup::touch {

namespace {

class ColonyEntries {
    Q_DECLARE_TR_FUNCTIONS(ColonyEntries)
};

QString reasonWord(season::DueReason reason) {
    switch (reason) {
    case season::DueReason::FirstWashOfYear:
        return ColonyEntries::tr("first wash of the year");
    case season::DueReason::Monthly:
        return ColonyEntries::tr("monthly wash");
    case season::DueReason::AgainBecauseUnclear:
        return ColonyEntries::tr("wash again, the last could not tell");
    }
    return {};
}

} // namespace

records::Moment sampledAt(const records::Sample& sample) {
    return {sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes};
}

QString dueLine(const season::Due& due) {
    const QString reason = reasonWord(due.reason);
    if (due.daysLate > 0)
        return ColonyEntries::tr("Due: %1, %n day(s) late", nullptr, due.daysLate).arg(reason);
    if (due.daysLate == 0)
        return ColonyEntries::tr("Due today: %1").arg(reason);
    return ColonyEntries::tr("Due in %n day(s): %1", nullptr, -due.daysLate).arg(reason);
}

QString loadLine(const records::Sample& sample) {
    if (!sample.answer)
        return {};
    return ColonyEntries::tr("%1 per 100 on %2", "a load and a date")
        .arg(words::load(sample.answer->loadQ50), words::day(records::localDate(sampledAt(sample))));
}

QList<ColonyListModel::Entry> colonyEntries(Services& services, const records::Yard& yard) {
    std::map<records::RecordId, records::Sample> latest;
    for (records::Sample& sample : services.store.latestFinished(yard.id))
        latest.emplace(sample.colonyId, std::move(sample));

    std::vector<season::ColonyToJudge> toJudge;
    for (const records::Colony& colony : services.store.colonies(yard.id)) {
        season::ColonyToJudge each{colony.id, colony.label, std::nullopt};
        if (const auto found = latest.find(colony.id); found != latest.end())
            each.lastWash = season::lastWashOf(found->second);
        toJudge.push_back(std::move(each));
    }

    QList<ColonyListModel::Entry> entries;
    for (const season::DueColony& due : season::dueList(toJudge, yard, services.now())) {
        ColonyListModel::Entry entry;
        entry.colonyId = QString::fromStdString(due.colony.colonyId);
        entry.label = QString::fromStdString(due.colony.label);
        const auto found = latest.find(due.colony.colonyId);
        if (found != latest.end())
            entry.loadLine = loadLine(found->second);
        if (!due.washedThisBeeYear) {
            entry.headline = ColonyEntries::tr("Not washed this year");
        } else {
            const StandingWord::Value standing = words::headlineOf(found->second);
            entry.standing = standing;
            entry.headline = words::standing(standing);
        }
        entry.dueLine = dueLine(due.due);
        entry.isDue = due.due.daysLate >= 0;
        entry.spoken =
            entry.loadLine.isEmpty()
                ? ColonyEntries::tr("Colony %1. %2. %3", "read aloud: label, standing, what is due")
                      .arg(entry.label, entry.headline, entry.dueLine)
                : ColonyEntries::tr("Colony %1. %2. %3. %4", "read aloud: label, standing, load, what is due")
                      .arg(entry.label, entry.headline, entry.loadLine, entry.dueLine);
        entries.append(entry);
    }
    return entries;
}

} // namespace halfcup::touch
