// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/plan_shapes.h"

namespace halfcup::pictures {

namespace {

constexpr double corner = 3;
constexpr double outline = 1.6;
constexpr double pickedOutline = 4;
constexpr double dotRadius = 2.2;
constexpr double tickHeight = 7; // of the scale bar's ends

} // namespace

void addHiveSquare(Drawing& drawing, const QRectF& square, bool fromPositions, bool picked) {
    QPainterPath path;
    path.addRoundedRect(square, corner, corner);
    Shape hive{.path = path, .inside = Tone::Page, .outline = Tone::Ink, .width = outline};
    if (fromPositions)
        hive.dash = {3, 2.4};
    drawing.add(hive);
    if (!picked)
        return;
    Shape ring{.path = path, .outline = Tone::Action, .width = pickedOutline};
    drawing.add(ring);
}

QRectF standingRoomOf(const QRectF& square) {
    const double border = square.width() * 0.12;
    return square.adjusted(border, border, -border, -border);
}

void addLeader(Drawing& drawing, QPointF mark, QPointF truly) {
    drawing.add(line(mark, truly, Tone::Quiet, 1));
    QPainterPath dot;
    dot.addEllipse(truly, dotRadius, dotRadius);
    drawing.add(Shape{.path = dot, .inside = Tone::Ink});
}

void addScaleBar(Drawing& drawing, QPointF leftMiddle, double length) {
    QPainterPath path(leftMiddle - QPointF(0, tickHeight / 2));
    path.lineTo(leftMiddle + QPointF(0, tickHeight / 2));
    path.moveTo(leftMiddle);
    path.lineTo(leftMiddle + QPointF(length, 0));
    path.moveTo(leftMiddle + QPointF(length, -tickHeight / 2));
    path.lineTo(leftMiddle + QPointF(length, tickHeight / 2));
    drawing.add(Shape{.path = path, .outline = Tone::Ink, .width = 1.6});
}

void addNorthArrow(Drawing& drawing, QPointF middle, double height) {
    const double half = height * 0.4;
    const double wing = height * 0.22;
    QPainterPath path(middle + QPointF(0, half));
    path.lineTo(middle - QPointF(0, half));
    path.moveTo(middle + QPointF(-wing, -half + wing * 1.4));
    path.lineTo(middle - QPointF(0, half));
    path.lineTo(middle + QPointF(wing, -half + wing * 1.4));
    drawing.add(Shape{.path = path, .outline = Tone::Ink, .width = 1.6, .roundCap = true});
}

int gravityOf(std::optional<mites::Standing> standing) {
    if (!standing)
        return 0;
    switch (*standing) {
    case mites::Standing::Over:
        return 4;
    case mites::Standing::Close:
        return 3;
    case mites::Standing::CannotTell:
        return 2;
    case mites::Standing::Under:
        break;
    }
    return 1;
}

} // namespace halfcup::pictures
