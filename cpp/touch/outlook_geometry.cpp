// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/outlook_geometry.h"

#include <algorithm>
#include <array>

namespace halfcup::touch {

namespace {

constexpr std::array roundTops{4.0, 6.0, 10.0, 15.0, 20.0, 30.0};
constexpr double headroom = 1.15; // over the highest middle

} // namespace

OutlookGeometry::OutlookGeometry(const OutlookPicture& picture, QSizeF size, double labelWidth,
                                 double labelHeight)
    : m_days(picture.days())
    , m_plot(labelWidth, 0, std::max(0.0, size.width() - labelWidth),
             std::max(0.0, size.height() - labelHeight)) {
    double wanted = picture.line * 1.3;
    for (const OutlookBand* band : {&picture.nothing, &picture.with})
        for (const double each : band->middle)
            wanted = std::max(wanted, each * headroom);
    m_top = roundTops.back();
    for (const double each : roundTops)
        if (each >= wanted) {
            m_top = each;
            break;
        }
}

double OutlookGeometry::x(int day) const {
    const double share = m_days > 1 ? std::clamp(day / static_cast<double>(m_days - 1), 0.0, 1.0) : 0.0;
    return m_plot.left() + share * m_plot.width();
}

double OutlookGeometry::y(double load) const {
    return m_plot.bottom() - std::clamp(load / m_top, 0.0, 1.0) * m_plot.height();
}

QPolygonF OutlookGeometry::area(const OutlookBand& band) const {
    QPolygonF polygon;
    const int days = static_cast<int>(std::min(band.low.size(), band.high.size()));
    for (int day = 0; day < days; ++day)
        polygon.append({x(day), y(band.high[day])});
    for (int day = days - 1; day >= 0; --day)
        polygon.append({x(day), y(band.low[day])});
    return polygon;
}

QPolygonF OutlookGeometry::middle(const OutlookBand& band) const {
    QPolygonF line;
    for (int day = 0; day < static_cast<int>(band.middle.size()); ++day)
        line.append({x(day), y(band.middle[day])});
    return line;
}

} // namespace halfcup::touch
