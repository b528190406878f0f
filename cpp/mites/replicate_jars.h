// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Several jars of one colony on one day, read together; and the jar shape estimated from such duplicates.
//
// Together: one wash with the summed mites and bees; spreads that differ from scoop to scoop average out
// (CV^2 = sum (n_j cv_j)^2 / (sum n_j)^2), the spread all scoops share does not; the jar shape becomes J
// times as large.
//
// Jar shape from duplicates (equal scoops): the extra variance v = 1/shape + CV^2 by moments,
//   v = sum (J-1)(s^2 - mean) / sum (J-1)(mean^2 - s^2/J) over colonies, shrunk towards a prior of 0.06 worth
//   10 degrees of freedom; 1/shape = max(v - CV^2, 0.005). Modest gain, worth it from about ten pairs.
//   (Convention.)
// Errors: std::domain_error with a plain sentence: no jars, bad jars, no colony with two jars.
#include "mites/wash_load.h"

#include <cstdint>
#include <span>
#include <vector>

namespace halfcup::mites {

struct Jar {
    std::int64_t mites = 0;
    double beesMean = 0;  // arithmetic mean
    double beesOwnCv = 0; // spread of this scoop alone
};

// sharedSd: of ln(bees), common to all jars (BeesInScoop::sharedSd). jarShape: of one jar.
Wash jarsTogether(std::span<const Jar> jars, double sharedSd, double recovery = 1, double recoverySd = 0,
                  double jarShape = kJarShape);

struct JarShapeEstimate {
    double shape = 0;
    double rawExtraVariance = 0; // before shrinking; may be negative
    int freedom = 0;             // sum of jars - 1 over colonies
};

// counts[i] are the mites in the jars of colony i; colonies with one jar add nothing. beesCv: of one scoop.
JarShapeEstimate jarShapeFromDuplicates(std::span<const std::vector<std::int64_t>> counts, double beesCv);

} // namespace halfcup::mites
