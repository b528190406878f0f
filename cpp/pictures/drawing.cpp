// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/drawing.h"

#include <cmath>

namespace halfcup::pictures {

QString Drawing::nearest(QPointF point, double reach) const {
    QString key;
    double best = reach;
    for (const Spot& spot : spots) {
        const double away = std::hypot(spot.at.x() - point.x(), spot.at.y() - point.y());
        if (away > best)
            continue;
        best = away;
        key = spot.key;
    }
    return key;
}

std::vector<Label> Drawing::labels() const {
    std::vector<Label> found;
    for (const auto& thing : things)
        if (const auto* label = std::get_if<Label>(&thing))
            found.push_back(*label);
    return found;
}

void Drawing::lay(const Drawing& other, QPointF offset) {
    for (auto thing : other.things) {
        if (auto* shape = std::get_if<Shape>(&thing)) {
            shape->path.translate(offset);
            if (shape->in)
                shape->in->translate(offset);
        } else {
            std::get<Label>(thing).box.translate(offset);
        }
        things.push_back(std::move(thing));
    }
    for (Spot spot : other.spots) {
        spot.at += offset;
        spots.push_back(std::move(spot));
    }
}

Shape line(QPointF from, QPointF to, Tone tone, double width) {
    QPainterPath path(from);
    path.lineTo(to);
    return {.path = path, .outline = tone, .width = width};
}

Shape box(const QRectF& rect, Tone inside) {
    QPainterPath path;
    path.addRect(rect);
    return {.path = path, .inside = inside};
}

} // namespace halfcup::pictures
