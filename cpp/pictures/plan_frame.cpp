// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/plan_frame.h"

#include "pictures/foot.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace halfcup::pictures {

namespace {

class YardPlanWords {
    Q_DECLARE_TR_FUNCTIONS(YardPlanWords)
};

constexpr double furthestM = 20'000;

double toCentimetre(double metres) {
    return std::round(metres * 100) / 100 + 0.0; // no negative nought
}

} // namespace

bool canStand(const records::Stand& stand) {
    return std::abs(stand.eastM) <= furthestM && std::abs(stand.northM) <= furthestM; // NaN is not
}

bool PlanBounds::holds(const records::Stand& stand) const {
    return stand.eastM >= westM && stand.eastM <= eastM && stand.northM >= southM && stand.northM <= northM;
}

void PlanBounds::include(const records::Stand& stand) {
    westM = std::min(westM, stand.eastM);
    eastM = std::max(eastM, stand.eastM);
    southM = std::min(southM, stand.northM);
    northM = std::max(northM, stand.northM);
}

PlanBounds PlanBounds::grown(double metres) const {
    return {westM - metres, eastM + metres, southM - metres, northM + metres};
}

PlanFrame::PlanFrame(const PlanBounds& ground, const QRectF& area, double margin)
    : m_middle{(ground.westM + ground.eastM) / 2, (ground.southM + ground.northM) / 2}
    , m_at(area.center()) {
    const double across = std::max(ground.widthM(), leastSpanM);
    const double upright = std::max(ground.heightM(), leastSpanM / 2); // a row of hives needs no square
    const double room = 1;                                             // never none
    m_unitsPerM = std::min(std::max(area.width() - 2 * margin, room) / across,
                           std::max(area.height() - 2 * margin, room) / upright);
}

QPointF PlanFrame::at(const records::Stand& stand) const {
    return {m_at.x() + (stand.eastM - m_middle.eastM) * m_unitsPerM,
            m_at.y() - (stand.northM - m_middle.northM) * m_unitsPerM};
}

records::Stand PlanFrame::standAt(QPointF point) const {
    return {toCentimetre(m_middle.eastM + (point.x() - m_at.x()) / m_unitsPerM),
            toCentimetre(m_middle.northM - (point.y() - m_at.y()) / m_unitsPerM)};
}

std::optional<ScaleBar> scaleBarOf(const PlanFrame& frame, double longest, bool feet) {
    const double perUnit = frame.unitsPerM() * (feet ? metresPerFoot : 1); // units of a metre or a foot
    const double most = longest / perUnit;
    if (!(most >= 0.1) || !std::isfinite(most))
        return std::nullopt;
    const double decade = std::pow(10, std::floor(std::log10(most) + 1e-9));
    double length = decade;
    for (const double step : {2.0, 5.0})
        if (step * decade <= most * (1 + 1e-9))
            length = step * decade;
    const auto figure = [](double value) { return QLocale().toString(value, 'g', 6); };
    ScaleBar bar;
    bar.units = length * perUnit;
    if (feet)
        bar.text = YardPlanWords::tr("%1 ft", "feet").arg(figure(length));
    else if (length >= 1000)
        bar.text = YardPlanWords::tr("%1 km").arg(figure(length / 1000));
    else
        bar.text = YardPlanWords::tr("%1 m", "metres").arg(figure(length));
    return bar;
}

} // namespace halfcup::pictures
