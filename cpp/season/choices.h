// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "handbook/substance.h"
#include "records/colony_event.h"
#include "records/moment.h"
#include "season/phrase.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Which treatment fits a colony or a yard on a day, and exactly why or why not. Never a dose: the label
/// gives it. The label of the product in the hand and local law outrank every answer.
namespace halfcup::season {

/// One treatment given before, as far as rotation asks.
struct PastTreatment {
    std::string substance; // id of a handbook substance or measure
    records::Date firstDay;
    records::Date end;
};

/// What is known on the day. Nothing means not known, which is said in a reason and never taken as "no".
struct Situation {
    records::Date from;
    std::vector<double> dailyHighsC; // from that day on; 3 to 14, or none where no forecast was typed
    std::vector<double> dailyLowsC;  // as many as highs, or none
    std::optional<bool> supersOn;
    records::Brood brood = records::Brood::NotKnown;
    std::optional<double> adultBees;       // of the weakest colony concerned
    std::optional<records::Date> turnDate; // the next one on or after the day; nothing in the tropics
    records::Floor floor = records::Floor::NotKnown;
    std::vector<PastTreatment> past; // in any order
    bool droneSeason = true;         // the colony raises drones now
};

enum class Verdict { Fits, WithCare, NotNow };

struct Reason {
    Verdict verdict = Verdict::Fits; // what this reason alone would say
    Phrase phrase;
    std::string
        entry; // id of the handbook entry behind it; empty where it is ours, and then sourceNote is set
    std::string sourceNote; // "own choice" and the like, in plain words
};

enum class ChoiceKind { Substance, Measure };

struct Choice {
    ChoiceKind kind = ChoiceKind::Substance;
    std::string id;   // of the handbook's subject
    std::string name; // plain words of the handbook
    Verdict verdict = Verdict::Fits;
    std::vector<Reason> reasons; // gravest first; never empty
    std::string rotationGroup;   // what rotates together; empty for a measure
    int courseDaysShortest = 0;  // from first to last day, inclusive
    int courseDaysLongest = 0;
    std::optional<records::Date> endsBy; // with the shortest course, where it began on the day
    std::string hazard;                  // one sentence of the handbook; empty where it has none
};

/// What is wrong with a situation: a forecast that is too short, too long, impossible (below fewestC, above
/// mostC), a low above its high, highs and lows of different number, an impossible day, a strength below 0.
/// Empty where nothing is.
[[nodiscard]] std::vector<Phrase> problemsOf(const Situation& situation);

inline constexpr double lowestForecastC = -50; // no bees are treated beyond these [convention]
inline constexpr double highestForecastC = 55;
inline constexpr std::size_t shortestForecast = 3;
inline constexpr std::size_t longestForecast = 14;

/// Every substance and every measure of the handbook, those that fit first; within one verdict substances
/// before measures, those of a class not used last before the others, then those that end before the turn
/// date, then in the order of the handbook. Throws std::invalid_argument where problemsOf() finds something.
[[nodiscard]] std::vector<Choice> choices(const Situation& situation, const handbook::Handbook& handbook);

/// Adult bees in so many frames covered with bees: the handbook's average deep frame.
[[nodiscard]] double beesOnFrames(double frames, const handbook::Handbook& handbook);

} // namespace halfcup::season
