// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/growth_outlook.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace halfcup::season {

namespace {

using records::Date;
using records::Sample;

constexpr double likelierThanNot = 0.5;

Date washedOn(const Sample& sample) {
    return records::localDate({sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes});
}

bool counts(const Sample& sample, const std::optional<Date>& since) {
    return sample.state == records::SampleState::Finished && !sample.removed && sample.answer &&
           sample.scoop.beesMean > 0 && (!since || washedOn(sample) > *since);
}

double rounded(double growth) {
    return std::round(growth * 1000) / 1000; // to a tenth of a per cent a day
}

/// The washes that growth is read from, in order.
struct Series {
    std::vector<mites::DatedWash> washes;
    Date last;
};

std::optional<Series> seriesOf(std::span<const Sample> washes, const std::optional<Date>& since) {
    std::vector<const Sample*> series;
    for (const Sample& sample : washes)
        if (counts(sample, since))
            series.push_back(&sample);
    if (series.empty())
        return std::nullopt;
    std::ranges::stable_sort(series, {}, [](const Sample* sample) { return washedOn(*sample); });
    std::erase_if(series, [last = series.back()](const Sample* sample) {
        return sample->method != last->method ||
               records::daysBetween(washedOn(*sample), washedOn(*last)) > growthSeriesDays;
    });

    Series found{{}, washedOn(*series.back())};
    for (const Sample* sample : series) {
        mites::DatedWash wash;
        wash.day = static_cast<double>(records::daysBetween(washedOn(*series.front()), washedOn(*sample)));
        wash.mites = sample->answer->mites;
        wash.beesMean = sample->scoop.beesMean;
        wash.beesOwnCv = std::min(sample->scoop.beesCv, mites::kScoopOwnCv);
        wash.recovery = sample->answer->recovery;
        found.washes.push_back(wash);
    }
    return found;
}

std::vector<LoadOnDay> courseOf(const mites::GrowthPosterior& growth, const Date& last, int stepDays) {
    std::vector<LoadOnDay> course;
    const auto add = [&](int day) {
        course.push_back({records::plusDays(last, day), growth.load(growth.lastDay() + day)});
    };
    for (int day = 0; day < growthOutlookDays; day += stepDays)
        add(day);
    add(growthOutlookDays);
    return course;
}

} // namespace

mites::GrowthModel growthModelOf(std::span<const Sample> washes) {
    mites::GrowthModel model;
    for (const Sample& sample : washes) { // counted bee by bee: no hand shares an error
        const double own = std::min(sample.scoop.beesCv, mites::kScoopOwnCv);
        const double shared = sample.scoop.beesCv * sample.scoop.beesCv - own * own;
        model.sharedLogSd = std::max(model.sharedLogSd, std::sqrt(std::max(0.0, shared)));
    }
    return model;
}

std::optional<GrowthOutlook> growthOutlook(std::span<const Sample> washes, const std::optional<Date>& since,
                                           double line, const mites::GrowthModel& model, int courseStepDays) {
    const auto series = seriesOf(washes, since);
    if (!series)
        return std::nullopt;
    const mites::GrowthPosterior growth(series->washes, model);
    const double last = growth.lastDay();
    GrowthOutlook outlook;
    outlook.washes = static_cast<int>(series->washes.size());
    outlook.lastWash = series->last;
    outlook.measured = growth.measured();
    outlook.allZero = growth.allZero();
    outlook.growthMean = growth.growthMean();
    outlook.growthSd = growth.growthSd();
    outlook.now = growth.load(last);
    outlook.ahead = growth.load(last + 30);
    outlook.chanceNow = growth.chanceOver(last, line);
    outlook.chance14 = growth.chanceCrossed(line, last + 14);
    outlook.chance30 = growth.chanceCrossed(line, last + 30);
    outlook.chance60 = growth.chanceCrossed(line, last + 60);
    outlook.crossQ10 = growth.crossingQuantile(line, 0.1);
    outlook.crossQ50 = growth.crossingQuantile(line, 0.5);
    outlook.crossQ90 = growth.crossingQuantile(line, 0.9);
    if (courseStepDays > 0)
        outlook.course = courseOf(growth, series->last, courseStepDays);
    return outlook;
}

Phrase phraseOf(const GrowthOutlook& outlook, double line, const Date& today) {
    const Load at{line};
    if (outlook.allZero)
        return {
            phraseText("None found since: at most %1 on %2, and over %3 within 30 days with a chance of %4."),
            {Load{outlook.now.q95}, outlook.lastWash, at, Share{rounded(outlook.chance30)}}};
    if (outlook.chanceNow >= likelierThanNot)
        return {outlook.measured
                    ? phraseText("Grows about %1 a day. Over %2 already, with a chance of %3.")
                    : phraseText("Growth is assumed, about %1 a day. Over %2 already, with a chance of %3."),
                {Share{rounded(outlook.growthMean)}, at, Share{rounded(outlook.chanceNow)}}};
    const bool crosses = std::isfinite(outlook.crossQ50) && outlook.crossQ50 <= growthOutlookDays;
    const Date on = crosses ? records::plusDays(outlook.lastWash, std::llround(outlook.crossQ50)) : Date{};
    if (crosses && on > today)
        return {
            outlook.measured
                ? phraseText(
                      "Grows about %1 a day. Likelier than not over %2 from about %3 on, if nothing is done.")
                : phraseText(
                      "Growth is assumed, about %1 a day. Likelier than not over %2 from about %3 on, if "
                      "nothing is done."),
            {Share{rounded(outlook.growthMean)}, at, on}};
    return {
        outlook.measured
            ? phraseText("Grows about %1 a day. Over %2 within 60 days of the last wash with a chance of %3.")
            : phraseText(
                  "Growth is assumed, about %1 a day. Over %2 within 60 days of the last wash with a chance "
                  "of %3."),
        {Share{rounded(outlook.growthMean)}, at, Share{std::round(outlook.chance60 * 100) / 100}}};
}

} // namespace halfcup::season
