// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/season_strip_marks.h"

#include <QPolygonF>

namespace halfcup::pictures::marks {

namespace {

constexpr double flag = 8;    // length of a turn date's
constexpr double pointer = 5; // half the width of today's

QPainterPath polygon(const QPolygonF& points) {
    QPainterPath path;
    path.addPolygon(points);
    path.closeSubpath();
    return path;
}

/// Outlined within the bar, so that neighbours keep their ends.
QPainterPath outlined(const QRectF& bar) {
    QPainterPath path;
    path.addRect(bar.adjusted(0.5, 0.5, -0.5, -0.5));
    return path;
}

} // namespace

Shape flow(const QRectF& bar) {
    return {.path = outlined(bar), .inside = Tone::Sky, .fill = Fill::HatchDown, .outline = Tone::Quiet};
}

Shape capped(const QRectF& bar) {
    return {.path = outlined(bar), .inside = Tone::Honey, .outline = Tone::Quiet};
}

Shape uncapped(const QRectF& bar) {
    return {.path = outlined(bar), .inside = Tone::Page, .outline = Tone::Quiet};
}

Shape treated(const QRectF& bar) {
    return {.path = outlined(bar),
            .inside = Tone::Green,
            .fill = Fill::HatchUp,
            .outline = Tone::Ink,
            .width = 1.5};
}

Shape washed(QPointF middle) {
    QPainterPath path;
    path.addEllipse(middle, washRadius, washRadius);
    return {.path = path, .inside = Tone::Ink};
}

Shape due(QPointF middle) {
    const double r = washRadius;
    return {.path = polygon({{middle.x(), middle.y() - r},
                             {middle.x() + r, middle.y()},
                             {middle.x(), middle.y() + r},
                             {middle.x() - r, middle.y()}}),
            .inside = Tone::Page,
            .outline = Tone::Ink,
            .width = 1.5};
}

std::vector<Shape> turnDate(double x, double top, double bottom) {
    return {line({x, top}, {x, bottom}, Tone::Ink, 2),
            {.path = polygon({{x, top}, {x + flag, top + flag / 2}, {x, top + flag}}), .inside = Tone::Ink}};
}

std::vector<Shape> today(double x, double top, double bottom) {
    return {line({x, top}, {x, bottom}, Tone::Action, 2),
            {.path = polygon({{x - pointer, top}, {x + pointer, top}, {x, top + 1.6 * pointer}}),
             .inside = Tone::Action}};
}

} // namespace halfcup::pictures::marks
