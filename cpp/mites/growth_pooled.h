// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Growth of several colonies of one yard, read together: each colony's growth r_j ~ normal(R, within^2), the
// yard's R ~ normal(mean, between^2). Colonies with few washes borrow from the others; one wash alone adds
// nothing. Method: eta integrated out for each colony (growth.h without the prior of r) on a grid of r from
// -0.06 to 0.11 in steps of 0.0005; then p(R) and p(r_j) are sums. Growth outside that range cannot be seen.
// Accuracy 1e-6 in r. Errors: std::domain_error with a plain sentence: no colony, spreads that are not above
// 0, bad washes.
#include "mites/growth.h"

#include <span>
#include <vector>

namespace halfcup::mites {

struct YardGrowthPrior {
    double mean = kGrowthMean;
    double withinSd = kYardGrowthWithinSd;
    double betweenSd = kYardGrowthBetweenSd;
};

struct MeanAndSd {
    double mean = 0, sd = 0;
};

struct YardGrowth {
    MeanAndSd yard;
    std::vector<MeanAndSd> colonies; // in the order given
};

// model.prior is not used; model.jarShape and model.drift are.
YardGrowth poolGrowth(std::span<const std::vector<DatedWash>> colonies, const YardGrowthPrior& prior = {},
                      const GrowthModel& model = {});

} // namespace halfcup::mites
