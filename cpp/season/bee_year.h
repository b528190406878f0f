// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"
#include "records/yard.h"

namespace halfcup::season {

/// Where a yard's bee year begins. It begins in the middle of the bees' winter, so that no season is cut in
/// two: 1 January in the north, 1 July in the south. A yard without a position is taken to be in the north,
/// as is one on the equator [convention].
enum class BeeYearStart { January, July };

[[nodiscard]] BeeYearStart beeYearStart(const records::Yard& yard);

/// The first day of the bee year that holds the date. The date must be valid, else std::invalid_argument.
[[nodiscard]] records::Date beeYearBegin(const records::Date& date, BeeYearStart start);

} // namespace halfcup::season
