// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/standing.h"

#include "mites/checks.h"
#include "mites/constants.h"

namespace halfcup::mites {

Standing standing(double pointPer100, double chanceOver, double q05, double q95, double line,
                  double beesWashed) {
    require(pointPer100 >= 0, "The load has to be zero or more.");
    require(chanceOver >= 0 && chanceOver <= 1, "The chance has to be between 0 and 1.");
    require(q05 >= 0 && q95 >= q05, "The range has to run from its lower to its upper end.");
    require(line > 0, "A line has to be above zero.");
    require(beesWashed > 0, "The number of bees has to be above zero.");
    if (pointPer100 >= line || chanceOver > kChanceOver)
        return Standing::Over;
    if (beesWashed < kBeesForAnswer && q05 <= line && line <= q95 && q95 > kRangeTooWide * q05)
        return Standing::CannotTell;
    return chanceOver >= kChanceClose ? Standing::Close : Standing::Under;
}

} // namespace halfcup::mites
