// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/months_item.h"

#include <QFontMetricsF>
#include <QPainter>

namespace halfcup::touch {

namespace {

constexpr double thin = 1;
constexpr double thick = 2;
constexpr double dot = 2.5; // radius of a wash
constexpr double flag = 7;  // of a turn date

} // namespace

MonthsItem::MonthsItem(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

template <class T>
void MonthsItem::set(T& member, const T& value) {
    if (member == value)
        return;
    member = value;
    update();
    emit changed();
}

void MonthsItem::setPicture(const MonthsPicture& picture) {
    set(m_picture, picture);
}

void MonthsItem::setInkColor(const QColor& color) {
    set(m_inkColor, color);
}

void MonthsItem::setLineColor(const QColor& color) {
    set(m_lineColor, color);
}

void MonthsItem::setCourseColor(const QColor& color) {
    set(m_courseColor, color);
}

void MonthsItem::setTodayColor(const QColor& color) {
    set(m_todayColor, color);
}

void MonthsItem::setFontFamily(const QString& family) {
    set(m_fontFamily, family);
}

void MonthsItem::setFontSize(int pixels) {
    set(m_fontSize, pixels);
}

void MonthsItem::paint(QPainter* painter) {
    if (!isValid(m_picture.first) || m_picture.letters.size() < MonthsGeometry::months)
        return;
    QFont font(m_fontFamily);
    font.setPixelSize(m_fontSize);
    painter->setFont(font);
    painter->setRenderHint(QPainter::Antialiasing);
    const double letterHeight = QFontMetricsF(font).height();
    const MonthsGeometry geometry(m_picture.first, size(), letterHeight);
    paintMonths(painter, geometry, letterHeight);
    paintMarks(painter, geometry);
}

void MonthsItem::paintMonths(QPainter* painter, const MonthsGeometry& geometry, double letterHeight) const {
    for (int index = 0; index < MonthsGeometry::months; ++index) {
        const QRectF month = geometry.month(index);
        painter->setPen(m_inkColor);
        painter->drawText(QRectF(month.left(), 0, month.width(), letterHeight), Qt::AlignCenter,
                          m_picture.letters[index]);
        painter->setPen(QPen(m_lineColor, thin));
        if (index > 0)
            painter->drawLine(QPointF(month.left(), letterHeight), month.bottomLeft());
    }
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(geometry.band().adjusted(0.5, 0.5, -0.5, -0.5));
}

void MonthsItem::paintMarks(QPainter* painter, const MonthsGeometry& geometry) const {
    const QRectF band = geometry.band();
    painter->setPen(QPen(m_inkColor, thin));
    painter->setBrush(m_courseColor);
    for (const QRectF& bar : geometry.bars(m_picture.courses))
        if (!bar.isEmpty())
            painter->drawRect(bar);
    painter->setPen(Qt::NoPen);
    painter->setBrush(m_inkColor);
    for (const records::Date& wash : m_picture.washes)
        if (geometry.holds(wash))
            painter->drawEllipse(QPointF(geometry.x(wash), band.bottom() - 2 * dot), dot, dot);
    for (const records::Date& turn : m_picture.turnDates) {
        if (!geometry.holds(turn))
            continue;
        const double x = geometry.x(turn);
        painter->setPen(QPen(m_inkColor, thick));
        painter->drawLine(QPointF(x, band.top()), QPointF(x, band.bottom()));
        painter->setPen(Qt::NoPen);
        painter->drawPolygon(
            QPolygonF({{x, band.top()}, {x + flag, band.top() + flag / 2}, {x, band.top() + flag}}));
    }
    if (geometry.holds(m_picture.today)) {
        const double x = geometry.x(m_picture.today);
        painter->setPen(QPen(m_todayColor, thick));
        painter->drawLine(QPointF(x, band.top()), QPointF(x, band.bottom()));
        painter->setPen(Qt::NoPen);
        painter->setBrush(m_todayColor);
        painter->drawPolygon(
            QPolygonF({{x - flag, band.top()}, {x + flag, band.top()}, {x, band.top() + flag}}));
    }
}

} // namespace halfcup::touch
