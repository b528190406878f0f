// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/yard_due.h"

#include "records/colony_state.h"

#include <algorithm>

namespace halfcup::season {

namespace {

std::optional<LastTreatment> lastTreatmentOf(const records::RecordId& colonyId,
                                             const std::vector<GivenTreatment>& all,
                                             const records::Date& today) {
    std::optional<LastTreatment> last;
    for (const GivenTreatment& given : all) {
        const records::Treatment& treatment = given.treatment;
        if (treatment.removed || treatment.firstDay > today ||
            std::ranges::find(given.colonyIds, colonyId) == given.colonyIds.end())
            continue;
        const LastTreatment found{treatment.firstDay, records::endOf(treatment)};
        if (!last || last->end < found.end)
            last = found;
    }
    return last;
}

} // namespace

std::vector<DueColony> dueInYard(const YardRecords& kept, const records::Moment& now) {
    const records::Date today = records::localDate(now);
    std::vector<ColonyToJudge> toJudge;
    for (const records::Colony& colony : kept.colonies) {
        if (!records::stateOn(colony, kept.events, today).alive())
            continue;
        ColonyToJudge each{colony.id, colony.label, {}};
        const auto latest = std::ranges::find(kept.latestWashes, colony.id, &records::Sample::colonyId);
        if (latest != kept.latestWashes.end())
            each.lastWash = lastWashOf(*latest);
        each.lastTreatment = lastTreatmentOf(colony.id, kept.treatments, today);
        if (const std::int64_t madeAtMs = records::madeAtUtcMs(colony.id); madeAtMs >= 0)
            each.knownSince = records::localDate({madeAtMs, now.offsetMinutes});
        toJudge.push_back(std::move(each));
    }
    return dueList(toJudge, kept.yard, now);
}

std::vector<DueInYard> dueInYards(std::span<const YardRecords> yards, const records::Moment& now) {
    std::vector<DueInYard> all;
    for (std::size_t i = 0; i < yards.size(); ++i)
        for (DueColony& due : dueInYard(yards[i], now))
            all.push_back({i, std::move(due)});
    std::ranges::stable_sort(all,
                             [](const DueInYard& a, const DueInYard& b) { return moreUrgent(a.due, b.due); });
    return all;
}

} // namespace halfcup::season
