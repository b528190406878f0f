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

DueColony judge(const ColonyToJudge& colony, BeeYearStart start, const records::Moment& now) {
    const records::Date today = records::localDate(now);
    const std::int64_t todayDays = records::daysSinceEpoch(today);
    DueColony result;
    result.colony = colony;
    std::int64_t dueDays = todayDays;
    if (colony.lastWash) {
        const LastWash& last = *colony.lastWash;
        if (!records::isValid(last.washedOn))
            throw std::invalid_argument("There is no such day as " + records::toIso(last.washedOn) + ".");
        const bool unclear = last.standing == Standing::CannotTell;
        dueDays = records::daysSinceEpoch(last.washedOn) + (unclear ? unclearDays : monthDays);
        result.washedThisBeeYear = last.washedOn >= beeYearBegin(today, start);
        result.overLine = result.washedThisBeeYear && last.standing == Standing::Over;
        if (result.washedThisBeeYear)
            result.due.reason = unclear ? DueReason::AgainBecauseUnclear : DueReason::Monthly;
        else
            dueDays = std::max(dueDays, todayDays); // nobody is late in a year that has just begun
    }
    result.due.dueOn = records::dateFromDays(dueDays);
    result.due.daysLate = static_cast<int>(todayDays - dueDays);
    return result;
}

bool moreUrgent(const DueColony& a, const DueColony& b) {
    if (lateness(a.due) != lateness(b.due))
        return lateness(a.due) < lateness(b.due);
    if (a.overLine != b.overLine)
        return a.overLine;
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
    const BeeYearStart start = beeYearStart(yard);
    std::vector<DueColony> list;
    list.reserve(colonies.size());
    for (const ColonyToJudge& colony : colonies)
        list.push_back(judge(colony, start, now));
    std::ranges::sort(list, moreUrgent);
    return list;
}

} // namespace halfcup::season
