// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/yard_plan_records.h"

#include "season/natural_order.h"
#include "touch/colony_entries.h"
#include "touch/standing_word.h"

#include <algorithm>

namespace halfcup::touch {

YardPlanRecords yardPlanRecords(Services& services, const records::Yard& yard) {
    YardPlanRecords read;
    read.plan.feet = services.settings.units() == Units::UsCustomary;
    read.entries = colonyEntries(services, yard);
    std::ranges::stable_sort(read.entries, [](const auto& a, const auto& b) {
        return season::naturalOrder(a.label.toStdString(), b.label.toStdString()) < 0;
    });
    const std::vector<records::Colony> colonies = services.store.colonies(yard.id);
    std::vector<records::Sample> samples;
    for (const records::Colony& colony : colonies)
        for (records::Sample& sample : services.store.samplesOf(colony.id))
            samples.push_back(std::move(sample));
    read.stands = place::hiveStands(yard, colonies, samples);
    for (const ColonyListModel::Entry& entry : read.entries) {
        pictures::PlannedHive hive{.key = entry.colonyId, .label = entry.label};
        hive.standing = StandingWord::standingOf(entry.standing);
        const auto found =
            std::ranges::find(read.stands, entry.colonyId.toStdString(), &place::HiveStand::colonyId);
        if (found != read.stands.end()) {
            hive.stand = found->stand;
            hive.fromPositions = found->fromPositions;
        }
        read.plan.hives.push_back(std::move(hive));
    }
    return read;
}

} // namespace halfcup::touch
