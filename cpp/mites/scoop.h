// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// How many bees a scoop holds, and how sure that is.
//
// Model: ln(bees) of one scoop ~ normal(mu, tau^2); the keeper's own counted scoops update a
// Normal-inverse-chi-square prior (mean ln of the book's figure, worth 2 scoops; tau 0.08, worth 6 degrees).
// Two spreads come out, as standard deviations of ln(bees): ownSd differs from scoop to scoop; sharedSd is
// common to all washes with that scoop, so it cancels in efficacy and does not average out in a yard's mean.
//   kn = k0 + m, mun = (k0 mu0 + sum y)/kn, nun = nu0 + m, f = nun/(nun - 2),
//   tau^2 = (nu0 tau0^2 + sum (y - ybar)^2 + k0 m (ybar - mu0)^2/kn)/nun, own^2 = tau^2 f, shared^2 = tau^2
//   f/kn.
// Result: median = e^mun, mean = median e^(s^2/2), cv = sqrt(e^(s^2) - 1), s^2 = own^2 + shared^2.
// With no counts and half a cup: median 300, mean 302.17, cv 0.1204.
// Source: Gelman et al., Bayesian Data Analysis, section 3.3 (the conjugate update); priors: constants.h.
// Errors: std::domain_error with a plain sentence for a volume or mass that is not above 0 or absurdly large
// (over 10 l or 10 kg), and for counts that are not above 0 or over 100,000.
#include "mites/constants.h"

#include <span>

namespace halfcup::mites {

struct BeesInScoop {
    double median = 0;     // bees
    double mean = 0;       // bees, arithmetic: what Wash::beesMean wants
    double cv = 0;         // coefficient of variation, own and shared together: what Wash::beesCv wants
    double sharedSd = 0;   // of ln(bees)
    double ownSd = 0;      // of ln(bees)
    int countedScoops = 0; // own counts behind it
};

// Volume in ml; beesPerMl for another density (100 ml of settled bees hold 300: 3.0).
BeesInScoop scoopFromVolume(double volumeMl, double beesPerMl = kBeesPerHalfCup / kHalfCupMl);
// The keeper's own counts of scoops of this volume.
BeesInScoop scoopFromCounts(double volumeMl, std::span<const double> counts,
                            double beesPerMl = kBeesPerHalfCup / kHalfCupMl);
// Net mass of live bees, g.
BeesInScoop scoopFromLiveMass(double massG, double beeMg = kLiveBeeMg);
// Mass of bees drained after an alcohol wash, g: nearly twice that of live ones.
BeesInScoop scoopFromDrainedMass(double massG, double beeMg = kDrainedBeeMg);
// Bees counted one by one, with the given cv of the count itself (0: exact).
BeesInScoop scoopCountedByHand(double bees, double cv = 0);
// From a median and the two spreads.
BeesInScoop scoopFromSpreads(double median, double ownSd, double sharedSd, int countedScoops = 0);

} // namespace halfcup::mites
