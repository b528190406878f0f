// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/season_strip.h"
#include "records/yard_records.h"

#include <span>
#include <vector>

namespace halfcup::pictures {

/// What records alone say of twelve months in these yards; first is the first of a month. washed: the
/// days of their washes, in any order. Supers are on where
/// any colony has them on, capped brood is there where any colony has it; a state holds until the next event
/// of its kind, the colony's end, or until, the last day that is known. Turn dates, washes due and today are
/// left for the caller.
[[nodiscard]] SeasonStrip seasonStripOf(std::span<const records::YardRecords> yards,
                                        std::span<const records::Date> washed, const records::Date& first,
                                        const records::Date& until);

/// Their days; samples without an answer, removed ones and drafts have none.
[[nodiscard]] std::vector<records::Date> washDaysOf(std::span<const records::Sample> samples);

} // namespace halfcup::pictures
