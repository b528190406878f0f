// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/shake_ring.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

namespace {

constexpr int sixteenths = 16;
constexpr int top = 90 * sixteenths;
constexpr int circle = 360 * sixteenths;

} // namespace

ShakeRing::ShakeRing(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

template <class T>
void ShakeRing::set(T& member, const T& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void ShakeRing::setFraction(double fraction) {
    // Not a number would poison every comparison after it.
    set(m_fraction, std::isfinite(fraction) ? std::clamp(fraction, 0.0, 1.0) : 0.0);
}

void ShakeRing::setThickness(double thickness) {
    set(m_thickness, thickness);
}

void ShakeRing::setRingColor(const QColor& color) {
    set(m_ringColor, color);
}

void ShakeRing::setRestColor(const QColor& color) {
    set(m_restColor, color);
}

int ShakeRing::span(double fraction) {
    return -static_cast<int>(std::lround(circle * fraction));
}

void ShakeRing::paint(QPainter* painter) {
    const double side = std::min(width(), height()) - m_thickness;
    if (side <= 0)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF ring((width() - side) / 2, (height() - side) / 2, side, side);
    painter->setPen(QPen(m_restColor, m_thickness, Qt::SolidLine, Qt::FlatCap));
    painter->drawArc(ring, 0, circle);
    if (m_fraction <= 0)
        return;
    painter->setPen(QPen(m_ringColor, m_thickness, Qt::SolidLine, Qt::FlatCap));
    painter->drawArc(ring, top, span(m_fraction));
}

} // namespace halfcup::touch
