// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Stop early: Wald's sequential test of "load at most low" against "load at least high", jar by jar or colony
// by colony.
//
// Per unit with exposure E (hundreds of bees effectively washed) and shape phi the log likelihood ratio is
//   k ln{l1 (1 + l0 E/phi)/[l0 (1 + l1 E/phi)]} - phi ln[(1 + l1 E/phi)/(1 + l0 E/phi)],  Poisson as phi ->
//   infinity.
// Stop high at ln((1 - beta)/alpha), low at ln(beta/(1 - alpha)). With equal exposures these are two lines on
// the cumulative count. alpha: chance to stop high at load low; beta: chance to stop low at load high; real
// errors are well below nominal because whole units overshoot. A unit is a jar of one colony (phi of the
// jars), or one colony of a yard (colonyUnitShape). Errors of the scoop's mean are not tested by repetition.
// In a small yard stop at N colonies. Truncated after `most` units: high where the count is at or over slope
// * units, and "not settled". Source: Wald 1947, Sequential Analysis. Errors: std::domain_error with a plain
// sentence: 0 < low < high, alpha and beta > 0, alpha + beta < 1.
#include "mites/constants.h"

#include <cstdint>
#include <span>

namespace halfcup::mites {

struct StopRule {
    double low = 0;  // per 100
    double high = 0; // per 100
    double unitShape = kJarShape;
    double alpha = kStopErrors;
    double beta = kStopErrors;
};

struct StopUnit {
    std::int64_t mites = 0;
    double exposure = 0; // n c/100
};

enum class Verdict { GoOn, Low, High, HighNotSettled, LowNotSettled };

// ln likelihood ratio of one unit.
double unitEvidence(const StopRule& rule, const StopUnit& unit);
// After all these units; most: number of units after which a verdict is forced (0: never).
Verdict verdict(const StopRule& rule, std::span<const StopUnit> units, std::int64_t most = 0);

// For equal exposures: cumulative count at or below slope * n + lower stops low, at or above slope * n +
// upper high.
struct StopLines {
    double slope, upper, lower;
    double evidencePerMite;
    std::int64_t unitsBeforeLow; // fewest units after which zero mites stop low
};
StopLines stopLines(const StopRule& rule, double exposure);

// Shape of one colony's count as a unit of its yard: 1/phi = (1 + 1/jarShape + CV^2)(1 + between^2) - 1.
double colonyUnitShape(double jarShape, double beesOwnCv, double betweenCv = kInformedBetweenCv);

// What the truncated rule really does at a true load, by exact recursion over counts.
struct StopRuleBehaviour {
    double chanceHigh; // including forced verdicts
    double meanUnits;
    double chanceUnsettled; // forced verdict
};
StopRuleBehaviour stopRuleBehaviour(const StopRule& rule, double exposure, std::int64_t most,
                                    double trueLoad);

} // namespace halfcup::mites
