// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/informed_load.h"

#include "mites/between_colonies.h"
#include "mites/checks.h"

#include <algorithm>
#include <cmath>

namespace halfcup::mites {

namespace {

constexpr std::size_t kCells = 3000;
constexpr double kDropped = 45; // exp(-45): parts of the density below are left out

} // namespace

YardPrior yardPrior(std::span<const Wash> washes) {
    const BetweenColonies between = betweenColonies(washes, kInformedBetweenCv);
    return {between.meanLoad, 1 / between.variance};
}

InformedPosterior::InformedPosterior(const Wash& wash, const YardPrior& prior) {
    checkWash(wash);
    require(prior.meanLoad > 0 && std::isfinite(prior.meanLoad),
            "The mean load of the yard has to be above zero.");
    require(prior.shape >= kLeastShape && std::isfinite(prior.shape),
            "The shape of the yard's loads has to be a number of at least 0.01.");
    // load^tilt times the likelihood is the density of a proper LogLaw for any tilt below the shapes of the
    // jar and the recovery; what the prior has beyond load^tilt multiplies it.
    double tilt = std::min(prior.shape, wash.jarShape / 2);
    if (wash.recoverySd > 0) {
        const double nu = wash.recovery * (1 - wash.recovery) / (wash.recoverySd * wash.recoverySd) - 1;
        tilt = std::min(tilt, wash.recovery * nu / 2);
    }
    const LogLaw law = washLaw(wash, tilt, 0);
    const double rate = prior.shape / prior.meanLoad;
    const auto logDensity = [&](double y) {
        const double part = law.density(y);
        return part > 0 ? std::log(part) + (prior.shape - tilt) * y - rate * std::exp(y) : -INFINITY;
    };
    // First a coarse look for where the density lives, then the grid.
    const double spread = std::sqrt(law.variance());
    double low = law.mean() - 12 * spread - 60 / (static_cast<double>(wash.mites) + tilt);
    double high = law.mean() + 12 * spread + std::log(prior.shape + 2);
    for (int pass = 0; pass < 3; ++pass) {
        const int looks = 400;
        const double step = (high - low) / looks;
        std::vector<double> seen(looks + 1);
        for (int i = 0; i <= looks; ++i)
            seen[static_cast<std::size_t>(i)] = logDensity(low + i * step);
        const double top = *std::max_element(seen.begin(), seen.end());
        int first = looks;
        int last = 0;
        for (int i = 0; i <= looks; ++i)
            if (seen[static_cast<std::size_t>(i)] > top - kDropped) {
                first = std::min(first, i);
                last = std::max(last, i);
            }
        high = low + step * std::min(looks, last + 1);
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
    // Running integrals from both ends, each cell by a cubic through four points.
    const auto at = [this](std::ptrdiff_t i) {
        return i < 0 || i > static_cast<std::ptrdiff_t>(kCells) ? 0.0
                                                                : m_density[static_cast<std::size_t>(i)];
    };
    std::vector<double> cell(kCells);
    double sum = 0;
    for (std::size_t i = 0; i < kCells; ++i) {
        const auto j = static_cast<std::ptrdiff_t>(i);
        cell[i] = m_step * (13 * (at(j) + at(j + 1)) - at(j - 1) - at(j + 2)) / 24;
        sum += cell[i];
    }
    for (double& value : m_density)
        value /= sum;
    m_below.assign(kCells + 1, 0);
    m_above.assign(kCells + 1, 0);
    for (std::size_t i = 0; i < kCells; ++i)
        m_below[i + 1] = m_below[i] + cell[i] / sum;
    for (std::size_t i = kCells; i-- > 0;)
        m_above[i] = m_above[i + 1] + cell[i] / sum;
}

// The share of cell mass below a point inside it, from the densities at its ends and its whole mass.
double InformedPosterior::below(double logLoad) const {
    const double place = (logLoad - m_low) / m_step;
    if (!(place > 0))
        return 0;
    if (place >= kCells)
        return 1;
    const auto i = static_cast<std::size_t>(place);
    const double u = place - static_cast<double>(i);
    // Hermite cubic of the running integral: exact values and slopes at both ends.
    const double a = m_below[i];
    const double b = m_below[i + 1];
    const double da = m_density[i] * m_step;
    const double db = m_density[i + 1] * m_step;
    const double value =
        a + u * da + u * u * (3 * (b - a) - 2 * da - db) + u * u * u * (2 * (a - b) + da + db);
    return std::clamp(value, a, b);
}

double InformedPosterior::cumulative(double load) const {
    require(!std::isnan(load), "A load to ask about has to be a number.");
    return load > 0 ? below(std::log(load)) : 0.0;
}

double InformedPosterior::chanceOver(double line) const {
    require(!std::isnan(line), "A line has to be a number.");
    if (!(line > 0))
        return 1;
    const double place = (std::log(line) - m_low) / m_step;
    if (!(place > 0))
        return 1;
    if (place >= kCells)
        return 0;
    const auto i = static_cast<std::size_t>(place);
    return std::max(0.0, m_above[i] - (below(std::log(line)) - m_below[i]));
}

double InformedPosterior::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    double low = m_low;
    double high = m_low + m_step * kCells;
    for (int i = 0; i < 100 && high - low > 1e-13 * (1 + std::abs(low)); ++i) {
        const double middle = 0.5 * (low + high);
        (below(middle) < p ? low : high) = middle;
    }
    return std::exp(0.5 * (low + high));
}

LoadEstimate InformedPosterior::estimate() const {
    return {quantile(kLowerEnd), quantile(0.5), quantile(kUpperEnd)};
}

} // namespace halfcup::mites
