// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/phrase.h"

#include <string_view>
#include <variant>
#include <vector>

namespace halfcup::season {

enum class TemperatureUnit { Celsius, Fahrenheit };

[[nodiscard]] double toCelsius(double value, TemperatureUnit unit);
[[nodiscard]] double fromCelsius(double celsius, TemperatureUnit unit);

/// Reads temperatures as people type them in a row: "24 26 27", "24, 26, 27", "24.5; 26", and with a decimal
/// comma where blanks or semicolons part them: "24,5 26,0". A letter C or F, with or without a degree sign,
/// right behind a figure outranks the unit. Nothing typed is an empty list. Answers in degrees Celsius, or
/// what is wrong in a sentence. No limits here: problemsOf(Situation) has them.
[[nodiscard]] std::variant<std::vector<double>, Phrase> readTemperatures(std::string_view text,
                                                                         TemperatureUnit unit);

} // namespace halfcup::season
