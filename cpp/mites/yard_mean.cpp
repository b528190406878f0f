// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/yard_mean.h"

#include "mites/checks.h"

#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/trigamma.hpp>
#include <cmath>

namespace halfcup::mites {

YardMean::YardMean(std::span<const Wash> washes, std::int64_t colonies, double sharedSd)
    : m_between(betweenColonies(washes, kMeanBetweenCv)) {
    const auto m = static_cast<double>(washes.size());
    const auto all = static_cast<double>(colonies);
    require(colonies > 0, "A yard has to have at least one colony.");
    require(all <= kMostCounted, "The number of colonies is too large.");
    require(m <= all, "There cannot be more colonies washed than the yard has.");
    require(sharedSd >= 0 && sharedSd <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    const Wash& first = washes.front();
    for (const Wash& wash : washes)
        require(wash.recovery == first.recovery && wash.recoverySd == first.recoverySd,
                "Washes of one yard's mean have to be of one method.");
    m_point = static_cast<double>(m_between.mites) / m_between.exposure;
    const double freedom = m_between.freedom;
    m_heterogeneity = std::log1p(((1 - m / all) * m_between.variance * freedom / (freedom - 2) +
                                  m_between.extraVariance * (1 + m_between.variance)) /
                                 m);
    const double shape = static_cast<double>(m_between.mites) + 0.5;
    // The recovery enters as a log-normal with the mean and variance that ln c has under its Beta.
    double logRecovery = std::log(first.recovery);
    double variance = m_heterogeneity + sharedSd * sharedSd;
    if (first.recoverySd > 0) {
        const double nu = first.recovery * (1 - first.recovery) / (first.recoverySd * first.recoverySd) - 1;
        const double a = first.recovery * nu;
        logRecovery = boost::math::digamma(a) - boost::math::digamma(nu);
        variance += boost::math::trigamma(a) - boost::math::trigamma(nu);
    }
    const double hundreds = m_between.exposure / first.recovery;
    m_law = LogLaw(std::log(shape / hundreds) - logRecovery + 0.5 * m_heterogeneity, variance);
    m_law.addGamma(shape, 1);
    m_law.prepare();
}

double YardMean::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return std::exp(m_law.quantile(p));
}

double YardMean::chanceOver(double line) const {
    require(!std::isnan(line), "A line has to be a number.");
    return line > 0 ? m_law.complement(std::log(line)) : 1.0;
}

LoadEstimate YardMean::estimate() const {
    return {quantile(kLowerEnd), quantile(0.5), quantile(kUpperEnd)};
}

double chanceAboveOthers(std::span<const Wash> washes, std::size_t which, double factor) {
    require(which < washes.size(), "There is no such wash.");
    require(washes.size() > 1, "One wash alone cannot stand out.");
    require(factor > 0 && std::isfinite(factor), "The factor has to be a number above zero.");
    std::vector<Wash> others(washes.begin(), washes.end());
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(which));
    const BetweenColonies between = betweenColonies(others, kMeanBetweenCv);
    checkWash(washes[which]);
    // Recovery and scoop are common to both sides, so only the colony's own spread and the others' mean
    // count.
    const Wash own{
        washes[which].mites,   washes[which].beesMean * washes[which].recovery, washes[which].beesCv, 1, 0,
        washes[which].jarShape};
    LogLaw law = washLaw(own);
    const double shape = static_cast<double>(between.mites) + 0.5;
    const auto m = static_cast<double>(others.size());
    const double heterogeneity =
        std::log1p((between.variance + between.extraVariance * (1 + between.variance)) / m);
    law.addGamma(shape, -1).addNormal(heterogeneity);
    law.shift(-std::log(shape / between.exposure) - 0.5 * heterogeneity);
    law.prepare();
    return law.complement(std::log(factor));
}

} // namespace halfcup::mites
