// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// How much true loads differ between the colonies of one yard, by moments, shrunk towards a prior.
//   load* = (sum k + 1/2)/sum E, rates k_i/E_i, raw = [var(rates) - load* mean(1/E_i) - mean(w_i)
//   mean(rates^2)]/load*^2, CV^2 = max(least, [4 CV0^2 + (m - 1) raw]/(4 + m - 1)); one wash: CV0^2.  w_i =
//   1/shape + CV_i^2, E_i = n c/100.
#include "mites/wash_load.h"

#include <span>

namespace halfcup::mites {

struct BetweenColonies {
    std::int64_t mites = 0;   // sum
    double exposure = 0;      // sum of E, hundreds of bees effectively washed
    double meanLoad = 0;      // load*, per 100
    double extraVariance = 0; // mean of w
    double rawVariance = 0;   // raw CV^2, may be negative; 0 for one wash
    double variance = 0;      // shrunk CV^2
    double freedom = 0;       // 4 + m - 1
};

BetweenColonies betweenColonies(std::span<const Wash> washes, double priorCv);

} // namespace halfcup::mites
