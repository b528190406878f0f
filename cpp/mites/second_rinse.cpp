// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/second_rinse.h"

#include "mites/checks.h"
#include "mites/constants.h"
#include "mites/tabulated_law.h"

#include <cmath>
#include <limits>

namespace halfcup::mites {

namespace {

// 1/(1 + e^-y) and its logarithm without overflow.
double logistic(double y) {
    return y > 0 ? 1 / (1 + std::exp(-y)) : std::exp(y) / (1 + std::exp(y));
}
double logLogistic(double y) {
    return y > 0 ? -std::log1p(std::exp(-y)) : y - std::log1p(std::exp(y));
}

} // namespace

RecoveryEstimate recoveryFromRinses(std::span<const Rinses> rinses, double priorMean, double priorSd) {
    checkRecovery(priorMean, priorSd);
    double first = 0;
    double second = 0;
    for (const Rinses& pair : rinses) {
        require(pair.first >= 0 && pair.second >= 0, "The number of mites cannot be negative.");
        require(static_cast<double>(pair.first) <= kMostCounted &&
                    static_cast<double>(pair.second) <= kMostCounted,
                "The number of mites is too large to be a count.");
        first += static_cast<double>(pair.first);
        second += static_cast<double>(pair.second);
    }
    const double mostLikely = first > 0 ? 1 - second / first : std::numeric_limits<double>::quiet_NaN();
    if (priorSd == 0)
        return {priorMean, 0, priorMean, priorMean, priorMean, mostLikely};
    const double nu = priorMean * (1 - priorMean) / (priorSd * priorSd) - 1;
    const double a = priorMean * nu;
    const double b = (1 - priorMean) * nu;
    // In y = logit c; the density of y has the Jacobian c (1 - c) in it.
    const auto logDensity = [&](double y) {
        const double logMissed = logLogistic(-y);
        const double logBoth = std::log1p(std::exp(logMissed)); // ln(2 - c)
        return a * logLogistic(y) + (b + second) * logMissed - (first + second) * logBoth;
    };
    const TabulatedLaw law(logDensity, -25 - 40 / a, 25 + 40 / (b + second));
    const double mean = law.meanOf(logistic);
    const double variance = law.meanOf([mean](double y) { return std::pow(logistic(y) - mean, 2); });
    return {mean,
            std::sqrt(variance),
            logistic(law.quantile(kLowerEnd)),
            logistic(law.quantile(0.5)),
            logistic(law.quantile(kUpperEnd)),
            mostLikely};
}

} // namespace halfcup::mites
