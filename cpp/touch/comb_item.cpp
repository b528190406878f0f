// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/comb_item.h"

#include "touch/comb_geometry.h"

#include <QPainter>

#include <algorithm>

namespace halfcup::touch {

namespace {

// In parts of a cell's radius, so that the picture keeps its look at every size.
constexpr double emptyWall = 0.10;
constexpr double knownWall = 0.20;
constexpr double coreSize = 0.46;
constexpr double plusArm = 0.42;

} // namespace

CombItem::CombItem(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

template <class T>
void CombItem::set(T& member, const T& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void CombItem::setAtLeast(int cells) {
    set(m_atLeast, std::clamp(cells, 0, CombGeometry::cells));
}

void CombItem::setPerhaps(int cells) {
    set(m_perhaps, std::clamp(cells, 0, CombGeometry::cells));
}

void CombItem::setOverflows(bool overflows) {
    set(m_overflows, overflows);
}

void CombItem::setFillColor(const QColor& color) {
    set(m_fillColor, color);
}

void CombItem::setWallColor(const QColor& color) {
    set(m_wallColor, color);
}

void CombItem::setEmptyColor(const QColor& color) {
    set(m_emptyColor, color);
}

double CombItem::aspect() const {
    return CombGeometry::aspect();
}

void CombItem::paint(QPainter* painter) {
    // The wall follows from the radius and the radius from the wall: a first guess without walls is near
    // enough.
    const double guess = CombGeometry(size(), 0).radius();
    const CombGeometry comb(size(), guess * knownWall);
    const double radius = comb.radius();
    if (radius <= 0)
        return;

    painter->setRenderHint(QPainter::Antialiasing);
    const int known = std::min(m_atLeast + m_perhaps, CombGeometry::cells);

    // Empty cells first, so that the stronger walls of the others lie over theirs.
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(m_emptyColor, radius * emptyWall, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    for (int index = known; index < CombGeometry::cells; ++index)
        painter->drawPolygon(comb.cell(index));

    const QPen wall(m_wallColor, radius * knownWall, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    for (int index = 0; index < known; ++index) {
        const bool full = index < m_atLeast;
        painter->setPen(wall);
        painter->setBrush(full ? QBrush(m_fillColor) : QBrush(Qt::NoBrush));
        painter->drawPolygon(comb.cell(index));
        if (full)
            continue;
        painter->setPen(Qt::NoPen);
        painter->setBrush(m_fillColor);
        painter->drawPolygon(comb.cell(index, coreSize));
    }

    if (m_overflows) {
        const QPointF middle = comb.centre(CombGeometry::cells - 1);
        const double arm = radius * plusArm;
        painter->setPen(wall);
        painter->drawLine(middle - QPointF(arm, 0), middle + QPointF(arm, 0));
        painter->drawLine(middle - QPointF(0, arm), middle + QPointF(0, arm));
    }
}

} // namespace halfcup::touch
