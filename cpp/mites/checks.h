// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Shared checks of input: each failure is a std::domain_error whose text is a plain sentence a keeper can
// read.
#include <cmath>
#include <stdexcept>

namespace halfcup::mites {

inline constexpr double kMostCounted = 1e9; // more is a slip of the keys, not a count
inline constexpr double kMostCv = 5;
inline constexpr double kLeastShape = 0.01; // below, the law has no usable width

// A NaN fails every comparison, so conditions are written to hold for good input.
inline void require(bool holds, const char* sentence) {
    if (!holds)
        throw std::domain_error(sentence);
}

inline void checkJarShape(double jarShape) {
    require(jarShape >= kLeastShape, "The jar shape has to be at least 0.01 (infinity for none).");
}

inline void checkRecovery(double mean, double sd) {
    require(mean > 0 && mean <= 1, "The recovery has to be above 0 and at most 1.");
    require(sd >= 0 && (sd == 0 || sd * sd < mean * (1 - mean)),
            "The spread of the recovery is too large for its mean.");
    require(sd == 0 || mean * (mean * (1 - mean) / (sd * sd) - 1) >= kLeastShape,
            "The recovery is too uncertain to say anything.");
}

} // namespace halfcup::mites
