// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/yard_plan.h"

#include "pictures/plan_layout.h"
#include "pictures/plan_shapes.h"
#include "pictures/standing_shape.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::pictures {

namespace {

class YardPlanWords {
    Q_DECLARE_TR_FUNCTIONS(YardPlanWords)
};

constexpr double gap = 2;         // least distance of anything from anything
constexpr double frameWidth = 1;  // of the line around the ground
constexpr double lowest = 0.5;    // height of the ground by its width
constexpr double highest = 1.1;   // unless the hives need more
constexpr double looseness = 1.6; // room for hives in a heap, by what they take
constexpr double growth = 1.3;    // of the height, where that was not enough
constexpr int mostGrowths = 12;
constexpr double widestLabel = 64;    // units at letters of scale 1
constexpr std::size_t mostLarge = 24; // hives with large marks and letters
constexpr double barLeast = 0.35;     // longest scale bar by the width

bool isPlaced(const PlannedHive& hive) {
    return hive.stand && canStand(*hive.stand);
}

/// The plan's measures, all from the letters, so that larger letters make a larger plan.
struct Measures {
    explicit Measures(const YardPlan& plan, const Type& type)
        : side(type.height(TextSize::Small) * (plan.hives.size() > mostLarge ? 1.2 : 1.5))
        , label(plan.hives.size() > mostLarge ? TextSize::Small : TextSize::Strong)
        , widest(widestLabel * type.height(TextSize::Small) / 17)
        , margin(side) {}

    double side; // of a hive's square
    TextSize label;
    double widest; // of a label
    double margin; // around the hives
};

/// Where everything came to lie.
struct Laid {
    QRectF area; // of the ground; empty where no hive is placed and no ground is given
    PlanFrame frame;
    std::vector<const PlannedHive*> hives; // those on the ground
    std::vector<PlacedMark> marks;
    std::vector<const PlannedHive*> others; // the row under the plan
    LabelRoom room{QRectF()};
};

QSizeF textOf(const PlannedHive& hive, const Measures& measures, const Type& type) {
    if (hive.label.isEmpty())
        return {};
    const QString text = type.fitted(hive.label, measures.widest, measures.label);
    return {type.width(text, measures.label), type.height(measures.label)};
}

Laid lay(const YardPlan& plan, const Sheet& sheet, const Measures& measures) {
    Laid laid;
    const std::optional<PlanBounds> ground = plan.ground ? plan.ground : groundOf(plan);
    double taken = 0;
    std::vector<PlanMark> wanted;
    for (const PlannedHive& hive : plan.hives) {
        if (!isPlaced(hive)) {
            laid.others.push_back(&hive);
        } else if (ground && ground->grown(1e-6).holds(*hive.stand)) {
            laid.hives.push_back(&hive);
            wanted.push_back({{}, textOf(hive, measures, sheet.type)});
            taken += (measures.side + gap) * (measures.side + wanted.back().text.width() + 2 * gap);
        }
    }
    const double width = sheet.size.width();
    if (!ground || !(width > 2 * measures.margin))
        return laid;
    const double share = ground->heightM() / std::max(ground->widthM(), PlanFrame::leastSpanM);
    double height = std::max(width * std::clamp(share, lowest, highest), looseness * taken / width);
    for (int attempt = 0; attempt < mostGrowths; ++attempt, height *= growth) {
        laid.area = QRectF(0, 0, width, height);
        laid.frame = PlanFrame(*ground, laid.area, measures.margin);
        for (std::size_t i = 0; i < wanted.size(); ++i)
            wanted[i].at = laid.frame.at(*laid.hives[i]->stand);
        const double inside = frameWidth + gap;
        const QRectF within = laid.area.adjusted(inside, inside, -inside, -inside);
        laid.room = LabelRoom(within, gap);
        if (auto marks = placeMarks(wanted, measures.side, within, laid.room)) {
            laid.marks = std::move(*marks);
            return laid;
        }
    }
    // A width too small for a single hive: all are listed.
    laid.others.insert(laid.others.end(), laid.hives.begin(), laid.hives.end());
    laid.hives.clear();
    laid.area = {};
    return laid;
}

void addHive(Drawing& drawing, const YardPlan& plan, const PlannedHive& hive, const QRectF& square) {
    addHiveSquare(drawing, square, hive.fromPositions && isPlaced(hive), hive.key == plan.picked);
    addStanding(drawing, hive.standing, standingRoomOf(square));
    if (!hive.key.isEmpty())
        drawing.spots.push_back({square.center(), hive.key});
}

/// The words of the standings beside the labels, the gravest first, where there is room.
void addWords(Drawing& drawing, Laid& laid, const Measures& measures, const Type& type) {
    std::vector<std::size_t> order(laid.hives.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        return gravityOf(laid.hives[a]->standing) > gravityOf(laid.hives[b]->standing);
    });
    for (const std::size_t i : order) {
        const QString word = wordOf(laid.hives[i]->standing);
        const QSizeF size(type.width(word), type.height());
        const PlacedMark& mark = laid.marks[i];
        const QRectF square(mark.middle.x() - measures.side / 2, mark.middle.y() - measures.side / 2,
                            measures.side, measures.side);
        // After the label, else under what stands there, over it, or at the left.
        const QRectF both = mark.text.isEmpty() ? square : square.united(mark.text);
        const double middle = square.center().x() - size.width() / 2;
        std::vector<QRectF> places{
            {{middle, both.bottom() + 3}, size},
            {{middle, both.top() - 3 - size.height()}, size},
            {{both.left() - 4 - size.width(), square.center().y() - size.height() / 2}, size}};
        if (mark.text.left() > square.right())
            places.insert(places.begin(),
                          QRectF({mark.text.right() + 4, mark.text.center().y() - size.height() / 2}, size));
        if (const auto place = laid.room.take(places))
            drawing.add(Label{.text = word, .box = *place, .tone = Tone::Quiet, .backed = true});
    }
}

