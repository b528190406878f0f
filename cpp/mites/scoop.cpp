// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/scoop.h"

#include "mites/checks.h"

#include <cmath>

namespace halfcup::mites {

namespace {

constexpr double kMostMl = 10000;
constexpr double kMostG = 10000;
constexpr double kMostInScoop = 100000;

void checkMass(double massG, double beeMg) {
    require(massG > 0, "The mass has to be above zero.");
    require(massG <= kMostG, "The mass is too large to be a sample of bees.");
    require(beeMg > 0 && beeMg <= 1000, "The mass of one bee has to be between 0 and 1000 mg.");
}

} // namespace

BeesInScoop scoopFromSpreads(double median, double ownSd, double sharedSd, int countedScoops) {
    require(median > 0 && median <= kMostCounted, "The number of bees has to be above zero.");
    require(ownSd >= 0 && ownSd <= kMostCv && sharedSd >= 0 && sharedSd <= kMostCv,
            "The spread of the bees has to be between 0 and 5.");
    const double variance = ownSd * ownSd + sharedSd * sharedSd;
    return {median,       median * std::exp(0.5 * variance), std::sqrt(std::expm1(variance)), sharedSd, ownSd,
            countedScoops};
}

BeesInScoop scoopFromCounts(double volumeMl, std::span<const double> counts, double beesPerMl) {
    require(volumeMl > 0, "The volume of the scoop has to be above zero.");
    require(volumeMl <= kMostMl, "The volume is too large to be a scoop.");
    require(beesPerMl > 0 && beesPerMl <= 100, "The bees in a millilitre have to be between 0 and 100.");
    const double prior = std::log(beesPerMl * volumeMl);
    const auto m = static_cast<double>(counts.size());
    double mean = 0;
    for (const double bees : counts) {
        require(bees > 0 && bees <= kMostInScoop,
                "Each counted scoop has to hold between 1 and 100,000 bees.");
        mean += std::log(bees) / m;
    }
    double squares = 0;
    for (const double bees : counts)
        squares += (std::log(bees) - mean) * (std::log(bees) - mean);
    const double weight = kScoopPriorScoops + m;
    const double freedom = kScoopPriorFreedom + m;
    const double centre = (kScoopPriorScoops * prior + m * mean) / weight;
    const double away = m > 0 ? mean - prior : 0;
    const double variance = (kScoopPriorFreedom * kScoopPriorSd * kScoopPriorSd + squares +
                             kScoopPriorScoops * m * away * away / weight) /
                            freedom;
    const double own = variance * freedom / (freedom - 2);
    return scoopFromSpreads(std::exp(centre), std::sqrt(own), std::sqrt(own / weight),
                            static_cast<int>(counts.size()));
}

BeesInScoop scoopFromVolume(double volumeMl, double beesPerMl) {
    return scoopFromCounts(volumeMl, {}, beesPerMl);
}

BeesInScoop scoopFromLiveMass(double massG, double beeMg) {
    checkMass(massG, beeMg);
    return scoopFromSpreads(1000 * massG / beeMg, kLiveBeeOwnSd, kLiveBeeSharedSd);
}

BeesInScoop scoopFromDrainedMass(double massG, double beeMg) {
    checkMass(massG, beeMg);
    return scoopFromSpreads(1000 * massG / beeMg, kDrainedBeeOwnSdMg / kDrainedBeeMg, kDrainedBeeSharedSd);
}

BeesInScoop scoopCountedByHand(double bees, double cv) {
    require(bees > 0 && bees <= kMostCounted, "The number of bees has to be above zero.");
    require(cv >= 0 && cv <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    const double sd = std::sqrt(std::log1p(cv * cv));
    return {bees * std::exp(-0.5 * sd * sd), bees, cv, 0, sd, 0};
}

} // namespace halfcup::mites
