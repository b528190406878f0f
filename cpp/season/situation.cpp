// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/situation.h"

#include "mites/season_constants.h"
#include "season/turn_date.h"

#include <algorithm>

namespace halfcup::season {

namespace {

using records::Brood;
using records::Floor;

struct Gathered {
    bool anySupers = false, supersUnknown = false;
    bool anyCapped = false, anyOpen = false, broodUnknown = false;
    bool anySolid = false, floorUnknown = false;
    std::optional<double> fewestFrames;
    bool framesUnknown = false;
};

void gather(Gathered& all, const records::ColonyState& state, const records::Date& day) {
    all.supersUnknown = all.supersUnknown || !state.supersOn;
    all.anySupers = all.anySupers || (state.supersOn && state.supersOn->value);
    const Brood brood = broodHolding(state, day);
    all.broodUnknown = all.broodUnknown || brood == Brood::NotKnown;
    all.anyCapped = all.anyCapped || brood == Brood::Capped;
    all.anyOpen = all.anyOpen || brood == Brood::OpenOnly;
    const Floor floor = state.floor ? state.floor->value : Floor::NotKnown;
    all.floorUnknown = all.floorUnknown || floor == Floor::NotKnown;
    all.anySolid = all.anySolid || floor == Floor::Solid;
    if (!state.frames || records::daysBetween(state.frames->day, day) > strengthHoldsDays)
        all.framesUnknown = true;
    else
        all.fewestFrames = std::min(all.fewestFrames.value_or(state.frames->value), state.frames->value);
}

} // namespace

records::Brood broodHolding(const records::ColonyState& state, const records::Date& day) {
    if (!state.brood)
        return Brood::NotKnown;
    const int age = records::daysBetween(state.brood->day, day);
    const bool over = (state.brood->value == Brood::None && age > noBroodHoldsDays) ||
                      (state.brood->value == Brood::OpenOnly && age > openBroodHoldsDays);
    return over ? Brood::NotKnown : state.brood->value;
}

int northernMonth(const records::Yard& yard, const records::Date& day) {
    const bool south = yard.position && yard.position->latitudeDeg < 0;
    return south ? (day.month + 5) % 12 + 1 : day.month;
}

bool isDroneSeason(const records::Yard& yard, const records::Date& day) {
    return mites::kSeasonDroneCells[static_cast<std::size_t>(northernMonth(yard, day) - 1)] > 0;
}

Situation situationOf(const records::Yard& yard, std::span<const records::Colony> colonies,
                      std::span<const records::ColonyEvent> events,
                      std::span<const GivenTreatment> treatments, const records::Date& from,
                      const handbook::Handbook& handbook) {
    Gathered all;
    Situation situation;
    situation.from = from;
    bool any = false;
    for (const records::Colony& colony : colonies) {
        const records::ColonyState state = records::stateOn(colony, events, from);
        if (!state.alive())
            continue;
        any = true;
        gather(all, state, from);
    }
    if (any) {
        if (all.anySupers || !all.supersUnknown)
            situation.supersOn = all.anySupers;
        situation.brood = all.anyCapped      ? Brood::Capped
                          : all.broodUnknown ? Brood::NotKnown
                          : all.anyOpen      ? Brood::OpenOnly
                                             : Brood::None;
        situation.floor = all.anySolid ? Floor::Solid : all.floorUnknown ? Floor::NotKnown : Floor::Screened;
        const bool weakKnown = all.fewestFrames && !all.framesUnknown;
        if (weakKnown)
            situation.adultBees = beesOnFrames(*all.fewestFrames, handbook);
    }
    for (const GivenTreatment& given : treatments) {
        const bool concerned = std::ranges::any_of(colonies, [&](const records::Colony& colony) {
            return std::ranges::find(given.colonyIds, colony.id) != given.colonyIds.end();
        });
        if (concerned && !given.treatment.removed)
            situation.past.push_back(
                {given.treatment.substance, given.treatment.firstDay, records::endOf(given.treatment)});
    }
    situation.turnDate = turnDateFrom(yard, from);
    situation.droneSeason = isDroneSeason(yard, from);
    return situation;
}

} // namespace halfcup::season
