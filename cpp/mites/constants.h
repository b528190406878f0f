// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Every number of this layer that is not mathematics: biology, the trade's conventions and our own, each with
// its source and mark. They are defaults of arguments; a caller that has a better value passes it. Marks:
// published (read in the source), quoted (read in another), from memory (published, not read again), common
// practice (no source), convention (our choice), computed (from data named).
#include <array>
#include <limits>
#include <numbers>

namespace halfcup::mites {

// ---- one wash ----
// Gamma shape of the differences between jars of one colony (infinity = none). Computed:
// Dirichlet-multinomial fit to near-replicate washes of 65 colonies split two days before, 6.9, 90 %
// range 3.8 to 14.5; data of Aurell et al. 2025, J Econ Entomol, doi 10.1093/jee/toaf126 (CC-BY-4.0).
inline constexpr double kJarShape = 7.0;
inline constexpr double kJarShapeNone = std::numeric_limits<double>::infinity();
// The ends of the 90 % range. Convention.
inline constexpr double kLowerEnd = 0.05;
inline constexpr double kUpperEnd = 0.95;
// Fewer bees than this are called too few to say much (zero of 50 bees leaves P(load > 3) = 0.09).
// Convention.
inline constexpr double kFewBees = 100.0;
// Above this load (per 100) no line means anything any more. Convention.
inline constexpr double kLoadBeyondAdvice = 50.0;
// Washes of one yard that make a yard-informed chance worth showing, and the days they may lie apart.
// Convention.
inline constexpr int kYardInformedWashes = 5;
inline constexpr int kYardInformedDays = 14;

// ---- recovery: share of the mites on the bees that is counted, for the full load ----
inline constexpr double kWashRecovery = 0.95; // alcohol or soap, first rinse 90-95 %: from memory; convention
inline constexpr double kWashRecoverySd = 0.03;
inline constexpr double kSugarRecovery = 0.85; // convention between the next and lower figures from memory
inline constexpr double kSugarRecoverySd = 0.08;
// Sugar roll relative to a wash: convention, below 92.9 +/- 5.5 % of Macedo, Wu & Ellis 2002, J Apic Res
// 41:3-7.
inline constexpr double kSugarAgainstWash = 0.90;
inline constexpr double kSugarAgainstWashSd = 0.08;

// ---- bees in a scoop ----
inline constexpr double kHalfCupMl =
    118.29411825; // half a US cup: 236.5882365 ml / 2, by definition of the gallon
inline constexpr double kBeesPerHalfCup = 300.0; // common practice (half a cup is about 300 bees)
// Prior for the keeper's own counted scoops, Normal-inverse-chi-square on ln(bees). Conventions; the spread
// they give (a tenth a scoop, 7 % shared) agrees with the counted washes of Aurell et al. 2025 (CV 0.103, n
// 176).
inline constexpr double kScoopPriorScoops = 2.0;
inline constexpr double kScoopPriorSd = 0.08;
inline constexpr double kScoopPriorFreedom = 6.0;
// Live bees: 10 g is about 100 bees (German wash scale, quoted); workers 88 to 130 mg by age and load
// (Mitchell 1970, Am Bee J 110, quoted), which the shared spread covers; own spread for the scale and the mix
// of bees: convention.
inline constexpr double kLiveBeeMg = 100.0;
inline constexpr double kLiveBeeSharedSd = 0.10;
inline constexpr double kLiveBeeOwnSd = 0.03;
// Drained bees after an alcohol wash: 18.3 g per 100, SD 1.5, n 175. Published data, Aurell et al. 2024, J
// Insect Sci (CC-BY-4.0). Shared spread between hands that drain: convention.
inline constexpr double kDrainedBeeMg = 183.0;
inline constexpr double kDrainedBeeOwnSdMg = 15.0;
inline constexpr double kDrainedBeeSharedSd = 0.05;

// ---- jar shape from duplicate jars: prior for the extra variance 1/shape + CV^2 (conventions) ----
inline constexpr double kExtraVariancePrior = 0.06;
inline constexpr double kExtraVariancePriorFreedom = 10.0;
inline constexpr double kLeastExtraVariance = 0.005;

// ---- a yard: prior for the spread of true loads between colonies (conventions) ----
inline constexpr double kInformedBetweenCv = 0.8; // for the yard-informed chance and for sample sizes
inline constexpr double kMeanBetweenCv = 1.0;     // for the yard's mean: wider, chosen by simulated coverage
inline constexpr double kBetweenPriorColonies = 4.0;
inline constexpr double kLeastBetweenVariance = 0.04;

// ---- standing ----
inline constexpr double kChanceClose = 0.2;     // convention
inline constexpr double kChanceOver = 0.5;      // convention
inline constexpr double kBeesForAnswer = 200.0; // convention
inline constexpr double kRangeTooWide = 4.0;    // upper end over lower end; convention

} // namespace halfcup::mites
