// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The active substances of the handbook (topic "substances") as values to compute with.
//
// Each field is read from the entries of one subject; `source(property)` gives the entry behind a field, to
// be shown beside whatever was computed from it. A field the handbook does not give is empty and must not be
// treated as "no limit": say that nothing is known. The label of the product in the hand outranks all of it.
// Errors: HandbookError where an entry's words are none of those expected.
#include "handbook/handbook.h"

namespace halfcup::handbook {

enum class Allowed { No, Yes, ByLabel };
enum class UnderCappings { No, Yes, LongContact }; // LongContact: not under them, but there when bees hatch

struct Substance {
    std::string
        id; // "formic-acid", "oxalic-acid", "oxalic-acid-carrier", "thymol", "hop-acids", "amitraz", ...
    std::string name; // plain words
    // "IRAC 19" and so on; empty: no class number (never invented). Rotation: do not repeat the class used
    // last; without a class number, do not repeat the substance itself (rotationGroup()).
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
    bool synthetic = false; // decides the line "worked": 95 % for synthetic, 90 % for the others
    std::string hazard;     // one sentence
    std::string resistance; // one sentence, empty where none is known

    std::string rotationGroup() const { return modeOfAction.empty() ? active : modeOfAction; }
};

// In the order of the handbook.
std::vector<Substance> substances(const Handbook& handbook);

} // namespace halfcup::handbook
