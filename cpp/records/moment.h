// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace halfcup::records {

/// A point in time as it is kept: UTC in milliseconds since 1970-01-01T00:00Z, and the keeper's offset from
/// UTC then and there in minutes (east positive, -1080 to 1080). The offset is kept because "washed on 18
/// May" is a local date, and the phone may be in another zone when the record is read.
struct Moment {
    std::int64_t utcMs = 0;
    int offsetMinutes = 0;

    friend bool operator==(const Moment&, const Moment&) = default;
};

/// A local calendar date. No range check: use isValid().
struct Date {
    int year = 1970;
    int month = 1; // 1 to 12
    int day = 1;   // 1 to 31

    friend bool operator==(const Date&, const Date&) = default;
    friend auto operator<=>(const Date&, const Date&) = default;
};

/// A day that comes every year, such as a turn date. 29 February is allowed; where the year has none it is
/// the 28th.
struct MonthDay {
    int month = 1;
    int day = 1;

    friend bool operator==(const MonthDay&, const MonthDay&) = default;
    friend auto operator<=>(const MonthDay&, const MonthDay&) = default;
};

[[nodiscard]] bool isValid(const Date& date);
[[nodiscard]] bool isValid(const MonthDay& day); // in a leap year
/// The day in that year; the day itself must be valid.
[[nodiscard]] Date dateIn(int year, const MonthDay& day);
/// The last such day on or before the date, and the first on or after it.
[[nodiscard]] Date onOrBefore(const MonthDay& day, const Date& date);
[[nodiscard]] Date onOrAfter(const MonthDay& day, const Date& date);
/// "08-15"; nothing unless it is exactly that and a day of a leap year.
[[nodiscard]] std::string toText(const MonthDay& day);
[[nodiscard]] std::optional<MonthDay> parseMonthDay(std::string_view text);

/// Days since 1970-01-01 in the proleptic Gregorian calendar; the inverse is dateFromDays().
[[nodiscard]] std::int64_t daysSinceEpoch(const Date& date);
[[nodiscard]] Date dateFromDays(std::int64_t days);
/// days after the date; before it where negative.
[[nodiscard]] Date plusDays(const Date& date, std::int64_t days);
/// From a to b, negative where b is earlier.
[[nodiscard]] int daysBetween(const Date& a, const Date& b);

/// The keeper's local date at that moment.
[[nodiscard]] Date localDate(const Moment& moment);

/// RFC 3339, to the millisecond where there are any: "2026-05-18T09:41:05.250+02:00", "Z" for offset 0.
[[nodiscard]] std::string toRfc3339(const Moment& moment);

/// Reads RFC 3339 (section 5.6). Nothing for anything else, impossible dates and leap seconds included.
[[nodiscard]] std::optional<Moment> parseRfc3339(std::string_view text);

/// "2026-05-18"; nothing unless it is exactly that and a real date.
[[nodiscard]] std::string toIso(const Date& date);
[[nodiscard]] std::optional<Date> parseIsoDate(std::string_view text);

} // namespace halfcup::records
