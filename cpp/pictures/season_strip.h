// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"
#include "pictures/type.h"
#include "records/moment.h"

#include <optional>
#include <vector>

/// A bee year as a strip of twelve months: a row each for supers, brood, washes and treatments, the turn date
/// and today upright through all of them.
namespace halfcup::pictures {

/// Whole local days, both ends within. One that ends before it begins is left out.
struct DaySpan {
    records::Date from, to;
    friend bool operator==(const DaySpan&, const DaySpan&) = default;
};

/// What lies outside the twelve months is left out or cut at the edge; days that do not exist are left out.
struct SeasonStrip {
    records::Date first;                       // the first of a month; twelve months from there
    std::optional<records::Date> today = {};   // nothing: not marked, as in a report
    std::vector<DaySpan> flow = {};            // supers on
    std::vector<DaySpan> capped = {};          // with capped brood, as recorded
    std::vector<DaySpan> uncapped = {};        // without, as recorded; what is in neither is not known
    std::vector<records::Date> turnDates = {}; // one for each that differs between yards
    std::vector<records::Date> washed = {};    // done
    std::vector<records::Date> due = {};       // washes due
    std::vector<DaySpan> treatments = {};      // in any order

    friend bool operator==(const SeasonStrip&, const SeasonStrip&) = default;
};

/// Treatments side by side; what is more shares the last lane.
inline constexpr int mostTreatmentLanes = 3;

/// As wide as the sheet, as high as its rows and letters need: the drawing's size says how high (the sheet's
/// own height does not matter). Rows with nothing to show are left out.
[[nodiscard]] Drawing drawSeasonStrip(const SeasonStrip& strip, const Sheet& sheet);
/// Only what this strip shows.
[[nodiscard]] Legend legendOf(const SeasonStrip& strip);
/// The strip in a few sentences.
[[nodiscard]] QString sentenceOf(const SeasonStrip& strip);

} // namespace halfcup::pictures
