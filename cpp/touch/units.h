// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/foot.h"

namespace halfcup::touch {

/// How lengths and temperatures are shown and typed. What is kept is always metres and degrees Celsius.
enum class Units {
    Metric,     // metres, degrees Celsius
    UsCustomary // feet, miles, degrees Fahrenheit
};

using pictures::metresPerFoot;
constexpr double feetPerMile = 5280;

} // namespace halfcup::touch
