// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"
#include "pictures/type.h"
#include "records/colony_event.h"
#include "records/moment.h"

#include <optional>
#include <vector>

/// The load of one colony over time: what each wash found with its range, the lines of that time, treatments,
/// what else happened, and the load ahead.
namespace halfcup::pictures {

/// One finished wash. Loads in mites per 100 bees. A middle that is no load (negative, not a number) leaves
/// the wash out; ends that are none, or on the wrong side, are taken to be the middle.
struct LoadWash {
    QString key = {}; // the sample's id; what a touched point tells
    records::Date day;
    double low = 0; // 90 % range
    double middle = 0;
    double high = 0;
    bool noneFound = false;   // only the upper end says something
    bool otherMethod = false; // not held against lines as a wash is: a sugar roll, say

    friend bool operator==(const LoadWash&, const LoadWash&) = default;
};

/// The lines from that day on, until the next step. A line of 0 or less is none.
struct LineStep {
    records::Date from;
    double treat = 0;
    std::optional<double> own = {};

    friend bool operator==(const LineStep&, const LineStep&) = default;
};

/// A treatment, first to last day.
struct TreatedDays {
    records::Date first;
    records::Date last;
    QString name; // short: the substance

    friend bool operator==(const TreatedDays&, const TreatedDays&) = default;
};

/// What else happened. Brood, strength and floor have no mark.
struct Happening {
    records::Date day;
    records::EventKind kind = records::EventKind::SupersOn;

    friend bool operator==(const Happening&, const Happening&) = default;
};

/// The load on a day to come, if nothing is done, with its 90 % range.
struct LoadAhead {
    records::Date day;
    double low = 0;
    double middle = 0;
    double high = 0;

    friend bool operator==(const LoadAhead&, const LoadAhead&) = default;
};

/// All in any order, all days local and valid. What happened more than leadDays before the first wash is
/// left out.
struct LoadChart {
    std::vector<LoadWash> washes = {};
    std::vector<LineStep> lines = {};
    std::vector<TreatedDays> treated = {};
    std::vector<Happening> happenings = {};
    std::vector<LoadAhead> ahead = {};
    bool aheadUpperOnly = false; // after washes that found none: only the upper end says something
    std::optional<records::Date> today = {}; // nothing: not marked, and no room is kept until then

    friend bool operator==(const LoadChart&, const LoadChart&) = default;
};

inline constexpr int leadDays = 30; // [convention] shown before the first wash

/// As large as the sheet. chosen: the key of a wash that is stressed. Without a wash it says so in words.
[[nodiscard]] Drawing drawLoadChart(const LoadChart& chart, const Sheet& sheet, const QString& chosen = {});
/// What the marks in this chart mean, those that are not in it left out.
[[nodiscard]] Legend legendOf(const LoadChart& chart);
/// The chart in a few sentences.
[[nodiscard]] QString sentenceOf(const LoadChart& chart);

/// For lists, about 96 x 32 units: the washes of the last year, the last of them stressed, and the treat
/// line. No words, nothing to touch; empty without a wash.
[[nodiscard]] Drawing drawSmallLoads(const LoadChart& chart, QSizeF size);

} // namespace halfcup::pictures
