// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/due.h"

#include "records/judgement.h"
#include "season/natural_order.h"

#include <algorithm>
#include <stdexcept>

namespace halfcup::season {

namespace {

using mites::Standing;
using records::Date;

int lateness(const Due& due) {
    return due.daysLate > 0 ? 0 : due.daysLate == 0 ? 1 : 2;
}

} // namespace

std::optional<LastWash> lastWashOf(const records::Sample& sample) {
    if (sample.state != records::SampleState::Finished || sample.removed || !sample.answer)
        return std::nullopt;
    const auto standing = records::graverStanding(sample);
    if (!standing)
        return std::nullopt;
    LastWash last;
    last.washedOn =
        records::localDate({sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes});
    last.standing = *standing;
    last.loadPer100 = sample.answer->loadQ50;
    return last;
}

namespace {

/// A day on which a wash is due, and why.
struct Candidate {
    DueReason reason;
    Date day;
};

Date later(const Date& a, const Date& b) {
    return std::max(a, b);
}

std::optional<Candidate> afterTreatment(const ColonyToJudge& colony, const Date& today) {
    if (!colony.lastTreatment || colony.lastTreatment->firstDay > today)
        return std::nullopt;
    const Date& end = colony.lastTreatment->end;
    const bool checked =
        colony.lastWash && colony.lastWash->washedOn >= records::plusDays(end, afterTreatmentCountsDays);
    if (checked || records::daysBetween(end, today) > afterTreatmentForgottenDays)
        return std::nullopt;
    return Candidate{DueReason::AfterTreatment, records::plusDays(end, afterTreatmentDays)};
}

/// The first wash of the year, or the month's, or the repeated one.
Candidate regular(const ColonyToJudge& colony, const YardYear& year, const Date& today,
                  bool washedThisBeeYear) {
    const auto& last = colony.lastWash;
    const bool unclear = last && last->standing == Standing::CannotTell;
    const Date again = last ? records::plusDays(last->washedOn, unclear ? unclearDays : monthDays) : Date{};
    if (!year.hasWinter)
        return last ? Candidate{unclear ? DueReason::AgainBecauseUnclear : DueReason::Monthly, again}
                    : Candidate{DueReason::FirstWashOfYear, today};
    const Date lastDay = lastWashDay(year, today);
    if (washedThisBeeYear && again <= lastDay && today <= lastDay)
        return {unclear ? DueReason::AgainBecauseUnclear : DueReason::Monthly, again};
    const bool nextYear = washedThisBeeYear || today > lastDay;
    const Date inYear = nextYear ? records::plusDays(lastDay, 200) : today; // a day of the bee year asked for
    const FirstWash first = firstWash(year, inYear);
    Date day = first.known ? first.from : later(first.from, today);
    if (first.known && colony.knownSince)
        day = later(day, *colony.knownSince);
    if (last)
        day = later(day, again);
    return {DueReason::FirstWashOfYear, day};
}

std::optional<Candidate> beforeTurnDate(const ColonyToJudge& colony, const YardYear& year,
                                        const Date& today) {
    if (!year.turnDay)
        return std::nullopt;
    const Date opens = records::plusDays(records::onOrAfter(*year.turnDay, today), -beforeTurnDays);
    const auto& last = colony.lastWash;
    if (last && last->washedOn >= opens)
        return std::nullopt;
    const Date earliest =
        last ? records::plusDays(last->washedOn, apartDays) : colony.knownSince.value_or(today);
    return Candidate{DueReason::BeforeTurnDate, later(opens, earliest)};
}

int gravity(DueReason reason) {
    return reason < DueReason::BeforeTurnDate ? 0 : static_cast<int>(reason);
}

} // namespace

DueColony judge(const ColonyToJudge& colony, const YardYear& year, const records::Moment& now) {
    const Date today = records::localDate(now);
    DueColony result;
    result.colony = colony;
    if (const auto& last = colony.lastWash) {
        if (!records::isValid(last->washedOn))
            throw std::invalid_argument("There is no such day as " + records::toIso(last->washedOn) + ".");
        result.washedThisBeeYear = last->washedOn >= beeYearBegin(today, year.start);
        result.overLine = result.washedThisBeeYear && last->standing == Standing::Over;
    }
    std::vector<Candidate> candidates;
    if (const auto treated = afterTreatment(colony, today)) {
        candidates.push_back(*treated);
    } else {
        candidates.push_back(regular(colony, year, today, result.washedThisBeeYear));
        if (const auto turn = beforeTurnDate(colony, year, today))
            candidates.push_back(*turn);
    }
    const Candidate& first = *std::ranges::min_element(candidates, {}, &Candidate::day);
    result.due.reason = first.reason;
    for (const Candidate& each : candidates)
        if (each.day <= today)
            result.due.reason = std::max(result.due.reason, each.reason);
    result.due.dueOn = first.day;
    result.due.daysLate = records::daysBetween(first.day, today);
    return result;
}

bool moreUrgent(const DueColony& a, const DueColony& b) {
    if (lateness(a.due) != lateness(b.due))
        return lateness(a.due) < lateness(b.due);
    if (a.overLine != b.overLine)
        return a.overLine;
    if (gravity(a.due.reason) != gravity(b.due.reason))
        return gravity(a.due.reason) > gravity(b.due.reason);
    if (a.washedThisBeeYear != b.washedThisBeeYear)
        return !a.washedThisBeeYear;
    const auto& lastA = a.colony.lastWash;
    const auto& lastB = b.colony.lastWash;
    if (lastA.has_value() != lastB.has_value())
        return !lastA.has_value();
    if (lastA && lastA->washedOn != lastB->washedOn)
        return lastA->washedOn < lastB->washedOn;
    const auto byLabel = naturalOrder(a.colony.label, b.colony.label);
    if (byLabel != 0)
        return byLabel < 0;
    return a.colony.colonyId < b.colony.colonyId;
}

std::vector<DueColony> dueList(std::span<const ColonyToJudge> colonies, const records::Yard& yard,
                               const records::Moment& now) {
    const YardYear year = yardYear(yard);
    std::vector<DueColony> list;
    list.reserve(colonies.size());
    for (const ColonyToJudge& colony : colonies)
        list.push_back(judge(colony, year, now));
    std::ranges::sort(list, moreUrgent);
    return list;
}

Term wordOf(DueReason reason) {
    switch (reason) {
    case DueReason::FirstWashOfYear:
        return {phraseText("first wash of the year")};
    case DueReason::Monthly:
        return {phraseText("monthly wash")};
    case DueReason::AgainBecauseUnclear:
        return {phraseText("wash again, the last could not tell")};
    case DueReason::BeforeTurnDate:
        return {phraseText("wash before the turn date")};
    case DueReason::AfterTreatment:
        return {phraseText("did the treatment work?")};
    }
    return {""};
}

Phrase phraseOf(const Due& due) {
    if (due.daysLate > 0)
        return {phraseText("Due: %1, %2 late"), {wordOf(due.reason), Days{due.daysLate}}};
    if (due.daysLate == 0)
        return {phraseText("Due today: %1"), {wordOf(due.reason)}};
    return {phraseText("Due in %2: %1"), {wordOf(due.reason), Days{-due.daysLate}}};
}

} // namespace halfcup::season
