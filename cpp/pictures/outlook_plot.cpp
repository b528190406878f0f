// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/outlook_chart.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::pictures {

namespace {

constexpr std::array roundTops{4.0, 6.0, 10.0, 15.0, 20.0, 30.0};
constexpr double headroom = 1.15; // over the highest middle

} // namespace

OutlookPlot::OutlookPlot(const OutlookChart& chart, const QRectF& plot)
    : m_days(chart.days())
    , m_plot(plot) {
    double wanted = chart.line * 1.3;
    for (const OutlookBand* band : {&chart.nothing, &chart.with})
        for (const double each : band->middle)
            if (std::isfinite(each))
                wanted = std::max(wanted, each * headroom);
    const auto found = std::ranges::find_if(roundTops, [&](double each) { return each >= wanted; });
    m_top = found == roundTops.end() ? roundTops.back() : *found;
}

double OutlookPlot::x(int day) const {
    const double share = m_days > 1 ? std::clamp(day / static_cast<double>(m_days - 1), 0.0, 1.0) : 0.0;
    return m_plot.left() + share * m_plot.width();
}

double OutlookPlot::y(double load) const {
    const double share = std::isnan(load) ? 0.0 : std::clamp(load / m_top, 0.0, 1.0);
    return m_plot.bottom() - share * m_plot.height();
}

QPolygonF OutlookPlot::area(const OutlookBand& band) const {
    QPolygonF polygon;
    const int days = static_cast<int>(std::min(band.low.size(), band.high.size()));
    for (int day = 0; day < days; ++day)
        polygon.append({x(day), y(band.high[static_cast<std::size_t>(day)])});
    for (int day = days - 1; day >= 0; --day)
        polygon.append({x(day), y(band.low[static_cast<std::size_t>(day)])});
    return polygon;
}

QPolygonF OutlookPlot::middle(const OutlookBand& band) const {
    QPolygonF line;
    for (int day = 0; day < static_cast<int>(band.middle.size()); ++day)
        line.append({x(day), y(band.middle[static_cast<std::size_t>(day)])});
    return line;
}

} // namespace halfcup::pictures
