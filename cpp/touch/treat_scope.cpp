// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/treat_scope.h"

#include "touch/sources_controller.h"
#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace halfcup::touch {

namespace {

class Treat {
    Q_DECLARE_TR_FUNCTIONS(Treat)
};

QString supersWords(const std::optional<bool>& on) {
    if (!on)
        return Treat::tr("supers not known");
    return *on ? Treat::tr("supers on") : Treat::tr("supers off");
}

QString broodWords(records::Brood brood) {
    switch (brood) {
    case records::Brood::None:
        return Treat::tr("no brood");
    case records::Brood::OpenOnly:
        return Treat::tr("open brood only");
    case records::Brood::Capped:
        return Treat::tr("capped brood");
    case records::Brood::NotKnown:
        break;
    }
    return Treat::tr("brood not known");
}

QString forecastWords(const std::vector<double>& highsC, season::TemperatureUnit unit) {
    if (highsC.empty())
        return Treat::tr("no forecast yet");
    const auto [low, high] = std::ranges::minmax(highsC);
    return Treat::tr("highs from %1 to %2")
        .arg(words::temperature(low, unit), words::temperature(high, unit));
}

} // namespace

std::optional<TreatScope> readScope(Services& services, const records::RecordId& yardId,
                                    const records::RecordId& colonyId, const records::Date& from) {
    auto kept = services.store.yardRecords(yardId);
    if (!kept)
        return std::nullopt;
    TreatScope scope;
    scope.from = from;
    scope.wholeYard = colonyId.empty();
    for (const records::Colony& colony : kept->colonies)
        if ((colonyId.empty() || colony.id == colonyId) &&
            records::stateOn(colony, kept->events, from).alive())
            scope.colonies.push_back(colony);
    scope.kept = std::move(*kept);
    return scope.colonies.empty() ? std::nullopt : std::optional(std::move(scope));
}

season::Situation situationIn(const TreatScope& scope, const handbook::Handbook& handbook) {
    season::Situation situation = season::situationOf(scope.kept.yard, scope.colonies, scope.kept.events,
                                                      scope.kept.treatments, scope.from, handbook);
    situation.dailyHighsC = scope.highsC;
    situation.dailyLowsC = scope.lowsC;
    return situation;
}

QString scopeName(const TreatScope& scope) {
    const QString yard = QString::fromStdString(scope.kept.yard.name);
    if (scope.wholeYard)
        return Treat::tr("%1, %n colony(ies)", nullptr, static_cast<int>(scope.colonies.size())).arg(yard);
    return Treat::tr("Colony %1, %2", "colony, yard")
        .arg(QString::fromStdString(scope.colonies.front().label), yard);
}

QString situationLine(const season::Situation& situation, const Services& services) {
    return Treat::tr("From %1: %2, %3, %4", "day, supers, brood, forecast")
        .arg(words::day(situation.from), supersWords(situation.supersOn), broodWords(situation.brood),
             forecastWords(situation.dailyHighsC, services.settings.temperatureUnit()));
}

QString sourceLine(const handbook::Handbook& handbook, const std::string& entryId) {
    const handbook::Entry* entry = handbook.find(entryId);
    if (!entry)
        return {};
    return Treat::tr("%1 (%2)", "source and how well it is known")
        .arg(QString::fromStdString(entry->source), markWords(entry->mark));
}

} // namespace halfcup::touch
