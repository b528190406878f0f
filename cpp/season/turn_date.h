// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"
#include "records/yard.h"

#include <optional>

/// The turn date: mites must be low by then, because the bees that overwinter are raised after it.
namespace halfcup::season {

/// Within this many degrees of the equator no turn date is assumed: bees there raise no winter bees as a
/// rule. The tropics' circle [own choice].
inline constexpr double tropicsDeg = 23.4;

/// The yearly day: the keeper's own where there is one, else 15 August (handbook turn-date-north) north of
/// the tropics and 182 days later (handbook turn-date-south-shift) south of them; a yard without a position
/// is taken to be in the north. Nothing in the tropics.
[[nodiscard]] std::optional<records::MonthDay> turnDay(const records::Yard& yard);

/// The next turn date on or after the day.
[[nodiscard]] std::optional<records::Date> turnDateFrom(const records::Yard& yard, const records::Date& day);

/// Mid-autumn after a turn date: two months later [own choice], where the season model is read once more.
[[nodiscard]] records::Date midAutumnAfter(const records::Date& turnDate);

} // namespace halfcup::season
