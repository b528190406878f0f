// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/method.h"

#include "records/methods/methods.h"

#include <algorithm>
#include <array>
#include <utility>

namespace halfcup::records {

namespace {

constexpr std::array<std::pair<Step, std::string_view>, 13> stepNames{{{Step::Colony, "colony"},
                                                                       {Step::Safety, "safety"},
                                                                       {Step::Scoop, "scoop"},
                                                                       {Step::Pour, "pour"},
                                                                       {Step::Shake, "shake"},
                                                                       {Step::Settle, "settle"},
                                                                       {Step::Count, "count"},
                                                                       {Step::SecondRinse, "second_rinse"},
                                                                       {Step::LayBoard, "lay_board"},
                                                                       {Step::PullBoard, "pull_board"},
                                                                       {Step::BoardCells, "board_cells"},
                                                                       {Step::OpenedCells, "opened_cells"},
                                                                       {Step::Answer, "answer"}}};

std::ptrdiff_t placeOf(const Method& method, Step step) {
    const auto found = std::ranges::find(method.steps, step, &MethodStep::step);
    return found == method.steps.end() ? 0 : found - method.steps.begin();
}

Step stepAt(const Method& method, std::ptrdiff_t place) {
    return method.steps[static_cast<std::size_t>(place)].step;
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
    return methods::alcoholWash;
}

std::span<const Method* const> allMethods() {
    return methods::all();
}

const Method* findMethod(std::string_view id) {
    const auto found = std::ranges::find(allMethods(), id, &Method::id);
    return found == allMethods().end() ? nullptr : *found;
}

const MethodStep& stepOf(const Method& method, Step step) {
    return method.steps[static_cast<std::size_t>(placeOf(method, step))];
}

bool hasStep(const Method& method, Step step) {
    return std::ranges::find(method.steps, step, &MethodStep::step) != method.steps.end();
}

Step stepAfter(const Method& method, Step step) {
    const auto last = static_cast<std::ptrdiff_t>(method.steps.size()) - 1;
    return stepAt(method, std::min(placeOf(method, step) + 1, last));
}

Step stepBefore(const Method& method, Step step) {
    return stepAt(method, std::max<std::ptrdiff_t>(placeOf(method, step) - 1, 0));
}

int stepNumber(const Method& method, Step step) {
    return std::min(static_cast<int>(placeOf(method, step)) + 1, stepCount(method));
}

int stepCount(const Method& method) {
    return static_cast<int>(method.steps.size()) - 1;
}

} // namespace halfcup::records
