// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/constants.h"
#include "records/methods/methods.h"

#include <array>

// Bees in alcohol, shaken for a minute (common practice, no source; 70 % isopropyl: Mississippi State
// University Extension), a second rinse where the keeper wants to know what the first one missed.
namespace halfcup::records::methods {

namespace {

constexpr std::array steps{
    MethodStep{Step::Colony, methodText("Which colony?")},
    MethodStep{Step::Safety, methodText("Where is the queen?"), findQueen},
    MethodStep{Step::Scoop, methodText("Scoop the bees")},
    MethodStep{Step::Pour, methodText("Pour and close"),
               methodText("Pour in alcohol until all the bees are well covered.\n"
                          "Close the lid and see that it is tight."),
               methodText("Lid on: start the shake")},
    MethodStep{Step::Shake, methodText("Shake"), methodText("Turn the jar over and over, not too gently."),
               methodText("Let it settle"), methodText("Time. Set the jar down.")},
    MethodStep{Step::Settle, methodText("Let it settle"), methodText("Stand the jar still. The mites sink."),
               methodText("Count the mites"), methodText("Settled. Look from below.")},
    MethodStep{Step::Count, methodText("Count the mites"), methodText("Touch anywhere for each mite")},
    MethodStep{Step::SecondRinse, methodText("Rinse once more?"),
               methodText("Pour fresh alcohol over the same bees, shake again and count what still falls.")},
    MethodStep{Step::Answer}};

constexpr std::array<const char*, 3> cautions{
    methodText("Alcohol burns. No lit smoker, flame or cigarette near the jar."), deadBeesCaution,
    stingCaution};

} // namespace

constexpr Method alcoholWash{
    .id = "alcohol_wash",
    .name = methodText("alcohol wash"),
    .summary = methodText("Half a cup of bees in alcohol. The bees die; the surest count."),
    .begin = methodText("Wash colony %1"),
    .noun = methodText("alcohol"),
    .noneFound = methodText("Hold the jar against the light and look at the bottom once more. None found is "
                            "kept as a count of 0."),
    .steps = steps,
    .cautions = cautions,
    .fullRecovery = mites::kWashRecovery,
    .fullRecoverySd = mites::kWashRecoverySd,
    .settleS = 30,
    .jarMayWait = true};

} // namespace halfcup::records::methods
