// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_chart.h"
#include "pictures/load_marks.h"
#include "pictures/load_plot.h"

#include <algorithm>

namespace halfcup::pictures {

namespace {

constexpr int shownDays = 365; // before the last wash
constexpr double edge = 5;     // around the plot, for the stressed wash
constexpr double radius = 1.6;
constexpr double lastRadius = 3.6;

} // namespace

Drawing drawSmallLoads(const LoadChart& chart, QSizeF size) {
    Drawing drawing;
    drawing.size = size;
    LoadChart fit = fitToShow(chart);
    if (fit.washes.empty() || size.width() <= 2 * edge || size.height() <= 2 * edge)
        return drawing;
    const records::Date last = fit.washes.back().day;
    std::erase_if(fit.washes,
                  [&](const LoadWash& wash) { return records::daysBetween(wash.day, last) > shownDays; });
    const double treat = fit.lines.empty() ? 0 : fit.lines.back().treat;
    double highest = treat;
    for (const LoadWash& wash : fit.washes)
        highest = std::max(highest, wash.middle);
    const LoadAxis loads(highest, treat, size.height() - edge, edge);
    const bool alone = fit.washes.front().day == last;
    const TimeAxis days(fit.washes.front().day, last, edge, size.width() - edge);
    const auto at = [&](const LoadWash& wash) {
        return QPointF(alone ? size.width() - edge : days.x(wash.day), loads.y(wash.middle));
    };
    if (treat > 0)
        drawing.add(line({0, loads.y(treat)}, {size.width(), loads.y(treat)}, Tone::Rust, 1.2));
    QPainterPath course(at(fit.washes.front()));
    for (const LoadWash& wash : fit.washes)
        course.lineTo(at(wash));
    drawing.add(Shape{.path = course, .outline = Tone::Quiet, .width = 1});
    for (const LoadWash& wash : fit.washes)
        drawing.add(Shape{.path = washOutline(at(wash), radius, wash.otherMethod), .inside = Tone::Action});
    const LoadWash& latest = fit.washes.back();
    drawing.add(Shape{.path = washOutline(at(latest), lastRadius, latest.otherMethod),
                      .inside = latest.noneFound ? Tone::Page : Tone::Action,
                      .outline = Tone::Action,
                      .width = 1.4});
    return drawing;
}

} // namespace halfcup::pictures
