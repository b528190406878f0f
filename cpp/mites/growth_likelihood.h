// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The likelihood behind growth.h and growth_pooled.h: washes of one colony, ready to be evaluated on a grid.
// Internal to the layer; see growth.h for the model, units and symbols. prepareSeries throws
// std::domain_error.
#include "mites/growth.h"

#include <span>
#include <vector>

namespace halfcup::mites {

struct SeriesWash {
    double mites;
    double logExposure; // with offset and drift to the reference day
    double day;         // from the reference day
    double shape;       // phi_i, may be infinite
};

struct Series {
    std::vector<SeriesWash> washes;
    double mites = 0;
    double exposure = 0;
    double refDay = 0;
    double lastDay = 0;
    double driftAtRef = 0;
    double shapes = 0; // sum of phi_i
};

Series prepareSeries(std::span<const DatedWash> washes, const GrowthModel& model);

// ln [likelihood * conditional Jeffreys prior of eta], up to a constant; no prior of r in it.
double logSeries(const Series& series, double growth, double eta);

// Nodes of eta for each standard deviation of it. Sums over a bell this smooth converge as exp(-2 (pi n)^2):
// two nodes are more than enough for the mass of a row, six for a table that is read between its nodes.
inline constexpr double kNodesForMass = 2;
inline constexpr double kNodesForTable = 6;

// A range of eta with all that is within e^-30 of the top, for each growth in the span; and a step fine
// enough.
struct EtaGrid {
    double low, step;
    std::size_t count;
};
EtaGrid etaGrid(const Series& series, std::span<const double> growths, double nodes = kNodesForTable);

// exp(logSeries - top) along the grid, 0 where it has fallen below e^-40; returns top in *top.
std::vector<double> seriesRow(const Series& series, double growth, const EtaGrid& grid, double* top);

} // namespace halfcup::mites
