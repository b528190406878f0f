// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/round_controller.h"

#include "mites/scoop.h"
#include "touch/round_records.h"
#include "touch/scoop_controller.h"

#include <algorithm>

namespace halfcup::touch {

using Picked = records::Round::Picked;

namespace {

// The mean of one or two colonies is their own figures: nothing to choose among them.
constexpr std::size_t fewestToChoose = 3;

season::Chance chanceOf(Services& services) {
    return [&services] { return services.device.random->next(); };
}

} // namespace

RoundController::RoundController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool RoundController::show(const QString& yardId) {
    std::optional<records::Yard> yard;
    m_services.kept([&] { yard = m_services.store.yard(yardId.toStdString()); });
    if (!yard)
        return false;
    m_yard = *yard;
    m_skipped.clear();
    m_way = Picked::AtRandom;
    m_count = 0;
    m_view = Planning;
    refresh();
    return true;
}

void RoundController::refresh() {
    m_services.kept([&] { read(); });
    emit changed();
}

void RoundController::read() {
    m_living.clear();
    m_labels.clear();
    for (const season::ColonyOfYard& each : coloniesFor(m_services, m_yard.id)) {
        m_labels.emplace_back(each.colony.id, QString::fromStdString(each.colony.label));
        if (season::standsInYard(each, m_yard.id, m_services.today()))
            m_living.push_back(each.colony.id);
    }
    if (const auto open = openRound(m_services, m_yard.id)) {
        m_round = *open;
        m_view = Going;
    } else if (m_view == Going) { // ended on another page or another phone
        m_view = Planning;
    }
    if (m_view == Planning) {
        plan();
        return;
    }
    const ReadRound kept = readKept(m_services, m_round);
    m_reading = kept.reading;
    m_line = kept.line;
    listParts();
}

void RoundController::plan() {
    const auto kept = m_services.store.latestFinished(m_yard.id);
    const records::Scoop usual = m_services.settings.usualScoop();
    const double bees =
        mites::scoopFromVolume(usual.volumeMl, bookDensity(m_services.handbook()).of(usual.packing)).mean;
    const auto living = static_cast<std::int64_t>(m_living.size());
    m_byLoad = season::plannedByLoad(kept, bees / 100, living);
    if (m_count == 0) {
        const handbook::Entry& entry = m_services.handbook().at("colonies-per-yard");
        m_count = static_cast<int>(season::plannedByHandbook(*entry.figure(), living));
        m_round.colonyIds.clear();
    }
    if (m_living.size() < fewestToChoose)
        m_way = Picked::All;
    listPlan();
}

void RoundController::pickWay(const QString& key) {
    m_way = key == QLatin1String("hand")  ? Picked::ByKeeper
            : key == QLatin1String("all") ? Picked::All
                                          : Picked::AtRandom;
    listPlan();
    emit changed();
}

void RoundController::pickNumber(const QString& key) {
    m_count = key.toInt();
    listPlan();
    emit changed();
}

void RoundController::toggle(const QString& colonyId) {
    const records::RecordId id = colonyId.toStdString();
    if (std::erase(m_round.colonyIds, id) == 0)
        m_round.colonyIds.push_back(id); // in the order in which they are touched
    listPlan();
    emit changed();
}

void RoundController::start() {
    records::Round round;
    if (m_way == Picked::ByKeeper)
        std::ranges::copy_if(m_round.colonyIds, std::back_inserter(round.colonyIds),
                             [this](const records::RecordId& id) {
                                 return std::ranges::find(m_living, id) != m_living.end();
                             });
    else
        round.colonyIds =
            m_way == Picked::All
                ? m_living
                : season::pickAtRandom(m_living, static_cast<std::size_t>(m_count), chanceOf(m_services));
    if (round.colonyIds.empty())
        return;
    const records::Moment now = m_services.now();
    round.yardId = m_yard.id;
    round.startedAtMs = now.utcMs;
    round.utcOffsetMinutes = now.offsetMinutes;
    // All of them by chance or by hand is all of them.
    round.picked = round.colonyIds.size() == m_living.size() ? Picked::All : m_way;
    round.demo = m_yard.demo;
    m_services.kept([&] {
        if (openRound(m_services, m_yard.id)) // begun on another page meanwhile: that one goes on
            return;
        round.id = m_services.store.newId();
        m_services.store.save(round);
    });
    refresh();
}

void RoundController::act() {
    if (m_view == Planning) {
        start();
    } else if (m_view == Ended) {
        emit homeWanted();
    } else if (const auto next = m_reading.next()) {
        emit washWanted(QString::fromStdString(*next));
    } else if (m_reading.inTray() > 0) {
        emit trayWanted();
    } else {
        end();
    }
}

void RoundController::skip() {
    const auto next = m_reading.next();
    if (m_view != Going || !next)
        return;
    m_skipped.push_back(*next);
    std::vector<records::RecordId> spare;
    std::ranges::copy_if(m_living, std::back_inserter(spare), [this](const records::RecordId& id) {
        return std::ranges::find(m_skipped, id) == m_skipped.end();
    });
    m_services.kept([&] {
        records::Round round = season::withoutColony(m_round, *next, spare, chanceOf(m_services));
        if (round.picked == Picked::All) // no longer: the others are not all
            round.picked = Picked::ByKeeper;
        m_services.store.save(round);
    });
    refresh();
}

void RoundController::end() {
    if (m_view != Going)
        return;
    records::Round round = m_round;
    round.endedAtMs = m_services.now().utcMs;
    if (!m_services.kept([&] { m_services.store.save(round); }))
        return;
    m_round = round;
    m_view = Ended;
    refresh();
}

void RoundController::openEarlier(const QString& roundId) {
    std::optional<records::Round> found;
    m_services.kept([&] {
        for (const records::Round& round : m_services.store.roundsOf(m_yard.id))
            if (round.id == roundId.toStdString() && round.endedAtMs)
                found = round;
    });
    if (!found)
        return;
    m_round = *found;
    m_view = Ended;
    refresh();
}

void RoundController::openColony(const QString& colonyId) {
    emit colonyWanted(colonyId);
}

QString RoundController::label(const records::RecordId& colonyId) {
    const auto found =
        std::ranges::find_if(m_labels, [&](const auto& each) { return each.first == colonyId; });
    if (found != m_labels.end())
        return found->second;
    const auto colony = m_services.store.colony(colonyId);
    m_labels.emplace_back(colonyId, colony ? QString::fromStdString(colony->label) : QString());
    return m_labels.back().second;
}

} // namespace halfcup::touch
