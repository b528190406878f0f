// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/classic_limits.h"

#include "mites/checks.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <limits>

namespace halfcup::mites {

namespace {

void checkCount(std::int64_t k) {
    require(k >= 0, "A count cannot be negative.");
    require(static_cast<double>(k) <= kMostCounted, "The count is too large.");
}

void checkShare(std::int64_t k, std::int64_t n) {
    checkCount(k);
    checkCount(n);
    require(n > 0, "A share needs at least one thing looked at.");
    require(k <= n, "There cannot be more found than looked at.");
}

void checkExposure(double exposure) {
    require(exposure > 0 && std::isfinite(exposure), "The exposure has to be a number above zero.");
}

// The probability left out at each end.
double tailOf(double confidence) {
    require(confidence > 0 && confidence < 1, "The confidence has to be between 0 and 1.");
    return (1 - confidence) / 2;
}

double normalQuantile(double confidence) {
    tailOf(confidence);
    return std::sqrt(2.0) * boost::math::erf_inv(confidence);
}

// Odds of the second of two independent gammas against the first, from the quantile of their share.
double oddsOf(double share) {
    return share < 1 ? share / (1 - share) : std::numeric_limits<double>::infinity();
}

} // namespace

Limits wilsonLimits(std::int64_t k, std::int64_t n, double confidence) {
    checkShare(k, n);
    const double z = normalQuantile(confidence);
    const auto size = static_cast<double>(n);
    const double p = static_cast<double>(k) / size;
    const double centre = 2 * size * p + z * z;
    const double half = z * std::sqrt(z * z + 4 * size * p * (1 - p));
    const double below = 2 * (size + z * z);
    return {k == 0 ? 0 : (centre - half) / below, k == n ? 1 : (centre + half) / below};
}

Limits wilsonCorrectedLimits(std::int64_t k, std::int64_t n, double confidence) {
    checkShare(k, n);
    const double z = normalQuantile(confidence);
    const auto size = static_cast<double>(n);
    const double p = static_cast<double>(k) / size;
    const double below = 2 * (size + z * z);
    const double lower =
        (2 * size * p + z * z - 1 - z * std::sqrt(z * z - 2 - 1 / size + 4 * p * (size * (1 - p) + 1))) /
        below;
    const double upper =
        (2 * size * p + z * z + 1 + z * std::sqrt(z * z + 2 - 1 / size + 4 * p * (size * (1 - p) - 1))) /
        below;
    return {k == 0 ? 0 : std::max(0.0, lower), k == n ? 1 : std::min(1.0, upper)};
}

Limits clopperPearsonLimits(std::int64_t k, std::int64_t n, double confidence) {
    checkShare(k, n);
    const double tail = tailOf(confidence);
    const auto hits = static_cast<double>(k);
    const auto misses = static_cast<double>(n - k);
    return {k == 0 ? 0 : boost::math::ibeta_inv(hits, misses + 1, tail),
            k == n ? 1 : boost::math::ibetac_inv(hits + 1, misses, tail)};
}

Limits garwoodLimits(std::int64_t k, double exposure, double confidence) {
    checkCount(k);
    checkExposure(exposure);
    const double tail = tailOf(confidence);
    const auto hits = static_cast<double>(k);
    return {k == 0 ? 0 : boost::math::gamma_p_inv(hits, tail) / exposure,
            boost::math::gamma_q_inv(hits + 1, tail) / exposure};
}

double poissonTestAbove(std::int64_t k, double exposure, double rate) {
    checkCount(k);
    checkExposure(exposure);
    require(rate >= 0 && std::isfinite(rate), "The rate has to be a number of zero or more.");
    return k == 0 ? 1 : boost::math::gamma_p(static_cast<double>(k), rate * exposure);
}

Limits poissonRatioLimits(std::int64_t k1, double exposure1, std::int64_t k2, double exposure2,
                          double confidence) {
    checkCount(k1);
    checkCount(k2);
    checkExposure(exposure1);
    checkExposure(exposure2);
    require(k1 + k2 > 0, "A ratio needs at least one found in one of the two.");
    const Limits share = clopperPearsonLimits(k2, k1 + k2, confidence);
    return {oddsOf(share.lower) * exposure1 / exposure2, oddsOf(share.upper) * exposure1 / exposure2};
}

LimitsAndMedian jeffreysShare(std::int64_t k, std::int64_t n, double confidence) {
    checkShare(k, n);
    const double tail = tailOf(confidence);
    const double a = static_cast<double>(k) + 0.5;
    const double b = static_cast<double>(n - k) + 0.5;
    return {boost::math::ibeta_inv(a, b, tail), boost::math::ibeta_inv(a, b, 0.5),
            boost::math::ibetac_inv(a, b, tail)};
}

LimitsAndMedian jeffreysRate(std::int64_t k, double exposure, double confidence) {
    checkCount(k);
    checkExposure(exposure);
    const double tail = tailOf(confidence);
    const double a = static_cast<double>(k) + 0.5;
    return {boost::math::gamma_p_inv(a, tail) / exposure, boost::math::gamma_p_inv(a, 0.5) / exposure,
            boost::math::gamma_q_inv(a, tail) / exposure};
}

double jeffreysRateOver(std::int64_t k, double exposure, double line) {
    checkCount(k);
    checkExposure(exposure);
    require(!std::isnan(line), "A line has to be a number.");
    return line > 0 ? boost::math::gamma_q(static_cast<double>(k) + 0.5, line * exposure) : 1.0;
}

LimitsAndMedian jeffreysRatio(std::int64_t k1, double exposure1, std::int64_t k2, double exposure2,
                              double confidence) {
    checkCount(k1);
    checkCount(k2);
    checkExposure(exposure1);
    checkExposure(exposure2);
    const double tail = tailOf(confidence);
    const double a = static_cast<double>(k2) + 0.5;
    const double b = static_cast<double>(k1) + 0.5;
    const double scale = exposure1 / exposure2;
    return {oddsOf(boost::math::ibeta_inv(a, b, tail)) * scale,
            oddsOf(boost::math::ibeta_inv(a, b, 0.5)) * scale,
            oddsOf(boost::math::ibetac_inv(a, b, tail)) * scale};
}

} // namespace halfcup::mites
