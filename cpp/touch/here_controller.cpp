// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/here_controller.h"

#include "place/yards.h"
#include "records/method.h"
#include "season/bee_year.h"
#include "store/outgoing.h"
#include "touch/colony_entries.h"
#include "touch/tray_controller.h"
#include "touch/words.h"

#include <algorithm>
#include <cstdlib>

namespace halfcup::touch {

namespace {

// As long as a stamp is believed (place::StampRules::keepStampMs) [convention].
constexpr std::int64_t lookAgainAfterMs = 600'000;

} // namespace

HereController::HereController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    connect(&services.position, &PositionStamper::changed, this, [this] {
        usePosition();
        emit changed();
    });
}

QString HereController::title() const {
    switch (m_view) {
    case NoYards:
        return tr("No yard yet");
    case Asking:
        return tr("Which yard is this?");
    case Stranger:
        return tr("No yard here");
    case AtYard:
        break;
    }
    return m_yardName;
}

QString HereController::placeLine() const {
    const QString today = words::day(records::localDate(m_services.now()));
    const auto stamp = m_services.position.best();
    const auto line = [&](const QString& place) { return tr("%1 · %2", "place and date").arg(place, today); };
    if (m_services.position.isRunning() && !stamp && !m_services.position.problem())
        return line(tr("Looking for the position"));
    if (stamp && m_atYardByPosition)
        return line(tr("You are here, within %1").arg(m_services.distance(stamp->accuracyM)));
    if (stamp)
        return line(m_pickedByHand
                        ? tr("Picked by you")
                        : tr("Position known within %1").arg(m_services.distance(stamp->accuracyM)));
    return line(m_services.position.isDone() || m_services.position.problem() ? tr("No position")
                                                                              : tr("Picked by you"));
}

bool HereController::isDemo() const {
    return m_demo;
}

QString HereController::mainAction() const {
    if (!m_draftId.isEmpty())
        return tr("Go on with the wash");
    if (m_view != AtYard || m_colonies.count() == 0)
        return {};
    if (!m_roundNextId.isEmpty())
        return words::begin(m_services.settings.usualMethod(), m_roundNextLabel);
    if (!m_roundLine.isEmpty())
        return m_roundWaits ? tr("Wash the jars") : tr("End the round");
    if (!m_colonies.entries().first().jar.isEmpty()) // all of the yard are scooped
        return tr("Wash the jars");
    return words::begin(m_services.settings.usualMethod(), m_colonies.entries().first().label);
}

QString HereController::mainDetail() const {
    if (!m_draftId.isEmpty())
        return m_draftLine;
    if (!m_roundLine.isEmpty())
        return m_roundLine;
    if (m_colonies.count() > 0 && !m_colonies.entries().first().jar.isEmpty())
        return m_trayLine;
    const records::Scoop scoop = m_services.settings.usualScoop();
    const records::Method* method = records::findMethod(m_services.settings.usualMethod());
    return tr("%1, %2", "the scoop and the method")
        .arg(words::measure(scoop.volumeMl), method ? words::ofMethod(method->noun) : QString());
}

QString HereController::draftLine() const {
    return m_draftLine;
}

void HereController::refresh() {
    m_services.kept([&] {
        const std::vector<records::Sample> drafts = m_services.store.drafts();
        m_draftId.clear();
        m_draftLine.clear();
        m_trayLine = touch::trayLine(drafts);
        // A wash that another keeper is at is in its colony's story, not here.
        const auto found = std::ranges::find_if(drafts, [this](const records::Sample& draft) {
            return !records::waits(draft) && store::Outgoing(m_services.store).isFromHere(draft.id);
        });
        if (found != drafts.end()) {
            const records::Sample& draft = *found;
            const auto colony = m_services.store.colony(draft.colonyId);
            m_draftId = QString::fromStdString(draft.id);
            m_draftLine =
                tr("Colony %1 waits at: %2")
                    .arg(colony ? QString::fromStdString(colony->label) : QString(), words::step(draft.step));
        }
        m_yards = m_services.store.yards();
    });
    if (std::ranges::none_of(m_yards,
                             [&](const records::Yard& yard) { return yard.id == m_yardId.toStdString(); }))
        m_yardId.clear();
    const QString before = m_yardId;
    usePosition();
    if (m_yardId == before) // another yard has been read by now
        readYard();
    emit changed();
}

void HereController::usePosition() {
    const QString before = m_yardId;
    m_atYardByPosition = false;
    if (m_yards.empty()) {
        m_view = NoYards;
        m_yardId.clear();
    } else if (const auto stamp = m_services.position.best()) {
        recognise(*stamp);
    } else if (m_yardId.isEmpty()) {
        m_view = AtYard; // no position: the last yard used, and the keeper can pick another
        m_yardId = lastYard();
    } else {
        m_view = AtYard;
    }
    if (m_yardId != before)
        readYard();
}

