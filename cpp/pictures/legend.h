// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"
#include "pictures/type.h"

#include <vector>

namespace halfcup::pictures {

/// One thing a picture shows and what it means. Any two of one picture differ by shape, hatch or dash, never
/// by colour alone; a test looks at them with the eyes of colour-blind people and in grey.
struct LegendEntry {
    Drawing key; // legendKeySize
    QString meaning;
};
using Legend = std::vector<LegendEntry>;

inline constexpr QSizeF legendKeySize{28, 16}; // units

/// The entries in columns as wide as the sheet allows, as high as they need: the drawing's size says how high
/// (the sheet's own height does not matter). Long meanings are broken into lines, never cut.
[[nodiscard]] Drawing drawLegend(const Legend& legend, const Sheet& sheet);

} // namespace halfcup::pictures
