// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/what_if.h"

#include "season/turn_date.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace halfcup::season {

namespace {

using records::Date;
using records::daysBetween;

constexpr int daysWithoutTurnDate = 120; // how far to look where bees have no winter [own choice]
constexpr double mostLoad = 100000;      // beyond this nothing on bees makes sense; the model overflows later

int dayOfYear(const Date& date) {
    return daysBetween(Date{date.year, 1, 1}, date) + 1;
}

struct Course {
    ModelledTreatment treatment;
    Date firstDay;
    int days = 1;
};

void check(const WhatIf& question) {
    const StartingLoad& start = question.start;
    if (!isValid(start.day) || !isValid(question.from))
        throw std::invalid_argument("There is no such day.");
    const int age = daysBetween(start.day, question.from);
    if (age < 0)
        throw std::invalid_argument("The wash lies after today: nothing can be foretold from it.");
    if (age > oldestStartDays)
        throw std::invalid_argument(
            "The last wash is too long ago to foretell anything from it: wash again.");
    if (question.startsInDays < 0 || question.startsInDays > longestWait)
        throw std::invalid_argument("A start has to lie between today and 120 days ahead.");
    if (!(start.washedQ05 >= 0) || !(start.washedQ50 >= start.washedQ05) ||
        !(start.washedQ95 >= start.washedQ50) || !(start.washedQ95 <= mostLoad))
        throw std::invalid_argument("The load of the last wash makes no sense.");
    if (question.turnDate && *question.turnDate < question.from)
        throw std::invalid_argument("The turn date lies before today.");
}

Date horizonOf(const WhatIf& question) {
    return question.turnDate ? midAutumnAfter(*question.turnDate)
                             : records::plusDays(question.from, daysWithoutTurnDate);
}

// One run: the lower end grows slowest and loses most, the upper end the other way round.
std::vector<mites::SeasonDay> run(const WhatIf& question, const std::vector<Course>& courses, double load,
                                  mites::GrowthBand band) {
    mites::SeasonRun season;
    season.startDay = dayOfYear(question.start.day);
    season.load = load;
    season.days = daysBetween(question.start.day, horizonOf(question));
    season.band = band;
    season.course.shiftDays = question.southern ? mites::kSouthernShiftDays : 0;
    for (const Course& course : courses) {
        const ModelledTreatment& treatment = course.treatment;
        const double efficacy = band == mites::GrowthBand::Low    ? treatment.efficacyHigh
                                : band == mites::GrowthBand::High ? treatment.efficacyLow
                                                                  : treatment.efficacyMiddle;
        season.treatments.push_back({treatment.reach, efficacy,
                                     season.startDay + daysBetween(question.start.day, course.firstDay),
                                     course.days});
    }
    return mites::runSeason(season);
}

Outlook outlook(const WhatIf& question, const std::vector<Course>& courses) {
    const auto low = run(question, courses, question.start.washedQ05, mites::GrowthBand::Low);
    const auto middle = run(question, courses, question.start.washedQ50, mites::GrowthBand::Base);
    const auto high = run(question, courses, question.start.washedQ95, mites::GrowthBand::High);
    Outlook result;
    for (std::size_t i = 0; i < middle.size(); ++i) {
        OutlookDay day;
        day.day = records::plusDays(question.start.day, static_cast<int>(i));
        day.load = {low[i].load, middle[i].load, high[i].load};
        day.likelyFailing = middle[i].load > mites::kLoadLikelyFailing;
        if (question.turnDate && day.day == *question.turnDate)
            result.atTurnDate = day;
        if (question.turnDate && day.day == midAutumnAfter(*question.turnDate))
            result.atMidAutumn = day;
        result.days.push_back(day);
    }
    return result;
}

// What was given since the wash. Without a figure for what it kills it is left out, and that is said.
std::vector<Course> coursesSince(const WhatIf& question, const handbook::Handbook& handbook,
                                 std::vector<Phrase>& notes) {
    std::vector<Course> courses;
    for (const PastTreatment& past : question.since) {
        if (past.firstDay < question.start.day)
            continue; // the wash has seen what it did
        const auto treatment = modelled(past.substance, handbook);
        if (!treatment) {
            notes.push_back(
                {phraseText("What was given on %1 is not counted in: the handbook has no figure for "
                            "what it kills."),
                 {past.firstDay}});
            continue;
        }
        courses.push_back({*treatment, past.firstDay, std::max(1, daysBetween(past.firstDay, past.end) + 1)});
    }
    return courses;
}

} // namespace

