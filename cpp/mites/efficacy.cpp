// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/efficacy.h"

#include "mites/checks.h"

#include <algorithm>
#include <boost/math/special_functions/trigamma.hpp>
#include <cmath>

namespace halfcup::mites {

namespace {

void checkCount(const Count& count) {
    require(count.mites >= 0, "The number of mites cannot be negative.");
    require(static_cast<double>(count.mites) <= kMostCounted,
            "The number of mites is too large to be a count.");
    require(count.beesMean > 0, "The number of bees has to be above zero.");
    require(count.beesMean <= kMostCounted, "The number of bees is too large to be a sample.");
    require(count.beesOwnCv >= 0 && count.beesOwnCv <= kMostCv,
            "The spread of the bees has to be between 0 and 5.");
    checkRecovery(count.recovery, count.recoverySd);
}

struct Sum {
    double mites = 0;
    double exposure = 0; // bees times recovery
};

Sum sumOf(std::span<const BeforeAfter> arm, Count BeforeAfter::*when) {
    Sum sum;
    for (const BeforeAfter& colony : arm) {
        const Count& count = colony.*when;
        sum.mites += static_cast<double>(count.mites);
        sum.exposure += count.beesMean * count.recovery;
    }
    return sum;
}

// Adds direction * ln(G/(n c g)) for one wash.
void addWash(LogLaw& law, const Count& count, double jarShape, int direction) {
    const double shape = static_cast<double>(count.mites) + 0.5;
    const double variance = std::log1p(count.beesOwnCv * count.beesOwnCv);
    law.addGamma(shape, direction).addNormal(variance);
    double location = std::log(shape / (count.beesMean * count.recovery)) + 0.5 * variance;
    if (std::isfinite(jarShape))
        law.addGamma(jarShape, -direction);
    if (count.recoverySd > 0) {
        const double nu = count.recovery * (1 - count.recovery) / (count.recoverySd * count.recoverySd) - 1;
        law.addBeta(count.recovery * nu, (1 - count.recovery) * nu, -direction);
    }
    law.shift(direction * location);
}

// Adds direction * ln(load after / load before) of one arm.
void addArm(LogLaw& law, std::span<const BeforeAfter> arm, double jarShape, int direction) {
    if (arm.size() == 1) {
        addWash(law, arm[0].after, jarShape, direction);
        addWash(law, arm[0].before, jarShape, -direction);
        return;
    }
    const double dispersion = armDispersion(arm, jarShape);
    const Sum before = sumOf(arm, &BeforeAfter::before);
    const Sum after = sumOf(arm, &BeforeAfter::after);
    const double shapeBefore = before.mites / dispersion + 0.5;
    const double shapeAfter = after.mites / dispersion + 0.5;
    law.addGamma(shapeAfter, direction).addGamma(shapeBefore, -direction);
    law.shift(direction * std::log(shapeAfter / after.exposure * before.exposure / shapeBefore));
}

double ratioOf(std::span<const BeforeAfter> arm) {
    const Sum before = sumOf(arm, &BeforeAfter::before);
    const Sum after = sumOf(arm, &BeforeAfter::after);
    return (after.mites / after.exposure) / (before.mites / before.exposure);
}

} // namespace

double armDispersion(std::span<const BeforeAfter> arm, double jarShape) {
    require(!arm.empty(), "There is no colony washed before and after.");
    checkJarShape(jarShape);
    for (const BeforeAfter& colony : arm) {
        checkCount(colony.before);
        checkCount(colony.after);
    }
    const Sum before = sumOf(arm, &BeforeAfter::before);
    const Sum after = sumOf(arm, &BeforeAfter::after);
    const double all = before.mites + after.mites;
    if (all <= 0)
        return 1;
    // Share of a colony's mites that is expected after, where its bees differ from the others'.
    const double ratio = (after.mites + 0.5) / (before.mites + 0.5) * before.exposure / after.exposure;
    double expectedExcess = 0;
    double seenExcess = 0;
    double spreadSum = 0;
    for (const BeforeAfter& colony : arm) {
        const double mites = static_cast<double>(colony.before.mites + colony.after.mites);
        const double bees1 = colony.before.beesMean * colony.before.recovery;
        const double bees2 = colony.after.beesMean * colony.after.recovery;
        const double share = ratio * bees2 / (bees1 + ratio * bees2);
        const double variance = std::log1p(std::pow(colony.before.beesOwnCv, 2)) +
                                std::log1p(std::pow(colony.after.beesOwnCv, 2)) +
                                (std::isfinite(jarShape) ? 2 * boost::math::trigamma(jarShape) : 0);
        expectedExcess += mites * (mites - 1) / all * share * (1 - share) * variance;
        // Against the share actually found, so that equal scoops give the plain chi-square.
        const double found =
            after.mites > 0 ? share * (after.mites / all) * (all + 1) / (after.mites + 0.5) : 0;
        seenExcess += std::pow(static_cast<double>(colony.after.mites) - mites * found, 2);
        spreadSum += mites * share * (1 - share);
    }
    const auto m = static_cast<double>(arm.size());
    const double prior = 1 + expectedExcess;
    const double seen = m > 1 ? m / (m - 1) * seenExcess / spreadSum : 0;
    return std::max(1.0,
                    (kDispersionPriorColonies * prior + (m - 1) * seen) / (kDispersionPriorColonies + m - 1));
}

EfficacyPosterior::EfficacyPosterior(const BeforeAfter& treated, double jarShape,
                                     const std::optional<BeforeAfter>& control,
                                     const std::optional<GrowthCorrection>& growth)
    : EfficacyPosterior(std::span(&treated, 1), jarShape,
                        control ? std::span<const BeforeAfter>(&*control, 1) : std::span<const BeforeAfter>(),
                        growth) {}

EfficacyPosterior::EfficacyPosterior(std::span<const BeforeAfter> treated, double jarShape,
                                     std::span<const BeforeAfter> control,
                                     const std::optional<GrowthCorrection>& growth) {
    checkJarShape(jarShape);
    require(!treated.empty(), "There is no treated colony washed before and after.");
    require(control.empty() || !growth,
            "Untreated colonies and an assumed growth cannot both correct an efficacy.");
    for (const std::span<const BeforeAfter> arm : {treated, control})
        for (const BeforeAfter& colony : arm) {
            checkCount(colony.before);
            checkCount(colony.after);
        }
    addArm(m_law, treated, jarShape, 1);
    double ratio = ratioOf(treated);
    if (!control.empty()) {
        addArm(m_law, control, jarShape, -1);
        ratio /= ratioOf(control);
        if (sumOf(control, &BeforeAfter::before).mites == 0 || sumOf(control, &BeforeAfter::after).mites == 0)
            m_cautions.push_back(EfficacyCaution::NoneInControl);
    }
    if (growth) {
        require(std::isfinite(growth->mean) && std::abs(growth->mean) <= 1,
                "The growth a day has to be below 1.");
        require(growth->sd >= 0 && growth->sd <= 1, "The spread of the growth has to be between 0 and 1.");
        require(growth->days >= 0 && growth->days <= 3650,
                "The days between the washes have to be 0 to 3650.");
        const double spread = growth->sd * growth->days;
        m_law.addNormal(spread * spread).shift(-growth->mean * growth->days);
        ratio *= std::exp(-growth->mean * growth->days);
    }
    m_law.prepare();
    m_point = 1 - ratio;
    const double before = sumOf(treated, &BeforeAfter::before).mites;
    if (before == 0)
        m_cautions.push_back(EfficacyCaution::NoneBefore);
    else if (before < kFewMitesBefore)
        m_cautions.push_back(EfficacyCaution::FewBefore);
    if (sumOf(treated, &BeforeAfter::after).mites == 0)
        m_cautions.push_back(EfficacyCaution::NoneAfter);
}

double EfficacyPosterior::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return -std::expm1(m_law.quantile(1 - p));
}

double EfficacyPosterior::chanceOver(double efficacy) const {
    require(!std::isnan(efficacy), "An efficacy to ask about has to be a number.");
    return efficacy < 1 ? m_law.cumulative(std::log1p(-efficacy)) : 0.0;
}

double EfficacyPosterior::q05() const {
    return quantile(kLowerEnd);
}
double EfficacyPosterior::q95() const {
    return quantile(kUpperEnd);
}

} // namespace halfcup::mites
