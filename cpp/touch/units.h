// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace halfcup::touch {

/// How lengths and temperatures are shown and typed. What is kept is always metres and degrees Celsius.
enum class Units {
    Metric,     // metres, degrees Celsius
    UsCustomary // feet, miles, degrees Fahrenheit
};

constexpr double metresPerFoot = 0.3048; // exact: international yard and pound agreement, 1959
constexpr double feetPerMile = 5280;

} // namespace halfcup::touch
