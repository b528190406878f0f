// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/standing_shape.h"

#include <QTransform>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace halfcup::pictures {

namespace {

// The mark is drawn in a square of side 1 and scaled to its room.
constexpr double stroke = 0.085;
constexpr double belly = 0.19;

struct Layout {
    double lineY;
    double dropY; // of the belly's centre
    std::optional<Tone> inside;
};

Layout layoutOf(mites::Standing standing) {
    switch (standing) {
    case mites::Standing::Under:
        return {0.16, 0.70, std::nullopt};
    case mites::Standing::Over:
        return {0.88, 0.56, Tone::Rust};
    default: // the drop on the line hides what lies behind it, as the others do: only its fill differs
        return {0.60, 0.60, Tone::Honey};
    }
}

/// A falling drop: its round belly has the radius given, its tip is twice that above the belly's centre.
QPainterPath drop(QPointF centre, double radius) {
    // The flanks touch the belly where a line from the tip is a tangent: at 30 degrees above its middle,
    // because the tip is two radii away.
    const double angle = 30 * std::numbers::pi / 180;
    QPainterPath path(centre - QPointF(0, 2 * radius));
    path.lineTo(centre + QPointF(std::cos(angle), -std::sin(angle)) * radius);
    path.arcTo(QRectF(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), 30, -240);
    path.closeSubpath();
    return path;
}

QPainterPath across(double left, double right, double y) {
    QPainterPath path(QPointF(left, y));
    path.lineTo(right, y);
    return path;
}

} // namespace

void addStanding(Drawing& drawing, std::optional<mites::Standing> standing, const QRectF& room) {
    const double side = std::min(room.width(), room.height());
    if (!(side > 0))
        return;
    QTransform place;
    place.translate(room.center().x() - side / 2, room.center().y() - side / 2);
    place.scale(side, side);
    const auto lay = [&](const QPainterPath& path, Shape shape) {
        shape.path = place.map(path);
        shape.width *= side;
        drawing.add(std::move(shape));
    };
    if (!standing)
        return lay(across(0.34, 0.66, 0.5), {.outline = Tone::Ink, .width = stroke});
    if (*standing == mites::Standing::CannotTell) {
        QPainterPath hook;
        hook.arcMoveTo(QRectF(0.30, 0.12, 0.40, 0.40), 190);
        hook.arcTo(QRectF(0.30, 0.12, 0.40, 0.40), 190, -235);
        hook.quadTo(0.50, 0.56, 0.50, 0.68);
        QPainterPath dot;
        dot.addEllipse(QPointF(0.50, 0.86), 0.07, 0.07);
        lay(hook, {.outline = Tone::Ink, .width = stroke * 1.3, .roundCap = true});
        return lay(dot, {.inside = Tone::Ink});
    }
    const Layout layout = layoutOf(*standing);
    lay(across(0.06, 0.94, layout.lineY), {.outline = Tone::Ink, .width = stroke});
    lay(drop({0.5, layout.dropY}, belly),
        {.inside = layout.inside, .outline = Tone::Ink, .width = stroke, .roundCap = true});
}

} // namespace halfcup::pictures
