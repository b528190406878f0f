// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "records/moment.h"
#include "records/yard.h"

#include <string>
#include <vector>

/// The treat line by season and region.
namespace halfcup::season {

/// The regions for which the handbook (topic "lines") has figures, in its order.
[[nodiscard]] std::vector<std::string> lineRegions(const handbook::Handbook& handbook);

/// The lines in force in a yard on a day: the keeper's where no region is followed; otherwise the region's
/// entry whose month or season came last (a season counts from its first month; a figure for one month alone
/// holds until the next one), in the words of handbook entries. Where a region has two for one month (soon,
/// at once) the lower one: the cautious default. The own line is the keeper's in any case. A region the
/// handbook does not know leaves the kept line.
[[nodiscard]] records::Lines linesOn(const records::Yard& yard, const records::Date& day,
                                     const handbook::Handbook& handbook);

/// One entry of a region: from when it holds, and its handbook id.
struct SeasonLine {
    records::MonthDay from; // {1, 1} for one that holds at any time
    double per100 = 0;
    std::string entry;
};
[[nodiscard]] std::vector<SeasonLine> linesOfRegion(const std::string& region,
                                                    const handbook::Handbook& handbook);

} // namespace halfcup::season
