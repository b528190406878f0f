// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/load_chart.h"
#include "records/sample.h"
#include "records/treatment.h"

#include <functional>
#include <span>

namespace halfcup::pictures {

/// What is kept of one colony; what is another's may be among it and is left out, as is what was removed.
struct LoadHistory {
    records::RecordId colonyId;
    std::span<const records::Sample> samples;
    std::span<const records::GivenTreatment> treatments;
    std::span<const records::ColonyEvent> events; // of others too: one that was put into this colony
};

/// The chart of all finished washes. Boards and drone brood are no loads and are left out. Each wash has the
/// lines of its own answer, and its local date by its own offset from UTC. Without today and outlook: those
/// are the caller's. substanceName: the short name of a handbook's substance or measure.
[[nodiscard]] LoadChart loadChartOf(const LoadHistory& history,
                                    const std::function<QString(const std::string&)>& substanceName);

/// The local day of a sample: of the scoop, or of its start where there is none.
[[nodiscard]] records::Date sampledOn(const records::Sample& sample);

} // namespace halfcup::pictures
