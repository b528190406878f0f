// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The mean load of a yard of N colonies from washes of m of them.
//
// Model: sum of mites K ~ Poisson(mean load * E * h), E = sum of n c/100, h log-normal with mean 1 and
//   s_h^2 = ln(1 + [(1 - m/N) C2 nu/(nu - 2) + w (1 + C2)]/m),
// C2 the squared CV between colonies (between_colonies.h, prior CV kMeanBetweenCv worth 4 colonies), nu = 3 +
// m, w = 1/jarShape + own CV^2; besides h the recovery and the shared error of the scoop, which do not
// average out. All colonies washed (m = N): only measurement error is left. Nothing found: lower end shown as
// 0. Colonies have to be chosen at random, or all: "the strongest" biases upward and no formula repairs it.
// Coverage of the 90 % range, simulated: 0.84 to 0.99; low for very skewed yards.
// Errors: std::domain_error with a plain sentence: no wash, more washes than colonies, bad washes, unequal
// recoveries.
#include "mites/between_colonies.h"
#include "mites/wash_load.h"

#include <span>

namespace halfcup::mites {

class YardMean {
public:
    // One wash a colony; beesCv of each is its own spread, recovery and recoverySd are common to all and
    // taken from the first. sharedSd: of ln(bees), common to all scoops. colonies: N >= number of washes.
    YardMean(std::span<const Wash> washes, std::int64_t colonies, double sharedSd = 0);

    double point() const { return m_point; } // sum k / sum E
    double quantile(double p) const;
    double chanceOver(double line) const;
    LoadEstimate estimate() const;
    const BetweenColonies& between() const { return m_between; }
    double heterogeneity() const { return m_heterogeneity; } // s_h^2

private:
    BetweenColonies m_between;
    double m_point = 0;
    double m_heterogeneity = 0;
    LogLaw m_law;
};

// Colonies that stand out: chance that this colony's load is above the yard's other colonies' mean by the
// factor. washes[i] against all others together; factor > 0.
double chanceAboveOthers(std::span<const Wash> washes, std::size_t which, double factor = 1);

} // namespace halfcup::mites
