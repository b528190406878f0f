// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Fit of a negative binomial to counts (mites a leaf, mites a jar): how clumped they are.
//
// Model: count ~ NB(mean m, size k), variance m + m^2/k. The mean's estimate is the plain mean; k by maximum
// likelihood (the score equation of Bliss & Fisher 1953, Biometrics 9:176-200), its standard error from the
// observed information, its limits by the profile likelihood; also k by moments. Counts no more spread than
// Poisson have no finite k: then k and the upper limit are infinity and the standard error NaN. Input: how
// many items showed 0, 1, 2, ... Errors: std::domain_error with a plain sentence: nothing counted, fewer than
// two items, all zero.
#include <cstdint>
#include <span>
#include <vector>

namespace halfcup::mites {

struct NegativeBinomialFit {
    double items = 0, mean = 0, variance = 0; // variance with divisor n - 1
    double k = 0, kSe = 0, kByMoments = 0;
    double logLikelihood = 0, poissonLogLikelihood = 0;
};

// frequencies[c] items showed the count c.
NegativeBinomialFit fitNegativeBinomial(std::span<const std::int64_t> frequencies);
struct KLimits {
    double lower, upper;
};
KLimits profileLimits(std::span<const std::int64_t> frequencies, const NegativeBinomialFit& fit,
                      double confidence);
// Expected number of items for counts 0 .. classes - 2, the last class holds all above.
std::vector<double> expectedFrequencies(const NegativeBinomialFit& fit, int classes);

} // namespace halfcup::mites
