// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/constants.h"
#include "records/methods/methods.h"

#include <array>

// Bees rolled in powdered sugar, which live. Two tablespoons, a rest of 1 to 2 minutes, shaken out through
// mesh of 8 to the inch: University of Minnesota, poster 155. The rest is the longer of the two: mites that
// did not let go are not counted. Recovery: mites/constants.h.
namespace halfcup::records::methods {

namespace {

constexpr std::array steps{
    MethodStep{Step::Colony, methodText("Which colony?")},
    MethodStep{Step::Safety, methodText("Where is the queen?"), findQueen},
    MethodStep{Step::Scoop, methodText("Scoop the bees")},
    MethodStep{Step::Pour, methodText("Sugar the bees"),
               methodText("Close the jar with the mesh. Sieve two tablespoons of powdered sugar through it.\n"
                          "Roll the jar until every bee is white."),
               methodText("All white: let them rest")},
    MethodStep{Step::Settle, methodText("Let them rest"),
               methodText("Stand the jar in the shade. The mites lose their hold."),
               methodText("Shake the sugar out"), methodText("Rested. Turn the jar over a white plate.")},
    MethodStep{Step::Shake, methodText("Shake out"),
               methodText("Mesh down over a white plate: shake hard, like a salt cellar."),
               methodText("Count the mites"), methodText("Time. Set the jar down.")},
    MethodStep{Step::Count, methodText("Count the mites"), methodText("Touch anywhere for each mite")},
    MethodStep{Step::Answer}};

constexpr std::array<const char*, 3> cautions{
    methodText("The bees go back alive, but sugar and shaking would harm a queen: leave her out."),
    methodText("Dry weather only: damp sugar clumps, holds mites and harms bees. Do not breathe the dust."),
    stingCaution};

} // namespace

constexpr Method sugarRoll{
    .id = "sugar_roll",
    .name = methodText("powdered-sugar roll"),
    .summary =
        methodText("Half a cup of bees in powdered sugar. They live; the roll finds fewer mites than a "
                   "wash, and the answer is wider."),
    .begin = methodText("Sugar-roll colony %1"),
    .noun = methodText("powdered sugar"),
    .noneFound = methodText("Spray the plate with water so that the sugar melts, and look once more. None "
                            "found is kept as a count of 0."),
    .steps = steps,
    .cautions = cautions,
    .recovery = mites::kSugarAgainstWash,
    .recoverySd = mites::kSugarAgainstWashSd,
    .fullRecovery = mites::kSugarRecovery,
    .fullRecoverySd = mites::kSugarRecoverySd,
    .settleS = 120};

} // namespace halfcup::records::methods
