// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"

#include <cstdint>
#include <optional>
#include <string>

/// Counts that are not of bees: a sticky board under a screened floor, drone brood opened.
namespace halfcup::records {

/// How long a board may lie: over a fortnight its mites dry, are carried off and hidden by wax [own choice].
inline constexpr double longestBoardHours = 14 * 24;

/// A sticky board and its time under the colony.
struct BoardStay {
    std::optional<std::int64_t> laidAtMs; // UTC; nothing where it was laid without the phone
    std::optional<std::int64_t> pulledAtMs;
    std::optional<double> typedHours; // the keeper's own figure outranks the clock
    /// Cells of the board's grid that were counted, and how many it has; both 0: the whole board.
    std::int64_t cellsCounted = 0;
    std::int64_t cells = 0;

    friend bool operator==(const BoardStay&, const BoardStay&) = default;
};

[[nodiscard]] bool isUnderColony(const BoardStay& board); // laid, not pulled
/// Hours under the colony: as typed, else by the clock. Nothing before it is pulled, and where the clock says
/// that it was pulled before it was laid.
[[nodiscard]] std::optional<double> hoursOf(const BoardStay& board);
[[nodiscard]] double shareCounted(const BoardStay& board); // above 0, at most 1

/// What a count that is not of bees said, kept as it was said. In mites a day for a board, in 100 cells for
/// brood.
struct OtherAnswer {
    std::int64_t count = 0; // mites, or cells with mites
    double q05 = 0;
    double q50 = 0;
    double q95 = 0;
    std::optional<double> line; // the handbook's for that month; nothing where it has none
    std::string lineSource;     // the id of the handbook's entry
    double chanceOver = 0;      // of the true figure being over the line
    /// Mites per 100 adult bees, where it can honestly be said (season/board_reading.h); else nothing.
    std::optional<double> loadQ05;
    std::optional<double> loadQ50;
    std::optional<double> loadQ95;

    friend bool operator==(const OtherAnswer&, const OtherAnswer&) = default;
};

void putBoard(Fields& fields, const BoardStay& board);
[[nodiscard]] BoardStay boardFrom(const Fields& fields);
void putOtherAnswer(Fields& fields, const std::optional<OtherAnswer>& answer);
[[nodiscard]] std::optional<OtherAnswer> otherAnswerFrom(const Fields& fields);

} // namespace halfcup::records
