// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"
#include "records/yard.h"

#include <optional>
#include <utility>

namespace halfcup::season {

/// Where a yard's bee year begins. It begins in the middle of the bees' winter, so that no season is cut in
/// two: 1 January in the north, 1 July in the south. A yard without a position is taken to be in the north,
/// as is one on the equator [convention].
enum class BeeYearStart { January, July };

[[nodiscard]] BeeYearStart beeYearStart(const records::Yard& yard);

/// The first day of the bee year that holds the date. The date must be valid, else std::invalid_argument.
[[nodiscard]] records::Date beeYearBegin(const records::Date& date, BeeYearStart start);

/// The first and the last day of the bee year that begins in that year.
[[nodiscard]] std::pair<records::Date, records::Date> beeYear(int year, BeeYearStart start);

/// What of a yard decides when its colonies are due.
struct YardYear {
    BeeYearStart start = BeeYearStart::January;
    bool hasWinter = true;                          // false in the tropics: washed every month of the year
    std::optional<records::MonthDay> turnDay;       // turn_date.h
    std::optional<records::MonthDay> firstWashFrom; // the keeper's own day
    std::optional<records::Date> visitedOn;         // first day of a bee year on which a phone stood there
};

[[nodiscard]] YardYear yardYear(const records::Yard& yard);

/// From when the first wash of the bee year that holds the day is due, and whether that is known from the
/// yard (the keeper's day, or the first visit) or only assumed. Visits before 1 February (1 August in the
/// south) do not count: nobody opens a hive in midwinter. Assumed: 1 March, 1 September. [own choice]
struct FirstWash {
    records::Date from;
    bool known = false;
};
[[nodiscard]] FirstWash firstWash(const YardYear& year, const records::Date& day);

/// The last day of the bee year on which the month's wash is still asked for: 31 October, 30 April in the
/// south [own choice].
[[nodiscard]] records::Date lastWashDay(const YardYear& year, const records::Date& day);

} // namespace halfcup::season
