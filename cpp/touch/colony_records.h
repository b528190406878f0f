// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/store.h"

#include <vector>

namespace halfcup::touch {

/// What is kept of one colony, read once for all that a page tells of it.
struct ColonyRecords {
    records::Colony colony;
    std::vector<records::Sample> samples; // newest first, drafts and abandoned ones too
    std::vector<records::ColonyEvent> events;
    std::vector<records::GivenTreatment> treatments; // newest first
};

/// Throws store::StoreError.
[[nodiscard]] inline ColonyRecords readColony(store::Store& store, const records::Colony& colony) {
    return {colony, store.samplesOf(colony.id), store.eventsOf(colony.id), store.treatmentsOf(colony.id)};
}

} // namespace halfcup::touch
