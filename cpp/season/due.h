// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "records/moment.h"
#include "records/record_id.h"
#include "records/sample.h"
#include "records/yard.h"
#include "season/bee_year.h"
#include "season/phrase.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace halfcup::season {

/// Days from one wash to the next in the bee season: "every month" [common practice, no source].
inline constexpr int monthDays = 30;
/// Days until a wash that could tell nothing is repeated [convention].
inline constexpr int unclearDays = 7;
/// Days from the end of a treatment to the wash that tells whether it worked: one brood cycle, within the 10
/// to 14 days of common practice; a wash counts from the 10th day on, and is asked for until the 60th [own
/// choice].
inline constexpr int afterTreatmentDays = 14;
inline constexpr int afterTreatmentCountsDays = 10;
inline constexpr int afterTreatmentForgottenDays = 60;
/// Days before the turn date from which on a wash is wanted: so that a course of six weeks could still end by
/// it [own choice]; not sooner than this after the last wash.
inline constexpr int beforeTurnDays = 42;
inline constexpr int apartDays = 14;

/// Why a colony is to be washed; the graver ones last. A screen has a word for each.
enum class DueReason {
    FirstWashOfYear,     // not washed in this bee year, or never
    Monthly,             // a month after the last wash
    AgainBecauseUnclear, // the last wash could not tell
    BeforeTurnDate, // the bees that overwinter are raised soon, and no wash has told since the window opened
    AfterTreatment, // did it work?
};

struct Due {
    DueReason reason = DueReason::FirstWashOfYear;
    records::Date dueOn; // the yard's local date
    int daysLate = 0;    // 0 due today, above 0 late, below 0 days ahead

    friend bool operator==(const Due&, const Due&) = default;
};

/// The last finished sample of a colony, as far as it decides what is due.
struct LastWash {
    records::Date washedOn;                            // local date of the scoop
    mites::Standing standing = mites::Standing::Under; // the graver of treat line and own line
    double loadPer100 = 0;                             // median, mites per 100 bees
};

/// From a kept sample. Nothing where the sample is not finished, is removed, or its answer makes no sense
/// (damaged figures): such a sample is no reason to leave a colony unwashed. Dated by the scoop, where that
/// is missing by the start.
[[nodiscard]] std::optional<LastWash> lastWashOf(const records::Sample& sample);

/// The treatment that ended, or will end, last of those that have begun.
struct LastTreatment {
    records::Date firstDay;
    records::Date end;
};

struct ColonyToJudge {
    records::RecordId colonyId;
    std::string label;
    std::optional<LastWash> lastWash; // of any year
    std::optional<LastTreatment> lastTreatment = {};
    std::optional<records::Date> knownSince = {}; // first day it was in the records: nobody is late before it
};

struct DueColony {
    ColonyToJudge colony;
    Due due;
    bool washedThisBeeYear = false;
    bool overLine = false; // the last wash of this bee year was over a line
};

/// What is due for one colony. Rules:
///   a treatment that runs, or ended less than 60 days ago without a wash from the 10th day after: 14 days
///   after its end, and nothing else until then; not washed in this bee year: from the first wash of the year
///   on (bee_year.h), today at the earliest where that day is only assumed, and never within a month of the
///   last wash (a week, where that was unclear); last wash unclear: a week after it; otherwise a month after
///   it, but not after the last wash day of the year: then the first wash of the next one; before the turn
///   date: from 42 days before it, where no wash came since, and 14 days after the last at the earliest.
/// dueOn is the earliest of these days, the reason the gravest whose day has come; where none has, that of
/// the earliest. In the tropics there is no first wash of the year and no end of washing. A last wash after
/// today counts like any other: the store hands on none that lies further ahead than clocks differ. Errors:
/// std::invalid_argument for a last wash on an impossible date.
[[nodiscard]] DueColony judge(const ColonyToJudge& colony, const YardYear& year, const records::Moment& now);

/// True where a comes before b: late before due today before later; within these, over the line first, then
/// the graver reason where it is the treatment or the turn date, then not washed this bee year, then the
/// longest unwashed, then by label in natural order, then by id. A strict order, so lists of several yards
/// can be put together and sorted again.
[[nodiscard]] bool moreUrgent(const DueColony& a, const DueColony& b);

/// All colonies of one yard, most urgent first.
[[nodiscard]] std::vector<DueColony> dueList(std::span<const ColonyToJudge> colonies,
                                             const records::Yard& yard, const records::Moment& now);

/// "monthly wash": the reason in a word or two.
[[nodiscard]] Term wordOf(DueReason reason);
/// "Due: monthly wash, 6 days late", "Due today: ...", "Due in 3 days: ...".
[[nodiscard]] Phrase phraseOf(const Due& due);

} // namespace halfcup::season
