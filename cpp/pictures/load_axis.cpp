// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_axis.h"

#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::pictures {

namespace {

constexpr std::array roundEnds{1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0};
constexpr std::array roundSteps{0.5, 1.0, 2.0, 5.0, 10.0, 20.0};
constexpr std::array decades{1.0, 3.0, 10.0, 30.0, 100.0, 300.0, 1000.0, 3000.0, 10000.0};
constexpr double headroom = 1.08;

} // namespace

LoadAxis::LoadAxis(double highest, double line, double bottom, double top)
    : m_bottom(bottom)
    , m_top(top) {
    const double wanted = std::max({highest * headroom, line * 1.3, 1.0});
    m_logarithmic = highest > (line > 0 ? std::max(line * mostLines, 8.0) : mostPlain);
    if (m_logarithmic) {
        const double decade = std::pow(10, std::floor(std::log10(wanted)));
        m_end = decade * std::ceil(wanted / decade);
        return;
    }
    const auto end = std::ranges::lower_bound(roundEnds, wanted);
    m_end = end == roundEnds.end() ? std::ceil(wanted / 10) * 10 : *end;
}

double LoadAxis::share(double load) const {
    const double within = std::clamp(load, 0.0, m_end);
    return m_logarithmic ? std::log1p(within) / std::log1p(m_end) : within / m_end;
}

double LoadAxis::y(double load) const {
    return m_bottom + (m_top - m_bottom) * share(load);
}

std::vector<double> LoadAxis::ticks(double leastDistance) const {
    std::vector<double> found{0};
    const auto fits = [&](double load) { return std::abs(y(load) - y(found.back())) >= leastDistance; };
    if (m_logarithmic) {
        for (const double load : decades)
            if (load <= m_end && fits(load))
                found.push_back(load);
        return found;
    }
    double step = m_end;
    for (const double each : roundSteps)
        if (std::abs(y(each) - y(0)) >= leastDistance) {
            step = each;
            break;
        }
    for (int i = 1; i * step <= m_end + 1e-9; ++i)
        found.push_back(i * step);
    return found;
}

QString LoadAxis::text(double load) {
    return QLocale().toString(load, 'g', load < 10 ? 2 : 3);
}

} // namespace halfcup::pictures
