// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string_view>

namespace halfcup::records {

/// The steps a keeper can be led through. A method uses some of them, in its own order.
enum class Step { Colony, Safety, Scoop, Pour, Shake, Settle, Count, SecondRinse, Answer };

/// The text a step is kept under.
[[nodiscard]] std::string_view nameOf(Step step);
[[nodiscard]] Step stepFrom(std::string_view name); // Step::Colony where the name is unknown

/// A way of counting mites: data, and a list of steps. See DEVELOPERS.md, "Add a step or a method".
struct Method {
    std::string_view id;         // kept with every sample
    std::span<const Step> steps; // the first is where a sample starts, the last shows the answer
    double recovery = 1.0;       // held against lines: share of what an alcohol wash finds (washed load)
    double recoverySd = 0.0;
    int settleS = 0; // how long the jar stands before counting, seconds
    bool flammable = false;
};

/// Alcohol wash: the bees die, the mites fall off and are counted through the floor of the jar.
[[nodiscard]] const Method& alcoholWash();

/// The method of that id, or null where this version does not know it (a record from a newer one).
[[nodiscard]] const Method* findMethod(std::string_view id);

[[nodiscard]] Step stepAfter(const Method& method, Step step);  // the last step stays
[[nodiscard]] Step stepBefore(const Method& method, Step step); // the first step stays
/// 1-based place of a step and how many there are, for "step 5 of 8". The answer is not counted as a step.
[[nodiscard]] int stepNumber(const Method& method, Step step);
[[nodiscard]] int stepCount(const Method& method);

} // namespace halfcup::records
