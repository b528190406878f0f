// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Did a treatment work: efficacy = 1 - load after / load before, with its uncertainty.
//
// One colony: ratio = (G2/G1)(n1/n2)(g1/g2), G ~ Gamma(k + 1/2, 1) as in wash_load.h; recovery and the shared
// error of a scoop cancel, so bees carry their own spread only. With untreated colonies the ratio is divided
// by theirs (Henderson & Tilton). LogLaw inverts the product exactly. Several colonies per arm: summed counts
// divided by a dispersion D (between colonies, jars and scoops together), G ~ Gamma(K/D + 1/2, 1); the result
// is the load-weighted efficacy in these colonies. D is shrunk towards what the jar shape and the scoops
// explain, worth kDispersionPriorColonies colonies. Without untreated colonies the growth expected meanwhile
// can be taken out (GrowthCorrection), to be labelled "corrected by assumed growth". Efficacy may be negative
// and is never clamped. After 0: upper end 1, say "at least q05". Before 0: point -infinity or NaN, say
// "cannot be estimated". A wash sooner than kDaysAfterTreatment days after the end sees the on-bee kill only.
// Errors: std::domain_error with a plain sentence. Accuracy as LogLaw.
#include "mites/constants.h"
#include "mites/log_law.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace halfcup::mites {

struct Count {
    std::int64_t mites = 0;
    double beesMean = 0;  // arithmetic mean, > 0
    double beesOwnCv = 0; // of this scoop alone
    // Only where before and after were washed by different methods: then recoveries do not cancel.
    double recovery = 1;
    double recoverySd = 0;
};
struct BeforeAfter {
    Count before, after;
};

// Growth expected between the washes without treatment: mean a day, its sd, and the days.
struct GrowthCorrection {
    double mean = kGrowthMean;
    double sd = kGrowthSd;
    double days = 0;
};

enum class EfficacyCaution { NoneBefore, FewBefore, NoneAfter, NoneInControl };

class EfficacyPosterior {
public:
    EfficacyPosterior(const BeforeAfter& treated, double jarShape = kJarShape,
                      const std::optional<BeforeAfter>& control = {},
                      const std::optional<GrowthCorrection>& growth = {});
    // Several colonies in an arm; one colony in an arm is allowed too. An empty control arm means none.
    EfficacyPosterior(std::span<const BeforeAfter> treated, double jarShape,
                      std::span<const BeforeAfter> control = {},
                      const std::optional<GrowthCorrection>& growth = {});

    double point() const { return m_point; } // textbook figure, as a fraction; may be -infinity or NaN
    double quantile(double p) const;         // fraction, below 1
    double chanceOver(double efficacy) const;
    double q05() const;
    double q50() const { return quantile(0.5); }
    double q95() const;
    const std::vector<EfficacyCaution>& cautions() const { return m_cautions; }

private:
    LogLaw m_law; // of ln(ratio)
    double m_point = 0;
    std::vector<EfficacyCaution> m_cautions;
};

// The dispersion D >= 1 of one arm.
double armDispersion(std::span<const BeforeAfter> arm, double jarShape);

} // namespace halfcup::mites
