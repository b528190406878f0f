// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/on_day.h"

#include <algorithm>

namespace halfcup::records {

namespace {

constexpr int yearBackDays = 366;

// The day until which a treatment keeps the honey in the hive: the first free one.
Date freeFrom(const Treatment& treatment) {
    return honeyFrom(treatment).value_or(plusDays(endOf(treatment), 1));
}

bool isGivenTo(const GivenTreatment& given, const RecordId& colonyId) {
    return !given.treatment.removed && std::ranges::count(given.colonyIds, colonyId) > 0;
}

Date scoopedOn(const Sample& sample) {
    return localDate({sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes});
}

} // namespace

HoneyOnDay honeyOn(std::span<const GivenTreatment> treatments, const Date& day) {
    HoneyOnDay honey;
    honey.from = day;
    std::vector<const Treatment*> byStart;
    for (const GivenTreatment& given : treatments)
        if (!given.treatment.removed)
            byStart.push_back(&given.treatment);
    std::ranges::sort(byStart, {}, [](const Treatment* each) { return each->firstDay; });
    for (const Treatment* each : byStart) {
        if (each->firstDay > honey.from)
            break;
        const Date free = freeFrom(*each);
        honey.held = honey.held || (each->firstDay <= day && day < free);
        const bool recent = daysBetween(endOf(*each), day) <= yearBackDays;
        honey.withdrawalMissing = honey.withdrawalMissing || (!each->withdrawalDays && recent);
        honey.from = std::max(honey.from, free);
    }
    return honey;
}

ColonyOnDay onDay(const Colony& colony, std::span<const ColonyEvent> events,
                  std::span<const GivenTreatment> treatments, std::span<const Sample> samples,
                  const Date& day) {
    ColonyOnDay told;
    told.state = stateOn(colony, events, day);
    std::optional<Date> first;
    const auto seen = [&](const Date& date) { first = first ? std::min(*first, date) : date; };
    for (const ColonyEvent& event : events)
        if (!event.removed && event.colonyId == colony.id)
            seen(event.day);

    std::vector<GivenTreatment> given;
    for (const GivenTreatment& each : treatments)
        if (isGivenTo(each, colony.id))
            given.push_back(each);
    std::ranges::sort(given, {}, [](const GivenTreatment& each) { return each.treatment.firstDay; });
    for (const GivenTreatment& each : given) {
        seen(each.treatment.firstDay);
        if (isRunningOn(each.treatment, day))
            told.inHive.push_back(each);
        else if (holdsHoneyOn(each.treatment, day))
            told.withdrawn.push_back(each);
    }
    told.honey = honeyOn(given, day);

    for (const Sample& sample : samples) {
        if (sample.removed || sample.colonyId != colony.id || sample.state != SampleState::Finished)
            continue;
        const Date date = scoopedOn(sample);
        seen(date);
        // A board and brood are no washes, and say nothing of a load.
        if (!sample.otherAnswer && date <= day &&
            (!told.lastWash || sample.startedAtMs > told.lastWash->startedAtMs))
            told.lastWash = sample;
    }
    told.beforeRecords = !first || day < *first;
    return told;
}

} // namespace halfcup::records
