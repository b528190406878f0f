// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/calendar.h"

#include <cstdio>
#include <stdexcept>

namespace halfcup::exchange {

namespace {

constexpr std::size_t longestLine = 75; // octets, RFC 5545 section 3.1

bool isContinuation(char c) {
    return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

/// One content line, folded: the line feed and the blank of a fold do not count for the first line.
void addLine(std::string& out, std::string_view line) {
    std::size_t at = 0;
    std::size_t room = longestLine;
    while (line.size() - at > room) {
        std::size_t end = at + room;
        while (end > at && isContinuation(line[end]))
            --end; // no character is cut
        if (end == at)
            end = at + room; // not UTF-8 at all: cut somewhere
        out += line.substr(at, end - at);
        out += "\r\n ";
        at = end;
        room = longestLine - 1; // the blank in front is one
    }
    out += line.substr(at);
    out += "\r\n";
}

/// TEXT of section 3.3.11.
std::string escaped(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == '\n')
            out += "\\n";
        else if (c == '\\' || c == ';' || c == ',')
            (out += '\\') += c;
        else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7F)
            out += c;
    }
    return out;
}

std::string dayText(const records::Date& day) {
    if (!isValid(day) || day.year < 0 || day.year > 9999)
        throw std::invalid_argument("There is no such day as " + records::toIso(day) + ".");
    char text[48];
    std::snprintf(text, sizeof text, "%04d%02d%02d", day.year, day.month, day.day);
    return text;
}

std::string stampText(std::int64_t utcMs) {
    const std::int64_t seconds = utcMs / 1000;
    const auto inDay = static_cast<int>(((seconds % 86400) + 86400) % 86400);
    char text[32];
    std::snprintf(text, sizeof text, "T%02d%02d%02dZ", inDay / 3600, inDay / 60 % 60, inDay % 60);
    return dayText(records::localDate({utcMs, 0})) + text;
}

/// Alarms count from midnight at the start of the day: 07:00 of the day itself is 7 hours after.
std::string triggerText(int daysBefore) {
    if (daysBefore <= 0)
        return "PT7H";
    return "-PT" + std::to_string(24 * daysBefore - 7) + "H";
}

} // namespace

std::string calendarText(std::span<const CalendarEntry> entries, std::string_view name,
                         std::int64_t nowUtcMs) {
    std::string out;
    const auto line = [&out](const std::string& text) { addLine(out, text); };
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Halfcup//Season//EN");
    line("CALSCALE:GREGORIAN");
    line("NAME:" + escaped(name)); // RFC 7986
    for (const CalendarEntry& entry : entries) {
        line("BEGIN:VEVENT");
        line("UID:" + escaped(entry.key) + "@halfcup.invalid"); // a name that belongs to nobody, RFC 2606
        line("DTSTAMP:" + stampText(nowUtcMs));
        line("DTSTART;VALUE=DATE:" + dayText(entry.day));
        line("DTEND;VALUE=DATE:" + dayText(records::plusDays(entry.day, 1)));
        line("SUMMARY:" + escaped(entry.summary));
        if (!entry.description.empty())
            line("DESCRIPTION:" + escaped(entry.description));
        if (!entry.place.empty())
            line("LOCATION:" + escaped(entry.place));
        line("TRANSP:TRANSPARENT");
        if (entry.alarmDaysBefore) {
            line("BEGIN:VALARM");
            line("ACTION:DISPLAY");
            line("DESCRIPTION:" + escaped(entry.summary));
            line("TRIGGER:" + triggerText(*entry.alarmDaysBefore));
            line("END:VALARM");
        }
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    return out;
}

} // namespace halfcup::exchange
