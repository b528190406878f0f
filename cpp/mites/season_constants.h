// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The season model's numbers that are not mathematics, each with its source and mark, as in constants.h.
#include <array>

namespace halfcup::mites {

// Colony through a year, northern temperate, mid-month: invented but usual figures, editable by the user.
inline constexpr std::array<double, 12> kSeasonMidMonth = {15,  46,  74,  105, 135, 166,
                                                           196, 227, 258, 288, 319, 349};
inline constexpr std::array<double, 12> kSeasonAdultBees = {12000, 10500, 10000, 14000, 24000, 34000,
                                                            36000, 30000, 23000, 18000, 15500, 13500};
inline constexpr std::array<double, 12> kSeasonWorkerCells = {0,     500,   3500, 9000, 14000, 16000,
                                                              14000, 10000, 5500, 1500, 0,     0};
inline constexpr std::array<double, 12> kSeasonDroneCells = {0, 0, 50, 400, 1200, 1200, 600, 150, 0, 0, 0, 0};
inline constexpr double kSouthernShiftDays = 182.0; // convention
// Cells invaded per mite, per cell capped a day and gram of bees. Worker: set so that the model puts 30 % of
// the mites on the bees of the 47 September colonies of Aurell et al. 2024 (data CC-BY-4.0; 29 % seen);
// drone: in the ratio of the published 0.56 and 6.49 (Boot et al. 1995, Calis et al. 1999, from memory).
inline constexpr double kInvasionWorker = 0.21;
inline constexpr double kInvasionDrone = 2.43;
inline constexpr double kBeeGrams = 0.125;         // from memory, as in those papers
inline constexpr int kCappedWorkerDays = 12;       // textbook, from memory
inline constexpr int kCappedDroneDays = 14;        // textbook (14 to 15), from memory
inline constexpr double kMiteDeathBrood = 0.006;   // a day, Fries, Camazine & Sneyd 1994, from memory
inline constexpr double kMiteDeathNoBrood = 0.002; // the same
// Mites leaving a cell per mother that entered. Ratio: Martin 1998, from memory; scale: computed, so that all
// mites grow 0.021 a day from 1 May to 1 September.
inline constexpr double kLeavingWorker = 1.37;
inline constexpr double kLeavingDrone = 2.26;
inline constexpr double kLowBand = 0.8030825709;   // grows 0.011 a day; computed
inline constexpr double kHighBand = 1.2371855;     // grows 0.031 a day; computed
inline constexpr int kSettlingDays = 60;           // run before the start so that ages settle; convention
inline constexpr double kLoadLikelyFailing = 15.0; // per 100; convention

} // namespace halfcup::mites
