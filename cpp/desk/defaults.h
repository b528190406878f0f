// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Defaults of the calculators' columns and options that cpp/mites does not name. All are choices of this
// project, shown in the handbook under the ids beside them.
namespace halfcup::desk {

inline constexpr double kScoopCv = 0.12; // "scoop-cv": own and shared spread of a scoop nobody counted
inline constexpr double kScoopSharedSd = 0.0693; // "scoop-shared-sd": the part all scoops share
inline constexpr double kTradeLine = 3.0; // "trade-rule": 9 mites in a half cup of 300, common practice

} // namespace halfcup::desk
