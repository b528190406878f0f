// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/colony_mites.h"

#include "mites/checks.h"

#include <cmath>

namespace halfcup::mites {

namespace {

void divideByShare(LogLaw& law, const ShareOnBees& share) {
    law.shift(-std::log(share.mean));
    if (share.sd > 0) {
        const double nu = share.mean * (1 - share.mean) / (share.sd * share.sd) - 1;
        law.addBeta(share.mean * nu, (1 - share.mean) * nu, -1);
    }
    law.prepare();
}

LoadEstimate rangeOf(const LogLaw& law) {
    return {std::exp(law.quantile(kLowerEnd)), std::exp(law.quantile(0.5)),
            std::exp(law.quantile(kUpperEnd))};
}

void checkShare(const ShareOnBees& share) {
    require(share.mean > 0 && share.mean <= 1, "The share of mites on bees has to be above 0 and at most 1.");
    require(share.sd >= 0 && (share.sd == 0 || share.sd * share.sd < share.mean * (1 - share.mean)),
            "The spread of the share of mites on bees is too large for its mean.");
    require(share.sd == 0 ||
                share.mean * (share.mean * (1 - share.mean) / (share.sd * share.sd) - 1) >= kLeastShape,
            "The share of mites on bees is too uncertain to say anything.");
}

} // namespace

LoadEstimate adultsPlusBrood(const Wash& fullWash, const ShareOnBees& share) {
    checkWash(fullWash);
    checkShare(share);
    LogLaw law = washLaw(fullWash);
    divideByShare(law, share);
    return rangeOf(law);
}

ColonyMites mitesInColony(const Wash& fullWash, double adultBees, double adultBeesCv,
                          const ShareOnBees& share) {
    checkWash(fullWash);
    checkShare(share);
    require(adultBees > 0 && adultBees <= kMostCounted, "The number of bees has to be above zero.");
    require(adultBeesCv >= 0 && adultBeesCv <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    LogLaw law = washLaw(fullWash);
    const double variance = std::log1p(adultBeesCv * adultBeesCv);
    law.addNormal(variance).shift(std::log(adultBees / 100) - 0.5 * variance);
    law.prepare();
    const LoadEstimate onBees = rangeOf(law);
    divideByShare(law, share);
    return {onBees, rangeOf(law)};
}

double beesOnFrames(double framesOfBees, double beesPerFrame) {
    require(framesOfBees >= 0 && framesOfBees <= 200, "The frames of bees have to be between 0 and 200.");
    require(beesPerFrame > 0 && beesPerFrame <= 10000,
            "The bees on a frame have to be between 0 and 10,000.");
    return framesOfBees * beesPerFrame;
}

} // namespace halfcup::mites
