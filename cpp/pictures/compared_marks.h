// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"

#include <QString>

#include <vector>

/// Marks and words of the pictures that hold colonies against each other, for them and for their legends.
namespace halfcup::pictures::marks {

inline constexpr double loadRadius = 4;

/// A wash and its range, lying: filled, or hollow where none was found (the range then begins there).
[[nodiscard]] std::vector<Shape> rangeAcross(double low, double middle, double high, double y,
                                             bool noneFound);
/// The treat line whole, the own line dashed.
[[nodiscard]] Shape treatLine(QPointF from, QPointF to);
[[nodiscard]] Shape ownLine(QPointF from, QPointF to);

[[nodiscard]] LegendEntry legendEntry(std::vector<Shape> shapes, const QString& meaning);

/// What is written on a hive, on one line and without what turns the direction of text; a dash where nothing
/// is.
[[nodiscard]] QString cleanLabel(const QString& label);

} // namespace halfcup::pictures::marks
