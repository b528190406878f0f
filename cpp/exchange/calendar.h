// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Dates for any calendar program: iCalendar, RFC 5545.
namespace halfcup::exchange {

/// One whole day with something to do.
struct CalendarEntry {
    std::string key; // stays the same for the same thing, so that a second import replaces the first
    records::Date day;
    std::string summary;                // one line, plain text
    std::string description;            // plain text, may have line breaks; may be empty
    std::string place;                  // may be empty
    std::optional<int> alarmDaysBefore; // at 07:00 of the calendar's own time; nothing: no alarm
};

/// The calendar as text: UTF-8, lines ended by CRLF and folded at 75 octets without cutting a character,
/// texts escaped, each entry with a stamp and a stable id, the program named as its maker. Control characters
/// are left out. now: when it is written. Entries with an impossible day throw std::invalid_argument.
[[nodiscard]] std::string calendarText(std::span<const CalendarEntry> entries, std::string_view name,
                                       std::int64_t nowUtcMs);

} // namespace halfcup::exchange
