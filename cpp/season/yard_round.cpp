// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/yard_round.h"

#include "mites/sample_size.h"
#include "mites/stop_rule.h"
#include "mites/yard_mean.h"
#include "records/colony_state.h"
#include "records/moment.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace halfcup::season {

namespace {

using records::Round;
using records::Sample;

std::int64_t momentOf(const Sample& sample) {
    return sample.scoopedAtMs.value_or(sample.startedAtMs);
}

bool belongs(const Sample& sample, const Round& round) {
    return sample.answer && !sample.removed && sample.state == records::SampleState::Finished &&
           sample.yardId == round.yardId && momentOf(sample) >= round.startedAtMs &&
           (!round.endedAtMs || momentOf(sample) < *round.endedAtMs);
}

struct SplitSpread {
    double ownCv = 0;
    double sharedSd = 0; // of ln(bees)
};

// The sample keeps one spread. A counted or weighed jar's is its own; of one taken from a volume, all beyond
// the own spread of any scoop comes from not knowing the hand that scoops.
SplitSpread split(const records::Scoop& scoop) {
    using Source = records::Scoop::BeesSource;
    if (scoop.source == Source::Counted || scoop.source == Source::Typed ||
        scoop.beesCv <= mites::kScoopOwnCv)
        return {scoop.beesCv, 0};
    const double all = std::log1p(scoop.beesCv * scoop.beesCv);
    const double own = std::log1p(mites::kScoopOwnCv * mites::kScoopOwnCv);
    return {mites::kScoopOwnCv, std::sqrt(all - own)};
}

mites::Wash washOf(const Sample& sample) {
    mites::Wash wash;
    wash.mites = sample.answer->mites;
    wash.beesMean = sample.scoop.beesMean;
    wash.beesCv = split(sample.scoop).ownCv;
    wash.recovery = sample.answer->recovery;
    wash.recoverySd = sample.answer->recoverySd;
    wash.jarShape = sample.answer->jarShape;
    return wash;
}

bool canBe(const Sample& sample) {
    try {
        mites::checkWash(washOf(sample));
        return true;
    } catch (const std::domain_error&) {
        return false;
    }
}

bool alike(const Sample& a, const Sample& b) {
    return a.answer->recovery == b.answer->recovery && a.answer->recoverySd == b.answer->recoverySd;
}

std::vector<RoundPart*> washedInOrder(RoundReading& reading) {
    std::vector<RoundPart*> washed;
    for (RoundPart& part : reading.parts)
        if (part.place == RoundPlace::Washed)
            washed.push_back(&part);
    std::ranges::sort(washed, [](const RoundPart* a, const RoundPart* b) {
        return std::pair(momentOf(*a->wash), a->wash->id) < std::pair(momentOf(*b->wash), b->wash->id);
    });
    return washed;
}

void leaveOutOtherMethods(RoundReading& reading) {
    const std::vector<RoundPart*> washed = washedInOrder(reading);
    const auto group = [&](const RoundPart* of) {
        return std::ranges::count_if(washed,
                                     [&](const RoundPart* each) { return alike(*each->wash, *of->wash); });
    };
    const auto largest =
        std::ranges::max_element(washed, {}, group); // the first of equal ones, that is: the earliest
    if (largest == washed.end())
        return;
    const Sample pooled = *(*largest)->wash;
    for (RoundPart* part : washed)
        if (!alike(*part->wash, pooled))
            part->place = RoundPlace::OtherMethod;
}

YardFigure figureOf(std::span<const RoundPart* const> washed, std::span<const mites::Wash> washes,
                    std::int64_t colonies, double line) {
    double bees = 0;
    double sharedBees = 0; // a shared error moves the sum by each wash's part in it
    for (const RoundPart* part : washed) {
        bees += part->wash->scoop.beesMean;
        sharedBees += part->wash->scoop.beesMean * split(part->wash->scoop).sharedSd;
    }
    const mites::YardMean mean(washes, colonies, sharedBees / bees);
    YardFigure figure{mean.estimate(), mean.chanceOver(line), {}};
    figure.standing =
        mites::standing(figure.load.q50, figure.chanceOver, figure.load.q05, figure.load.q95, line, bees);
    return figure;
}

RoundVerdict verdictOf(std::span<const mites::Wash> washes, std::size_t left, double line) {
    double cv = 0;
    for (const mites::Wash& wash : washes)
        cv += wash.beesCv / static_cast<double>(washes.size());
    mites::StopRule rule;
    rule.low = stopLowShare * line;
    rule.high = stopHighShare * line;
    rule.unitShape = mites::colonyUnitShape(washes.front().jarShape, cv);
    std::vector<mites::StopUnit> units;
    for (const mites::Wash& wash : washes)
        units.push_back({wash.mites, wash.beesMean * wash.recovery / 100});
    // From the third colony on: what crossed before it and came back is no verdict.
    double sum = 0;
    for (std::size_t n = 0; n < units.size(); ++n) {
        sum += mites::unitEvidence(rule, units[n]);
        if (n + 1 < fewestForVerdict)
            continue;
        if (sum >= std::log((1 - rule.beta) / rule.alpha))
            return RoundVerdict::Over;
        if (sum <= std::log(rule.beta / (1 - rule.alpha)))
            return RoundVerdict::Under;
    }
    return left == 0 ? RoundVerdict::NotSettled : RoundVerdict::GoOn;
}

// Below limit, every value equally likely: what would make some likelier is drawn again.
std::uint64_t below(std::uint64_t limit, const Chance& chance) {
    const std::uint64_t most = std::numeric_limits<std::uint64_t>::max();
    const std::uint64_t fair = most - most % limit;
    std::uint64_t drawn = chance();
    while (drawn >= fair)
        drawn = chance();
    return drawn % limit;
}

} // namespace

