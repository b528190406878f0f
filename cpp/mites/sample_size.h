// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// How many colonies to wash, one wash each, for a wanted precision of the yard's mean.
// D: standard error over mean, > 0 (0.25 management, 0.10 research). colonies: N; the result never exceeds it
// where one wash each can do; where it cannot, feasible is false and the answer is "more than one wash per
// colony".
//   components: n = [C^2 + w (1 + C^2) + 1/(load E)] / (D^2 + C^2/N)
//   Taylor's power law s^2 = a mean^b: n_inf = a mean^(b-2)/D^2, n = n_inf/(1 + n_inf/N)
//   negative binomial: n_inf = (1/mean + 1/k)/D^2
// withHalfWidth90: D is the half-width of the 90 % range over the mean instead: n_inf times 1.645^2.
// Sources: Taylor 1961, Nature 189:732-735; Green 1970, Res Popul Ecol 12:249-251; Cochran, Sampling
// Techniques (finite population). Errors: std::domain_error with a plain sentence.
#include "mites/constants.h"

#include <cstdint>

namespace halfcup::mites {

struct SampleSize {
    double unbounded = 0;    // n for a yard without end, not rounded
    std::int64_t washes = 0; // rounded up, finite population allowed for
    bool feasible = true;    // washes <= colonies
};

struct YardPlan {
    double expectedLoad = 0;     // per 100, > 0
    double exposure = 0;         // hundreds of bees effectively washed, n c/100, > 0
    double beesCv = kScoopOwnCv; // own spread of a scoop
    double jarShape = kJarShape;
    double betweenCv = kInformedBetweenCv; // between colonies
};

SampleSize coloniesToWash(const YardPlan& plan, double precision, std::int64_t colonies);
SampleSize taylorSampleSize(double meanPerWash, double a, double b, double precision, std::int64_t colonies,
                            bool withHalfWidth90 = false);
SampleSize negativeBinomialSampleSize(double meanPerWash, double k, double precision, std::int64_t colonies,
                                      bool withHalfWidth90 = false);

} // namespace halfcup::mites
