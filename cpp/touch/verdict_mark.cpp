// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/verdict_mark.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace halfcup::touch {

namespace {

// Drawn in a square of side 1 and scaled to the item.
constexpr double stroke = 0.09;

QPainterPath entrance() {
    QPainterPath arch(QPointF(0.12, 0.86));
    arch.lineTo(0.12, 0.50);
    arch.arcTo(QRectF(0.12, 0.12, 0.76, 0.76), 180, -180);
    arch.lineTo(0.88, 0.86);
    arch.closeSubpath();
    return arch;
}

} // namespace

VerdictMark::VerdictMark(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

VerdictMark::Value VerdictMark::from(season::Verdict verdict) {
    switch (verdict) {
    case season::Verdict::Fits:
        return Fits;
    case season::Verdict::WithCare:
        return WithCare;
    case season::Verdict::NotNow:
        return NotNow;
    }
    return Unknown;
}

QString VerdictMark::word(season::Verdict verdict) {
    switch (verdict) {
    case season::Verdict::Fits:
        return tr("Fits");
    case season::Verdict::WithCare:
        return tr("Fits with care");
    case season::Verdict::NotNow:
        return tr("Not now");
    }
    return {};
}

template <class T>
void VerdictMark::set(T& member, const T& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void VerdictMark::setVerdict(int verdict) {
    set(m_verdict, verdict);
}

void VerdictMark::setInkColor(const QColor& color) {
    set(m_inkColor, color);
}

void VerdictMark::setCareColor(const QColor& color) {
    set(m_careColor, color);
}

void VerdictMark::setBarColor(const QColor& color) {
    set(m_barColor, color);
}

void VerdictMark::paint(QPainter* painter) {
    const double side = std::min(width(), height());
    if (side <= 0 || m_verdict < Fits || m_verdict > NotNow)
        return;
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate((width() - side) / 2, (height() - side) / 2);
    painter->scale(side, side);

    const QPainterPath arch = entrance();
    if (m_verdict == WithCare) { // the lower half is closed
        painter->save();
        painter->setClipRect(QRectF(0, 0.52, 1, 0.5));
        painter->fillPath(arch, m_careColor);
        painter->restore();
    } else if (m_verdict == NotNow) {
        painter->fillPath(arch, m_barColor);
    }
    painter->setPen(QPen(m_inkColor, stroke, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter->setBrush(Qt::NoBrush);
    painter->drawPath(arch);
    if (m_verdict == WithCare)
        painter->drawLine(QPointF(0.12, 0.54), QPointF(0.88, 0.54));
    if (m_verdict == NotNow) {
        painter->setPen(QPen(m_inkColor, stroke * 1.4, Qt::SolidLine, Qt::FlatCap));
        painter->drawLine(QPointF(0.02, 0.96), QPointF(0.98, 0.04));
    }
}

} // namespace halfcup::touch
