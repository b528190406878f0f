// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/turn_date.h"

#include "mites/season_constants.h"

#include <cmath>

namespace halfcup::season {

namespace {

using records::MonthDay;

constexpr MonthDay northernTurnDay{8, 15}; // handbook turn-date-north
constexpr int southernShiftDays = static_cast<int>(mites::kSouthernShiftDays);
constexpr int commonYear = 2001;    // any year without a 29 February
constexpr int daysToMidAutumn = 61; // 15 August to 15 October

} // namespace

std::optional<MonthDay> turnDay(const records::Yard& yard) {
    if (yard.turnDate)
        return yard.turnDate;
    if (!yard.position)
        return northernTurnDay;
    if (std::abs(yard.position->latitudeDeg) < tropicsDeg)
        return std::nullopt;
    if (yard.position->latitudeDeg > 0)
        return northernTurnDay;
    const records::Date later =
        records::plusDays(records::dateIn(commonYear, northernTurnDay), southernShiftDays);
    return MonthDay{later.month, later.day};
}

std::optional<records::Date> turnDateFrom(const records::Yard& yard, const records::Date& day) {
    const auto turn = turnDay(yard);
    return turn ? std::optional{records::onOrAfter(*turn, day)} : std::nullopt;
}

records::Date midAutumnAfter(const records::Date& turnDate) {
    return records::plusDays(turnDate, daysToMidAutumn);
}

} // namespace halfcup::season
