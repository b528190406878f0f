// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/bee_year.h"

#include "season/turn_date.h"

#include <cmath>
#include <stdexcept>

namespace halfcup::season {

using records::Date;
using records::MonthDay;

namespace {

constexpr MonthDay visitsCountFromNorth{2, 1}, visitsCountFromSouth{8, 1};
constexpr MonthDay assumedFirstWashNorth{3, 1}, assumedFirstWashSouth{9, 1};
constexpr MonthDay lastWashNorth{10, 31}, lastWashSouth{4, 30};

Date inBeeYear(const MonthDay& day, const Date& begin) {
    return records::onOrAfter(day, begin); // a bee year is a year long: there is exactly one
}

} // namespace

BeeYearStart beeYearStart(const records::Yard& yard) {
    return yard.position && yard.position->latitudeDeg < 0 ? BeeYearStart::July : BeeYearStart::January;
}

Date beeYearBegin(const Date& date, BeeYearStart start) {
    if (!records::isValid(date))
        throw std::invalid_argument("There is no such day as " + records::toIso(date) + ".");
    if (start == BeeYearStart::January)
        return {date.year, 1, 1};
    return {date.month >= 7 ? date.year : date.year - 1, 7, 1};
}

std::pair<Date, Date> beeYear(int year, BeeYearStart start) {
    const int month = start == BeeYearStart::January ? 1 : 7;
    return {{year, month, 1}, records::plusDays({year + 1, month, 1}, -1)};
}

YardYear yardYear(const records::Yard& yard) {
    YardYear year;
    year.start = beeYearStart(yard);
    year.hasWinter = !yard.position || std::abs(yard.position->latitudeDeg) >= tropicsDeg;
    year.turnDay = turnDay(yard);
    year.firstWashFrom = yard.firstWashFrom;
    year.visitedOn = yard.visitedOn;
    return year;
}

FirstWash firstWash(const YardYear& year, const Date& day) {
    const bool north = year.start == BeeYearStart::January;
    const Date begin = beeYearBegin(day, year.start);
    if (year.firstWashFrom)
        return {inBeeYear(*year.firstWashFrom, begin), true};
    const Date countsFrom = inBeeYear(north ? visitsCountFromNorth : visitsCountFromSouth, begin);
    const Date next = records::dateIn(begin.year + 1, {begin.month, begin.day});
    if (year.visitedOn && *year.visitedOn >= countsFrom && *year.visitedOn < next)
        return {*year.visitedOn, true};
    return {inBeeYear(north ? assumedFirstWashNorth : assumedFirstWashSouth, begin), false};
}

Date lastWashDay(const YardYear& year, const Date& day) {
    return inBeeYear(year.start == BeeYearStart::January ? lastWashNorth : lastWashSouth,
                     beeYearBegin(day, year.start));
}

} // namespace halfcup::season
