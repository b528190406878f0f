// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QSizeF>

namespace halfcup::pictures {

/// The six corners of a hexagon standing on a point; radius: from its middle to a corner.
[[nodiscard]] QPolygonF hexagon(QPointF middle, double radius);

/// Where the hundred cells of the comb lie: ten rows of ten hexagons standing on a point, every second row
/// moved by half a cell as bees build it. A row is ten mites per 100 bees, so the picture can be counted by
/// rows. Lengths are in the units of the size given. Knows nothing of painting, so a screen and a sheet share
/// it.
class CombGeometry {
public:
    static constexpr int rows = 10;
    static constexpr int cellsInRow = 10;
    static constexpr int cells = rows * cellsInRow;

    /// The largest comb that fits into the size, from its top left corner. stroke: the width of the wall of a
    /// cell; half of it lies outside the hexagon and is allowed for. An empty size gives cells of radius 0.
    CombGeometry(QSizeF size, double stroke);

    /// Width of a comb divided by its height, walls apart: 10.5 cell widths by 15.5 radii.
    static double aspect();

    double radius() const { return m_radius; } // centre to corner
    double cellWidth() const;                  // flat side to flat side
    QSizeF size() const;                       // what the comb takes, walls included

    /// index 0 to 99, in reading order. Outside of that, the nearest cell's.
    QPointF centre(int index) const;
    /// The six corners; scale 1 is the cell itself, less is a core inside it.
    QPolygonF cell(int index, double scale = 1.0) const;

private:
    double m_radius = 0;
    double m_stroke = 0;
};

} // namespace halfcup::pictures
