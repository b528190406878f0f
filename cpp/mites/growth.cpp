// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/growth.h"

#include "mites/checks.h"
#include "mites/growth_likelihood.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <numeric>

namespace halfcup::mites {

namespace {

constexpr double kNormalReach = 7.5; // sds of the prior of r that are looked at
constexpr double kStudentReach = 10;
constexpr double kStudentFreedom = 4;
constexpr double kDroppedRow = 30; // rows of r below exp(-30) of the best are left out
constexpr std::size_t kCoarseRows = 61;
constexpr std::size_t kRows = 161;
constexpr int kShiftNodes = 6; // shared shift: nodes 0.75 sd apart, this many on each side
constexpr double kShiftStep = 0.75;
constexpr int kScanDays = 3650; // how far a seasonal path is followed

double logPrior(const GrowthPrior& prior, double growth) {
    const double z = (growth - prior.mean) / prior.sd;
    return prior.shape == GrowthPriorShape::Normal
               ? -0.5 * z * z
               : -0.5 * (kStudentFreedom + 1) * std::log1p(z * z / kStudentFreedom);
}

struct Row {
    std::vector<double> density;
    double logMass;
};

// Log-mass of each row on the range of growth, prior included.
std::vector<Row> rowsOver(const Series& series, const GrowthPrior& prior, double low, double high,
                          std::size_t count, double nodes, EtaGrid* grid) {
    const double step = (high - low) / static_cast<double>(count - 1);
    const std::vector<double> looks{low, 0.75 * low + 0.25 * high, 0.5 * (low + high),
                                    0.25 * low + 0.75 * high, high};
    *grid = etaGrid(series, looks, nodes);
    std::vector<Row> rows;
    for (std::size_t i = 0; i < count; ++i) {
        const double growth = low + static_cast<double>(i) * step;
        double top = 0;
        std::vector<double> density = seriesRow(series, growth, *grid, &top);
        const double sum = std::accumulate(density.begin(), density.end(), 0.0);
        rows.push_back({std::move(density), top + std::log(sum) + logPrior(prior, growth)});
    }
    return rows;
}

void checkPrior(const GrowthPrior& prior) {
    require(std::isfinite(prior.mean) && std::abs(prior.mean) <= 1, "The growth a day has to be below 1.");
    require(prior.sd >= 1e-6 && prior.sd <= 1, "The spread of the growth has to be above 0 and at most 1.");
}

} // namespace

GrowthPrior broodlessPrior() {
    return {kBroodlessGrowthMean, kBroodlessGrowthSd, GrowthPriorShape::Normal};
}
GrowthPrior seasonalPrior() {
    return {0, kSeasonalDeviationSd, GrowthPriorShape::Normal};
}

GrowthPosterior::GrowthPosterior(std::span<const DatedWash> washes, GrowthModel model)
    : m_model(std::move(model))
    , m_washes(washes.size()) {
    checkPrior(m_model.prior);
    require(m_model.sharedLogSd >= 0 && m_model.sharedLogSd <= kMostCv,
            "The shared spread has to be between 0 and 5.");
    const Series series = prepareSeries(washes, m_model);
    m_mites = series.mites;
    m_refDay = series.refDay;
    m_lastDay = series.lastDay;
    m_driftAtRef = series.driftAtRef;

    const GrowthPrior& prior = m_model.prior;
    const double reach = prior.shape == GrowthPriorShape::Normal ? kNormalReach : kStudentReach;
    double low = prior.mean - reach * prior.sd;
    double high = prior.mean + reach * prior.sd;
    EtaGrid grid{};
    for (int pass = 0; pass < 2; ++pass) { // narrow down to where the mass is
        const std::vector<Row> rows = rowsOver(series, prior, low, high, kCoarseRows, kNodesForMass, &grid);
        const double step = (high - low) / static_cast<double>(kCoarseRows - 1);
        double top = -INFINITY;
        for (const Row& row : rows)
            top = std::max(top, row.logMass);
        std::size_t first = rows.size();
        std::size_t last = 0;
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (rows[i].logMass > top - kDroppedRow) {
                first = std::min(first, i);
                last = i;
            }
        const double start = low;
        low = start + step * (first > 0 ? static_cast<double>(first) - 1 : 0.0);
        high = start + step * static_cast<double>(std::min(last + 1, rows.size() - 1));
    }
    std::vector<Row> rows = rowsOver(series, prior, low, high, kRows, kNodesForTable, &grid);
    const double step = (high - low) / static_cast<double>(kRows - 1);
    double top = -INFINITY;
    for (const Row& row : rows)
        top = std::max(top, row.logMass);
    double sum = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double end = i == 0 || i + 1 == rows.size() ? 0.5 : 1; // trapezoid
        m_growth.push_back(low + static_cast<double>(i) * step);
        m_rowMass.push_back(end * std::exp(rows[i].logMass - top));
        m_eta.emplace_back(std::move(rows[i].density), grid.low, grid.step);
        sum += m_rowMass.back();
    }
    for (double& mass : m_rowMass)
        mass /= sum;
    for (std::size_t i = 0; i < m_growth.size(); ++i)
        m_growthMean += m_rowMass[i] * m_growth[i];
    double variance = 0;
    for (std::size_t i = 0; i < m_growth.size(); ++i)
        variance += m_rowMass[i] * (m_growth[i] - m_growthMean) * (m_growth[i] - m_growthMean);
    m_growthSd = std::sqrt(variance);
    m_growthLaw = TabulatedLaw(m_rowMass, low, step);
}

