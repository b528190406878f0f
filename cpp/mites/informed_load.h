// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The load of one colony in the light of the other washes of its yard.
//
// Model: the wash of wash_load.h, and true loads of the yard's colonies ~ Gamma(shape kappa, mean L), with L
// and kappa estimated from the yard's own washes (yardPrior). It corrects the alarm of "this wash alone"
// where most colonies are low; it also shrinks a single bad colony slightly, so both numbers are to be shown,
// each with its name. Worth showing once five colonies were washed within 14 days (constants.h). Method: the
// likelihood of the load, tilted to a proper law of ln(load) (LogLaw), times the rest of the prior, on a grid
// of ln(load); no factor is collapsed. Accuracy: 1e-6 relative in quantiles, 1e-6 absolute in chances.
// Errors: std::domain_error with a plain sentence. All-zero yards are fine.
#include "mites/tabulated_law.h"
#include "mites/wash_load.h"

#include <span>

namespace halfcup::mites {

struct YardPrior {
    double meanLoad = 0; // L, per 100, > 0
    double shape = 0;    // kappa = 1 / CV^2 between colonies, > 0
};

// From all washes of the yard: L = (sum k + 1/2)/sum E; between-colony CV^2 by moments, shrunk towards
// kInformedBetweenCv, worth kBetweenPriorColonies colonies, at least kLeastBetweenVariance.
YardPrior yardPrior(std::span<const Wash> washes);

class InformedPosterior {
public:
    InformedPosterior(const Wash& wash, const YardPrior& prior);
    double cumulative(double load) const;
    double chanceOver(double line) const;
    double quantile(double p) const;
    LoadEstimate estimate() const;

private:
    TabulatedLaw m_law; // of ln(load)
};

} // namespace halfcup::mites
