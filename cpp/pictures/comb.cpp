// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/comb.h"

#include "pictures/comb_geometry.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace halfcup::pictures {

namespace {

class CombWords {
    Q_DECLARE_TR_FUNCTIONS(CombWords)
};

// In parts of a cell's radius, so that the picture keeps its look at every size.
constexpr double emptyWall = 0.10;
constexpr double knownWall = 0.20;
constexpr double coreSize = 0.46;
constexpr double plusArm = 0.42;

double cellsOf(double load) {
    return load > 0 ? std::min(load, static_cast<double>(CombGeometry::cells)) : 0; // NaN is not above 0
}

/// Of many cells one path: a picture of a few shapes, however many cells.
struct Cells {
    QPainterPath path;

    void add(const QPolygonF& corners) {
        path.addPolygon(corners);
        path.closeSubpath();
    }
};

Shape walls(const QPainterPath& path, Tone tone, double width) {
    return {.path = path, .outline = tone, .width = width};
}

QPainterPath plusAt(QPointF middle, double arm) {
    QPainterPath path(middle - QPointF(arm, 0));
    path.lineTo(middle + QPointF(arm, 0));
    path.moveTo(middle - QPointF(0, arm));
    path.lineTo(middle + QPointF(0, arm));
    return path;
}

void addKnown(Drawing& drawing, const Cells& full, const Cells& cored, const Cells& cores, double radius) {
    if (!full.path.isEmpty())
        drawing.add(Shape{.path = full.path, .inside = Tone::Honey});
    if (!cores.path.isEmpty())
        drawing.add(Shape{.path = cores.path, .inside = Tone::Honey});
    Cells all = full;
    all.path.addPath(cored.path);
    if (!all.path.isEmpty())
        drawing.add(walls(all.path, Tone::Ink, radius * knownWall));
}

} // namespace

Comb combOf(double low, double high) {
    const double least = cellsOf(low);
    const double most = std::max(least, cellsOf(high));
    Comb comb;
    comb.atLeast = static_cast<int>(std::floor(least));
    comb.perhaps = static_cast<int>(std::ceil(most)) - comb.atLeast;
    comb.overflows = high > CombGeometry::cells || low > CombGeometry::cells;
    return comb;
}

Comb combOf(const records::Answer& answer) {
    return combOf(answer.mites == 0 ? 0 : answer.loadQ05, answer.loadQ95);
}

Drawing drawComb(const Comb& comb, const Sheet& sheet) {
    QSizeF room = sheet.size;
    if (!(room.height() > 0))
        room.setHeight(room.width() / CombGeometry::aspect() * 1.01); // walls are not in the aspect
    // The wall follows from the radius and the radius from the wall: a first guess without walls is near
    // enough.
    const double guess = CombGeometry(room, 0).radius();
    const CombGeometry geometry(room, guess * knownWall);
    const double radius = geometry.radius();
    Drawing drawing{.size = geometry.size()};
    if (!(radius > 0))
        return drawing;

    const int full = std::clamp(comb.atLeast, 0, CombGeometry::cells);
    const int known = std::clamp(full + std::max(comb.perhaps, 0), full, CombGeometry::cells);
    // Empty cells first, so that the stronger walls of the others lie over theirs.
    Cells empty, filled, cored, cores;
    for (int index = known; index < CombGeometry::cells; ++index)
        empty.add(geometry.cell(index));
    for (int index = 0; index < full; ++index)
        filled.add(geometry.cell(index));
    for (int index = full; index < known; ++index) {
        cored.add(geometry.cell(index));
        cores.add(geometry.cell(index, coreSize));
    }
    if (!empty.path.isEmpty())
        drawing.add(walls(empty.path, Tone::Rule, radius * emptyWall));
    addKnown(drawing, filled, cored, cores, radius);
    if (comb.overflows)
        drawing.add(walls(plusAt(geometry.centre(CombGeometry::cells - 1), radius * plusArm), Tone::Ink,
                          radius * knownWall));
    return drawing;
}

Drawing drawCombCell(bool full, QSizeF size) {
    const double radius =
        std::min(size.width() / (std::sqrt(3.0) + knownWall), size.height() / (2 + knownWall));
    Drawing drawing{.size = size};
    if (!(radius > 0))
        return drawing;
    const QPointF middle(size.width() / 2, size.height() / 2);
    Cells filled, cored, cores;
    (full ? filled : cored).add(hexagon(middle, radius));
    if (!full)
        cores.add(hexagon(middle, radius * coreSize));
    addKnown(drawing, filled, cored, cores, radius);
    return drawing;
}

Legend legendOf(const Comb& comb) {
    Legend legend;
    legend.push_back({drawCombCell(true, legendKeySize), meaningOf(CombPart::Full)});
    if (comb.perhaps > 0)
        legend.push_back({drawCombCell(false, legendKeySize), meaningOf(CombPart::Core)});
    if (comb.overflows) {
        Drawing key{.size = legendKeySize};
        const QPointF middle(legendKeySize.width() / 2, legendKeySize.height() / 2);
        key.add(walls(plusAt(middle, legendKeySize.height() * 0.35), Tone::Ink, 2));
        legend.push_back({key, meaningOf(CombPart::Plus)});
    }
    return legend;
}

QString sentenceOf(const Comb& comb) {
    if (comb.overflows)
        return CombWords::tr(
                   "Comb of a hundred cells: %1 filled, %2 more half filled, and more than the comb holds.")
            .arg(comb.atLeast)
            .arg(comb.perhaps);
    return CombWords::tr("Comb of a hundred cells: %1 filled, %2 more half filled.")
        .arg(comb.atLeast)
        .arg(comb.perhaps);
}

QString meaningOf(CombPart part) {
    switch (part) {
    case CombPart::Full:
        return CombWords::tr("at least");
    case CombPart::Core:
        return CombWords::tr("perhaps");
    case CombPart::Plus:
        return CombWords::tr("and more than the comb holds");
    }
    return {};
}

} // namespace halfcup::pictures
