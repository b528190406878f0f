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

[[nodiscard]] bool isValid(const Date& date);

/// Days since 1970-01-01 in the proleptic Gregorian calendar; the inverse is dateFromDays().
[[nodiscard]] std::int64_t daysSinceEpoch(const Date& date);
[[nodiscard]] Date dateFromDays(std::int64_t days);

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
