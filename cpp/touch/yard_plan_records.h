// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/yard_plan.h"
#include "place/hive_stand.h"
#include "touch/colony_list_model.h"
#include "touch/services.h"

#include <vector>

namespace halfcup::touch {

/// What the store knows for the plan of a yard.
struct YardPlanRecords {
    pictures::YardPlan plan;               // hives by their labels; keys are ids of colonies
    QList<ColonyListModel::Entry> entries; // the same hives in the same order, in words
    std::vector<place::HiveStand> stands;  // of those that have a place
};

/// Reads the store. Colonies that died or were merged are left out. The unit of the scale is
/// the keeper's. Throws store::StoreError.
[[nodiscard]] YardPlanRecords yardPlanRecords(Services& services, const records::Yard& yard);

} // namespace halfcup::touch
