// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/comb_geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace halfcup::pictures {

namespace {

// Of a hexagon standing on a point, in radii.
constexpr double widthOfCell = std::numbers::sqrt3;
constexpr double rowPitch = 1.5;
// The moved rows stick out by half a cell.
constexpr double widthOfComb = (CombGeometry::cellsInRow + 0.5) * widthOfCell;
constexpr double heightOfComb = (CombGeometry::rows - 1) * rowPitch + 2;

} // namespace

CombGeometry::CombGeometry(QSizeF size, double stroke)
    : m_stroke(std::max(0.0, stroke)) {
    const double byWidth = (size.width() - m_stroke) / widthOfComb;
    const double byHeight = (size.height() - m_stroke) / heightOfComb;
    m_radius = std::max(0.0, std::min(byWidth, byHeight));
}

double CombGeometry::aspect() {
    return widthOfComb / heightOfComb;
}

double CombGeometry::cellWidth() const {
    return m_radius * widthOfCell;
}

QSizeF CombGeometry::size() const {
    return {m_radius * widthOfComb + m_stroke, m_radius * heightOfComb + m_stroke};
}

QPointF CombGeometry::centre(int index) const {
    const int known = std::clamp(index, 0, cells - 1);
    const int row = known / cellsInRow;
    const int column = known % cellsInRow;
    const double moved = row % 2 == 1 ? 0.5 : 0.0;
    return {m_stroke / 2 + (column + 0.5 + moved) * cellWidth(),
            m_stroke / 2 + (1 + row * rowPitch) * m_radius};
}

QPolygonF CombGeometry::cell(int index, double scale) const {
    return hexagon(centre(index), m_radius * scale);
}

QPolygonF hexagon(QPointF middle, double radius) {
    QPolygonF corners;
    corners.reserve(6);
    for (int corner = 0; corner < 6; ++corner) {
        const double angle = (corner * 60 - 90) * std::numbers::pi / 180;
        corners.append(middle + QPointF(std::cos(angle), std::sin(angle)) * radius);
    }
    return corners;
}

} // namespace halfcup::pictures
