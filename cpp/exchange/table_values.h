// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The cells of a table as people and spreadsheets of any country write them.
namespace halfcup::exchange {

/// Without blanks at its ends (also no-break spaces, U+00A0 and U+202F).
[[nodiscard]] std::string_view trimmedCell(std::string_view cell);
/// At most so many bytes, cut between letters of UTF-8.
[[nodiscard]] std::string_view cutCell(std::string_view cell, std::size_t mostBytes);
/// A name to compare: small letters, no accents, one blank for whatever is neither letter nor digit ("%" is
/// the word "percent"): "Mites / 100 (Bees)" and "mites 100 bees" are the same.
[[nodiscard]] std::string comparableName(std::string_view name);
/// A yard's name or a colony's label to compare: case and blanks ignored, all else kept.
[[nodiscard]] std::string comparableLabel(std::string_view label);

/// What the first, second and third part of a day written in figures are.
enum class DayOrder { YearMonthDay, DayMonthYear, MonthDayYear };

/// A cell that holds a day; and what stands behind it, which may be a time.
struct WrittenDay {
    records::Date day; // a real one
    std::string_view rest;
};

/// Reads "2026-05-18", "18.5.2026", "18/05/26", "5/18/2026", "18 May 2026", "May 18, 2026" and the like; `-`,
/// `/`, `.` between figures, names of months in English, Spanish, French and German. A year of four figures
/// in front is always year, month, day, and a name of a month needs no order. Without an order, days that
/// could be read in two ways are nothing. Two figures are a year of the hundred that end with `today`.
[[nodiscard]] std::optional<WrittenDay> readDay(std::string_view cell, std::optional<DayOrder> order,
                                                const records::Date& today);
/// True for a cell that is a day in some order, for telling a row of names from a row of values.
[[nodiscard]] bool looksLikeDay(std::string_view cell);

/// How days are written in a column, found from the column as a whole.
struct OrderFound {
    std::optional<DayOrder> order; // nothing: it has to be asked
    bool both = false;             // some days can only be day first, others only month first
    std::string example;           // a cell that could be both, or (with `both`) one that does not fit
};
/// Figures parted by points are day first (wherever points are used, it is so: common practice, no source).
/// Parted by `/` or `-`, one figure above 12 settles it for all.
[[nodiscard]] OrderFound findDayOrder(const std::vector<std::string_view>& cells);

/// Minutes after midnight: "9:40", "09:40:30", "9.40", "9h40", "9:40 pm". Nothing for anything else.
[[nodiscard]] std::optional<int> readClock(std::string_view cell);

/// A number with a decimal point or a decimal comma, between smallest and largest; what cannot be told is
/// nothing. One mark with exactly three figures behind it may also part thousands: where only one reading is
/// within the limits it is taken, where both are, `twoWays` is set.
struct WrittenNumber {
    enum class Trouble { None, NotANumber, TwoWays, TooSmall, TooLarge };
    Trouble trouble = Trouble::None;
    double value = 0;
    int decimals = 0; // figures behind the mark
};
[[nodiscard]] WrittenNumber readTableNumber(std::string_view cell, double smallest, double largest);

} // namespace halfcup::exchange
