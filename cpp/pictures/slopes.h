// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"
#include "pictures/type.h"

#include <vector>

/// Before and after a treatment: a line for each colony from the load before to the load after. How much was
/// killed, and how sure that is, is said beside the picture.
namespace halfcup::pictures {

/// A load in mites per 100 bees with its 90 % range. Ends that are no loads, or on the wrong side, are taken
/// to be the middle.
struct SlopeEnd {
    double low = 0;
    double middle = 0;
    double high = 0;
    bool noneFound = false; // only the upper end says something

    friend bool operator==(const SlopeEnd&, const SlopeEnd&) = default;
};

/// A colony is left out where one of its middles is no load (negative, not a number).
struct Slope {
    QString label = {};
    SlopeEnd before = {};
    SlopeEnd after = {};
    bool treated = true;

    friend bool operator==(const Slope&, const Slope&) = default;
};

/// A line of 0 or less is none.
struct Slopes {
    std::vector<Slope> colonies = {};
    double treatLine = 0;

    friend bool operator==(const Slopes&, const Slopes&) = default;
};

/// Ranges are drawn for up to so many colonies; more would lie over each other [own choice].
inline constexpr std::size_t mostRanges = 6;

/// As large as the sheet, but never lower than a few lines of letters: the drawing's size says how high.
/// Where labels would lie on each other, those of the highest loads stay.
[[nodiscard]] Drawing drawSlopes(const Slopes& slopes, const Sheet& sheet);
[[nodiscard]] Legend legendOf(const Slopes& slopes);
/// Each colony in a sentence.
[[nodiscard]] QString sentenceOf(const Slopes& slopes);

} // namespace halfcup::pictures
