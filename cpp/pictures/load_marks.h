// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"
#include "records/colony_event.h"

#include <vector>

/// The marks of the chart of loads, for the chart and for its legend.
namespace halfcup::pictures {

/// Round for a wash, a triangle for another method; radius in units.
[[nodiscard]] QPainterPath washOutline(QPointF at, double radius, bool otherMethod);

[[nodiscard]] bool hasMark(records::EventKind kind);
/// What happened, in Ink, within a square of markSize around the point. Nothing for a kind without a mark.
[[nodiscard]] std::vector<Shape> happeningMark(records::EventKind kind, QPointF at);
/// "New queen", "Split": as the legend names it.
[[nodiscard]] QString happeningName(records::EventKind kind);

inline constexpr double markSize = 11; // units
/// What finds no room for its mark has a short stroke at the upper edge of the plot.
inline constexpr double crowdedStroke = 5;
/// So many are led down to the washes; of more, some may find no room.
inline constexpr std::size_t fewHappenings = 6;

/// Strokes and gaps that tell lines apart.
[[nodiscard]] inline std::vector<qreal> ownLineDash() {
    return {7, 3};
}
[[nodiscard]] inline std::vector<qreal> aheadDash() {
    return {3, 2.5};
}
[[nodiscard]] inline std::vector<qreal> todayDash() {
    return {1.5, 2.5};
}

} // namespace halfcup::pictures
