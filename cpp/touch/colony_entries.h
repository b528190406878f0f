// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/due.h"
#include "touch/colony_list_model.h"
#include "touch/services.h"

#include <QList>

namespace halfcup::touch {

/// The colonies of a yard as a list shows them, most urgent first. Reads the store: three queries, whatever
/// the size. Throws store::StoreError.
[[nodiscard]] QList<ColonyListModel::Entry> colonyEntries(Services& services, const records::Yard& yard);

/// "Due: monthly wash, 6 days late", "Due in 2 days: monthly wash".
[[nodiscard]] QString dueLine(const season::Due& due);

/// "4.1 per 100 on 12 April".
[[nodiscard]] QString loadLine(const records::Sample& sample);

/// When the bees of a sample were taken, where it was taken.
[[nodiscard]] records::Moment sampledAt(const records::Sample& sample);

} // namespace halfcup::touch
