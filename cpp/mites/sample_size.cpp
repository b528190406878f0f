// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/sample_size.h"

#include "mites/checks.h"

#include <boost/math/special_functions/erf.hpp>
#include <cmath>

namespace halfcup::mites {

namespace {

constexpr double kRoundingSlack = 1e-9;

void checkPrecision(double precision, std::int64_t colonies) {
    require(precision > 0 && std::isfinite(precision), "The precision has to be a number above zero.");
    require(colonies > 0, "A yard has to have at least one colony.");
}

SampleSize finite(double unbounded, double n, std::int64_t colonies) {
    require(n < 9e15, "No number of washes gives that precision.");
    const auto washes = static_cast<std::int64_t>(std::ceil(n - kRoundingSlack));
    return {unbounded, washes < 1 ? 1 : washes, washes <= colonies};
}

SampleSize fromRelativeVariance(double variance, double precision, std::int64_t colonies,
                                bool withHalfWidth90) {
    const double z = withHalfWidth90 ? std::sqrt(2.0) * boost::math::erf_inv(kUpperEnd - kLowerEnd) : 1;
    const double unbounded = variance * z * z / (precision * precision);
    return finite(unbounded, unbounded / (1 + unbounded / static_cast<double>(colonies)), colonies);
}

} // namespace

SampleSize coloniesToWash(const YardPlan& plan, double precision, std::int64_t colonies) {
    checkPrecision(precision, colonies);
    require(plan.expectedLoad > 0 && std::isfinite(plan.expectedLoad),
            "Say what load you expect, above zero.");
    require(plan.exposure > 0 && std::isfinite(plan.exposure), "The bees in a wash have to be above zero.");
    require(plan.beesCv >= 0 && plan.beesCv <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    require(plan.betweenCv >= 0 && plan.betweenCv <= kMostCv,
            "The spread between colonies has to be 0 to 5.");
    checkJarShape(plan.jarShape);
    const double between = plan.betweenCv * plan.betweenCv;
    const double w = 1 / plan.jarShape + plan.beesCv * plan.beesCv;
    const double above = between + w * (1 + between) + 1 / (plan.expectedLoad * plan.exposure);
    const double square = precision * precision;
    return finite(above / square, above / (square + between / static_cast<double>(colonies)), colonies);
}

SampleSize taylorSampleSize(double meanPerWash, double a, double b, double precision, std::int64_t colonies,
                            bool withHalfWidth90) {
    checkPrecision(precision, colonies);
    require(meanPerWash > 0 && std::isfinite(meanPerWash),
            "Say how many mites a wash you expect, above zero.");
    require(a > 0 && std::isfinite(a) && std::isfinite(b),
            "The power law needs numbers, the first above zero.");
    return fromRelativeVariance(a * std::pow(meanPerWash, b - 2), precision, colonies, withHalfWidth90);
}

SampleSize negativeBinomialSampleSize(double meanPerWash, double k, double precision, std::int64_t colonies,
                                      bool withHalfWidth90) {
    checkPrecision(precision, colonies);
    require(meanPerWash > 0 && std::isfinite(meanPerWash),
            "Say how many mites a wash you expect, above zero.");
    require(k > 0, "The shape has to be above zero.");
    return fromRelativeVariance(1 / meanPerWash + 1 / k, precision, colonies, withHalfWidth90);
}

} // namespace halfcup::mites
