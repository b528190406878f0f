// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/due.h"
#include "touch/colony_list_model.h"
#include "touch/colony_records.h"
#include "touch/services.h"

#include <QList>

namespace halfcup::touch {

/// The colonies of a yard as a list shows them, most urgent first, those whose jar waits in
/// the tray last. Reads the store: a handful of queries, whatever the size. Colonies that died or were merged
/// are left out. Throws store::StoreError.
[[nodiscard]] QList<ColonyListModel::Entry> colonyEntries(Services& services, const records::Yard& yard);

/// The one entry of a colony that is kept in the yard; nothing where it died or was merged. Reads no records.
[[nodiscard]] std::optional<ColonyListModel::Entry>
colonyEntry(const Services& services, const records::Yard& yard, const ColonyRecords& kept);

/// "4.1 per 100 on 12 April".
[[nodiscard]] QString loadLine(const records::Sample& sample);

/// When the bees of a sample were taken, where it was taken.
[[nodiscard]] records::Moment sampledAt(const records::Sample& sample);

} // namespace halfcup::touch
