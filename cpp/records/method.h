// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string_view>

namespace halfcup::records {

/// The steps a keeper can be led through. A method uses some of them, in its own order.
enum class Step {
    Colony,
    Safety,
    Scoop,
    Pour,
    Shake,
    Settle,
    Count,
    SecondRinse,
    LayBoard,
    PullBoard,
    BoardCells,
    OpenedCells,
    Answer
};

/// The text a step is kept under.
[[nodiscard]] std::string_view nameOf(Step step);
[[nodiscard]] Step stepFrom(std::string_view name); // Step::Colony where the name is unknown

/// What a method's count is a count of. Only the first is a load as lines and seasons know it; the others are
/// answers in their own terms and never taken for one.
enum class Measure {
    MitesPer100Bees,
    MitesADay,    // fallen on a board
    InfestedCells // of drone brood opened
};

/// Marks a text of a method for the translators (context "Method"). Does nothing.
constexpr const char* methodText(const char* text) {
    return text;
}

/// One step of a method, and what its page says. Plain English; pages translate it.
struct MethodStep {
    Step step;
    const char* title = "";
    const char* text = "";   // what to do; paragraphs parted by a line break
    const char* action = ""; // on the main button
    const char* then = "";   // what is said once a timed step is over
};

/// A way of counting mites: data and a list of steps, in a file of its own in cpp/records/methods. See
/// DEVELOPERS.md, "Add a method".
struct Method {
    std::string_view id;        // kept with every sample
    const char* name = "";      // in the middle of a sentence: "alcohol wash"
    const char* summary = "";   // one sentence to choose by
    const char* begin = "";     // on a button, %1 the colony: "Wash colony %1"
    const char* noun = "";      // for "half a cup, alcohol"; empty where nothing is scooped
    const char* noneFound = ""; // asked before a count of 0 is kept
    Measure measure = Measure::MitesPer100Bees;
    std::span<const MethodStep> steps; // the first is where a sample starts, the last shows the answer
    Step momentAt = Step::Scoop;       // leaving it is the moment of the sample, and its place
    std::span<const char* const> cautions;
    double recovery = 1.0; // held against lines: share of what an alcohol wash finds (washed load)
    double recoverySd = 0.0;
    double fullRecovery = 1.0; // share of all mites on the bees that is counted (full load)
    double fullRecoverySd = 0.0;
    int settleS = 0;         // how long the jar stands, seconds
    bool jarMayWait = false; // scooped now, washed later: not with bees that shall live
};

/// Alcohol wash: the bees die, the mites fall off and are counted through the floor of the jar.
[[nodiscard]] const Method& alcoholWash();

/// All methods, in the order in which they are offered.
[[nodiscard]] std::span<const Method* const> allMethods();
/// The method of that id, or null where this version does not know it (a record from a newer one).
[[nodiscard]] const Method* findMethod(std::string_view id);

/// The method's entry for that step; its first one where the method has no such step.
[[nodiscard]] const MethodStep& stepOf(const Method& method, Step step);
[[nodiscard]] bool hasStep(const Method& method, Step step);
[[nodiscard]] Step stepAfter(const Method& method, Step step);  // the last step stays
[[nodiscard]] Step stepBefore(const Method& method, Step step); // the first step stays
/// 1-based place of a step and how many there are, for "step 5 of 8". The answer is not counted as a step.
[[nodiscard]] int stepNumber(const Method& method, Step step);
[[nodiscard]] int stepCount(const Method& method);

} // namespace halfcup::records
