// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// What one wash says about the load: mites per 100 adult bees.
//
// Model: mites k | load, n, c, g ~ Poisson(load/100 * n * c * g) with
//   n  bees in the jar, log-normal with arithmetic mean beesMean and coefficient of variation beesCv,
//   c  recovery, the share of the mites on the bees that is counted, Beta with the given mean and sd (sd 0:
//   fixed), g  difference between jars of one colony, Gamma with mean 1 and shape jarShape (infinity: none,
//   plain Poisson).
// Prior: Jeffreys for the mean of the negative binomial of known shape. Then the posterior is exactly
//   load = 100 G / (n c g),  G ~ Gamma(k + 1/2, 1), all factors independent,
// which LogLaw inverts without any further approximation.
//
// Special cases: k = 0 has a lower end above 0 here; screens show it as 0. k > bees is allowed (a bee can
// carry several). A jarShape or a recovery so uncertain that the mean does not exist gives mean() = infinity:
// show the median. Errors: std::domain_error with a plain sentence for input outside the ranges below.
// Accuracy: 1e-9 relative in quantiles, 1e-12 absolute in chances, relative accuracy kept in far tails.
// Source of the prior: Jeffreys 1946, Proc R Soc A 186:453-461. Two loads are kept apart: the washed load
// (recovery 1, for a sugar roll the recovery against a wash), held against lines, and the full load
// (kWashRecovery and so on).
#include "mites/constants.h"
#include "mites/log_law.h"

#include <cstdint>
#include <vector>

namespace halfcup::mites {

struct Wash {
    std::int64_t mites = 0;      // 0 to 1e9
    double beesMean = 0;         // > 0, at most 1e9
    double beesCv = 0;           // 0 to 5
    double recovery = 1;         // > 0, at most 1
    double recoverySd = 0;       // >= 0, sd^2 < recovery (1 - recovery)
    double jarShape = kJarShape; // 0.01 to infinity
};

// The washed load is held against lines, the full load counts mites a wash misses.
enum class WashMethod { Alcohol, Soap, Sugar };
struct Recovery {
    double mean, sd;
};
Recovery washedRecovery(WashMethod method);
Recovery fullRecovery(WashMethod method);

// Median and the ends of the 90 % range, mites per 100 bees.
struct LoadEstimate {
    double q05, q50, q95;
};

class LoadPosterior {
public:
    explicit LoadPosterior(const Wash& wash);

    double cumulative(double load) const; // P(true load <= load); load per 100; NaN throws
    double chanceOver(double line) const; // P(true load > line); line per 100; NaN throws
    double quantile(double p) const;      // 0 < p < 1, otherwise throws
    LoadEstimate estimate() const;
    double mean() const; // closed form; may be infinite
    const Wash& wash() const { return m_wash; }

private:
    Wash m_wash;
    LogLaw m_law;
};

// What a keeper should be told beside the figure.
enum class Caution { FewBees, MoreMitesThanBees, BeyondAdvice, NoneFound };
std::vector<Caution> cautions(const Wash& wash, const LoadEstimate& estimate);

// Checks a wash; throws std::domain_error. The constructor does the same.
void checkWash(const Wash& wash);

// The law of ln(load): every other header builds on it. tilt in [0, min(jarShape, a)) weights it by
// exposure^-tilt (see informed_load.h); 0 is the plain posterior.
LogLaw washLaw(const Wash& wash, double tilt = 0, double extraMites = 0.5);

} // namespace halfcup::mites
