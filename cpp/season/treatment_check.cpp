// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/treatment_check.h"

#include "handbook/substance.h"
#include "mites/efficacy.h"

#include <algorithm>
#include <cmath>

namespace halfcup::season {

namespace {

using mites::BeforeAfter;
using records::Date;
using records::daysBetween;
using records::Sample;

constexpr std::int64_t fewestBefore =
    5;                                  // mites before, all colonies together; numbers as in mites/efficacy.h
constexpr double sureEnough = 0.5;      // chance of being over the mark: worked [own choice, as standings]
constexpr double hardlyLikely = 0.2;    // below: not reached [own choice, as standings]
constexpr double farBelow = 0.80;       // upper end below this: resistance is thought of [own choice]
constexpr double carriedInChance = 0.8; // that it came back faster than mites breed [own choice]
constexpr std::int64_t fewestCarriedIn = 5; // mites in the later wash
constexpr int carriedInDays = 120;          // how long after the end a later wash is looked at [own choice]

Date washedOn(const Sample& sample) {
    return records::localDate({sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes});
}

bool counts(const Sample& sample) {
    return sample.state == records::SampleState::Finished && !sample.removed && sample.answer &&
           sample.scoop.beesMean > 0;
}

/// The washes of one colony that bear on the treatment.
struct Washes {
    const Sample* before = nullptr;
    const Sample* after = nullptr;
    const Sample* later = nullptr; // the last one after `after`, while it can tell of mites carried in
};

Washes pick(const ColonyWashes& colony, const Date& firstDay, const Date& end) {
    Washes found;
    const auto earlier = [](const Sample* a, const Sample* b) { return !b || washedOn(*a) < washedOn(*b); };
    for (const Sample& sample : colony.washes) {
        if (!counts(sample))
            continue;
        const int beforeStart = daysBetween(washedOn(sample), firstDay);
        const int afterEnd = daysBetween(end, washedOn(sample));
        if (beforeStart >= 0 && beforeStart <= daysBefore &&
            (!found.before || earlier(found.before, &sample)))
            found.before = &sample;
        if (afterEnd >= daysAfterEnd && afterEnd <= lastDayAfter && earlier(&sample, found.after))
            found.after = &sample;
    }
    for (const Sample& sample : colony.washes)
        if (found.after && counts(sample) && washedOn(*found.after) < washedOn(sample) &&
            daysBetween(end, washedOn(sample)) <= carriedInDays &&
            (!found.later || earlier(found.later, &sample)))
            found.later = &sample;
    return found;
}

bool isHeld(const ColonyWashes& colony, const Washes& washes) {
    return washes.before && washes.after && (colony.treated || !colony.treatedOtherwise);
}

mites::Count countOf(const Sample& sample, bool otherMethod) {
    mites::Count count;
    count.mites = sample.answer->mites;
    count.beesMean = sample.scoop.beesMean;
    count.beesOwnCv = std::min(sample.scoop.beesCv, mites::kScoopOwnCv); // the shared part cancels
    if (otherMethod) {
        count.recovery = sample.answer->recovery;
        count.recoverySd = sample.answer->recoverySd;
    }
    return count;
}

BeforeAfter pair(const Sample& first, const Sample& second) {
    const bool otherMethod = first.method != second.method;
    return {countOf(first, otherMethod), countOf(second, otherMethod)};
}

std::int64_t sumBefore(const std::vector<BeforeAfter>& arm) {
    std::int64_t sum = 0;
    for (const BeforeAfter& each : arm)
        sum += each.before.mites;
    return sum;
}

std::int64_t sumAfter(const std::vector<BeforeAfter>& arm) {
    std::int64_t sum = 0;
    for (const BeforeAfter& each : arm)
        sum += each.after.mites;
    return sum;
}

mites::EfficacyPosterior posteriorOf(const std::vector<BeforeAfter>& treated,
                                     const std::vector<BeforeAfter>& control,
                                     const std::optional<mites::GrowthCorrection>& growth, double jarShape) {
    if (treated.size() == 1 && control.size() <= 1)
        return {treated.front(), jarShape, control.empty() ? std::nullopt : std::optional{control.front()},
                growth};
    return {std::span<const BeforeAfter>(treated), jarShape, control, growth};
}

/// What came of picking washes for every colony.
struct Arms {
    std::vector<BeforeAfter> treated, control, since;
    double daysApart = 0; // between the washes, mean of the treated colonies
    double daysSince = 0; // between the wash after and the later one
    bool anyBefore = false;
    bool early = false; // a wash after it came before the whole kill can be seen
    bool otherMethod = false;
};

Arms armsOf(const records::Treatment& treatment, const std::vector<ColonyWashes>& colonies) {
    Arms arms;
    const Date end = records::endOf(treatment);
    for (const ColonyWashes& colony : colonies) {
        const Washes washes = pick(colony, treatment.firstDay, end);
        arms.anyBefore = arms.anyBefore || (colony.treated && washes.before);
        if (!isHeld(colony, washes))
            continue;
        const BeforeAfter found = pair(*washes.before, *washes.after);
        arms.otherMethod = arms.otherMethod || washes.before->method != washes.after->method;
        if (!colony.treated) {
            arms.control.push_back(found);
            continue;
        }
        arms.treated.push_back(found);
        arms.daysApart += daysBetween(washedOn(*washes.before), washedOn(*washes.after));
        arms.early = arms.early || daysBetween(end, washedOn(*washes.after)) < fullKillDays;
        if (washes.later && !colony.treatedOtherwise) {
            arms.since.push_back(pair(*washes.after, *washes.later));
            arms.daysSince += daysBetween(washedOn(*washes.after), washedOn(*washes.later));
        }
    }
    if (!arms.treated.empty())
        arms.daysApart /= static_cast<double>(arms.treated.size());
    if (!arms.since.empty())
        arms.daysSince /= static_cast<double>(arms.since.size());
    return arms;
}

/// True where the load rose again faster than the fastest growth the handbook knows.
bool cameBack(const Arms& arms, const handbook::Handbook& handbook, double jarShape) {
    const handbook::Entry& fast = handbook.at("growth-fast");
    if (arms.since.empty() || !fast.high || sumAfter(arms.since) < fewestCarriedIn)
        return false;
    const double bred = std::exp(*fast.high * arms.daysSince); // times the load, at most
    const auto risen = posteriorOf(arms.since, {}, std::nullopt, jarShape);
    return 1 - risen.chanceOver(1 - bred) >= carriedInChance;
}

double rounded(double fraction) {
    // No more digits than it is sure of; "the load may have doubled" is as much as a sentence can say.
    return std::max(-1.0, std::round(fraction * 100) / 100);
}

void addNotes(TreatmentCheck& check, const Arms& arms) {
    if (sumBefore(arms.treated) < fewestBefore)
        check.notes.push_back({phraseText("Fewer than %1 mites were found before it: the range is wide."),
                               {Number{static_cast<double>(fewestBefore)}}});
    if (check.onBeesOnly)
        check.notes.push_back(
            {phraseText("Washed sooner than %1 after its end: mites under cappings are not in "
                        "it yet. Wash once more."),
             {Days{fullKillDays}}});
    check.notes.push_back(
        check.controls > 0
            ? Phrase{phraseText("Compared with untreated colonies of the same yard: %1."),
                     {Number{static_cast<double>(check.controls)}}}
            : Phrase{phraseText("No untreated colony to compare with: corrected by assumed growth.")});
    if (!arms.control.empty() && (sumBefore(arms.control) == 0 || sumAfter(arms.control) == 0))
        check.notes.push_back({phraseText(
            "No mites were found in the untreated colonies in one of the washes: they tell little.")});
    if (arms.otherMethod)
        check.notes.push_back(
            {phraseText("Washed in different ways before and after: the range is wider for it.")});
}

void read(TreatmentCheck& check, const Arms& arms) {
    const Share killed{rounded(*check.efficacyQ50)};
    const ShareSpan range{rounded(*check.efficacyQ05), rounded(*check.efficacyQ95)};
    const Share mark{check.mark};
    switch (check.outcome) {
    case Outcome::Worked:
        check.reading =
            sumAfter(arms.treated) == 0
                ? Phrase{phraseText("It worked: no mites found after it, at least %1 killed. The mark "
                                    "is %2."),
                         {Share{range.low}, mark}}
                : Phrase{phraseText("It worked: about %1 of the mites killed (%2). The mark is %3."),
                         {killed, range, mark}};
        check.next = {phraseText("Next time take another class, so that mites do not get used to this one.")};
        break;
    case Outcome::NotReached:
        check.reading = {
            phraseText("It did not reach the mark: about %1 of the mites killed (%2). The mark is %3."),
            {killed, range, mark}};
        check.next = {
            phraseText("Was it given as the label says, and warm or cool enough? If the load is over your "
                       "line, treat again, with another substance.")};
        break;
    case Outcome::Resistance:
        check.reading = {
            phraseText("It points to resistance: about %1 of the mites killed (%2). The mark is %3."),
            {killed, range, mark}};
        check.next = {
            phraseText("Do not use this class again here until an adviser has looked at it. If the load is "
                       "over your line, treat with another class.")};
        break;
    case Outcome::CarriedIn:
        check.reading = {
            phraseText("It worked (about %1 killed), and then the load rose faster than mites breed: it "
                       "points to mites carried in."),
            {killed}};
        check.next = {
            phraseText("Look for colonies breaking down or being robbed near by, and wash every two weeks "
                       "until it stays low.")};
        break;
    case Outcome::CannotTell:
        check.reading = {phraseText("Can't tell: anything from %1 of the mites killed. The mark is %2."),
                         {range, mark}};
        check.next = {
            phraseText("What counts now is the load itself: go by the last wash. Next time two jars a colony "
                       "before and after tell more.")};
        break;
    case Outcome::NotYet:
        break;
    }
}

/// Where there is no pair of washes: not yet, or no more.
void readWithout(TreatmentCheck& check, const Arms& arms, const Date& end, const Date& today) {
    if (!arms.anyBefore) {
        check.outcome = Outcome::CannotTell;
        check.reading = {phraseText("Can't tell: no treated colony was washed in the %1 before it."),
                         {Days{daysBefore}}};
        check.next = {phraseText("Wash all the same after its end: what counts is the load that is left.")};
        return;
    }
    if (daysBetween(end, today) > lastDayAfter) {
        check.outcome = Outcome::CannotTell;
        check.reading = {phraseText("Can't tell: no treated colony was washed from %1 to %2 after its end."),
                         {Days{daysAfterEnd}, Days{lastDayAfter}}};
        check.next = {phraseText("Wash now: what counts is the load that is left.")};
        return;
    }
    check.reading = {phraseText("Not known yet: wash from %1 on, best on %2."),
                     {check.washFrom, check.washBest}};
    check.next = {
        phraseText("Wash the colonies that were washed before it, and untreated ones where there are any.")};
}

} // namespace

std::vector<HeldWashes> washesHeld(const records::Treatment& treatment,
                                   const std::vector<ColonyWashes>& colonies) {
    std::vector<HeldWashes> held;
    for (const ColonyWashes& colony : colonies) {
        const Washes washes = pick(colony, treatment.firstDay, records::endOf(treatment));
        if (isHeld(colony, washes))
            held.push_back({colony.colonyId, colony.treated, *washes.before, *washes.after});
    }
    return held;
}

TreatmentCheck checkTreatment(const records::Treatment& treatment, const std::vector<ColonyWashes>& colonies,
                              const Date& today, const handbook::Handbook& handbook, double jarShape) {
    TreatmentCheck check;
    const Date end = records::endOf(treatment);
    check.washFrom = records::plusDays(end, daysAfterEnd);
    check.washBest = records::plusDays(end, fullKillDays);
    const auto all = handbook::substances(handbook);
    const auto substance = std::ranges::find(all, treatment.substance, &handbook::Substance::id);
    const bool synthetic = substance != all.end() && substance->synthetic;
    check.markEntry = synthetic ? "effective-synthetic" : "effective-natural";
    check.mark = handbook.figureAt(check.markEntry) / 100; // kept in per cent

    const Arms arms = armsOf(treatment, colonies);
    check.colonies = static_cast<int>(arms.treated.size());
    check.controls = static_cast<int>(arms.control.size());
    if (arms.treated.empty()) {
        readWithout(check, arms, end, today);
        return check;
    }
    check.onBeesOnly = arms.early;
    check.assumedGrowth = arms.control.empty();
    std::optional<mites::GrowthCorrection> growth;
    if (check.assumedGrowth) {
        growth.emplace();
        growth->days = arms.daysApart;
    }
    const auto posterior = posteriorOf(arms.treated, arms.control, growth, jarShape);
    check.efficacyQ05 = posterior.q05();
    check.efficacyQ50 = posterior.q50();
    check.efficacyQ95 = posterior.q95();
    check.chanceOverMark = posterior.chanceOver(check.mark);
    const bool canResist = substance != all.end() && !substance->resistance.empty();
    if (*check.efficacyQ95 < check.mark) // sure, however few mites there were before
        check.outcome =
            canResist && *check.efficacyQ95 < farBelow ? Outcome::Resistance : Outcome::NotReached;
    else if (sumBefore(arms.treated) < fewestBefore)
        check.outcome = Outcome::CannotTell;
    else if (check.chanceOverMark >= sureEnough)
        check.outcome = cameBack(arms, handbook, jarShape) ? Outcome::CarriedIn : Outcome::Worked;
    else
        check.outcome = check.chanceOverMark < hardlyLikely ? Outcome::NotReached : Outcome::CannotTell;
    addNotes(check, arms);
    read(check, arms);
    return check;
}

} // namespace halfcup::season
