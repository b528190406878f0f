// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/outlook_item.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

namespace halfcup::touch {

namespace {

constexpr double bandAlpha = 0.35;
constexpr double thin = 1.5;
constexpr double thick = 2.5;

} // namespace

OutlookItem::OutlookItem(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

template <class T>
void OutlookItem::set(T& member, const T& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void OutlookItem::setPicture(const OutlookPicture& picture) {
    set(m_picture, picture);
}

void OutlookItem::setInkColor(const QColor& color) {
    set(m_inkColor, color);
}

void OutlookItem::setNothingColor(const QColor& color) {
    set(m_nothingColor, color);
}

void OutlookItem::setWithColor(const QColor& color) {
    set(m_withColor, color);
}

void OutlookItem::setLineColor(const QColor& color) {
    set(m_lineColor, color);
}

void OutlookItem::setFontFamily(const QString& family) {
    set(m_fontFamily, family);
}

void OutlookItem::setFontSize(int pixels) {
    set(m_fontSize, pixels);
}

void OutlookItem::paint(QPainter* painter) {
    if (m_picture.days() < 2)
        return;
    QFont font(m_fontFamily);
    font.setPixelSize(m_fontSize);
    painter->setFont(font);
    painter->setRenderHint(QPainter::Antialiasing);
    const QFontMetricsF metrics(font);
    const OutlookGeometry geometry(m_picture, size(), metrics.horizontalAdvance(QStringLiteral("30 ")),
                                   metrics.height() * 1.2);
    paintAxes(painter, geometry);
    painter->save();
    painter->setClipRect(geometry.plot());
    paintBands(painter, geometry);
    painter->restore();
    paintDays(painter, geometry);
}

void OutlookItem::paintAxes(QPainter* painter, const OutlookGeometry& geometry) const {
    const QRectF plot = geometry.plot();
    const QFontMetricsF metrics(painter->font());
    painter->setPen(QPen(m_lineColor, thin));
    painter->drawLine(plot.bottomLeft(), plot.bottomRight());
    painter->drawLine(plot.topLeft(), plot.bottomLeft());
    const auto label = [&](double load) {
        const double y = std::max(geometry.y(load), metrics.height() / 2);
        const QRectF place(0, y - metrics.height() / 2, plot.left() - 4, metrics.height());
        painter->setPen(m_inkColor);
        painter->drawText(place, Qt::AlignRight | Qt::AlignVCenter, QLocale().toString(load, 'g', 3));
    };
    label(geometry.top());
    if (m_picture.line > 0)
        label(m_picture.line);
    for (const OutlookPicture::Month& month : m_picture.months) {
        const double x = geometry.x(month.day);
        painter->setPen(QPen(m_lineColor, thin));
        painter->drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + 4));
        if (x + metrics.horizontalAdvance(month.letter) + 3 > width())
            continue;
        painter->setPen(m_inkColor);
        painter->drawText(QPointF(x + 3, plot.bottom() + metrics.ascent() + 3), month.letter);
    }
}

void OutlookItem::paintBands(QPainter* painter, const OutlookGeometry& geometry) const {
    painter->setPen(Qt::NoPen);
    painter->setBrush(QBrush(m_nothingColor, Qt::BDiagPattern));
    painter->drawPolygon(geometry.area(m_picture.nothing));
    QColor fill = m_withColor;
    fill.setAlphaF(bandAlpha);
    painter->setBrush(fill);
    painter->drawPolygon(geometry.area(m_picture.with));
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(m_inkColor, thick, Qt::DashLine));
    painter->drawPolyline(geometry.middle(m_picture.nothing));
    painter->setPen(QPen(m_withColor, thick));
    painter->drawPolyline(geometry.middle(m_picture.with));
}

/// The line, and the days that count.
void OutlookItem::paintDays(QPainter* painter, const OutlookGeometry& geometry) const {
    const QRectF plot = geometry.plot();
    painter->setPen(QPen(m_inkColor, thin));
    if (m_picture.line > 0)
        painter->drawLine(QPointF(plot.left(), geometry.y(m_picture.line)),
                          QPointF(plot.right(), geometry.y(m_picture.line)));
    const QFontMetricsF metrics(painter->font());
    const auto upright = [&](int day, Qt::PenStyle style, const QString& letter) {
        if (day < 0)
            return;
        const double x = geometry.x(day);
        painter->setPen(QPen(m_inkColor, thin, style));
        painter->drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
        const double width = metrics.horizontalAdvance(letter);
        const double left = x + 4 + width > plot.right() ? x - 4 - width : x + 4;
        painter->drawText(QPointF(left, plot.top() + metrics.ascent()), letter);
    };
    upright(m_picture.turnDay, Qt::SolidLine, tr("T", "turn date, one letter in a picture"));
    upright(m_picture.autumnDay, Qt::DotLine, tr("A", "mid-autumn, one letter in a picture"));
}

} // namespace halfcup::touch
