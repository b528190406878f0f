// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/moment.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdio>

namespace halfcup::records {

namespace {

constexpr std::int64_t dayMs = 86'400'000;

std::optional<int> digits(std::string_view text, std::size_t from, std::size_t count) {
    if (from + count > text.size())
        return std::nullopt;
    int value = 0;
    for (std::size_t i = from; i < from + count; ++i) {
        if (text[i] < '0' || text[i] > '9')
            return std::nullopt;
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

std::int64_t floorDiv(std::int64_t a, std::int64_t b) {
    return a / b - ((a % b != 0) && ((a < 0) != (b < 0)));
}

int offsetIn(const Moment& moment) {
    return std::clamp(moment.offsetMinutes, -1080, 1080);
}

/// What the keeper's clock showed, as milliseconds. A damaged database may hold any number: beyond the years
/// of RFC 3339, 0000 to 9999, it is the last moment within.
std::int64_t localMs(const Moment& moment) {
    constexpr std::int64_t earliestMs = -719'528 * dayMs;
    constexpr std::int64_t latestMs = 2'932'897 * dayMs - 1;
    const std::int64_t utcMs = std::clamp(moment.utcMs, earliestMs, latestMs);
    return std::clamp(utcMs + offsetIn(moment) * std::int64_t{60'000}, earliestMs, latestMs);
}

std::chrono::year_month_day calendar(const Date& date) {
    return std::chrono::year{date.year} / std::chrono::month{static_cast<unsigned>(date.month)} /
           std::chrono::day{static_cast<unsigned>(date.day)};
}

/// "+02:00", "-03:30" or "Z" from position on, nothing may follow.
std::optional<int> parseOffset(std::string_view text, std::size_t at) {
    if (at + 1 == text.size() && (text[at] == 'Z' || text[at] == 'z'))
        return 0;
    if (at + 6 != text.size() || (text[at] != '+' && text[at] != '-') || text[at + 3] != ':')
        return std::nullopt;
    const auto hours = digits(text, at + 1, 2);
    const auto minutes = digits(text, at + 4, 2);
    if (!hours || !minutes || *hours > 18 || *minutes > 59)
        return std::nullopt;
    const int total = *hours * 60 + *minutes;
    return text[at] == '-' ? -total : total;
}

} // namespace

bool isValid(const Date& date) {
    return date.month >= 1 && date.month <= 12 && date.day >= 1 && date.day <= 31 && calendar(date).ok();
}

bool isValid(const MonthDay& day) {
    return isValid(Date{2000, day.month, day.day}); // a leap year
}

Date dateIn(int year, const MonthDay& day) {
    const Date date{year, day.month, day.day};
    return isValid(date) ? date : Date{year, 2, 28}; // only 29 February is not in every year
}

Date onOrBefore(const MonthDay& day, const Date& date) {
    const Date thisYear = dateIn(date.year, day);
    return thisYear <= date ? thisYear : dateIn(date.year - 1, day);
}

Date onOrAfter(const MonthDay& day, const Date& date) {
    const Date thisYear = dateIn(date.year, day);
    return thisYear >= date ? thisYear : dateIn(date.year + 1, day);
}

std::string toText(const MonthDay& day) {
    char text[32]; // the longest a pair of ints can be
    std::snprintf(text, sizeof text, "%02d-%02d", day.month, day.day);
    return text;
}

std::optional<MonthDay> parseMonthDay(std::string_view text) {
    const auto month = digits(text, 0, 2);
    const auto day = digits(text, 3, 2);
    if (text.size() != 5 || text[2] != '-' || !month || !day || !isValid(MonthDay{*month, *day}))
        return std::nullopt;
    return MonthDay{*month, *day};
}

std::int64_t daysSinceEpoch(const Date& date) {
    return std::chrono::sys_days{calendar(date)}.time_since_epoch().count();
}

Date dateFromDays(std::int64_t days) {
    const std::chrono::year_month_day d{std::chrono::sys_days{std::chrono::days{days}}};
    return {static_cast<int>(d.year()), static_cast<int>(static_cast<unsigned>(d.month())),
            static_cast<int>(static_cast<unsigned>(d.day()))};
}

Date plusDays(const Date& date, std::int64_t days) {
    return dateFromDays(daysSinceEpoch(date) + days);
}

int daysBetween(const Date& a, const Date& b) {
    return static_cast<int>(daysSinceEpoch(b) - daysSinceEpoch(a));
}

Date localDate(const Moment& moment) {
    return dateFromDays(floorDiv(localMs(moment), dayMs));
}

std::string toRfc3339(const Moment& moment) {
    const std::int64_t local = localMs(moment);
    const Date date = localDate(moment);
    const int inDay = static_cast<int>(local - floorDiv(local, dayMs) * dayMs);
    char text[64];
    int length = std::snprintf(text, sizeof text, "%04d-%02d-%02dT%02d:%02d:%02d", date.year, date.month,
                               date.day, inDay / 3'600'000, inDay / 60'000 % 60, inDay / 1000 % 60);
    std::string out(text, static_cast<std::size_t>(length));
    if (inDay % 1000 != 0) {
        length = std::snprintf(text, sizeof text, ".%03d", inDay % 1000);
        out.append(text, static_cast<std::size_t>(length));
    }
    const int offset = offsetIn(moment);
    if (offset == 0)
        return out + "Z";
    length = std::snprintf(text, sizeof text, "%c%02d:%02d", offset < 0 ? '-' : '+', std::abs(offset) / 60,
                           std::abs(offset) % 60);
    return out.append(text, static_cast<std::size_t>(length));
}

std::optional<Moment> parseRfc3339(std::string_view text) {
    if (text.size() < 20 || (text[10] != 'T' && text[10] != 't') || text[13] != ':' || text[16] != ':')
        return std::nullopt;
    const auto date = parseIsoDate(text.substr(0, 10));
    const auto hour = digits(text, 11, 2);
    const auto minute = digits(text, 14, 2);
    const auto second = digits(text, 17, 2);
    if (!date || !hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 59)
        return std::nullopt;
    std::size_t at = 19;
    int milliseconds = 0;
    if (text[at] == '.') {
        int place = 100;
        const std::size_t first = ++at;
        while (at < text.size() && text[at] >= '0' && text[at] <= '9') {
            milliseconds += (text[at] - '0') * place; // digits past the third weigh nothing
            place /= 10;
            ++at;
        }
        if (at == first || at == text.size())
            return std::nullopt;
    }
    const auto offset = parseOffset(text, at);
    if (!offset)
        return std::nullopt;
    const std::int64_t local =
        daysSinceEpoch(*date) * dayMs + ((*hour * 60LL + *minute) * 60 + *second) * 1000 + milliseconds;
    return Moment{local - *offset * 60'000LL, *offset};
}

std::string toIso(const Date& date) {
    char text[40];
    const int length = std::snprintf(text, sizeof text, "%04d-%02d-%02d", date.year, date.month, date.day);
    return {text, static_cast<std::size_t>(length)};
}

std::optional<Date> parseIsoDate(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const auto year = digits(text, 0, 4);
    const auto month = digits(text, 5, 2);
    const auto day = digits(text, 8, 2);
    if (!year || !month || !day)
        return std::nullopt;
    const Date date{*year, *month, *day};
    return isValid(date) ? std::optional{date} : std::nullopt;
}

} // namespace halfcup::records
