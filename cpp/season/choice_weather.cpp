// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/choice_rules.h"

#include <algorithm>
#include <optional>

namespace halfcup::season {

namespace {

struct Day {
    records::Date date;
    double highC;
};

/// The first day whose high is outside the limits, among the days [from, to) of the forecast.
std::optional<Day> firstOutside(const Situation& situation, std::size_t from, std::size_t to,
                                const std::optional<double>& low, const std::optional<double>& high) {
    for (std::size_t i = from; i < std::min(to, situation.dailyHighsC.size()); ++i) {
        const double highC = situation.dailyHighsC[i];
        if ((low && highC < *low) || (high && highC > *high))
            return Day{records::plusDays(situation.from, static_cast<int>(i)), highC};
    }
    return std::nullopt;
}

Phrase limitsOf(const handbook::Substance& substance) {
    if (substance.dailyHighLowC && substance.dailyHighHighC)
        return {phraseText("Wants daily highs from %1 to %2; there is no forecast to go by."),
                {Celsius{*substance.dailyHighLowC}, Celsius{*substance.dailyHighHighC}}};
    if (substance.dailyHighLowC)
        return {phraseText("Wants daily highs over %1; there is no forecast to go by."),
                {Celsius{*substance.dailyHighLowC}}};
    return {phraseText("Wants daily highs under %1; there is no forecast to go by."),
            {Celsius{*substance.dailyHighHighC}}};
}

Phrase outside(const handbook::Substance& substance, const Day& day) {
    if (substance.dailyHighHighC && day.highC > *substance.dailyHighHighC)
        return {phraseText("Too hot: %1 on %2, the limit is %3."),
                {Celsius{day.highC}, day.date, Celsius{*substance.dailyHighHighC}}};
    return {phraseText("Too cold: %1 on %2, the limit is %3."),
            {Celsius{day.highC}, day.date, Celsius{*substance.dailyHighLowC}}};
}

/// A day outside the limits after those that decide above all.
Phrase later(const handbook::Substance& substance, const Day& day, int decisiveDays) {
    const bool hot = substance.dailyHighHighC && day.highC > *substance.dailyHighHighC;
    return {hot ? phraseText("The first %1 fit; later too hot: %2 on %3, the limit is %4.")
                : phraseText("The first %1 fit; later too cold: %2 on %3, the limit is %4."),
            {Days{decisiveDays}, Celsius{day.highC}, day.date,
             Celsius{hot ? *substance.dailyHighHighC : *substance.dailyHighLowC}}};
}

} // namespace

std::vector<Reason> weatherReasons(const handbook::Substance& substance, const Situation& situation,
                                   const handbook::Handbook& handbook) {
    const handbook::Entry* entry = handbook.find(substance.id, "daily-high");
    if (!entry)
        return {};
    if (!substance.dailyHighLowC && !substance.dailyHighHighC)
        return {
            by(Verdict::Fits, substance, "daily-high", {phraseText("Weather: %1."), {Words{entry->words}}})};
    if (situation.dailyHighsC.empty())
        return {by(Verdict::WithCare, substance, "daily-high", limitsOf(substance))};

    // The days that decide: those the label watches, or all there are within the shortest course.
    const auto course = static_cast<std::size_t>(std::max(1.0, substance.courseDaysLow.value_or(1)));
    const std::size_t decisive =
        substance.watchDays ? static_cast<std::size_t>(*substance.watchDays) : course;
    std::vector<Reason> reasons;
    if (const auto day =
            firstOutside(situation, 0, decisive, substance.dailyHighLowC, substance.dailyHighHighC)) {
        reasons.push_back(by(Verdict::NotNow, substance, "daily-high", outside(substance, *day)));
        return reasons;
    }
    if (const auto day =
            firstOutside(situation, decisive, course, substance.dailyHighLowC, substance.dailyHighHighC)) {
        reasons.push_back(by(Verdict::WithCare, substance, "daily-high",
                             later(substance, *day, static_cast<int>(decisive))));
        return reasons;
    }
    if (substance.watchDays && situation.dailyHighsC.size() < decisive)
        reasons.push_back(
            by(Verdict::WithCare, substance, "watch-days",
               {phraseText("The first %1 have to be within its limits; the forecast has %2."),
                {Days{static_cast<int>(decisive)}, Days{static_cast<int>(situation.dailyHighsC.size())}}}));
    if (const auto day =
            firstOutside(situation, 0, decisive, substance.bestHighLowC, substance.bestHighHighC))
        reasons.push_back(by(Verdict::WithCare, substance, "best-high",
                             {phraseText("Works best from %1 to %2; %3 on %4."),
                              {Celsius{*substance.bestHighLowC}, Celsius{*substance.bestHighHighC},
                               Celsius{day->highC}, day->date}}));
    if (reasons.empty())
        reasons.push_back(by(Verdict::Fits, substance, "daily-high",
                             {phraseText("The forecast highs are within its limits.")}));
    return reasons;
}

} // namespace halfcup::season
