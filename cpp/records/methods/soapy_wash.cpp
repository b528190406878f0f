// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/constants.h"
#include "records/methods/methods.h"

#include <array>

// Water with washing-up liquid instead of alcohol (common practice, no source). Recovery as of the alcohol
// wash: water alone, shaken for a minute, found over 90 % of the mites of under 250 bees (Posada-Florez et
// al. 2022, Insects). Foam needs longer to clear [own choice: a minute].
namespace halfcup::records::methods {

namespace {

constexpr std::array steps{
    MethodStep{Step::Colony, methodText("Which colony?")},
    MethodStep{Step::Safety, methodText("Where is the queen?"), findQueen},
    MethodStep{Step::Scoop, methodText("Scoop the bees")},
    MethodStep{Step::Pour, methodText("Pour and close"),
               methodText("Pour in water with a squirt of washing-up liquid until all the bees are well "
                          "covered.\nClose the lid and see that it is tight."),
               methodText("Lid on: start the shake")},
    MethodStep{Step::Shake, methodText("Shake"),
               methodText("Turn the jar over and over. Swirl more than you beat: less foam."),
               methodText("Let it settle"), methodText("Time. Set the jar down.")},
    MethodStep{Step::Settle, methodText("Let the foam go"),
               methodText("Stand the jar still. Foam hides mites; a little cold water on top clears it."),
               methodText("Count the mites"), methodText("Settled. Look from below.")},
    MethodStep{Step::Count, methodText("Count the mites"), methodText("Touch anywhere for each mite")},
    MethodStep{
        Step::SecondRinse, methodText("Rinse once more?"),
        methodText("Pour fresh soapy water over the same bees, shake again and count what still falls.")},
    MethodStep{Step::Answer}};

constexpr std::array<const char*, 2> cautions{deadBeesCaution, stingCaution};

} // namespace

constexpr Method soapyWash{
    .id = "soapy_wash",
    .name = methodText("soapy-water wash"),
    .summary = methodText("The same with washing-up liquid in water. The bees die; nothing that burns."),
    .begin = methodText("Wash colony %1"),
    .noun = methodText("soapy water"),
    .noneFound = methodText("Hold the jar against the light, look under the foam and at the bottom once "
                            "more. None found is kept as a count of 0."),
    .steps = steps,
    .cautions = cautions,
    .fullRecovery = mites::kWashRecovery,
    .fullRecoverySd = mites::kWashRecoverySd,
    .settleS = 60,
    .jarMayWait = true};

} // namespace halfcup::records::methods
