// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/story.h"

#include "handbook/measure.h"
#include "handbook/substance.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <cstdlib>

namespace halfcup::touch::story {

namespace {

class Story {
    Q_DECLARE_TR_FUNCTIONS(Story)
};

constexpr int sameSeasonDays = 180; // a date further off is told with its year

QString labelOf(Services& services, const records::RecordId& colonyId) {
    const auto colony = colonyId.empty() ? std::nullopt : services.store.colony(colonyId);
    return colony ? QString::fromStdString(colony->label) : QString();
}

QString yardNameOf(Services& services, const records::RecordId& yardId) {
    const auto yard = services.store.yard(yardId);
    return yard ? QString::fromStdString(yard->name) : Story::tr("another yard");
}

QString withStock(const std::string& stock) {
    return stock.empty() ? Story::tr("New queen")
                         : Story::tr("New queen: %1").arg(QString::fromStdString(stock));
}

} // namespace

QString capitalised(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString day(const Services& services, const records::Date& date) {
    return std::abs(records::daysBetween(services.today(), date)) <= sameSeasonDays ? words::day(date)
                                                                                    : words::dayAndYear(date);
}

QString kindName(records::EventKind kind) {
    using Kind = records::EventKind;
    switch (kind) {
    case Kind::SupersOn:
        return Story::tr("Supers on");
    case Kind::SupersOff:
        return Story::tr("Supers off");
    case Kind::Brood:
        return Story::tr("Brood seen");
    case Kind::Strength:
        return Story::tr("Strength");
    case Kind::Floor:
        return Story::tr("Floor");
    case Kind::Split:
        return Story::tr("Split");
    case Kind::Merged:
        return Story::tr("Merged into another");
    case Kind::Requeened:
        return Story::tr("New queen");
    case Kind::Moved:
        return Story::tr("Moved");
    case Kind::Swarmed:
        return Story::tr("Swarmed");
    case Kind::Dead:
        break;
    }
    return Story::tr("Dead");
}

QString broodName(records::Brood brood) {
    switch (brood) {
    case records::Brood::Capped:
        return Story::tr("capped brood");
    case records::Brood::OpenOnly:
        return Story::tr("open brood only");
    case records::Brood::None:
        return Story::tr("no brood");
    case records::Brood::NotKnown:
        break;
    }
    return Story::tr("brood not known");
}

QString floorName(records::Floor floor) {
    switch (floor) {
    case records::Floor::Solid:
        return Story::tr("solid floor");
    case records::Floor::Screened:
        return Story::tr("screened floor");
    case records::Floor::NotKnown:
        break;
    }
    return Story::tr("floor not known");
}

QString frames(double frames) {
    if (frames == 1)
        return Story::tr("1 frame of bees");
    return Story::tr("%1 frames of bees").arg(QLocale().toString(frames, 'g', 4));
}

QString happened(Services& services, const records::ColonyEvent& event, const records::RecordId& toldOf) {
    using Kind = records::EventKind;
    if (event.colonyId != toldOf)
        return Story::tr("Colony %1 was put into this one").arg(labelOf(services, event.colonyId));
    const QString other = labelOf(services, event.otherColonyId);
    switch (event.kind) {
    case Kind::Brood:
        return Story::tr("Brood seen: %1").arg(broodName(event.brood));
    case Kind::Strength:
        return Story::tr("Strength: %1").arg(frames(event.frames.value_or(0)));
    case Kind::Floor:
        return Story::tr("Stands on: %1").arg(floorName(event.floor));
    case Kind::Split:
        return other.isEmpty() ? Story::tr("Split")
                               : Story::tr("Split: colony %1 was made from it").arg(other);
    case Kind::Merged:
        return Story::tr("Put into colony %1; this one ends").arg(other);
    case Kind::Requeened:
        return withStock(event.words);
    case Kind::Moved:
        return Story::tr("Moved to %1").arg(yardNameOf(services, event.otherYardId));
    default:
        return kindName(event.kind);
    }
}

QString stateLine(const Services& services, const records::ColonyState& state) {
    QStringList parts;
    if (state.ended)
        parts.append(state.ended->value == records::EventKind::Dead
                         ? Story::tr("dead since %1").arg(day(services, state.ended->day))
                         : Story::tr("put into another colony on %1").arg(day(services, state.ended->day)));
    if (state.supersOn)
        parts.append(
            (state.supersOn->value ? Story::tr("supers on since %1") : Story::tr("supers off since %1"))
                .arg(day(services, state.supersOn->day)));
    if (state.brood && state.brood->value != records::Brood::NotKnown)
        parts.append(Story::tr("%1 on %2", "brood and day")
                         .arg(broodName(state.brood->value), day(services, state.brood->day)));
    if (state.frames)
        parts.append(frames(state.frames->value));
    if (state.floor && state.floor->value != records::Floor::NotKnown)
        parts.append(floorName(state.floor->value));
    if (state.stock && !state.stock->value.empty())
        parts.append(Story::tr("queen: %1").arg(QString::fromStdString(state.stock->value)));
    if (parts.isEmpty())
        return Story::tr("Nothing is written down of its state yet.");
    return capitalised(parts.join(Story::tr(", ", "between parts of a state")));
}

QString substanceName(const Services& services, const std::string& id) {
    for (const handbook::Substance& each : handbook::substances(services.handbook()))
        if (each.id == id)
            return QString::fromStdString(each.name);
    for (const handbook::Measure& each : handbook::measures(services.handbook()))
        if (each.id == id)
            return QString::fromStdString(each.name);
    return QString::fromStdString(id);
}

QString treatmentName(const Services& services, const records::Treatment& treatment) {
    const QString product = QString::fromStdString(treatment.product);
    const QString substance = substanceName(services, treatment.substance);
    if (product.isEmpty() || product.compare(substance, Qt::CaseInsensitive) == 0)
        return capitalised(substance);
    return Story::tr("%1 (%2)", "product, active substance").arg(product, substance);
}

QString course(const records::Treatment& treatment) {
    const records::Date end = endOf(treatment);
    if (end == treatment.firstDay)
        return words::dayAndYear(end);
    return Story::tr("%1 to %2", "first and last day")
        .arg(treatment.firstDay.year == end.year ? words::day(treatment.firstDay)
                                                 : words::dayAndYear(treatment.firstDay),
             words::dayAndYear(end));
}

QString stage(const Services& services, const records::Treatment& treatment, const records::Date& on) {
    if (on < treatment.firstDay)
        return Story::tr("begins on %1").arg(day(services, treatment.firstDay));
    return isRunningOn(treatment, on) ? Story::tr("running") : Story::tr("over");
}

QString honey(const Services& services, const records::Treatment& treatment) {
    const auto from = honeyFrom(treatment);
    return from ? Story::tr("honey from %1").arg(day(services, *from))
                : Story::tr("withdrawal not written down");
}

QString honeyOnDay(const records::HoneyOnDay& honey) {
    const QString when = words::dayAndYear(honey.from);
    if (!honey.withdrawalMissing)
        return honey.held ? Story::tr("Honey may be taken from %1.").arg(when)
                          : Story::tr("No treatment in the records holds the honey.");
    return honey.held
               ? Story::tr("Not before %1, and perhaps later: the withdrawal of a treatment is not written "
                           "down. The label says it.")
                     .arg(when)
               : Story::tr("Not known: the withdrawal of an earlier treatment is not written down. The label "
                           "says it.");
}

} // namespace halfcup::touch::story
