// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// What a load means against a line, one of four sentences. It follows from the chance of being over the line,
// never from the point figure alone; the one exception is on the cautious side: a point figure at or over the
// line is over. Rules (convention, constants.h): Over where the point is at or over the line or the chance is
// above 0.5; Close where the chance is 0.2 to 0.5; Under below; CannotTell instead of Close or Under where
// fewer than 200 bees were washed, the 90 % range holds the line and its upper end is more than four times
// its lower. Units: loads and line in mites per 100 bees, chance 0 to 1, bees washed as a number. Errors:
// std::domain_error with a plain sentence for NaN, negative loads, a line that is not above 0, chances
// outside 0 to 1, a range upside down.
namespace halfcup::mites {

enum class Standing { Under, Close, Over, CannotTell };

// pointPer100 is the posterior median.
Standing standing(double pointPer100, double chanceOver, double q05, double q95, double line,
                  double beesWashed);

} // namespace halfcup::mites
