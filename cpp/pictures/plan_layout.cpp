// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/plan_layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

namespace halfcup::pictures {

namespace {

constexpr double beside = 3;     // between a mark and its text
constexpr double ringStep = 6;   // between the rings on which room is looked for
constexpr double alongRing = 20; // between two places on a wide ring
constexpr int leastPlaces = 16;  // on a small one

std::array<QRectF, 4> placesOfText(const QRectF& mark, QSizeF text) {
    const QPointF middle = mark.center();
    return {QRectF({mark.right() + beside, middle.y() - text.height() / 2}, text),
            QRectF({middle.x() - text.width() / 2, mark.bottom() + beside}, text),
            QRectF({mark.left() - beside - text.width(), middle.y() - text.height() / 2}, text),
            QRectF({middle.x() - text.width() / 2, mark.top() - beside - text.height()}, text)};
}

QRectF squareAt(QPointF middle, double side) {
    return {middle.x() - side / 2, middle.y() - side / 2, side, side};
}

/// Where a mark that has to make room is led back to.
QRectF dotAt(QPointF point) {
    constexpr double radius = 2.5;
    return {point.x() - radius, point.y() - radius, 2 * radius, 2 * radius};
}

std::optional<PlacedMark> tryAt(QPointF middle, const PlanMark& mark, double side, LabelRoom& room) {
    const QRectF square = squareAt(middle, side);
    if (!room.isFree(square))
        return std::nullopt;
    QRectF text;
    if (!mark.text.isEmpty()) {
        const auto place = room.take(placesOfText(square, mark.text));
        if (!place)
            return std::nullopt;
        text = *place;
    }
    room.block(square);
    return PlacedMark{middle, text};
}

/// Those that can stay where they truly lie: of two at one place the first. All their squares are set before
/// the texts, which can go around them.
std::vector<std::optional<PlacedMark>> thatStay(const std::vector<PlanMark>& marks, double side,
                                                LabelRoom& room) {
    std::vector<std::optional<PlacedMark>> staying(marks.size());
    LabelRoom trial = room;
    for (std::size_t i = 0; i < marks.size(); ++i)
        if (trial.take(squareAt(marks[i].at, side)))
            staying[i] = PlacedMark{marks[i].at, {}};
    for (std::size_t i = 0; i < marks.size(); ++i)
        if (!staying[i])
            trial.block(dotAt(marks[i].at));
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (!staying[i] || marks[i].text.isEmpty())
            continue;
        if (const auto text = trial.take(placesOfText(squareAt(marks[i].at, side), marks[i].text)))
            staying[i]->text = *text;
        else
            staying[i].reset();
    }
    for (const auto& each : staying)
        if (each) {
            room.block(squareAt(each->middle, side));
            if (!each->text.isEmpty())
                room.block(each->text);
        }
    for (std::size_t i = 0; i < marks.size(); ++i)
        if (!staying[i])
            room.block(dotAt(marks[i].at));
    return staying;
}

/// Looks on wider and wider rings, outwards first, so that lines to the true places do not cross more than
/// they must.
class Rings {
public:
    Rings(double side, const QRectF& area, LabelRoom& room)
        : m_side(side)
        , m_widest(std::hypot(area.width(), area.height()))
        , m_room(room) {}

    std::optional<PlacedMark> find(const PlanMark& mark, double outwards) {
        // Many hives at one point would each look through the same full rings.
        int& first = m_first[{std::lround(mark.at.x() / 4), std::lround(mark.at.y() / 4)}];
        for (int ring = std::max(first, 1); ring * ringStep <= m_widest; ++ring) {
            const double radius = ring * ringStep;
            const int places =
                std::max(leastPlaces, static_cast<int>(2 * std::numbers::pi * radius / alongRing));
            for (int i = 0; i < places; ++i) {
                const int turn = (i + 1) / 2 * (i % 2 == 1 ? 1 : -1);
                const double angle = outwards + turn * 2 * std::numbers::pi / places;
                const QPointF middle = mark.at + QPointF(std::cos(angle), std::sin(angle)) * radius;
                if (const auto placed = tryAt(middle, mark, m_side, m_room)) {
                    first = std::max(first, ring - 2);
                    return placed;
                }
            }
        }
        return std::nullopt;
    }

private:
    double m_side;
    double m_widest;
    LabelRoom& m_room;
    std::map<std::pair<long, long>, int> m_first;
};

} // namespace

std::optional<std::vector<PlacedMark>> placeMarks(const std::vector<PlanMark>& marks, double side,
                                                  const QRectF& area, LabelRoom& room) {
    std::vector<std::optional<PlacedMark>> found = thatStay(marks, side, room);
    QPointF sum;
    for (const PlanMark& mark : marks)
        sum += mark.at;
    const QPointF middle = marks.empty() ? QPointF() : sum / static_cast<double>(marks.size());
    Rings rings(side, area, room);
    std::vector<PlacedMark> placed;
    placed.reserve(marks.size());
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (!found[i]) {
            const QPointF way = marks[i].at - middle;
            const double outwards = std::hypot(way.x(), way.y()) > 1
                                        ? std::atan2(way.y(), way.x())
                                        : static_cast<double>(i) * std::numbers::pi * (3 - std::sqrt(5.0));
            found[i] = rings.find(marks[i], outwards);
        }
        if (!found[i])
            return std::nullopt;
        placed.push_back(*found[i]);
    }
    return placed;
}

} // namespace halfcup::pictures
