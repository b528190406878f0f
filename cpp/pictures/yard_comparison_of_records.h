// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/yard_comparison.h"
#include "records/yard_records.h"

namespace halfcup::pictures {

/// The colonies of a yard in the order in which they come, each with the latest of its washes that has an
/// answer. lines: those to draw, today's as a rule. today: what the age of a wash is counted to.
[[nodiscard]] YardComparison yardComparisonOf(const records::YardRecords& yard, const records::Lines& lines,
                                              const records::Date& today);

} // namespace halfcup::pictures
