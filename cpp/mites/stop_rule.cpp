// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/stop_rule.h"

#include "mites/checks.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace halfcup::mites {

namespace {

void checkRule(const StopRule& rule) {
    require(rule.low > 0, "The lower load has to be above zero.");
    require(rule.high > rule.low && std::isfinite(rule.high), "The higher load has to be above the lower.");
    require(rule.alpha > 0 && rule.beta > 0 && rule.alpha + rule.beta < 1,
            "The two errors have to be above 0 and together below 1.");
    checkJarShape(rule.unitShape);
}

void checkExposure(double exposure) {
    require(exposure > 0 && std::isfinite(exposure), "The bees in a unit have to be above zero.");
}

// Evidence of one unit is mites * perMite - perUnit.
struct Evidence {
    double perMite, perUnit;
};

Evidence evidence(const StopRule& rule, double exposure) {
    if (std::isinf(rule.unitShape))
        return {std::log(rule.high / rule.low), (rule.high - rule.low) * exposure};
    const double p0 = rule.low * exposure / rule.unitShape;
    const double p1 = rule.high * exposure / rule.unitShape;
    const double rise = std::log1p(p1) - std::log1p(p0);
    return {std::log(rule.high / rule.low) - rise, rule.unitShape * rise};
}

double highAt(const StopRule& rule) {
    return std::log((1 - rule.beta) / rule.alpha);
}
double lowAt(const StopRule& rule) {
    return std::log(rule.beta / (1 - rule.alpha));
}

} // namespace

double unitEvidence(const StopRule& rule, const StopUnit& unit) {
    checkRule(rule);
    checkExposure(unit.exposure);
    require(unit.mites >= 0, "The number of mites cannot be negative.");
    require(static_cast<double>(unit.mites) <= kMostCounted,
            "The number of mites is too large to be a count.");
    const Evidence at = evidence(rule, unit.exposure);
    return static_cast<double>(unit.mites) * at.perMite - at.perUnit;
}

Verdict verdict(const StopRule& rule, std::span<const StopUnit> units, std::int64_t most) {
    checkRule(rule);
    require(most >= 0, "The most units cannot be negative.");
    double sum = 0;
    double mites = 0;
    double even = 0; // the count at which a forced verdict tips
    std::int64_t seen = 0;
    for (const StopUnit& unit : units) {
        sum += unitEvidence(rule, unit);
        const Evidence at = evidence(rule, unit.exposure);
        mites += static_cast<double>(unit.mites);
        even += at.perUnit / at.perMite;
        ++seen;
        if (sum >= highAt(rule))
            return Verdict::High;
        if (sum <= lowAt(rule))
            return Verdict::Low;
        if (most > 0 && seen >= most)
            return mites >= even ? Verdict::HighNotSettled : Verdict::LowNotSettled;
    }
    return Verdict::GoOn;
}

StopLines stopLines(const StopRule& rule, double exposure) {
    checkRule(rule);
    checkExposure(exposure);
    const Evidence at = evidence(rule, exposure);
    const double slope = at.perUnit / at.perMite;
    const double lower = lowAt(rule) / at.perMite;
    return {slope, highAt(rule) / at.perMite, lower, at.perMite,
            std::max<std::int64_t>(1, static_cast<std::int64_t>(std::ceil(-lower / slope)))};
}

double colonyUnitShape(double jarShape, double beesOwnCv, double betweenCv) {
    checkJarShape(jarShape);
    require(beesOwnCv >= 0 && beesOwnCv <= kMostCv, "The spread of the bees has to be between 0 and 5.");
    require(betweenCv >= 0 && betweenCv <= kMostCv, "The spread between colonies has to be between 0 and 5.");
    return 1 / ((1 + 1 / jarShape + beesOwnCv * beesOwnCv) * (1 + betweenCv * betweenCv) - 1);
}

StopRuleBehaviour stopRuleBehaviour(const StopRule& rule, double exposure, std::int64_t most,
                                    double trueLoad) {
    const StopLines lines = stopLines(rule, exposure);
    require(most >= 1 && most <= 10000, "The most units have to be between 1 and 10,000.");
    require(trueLoad > 0 && trueLoad <= 1000, "The true load has to be between 0 and 1000.");
    // Chance of each count in one unit, as far as it matters: everything at or above the highest upper line
    // is one.
    const auto size =
        static_cast<std::size_t>(std::ceil(lines.slope * static_cast<double>(most) + lines.upper)) + 2;
    require(size <= 200000, "The stop rule runs over too many mites to follow exactly.");
    std::vector<double> unit(size);
    const double mean = trueLoad * exposure;
    const double phi = rule.unitShape;
    for (std::size_t k = 0; k < size; ++k) {
        const auto n = static_cast<double>(k);
        const double log = std::isinf(phi)
                               ? n * std::log(mean) - mean - std::lgamma(n + 1)
                               : std::lgamma(n + phi) - std::lgamma(phi) - std::lgamma(n + 1) +
                                     n * std::log(mean / (mean + phi)) - phi * std::log1p(mean / phi);
        unit[k] = std::exp(log);
    }
    std::vector<double> open{1.0}; // chance of each cumulative count while going on
    StopRuleBehaviour found{0, 0, 0};
    double going = 1;
    for (std::int64_t n = 1; n <= most; ++n) {
        found.meanUnits += going;
        const double upper = lines.slope * static_cast<double>(n) + lines.upper;
        const double lower = lines.slope * static_cast<double>(n) + lines.lower;
        const auto top = static_cast<std::size_t>(std::ceil(upper)); // first count that stops high
        std::vector<double> next(top, 0.0);
        for (std::size_t before = 0; before < open.size() && before < top; ++before)
            if (open[before] > 0)
                for (std::size_t k = 0; before + k < top; ++k)
                    next[before + k] += open[before] * unit[k];
        double kept = 0;
        double stoppedLow = 0;
        for (std::size_t count = 0; count < top; ++count)
            if (static_cast<double>(count) <= lower) {
                stoppedLow += next[count];
                next[count] = 0;
            } else {
                kept += next[count];
            }
        found.chanceHigh += std::max(0.0, going - kept - stoppedLow);
        going = kept;
        open = std::move(next);
        if (going < 1e-15)
            break;
    }
    found.chanceUnsettled = going;
    for (std::size_t count = 0; count < open.size(); ++count)
        if (static_cast<double>(count) >= lines.slope * static_cast<double>(most))
            found.chanceHigh += open[count];
    return found;
}

} // namespace halfcup::mites
