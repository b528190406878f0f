// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/compared_marks.h"

#include "records/clean_text.h"

namespace halfcup::pictures::marks {

namespace {

constexpr double lineWidth = 1.8;
constexpr double endHeight = 7; // of the strokes at both ends of a range

} // namespace

std::vector<Shape> rangeAcross(double low, double middle, double high, double y, bool noneFound) {
    std::vector<Shape> shapes{
        line({low, y}, {high, y}, Tone::Action, lineWidth),
        line({high, y - endHeight / 2}, {high, y + endHeight / 2}, Tone::Action, lineWidth)};
    if (!noneFound)
        shapes.push_back(line({low, y - endHeight / 2}, {low, y + endHeight / 2}, Tone::Action, lineWidth));
    QPainterPath point;
    point.addEllipse(QPointF(middle, y), loadRadius, loadRadius);
    shapes.push_back({.path = point,
                      .inside = noneFound ? Tone::Page : Tone::Action,
                      .outline = Tone::Action,
                      .width = lineWidth});
    return shapes;
}

Shape treatLine(QPointF from, QPointF to) {
    return line(from, to, Tone::Rust, lineWidth);
}

Shape ownLine(QPointF from, QPointF to) {
    Shape shape = line(from, to, Tone::Rust, lineWidth);
    shape.dash = {7, 3};
    return shape;
}

LegendEntry legendEntry(std::vector<Shape> shapes, const QString& meaning) {
    Drawing key{.size = legendKeySize, .things = {}, .spots = {}};
    for (Shape& shape : shapes)
        key.add(std::move(shape));
    return {std::move(key), meaning};
}

QString cleanLabel(const QString& label) {
    const QString clean = QString::fromStdString(records::cleanText(label.toStdString())).simplified();
    return clean.isEmpty() ? QStringLiteral("–") : clean;
}

} // namespace halfcup::pictures::marks
