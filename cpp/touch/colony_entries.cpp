// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/colony_entries.h"

#include "season/yard_due.h"
#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace halfcup::touch {

namespace {

class ColonyEntries {
    Q_DECLARE_TR_FUNCTIONS(ColonyEntries)
};

bool hasWaitingJar(const records::Sample& sample) {
    return records::isInTray(sample) && !sample.jar.empty();
}

/// latest: its newest wash, or none. jar: the label of the one that waits in the tray, or nothing.
ColonyListModel::Entry entryOf(const Services& services, const season::DueColony& due,
                               const records::Sample* latest, const std::string& jar) {
    ColonyListModel::Entry entry;
    entry.colonyId = QString::fromStdString(due.colony.colonyId);
    entry.label = QString::fromStdString(due.colony.label);
    if (latest)
        entry.loadLine = loadLine(*latest);
    if (!due.washedThisBeeYear) {
        entry.headline = ColonyEntries::tr("Not washed this year");
    } else {
        const StandingWord::Value standing = words::headlineOf(*latest);
        entry.standing = standing;
        entry.headline = words::standing(standing);
    }
    if (!jar.empty()) { // scooped already: not to be asked for again
        entry.jar = QString::fromStdString(jar);
        entry.dueLine = ColonyEntries::tr("In the tray: jar %1").arg(entry.jar);
    } else {
        entry.dueLine = services.say(season::phraseOf(due.due));
        entry.isDue = due.due.daysLate >= 0;
    }
    entry.spoken =
        entry.loadLine.isEmpty()
            ? ColonyEntries::tr("Colony %1. %2. %3", "read aloud: label, standing, what is due")
                  .arg(entry.label, entry.headline, entry.dueLine)
            : ColonyEntries::tr("Colony %1. %2. %3. %4", "read aloud: label, standing, load, what is due")
                  .arg(entry.label, entry.headline, entry.loadLine, entry.dueLine);
    return entry;
}

} // namespace

records::Moment sampledAt(const records::Sample& sample) {
    return {sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes};
}

QString loadLine(const records::Sample& sample) {
    if (!sample.answer)
        return {};
    return ColonyEntries::tr("%1 per 100 on %2", "a load and a date")
        .arg(words::load(sample.answer->loadQ50), words::day(records::localDate(sampledAt(sample))));
}

QList<ColonyListModel::Entry> colonyEntries(Services& services, const records::Yard& yard) {
    QList<ColonyListModel::Entry> entries;
    const auto kept = services.store.yardRecords(yard.id);
    if (!kept)
        return entries;
    std::map<records::RecordId, const records::Sample*> latest;
    for (const records::Sample& sample : kept->latestWashes)
        latest.emplace(sample.colonyId, &sample);
    std::map<records::RecordId, std::string> jars;
    for (const records::Sample& draft : services.store.drafts())
        if (hasWaitingJar(draft))
            jars.emplace(draft.colonyId, draft.jar);
    for (const season::DueColony& due : season::dueInYard(*kept, services.now())) {
        const auto wash = latest.find(due.colony.colonyId);
        const auto jar = jars.find(due.colony.colonyId);
        entries.append(entryOf(services, due, wash == latest.end() ? nullptr : wash->second,
                               jar == jars.end() ? std::string() : jar->second));
    }
    std::stable_partition(entries.begin(), entries.end(),
                          [](const ColonyListModel::Entry& entry) { return entry.jar.isEmpty(); });
    return entries;
}

std::optional<ColonyListModel::Entry> colonyEntry(const Services& services, const records::Yard& yard,
                                                  const ColonyRecords& kept) {
    records::YardRecords alone{yard, {kept.colony}, kept.events, kept.treatments, {}};
    const auto latest = std::ranges::find_if(kept.samples, [&](const records::Sample& sample) {
        return sample.state == records::SampleState::Finished && !sample.otherAnswer &&
               !records::liesAhead(sample, services.now().utcMs);
    });
    if (latest != kept.samples.end())
        alone.latestWashes.push_back(*latest);
    const auto jar = std::ranges::find_if(kept.samples, hasWaitingJar);
    for (const season::DueColony& due : season::dueInYard(alone, services.now()))
        return entryOf(services, due, alone.latestWashes.empty() ? nullptr : &alone.latestWashes.front(),
                       jar == kept.samples.end() ? std::string() : jar->jar);
    return std::nullopt;
}

} // namespace halfcup::touch
