// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "mites/constants.h"
#include "records/moment.h"
#include "records/sample.h"
#include "records/treatment.h"
#include "season/phrase.h"

#include <optional>
#include <string>
#include <vector>

/// Did a treatment work: from washes before and after, with untreated colonies as control where there are
/// some.
namespace halfcup::season {

/// All finished washes of one colony, and whether it got the treatment.
struct ColonyWashes {
    records::RecordId colonyId;
    bool treated = true;
    bool treatedOtherwise = false;       // got something else meanwhile: no control, and no clean comparison
    std::vector<records::Sample> washes; // in any order
};

/// Which washes count [own choice, but for the days after: handbook]: the last one before the first day and
/// not older than daysBefore; the first one at least daysAfterEnd after the end, and not later than
/// lastDayAfter.
inline constexpr int daysBefore = 42;
inline constexpr int daysAfterEnd = 10; // common practice: 10 to 14 days after the end
inline constexpr int fullKillDays = 14; // one brood cycle: sooner, only the kill on the bees is seen
inline constexpr int lastDayAfter = 60;

enum class Outcome {
    NotYet,     // no wash after it that counts
    CannotTell, // too few mites before, or a range that allows anything
    Worked,
    NotReached, // did not reach the mark
    Resistance, // so far below the mark, with a substance mites are known to resist
    CarriedIn,  // worked, and then came back faster than mites breed
};

struct TreatmentCheck {
    Outcome outcome = Outcome::NotYet;
    int colonies = 0;                                            // with a wash before and one after
    int controls = 0;                                            // untreated colonies with both
    std::optional<double> efficacyQ05, efficacyQ50, efficacyQ95; // fractions, may be negative
    double mark = 0.90;    // the share to be killed: handbook "efficacy"
    std::string markEntry; // id of its handbook entry
    double chanceOverMark = 0;
    bool onBeesOnly = false;          // some wash after it came before fullKillDays
    bool assumedGrowth = false;       // no untreated colonies: corrected by assumed growth
    records::Date washFrom, washBest; // when to wash, while NotYet
    std::vector<Phrase> notes;        // cautions, each a sentence
    Phrase reading;                   // the outcome in one sentence
    Phrase next;                      // what follows for rotation and for the next weeks
};

/// The washes of a colony that are held against each other.
struct HeldWashes {
    records::RecordId colonyId;
    bool treated = true;
    records::Sample before, after;
};

/// Those that checkTreatment() reads: of each colony with one before and one after; untreated ones that got
/// something else meanwhile are left out.
[[nodiscard]] std::vector<HeldWashes> washesHeld(const records::Treatment& treatment,
                                                 const std::vector<ColonyWashes>& colonies);

/// jarShape: how much jars of one colony differ, see mites/constants.h. Errors: none; what cannot be told is
/// CannotTell or NotYet. today decides what is still to come.
[[nodiscard]] TreatmentCheck checkTreatment(const records::Treatment& treatment,
                                            const std::vector<ColonyWashes>& colonies,
                                            const records::Date& today, const handbook::Handbook& handbook,
                                            double jarShape = mites::kJarShape);

} // namespace halfcup::season
