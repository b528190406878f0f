// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/choice_rules.h"

namespace halfcup::season {

namespace {

// Winter bees are raised from about three weeks before the turn date to two months after it [own choice].
constexpr int winterBeesBeforeDays = 21;
constexpr int winterBeesAfterDays = 60;

bool raisesWinterBees(const Situation& situation) {
    if (!situation.turnDate)
        return false;
    const int ahead = records::daysBetween(situation.from, *situation.turnDate);
    return ahead <= winterBeesBeforeDays || ahead >= 365 - winterBeesAfterDays;
}

Reason of(Verdict verdict, const handbook::Measure& measure, const char* property, Phrase phrase) {
    return {verdict, std::move(phrase), measure.id + "/" + property, {}};
}

Reason fit(const handbook::Measure& measure, const Situation& situation) {
    if (measure.id == "drone-brood-removal")
        return situation.droneSeason
                   ? of(Verdict::Fits, measure, "needs", {phraseText("Drones are being raised now.")})
                   : of(Verdict::NotNow, measure, "needs", {phraseText("No drones are raised now.")});
    if (measure.id == "brood-break") {
        if (situation.brood == records::Brood::None)
            return of(Verdict::NotNow, measure, "does", {phraseText("There is no brood already.")});
        if (raisesWinterBees(situation))
            return of(Verdict::WithCare, measure, "caution",
                      {phraseText("Winter bees are raised now: they would be missing.")});
        return situation.brood == records::Brood::NotKnown
                   ? of(Verdict::WithCare, measure, "does",
                        {phraseText("Whether there is brood now is not known.")})
                   : of(Verdict::Fits, measure, "does",
                        {phraseText("All mites come onto the bees, where a treatment reaches them.")});
    }
    if (measure.id == "screened-floor") {
        if (situation.floor == records::Floor::Screened)
            return of(Verdict::NotNow, measure, "does", {phraseText("It has a screened floor already.")});
        return situation.floor == records::Floor::Solid
                   ? of(Verdict::Fits, measure, "does", {phraseText("The floor is solid.")})
                   : of(Verdict::WithCare, measure, "does",
                        {phraseText("Which floor it has is not written down.")});
    }
    return of(Verdict::Fits, measure, "does", {phraseText("Helps later generations, not this one.")});
}

} // namespace

std::vector<Reason> measureReasons(const handbook::Measure& measure, const Situation& situation) {
    std::vector<Reason> reasons{fit(measure, situation)};
    if (!measure.caution.empty())
        reasons.push_back(of(Verdict::Fits, measure, "caution", {"%1", {Words{measure.caution}}}));
    reasons.push_back(
        {Verdict::Fits,
         {phraseText("By itself it seldom brings a load that is over the line under it again.")},
         "measure-strength",
         {}});
    return reasons;
}

} // namespace halfcup::season
