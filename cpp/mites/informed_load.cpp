// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/informed_load.h"

#include "mites/between_colonies.h"
#include "mites/checks.h"

#include <algorithm>
#include <cmath>

namespace halfcup::mites {

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
    const double spread = std::sqrt(law.variance());
    m_law = TabulatedLaw(logDensity, law.mean() - 12 * spread - 60 / (static_cast<double>(wash.mites) + tilt),
                         law.mean() + 12 * spread + std::log(prior.shape + 2));
}

double InformedPosterior::cumulative(double load) const {
    require(!std::isnan(load), "A load to ask about has to be a number.");
    return load > 0 ? m_law.cumulative(std::log(load)) : 0.0;
}

double InformedPosterior::chanceOver(double line) const {
    require(!std::isnan(line), "A line has to be a number.");
    return line > 0 ? m_law.complement(std::log(line)) : 1.0;
}

double InformedPosterior::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return std::exp(m_law.quantile(p));
}

LoadEstimate InformedPosterior::estimate() const {
    return {quantile(kLowerEnd), quantile(0.5), quantile(kUpperEnd)};
}

} // namespace halfcup::mites
