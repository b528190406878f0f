// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"
#include "pictures/time_axis.h"
#include "pictures/type.h"
#include "records/moment.h"

#include <QPolygonF>

#include <vector>

/// The load ahead as two bands over the days: hatched with a broken middle if nothing is done, filled with a
/// whole middle with a treatment.
namespace halfcup::pictures {

/// Loads day by day, mites per 100 bees as a wash finds them: lower end, middle, upper end. All of one
/// length, or all empty where there is none.
struct OutlookBand {
    std::vector<double> low = {};
    std::vector<double> middle = {};
    std::vector<double> high = {};

    friend bool operator==(const OutlookBand&, const OutlookBand&) = default;
};

/// Days are counted from the starting wash, from 0. Loads below zero or without a figure lie at zero.
struct OutlookChart {
    records::Date start = {};
    OutlookBand nothing = {}; // if nothing is done
    OutlookBand with = {};    // with the choice; may be empty
    double line = 0;          // the treat line; 0: none
    int today = -1;           // -1: not marked
    int turnDay = -1;         // -1: none within the days
    int autumnDay = -1;       // mid-autumn

    [[nodiscard]] int days() const { return static_cast<int>(nothing.middle.size()); }
    friend bool operator==(const OutlookChart&, const OutlookChart&) = default;
};

/// Where days and loads lie.
class OutlookPlot {
public:
    OutlookPlot(const OutlookChart& chart, const QRectF& plot);

    /// The load at the upper edge: a round figure over the line and what is likely, but never so high that
    /// the line sinks to the ground. What lies above is cut off there.
    [[nodiscard]] double top() const { return m_top; }
    [[nodiscard]] QRectF plot() const { return m_plot; }
    [[nodiscard]] double x(int day) const;
    [[nodiscard]] double y(double load) const; // above the top: the top
    /// Between low and high; empty where there is none.
    [[nodiscard]] QPolygonF area(const OutlookBand& band) const;
    [[nodiscard]] QPolygonF middle(const OutlookBand& band) const;

private:
    int m_days = 0;
    double m_top = 1;
    QRectF m_plot;
};

/// As large as the sheet. With fewer than two days it says that there is no outlook.
[[nodiscard]] Drawing drawOutlook(const OutlookChart& chart, const Sheet& sheet);
/// What the marks in this chart mean, those that are not in it left out.
[[nodiscard]] Legend legendOf(const OutlookChart& chart);

} // namespace halfcup::pictures
