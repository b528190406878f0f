// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/painter.h"

#include <QPainter>

#include <cmath>

namespace halfcup::pictures {

namespace {

constexpr double hatchGap = 5; // units between the lines of a hatch
constexpr double hatchWidth = 1.2;

void hatch(QPainter& painter, const Shape& shape, const QColor& color) {
    painter.save();
    painter.setClipPath(shape.path, Qt::IntersectClip);
    painter.setPen(QPen(color, hatchWidth));
    const QRectF all = shape.in ? shape.path.boundingRect() & *shape.in : shape.path.boundingRect();
    const double slope = shape.fill == Fill::HatchUp ? -1 : 1;
    // Lines start at whole steps of the drawing, so that neighbouring areas with one hatch run on.
    const double first = slope < 0 ? all.left() + all.top() : all.left() - all.bottom();
    const double last = slope < 0 ? all.right() + all.bottom() : all.right() - all.top();
    QList<QLineF> lines;
    for (double at = std::ceil(first / hatchGap) * hatchGap; at <= last; at += hatchGap)
        lines.append(slope < 0 ? QLineF(at - all.top(), all.top(), at - all.bottom(), all.bottom())
                               : QLineF(at + all.top(), all.top(), at + all.bottom(), all.bottom()));
    painter.drawLines(lines);
    painter.restore();
}

void paint(QPainter& painter, const Shape& shape, const Palette& palette) {
    if (shape.in) {
        painter.save();
        painter.setClipRect(*shape.in, Qt::IntersectClip);
    }
    if (shape.inside) {
        QColor color = palette.of(*shape.inside);
        color.setAlphaF(static_cast<float>(shape.opacity));
        if (shape.fill == Fill::Solid)
            painter.fillPath(shape.path, color);
        else
            hatch(painter, shape, color);
    }
    if (shape.outline && shape.width > 0) {
        QPen pen(palette.of(*shape.outline), shape.width, Qt::SolidLine,
                 shape.roundCap ? Qt::RoundCap : Qt::FlatCap, shape.roundCap ? Qt::RoundJoin : Qt::MiterJoin);
        if (!shape.dash.empty()) {
            QList<qreal> pattern; // a pen counts in its own widths
            for (const qreal each : shape.dash)
                pattern.append(each / shape.width);
            pen.setDashPattern(pattern);
        }
        painter.strokePath(shape.path, pen);
    }
    if (shape.in)
        painter.restore();
}

void paint(QPainter& painter, const Label& label, const Palette& palette, const Type& type) {
    if (label.text.isEmpty())
        return;
    if (label.backed)
        painter.fillRect(label.box.adjusted(-1, 0, 1, 0), palette.of(Tone::Page));
    const double width = type.width(label.text, label.size);
    double left = label.box.left();
    if (label.alignment & Qt::AlignRight)
        left = label.box.right() - width;
    else if (label.alignment & Qt::AlignHCenter)
        left = label.box.center().x() - width / 2;
    const double top = label.box.center().y() - type.height(label.size) / 2;
    painter.setFont(type.font(label.size));
    painter.setPen(palette.of(label.tone));
    painter.drawText(QPointF(left, top + type.ascent(label.size)), label.text);
}

} // namespace

void paint(QPainter& painter, const Drawing& drawing, const Palette& palette, const Type& type) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const auto& thing : drawing.things)
        if (const auto* shape = std::get_if<Shape>(&thing))
            paint(painter, *shape, palette);
        else
            paint(painter, std::get<Label>(thing), palette, type);
    painter.restore();
}

} // namespace halfcup::pictures
