// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/wash_load.h"

#include "mites/checks.h"

#include <cmath>

namespace halfcup::mites {

namespace {

// A Beta by its mean and sd: a = m nu, b = (1 - m) nu.
struct BetaShape {
    double a, b;
};

BetaShape betaShape(double mean, double sd) {
    const double nu = mean * (1 - mean) / (sd * sd) - 1;
    return {mean * nu, (1 - mean) * nu};
}

} // namespace

Recovery washedRecovery(WashMethod method) {
    return method == WashMethod::Sugar ? Recovery{kSugarAgainstWash, kSugarAgainstWashSd} : Recovery{1, 0};
}

Recovery fullRecovery(WashMethod method) {
    return method == WashMethod::Sugar ? Recovery{kSugarRecovery, kSugarRecoverySd}
                                       : Recovery{kWashRecovery, kWashRecoverySd};
}

void checkWash(const Wash& wash) {
    require(wash.mites >= 0, "The number of mites cannot be negative.");
    require(wash.mites <= kMostCounted, "The number of mites is too large to be a count.");
    require(wash.beesMean > 0, "The number of bees has to be above zero.");
    require(wash.beesMean <= kMostCounted, "The number of bees is too large to be a sample.");
    require(wash.beesCv >= 0 && wash.beesCv <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    checkRecovery(wash.recovery, wash.recoverySd);
    checkJarShape(wash.jarShape);
}

LogLaw washLaw(const Wash& wash, double tilt, double extraMites) {
    const double logVariance = std::log1p(wash.beesCv * wash.beesCv);
    const double shape = static_cast<double>(wash.mites) + extraMites + tilt;
    // E[n^(-tilt)] moves the mean of ln n by -tilt times its variance, of ln c and ln g through their shapes.
    double location = std::log(100.0) + std::log(shape) -
                      (std::log(wash.beesMean) - 0.5 * logVariance - tilt * logVariance);
    LogLaw law(0, logVariance);
    law.addGamma(shape, 1);
    if (std::isfinite(wash.jarShape)) {
        law.addGamma(wash.jarShape - tilt, -1);
        location -= std::log1p(-tilt / wash.jarShape);
    }
    if (wash.recoverySd > 0) {
        const BetaShape beta = betaShape(wash.recovery, wash.recoverySd);
        law.addBeta(beta.a - tilt, beta.b, -1);
        location -= std::log((beta.a - tilt) / (beta.a + beta.b - tilt));
    } else {
        location -= std::log(wash.recovery);
    }
    law.shift(location);
    law.prepare();
    return law;
}

LoadPosterior::LoadPosterior(const Wash& wash)
    : m_wash((checkWash(wash), wash))
    , m_law(washLaw(wash)) {}

double LoadPosterior::cumulative(double load) const {
    require(!std::isnan(load), "A load to ask about has to be a number.");
    return load > 0 ? m_law.cumulative(std::log(load)) : 0.0;
}

double LoadPosterior::chanceOver(double line) const {
    require(!std::isnan(line), "A line has to be a number.");
    return line > 0 ? m_law.complement(std::log(line)) : 1.0;
}

double LoadPosterior::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return std::exp(m_law.quantile(p));
}

LoadEstimate LoadPosterior::estimate() const {
    return {quantile(kLowerEnd), quantile(0.5), quantile(kUpperEnd)};
}

double LoadPosterior::mean() const {
    return std::exp(m_law.logMoment(1));
}

std::vector<Caution> cautions(const Wash& wash, const LoadEstimate& estimate) {
    std::vector<Caution> said;
    if (wash.beesMean < kFewBees)
        said.push_back(Caution::FewBees);
    if (static_cast<double>(wash.mites) > wash.beesMean)
        said.push_back(Caution::MoreMitesThanBees);
    if (estimate.q95 > kLoadBeyondAdvice)
        said.push_back(Caution::BeyondAdvice);
    if (wash.mites == 0)
        said.push_back(Caution::NoneFound);
    return said;
}

} // namespace halfcup::mites
