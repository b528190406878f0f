// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/months_geometry.h"

#include <algorithm>
#include <array>

namespace halfcup::touch {

namespace {

constexpr double laneGap = 0.2; // of a lane
constexpr double narrowest = 3; // a bar of one day can still be seen

int monthsFrom(const records::Date& first, const records::Date& day) {
    return (day.year - first.year) * 12 + day.month - first.month;
}

int daysInMonth(const records::Date& day) {
    const records::Date next{day.month == 12 ? day.year + 1 : day.year, day.month == 12 ? 1 : day.month + 1,
                             1};
    return records::daysBetween({day.year, day.month, 1}, next);
}

} // namespace

MonthsGeometry::MonthsGeometry(records::Date first, QSizeF size, double letterHeight)
    : m_first(first)
    , m_size(size)
    , m_letterHeight(std::min(letterHeight, size.height())) {}

bool MonthsGeometry::holds(const records::Date& day) const {
    const int index = monthsFrom(m_first, day);
    return index >= 0 && index < months;
}

double MonthsGeometry::x(const records::Date& day) const {
    const int index = monthsFrom(m_first, day);
    const double within = (day.day - 1.0) / daysInMonth(day);
    return std::clamp((index + within) / months, 0.0, 1.0) * m_size.width();
}

QRectF MonthsGeometry::month(int index) const {
    const double width = m_size.width() / months;
    return {index * width, 0, width, m_size.height()};
}

QRectF MonthsGeometry::band() const {
    return {0, m_letterHeight, m_size.width(), m_size.height() - m_letterHeight};
}

QList<QRectF> MonthsGeometry::bars(const QList<MonthsPicture::Course>& courses) const {
    std::array<records::Date, mostLanes> busyUntil;
    busyUntil.fill({1, 1, 1});
    const double lane = band().height() / mostLanes;
    QList<QRectF> found;
    for (const MonthsPicture::Course& course : courses) {
        if (!holds(course.from) && !holds(course.to) && !(course.from < m_first && course.to > m_first)) {
            found.append(QRectF());
            continue;
        }
        std::size_t row = 0;
        while (row + 1 < mostLanes && busyUntil.at(row) >= course.from)
            ++row;
        busyUntil.at(row) = std::max(busyUntil.at(row), course.to);
        const double left = x(course.from);
        const double right = x(records::plusDays(course.to, 1));
        found.append({left, band().top() + static_cast<double>(row) * lane + lane * laneGap / 2,
                      std::max(narrowest, right - left), lane * (1 - laneGap)});
    }
    return found;
}

} // namespace halfcup::touch
