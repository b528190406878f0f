// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Textbook limits for a share and for a rate, as published tables give them: for comparison with other work
// and for tests. The app's own figures come from wash_load.h, which allows for uncertain bees and for jars
// that differ. confidence: two-sided, in (0, 1). Counts 0 to 1e9. Errors: std::domain_error with a plain
// sentence. Sources: Wilson 1927, J Am Stat Assoc 22:209-212, with and without continuity correction as in
// Newcombe 1998, Stat Med 17:857-872 (methods 3 and 4); Clopper & Pearson 1934, Biometrika 26:404-413;
// Garwood 1936, Biometrika 28:437-442; the ratio of two Poisson rates: conditional binomial, Przyborowski &
// Wilenski 1940, Biometrika 31:313-323; Jeffreys limits: Brown, Cai & DasGupta 2001, Stat Sci 16:101-133.
#include <cstdint>

namespace halfcup::mites {

struct Limits {
    double lower, upper;
};
struct LimitsAndMedian {
    double lower, median, upper;
};

// Share k of n.
Limits wilsonLimits(std::int64_t k, std::int64_t n, double confidence);
Limits wilsonCorrectedLimits(std::int64_t k, std::int64_t n, double confidence);
Limits clopperPearsonLimits(std::int64_t k, std::int64_t n, double confidence);
// Rate k per exposure (any unit, > 0). Upper limit finite, lower 0 for k = 0.
Limits garwoodLimits(std::int64_t k, double exposure, double confidence);
// P(at least k | rate at most the given one): one-sided test of "rate <= given".
double poissonTestAbove(std::int64_t k, double exposure, double rate);
// Ratio (k2/exposure2)/(k1/exposure1); upper infinite for k1 = 0. k1 + k2 > 0.
Limits poissonRatioLimits(std::int64_t k1, double exposure1, std::int64_t k2, double exposure2,
                          double confidence);

// With Jeffreys priors, exact exposure, no differences between jars.
LimitsAndMedian jeffreysShare(std::int64_t k, std::int64_t n, double confidence);
LimitsAndMedian jeffreysRate(std::int64_t k, double exposure, double confidence);
double jeffreysRateOver(std::int64_t k, double exposure, double line);
LimitsAndMedian jeffreysRatio(std::int64_t k1, double exposure1, std::int64_t k2, double exposure2,
                              double confidence);

} // namespace halfcup::mites