std::optional<ModelledTreatment> modelled(const std::string& substanceId,
                                          const handbook::Handbook& handbook) {
    for (const handbook::Substance& substance : handbook::substances(handbook)) {
        if (substance.id != substanceId || !substance.efficacyLow || !substance.efficacyHigh)
            continue;
        ModelledTreatment treatment;
        treatment.efficacyLow = *substance.efficacyLow;
        treatment.efficacyHigh = *substance.efficacyHigh;
        treatment.efficacyMiddle = (treatment.efficacyLow + treatment.efficacyHigh) / 2;
        const double shortest = substance.courseDaysLow.value_or(1);
        const double longest = substance.courseDaysHigh.value_or(shortest);
        treatment.days = std::max(1, static_cast<int>(std::lround((shortest + longest) / 2)));
        const bool sparesBrood =
            substance.underCappings == handbook::UnderCappings::No && treatment.days == 1;
        treatment.reach = sparesBrood ? mites::TreatmentReach::OnBees : mites::TreatmentReach::Whole;
        return treatment;
    }
    return std::nullopt;
}

Outlook outlookOfNothing(const WhatIf& question, const handbook::Handbook& handbook) {
    check(question);
    std::vector<Phrase> notes;
    const auto courses = coursesSince(question, handbook, notes);
    Outlook result = outlook(question, courses);
    result.begins = question.from;
    result.notes = std::move(notes);
    return result;
}

std::optional<Outlook> outlookWith(const Choice& choice, const WhatIf& question,
                                   const handbook::Handbook& handbook) {
    check(question);
    const auto treatment =
        choice.kind == ChoiceKind::Substance ? modelled(choice.id, handbook) : std::nullopt;
    if (!treatment)
        return std::nullopt;
    std::vector<Phrase> notes;
    auto courses = coursesSince(question, handbook, notes);
    const Date begins = records::plusDays(question.from, question.startsInDays);
    courses.push_back({*treatment, begins, treatment->days});
    Outlook result = outlook(question, courses);
    result.choiceId = choice.id;
    result.begins = begins;
    result.notes = std::move(notes);
    return result;
}

Phrase whyNoOutlook(const Choice& choice) {
    if (choice.kind == ChoiceKind::Measure)
        return {phraseText("No outlook: no published figure says how many mites this takes away.")};
    return {phraseText("No outlook: the handbook has no figure for what %1 kills."), {Words{choice.name}}};
}

Phrase sentenceOf(const Outlook& outlook) {
    if (!outlook.atTurnDate || !outlook.atMidAutumn) {
        if (outlook.days.empty())
            return {phraseText("Nothing can be foretold.")};
        const OutlookDay& last = outlook.days.back();
        const std::vector<Argument> figures{Load{last.load.middle}, last.day,
                                            LoadSpan{last.load.low, last.load.high}};
        return {outlook.choiceId.empty() ? phraseText("If nothing is done: about %1 on %2 (%3).")
                                         : phraseText("With it: about %1 on %2 (%3)."),
                figures};
    }
    const OutlookDay& turn = *outlook.atTurnDate;
    const OutlookDay& autumn = *outlook.atMidAutumn;
    const std::vector<Argument> figures{
        Load{turn.load.middle},   turn.day,   LoadSpan{turn.load.low, turn.load.high},
        Load{autumn.load.middle}, autumn.day, LoadSpan{autumn.load.low, autumn.load.high}};
    const bool nothing = outlook.choiceId.empty();
    if (turn.likelyFailing)
        return {
            nothing
                ? phraseText("If nothing is done: over what colonies survive as a rule by the turn date, %2.")
                : phraseText("Even with it: over what colonies survive as a rule by the turn date, %2."),
            figures};
    if (autumn.likelyFailing)
        return {nothing ? phraseText("If nothing is done: about %1 on the turn date, %2 (%3), and over what "
                                     "colonies survive as a rule by %5.")
                        : phraseText(
                              "With it: about %1 on the turn date, %2 (%3), but over what colonies survive "
                              "as a rule by %5."),
                figures};
    return {nothing ? phraseText("If nothing is done: about %1 on the turn date, %2 (%3), and %4 on %5 (%6).")
                    : phraseText("With it: about %1 on the turn date, %2 (%3), and %4 on %5 (%6)."),
            figures};
}

} // namespace halfcup::season
