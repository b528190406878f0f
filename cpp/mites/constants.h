// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Every number of this layer that is not mathematics: biology, the trade's conventions and our own, each with
// its source and mark. They are defaults of arguments; a caller that has a better value passes it. Marks:
// published (read in the source), quoted (read in another), from memory (published, not read again), common
// practice (no source), convention (our choice), computed (from data named). The season model's:
// season_constants.h.
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
// Own spread of one scoop where a plan needs a figure before any wash: as the field's CV above, rounded.
inline constexpr double kScoopOwnCv = 0.1;
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

// ---- where the mites are ----
// Double the adult figure: published, Lee et al. 2010, J Econ Entomol 103:1039-1050. Spread: convention, so
// that the 29 % (SD 12) of Aurell et al. 2024, J Insect Sci (data CC-BY-4.0) lies 1.4 of it away.
inline constexpr double kShareOnBees = 0.5;
inline constexpr double kShareOnBeesSd = 0.15;
// Average frame: published, Burgett & Burikam 1985, J Econ Entomol 78:1154-1156.
inline constexpr double kBeesOnDeepFrame = 1400.0;
// Counting a third of a board's cells: error 0.4 +/- 9.5 %, published, Ostiguy & Sammataro 2000,
// Apidologie 31.
inline constexpr double kBoardPartCv = 0.095;

// ---- growth of the load, a day ----
// 0.021: from memory, after Calatayud & Verdu 1993 and Martin 1998; untreated field colonies grew 0.0184 (SE
// 0.0038), computed from the data of Aurell et al. 2025 (CC-BY-4.0). Sd: convention, of three tried the one
// whose 90 % range held best for colonies that grow 0 to 0.04.
inline constexpr double kGrowthMean = 0.021;
inline constexpr double kGrowthSd = 0.015;
// Deviation from the seasonal course, where that is known. Convention.
inline constexpr double kSeasonalDeviationSd = 0.010;
// Without brood: mites -0.002, bees -0.003 to -0.005 a day (from memory); convention.
inline constexpr double kBroodlessGrowthMean = 0.001;
inline constexpr double kBroodlessGrowthSd = 0.004;
// Spread of one colony's growth about its yard's, and of yards' about kGrowthMean. Conventions: together
// 0.010.
inline constexpr double kYardGrowthWithinSd = 0.006;
inline constexpr double kYardGrowthBetweenSd = 0.008;
// How far ahead an outlook is worth showing, days. Convention.
inline constexpr double kOutlookDays = 60.0;

// ---- efficacy ----
inline constexpr double kDispersionPriorColonies = 4.0; // convention
inline constexpr int kFewMitesBefore = 5;               // fewer before: a figure plus a warning; convention
inline constexpr double kDaysAfterTreatment = 14.0;     // one brood cycle; convention
// Effective: at least 95 % (synthetic) or 90 % (other). EMA/CVMP/EWP/459883/2008, as quoted in Dietemann et
// al. 2013.
inline constexpr double kEffectiveSynthetic = 0.95;
inline constexpr double kEffectiveOther = 0.90;

// ---- stop-early rule ----
inline constexpr double kStopErrors = 0.1; // wrong verdicts accepted either way; convention

// ---- how many colonies ----
inline constexpr double kPrecisionManagement = 0.25; // standard error over mean; convention
inline constexpr double kPrecisionResearch = 0.10;   // convention

// ---- standing ----
inline constexpr double kChanceClose = 0.2;     // convention
inline constexpr double kChanceOver = 0.5;      // convention
inline constexpr double kBeesForAnswer = 200.0; // convention
inline constexpr double kRangeTooWide = 4.0;    // upper end over lower end; convention

} // namespace halfcup::mites
