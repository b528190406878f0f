// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/tabulated_law.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace halfcup::mites {

namespace {

constexpr std::size_t kCells = 3000;
constexpr int kLooks = 400;
constexpr double kDropped = 45; // exp(-45): parts of the density below are left out

} // namespace

TabulatedLaw::TabulatedLaw(const std::function<double(double)>& logDensity, double low, double high) {
    std::vector<double> seen(kLooks + 1);
    for (int pass = 0; pass < 3; ++pass) { // a coarse look for where the density lives, ever closer
        const double step = (high - low) / kLooks;
        for (int i = 0; i <= kLooks; ++i)
            seen[static_cast<std::size_t>(i)] = logDensity(low + i * step);
        const double top = *std::max_element(seen.begin(), seen.end());
        int first = kLooks;
        int last = 0;
        for (int i = 0; i <= kLooks; ++i)
            if (seen[static_cast<std::size_t>(i)] > top - kDropped) {
                first = std::min(first, i);
                last = std::max(last, i);
            }
        high = low + step * std::min(kLooks, last + 1);
        low += step * std::max(0, first - 1);
    }
    m_low = low;
    m_step = (high - low) / kCells;
    m_density.resize(kCells + 1);
    double top = -INFINITY;
    for (std::size_t i = 0; i <= kCells; ++i)
        top = std::max(top, m_density[i] = logDensity(low + static_cast<double>(i) * m_step));
    for (double& value : m_density)
        value = std::exp(value - top);
    integrate();
}

TabulatedLaw::TabulatedLaw(std::vector<double> density, double low, double step)
    : m_low(low)
    , m_step(step)
    , m_density(std::move(density)) {
    integrate();
}

void TabulatedLaw::integrate() {
    // Each cell by the cubic through the four nodes around it.
    const auto at = [this](std::ptrdiff_t i) {
        return i < 0 || i > static_cast<std::ptrdiff_t>(cells()) ? 0.0
                                                                 : m_density[static_cast<std::size_t>(i)];
    };
    std::vector<double> cell(cells());
    double sum = 0;
    for (std::size_t i = 0; i < cells(); ++i) {
        const auto j = static_cast<std::ptrdiff_t>(i);
        cell[i] = std::max(0.0, m_step * (13 * (at(j) + at(j + 1)) - at(j - 1) - at(j + 2)) / 24);
        sum += cell[i];
    }
    for (double& value : m_density)
        value /= sum;
    m_below.assign(cells() + 1, 0);
    m_above.assign(cells() + 1, 0);
    for (std::size_t i = 0; i < cells(); ++i)
        m_below[i + 1] = m_below[i] + cell[i] / sum;
    for (std::size_t i = cells(); i-- > 0;)
        m_above[i] = m_above[i + 1] + cell[i] / sum;
}

double TabulatedLaw::cumulative(double y) const {
    const double place = (y - m_low) / m_step;
    if (!(place > 0))
        return 0;
    if (place >= static_cast<double>(cells()))
        return 1;
    const auto i = static_cast<std::size_t>(place);
    const double u = place - static_cast<double>(i);
    const double a = m_below[i];
    const double b = m_below[i + 1];
    const double da = m_density[i] * m_step;
    const double db = m_density[i + 1] * m_step;
    const double value =
        a + u * da + u * u * (3 * (b - a) - 2 * da - db) + u * u * u * (2 * (a - b) + da + db);
    return std::clamp(value, a, b);
}

double TabulatedLaw::complement(double y) const {
    const double place = (y - m_low) / m_step;
    if (!(place > 0))
        return 1;
    if (place >= static_cast<double>(cells()))
        return 0;
    const auto i = static_cast<std::size_t>(place);
    return std::max(0.0, m_above[i] - (cumulative(y) - m_below[i]));
}

double TabulatedLaw::quantile(double p) const {
    double low = m_low;
    double high = m_low + m_step * static_cast<double>(cells());
    for (int i = 0; i < 100 && high - low > 1e-13 * (1 + std::abs(low)); ++i) {
        const double middle = 0.5 * (low + high);
        (cumulative(middle) < p ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

double TabulatedLaw::meanOf(const std::function<double(double)>& value) const {
    double sum = 0;
    for (std::size_t i = 0; i <= cells(); ++i)
        sum += m_density[i] * m_step * value(m_low + static_cast<double>(i) * m_step);
    return sum;
}

} // namespace halfcup::mites
