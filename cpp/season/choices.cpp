// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/choices.h"

#include "season/choice_rules.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace halfcup::season {

namespace {

using records::Date;

constexpr double mostBees = 200'000; // more than any colony holds [convention]

void append(std::vector<Reason>& all, std::vector<Reason> more) {
    std::ranges::move(more, std::back_inserter(all));
}

void conclude(Choice& choice) {
    std::ranges::stable_sort(choice.reasons, std::ranges::greater{}, &Reason::verdict);
    choice.verdict = choice.reasons.front().verdict;
}

Choice choiceOf(const handbook::Substance& substance, const Situation& situation,
                const handbook::Handbook& handbook) {
    Choice choice;
    choice.kind = ChoiceKind::Substance;
    choice.id = substance.id;
    choice.name = substance.name;
    choice.rotationGroup = substance.rotationGroup();
    choice.courseDaysShortest = static_cast<int>(std::max(1.0, substance.courseDaysLow.value_or(1)));
    choice.courseDaysLongest = static_cast<int>(substance.courseDaysHigh.value_or(choice.courseDaysShortest));
    choice.endsBy = records::plusDays(situation.from, choice.courseDaysShortest - 1);
    choice.hazard = substance.hazard;
    append(choice.reasons, weatherReasons(substance, situation, handbook));
    append(choice.reasons, hiveReasons(substance, situation, handbook));
    append(choice.reasons, rotationReasons(substance, situation, handbook));
    append(choice.reasons, timeReasons(substance, situation, handbook));
    conclude(choice);
    choice.reasons.push_back(labelReason());
    return choice;
}

Choice choiceOf(const handbook::Measure& measure, const Situation& situation,
                const handbook::Handbook& handbook) {
    Choice choice;
    choice.kind = ChoiceKind::Measure;
    choice.id = measure.id;
    choice.name = measure.name;
    choice.hazard = handbook.at("measure-stings").words;
    choice.reasons = measureReasons(measure, situation);
    conclude(choice);
    return choice;
}

bool isOneOf(double temperature) {
    return temperature >= lowestForecastC && temperature <= highestForecastC; // false for no number
}

} // namespace

Reason by(Verdict verdict, const handbook::Substance& substance, const char* property, Phrase phrase) {
    return {verdict, std::move(phrase), substance.id + "/" + property, {}};
}

Reason ours(Verdict verdict, Phrase phrase) {
    return {verdict, std::move(phrase), {}, "own choice"};
}

Reason labelReason() {
    return {
        Verdict::Fits,
        {phraseText(
            "The label in your hand and your local law outrank this. Check that the product is registered "
            "where you are: this program does not know.")},
        {},
        "own choice"};
}

std::vector<Phrase> problemsOf(const Situation& situation) {
    std::vector<Phrase> problems;
    const auto impossible = [](const PastTreatment& past) {
        return !isValid(past.firstDay) || !isValid(past.end);
    };
    if (!isValid(situation.from) || (situation.turnDate && !isValid(*situation.turnDate)) ||
        std::ranges::any_of(situation.past, impossible))
        problems.push_back({phraseText("There is no such day.")});
    const std::size_t days = situation.dailyHighsC.size();
    if (days > 0 && days < shortestForecast)
        problems.push_back(
            {phraseText("A forecast wants at least %1."), {Days{static_cast<int>(shortestForecast)}}});
    if (days > longestForecast)
        problems.push_back({phraseText("A forecast of more than %1 is no forecast."),
                            {Days{static_cast<int>(longestForecast)}}});
    if (!situation.dailyLowsC.empty() && situation.dailyLowsC.size() != days)
        problems.push_back(
            {phraseText("There are %1 highs and %2 lows: one of each a day is wanted."),
             {Number{static_cast<double>(days)}, Number{static_cast<double>(situation.dailyLowsC.size())}}});
    for (const std::vector<double>* list : {&situation.dailyHighsC, &situation.dailyLowsC})
        for (const double temperature : *list)
            if (!isOneOf(temperature)) {
                problems.push_back(
                    {phraseText("%1 is no temperature of a day with bees: %2 to %3."),
                     {Celsius{temperature}, Celsius{lowestForecastC}, Celsius{highestForecastC}}});
                break;
            }
    for (std::size_t i = 0; i < std::min(days, situation.dailyLowsC.size()); ++i)
        if (situation.dailyLowsC[i] > situation.dailyHighsC[i]) {
            problems.push_back({phraseText("The low of a day lies above its high: %1 over %2."),
                                {Celsius{situation.dailyLowsC[i]}, Celsius{situation.dailyHighsC[i]}}});
            break;
        }
    if (situation.adultBees && !(*situation.adultBees >= 0 && *situation.adultBees <= mostBees))
        problems.push_back({phraseText("No colony has that many bees.")});
    if (situation.turnDate && isValid(situation.from) && *situation.turnDate < situation.from)
        problems.push_back({phraseText("The turn date lies before the day asked for.")});
    for (const PastTreatment& past : situation.past)
        if (past.end < past.firstDay) {
            problems.push_back({phraseText("A treatment that is written down ends before it begins.")});
            break;
        }
    return problems;
}

std::vector<Choice> choices(const Situation& situation, const handbook::Handbook& handbook) {
    const auto problems = problemsOf(situation);
    if (!problems.empty())
        throw std::invalid_argument(inEnglish(problems.front()));
    const auto all = handbook::substances(handbook);
    std::vector<Choice> list;
    for (const handbook::Substance& substance : all)
        list.push_back(choiceOf(substance, situation, handbook));
    for (const handbook::Measure& measure : handbook::measures(handbook))
        list.push_back(choiceOf(measure, situation, handbook));
    const LastGiven last = lastGiven(situation, all);
    const std::string lastGroup = last.substance ? last.substance->rotationGroup() : std::string();
    const auto rank = [&](const Choice& choice) {
        const bool same = !lastGroup.empty() && choice.rotationGroup == lastGroup;
        const bool late = situation.turnDate && choice.endsBy && *choice.endsBy > *situation.turnDate;
        return std::tuple(choice.verdict, choice.kind, same, late);
    };
    std::ranges::stable_sort(list, {}, rank);
    return list;
}

double beesOnFrames(double frames, const handbook::Handbook& handbook) {
    return frames * handbook.figureAt("bees-deep-frame");
}

} // namespace halfcup::season
