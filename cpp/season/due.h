// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "records/moment.h"
#include "records/record_id.h"
#include "records/sample.h"
#include "records/yard.h"
#include "season/bee_year.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace halfcup::season {

/// Days from one wash to the next in the bee season: "every month" [common practice, no source].
inline constexpr int monthDays = 30;
/// Days until a wash that could tell nothing is repeated [convention].
inline constexpr int unclearDays = 7;

/// Why a colony is to be washed. The season adds reasons here (after a treatment, before the turn date); a
/// screen has a sentence for each.
enum class DueReason {
    FirstWashOfYear,     // not washed in this bee year, or never
    Monthly,             // a month after the last wash
    AgainBecauseUnclear, // the last wash could not tell
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

struct ColonyToJudge {
    records::RecordId colonyId;
    std::string label;
    std::optional<LastWash> lastWash; // of any year
};

struct DueColony {
    ColonyToJudge colony;
    Due due;
    bool washedThisBeeYear = false;
    bool overLine = false; // the last wash of this bee year was over a line
};

/// What is due for one colony. Rules:
///   not washed in this bee year: today, but never within a month of the last wash (or a week, where that was
///   unclear); last wash unclear: a week after it; otherwise a month after it.
/// A last wash after today (a clock that was wrong) counts like any other and is due that much later.
/// Errors: std::invalid_argument for a last wash on an impossible date.
[[nodiscard]] DueColony judge(const ColonyToJudge& colony, BeeYearStart start, const records::Moment& now);

/// True where a comes before b: late before due today before later; within these, over the line first, then
/// not washed this bee year, then the longest unwashed, then by label in natural order, then by id. A strict
/// order, so lists of several yards can be put together and sorted again.
[[nodiscard]] bool moreUrgent(const DueColony& a, const DueColony& b);

/// All colonies of one yard, most urgent first.
[[nodiscard]] std::vector<DueColony> dueList(std::span<const ColonyToJudge> colonies,
                                             const records::Yard& yard, const records::Moment& now);

} // namespace halfcup::season
