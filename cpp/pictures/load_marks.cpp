// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_marks.h"

#include <QCoreApplication>
#include <QPolygonF>

namespace halfcup::pictures {

namespace {

using Kind = records::EventKind;

class LoadMarks {
    Q_DECLARE_TR_FUNCTIONS(LoadMarks)
};

constexpr double stroke = 1.6;

QPainterPath polygon(QPointF at, const QPolygonF& corners) {
    QPainterPath path;
    path.addPolygon(corners.translated(at));
    path.closeSubpath();
    return path;
}

Shape filled(const QPainterPath& path) {
    return {.path = path, .inside = Tone::Ink};
}

Shape strokes(QPointF at, std::initializer_list<QLineF> lines) {
    QPainterPath path;
    for (const QLineF& each : lines) {
        path.moveTo(each.p1() + at);
        path.lineTo(each.p2() + at);
    }
    return {.path = path, .outline = Tone::Ink, .width = stroke, .roundCap = true};
}

Shape dots(QPointF at, std::initializer_list<QPointF> places, double radius) {
    QPainterPath path;
    for (const QPointF& each : places)
        path.addEllipse(at + each, radius, radius);
    return filled(path);
}

/// Two halves of a disc, drawn apart.
Shape halves(QPointF at) {
    QPainterPath path;
    path.moveTo(at + QPointF(-1.2, -4.5));
    path.arcTo(QRectF(at + QPointF(-5.7, -4.5), QSizeF(9, 9)), 90, 180);
    path.closeSubpath();
    path.moveTo(at + QPointF(1.2, 4.5));
    path.arcTo(QRectF(at + QPointF(-3.3, -4.5), QSizeF(9, 9)), 270, 180);
    path.closeSubpath();
    return filled(path);
}

Shape superBox(QPointF at) {
    QPainterPath path;
    path.addRect(QRectF(at + QPointF(-4.5, -4), QSizeF(9, 5)));
    return {.path = path, .outline = Tone::Ink, .width = stroke};
}

} // namespace

QPainterPath washOutline(QPointF at, double radius, bool otherMethod) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    if (otherMethod) {
        const double wide = radius * 1.4; // as much area as the round one, to the eye
        path.addPolygon(QPolygonF({at + QPointF(0, -radius * 1.5), at + QPointF(wide, radius * 0.9),
                                   at + QPointF(-wide, radius * 0.9)}));
        path.closeSubpath();
    } else {
        path.addEllipse(at, radius, radius);
    }
    return path;
}

bool hasMark(Kind kind) {
    return kind != Kind::Brood && kind != Kind::Strength && kind != Kind::Floor;
}

std::vector<Shape> happeningMark(Kind kind, QPointF at) {
    const Shape floor = strokes(at, {{-5, 4.2, 5, 4.2}});
    switch (kind) {
    case Kind::Requeened: // a crown
        return {filled(polygon(
            at, QPolygonF({{-5, 4}, {-5, -4}, {-2.2, -0.5}, {0, -5}, {2.2, -0.5}, {5, -4}, {5, 4}})))};
    case Kind::Split:
        return {halves(at)};
    case Kind::Swarmed:
        return {dots(at, {{0, -3}, {-3, 2.2}, {3, 2.2}}, 2.2)};
    case Kind::Merged:
        return {strokes(at, {{-4.5, 0, 4.5, 0}, {0, -4.5, 0, 4.5}})};
    case Kind::Moved:
        return {strokes(at, {{-4.8, 0, 4.5, 0}, {0.8, -3.8, 4.8, 0}, {0.8, 3.8, 4.8, 0}})};
    case Kind::Dead:
        return {strokes(at, {{-4.2, -4.2, 4.2, 4.2}, {-4.2, 4.2, 4.2, -4.2}})};
    case Kind::SupersOn: {
        Shape full = superBox(at);
        full.inside = Tone::Ink;
        return {full, floor};
    }
    case Kind::SupersOff:
        return {superBox(at), floor};
    case Kind::Brood:
    case Kind::Strength:
    case Kind::Floor:
        break;
    }
    return {};
}

QString happeningName(Kind kind) {
    switch (kind) {
    case Kind::Requeened:
        return LoadMarks::tr("New queen");
    case Kind::Split:
        return LoadMarks::tr("Split");
    case Kind::Swarmed:
        return LoadMarks::tr("Swarmed");
    case Kind::Merged:
        return LoadMarks::tr("Two colonies put together");
    case Kind::Moved:
        return LoadMarks::tr("Moved to another yard");
    case Kind::Dead:
        return LoadMarks::tr("Dead");
    case Kind::SupersOn:
        return LoadMarks::tr("Supers on");
    case Kind::SupersOff:
        return LoadMarks::tr("Supers off");
    case Kind::Brood:
    case Kind::Strength:
    case Kind::Floor:
        break;
    }
    return {};
}

} // namespace halfcup::pictures
