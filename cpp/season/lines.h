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
/// figure whose month came last in the year (a season counts from its first month). A region with a figure
/// for one month alone is followed in that month only, and the kept line holds in the others. Where a region
/// has two for one month (soon, at once), or a range, the lower one: the cautious default. The own line is
/// the keeper's in any case. A region the handbook does not know leaves the kept line. [how months are read:
/// own choice]
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
