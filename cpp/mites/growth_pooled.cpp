// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/growth_pooled.h"

#include "mites/checks.h"
#include "mites/growth_likelihood.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace halfcup::mites {

namespace {

constexpr double kGrowthLow = -0.06;
constexpr double kGrowthStep = 0.0005;
constexpr std::size_t kGrowthCount = 341; // up to 0.11

double growthAt(std::size_t i) {
    return kGrowthLow + kGrowthStep * static_cast<double>(i);
}

MeanAndSd momentsOf(const std::vector<double>& weight) {
    const double sum = std::accumulate(weight.begin(), weight.end(), 0.0);
    double mean = 0;
    for (std::size_t i = 0; i < weight.size(); ++i)
        mean += weight[i] / sum * growthAt(i);
    double variance = 0;
    for (std::size_t i = 0; i < weight.size(); ++i)
        variance += weight[i] / sum * (growthAt(i) - mean) * (growthAt(i) - mean);
    return {mean, std::sqrt(variance)};
}

// Likelihood of the growth with the level integrated out, its largest value 1.
std::vector<double> growthLikelihood(std::span<const DatedWash> washes, const GrowthModel& model) {
    const Series series = prepareSeries(washes, model);
    std::vector<double> logMass(kGrowthCount);
    double best = -INFINITY;
    for (std::size_t i = 0; i < kGrowthCount; ++i) {
        const double growth = growthAt(i);
        const EtaGrid grid = etaGrid(series, std::span(&growth, 1));
        double top = 0;
        const std::vector<double> row = seriesRow(series, growth, grid, &top);
        logMass[i] = top + std::log(grid.step * std::accumulate(row.begin(), row.end(), 0.0));
        best = std::max(best, logMass[i]);
    }
    for (double& value : logMass)
        value = std::exp(value - best);
    return logMass;
}

} // namespace

YardGrowth poolGrowth(std::span<const std::vector<DatedWash>> colonies, const YardGrowthPrior& prior,
                      const GrowthModel& model) {
    require(!colonies.empty(), "There is no colony to read.");
    require(std::isfinite(prior.mean) && std::abs(prior.mean) <= 0.1,
            "The growth a day has to be below 0.1.");
    require(prior.withinSd >= kGrowthStep && prior.withinSd <= 1 && prior.betweenSd >= kGrowthStep &&
                prior.betweenSd <= 1,
            "The spreads of the growth have to be between 0.0005 and 1.");
    // Kernel between a colony's growth and the yard's, by their distance on the grid.
    std::vector<double> kernel(kGrowthCount);
    for (std::size_t i = 0; i < kGrowthCount; ++i)
        kernel[i] = std::exp(-0.5 * std::pow(static_cast<double>(i) * kGrowthStep / prior.withinSd, 2));
    const auto smooth = [&](const std::vector<double>& values) {
        std::vector<double> result(kGrowthCount, 0.0);
        for (std::size_t i = 0; i < kGrowthCount; ++i)
            for (std::size_t j = 0; j < kGrowthCount; ++j)
                result[i] += values[j] * kernel[i > j ? i - j : j - i];
        return result;
    };

    std::vector<std::vector<double>> likelihoods;
    std::vector<std::vector<double>> smoothed;
    std::vector<double> logYard(kGrowthCount);
    for (std::size_t i = 0; i < kGrowthCount; ++i)
        logYard[i] = -0.5 * std::pow((growthAt(i) - prior.mean) / prior.betweenSd, 2);
    for (const std::vector<DatedWash>& washes : colonies) {
        likelihoods.push_back(growthLikelihood(washes, model));
        smoothed.push_back(smooth(likelihoods.back()));
        for (std::size_t i = 0; i < kGrowthCount; ++i)
            logYard[i] += std::log(std::max(smoothed.back()[i], 1e-300));
    }
    const double top = *std::max_element(logYard.begin(), logYard.end());
    std::vector<double> yard(kGrowthCount);
    for (std::size_t i = 0; i < kGrowthCount; ++i)
        yard[i] = std::exp(logYard[i] - top);

    YardGrowth found;
    found.yard = momentsOf(yard);
    for (std::size_t j = 0; j < likelihoods.size(); ++j) {
        std::vector<double> others(kGrowthCount);
        for (std::size_t i = 0; i < kGrowthCount; ++i)
            others[i] = yard[i] / std::max(smoothed[j][i], 1e-300);
        std::vector<double> own = smooth(others);
        for (std::size_t i = 0; i < kGrowthCount; ++i)
            own[i] *= likelihoods[j][i];
        found.colonies.push_back(momentsOf(own));
    }
    return found;
}

} // namespace halfcup::mites
