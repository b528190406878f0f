// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/growth.h"
#include "records/moment.h"
#include "records/sample.h"
#include "season/phrase.h"

#include <optional>
#include <span>
#include <vector>

/// How fast one colony's load grows, by its own washes since mites were last taken out, and when it will be
/// over a line: mites/growth.h on records.
namespace halfcup::season {

/// The load on a day from the last wash on, if nothing is done.
struct LoadOnDay {
    records::Date day;
    mites::LoadEstimate load;
};

struct GrowthOutlook {
    int washes = 0;
    records::Date lastWash;
    bool measured = false; // more than one wash: else growth is assumed
    bool allZero = false;  // none found in any of them: only upper ends say something
    double growthMean = 0; // of ln(load), a day
    double growthSd = 0;
    mites::LoadEstimate now;   // on the day of the last wash, mites per 100 bees as washed
    mites::LoadEstimate ahead; // 30 days later
    double chanceNow = 0;      // of being over the line on the day of the last wash
    double chance14 = 0, chance30 = 0, chance60 = 0; // of being over it at some time until then
    double crossQ10 = 0, crossQ50 = 0, crossQ90 = 0; // days from the last wash; infinity: never
    std::vector<LoadOnDay> course; // from the last wash to growthOutlookDays after it, where it was asked for
};

/// The spread that all scoops of one hand share; growth cancels it, the level does not.
[[nodiscard]] mites::GrowthModel growthModelOf(std::span<const records::Sample> washes);

/// From the finished washes scooped after `since` (the end of the last treatment, or the day on which bees
/// were taken out or put in; nothing: all). Washes by another method than the newest are left out: their
/// recoveries differ; and those of more than growthSeriesDays before it. Nothing without a wash. line: above
/// 0, mites per 100 bees. courseStepDays: the course is wanted, every so many days and on its last one; 0:
/// not.
[[nodiscard]] std::optional<GrowthOutlook> growthOutlook(std::span<const records::Sample> washes,
                                                         const std::optional<records::Date>& since,
                                                         double line, const mites::GrowthModel& model,
                                                         int courseStepDays = 0);

/// How far back growth is read: one rate cannot hold through a brood season and the winter before it [own
/// choice]. It also bounds the time this takes.
inline constexpr int growthSeriesDays = 183;

/// Older than this the last wash is no start for an outlook: beyond it the method itself calls its figures
/// weak.
inline constexpr int growthOutlookDays = static_cast<int>(mites::kOutlookDays);

/// One or two sentences; today decides whether the crossing lies ahead.
[[nodiscard]] Phrase phraseOf(const GrowthOutlook& outlook, double line, const records::Date& today);

} // namespace halfcup::season
