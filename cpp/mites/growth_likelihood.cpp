// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/growth_likelihood.h"

#include "mites/checks.h"

#include <algorithm>
#include <cmath>

namespace halfcup::mites {

namespace {

constexpr double kDropped = 32;      // exp(-32) below the top is left out
constexpr double kNothing = 40;      // exp(-40) below the top a row holds nothing
constexpr double kNearPoisson = 1e4; // shapes above it: see logOneAnd

/// ln(1 + x), to be multiplied by about the shape: log is half the work of log1p, and its error, below 1e-16
/// of the one, matters only where the shape is large.
double logOneAnd(double x, double shape) {
    return shape > kNearPoisson ? std::log1p(x) : std::log(1 + x);
}

} // namespace

Series prepareSeries(std::span<const DatedWash> washes, const GrowthModel& model) {
    require(!washes.empty(), "There is no wash to fit a growth to.");
    checkJarShape(model.jarShape);
    Series series;
    double weightedDay = 0;
    double before = -INFINITY;
    for (const DatedWash& wash : washes) {
        require(std::isfinite(wash.day) && std::abs(wash.day) <= 1e7, "The day of a wash is not a day.");
        require(wash.day >= before, "The washes have to be in the order of their days.");
        before = wash.day;
        checkWash({wash.mites, wash.beesMean, wash.beesOwnCv, wash.recovery, 0, model.jarShape});
        require(std::isfinite(wash.logOffset) && std::abs(wash.logOffset) <= 50,
                "The offset of a wash is too large.");
        const double exposure = wash.beesMean * wash.recovery / 100;
        const double extra = 1 / model.jarShape + wash.beesOwnCv * wash.beesOwnCv;
        series.washes.push_back({static_cast<double>(wash.mites), std::log(exposure) + wash.logOffset,
                                 wash.day, extra > 0 ? 1 / extra : INFINITY});
        series.mites += static_cast<double>(wash.mites);
        series.exposure += exposure;
        series.shapes += series.washes.back().shape;
        weightedDay += exposure * wash.day;
    }
    series.refDay = weightedDay / series.exposure;
    series.lastDay = washes.back().day;
    series.driftAtRef = model.drift ? model.drift(series.refDay) : 0;
    for (SeriesWash& wash : series.washes) {
        if (model.drift)
            wash.logExposure += model.drift(wash.day) - series.driftAtRef;
        wash.day -= series.refDay;
    }
    return series;
}

double logSeries(const Series& series, double growth, double eta) {
    double sum = 0;
    double information = 0;
    for (const SeriesWash& wash : series.washes) {
        const double logMean = wash.logExposure + growth * wash.day + eta;
        const double mean = std::exp(logMean);
        if (std::isinf(wash.shape)) {
            sum += wash.mites * logMean - mean;
            information += mean;
        } else {
            sum +=
                wash.mites * logMean - (wash.mites + wash.shape) * logOneAnd(mean / wash.shape, wash.shape);
            information += mean / (1 + mean / wash.shape);
        }
    }
    return sum + 0.5 * std::log(information);
}

EtaGrid etaGrid(const Series& series, std::span<const double> growths, double nodes) {
    const double width = std::sqrt(1 / (series.mites + 0.5) + 1 / series.shapes);
    double low = INFINITY;
    double high = -INFINITY;
    for (const double growth : growths) {
        const auto at = [&](double eta) { return logSeries(series, growth, eta); };
        // Uphill from a rough centre, then outwards until it has dropped enough.
        double mode = std::log((series.mites + 0.5) / series.exposure);
        for (double step = 4 * width; step > 0.1 * width; step /= 2)
            for (int i = 0; i < 1000; ++i) {
                const double here = at(mode);
                if (at(mode + step) > here)
                    mode += step;
                else if (at(mode - step) > here)
                    mode -= step;
                else
                    break;
            }
        const double top = at(mode);
        double left = mode - width;
        for (int i = 0; i < 500 && at(left) > top - kDropped; ++i)
            left -= width + 0.1 * (mode - left);
        double right = mode + width;
        for (int i = 0; i < 500 && at(right) > top - kDropped; ++i)
            right += width + 0.1 * (right - mode);
        low = std::min(low, left);
        high = std::max(high, right);
    }
    const auto count = static_cast<std::size_t>(std::clamp((high - low) / width * nodes, 60.0, 3000.0));
    return {low, (high - low) / static_cast<double>(count), count + 1};
}

std::vector<double> seriesRow(const Series& series, double growth, const EtaGrid& grid, double* top) {
    // Means along the row by repeated multiplication: one logarithm a wash and node instead of an exponential
    // more.
    std::vector<double> row(grid.count, -INFINITY);
    std::vector<double> means;
    std::vector<double> logMeans;
    for (const SeriesWash& wash : series.washes) {
        logMeans.push_back(wash.logExposure + growth * wash.day + grid.low);
        means.push_back(std::exp(logMeans.back()));
    }
    const double factor = std::exp(grid.step);
    *top = -INFINITY;
    for (std::size_t i = 0; i < grid.count; ++i) {
        double sum = series.mites * static_cast<double>(i) * grid.step;
        double information = 0;
        for (std::size_t j = 0; j < means.size(); ++j) {
            const SeriesWash& wash = series.washes[j];
            const double mean = means[j];
            if (std::isinf(wash.shape)) {
                sum += wash.mites * logMeans[j] - mean;
                information += mean;
            } else {
                sum += wash.mites * logMeans[j] -
                       (wash.mites + wash.shape) * logOneAnd(mean / wash.shape, wash.shape);
                information += mean / (1 + mean / wash.shape);
            }
            means[j] = mean * factor;
        }
        row[i] = sum + 0.5 * std::log(information);
        *top = std::max(*top, row[i]);
        if (row[i] < *top - kNothing) // one mode: from here on it falls
            break;
    }
    for (double& value : row)
        value = std::exp(value - *top);
    return row;
}

} // namespace halfcup::mites
