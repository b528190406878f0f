// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/stamp.h"

#include "place/geometry.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace halfcup::place {

namespace {

// A fix further than this many times its own 95 % radius from the middle of all others has jumped
// [convention: at 3 radii, 7.3 standard errors, chance has no part in it], but never for less than 15 m: near
// the middle everything is the same yard.
constexpr double kJumpRadii = 3.0;
constexpr double kJumpAtLeastM = 15.0;
// ... nor for less than four times the distance half of the fixes keep from the middle: a keeper who walks,
// or a receiver that drifts, has a wide middle.
constexpr double kJumpMedians = 4.0;
// Share of the variance that all fixes of a stamp have in common, see stamp.h [convention].
constexpr double kSharedVariance = 0.8;
constexpr double kMovingRadii = 1.25; // see isMoving
// 95 % radius of a round normal scatter over its root mean square distance: sqrt(-ln 0.05).
const double kRadiusOverRms = std::sqrt(-std::log(0.05));

struct Point {
    const Fix* fix;
    Offset at;
    double accuracyM;
};

Place placeOf(const Fix& fix) {
    return {fix.latitudeDeg, fix.longitudeDeg};
}

double lowerMedian(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>((values.size() - 1) / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

// The fix with the smallest sum of distances to all others: right up to nearly one half of jumped fixes, and,
// being a fix itself, free of any trouble with poles and the antimeridian.
const Fix& middleOf(const std::deque<Fix>& fixes) {
    std::size_t best = 0;
    double bestSum = INFINITY;
    for (std::size_t i = 0; i < fixes.size(); ++i) {
        double sum = 0.0;
        for (const Fix& other : fixes)
            sum += distanceM(placeOf(fixes[i]), placeOf(other));
        if (sum < bestSum) {
            bestSum = sum;
            best = i;
        }
    }
    return fixes[best];
}

// The fixes as points on a plane around their middle, without those that jumped.
std::vector<Point> steadyPoints(const std::deque<Fix>& fixes, const Place& middle) {
    std::vector<Point> all;
    std::vector<double> distances;
    for (const Fix& fix : fixes) {
        all.push_back({&fix, offsetFrom(middle, placeOf(fix)), effectiveAccuracyM(fix)});
        distances.push_back(std::hypot(all.back().at.eastM, all.back().at.northM));
    }
    const double wideMiddleM = kJumpMedians * lowerMedian(distances);
    std::vector<Point> steady;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (distances[i] <= std::max({kJumpRadii * all[i].accuracyM, kJumpAtLeastM, wideMiddleM}))
            steady.push_back(all[i]);
    }
    // Where the fixes fall into halves nobody knows which half is right: keep all, and let the scatter show
    // in the accuracy.
    return 2 * steady.size() > all.size() ? steady : all;
}

struct Mean {
    Offset at;
    double claimedM; // 95 % radius as a single fix claims it (harmonic mean of squares)
    double rmsM;     // weighted root mean square distance from the mean
};

Mean weightedMean(const std::vector<Point>& points, std::size_t from, std::size_t to) {
    double weights = 0.0;
    Mean mean{{}, 0.0, 0.0};
    for (std::size_t i = from; i < to; ++i) {
        const double w = 1.0 / (points[i].accuracyM * points[i].accuracyM);
        weights += w;
        mean.at.eastM += w * points[i].at.eastM;
        mean.at.northM += w * points[i].at.northM;
    }
    mean.at.eastM /= weights;
    mean.at.northM /= weights;
    double squares = 0.0;
    for (std::size_t i = from; i < to; ++i) {
        const double w = 1.0 / (points[i].accuracyM * points[i].accuracyM);
        const double east = points[i].at.eastM - mean.at.eastM;
        const double north = points[i].at.northM - mean.at.northM;
        squares += w * (east * east + north * north);
    }
    mean.rmsM = std::sqrt(squares / weights);
    mean.claimedM = std::sqrt(static_cast<double>(to - from) / weights);
    return mean;
}

// Moving: the last third of the fixes lies further from the first third than one and a quarter 95 % radii.
// Were all errors independent, a still receiver would pass for moving once in a hundred stamps of eight
// fixes; as errors of neighbouring seconds hang together, less often. A walk of 1.4 m/s is told after eight
// seconds.
bool isMoving(const std::vector<Point>& points, double claimedM) {
    const std::size_t third = points.size() / 3;
    if (third == 0)
        return false;
    const Mean first = weightedMean(points, 0, third);
    const Mean last = weightedMean(points, points.size() - third, points.size());
    return std::hypot(last.at.eastM - first.at.eastM, last.at.northM - first.at.northM) >
           kMovingRadii * claimedM;
}

} // namespace

StampBuilder::StampBuilder(StampRules rules)
    : m_rules(rules) {}

void StampBuilder::start(std::int64_t nowUtcMs) {
    m_fixes.clear();
    m_skipped = {};
    m_last.reset();
    m_startedUtcMs = nowUtcMs;
    m_taken = 0;
}

StampBuilder::Taken StampBuilder::add(const Fix& fix, std::int64_t nowUtcMs) {
    switch (judge(fix, nowUtcMs)) {
    case FixVerdict::Usable:
        break;
    case FixVerdict::NoCoordinates:
        ++m_skipped.noCoordinates;
        return Taken::Unusable;
    case FixVerdict::OutOfRange:
        ++m_skipped.outOfRange;
        return Taken::Unusable;
    case FixVerdict::NullIsland:
        ++m_skipped.nullIsland;
        return Taken::Unusable;
    case FixVerdict::TooCoarse:
        ++m_skipped.tooCoarse;
        return Taken::Unusable;
    case FixVerdict::Stale:
        ++m_skipped.stale;
        return Taken::Unusable;
    }
    // Without a receiver's time nothing tells a frozen receiver from a keeper who stands still.
    if (m_last && fix.receiverUtcMs && fix.receiverUtcMs == m_last->receiverUtcMs &&
        fix.latitudeDeg == m_last->latitudeDeg && fix.longitudeDeg == m_last->longitudeDeg) {
        ++m_skipped.repeated;
        return Taken::Repeated;
    }
    m_last = fix;
    ++m_taken;
    m_fixes.push_back(fix);
    while (m_fixes.size() > kMostFixes ||
           ageMs(m_fixes.front().takenAtUtcMs, m_fixes.back().takenAtUtcMs) > m_rules.windowMs)
        m_fixes.pop_front();
    return Taken::Yes;
}

std::optional<Stamp> StampBuilder::stamp(std::int64_t nowUtcMs) const {
    if (m_fixes.empty())
        return std::nullopt;
    const Place middle = placeOf(middleOf(m_fixes));
    const std::vector<Point> points = steadyPoints(m_fixes, middle);
    const Mean mean = weightedMean(points, 0, points.size());
    const Fix& newest = *points.back().fix;
    const Place place = placeAt(middle, mean.at);

    Stamp stamp;
    stamp.latitudeDeg = place.latitudeDeg;
    stamp.longitudeDeg = place.longitudeDeg;
    stamp.fixesUsed = static_cast<int>(points.size());
    stamp.fixesSkipped = skipped().total();
    stamp.takenAtUtcMs = newest.takenAtUtcMs;
    stamp.ageMs = ageMs(newest.takenAtUtcMs, nowUtcMs);
    stamp.source = newest.source;
    if (stamp.ageMs > m_rules.keepStampMs)
        return std::nullopt;

    const double n = static_cast<double>(points.size());
    const double shrink = std::sqrt(kSharedVariance + (1.0 - kSharedVariance) / n);
    const double scatterM = kRadiusOverRms * mean.rmsM;
    stamp.moving = isMoving(points, mean.claimedM);
    // Averaging does not help against walking or against fixes that contradict each other: then the whole
    // scatter counts.
    const bool contradicts = scatterM > 2.0 * mean.claimedM;
    stamp.accuracyM = stamp.moving || contradicts ? std::max(mean.claimedM, scatterM)
                                                  : shrink * std::max(mean.claimedM, scatterM);
    return stamp;
}

StampBuilder::Progress StampBuilder::progress(std::int64_t nowUtcMs) const {
    if (m_taken >= m_rules.enoughFixes) {
        const auto best = stamp(nowUtcMs);
        if (best && best->fixesUsed >= m_rules.enoughFixes && best->accuracyM <= m_rules.enoughAccuracyM &&
            !best->moving)
            return Progress::GoodEnough;
    }
    // A wall clock set back must not wait for ever, so a start in the future is over at once.
    if (nowUtcMs < m_startedUtcMs || ageMs(m_startedUtcMs, nowUtcMs) >= m_rules.timeoutMs)
        return Progress::TimedOut;
    return Progress::Collecting;
}

SkipCounts StampBuilder::skipped() const {
    SkipCounts counts = m_skipped;
    if (!m_fixes.empty()) {
        const std::size_t kept = steadyPoints(m_fixes, placeOf(middleOf(m_fixes))).size();
        counts.jumped = static_cast<int>(m_fixes.size() - kept);
    }
    return counts;
}

} // namespace halfcup::place
