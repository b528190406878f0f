// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/method.h"

/// The methods, each in a file of its own. A new one: its file in this folder, its name here and in all().
namespace halfcup::records::methods {

extern const Method alcoholWash;
extern const Method soapyWash;
extern const Method sugarRoll;
extern const Method stickyBoard;
extern const Method droneBrood;

[[nodiscard]] std::span<const Method* const> all();

// Said by several methods alike.
inline constexpr const char* stingCaution =
    methodText("Stung and short of breath, dizzy or swelling? Stop and call for help.");
inline constexpr const char* deadBeesCaution =
    methodText("The washed bees die. Look twice that the queen is not among them.");
inline constexpr const char* findQueen = methodText("Find her and set her frame aside before you scoop.");

} // namespace halfcup::records::methods