void HereController::recognise(const place::Stamp& stamp) {
    std::vector<place::YardPlace> places;
    for (const records::Yard& yard : m_yards)
        if (yard.position)
            places.push_back(
                {yard.id, yard.name, yard.position->latitudeDeg, yard.position->longitudeDeg, yard.reachM});
    const place::YardAnswer answer = place::recogniseYard(stamp, places);
    if (const auto* here = std::get_if<place::Here>(&answer)) {
        m_pickedByHand = m_pickedByHand && !m_pickIsOld;
        m_atYardByPosition = !m_pickedByHand || m_yardId.toStdString() == here->id;
        if (!m_pickedByHand)
            m_yardId = QString::fromStdString(here->id);
        m_view = AtYard;
        keepVisit(here->id);
        return;
    }
    if (m_pickedByHand) {
        m_view = AtYard;
        return;
    }
    QList<ChoiceListModel::Entry> choices;
    const auto add = [&](const place::NearYard& near) {
        const auto yard = std::ranges::find(m_yards, near.id, &records::Yard::id);
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(near.id);
        entry.title = QString::fromStdString(yard->name);
        entry.detail = tr("%1 from here").arg(m_services.distance(near.distanceM));
        choices.append(entry);
    };
    if (const auto* several = std::get_if<place::Ambiguous>(&answer)) {
        m_view = Asking;
        for (const place::NearYard& near : several->yards)
            add(near);
    } else {
        m_view = Stranger;
        if (const auto nearest = std::get<place::NoYard>(answer).nearest)
            add(*nearest);
    }
    m_yardChoices.setEntries(choices);
}

// The first visit of the bee year says from when its first wash is due; one in midwinter does not, and so is
// not kept.
void HereController::keepVisit(const records::RecordId& yardId) {
    const auto yard = std::ranges::find(m_yards, yardId, &records::Yard::id);
    if (yard == m_yards.end())
        return;
    season::YardYear year = season::yardYear(*yard);
    year.firstWashFrom.reset();
    const records::Date today = m_services.today();
    if (season::firstWash(year, today).known)
        return;
    year.visitedOn = today;
    if (!season::firstWash(year, today).known)
        return;
    m_services.kept([&] {
        auto kept = m_services.store.yard(yardId);
        if (!kept)
            return;
        kept->visitedOn = today;
        m_services.store.save(*kept);
        *yard = *kept;
    });
}

QString HereController::lastYard() const {
    QString last;
    m_services.kept([&] {
        const records::Value kept = m_services.store.setting("last_yard");
        if (const auto* id = std::get_if<std::string>(&kept);
            id && std::ranges::find(m_yards, *id, &records::Yard::id) != m_yards.end())
            last = QString::fromStdString(*id);
    });
    return last.isEmpty() ? QString::fromStdString(m_yards.front().id) : last;
}

void HereController::readYard() {
    const auto yard = std::ranges::find(m_yards, m_yardId.toStdString(), &records::Yard::id);
    if (yard == m_yards.end()) {
        m_yardName.clear();
        m_demo = false;
        m_roundLine.clear();
        m_roundNextId.clear();
        m_colonies.setEntries({});
        return;
    }
    m_yardName = QString::fromStdString(yard->name);
    m_demo = yard->demo;
    m_services.kept([&] {
        m_colonies.setEntries(colonyEntries(m_services, *yard));
        readRound();
    });
}

void HereController::act() {
    if (!m_draftId.isEmpty())
        emit draftWanted(m_draftId);
    else if (m_view == AtYard && !m_roundNextId.isEmpty())
        emit washWanted(m_roundNextId);
    else if (m_view == AtYard && m_roundWaits)
        emit trayWanted();
    else if (m_view == AtYard && !m_roundLine.isEmpty())
        emit roundWanted(m_yardId);
    else if (m_view == AtYard && m_colonies.count() > 0 && !m_colonies.entries().first().jar.isEmpty())
        emit trayWanted();
    else if (m_view == AtYard && m_colonies.count() > 0)
        emit washWanted(m_colonies.entries().first().colonyId);
}

void HereController::openTray() {
    emit trayWanted();
}

void HereController::washColony(const QString& colonyId) {
    emit washWanted(colonyId);
}

void HereController::openColony(const QString& colonyId) {
    emit colonyWanted(colonyId);
}

void HereController::pickYard(const QString& yardId) {
    m_yardId = yardId;
    m_pickedByHand = true;
    m_pickIsOld = false;
    m_view = AtYard;
    m_services.kept([&] {
        m_yards = m_services.store.yards(); // it may be the first one, kept a moment ago
        m_services.store.setSetting("last_yard", yardId.toStdString());
    });
    usePosition();
    readYard();
    emit changed();
}

void HereController::makeYardHere() {
    emit newYardWanted();
}

void HereController::arrive() {
    if (std::abs(m_services.now().utcMs - m_lookedAtMs) >= lookAgainAfterMs) {
        m_pickIsOld = m_pickedByHand;
        m_lookedAtMs = m_services.now().utcMs;
        m_services.position.want();
    }
    refresh();
}

void HereController::lookAgain() {
    m_pickedByHand = false;
    m_lookedAtMs = m_services.now().utcMs;
    m_services.position.want();
    usePosition();
    emit changed();
}

} // namespace halfcup::touch
