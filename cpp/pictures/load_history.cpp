// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_history.h"

#include "records/method.h"

#include <algorithm>

namespace halfcup::pictures {

namespace {

/// A method this version does not know is another one, too.
bool isOtherMethod(const std::string& id) {
    const records::Method* method = records::findMethod(id);
    return !method || method->recovery != 1.0;
}

bool isLoad(const records::Sample& sample) {
    const records::Method* method = records::findMethod(sample.method);
    return sample.state == records::SampleState::Finished && !sample.removed && sample.answer &&
           (!method || method->measure == records::Measure::MitesPer100Bees);
}

} // namespace

records::Date sampledOn(const records::Sample& sample) {
    return records::localDate({sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes});
}

LoadChart loadChartOf(const LoadHistory& history,
                      const std::function<QString(const std::string&)>& substanceName) {
    LoadChart chart;
    for (const records::Sample& sample : history.samples) {
        if (sample.colonyId != history.colonyId || !isLoad(sample))
            continue;
        const records::Answer& answer = *sample.answer;
        const records::Date day = sampledOn(sample);
        chart.washes.push_back({.key = QString::fromStdString(sample.id),
                                .day = day,
                                .low = answer.loadQ05,
                                .middle = answer.loadQ50,
                                .high = answer.loadQ95,
                                .noneFound = answer.mites == 0,
                                .otherMethod = isOtherMethod(sample.method)});
        chart.lines.push_back({day, answer.lines.treat, answer.lines.own});
    }
    for (const records::GivenTreatment& given : history.treatments)
        if (!given.treatment.removed &&
            std::ranges::find(given.colonyIds, history.colonyId) != given.colonyIds.end())
            chart.treated.push_back({given.treatment.firstDay, records::endOf(given.treatment),
                                     substanceName(given.treatment.substance)});
    for (const records::ColonyEvent& event : history.events) {
        const bool joinsThis =
            event.kind == records::EventKind::Merged && event.otherColonyId == history.colonyId;
        if (!event.removed && (event.colonyId == history.colonyId || joinsThis))
            chart.happenings.push_back({event.day, event.kind});
    }
    return chart;
}

} // namespace halfcup::pictures
