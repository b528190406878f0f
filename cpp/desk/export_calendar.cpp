// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/export_calendar.h"

#include "exchange/calendar.h"
#include "season/dates.h"

#include <algorithm>
#include <vector>

namespace halfcup::desk {

namespace {

constexpr int daysAhead = 365;

std::string placeOf(const season::SeasonDate& date, const records::Yard& yard) {
    std::string place = yard.name;
    for (std::size_t i = 0; i < date.colonyLabels.size(); ++i) {
        const char* const before = i > 0 ? ", " : date.colonyLabels.size() == 1 ? ", colony " : ", colonies ";
        place += before + date.colonyLabels[i];
    }
    return place;
}

} // namespace

std::string calendarOf(std::span<const records::YardRecords> yards, const records::Moment& on) {
    const records::Date today = records::localDate(on);
    std::vector<exchange::CalendarEntry> entries;
    for (const season::SeasonDate& date : season::seasonDates(yards, on, daysAhead)) {
        const records::Yard& yard = yards[date.yard].yard;
        exchange::CalendarEntry entry;
        entry.key = date.key;
        entry.day = std::max(date.day, today); // a day that has passed rings nobody
        entry.summary =
            (yard.demo ? "Demo: " : "") + season::inEnglish(date.phrase) + " (" + placeOf(date, yard) + ")";
        if (date.late)
            entry.description = "Late: it was due on " + records::toIso(date.day) + ".";
        entry.place = yard.name;
        entry.alarmDaysBefore = season::alarmDaysBefore(date.kind);
        entries.push_back(std::move(entry));
    }
    return exchange::calendarText(entries, "Halfcup", on.utcMs);
}

} // namespace halfcup::desk
