// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/season_cells.h"

#include "desk/table.h"

#include <charconv>
#include <cmath>
#include <stdexcept>

namespace halfcup::desk {

namespace {

using std::chrono::sys_days;

[[noreturn]] void refuse(const std::string& sentence) {
    throw std::domain_error(sentence);
}

std::vector<std::string_view> parts(std::string_view text, std::string_view between, bool skipEmpty) {
    std::vector<std::string_view> found;
    while (true) {
        const auto at = text.find_first_of(between);
        std::string_view part = text.substr(0, at);
        const auto from = part.find_first_not_of(" \t");
        part = from == std::string_view::npos ? std::string_view() : part.substr(from);
        while (!part.empty() && (part.back() == ' ' || part.back() == '\t'))
            part.remove_suffix(1);
        if (!part.empty() || !skipEmpty)
            found.push_back(part);
        if (at == std::string_view::npos)
            return found;
        text.remove_prefix(at + 1);
    }
}

template <typename Number>
bool readWhole(std::string_view text, Number& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() && !text.empty();
}

double readNumber(std::string_view text, const char* what) {
    double number = 0;
    if (!readWhole(text, number) || !std::isfinite(number))
        refuse(shown(text) + " is not a number, where the " + what + " should stand.");
    return number;
}

} // namespace

sys_days readDate(std::string_view text) {
    int year = 0;
    unsigned month = 0, day = 0;
    if (text.size() != 10 || text[4] != '-' || text[7] != '-' || !readWhole(text.substr(0, 4), year) ||
        !readWhole(text.substr(5, 2), month) || !readWhole(text.substr(8, 2), day))
        refuse(shown(text) + " is not a date like 2026-08-01.");
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                           std::chrono::day(day)};
    if (!date.ok() || year < 1900 || year > 2200)
        refuse(shown(text) + " is not in the calendar.");
    return date;
}

int seasonDay(sys_days date) {
    const std::chrono::year_month_day whole(date);
    auto day = whole.day();
    // 29 February counts as the 28th; any common year will do for the rest.
    if (whole.month() == std::chrono::February && day == std::chrono::day(29))
        day = std::chrono::day(28);
    constexpr std::chrono::year kCommon(2025);
    return static_cast<int>(
        (sys_days(kCommon / whole.month() / day) - sys_days(kCommon / std::chrono::January / 1)).count() + 1);
}

std::vector<mites::SeasonTreatment> readTreatments(std::string_view text, const DayCount& days) {
    std::vector<mites::SeasonTreatment> treatments;
    for (const std::string_view one : parts(text, ";", true)) {
        const auto word = parts(one, " \t", true);
        if (word.size() < 3 || word.size() > 4)
            refuse(
                shown(one) +
                " is not a treatment like \"whole 0.95 2026-08-01 42\": reach, efficacy, first day, days.");
        mites::SeasonTreatment treatment;
        if (word[0] == "phoretic")
            treatment.reach = mites::TreatmentReach::OnBees;
        else if (word[0] != "whole")
            refuse(shown(word[0]) + " is neither \"whole\" nor \"phoretic\".");
        treatment.efficacy = readNumber(word[1], "efficacy");
        if (!(treatment.efficacy >= 0 && treatment.efficacy < 1))
            refuse("The efficacy " + shown(word[1]) + " has to be at least 0 and below 1.");
        treatment.firstDay = days.of(readDate(word[2]));
        if (word.size() == 4 &&
            (!readWhole(word[3], treatment.days) || treatment.days < 1 || treatment.days > 366))
            refuse(shown(word[3]) + " is not a number of days from 1 to 366.");
        treatments.push_back(treatment);
    }
    return treatments;
}

std::vector<mites::MitesCarriedIn> readCarriedIn(std::string_view text, const DayCount& days) {
    std::vector<mites::MitesCarriedIn> all;
    for (const std::string_view one : parts(text, ";", true)) {
        const auto word = parts(one, " \t", true);
        if (word.size() != 3)
            refuse(shown(one) +
                   " is not like \"5 2026-08-15 2026-10-14\": mites a day, first day, last day.");
        mites::MitesCarriedIn carried{readNumber(word[0], "mites a day"), days.of(readDate(word[1])),
                                      days.of(readDate(word[2]))};
        if (!(carried.perDay >= 0 && carried.perDay <= 1e6))
            refuse(shown(word[0]) + " mites a day has to be 0 to 1000000.");
        if (carried.lastDay < carried.firstDay)
            refuse(shown(one) + " ends before it begins.");
        all.push_back(carried);
    }
    return all;
}

std::vector<sys_days> readDates(std::string_view text) {
    std::vector<sys_days> dates;
    for (const std::string_view one : parts(text, ";", true))
        dates.push_back(readDate(one));
    if (dates.empty())
        refuse("At least one date is needed.");
    return dates;
}

} // namespace halfcup::desk
