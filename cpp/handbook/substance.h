// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The active substances of the handbook (topic "substances") as values to compute with.
//
// Each field is read from the entries of one subject; Handbook::find(id, property) gives the entry behind it,
// to be shown beside what was computed. An empty field means that the handbook is silent, which is not "no
// limit": say so. What a label says outranks all of this. Errors: HandbookError where an entry's words are
// none of those expected.
#include "handbook/handbook.h"

namespace halfcup::handbook {

enum class Allowed { No, Yes, ByLabel };
enum class UnderCappings { No, Yes, LongContact }; // LongContact: not under them, but there when bees hatch

struct Substance {
    // "formic-acid", "oxalic-acid", "oxalic-acid-carrier", "thymol", "hop-acids", "amitraz", "coumaphos", ...
    std::string id;
    std::string name; // plain words
    // "IRAC 19" and so on; empty where nobody gave it a number, and then none is made up. Rotation changes
    // the class; where there is none, the substance (rotationGroup()).
    std::string modeOfAction;
    std::string active; // what rotates together: both oxalic entries are "oxalic acid"
    std::optional<double> dailyHighLowC, dailyHighHighC;       // limits for the day's highest temperature, C
    std::optional<double> bestHighLowC, bestHighHighC;         // where it works best, C
    std::optional<double> watchDays;                           // first days whose highs all have to hold
    std::optional<double> courseDaysLow, courseDaysHigh;       // from first day to last, by product
    std::optional<double> leastBees;                           // fewest adult bees of a colony
    std::optional<double> efficacyLow, efficacyHigh;           // fractions seen, where it works
    std::optional<double> efficacyBroodLow, efficacyBroodHigh; // the same with capped brood, where told apart
    Allowed supers = Allowed::ByLabel;
    UnderCappings underCappings = UnderCappings::No;
    bool broodlessOnly = false;
    bool synthetic = false;        // decides the line "worked": 95 % for synthetic, 90 % for the others
    std::string hazard;            // one sentence
    std::string resistance;        // one sentence, empty where none is known
    bool resistanceWeighs = false; // widespread: a choice with care for that alone

    std::string rotationGroup() const { return modeOfAction.empty() ? active : modeOfAction; }
};

// In the order of the handbook.
std::vector<Substance> substances(const Handbook& handbook);

} // namespace halfcup::handbook
