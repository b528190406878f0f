// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/yard_due.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// What lies ahead in the keeper's yards, day by day: for the Season page and for calendars.
namespace halfcup::season {

/// In the order in which they stand within a day.
enum class DateKind {
    RemovalDue,    // strips, pads or trays have to come out
    HoneyFrom,     // the first day on which honey may be taken again
    TreatmentEnds, // last day of a course of which nothing has to be taken out
    CheckWash,     // wash to see whether the treatment worked
    WashDue,       // one for a yard and a day, however many colonies
    TurnDate,
};

struct SeasonDate {
    records::Date day;
    DateKind kind = DateKind::WashDue;
    bool late = false;                     // the day has passed and it is still to do
    std::size_t yard = 0;                  // place in the span
    std::vector<std::string> colonyLabels; // concerned, in natural order; empty: the whole yard
    records::RecordId treatmentId;         // of the first four kinds
    Phrase phrase;                         // what it is, in one line, without yard and colonies
    std::string key; // stays the same for the same thing: for the UID of a calendar entry
};

/// All dates from the oldest that is late to daysAhead days from today, in order. Washes that are late stand
/// on the earliest of their days, one entry for each yard. A check names the colonies that still want it. A
/// withdrawal that is not written down has no honey date.
[[nodiscard]] std::vector<SeasonDate> seasonDates(std::span<const YardRecords> yards,
                                                  const records::Moment& now, int daysAhead);

/// Days before the day on which a calendar reminds of it; nothing: it need not [own choice].
[[nodiscard]] std::optional<int> alarmDaysBefore(DateKind kind);

} // namespace halfcup::season