double GrowthPosterior::growthQuantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return m_growthLaw.quantile(p);
}

std::vector<double> GrowthPosterior::thresholdsOn(double day, double logLine) const {
    const double level = logLine - drift(day);
    std::vector<double> thresholds;
    thresholds.reserve(m_growth.size());
    for (const double growth : m_growth)
        thresholds.push_back(level - growth * (day - m_refDay));
    return thresholds;
}

double GrowthPosterior::chanceAbove(const std::vector<double>& thresholds) const {
    const auto once = [&](double shift) {
        double sum = 0;
        for (std::size_t i = 0; i < m_eta.size(); ++i)
            sum += m_rowMass[i] * m_eta[i].complement(thresholds[i] + shift);
        return sum;
    };
    if (m_model.sharedLogSd == 0)
        return std::min(1.0, once(0));
    double sum = 0;
    double weights = 0;
    for (int j = -kShiftNodes; j <= kShiftNodes; ++j) {
        const double z = j * kShiftStep;
        const double weight = std::exp(-0.5 * z * z);
        weights += weight;
        sum += weight * once(z * m_model.sharedLogSd);
    }
    return std::min(1.0, sum / weights);
}

double GrowthPosterior::chanceOver(double day, double line) const {
    require(std::isfinite(day) && std::abs(day) <= 1e7, "The day asked about is not a day.");
    require(!std::isnan(line), "A line has to be a number.");
    return line > 0 ? chanceAbove(thresholdsOn(day, std::log(line))) : 1.0;
}

double GrowthPosterior::loadQuantile(double day, double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    require(std::isfinite(day) && std::abs(day) <= 1e7, "The day asked about is not a day.");
    const auto gap = [&](double logLoad) { return (1 - p) - chanceAbove(thresholdsOn(day, logLoad)); };
    double centre = drift(day) + m_growthMean * (day - m_refDay) + m_eta[m_eta.size() / 2].quantile(0.5);
    double low = centre - 1;
    double high = centre + 1;
    for (double step = 1; gap(low) > 0 && step < 1e6; step *= 2)
        low -= step;
    for (double step = 1; gap(high) < 0 && step < 1e6; step *= 2)
        high += step;
    std::uintmax_t most = 100;
    const auto range = boost::math::tools::toms748_solve(gap, low, high,
                                                         boost::math::tools::eps_tolerance<double>(40), most);
    return std::exp(0.5 * (range.first + range.second));
}

LoadEstimate GrowthPosterior::load(double day) const {
    return {loadQuantile(day, kLowerEnd), loadQuantile(day, 0.5), loadQuantile(day, kUpperEnd)};
}

double GrowthPosterior::chanceCrossed(double line, double untilDay) const {
    require(!std::isnan(line), "A line has to be a number.");
    require(std::isfinite(untilDay) && untilDay >= m_lastDay, "An outlook has to end after the last wash.");
    if (!(line > 0))
        return 1;
    std::vector<double> lowest = thresholdsOn(m_lastDay, std::log(line));
    const auto take = [&](double day) {
        const std::vector<double> thresholds = thresholdsOn(day, std::log(line));
        for (std::size_t i = 0; i < lowest.size(); ++i)
            lowest[i] = std::min(lowest[i], thresholds[i]);
    };
    if (m_model.drift) // the path is not log-linear: look at every day
        for (double day = m_lastDay + 1; day < std::min(untilDay, m_lastDay + kScanDays); day += 1)
            take(day);
    take(untilDay);
    return chanceAbove(lowest);
}

double GrowthPosterior::crossingQuantile(double line, double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    if (chanceCrossed(line, m_lastDay) >= p)
        return 0;
    if (m_model.drift) { // one pass over the days, keeping the lowest threshold of each row
        std::vector<double> lowest = thresholdsOn(m_lastDay, std::log(line));
        double before = chanceAbove(lowest);
        for (int ahead = 1; ahead <= kScanDays; ++ahead) {
            const std::vector<double> thresholds = thresholdsOn(m_lastDay + ahead, std::log(line));
            for (std::size_t i = 0; i < lowest.size(); ++i)
                lowest[i] = std::min(lowest[i], thresholds[i]);
            const double now = chanceAbove(lowest);
            if (now >= p)
                return ahead - 1 + (now > before ? (p - before) / (now - before) : 1.0);
            before = now;
        }
        return INFINITY;
    }
    if (chanceCrossed(line, m_lastDay + kFarDays) < p)
        return INFINITY;
    double low = 0;
    double high = 1;
    while (chanceCrossed(line, m_lastDay + high) < p) {
        low = high;
        high *= 2;
    }
    for (int i = 0; i < 60 && high - low > 1e-9 * (1 + high); ++i) {
        const double middle = 0.5 * (low + high);
        (chanceCrossed(line, m_lastDay + middle) < p ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace halfcup::mites
