// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/negative_binomial.h"

#include "mites/checks.h"

#include <boost/math/special_functions/erf.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>

namespace halfcup::mites {

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kLargestK = 1e8; // beyond, the fit is Poisson to all digits

// ln of Gamma(k + c)/(Gamma(k) k^c) and its derivatives as sums over the counts: no cancellation at large k.
struct Sums {
    double value = 0, slope = 0, bend = 0;
};

Sums sumsOver(std::span<const std::int64_t> frequencies, double k) {
    Sums sums;
    double above = 0;
    for (const std::int64_t items : frequencies)
        above += static_cast<double>(items);
    for (std::size_t j = 0; j + 1 < frequencies.size(); ++j) {
        above -= static_cast<double>(frequencies[j]);
        const auto step = static_cast<double>(j);
        sums.value += above * std::log1p(step / k);
        sums.slope += above * -step / (k * (k + step));
        sums.bend += above * step * (2 * k + step) / std::pow(k * (k + step), 2);
    }
    return sums;
}

double logFactorials(std::span<const std::int64_t> frequencies) {
    double sum = 0;
    for (std::size_t c = 0; c < frequencies.size(); ++c)
        sum += static_cast<double>(frequencies[c]) * std::lgamma(static_cast<double>(c) + 1);
    return sum;
}

// Log likelihood at the plain mean; k infinite: Poisson.
double logLikelihoodAt(std::span<const std::int64_t> frequencies, double items, double mean, double k) {
    const double base = items * mean * std::log(mean) - logFactorials(frequencies);
    if (k > kLargestK)
        return base - items * mean;
    return base + sumsOver(frequencies, k).value - items * (k + mean) * std::log1p(mean / k);
}

// Derivative of the log likelihood by k.
double score(std::span<const std::int64_t> frequencies, double items, double mean, double k) {
    return sumsOver(frequencies, k).slope - items * (std::log1p(mean / k) - mean / k);
}

template <typename F>
double solve(F&& f, double low, double high) {
    std::uintmax_t most = 200;
    const auto range =
        boost::math::tools::toms748_solve(f, low, high, boost::math::tools::eps_tolerance<double>(50), most);
    return 0.5 * (range.first + range.second);
}

} // namespace

NegativeBinomialFit fitNegativeBinomial(std::span<const std::int64_t> frequencies) {
    NegativeBinomialFit fit;
    double sum = 0;
    for (std::size_t c = 0; c < frequencies.size(); ++c) {
        require(frequencies[c] >= 0, "A number of items cannot be negative.");
        fit.items += static_cast<double>(frequencies[c]);
        sum += static_cast<double>(frequencies[c]) * static_cast<double>(c);
    }
    require(fit.items >= 2, "A fit needs at least two items.");
    require(sum > 0, "A fit needs at least one mite.");
    fit.mean = sum / fit.items;
    for (std::size_t c = 0; c < frequencies.size(); ++c)
        fit.variance += static_cast<double>(frequencies[c]) * std::pow(static_cast<double>(c) - fit.mean, 2);
    const double biased = fit.variance / fit.items;
    fit.variance /= fit.items - 1;
    fit.kByMoments = fit.variance > fit.mean ? fit.mean * fit.mean / (fit.variance - fit.mean) : kInfinity;
    fit.poissonLogLikelihood = logLikelihoodAt(frequencies, fit.items, fit.mean, kInfinity);
    fit.k = kInfinity;
    fit.kSe = std::numeric_limits<double>::quiet_NaN();
    // A finite maximum exists exactly where the variance (divisor n) exceeds the mean.
    if (biased > fit.mean) {
        const auto at = [&](double logK) {
            const double k = std::exp(logK);
            return k * k *
                   score(frequencies, fit.items, fit.mean, k); // scaled so that it does not fade at large k
        };
        const double high = std::log(kLargestK);
        const double low = std::log(1e-8);
        if (at(low) > 0 && at(high) < 0) {
            fit.k = std::exp(solve(at, low, high));
            const double bend = fit.mean / (fit.k * (fit.k + fit.mean)) - fit.mean / (fit.k * fit.k);
            const double information = -sumsOver(frequencies, fit.k).bend - fit.items * bend;
            if (information > 0)
                fit.kSe = 1 / std::sqrt(information);
        }
    }
    fit.logLikelihood = logLikelihoodAt(frequencies, fit.items, fit.mean, fit.k);
    return fit;
}

KLimits profileLimits(std::span<const std::int64_t> frequencies, const NegativeBinomialFit& fit,
                      double confidence) {
    require(confidence > 0 && confidence < 1, "The confidence has to be between 0 and 1.");
    const double z = std::sqrt(2.0) * boost::math::erf_inv(confidence);
    const auto drop = [&](double logK) {
        return logLikelihoodAt(frequencies, fit.items, fit.mean, std::exp(logK)) - fit.logLikelihood +
               z * z / 2;
    };
    const double top = std::isfinite(fit.k) ? std::log(fit.k) : std::log(kLargestK);
    KLimits limits{0, kInfinity};
    const double low = top - 40;
    if (drop(low) < 0)
        limits.lower = std::exp(solve(drop, low, top));
    if (std::isfinite(fit.k) && drop(std::log(kLargestK)) < 0)
        limits.upper = std::exp(solve(drop, top, std::log(kLargestK)));
    return limits;
}

std::vector<double> expectedFrequencies(const NegativeBinomialFit& fit, int classes) {
    require(classes >= 1 && classes <= 100000, "The number of classes has to be between 1 and 100,000.");
    std::vector<double> expected(static_cast<std::size_t>(classes), 0.0);
    double rest = fit.items;
    double item = std::isfinite(fit.k) ? fit.items * std::exp(-fit.k * std::log1p(fit.mean / fit.k))
                                       : fit.items * std::exp(-fit.mean);
    for (int c = 0; c + 1 < classes; ++c) {
        expected[static_cast<std::size_t>(c)] = item;
        rest -= item;
        item *=
            std::isfinite(fit.k) ? (fit.k + c) / (c + 1) * fit.mean / (fit.k + fit.mean) : fit.mean / (c + 1);
    }
    expected.back() = rest;
    return expected;
}

} // namespace halfcup::mites
