// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// From mites on adult bees to mites in the colony: adults plus capped brood.
//
// Model: mites in the colony per 100 adult bees = full load / share, mites in the colony = load/100 * bees /
// share, with the load of one wash (wash_load.h, with the full recovery), the share of all mites that sits on
// adult bees Beta(mean, sd) and the adult bees log-normal. All factors independent; LogLaw inverts the
// product exactly. Without brood all mites are on the bees: share 1, sd 0. The default share 0.5 is the rule
// "double the adult figure" (Lee, Moon, Burkness, Hutchison & Spivak 2010, J Econ Entomol 103:1039-1050); its
// spread reaches to the 29 % seen in September (see constants.h). Errors: std::domain_error with a plain
// sentence.
#include "mites/wash_load.h"

namespace halfcup::mites {

struct ShareOnBees {
    double mean = kShareOnBees; // > 0, at most 1
    double sd = kShareOnBeesSd; // as for a recovery
};

// Mites per 100 adult bees, on adults and under cappings together.
LoadEstimate adultsPlusBrood(const Wash& fullWash, const ShareOnBees& share = {});

struct ColonyMites {
    LoadEstimate onBees;   // number of mites
    LoadEstimate inColony; // number of mites
};
// adultBees > 0 with its coefficient of variation.
ColonyMites mitesInColony(const Wash& fullWash, double adultBees, double adultBeesCv,
                          const ShareOnBees& share = {});

// Adult bees from frames covered on both sides.
double beesOnFrames(double framesOfBees, double beesPerFrame = kBeesOnDeepFrame);

} // namespace halfcup::mites
