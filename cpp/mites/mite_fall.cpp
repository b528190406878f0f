// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/mite_fall.h"

#include "mites/checks.h"

#include <cmath>

namespace halfcup::mites {

namespace {

LogLaw fallLaw(const BoardCount& count) {
    require(count.mites >= 0, "The number of mites cannot be negative.");
    require(static_cast<double>(count.mites) <= kMostCounted,
            "The number of mites is too large to be a count.");
    require(count.days > 0 && count.days <= 365, "The days of the board have to be between 0 and 365.");
    require(count.shareCounted > 0 && count.shareCounted <= 1,
            "The share of the board that was counted has to be above 0 and at most 1.");
    require(count.countCv >= 0 && count.countCv <= kMostCv,
            "The spread of the count has to be between 0 and 5.");
    const double variance = std::log1p(count.countCv * count.countCv);
    const double shape = static_cast<double>(count.mites) + 0.5;
    LogLaw law(std::log(shape / (count.days * count.shareCounted)) + 0.5 * variance, variance);
    law.addGamma(shape, 1);
    law.prepare();
    return law;
}

} // namespace

BoardCount boardCount(std::int64_t mites, double days, double shareCounted) {
    return {mites, days, shareCounted, shareCounted < 1 ? kBoardPartCv : 0.0};
}

FallPosterior::FallPosterior(const BoardCount& count)
    : m_law(fallLaw(count)) {}

double FallPosterior::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return std::exp(m_law.quantile(p));
}

double FallPosterior::chanceOver(double line) const {
    require(!std::isnan(line), "A line has to be a number.");
    return line > 0 ? m_law.complement(std::log(line)) : 1.0;
}

LoadEstimate FallPosterior::estimate() const {
    return {quantile(kLowerEnd), quantile(0.5), quantile(kUpperEnd)};
}

LoadEstimate mitesFromFall(const LoadEstimate& fallPerDay, const FallFactor& factor) {
    require(fallPerDay.q05 >= 0 && fallPerDay.q50 >= fallPerDay.q05 && fallPerDay.q95 >= fallPerDay.q50 &&
                std::isfinite(fallPerDay.q95),
            "The range of the fall has to run from its lower to its upper end.");
    require(factor.low > 0 && factor.usual >= factor.low && factor.high >= factor.usual &&
                std::isfinite(factor.high),
            "The factor's range has to run from its lower to its upper end.");
    return {fallPerDay.q05 * factor.low, fallPerDay.q50 * factor.usual, fallPerDay.q95 * factor.high};
}

} // namespace halfcup::mites
