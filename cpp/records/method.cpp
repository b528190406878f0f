// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/method.h"

#include <algorithm>
#include <array>
#include <utility>

namespace halfcup::records {

namespace {

constexpr std::array<std::pair<Step, std::string_view>, 9> stepNames{{{Step::Colony, "colony"},
                                                                      {Step::Safety, "safety"},
                                                                      {Step::Scoop, "scoop"},
                                                                      {Step::Pour, "pour"},
                                                                      {Step::Shake, "shake"},
                                                                      {Step::Settle, "settle"},
                                                                      {Step::Count, "count"},
                                                                      {Step::SecondRinse, "second_rinse"},
                                                                      {Step::Answer, "answer"}}};

constexpr std::array alcoholSteps{Step::Colony, Step::Safety, Step::Scoop,       Step::Pour,  Step::Shake,
                                  Step::Settle, Step::Count,  Step::SecondRinse, Step::Answer};

std::ptrdiff_t placeOf(const Method& method, Step step) {
    const auto found = std::ranges::find(method.steps, step);
    return found == method.steps.end() ? 0 : found - method.steps.begin();
}

} // namespace

std::string_view nameOf(Step step) {
    for (const auto& [each, name] : stepNames)
        if (each == step)
            return name;
    return "";
}

Step stepFrom(std::string_view name) {
    for (const auto& [step, each] : stepNames)
        if (each == name)
            return step;
    return Step::Colony;
}

const Method& alcoholWash() {
    static constexpr Method method{"alcohol_wash", alcoholSteps, 1.0, 0.0, 30, true};
    return method;
}

const Method* findMethod(std::string_view id) {
    return id == alcoholWash().id ? &alcoholWash() : nullptr;
}

Step stepAfter(const Method& method, Step step) {
    const auto last = static_cast<std::ptrdiff_t>(method.steps.size()) - 1;
    return method.steps[static_cast<std::size_t>(std::min(placeOf(method, step) + 1, last))];
}

Step stepBefore(const Method& method, Step step) {
    return method.steps[static_cast<std::size_t>(std::max<std::ptrdiff_t>(placeOf(method, step) - 1, 0))];
}

int stepNumber(const Method& method, Step step) {
    return std::min(static_cast<int>(placeOf(method, step)) + 1, stepCount(method));
}

int stepCount(const Method& method) {
    return static_cast<int>(method.steps.size()) - 1;
}

} // namespace halfcup::records
