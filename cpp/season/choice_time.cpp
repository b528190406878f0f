// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/choice_rules.h"

#include <algorithm>
#include <tuple>

namespace halfcup::season {

namespace {

// Farther ahead than this the turn date is next season's business [own choice].
constexpr int turnDateMattersDays = 150;

} // namespace

LastGiven lastGiven(const Situation& situation, const std::vector<handbook::Substance>& all) {
    LastGiven last;
    for (const PastTreatment& past : situation.past) {
        const auto substance = std::ranges::find(all, past.substance, &handbook::Substance::id);
        if (substance == all.end() || past.firstDay > situation.from)
            continue; // a measure, or from a newer version, or only planned
        if (!last.treatment ||
            std::tie(last.treatment->end, last.treatment->firstDay) < std::tie(past.end, past.firstDay))
            last = {&past, &*substance};
    }
    return last;
}

std::vector<Reason> rotationReasons(const handbook::Substance& substance, const Situation& situation,
                                    const handbook::Handbook& handbook) {
    std::vector<Reason> reasons;
    const auto all = handbook::substances(handbook);
    const LastGiven last = lastGiven(situation, all);
    const auto rotation = [](Verdict verdict, Phrase phrase) {
        return Reason{verdict, std::move(phrase), "rotation", {}};
    };
    if (last.substance && last.substance->rotationGroup() == substance.rotationGroup())
        reasons.push_back(substance.modeOfAction.empty()
                              ? rotation(Verdict::WithCare,
                                         {phraseText("Same substance as last time (%1; no class number)."),
                                          {Words{substance.active}}})
                              : rotation(Verdict::WithCare,
                                         {phraseText("Same class as last time (%1, %2)."),
                                          {Words{substance.modeOfAction}, Words{last.substance->active}}}));
    else if (last.substance)
        reasons.push_back(rotation(Verdict::Fits, {phraseText("Another class than last time, which was %1."),
                                                   {Words{last.substance->active}}}));
    if (!substance.resistance.empty())
        reasons.push_back(by(substance.resistanceWeighs ? Verdict::WithCare : Verdict::Fits, substance,
                             "resistance",
                             {phraseText("Mites that resist it: %1"), {Words{substance.resistance}}}));
    return reasons;
}

std::vector<Reason> timeReasons(const handbook::Substance& substance, const Situation& situation,
                                const handbook::Handbook& handbook) {
    std::vector<Reason> reasons;
    const auto all = handbook::substances(handbook);
    const int course = static_cast<int>(std::max(1.0, substance.courseDaysLow.value_or(1)));
    const records::Date end = records::plusDays(situation.from, course - 1);
    for (const PastTreatment& past : situation.past) {
        if (past.firstDay > end || past.end < situation.from)
            continue; // over, or begins after even the shortest course
        const auto running = std::ranges::find(all, past.substance, &handbook::Substance::id);
        if (running == all.end())
            continue;
        if (past.firstDay > situation.from)
            reasons.push_back(
                ours(running->active == substance.active ? Verdict::NotNow : Verdict::WithCare,
                     {phraseText("A course of %1 that is written down begins on %2, while this one runs."),
                      {Words{running->active}, past.firstDay}}));
        else if (running->active == substance.active)
            reasons.push_back(
                ours(Verdict::NotNow, {phraseText("A course of it runs until %1."), {past.end}}));
        else
            reasons.push_back(ours(Verdict::WithCare, {phraseText("A course of %1 runs until %2."),
                                                       {Words{running->active}, past.end}}));
    }
    if (!situation.turnDate ||
        records::daysBetween(situation.from, *situation.turnDate) > turnDateMattersDays)
        return reasons;
    const int late = records::daysBetween(*situation.turnDate, end);
    if (late > 0)
        reasons.push_back(by(Verdict::WithCare, substance, "course",
                             {phraseText("Even its shortest course ends %1 after the turn date, %2."),
                              {Days{late}, *situation.turnDate}}));
    else
        reasons.push_back(
            by(Verdict::Fits, substance, "course",
               {phraseText("Its shortest course ends on %1, in time for the turn date."), {end}}));
    return reasons;
}

} // namespace halfcup::season
