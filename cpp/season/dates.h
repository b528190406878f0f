// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"
#include "records/treatment.h"
#include "records/yard.h"
#include "season/due.h"
#include "season/phrase.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// What lies ahead in the keeper's yards, day by day: for the Season page and for calendars.
namespace halfcup::season {

enum class DateKind {
    WashDue,       // one for a yard and a day, however many colonies
    TreatmentEnds, // last day of a course that runs
    RemovalDue,
    HoneyFrom, // the first day on which honey may be taken again
    CheckWash, // wash to see whether the treatment worked
    TurnDate,
};

struct SeasonDate {
    records::Date day;
    DateKind kind = DateKind::WashDue;
    bool late = false; // the day has passed and it is still to do
    records::RecordId yardId;
    std::string yardName;
    std::vector<std::string> colonyLabels; // concerned, in natural order; empty: the whole yard
    records::RecordId treatmentId;         // of the middle kinds
    Phrase phrase;                         // what it is, in one line
    std::string key; // stays the same for the same thing: for the UID of a calendar entry
};

struct YardSeason {
    records::Yard yard;
    std::vector<DueColony> due; // every colony that lives, dueList()
    struct Course {
        records::Treatment treatment;
        std::vector<std::string> colonyLabels;
        bool checked = false; // a wash that counts came after it
    };
    std::vector<Course> courses; // all that may still matter
};

/// All dates from the oldest that is late to daysAhead days from today, in order; on one day late ones first,
/// then removals, honey, ends, checks, washes, turn dates.
[[nodiscard]] std::vector<SeasonDate> seasonDates(std::span<const YardSeason> yards,
                                                  const records::Date& today, int daysAhead);

} // namespace halfcup::season
