// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/yard_comparison_of_records.h"

#include "records/judgement.h"

namespace halfcup::pictures {

namespace {

std::int64_t takenAtMs(const records::Sample& wash) {
    return wash.scoopedAtMs.value_or(wash.startedAtMs);
}

const records::Sample* latestOf(const records::YardRecords& yard, const records::RecordId& colonyId) {
    const records::Sample* latest = nullptr;
    for (const records::Sample& wash : yard.latestWashes)
        if (wash.colonyId == colonyId && wash.state == records::SampleState::Finished && !wash.removed &&
            wash.answer && (!latest || takenAtMs(wash) > takenAtMs(*latest)))
            latest = &wash;
    return latest;
}

} // namespace

YardComparison yardComparisonOf(const records::YardRecords& yard, const records::Lines& lines,
                                const records::Date& today) {
    YardComparison comparison{.treatLine = lines.treat, .ownLine = lines.own};
    for (const records::Colony& kept : yard.colonies) {
        ComparedColony colony{.key = QString::fromStdString(kept.id),
                              .label = QString::fromStdString(kept.label)};
        if (const records::Sample* wash = latestOf(yard, kept.id)) {
            const records::Date day = records::localDate({takenAtMs(*wash), wash->utcOffsetMinutes});
            colony.load = ComparedLoad{.low = wash->answer->loadQ05,
                                       .middle = wash->answer->loadQ50,
                                       .high = wash->answer->loadQ95,
                                       .noneFound = wash->answer->mites == 0,
                                       .standing = records::graverStanding(*wash),
                                       .ageDays = records::daysBetween(day, today)};
        }
        comparison.colonies.push_back(std::move(colony));
    }
    return comparison;
}

} // namespace halfcup::pictures
