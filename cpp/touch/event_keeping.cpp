// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/event_keeping.h"

#include "touch/story.h"
#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace halfcup::touch {

namespace {

class EventWords {
    Q_DECLARE_TR_FUNCTIONS(EventWords)
};

void moveColony(Services& services, const records::RecordId& colonyId) {
    auto colony = services.store.colony(colonyId);
    if (!colony)
        return;
    colony->yardId = records::stateOn(*colony, services.store.eventsOf(colonyId), services.today()).yardId;
    colony->stand.reset(); // it stands somewhere in another yard now
    services.store.save(*colony);
}

bool nothingKeptOf(Services& services, const records::RecordId& colonyId) {
    return services.store.samplesOf(colonyId).empty() && services.store.eventsOf(colonyId).empty() &&
           services.store.treatmentsOf(colonyId).empty();
}

QString honeyHeld(Services& services, const records::ColonyEvent& event, const QString& label) {
    const auto treatments = services.store.treatmentsOf(event.colonyId);
    const records::GivenTreatment* given = records::holdingHoney(treatments, event.day);
    if (!given)
        return {};
    const QString name = story::treatmentName(services, given->treatment);
    const auto from = honeyFrom(given->treatment);
    if (from && !isRunningOn(given->treatment, event.day))
        return EventWords::tr(
                   "Colony %1: honey may not be taken before %2, after %3. Supers that go on now can spoil "
                   "honey.")
            .arg(label, words::dayAndYear(*from), name);
    return from ? EventWords::tr(
                      "Colony %1: %2 is in the hive, and honey may not be taken before %3. Supers only "
                      "where the label allows them.")
                      .arg(label, name, words::dayAndYear(*from))
                : EventWords::tr(
                      "Colony %1: %2 is in the hive until %3, and its withdrawal is not written down. Supers "
                      "only where the label allows them.")
                      .arg(label, name, words::dayAndYear(endOf(given->treatment)));
}

} // namespace

void keepEvents(Services& services, const EventsToKeep& wanted) {
    services.store.inOneTransaction([&] {
        for (records::ColonyEvent event : wanted.events) {
            if (event.kind == records::EventKind::Split && !wanted.newColonyLabel.isEmpty()) {
                records::Colony made;
                made.id = services.store.newId();
                made.yardId = event.yardId;
                made.label = wanted.newColonyLabel.toStdString();
                made.demo = event.demo;
                services.store.save(made);
                event.otherColonyId = made.id;
            }
            services.store.save(event);
            if (event.kind == records::EventKind::Moved)
                moveColony(services, event.colonyId);
        }
    });
}

void takeBackEvent(Services& services, records::ColonyEvent event) {
    services.store.inOneTransaction([&] {
        auto colony = services.store.colony(event.colonyId);
        const auto events = services.store.eventsOf(event.colonyId);
        event.removed = true;
        services.store.save(event);
        if (colony && event.kind == records::EventKind::Moved) {
            colony->yardId = records::yardAfterTakingBack(*colony, event, events, services.today());
            colony->stand.reset();
            services.store.save(*colony);
        }
        if (event.kind != records::EventKind::Split || event.otherColonyId.empty())
            return;
        auto made = services.store.colony(event.otherColonyId);
        if (made && !made->removed && nothingKeptOf(services, made->id)) {
            made->removed = true;
            services.store.save(*made);
        }
    });
}

std::vector<records::Colony> livingColonies(Services& services, const records::RecordId& yardId,
                                            const records::Date& day) {
    std::vector<records::Colony> colonies = services.store.colonies(yardId);
    const auto events = services.store.eventsOfYard(yardId);
    std::erase_if(colonies, [&](const records::Colony& colony) {
        return !records::stateOn(colony, events, day).alive();
    });
    return colonies;
}

QString refusal(Services& services, records::EventProblem problem, const records::ColonyEvent& event) {
    using Problem = records::EventProblem;
    using Kind = records::EventKind;
    switch (problem) {
    case Problem::ImpossibleDay:
        return EventWords::tr("There is no such day. Type it like 18 May 2026.");
    case Problem::DayInFuture:
        return EventWords::tr("%1 has not come yet. Keep it on the day it happens.")
            .arg(words::dayAndYear(event.day));
    case Problem::NothingChosen:
        return event.kind == Kind::Moved      ? EventWords::tr("Touch the yard it was moved to.")
               : event.kind == Kind::Merged   ? EventWords::tr("Touch the colony it was put into.")
               : event.kind == Kind::Strength ? EventWords::tr("Type how many frames are covered with bees.")
                                              : EventWords::tr("Touch what you saw.");
    case Problem::FramesOutOfRange:
        return EventWords::tr("Frames covered with bees: from 0 to %1.").arg(records::mostFrames);
    case Problem::SameColony:
        return EventWords::tr("A colony cannot be put into itself. Touch another one.");
    case Problem::SameYard: {
        const auto yard = services.store.yard(event.otherYardId);
        return EventWords::tr("It stands in %1 already on that day. Touch another yard, or go back.")
            .arg(yard ? QString::fromStdString(yard->name) : QString());
    }
    default:
        return {};
    }
}

QString question(Services& services, records::EventProblem problem, const records::ColonyEvent& event,
                 const records::Colony& colony) {
    using Problem = records::EventProblem;
    const QString label = QString::fromStdString(colony.label);
    switch (problem) {
    case Problem::HoneyHeld:
        return honeyHeld(services, event, label);
    case Problem::EndedBefore:
        return EventWords::tr("By your records colony %1 was gone before %2.")
            .arg(label, words::dayAndYear(event.day));
    case Problem::SaidAlready:
        return event.kind == records::EventKind::SupersOn
                   ? EventWords::tr("By your records colony %1 has its supers on already.").arg(label)
                   : EventWords::tr("By your records colony %1 has no supers on.").arg(label);
    case Problem::EndsIt:
        return event.kind == records::EventKind::Dead
                   ? EventWords::tr(
                         "Colony %1 is dead? It leaves the lists of what is due; all its records stay.")
                         .arg(label)
                   : EventWords::tr(
                         "Colony %1 ends with this. It leaves the lists of what is due; all its records "
                         "stay.")
                         .arg(label);
    default:
        return {};
    }
}

} // namespace halfcup::touch
