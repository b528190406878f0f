// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/replicate_jars.h"

#include "mites/checks.h"

#include <algorithm>
#include <cmath>

namespace halfcup::mites {

Wash jarsTogether(std::span<const Jar> jars, double sharedSd, double recovery, double recoverySd,
                  double jarShape) {
    require(!jars.empty(), "There is no jar to read.");
    require(sharedSd >= 0 && sharedSd <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    Wash together{0, 0, 0, recovery, recoverySd, jarShape * static_cast<double>(jars.size())};
    double ownSquares = 0;
    for (const Jar& jar : jars) {
        checkWash({jar.mites, jar.beesMean, jar.beesOwnCv, recovery, recoverySd, jarShape});
        together.mites += jar.mites;
        together.beesMean += jar.beesMean;
        ownSquares += std::pow(jar.beesMean * jar.beesOwnCv, 2);
    }
    const double ownSquare = ownSquares / (together.beesMean * together.beesMean);
    together.beesCv = std::sqrt(std::expm1(std::log1p(ownSquare) + sharedSd * sharedSd));
    checkWash(together);
    return together;
}

JarShapeEstimate jarShapeFromDuplicates(std::span<const std::vector<std::int64_t>> counts, double beesCv) {
    require(beesCv >= 0 && beesCv <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    double above = 0;
    double below = 0;
    int freedom = 0;
    for (const std::vector<std::int64_t>& jars : counts) {
        for (const std::int64_t mites : jars)
            require(mites >= 0 && static_cast<double>(mites) <= kMostCounted,
                    "Each count of mites has to be between 0 and 1,000,000,000.");
        if (jars.size() < 2)
            continue;
        const auto n = static_cast<double>(jars.size());
        double mean = 0;
        for (const std::int64_t mites : jars)
            mean += static_cast<double>(mites) / n;
        double variance = 0;
        for (const std::int64_t mites : jars)
            variance += std::pow(static_cast<double>(mites) - mean, 2) / (n - 1);
        above += (n - 1) * (variance - mean);
        below += (n - 1) * (mean * mean - variance / n);
        freedom += static_cast<int>(jars.size()) - 1;
    }
    require(freedom > 0, "The jar shape needs at least one colony with two jars.");
    // All counts zero: the data say nothing and the prior stays.
    const double raw = below > 0 ? above / below : 0.0;
    const double weight = below > 0 ? freedom : 0.0;
    const double shrunk = (kExtraVariancePriorFreedom * kExtraVariancePrior + weight * raw) /
                          (kExtraVariancePriorFreedom + weight);
    return {1 / std::max(shrunk - beesCv * beesCv, kLeastExtraVariance), raw, freedom};
}

} // namespace halfcup::mites
