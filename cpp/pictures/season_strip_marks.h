// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"

#include <vector>

/// What a season strip is made of, in the strip and in its legend alike.
namespace halfcup::pictures::marks {

inline constexpr double washRadius = 4;

[[nodiscard]] Shape flow(const QRectF& bar);
[[nodiscard]] Shape capped(const QRectF& bar);
[[nodiscard]] Shape uncapped(const QRectF& bar);
[[nodiscard]] Shape treated(const QRectF& bar);
[[nodiscard]] Shape washed(QPointF middle);
[[nodiscard]] Shape due(QPointF middle);
/// An upright line with a flag at its head, and one with a pointer there.
[[nodiscard]] std::vector<Shape> turnDate(double x, double top, double bottom);
[[nodiscard]] std::vector<Shape> today(double x, double top, double bottom);

} // namespace halfcup::pictures::marks
