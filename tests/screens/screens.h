// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "stage.h"

#include <functional>
#include <vector>

namespace halfcup::screens {

/// One state of a page that a keeper can come to. A new page is covered by one line in screens.cpp.
struct Screen {
    const char* name;
    Stage::Records records;
    int mainActions;
    /// From the start of the program to the screen; false where the way was blocked.
    std::function<bool(Stage&)> open;
};

const std::vector<Screen>& allScreens();
const std::vector<Screen>& seasonScreens();    // among them; a file of its own
const std::vector<Screen>& methodScreens();    // among them; a file of its own
const std::vector<Screen>& storyScreens();     // among them; a file of its own
const std::vector<Screen>& browserScreens();   // among them; a file of its own
const std::vector<Screen>& planScreens();      // among them; a file of its own
const std::vector<Screen>& yardPlanScreens();  // among them; a file of its own
const std::vector<Screen>& twoPhonesScreens(); // among them; two_phones.h

/// Types into a field, in place of what it holds.
bool type(Stage& stage, const char* field, const char* text);
/// After a wash of the most urgent colony: what to treat it with.
bool toTheChoices(Stage& stage);

/// From Here on with the main actions, so many times.
bool pressMain(Stage& stage, int times);
/// As a wash goes: to the counting page.
bool toTheCount(Stage& stage);
/// So many mites counted, and the answer.
bool toTheAnswer(Stage& stage, int mites);

} // namespace halfcup::screens
