// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/colony_records.h"
#include "touch/services.h"

#include <QList>

namespace halfcup::touch {

/// All that is kept of a colony as one list, newest first; within a day what was recorded last stands first.
/// Keys: "wash-<id>", "event-<id>", "treatment-<id>". Other colonies and yards are named from the store;
/// throws store::StoreError.
[[nodiscard]] QList<ChoiceListModel::Entry> storyEntries(Services& services, const ColonyRecords& kept);

} // namespace halfcup::touch
