// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/between_colonies.h"

#include "mites/checks.h"

#include <algorithm>
#include <cmath>

namespace halfcup::mites {

BetweenColonies betweenColonies(std::span<const Wash> washes, double priorCv) {
    require(!washes.empty(), "There is no wash to read.");
    require(priorCv > 0 && priorCv <= kMostCv, "The spread between colonies has to be between 0 and 5.");
    BetweenColonies found;
    const auto m = static_cast<double>(washes.size());
    double rateMean = 0;
    double rateSquareMean = 0;
    double inverseMean = 0;
    for (const Wash& wash : washes) {
        checkWash(wash);
        const double exposure = wash.beesMean * wash.recovery / 100;
        const double rate = static_cast<double>(wash.mites) / exposure;
        found.mites += wash.mites;
        found.exposure += exposure;
        found.extraVariance += (1 / wash.jarShape + wash.beesCv * wash.beesCv) / m;
        rateMean += rate / m;
        rateSquareMean += rate * rate / m;
        inverseMean += 1 / exposure / m;
    }
    found.meanLoad = (static_cast<double>(found.mites) + 0.5) / found.exposure;
    found.freedom = kBetweenPriorColonies + m - 1;
    if (washes.size() > 1) {
        double variance = 0;
        for (const Wash& wash : washes)
            variance +=
                std::pow(static_cast<double>(wash.mites) * 100 / (wash.beesMean * wash.recovery) - rateMean,
                         2) /
                (m - 1);
        found.rawVariance = (variance - found.meanLoad * inverseMean - found.extraVariance * rateSquareMean) /
                            (found.meanLoad * found.meanLoad);
    }
    found.variance =
        (kBetweenPriorColonies * priorCv * priorCv + (m - 1) * found.rawVariance) / found.freedom;
    found.variance = std::max(kLeastBetweenVariance, found.variance);
    return found;
}

} // namespace halfcup::mites
