// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Dates and lists in the cells of the verb season. All throw std::domain_error with a plain sentence.
#include "mites/season_model.h"

#include <chrono>
#include <string_view>
#include <vector>

namespace halfcup::desk {

// "2026-08-01" and nothing else; a day the calendar has.
std::chrono::sys_days readDate(std::string_view text);
// Day of the year, 1 to 365: of a common year, so that a date means the same season in every year.
int seasonDay(std::chrono::sys_days date);

// Days are counted from the day of the year of the wash: date -> seasonDay(wash) + days since the wash.
struct DayCount {
    std::chrono::sys_days wash;
    int of(std::chrono::sys_days date) const { return seasonDay(wash) + (date - wash).count(); }
};

// "whole 0.95 2026-08-01 42; phoretic 0.9 2026-07-15": reach, efficacy, first day, days (1 where left out).
std::vector<mites::SeasonTreatment> readTreatments(std::string_view text, const DayCount& days);
// "5 2026-08-15 2026-10-14": mites a day, first day, last day; several with ";".
std::vector<mites::MitesCarriedIn> readCarriedIn(std::string_view text, const DayCount& days);
// Dates with ";" between.
std::vector<std::chrono::sys_days> readDates(std::string_view text);

} // namespace halfcup::desk
