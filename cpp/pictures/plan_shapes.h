// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "pictures/drawing.h"

#include <optional>

/// What a plan of a yard is made of; its legend shows the same shapes.
namespace halfcup::pictures {

/// A hive from above. fromPositions: a dashed outline. picked: a thick one.
void addHiveSquare(Drawing& drawing, const QRectF& square, bool fromPositions, bool picked);
/// Where the mark of the standing goes in it.
[[nodiscard]] QRectF standingRoomOf(const QRectF& square);
/// From a mark that had to make room to a dot where its hive truly stands.
void addLeader(Drawing& drawing, QPointF mark, QPointF truly);
void addScaleBar(Drawing& drawing, QPointF leftMiddle, double length);
/// Up; height units high.
void addNorthArrow(Drawing& drawing, QPointF middle, double height);

/// Which is told first: over, close, can't tell, under, not washed; the gravest has the highest.
[[nodiscard]] int gravityOf(std::optional<mites::Standing> standing);

} // namespace halfcup::pictures
