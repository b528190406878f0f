// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/standing_mark.h"

#include "touch/standing_word.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace halfcup::touch {

namespace {

// The mark is drawn in a square of side 1 and scaled to the item.
constexpr double stroke = 0.085;
constexpr double belly = 0.19;

struct Layout {
    double lineY;
    double dropY; // of the belly's centre
};

Layout layoutOf(int standing) {
    switch (standing) {
    case StandingWord::Under:
        return {0.16, 0.70};
    case StandingWord::Over:
        return {0.88, 0.56};
    default:
        return {0.60, 0.60};
    }
}

void paintQuestion(QPainter* painter, const QColor& ink) {
    QPainterPath hook;
    hook.arcMoveTo(QRectF(0.30, 0.12, 0.40, 0.40), 190);
    hook.arcTo(QRectF(0.30, 0.12, 0.40, 0.40), 190, -235);
    hook.quadTo(0.50, 0.56, 0.50, 0.68);
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(ink, stroke * 1.3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter->drawPath(hook);
    painter->setPen(Qt::NoPen);
    painter->setBrush(ink);
    painter->drawEllipse(QPointF(0.50, 0.86), 0.07, 0.07);
}

} // namespace

StandingMark::StandingMark(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

template <class T>
void StandingMark::set(T& member, const T& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void StandingMark::setStanding(int standing) {
    set(m_standing, standing);
}

void StandingMark::setInkColor(const QColor& color) {
    set(m_inkColor, color);
}

void StandingMark::setCloseColor(const QColor& color) {
    set(m_closeColor, color);
}

void StandingMark::setOverColor(const QColor& color) {
    set(m_overColor, color);
}

QPainterPath StandingMark::drop(QPointF centre, double radius) {
    // The flanks touch the belly where a line from the tip is a tangent: at 30 degrees above its middle,
    // because the tip is two radii away.
    const double angle = 30 * std::numbers::pi / 180;
    const QPointF tip = centre - QPointF(0, 2 * radius);
    QPainterPath path(tip);
    path.lineTo(centre + QPointF(std::cos(angle), -std::sin(angle)) * radius);
    path.arcTo(QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), 30, -240);
    path.closeSubpath();
    return path;
}

void StandingMark::paint(QPainter* painter) {
    const double side = std::min(width(), height());
    if (side <= 0)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate((width() - side) / 2, (height() - side) / 2);
    painter->scale(side, side);

    if (m_standing == StandingWord::CannotTell) {
        paintQuestion(painter, m_inkColor);
        return;
    }
    const QPen pen(m_inkColor, stroke, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    painter->setPen(pen);
    const bool known = m_standing == StandingWord::Under || m_standing == StandingWord::Close ||
                       m_standing == StandingWord::Over;
    if (!known) {
        painter->drawLine(QPointF(0.34, 0.5), QPointF(0.66, 0.5));
        return;
    }

    const Layout layout = layoutOf(m_standing);
    const QPainterPath shape = drop({0.5, layout.dropY}, belly);
    painter->drawLine(QPointF(0.06, layout.lineY), QPointF(0.94, layout.lineY));
    // The drop on the line hides what lies behind it, as the others do: only its fill differs.
    if (m_standing == StandingWord::Close)
        painter->setBrush(m_closeColor);
    else if (m_standing == StandingWord::Over)
        painter->setBrush(m_overColor);
    painter->drawPath(shape);
}

} // namespace halfcup::touch
