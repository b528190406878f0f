// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"
#include "records/sample.h"

#include <QString>

namespace halfcup::pictures {

/// The comb of a hundred: a load as cells. A full cell is a mite per 100 bees that is there at the least, a
/// cell with a small core one that perhaps is. Shape alone tells them apart; the fill only repeats it.
struct Comb {
    int atLeast = 0;        // full cells, 0 to 100
    int perhaps = 0;        // cells with a core after those; both together at most 100
    bool overflows = false; // the range goes past a hundred: the last cell gets a plus

    friend bool operator==(const Comb&, const Comb&) = default;
};

/// Of a load between low and high, mites per 100 bees: whole mites below the low end are there at the least,
/// those begun below the high end perhaps. What is no number or below zero counts as 0, and a high end below
/// the low one as the low one; infinity fills the comb.
[[nodiscard]] Comb combOf(double low, double high);
/// Of the 90 % range of an answer. Where no mite was found none is sure to be there.
[[nodiscard]] Comb combOf(const records::Answer& answer);

/// The largest comb that fits into the sheet, from its upper left corner; a sheet without a height gives as
/// much as its width needs. The drawing's size is that of the comb. No words: those are in the legend.
[[nodiscard]] Drawing drawComb(const Comb& comb, const Sheet& sheet);
/// One cell as large as fits into the size: full or with a core.
[[nodiscard]] Drawing drawCombCell(bool full, QSizeF size);
/// Only what this comb shows; a comb without any mite still says what a full cell would be.
[[nodiscard]] Legend legendOf(const Comb& comb);
/// "Comb of a hundred cells: 4 filled, 3 more half filled."
[[nodiscard]] QString sentenceOf(const Comb& comb);

/// What the cells mean, in the language of the application: "at least", "perhaps", "and more than the comb
/// holds" (the plus).
enum class CombPart { Full, Core, Plus };
[[nodiscard]] QString meaningOf(CombPart part);

} // namespace halfcup::pictures