void addGround(Drawing& drawing, const YardPlan& plan, Laid& laid, const Measures& measures,
               const Type& type) {
    const double half = frameWidth / 2;
    Shape edge = box(laid.area.adjusted(half, half, -half, -half), Tone::Page);
    edge.inside.reset();
    edge.outline = Tone::Rule;
    edge.width = frameWidth;
    drawing.add(edge);
    for (std::size_t i = 0; i < laid.hives.size(); ++i) {
        const QPointF truly = laid.frame.at(*laid.hives[i]->stand);
        const QPointF way = truly - laid.marks[i].middle;
        if (std::hypot(way.x(), way.y()) > 1)
            addLeader(drawing, laid.marks[i].middle, truly);
    }
    for (std::size_t i = 0; i < laid.hives.size(); ++i) {
        const PlacedMark& mark = laid.marks[i];
        addHive(drawing, plan, *laid.hives[i],
                {mark.middle.x() - measures.side / 2, mark.middle.y() - measures.side / 2, measures.side,
                 measures.side});
    }
    for (std::size_t i = 0; i < laid.hives.size(); ++i)
        if (!laid.marks[i].text.isEmpty())
            drawing.add(Label{.text = type.fitted(laid.hives[i]->label, measures.widest, measures.label),
                              .box = laid.marks[i].text,
                              .size = measures.label,
                              .backed = true});
    addWords(drawing, laid, measures, type);
}

/// Scale and north under the ground.
void addFoot(Drawing& drawing, const YardPlan& plan, const Laid& laid, const Type& type) {
    const double top = laid.area.bottom() + 4;
    const double middle = top + type.height() / 2;
    const double width = drawing.size.width();
    if (const auto bar = scaleBarOf(laid.frame, width * barLeast, plan.feet)) {
        addScaleBar(drawing, {1, middle}, bar->units);
        drawing.add(Label{.text = bar->text, .box = type.box(bar->text, {bar->units + 8, top})});
    }
    const QString north = YardPlanWords::tr("N", "north, beside an arrow on a plan");
    const double letter = type.width(north);
    drawing.add(Label{.text = north, .box = type.box(north, {width - letter, top})});
    addNorthArrow(drawing, {width - letter - 9, middle}, type.height());
    drawing.size.setHeight(top + type.height());
}

/// What is not on the plan, in lines; each as a square with its label.
void addRow(Drawing& drawing, const YardPlan& plan, const Laid& laid, const Measures& measures,
            const Type& type) {
    if (laid.others.empty())
        return;
    const double width = drawing.size.width();
    double top = drawing.size.height() + (drawing.size.height() > 0 ? 8 : 0);
    const QString head = type.fitted(YardPlanWords::tr("Not on the plan:"), width);
    drawing.add(Label{.text = head, .box = type.box(head, {0, top}), .tone = Tone::Quiet});
    top += type.height() + 4;
    double left = 1;
    for (const PlannedHive* hive : laid.others) {
        const QString text = type.fitted(hive->label, measures.widest);
        const double wide = measures.side + 4 + type.width(text);
        if (left > 1 && left + wide > width) {
            left = 1;
            top += measures.side + 6;
        }
        const QRectF square(left, top + 1, measures.side, measures.side);
        addHive(drawing, plan, *hive, square);
        if (!text.isEmpty() && left + wide <= width)
            drawing.add(
                Label{.text = text,
                      .box = type.box(text, {square.right() + 4, square.center().y() - type.height() / 2})});
        left += wide + 12;
    }
    drawing.size.setHeight(top + measures.side + 2);
}

} // namespace

std::optional<PlanBounds> groundOf(const YardPlan& plan) {
    std::optional<PlanBounds> ground;
    for (const PlannedHive& hive : plan.hives) {
        if (!isPlaced(hive))
            continue;
        if (!ground)
            ground = PlanBounds{hive.stand->eastM, hive.stand->eastM, hive.stand->northM, hive.stand->northM};
        ground->include(*hive.stand);
    }
    return ground;
}

Drawing drawYardPlan(const YardPlan& plan, const Sheet& sheet) {
    const Measures measures(plan, sheet.type);
    Laid laid = lay(plan, sheet, measures);
    Drawing drawing{.size = {sheet.size.width(), laid.area.height()}};
    if (!(sheet.size.width() > measures.side + 2))
        return drawing;
    if (!laid.area.isEmpty()) {
        addGround(drawing, plan, laid, measures, sheet.type);
        addFoot(drawing, plan, laid, sheet.type);
    } else {
        const QString nothing =
            sheet.type.fitted(plan.hives.empty() ? YardPlanWords::tr("No hive in this yard yet.")
                                                 : YardPlanWords::tr("No hive has its place yet."),
                              sheet.size.width());
        drawing.add(Label{.text = nothing, .box = sheet.type.box(nothing, {0, 0})});
        drawing.size.setHeight(sheet.type.height());
    }
    addRow(drawing, plan, laid, measures, sheet.type);
    return drawing;
}

PlanFrame frameOf(const YardPlan& plan, const Sheet& sheet) {
    return lay(plan, sheet, Measures(plan, sheet.type)).frame;
}

QRectF areaOf(const YardPlan& plan, const Sheet& sheet) {
    return lay(plan, sheet, Measures(plan, sheet.type)).area;
}

} // namespace halfcup::pictures
