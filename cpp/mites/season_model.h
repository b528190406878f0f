// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Mites of one colony through a season, day by day: on bees, in capped worker cells, in capped drone cells.
//
// Step from day d to d + 1, in this order:
//   1 cells invaded per mite on bees: a_w = i_w (Cw/12)/(0.125 B), a_d = i_d (Cd/14)/(0.125 B)
//   2 entering I = P (1 - e^-(a_w + a_d)), split in proportion
//   3 P <- (P - I)(1 - death) + R_w I_w(12 days ago) + R_d I_d(14 days ago)
//   4 treatments active on day d (start <= d < start + days): survivors s = (1 - E)^(1/days); P <- P s; a
//   Whole one
//     multiplies the mites in cells too, those that just entered included
//   5 P <- P + mites carried in
// B adult bees, Cw and Cd capped cells of the day, linear between twelve mid-month anchors, periodic.
// Load = 100 P/B (full load: mites really on the bees). Whole E: what a Henderson-Tilton comparison at the
// end would show; OnBees E: share of the mites on bees killed. Not in it: crowding, collapse, brood or bees
// damaged by mites. Above kLoadLikelyFailing stop the curve: "colony likely failing". Without mites carried
// in the model is linear in the start, so ranges of the load scale. Errors: std::domain_error with a plain
// sentence. Sources: structure after Fries, Camazine & Sneyd 1994, Bee World 75:5-28, and Martin 1998, Ecol
// Model 114:267-287 (from memory); constants: season_constants.h.
#include "mites/season_constants.h"

#include <array>
#include <functional>
#include <vector>

namespace halfcup::mites {

struct ColonyCourse {
    std::array<double, 12> adultBees = kSeasonAdultBees;
    std::array<double, 12> workerCells = kSeasonWorkerCells;
    std::array<double, 12> droneCells = kSeasonDroneCells;
    double shiftDays = 0; // kSouthernShiftDays in the southern hemisphere
};
struct ColonyDay {
    double adultBees, workerCells, droneCells;
};
// dayOfYear: 1 is 1 January; any real number, periodic with 365 days.
ColonyDay colonyOn(const ColonyCourse& course, double dayOfYear);

enum class GrowthBand { Low, Base, High };
double growthBandFactor(GrowthBand band); // on the mites leaving a cell

enum class TreatmentReach { Whole, OnBees };
struct SeasonTreatment {
    TreatmentReach reach = TreatmentReach::Whole;
    double efficacy = 0; // 0 to 1, below 1
    int firstDay = 0;    // same count of days as the start
    int days = 1;        // >= 1
};
struct MitesCarriedIn {
    double perDay = 0;
    int firstDay = 0;
    int lastDay = 0; // inclusive
};

struct SeasonDay {
    int day = 0;
    double load = 0;   // per 100 adult bees
    double onBees = 0; // mites
    double total = 0;  // mites, on bees and mothers in cells
    double shareOnBees = 0;
};

struct SeasonRun {
    int startDay = 0; // day of the year of the wash; later days go on counting
    double load = 0;  // full load that day, per 100; >= 0
    int days = 0;     // how far to run
    GrowthBand band = GrowthBand::Base;
    std::vector<SeasonTreatment> treatments = {};
    std::vector<MitesCarriedIn> carriedIn = {};
    ColonyCourse course = {};
};

// Days startDay .. startDay + days.
std::vector<SeasonDay> runSeason(const SeasonRun& run);

// The run with its range: the lower end of the load with the low band, the upper with the high one.
struct SeasonOutlook {
    std::vector<SeasonDay> low, base, high;
};
SeasonOutlook seasonOutlook(SeasonRun run, double loadLow, double loadBase, double loadHigh);

// Share of mites on bees once the age of the mites in cells has settled, at constant bees and cells.
double steadyShareOnBees(double adultBees, double workerCells, double droneCells,
                         GrowthBand band = GrowthBand::Base);

// Growth of ln(load) a day in an untreated colony, element 0 for 1 January (365 values): summed up, the drift
// for growth.h; see loadDrift.
std::vector<double> untreatedLoadGrowth(const ColonyCourse& course, GrowthBand band = GrowthBand::Base);
// Its running sum G as a function of the day of the year, any real number, linear within a day.
std::function<double(double)> loadDrift(const ColonyCourse& course, GrowthBand band = GrowthBand::Base);

} // namespace halfcup::mites
