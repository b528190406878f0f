// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Growth of one colony's load since the last treatment, fitted to its washes, and what follows: the load on
// any day, the chance of being over a line, the day it is crossed.
//
// Model: load(t) = exp(eta + G(t) - G(t_ref) + r (t - t_ref)), mites of wash i ~ NB(mean E_i load(t_i), size
// phi_i),
//   E_i = n_i c_i/100 hundreds of bees effectively washed, 1/phi_i = 1/jarShape + own CV_i^2 (own part only:
//   what all washes share moves the level, not the growth), t_ref = sum E_i t_i/sum E_i.
// Prior: r ~ normal, or Student t with 4 degrees cut at 10 scales, eta | r conditional Jeffreys: proper for
// all data, all zeros too. G is a known course (seasonal drift), 0 by default; with it r is the deviation
// (kSeasonalDeviationSd about 0). Method: a grid in r and eta, closing in on the mass; running integrals in
// eta are cubic, sums in r spectral. Accuracy: about 1e-4 relative in loads, 1e-5 in chances and 1e-7 in r.
//
// Special: one wash: r stays at its prior, label "assumed growth, not measured". All zero: show the upper end
// only. Any treatment, split, requeening or swarm starts a new series. Do not connect washes across a change
// between brood and no brood without logOffset ln(share on bees then/share on bees before). Outlooks beyond
// kOutlookDays are weak. Errors: std::domain_error with a plain sentence: no wash, bad counts, days not in
// order or not numbers.
#include "mites/constants.h"
#include "mites/tabulated_law.h"
#include "mites/wash_load.h"

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

namespace halfcup::mites {

struct DatedWash {
    double day = 0; // any origin, the same for all; ascending
    std::int64_t mites = 0;
    double beesMean = 0;  // arithmetic mean, > 0
    double beesOwnCv = 0; // of this scoop alone
    double recovery = 1;  // mean
    double logOffset = 0; // known shift of ln(load) at this wash
};

enum class GrowthPriorShape { Normal, StudentT4 };
struct GrowthPrior {
    double mean = kGrowthMean; // a day
    double sd = kGrowthSd;     // scale for StudentT4
    GrowthPriorShape shape = GrowthPriorShape::Normal;
};
inline constexpr double kFarDays = 36500; // a hundred years: as good as never

GrowthPrior broodlessPrior();
GrowthPrior seasonalPrior(); // deviation from a known course

struct GrowthModel {
    GrowthPrior prior = {};
    double jarShape = kJarShape;
    // Sd of ln(load) common to all washes: sqrt(Var ln recovery + shared scoop sd^2). Averaged over in loads
    // and chances.
    double sharedLogSd = 0;
    // Cumulative drift G(day) of ln(load); empty: none.
    std::function<double(double)> drift = {};
};

class GrowthPosterior {
public:
    GrowthPosterior(std::span<const DatedWash> washes, GrowthModel model = {});

    double growthMean() const { return m_growthMean; } // a day
    double growthSd() const { return m_growthSd; }
    double growthQuantile(double p) const;
    double lastDay() const { return m_lastDay; }
    bool measured() const { return m_washes > 1; } // false: assumed growth
    bool allZero() const { return m_mites == 0; }

    double loadQuantile(double day, double p) const;
    LoadEstimate load(double day) const;
    double chanceOver(double day, double line) const;
    // P(the load is at or over the line at some time from the last wash to the given day).
    double chanceCrossed(double line, double untilDay) const;
    // Days from the last wash until the line is crossed, quantile p of it; 0: now; infinity: not within
    // 36,500 days.
    double crossingQuantile(double line, double p) const;

private:
    // Share of the posterior with eta at or above a threshold that depends on the row, lowered by each shared
    // shift.
    double chanceAbove(const std::vector<double>& thresholds) const;
    std::vector<double> thresholdsOn(double day, double logLine) const;
    double drift(double day) const { return m_model.drift ? m_model.drift(day) - m_driftAtRef : 0.0; }

    GrowthModel m_model;
    std::size_t m_washes = 0;
    double m_mites = 0;
    double m_refDay = 0;
    double m_lastDay = 0;
    double m_driftAtRef = 0;
    double m_growthMean = 0;
    double m_growthSd = 0;
    std::vector<double> m_growth;    // r of each row of the grid
    std::vector<double> m_rowMass;   // its share of the posterior
    std::vector<TabulatedLaw> m_eta; // eta given r
    TabulatedLaw m_growthLaw;
};

} // namespace halfcup::mites
