// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// What can be done against mites without a substance, as the handbook (topic "measures") has it. Words only:
// no published figure says how many mites a measure takes away, and none is made up.
#include "handbook/handbook.h"

namespace halfcup::handbook {

struct Measure {
    // "drone-brood-removal", "brood-break", "requeening", "screened-floor"
    std::string id;
    std::string name; // plain words
    std::string does;
    std::string needs;
    std::string caution; // one sentence; empty where there is none
};

// In the order of the handbook. Errors: HandbookError where one lacks its words.
std::vector<Measure> measures(const Handbook& handbook);

} // namespace halfcup::handbook