std::size_t RoundReading::count(RoundPlace place) const {
    return static_cast<std::size_t>(std::ranges::count(parts, place, &RoundPart::place));
}

std::size_t RoundReading::inTray() const {
    return static_cast<std::size_t>(std::ranges::count_if(
        parts, [](const RoundPart& part) { return part.place == RoundPlace::Left && !part.jar.empty(); }));
}

std::optional<records::RecordId> RoundReading::next() const {
    const auto found = std::ranges::find_if(
        parts, [](const RoundPart& part) { return part.place == RoundPlace::Left && part.jar.empty(); });
    if (found == parts.end())
        return std::nullopt;
    return found->colonyId;
}

bool standsInYard(const ColonyOfYard& each, const records::RecordId& yardId, const records::Date& day) {
    if (each.colony.removed)
        return false;
    const records::ColonyState state = records::stateOn(each.colony, each.events, day);
    return state.alive() && state.yardId == yardId;
}

RoundReading readRound(const Round& round, std::span<const ColonyOfYard> colonies,
                       std::span<const Sample> samples, double line, const records::Date& day) {
    if (!(line > 0))
        throw std::domain_error("A line has to be above zero.");
    RoundReading reading;
    for (const ColonyOfYard& each : colonies)
        reading.colonies += standsInYard(each, round.yardId, day) ? 1 : 0;
    for (const records::RecordId& id : round.colonyIds) {
        RoundPart part;
        part.colonyId = id;
        const auto colony =
            std::ranges::find_if(colonies, [&](const ColonyOfYard& each) { return each.colony.id == id; });
        for (const Sample& sample : samples)
            if (sample.colonyId == id && belongs(sample, round) &&
                (!part.wash ||
                 std::pair(momentOf(sample), sample.id) < std::pair(momentOf(*part.wash), part.wash->id)))
                part.wash = sample;
            else if (sample.colonyId == id && records::isInTray(sample) &&
                     sample.scoopedAtMs.value_or(0) >= round.startedAtMs)
                part.jar = sample.jar;
        if (colony == colonies.end() || !standsInYard(*colony, round.yardId, day))
            part.place = RoundPlace::Gone;
        else if (part.wash)
            part.place = canBe(*part.wash) ? RoundPlace::Washed : RoundPlace::Damaged;
        reading.parts.push_back(std::move(part));
    }
    leaveOutOtherMethods(reading);

    const std::vector<RoundPart*> washed = washedInOrder(reading);
    if (washed.empty())
        return reading;
    std::vector<mites::Wash> washes;
    for (const RoundPart* part : washed)
        washes.push_back(washOf(*part->wash));
    reading.figure = figureOf(washed, washes, reading.colonies, line);
    reading.verdict = verdictOf(washes, reading.count(RoundPlace::Left), line);
    if (washes.size() > 1)
        for (std::size_t i = 0; i < washes.size(); ++i)
            washed[i]->standsOut = mites::chanceAboveOthers(washes, i, standsOutFactor) >= standsOutChance;
    return reading;
}

std::int64_t plannedByHandbook(double coloniesPerYard, std::int64_t colonies) {
    return std::min(colonies, std::max<std::int64_t>(1, std::llround(coloniesPerYard)));
}

std::optional<PlannedByLoad> plannedByLoad(std::span<const Sample> lastWashes, double exposure,
                                           std::int64_t colonies) {
    double mites = 0;
    double washedHundreds = 0;
    for (const Sample& sample : lastWashes)
        if (sample.answer && !sample.removed && canBe(sample)) {
            mites += static_cast<double>(sample.answer->mites);
            washedHundreds += sample.scoop.beesMean * sample.answer->recovery / 100;
        }
    if (mites == 0 || colonies < 1)
        return std::nullopt;
    mites::YardPlan plan;
    plan.expectedLoad = mites / washedHundreds;
    plan.exposure = exposure;
    const mites::SampleSize size = mites::coloniesToWash(plan, planPrecision, colonies);
    return PlannedByLoad{std::min(size.washes, colonies), plan.expectedLoad, size.feasible};
}

std::vector<records::RecordId> pickAtRandom(std::vector<records::RecordId> from, std::size_t count,
                                            const Chance& chance) {
    for (std::size_t left = from.size(); left > 1; --left) // Fisher and Yates
        std::swap(from[left - 1], from[static_cast<std::size_t>(below(left, chance))]);
    if (from.size() > count)
        from.resize(count);
    return from;
}

Round withoutColony(Round round, const records::RecordId& colonyId,
                    const std::vector<records::RecordId>& spare, const Chance& chance) {
    const auto at = std::ranges::find(round.colonyIds, colonyId);
    if (at == round.colonyIds.end())
        return round;
    std::vector<records::RecordId> others;
    std::ranges::copy_if(spare, std::back_inserter(others), [&](const records::RecordId& id) {
        return std::ranges::find(round.colonyIds, id) == round.colonyIds.end();
    });
    if (others.empty())
        round.colonyIds.erase(at);
    else
        *at = others[static_cast<std::size_t>(below(others.size(), chance))];
    return round;
}

} // namespace halfcup::season
