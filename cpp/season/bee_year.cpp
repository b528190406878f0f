// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/bee_year.h"

#include <stdexcept>

namespace halfcup::season {

BeeYearStart beeYearStart(const records::Yard& yard) {
    return yard.position && yard.position->latitudeDeg < 0 ? BeeYearStart::July : BeeYearStart::January;
}

records::Date beeYearBegin(const records::Date& date, BeeYearStart start) {
    if (!records::isValid(date))
        throw std::invalid_argument("There is no such day as " + records::toIso(date) + ".");
    if (start == BeeYearStart::January)
        return {date.year, 1, 1};
    return {date.month >= 7 ? date.year : date.year - 1, 7, 1};
}

} // namespace halfcup::season
