// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "pictures/legend.h"
#include "pictures/type.h"

#include <QStringList>

#include <optional>
#include <vector>

/// The colonies of a yard under each other, the highest load first, on one axis with the lines drawn through:
/// which stand out, and how sure that is.
namespace halfcup::pictures {

/// What the latest wash of a colony found, in mites per 100 bees. A middle that is no load (negative, not a
/// number) is as no wash; ends that are none, or on the wrong side, are taken to be the middle.
struct ComparedLoad {
    double low = 0; // 90 % range
    double middle = 0;
    double high = 0;
    bool noneFound = false;                       // only the upper end says something
    std::optional<mites::Standing> standing = {}; // nothing: no answer is known
    int ageDays = 0;                              // of the wash; said where it is more than freshDays

    friend bool operator==(const ComparedLoad&, const ComparedLoad&) = default;
};

struct ComparedColony {
    QString key = {}; // the colony's id; what a touched row tells
    QString label = {};
    std::optional<ComparedLoad> load = {}; // nothing: not washed

    friend bool operator==(const ComparedColony&, const ComparedColony&) = default;
};

/// Colonies in any order; those with one load, and those without, keep the order in which they come. A line
/// of 0 or less is none.
struct YardComparison {
    std::vector<ComparedColony> colonies = {};
    double treatLine = 0;
    std::optional<double> ownLine = {};

    friend bool operator==(const YardComparison&, const YardComparison&) = default;
};

inline constexpr int freshDays = 30; // [convention] a wash a month is usual

/// As wide as the sheet, as high as its rows need: the drawing's size says how high (the sheet's own height
/// does not matter).
[[nodiscard]] Drawing drawYardComparison(const YardComparison& yard, const Sheet& sheet);
[[nodiscard]] Legend legendOf(const YardComparison& yard);
/// The picture in a few sentences, and each of its rows in one or more, in the order in which they are drawn.
[[nodiscard]] QString sentenceOf(const YardComparison& yard);
[[nodiscard]] QStringList rowsInWords(const YardComparison& yard);

} // namespace halfcup::pictures
