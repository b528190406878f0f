// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <variant>

namespace halfcup::records {

/// What is wrong with something typed. The screen turns it into a sentence in the keeper's language.
enum class InputProblem {
    Empty,
    NotANumber,
    Negative,
    NotWhole,     // a count with a fraction, or with a mark that may be one
    TooLarge,     // above the limit for its kind
    TooSmall,     // below the limit for its kind, zero included
    TooLong,      // a name longer than fits a label
    AlreadyThere, // a name that another has
    InTheFuture,
};

template <typename T>
using Checked = std::variant<T, InputProblem>;

/// Limits of what can be typed; all [convention], wide enough for any real scoop.
inline constexpr double smallestScoopMl = 10; // below this no jar holds a sample
inline constexpr double largestScoopMl = 1000;
inline constexpr double fewestBees = 10;
inline constexpr double mostBees = 5000;
inline constexpr double largestLine = 100;     // mites per 100 bees
inline constexpr std::size_t longestName = 60; // characters (code points)

/// Reads a number as people type it: blanks around it, decimal point or decimal comma, no exponent, no
/// grouping.
[[nodiscard]] Checked<double> readNumber(std::string_view text);

/// Mites counted: whole, 0 to largestCount. Decimal marks are refused (NotWhole), also in "1,000" and "9.0".
[[nodiscard]] Checked<std::int64_t> readCount(std::string_view text);
/// Bees in a jar: whole, fewestBees to mostBees; decimal marks as above.
[[nodiscard]] Checked<double> readBees(std::string_view text);
/// Scoop in millilitres.
[[nodiscard]] Checked<double> readVolumeMl(std::string_view text);
/// A line in mites per 100 bees, above 0.
[[nodiscard]] Checked<double> readLine(std::string_view text);
/// A name or label, blanks at its ends ignored: not empty, not too long.
[[nodiscard]] std::optional<InputProblem> checkName(std::string_view text);

} // namespace halfcup::records
