// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_plot.h"

#include "pictures/load_marks.h"

#include <algorithm>
#include <cmath>

namespace halfcup::pictures {

namespace {

using records::Date;

constexpr double mostLoad = 10'000; // no bee carries a hundred mites [convention]
constexpr int leastDays = 45;       // of the axis, so that one wash does not look like an age
constexpr double labelGap = 5;      // between loads and plot
constexpr double monthGap = 9;      // between plot and months: the mark of a chosen wash on the ground
constexpr double fanShare = 1.6;    // of what washes and lines take, the fan may take so much
constexpr double edge = 8;          // right of the plot, for half a mark

bool isLoad(double load) {
    return std::isfinite(load) && load >= 0;
}

/// False where the middle is none.
template <class Range>
bool mend(Range& range) {
    if (!isLoad(range.middle))
        return false;
    range.middle = std::min(range.middle, mostLoad);
    range.low = isLoad(range.low) ? std::min(range.low, range.middle) : range.middle;
    range.high = isLoad(range.high) ? std::clamp(range.high, range.middle, mostLoad) : range.middle;
    return true;
}

double lineOrNone(double line) {
    return isLoad(line) ? std::min(line, mostLoad) : 0;
}

} // namespace

LoadChart fitToShow(const LoadChart& chart) {
    LoadChart fit = chart;
    std::erase_if(fit.washes, [](LoadWash& wash) { return !records::isValid(wash.day) || !mend(wash); });
    std::ranges::stable_sort(fit.washes, {}, &LoadWash::day);
    if (fit.washes.empty())
        return {};
    const Date first = records::plusDays(fit.washes.front().day, -leadDays);
    std::erase_if(fit.ahead, [](LoadAhead& ahead) { return !records::isValid(ahead.day) || !mend(ahead); });
    std::ranges::stable_sort(fit.ahead, {}, &LoadAhead::day);
    if (fit.aheadUpperOnly)
        for (LoadAhead& ahead : fit.ahead)
            ahead.low = 0;
    if (fit.ahead.size() < 2)
        fit.ahead.clear();
    for (LineStep& step : fit.lines) {
        step.treat = lineOrNone(step.treat);
        step.own =
            step.own && lineOrNone(*step.own) > 0 ? std::optional(lineOrNone(*step.own)) : std::nullopt;
    }
    std::erase_if(fit.lines, [](const LineStep& step) { return !records::isValid(step.from); });
    std::ranges::stable_sort(fit.lines, {}, &LineStep::from);
    std::erase_if(fit.treated, [&](const TreatedDays& days) {
        return !records::isValid(days.first) || !records::isValid(days.last) || days.last < days.first ||
               days.last < first;
    });
    std::ranges::stable_sort(fit.treated, {}, &TreatedDays::first);
    std::erase_if(fit.happenings, [&](const Happening& each) {
        return !records::isValid(each.day) || each.day < first || !hasMark(each.kind);
    });
    std::ranges::stable_sort(fit.happenings, {}, &Happening::day);
    if (fit.today && (!records::isValid(*fit.today) || *fit.today < first))
        fit.today.reset();
    return fit;
}

LoadSpan spanOf(const LoadChart& chart) {
    LoadSpan span{chart.washes.front().day, chart.washes.back().day, 0, 0};
    const auto include = [&](const Date& day) {
        span.first = std::min(span.first, day);
        span.last = std::max(span.last, day);
    };
    for (const TreatedDays& days : chart.treated) {
        include(std::max(days.first, records::plusDays(chart.washes.front().day, -leadDays)));
        include(days.last);
    }
    for (const Happening& each : chart.happenings)
        include(each.day);
    if (!chart.ahead.empty())
        include(chart.ahead.back().day);
    if (chart.today)
        include(*chart.today);
    const int shown = records::daysBetween(span.first, span.last);
    if (shown < leastDays)
        span.first = records::plusDays(span.first, shown - leastDays);
    const int margin = 2 + records::daysBetween(span.first, span.last) / 50;
    span.first = records::plusDays(span.first, -margin);
    span.last = records::plusDays(span.last, margin);

    for (const LoadWash& wash : chart.washes)
        span.highest = std::max(span.highest, wash.high);
    for (const LineStep& step : chart.lines) {
        span.line = std::max(span.line, step.treat);
        span.highest = std::max({span.highest, step.treat, step.own.value_or(0)});
    }
    double fan = 0;
    for (const LoadAhead& ahead : chart.ahead)
        fan = std::max(fan, ahead.high);
    span.highest = std::max(span.highest, std::min(fan, fanShare * span.highest));
    return span;
}

namespace {

struct Frame {
    QRectF caption, lane, plot;
    LoadSpan span;
};

Frame frameOf(const LoadChart& chart, const Sheet& sheet) {
    const double letters = sheet.type.height();
    const double lane = chart.happenings.empty() ? 0 : laneRow * laneRows;
    const double top = letters + std::max(lane, letters / 2) + 3;
    const double bottom = std::max(top + 1, sheet.size.height() - letters - monthGap);
    Frame frame{{}, {}, {}, spanOf(chart)};
    // The width of the loads depends on which are written, and that on the height alone.
    double widest = 0;
    for (const double tick : LoadAxis(frame.span.highest, frame.span.line, bottom, top).ticks(letters * 1.4))
        widest = std::max(widest, sheet.type.width(LoadAxis::text(tick)));
    const double left = std::min(widest + labelGap, sheet.size.width() / 2);
    const double right = std::max(left + 1, sheet.size.width() - edge);
    frame.plot = {QPointF(left, top), QPointF(right, bottom)};
    frame.caption = {0, 0, sheet.size.width(), letters};
    frame.lane = {QPointF(left, top - lane), QPointF(right, top)};
    return frame;
}

} // namespace

LoadPlot::LoadPlot(const LoadChart& chart, const Sheet& sheet)
    : days({}, {}, 0, 1)
    , loads(0, 0, 1, 0) {
    const Frame frame = frameOf(chart, sheet);
    caption = frame.caption;
    lane = frame.lane;
    plot = frame.plot;
    days = TimeAxis(frame.span.first, frame.span.last, plot.left(), plot.right());
    loads = LoadAxis(frame.span.highest, frame.span.line, plot.bottom(), plot.top());
}

} // namespace halfcup::pictures
