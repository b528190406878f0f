// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/load_axis.h"
#include "pictures/load_chart.h"
#include "pictures/time_axis.h"

namespace halfcup::pictures {

/// The chart as it may be drawn: in order of days, without what is no load or lies outside the days shown.
[[nodiscard]] LoadChart fitToShow(const LoadChart& chart);

/// Days and loads to be shown; the chart as fitToShow() gives it, with at least one wash.
struct LoadSpan {
    records::Date first, last; // with a little room at both ends
    double highest = 0;        // the fan counts only as far as it does not press the washes to the ground
    double line = 0;           // the highest treat line
};
[[nodiscard]] LoadSpan spanOf(const LoadChart& chart);

/// Where days and loads lie. Above the plot the unit and, where something happened, a lane of marks; at its
/// left the loads, below the months.
struct LoadPlot {
    QRectF caption;
    QRectF lane; // no height where nothing happened
    QRectF plot;
    TimeAxis days;
    LoadAxis loads;

    LoadPlot(const LoadChart& chart, const Sheet& sheet);
    [[nodiscard]] QPointF at(const records::Date& day, double load) const {
        return {days.x(day), loads.y(load)};
    }
};

inline constexpr double laneRow = 13; // height of one row of marks, units
inline constexpr int laneRows = 2;

} // namespace halfcup::pictures
