// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/fix.h"

#include <cstddef>
#include <cstdint>
#include <deque>
#include <optional>
#include <string>

// From many fixes to the one position that goes into the record. Pure C++, no clock and no thread: give each
// fix with the time it is, ask for the stamp whenever one is wanted.

namespace halfcup::place {

// A position as it is recorded: never without how it came about.
struct Stamp {
    double latitudeDeg = 0.0;
    double longitudeDeg = 0.0;
    double accuracyM = 0.0;        // 95 % radius
    int fixesUsed = 0;             // that went into the mean
    int fixesSkipped = 0;          // unusable, repeated or far from all others, since start()
    std::int64_t ageMs = 0;        // age of the newest fix used, when the stamp was asked for
    std::int64_t takenAtUtcMs = 0; // time of the newest fix used
    std::string source;            // of the newest fix used
    bool moving = false;           // the fixes wander further than their accuracy explains
};

// What was skipped, and why; "3 of 11 fixes skipped: too old" is made from it.
struct SkipCounts {
    int noCoordinates = 0;
    int outOfRange = 0;
    int nullIsland = 0;
    int tooCoarse = 0;
    int stale = 0;
    int repeated =
        0; // same receiver time and place as the one before: a frozen receiver, or a sentence sent twice
    int jumped = 0; // far from all others, left out of the mean
    [[nodiscard]] int total() const {
        return noCoordinates + outOfRange + nullIsland + tooCoarse + stale + repeated + jumped;
    }
};

// When to stop looking. All conventions of this program. Fifteen fixes, a quarter of a minute: a receiver
// that has just found its satellites creeps to its place for some ten seconds. 8 m at 95 % is what a phone
// calls 5 m.
struct StampRules {
    int enoughFixes = 15;
    double enoughAccuracyM = 8.0;
    std::int64_t timeoutMs = 30'000;    // give up waiting for better; the best so far is still a stamp
    std::int64_t windowMs = 60'000;     // fixes older than this, seen from the newest, leave the mean
    std::int64_t keepStampMs = 600'000; // no stamp from fixes older than this: the keeper has walked on
};

// How many fixes are kept at most; older ones leave first. Bounds memory and the time of one stamp().
inline constexpr std::size_t kMostFixes = 64;

// Weights are 1 / accuracy^2. The mean's accuracy: position errors of one receiver hang together for minutes,
// so n fixes are not n independent ones, and averaging a quarter of a minute gains little. Four fifths of the
// variance are taken as shared [convention]:
//     R^2 = harmonic mean of R_i^2 * (4/5 + 1/(5 n)),
// and where the fixes scatter more than they claim, their scatter is put in the place of the claim.
class StampBuilder {
public:
    explicit StampBuilder(StampRules rules = {});

    // Forgets everything and starts the clock of the timeout.
    void start(std::int64_t nowUtcMs);

    enum class Taken { Yes, Unusable, Repeated };
    // Takes a fix that arrived at nowUtcMs. A bad one is counted and changes nothing else.
    Taken add(const Fix& fix, std::int64_t nowUtcMs);

    // The best position so far; nothing where there is none (the record then says "no position").
    [[nodiscard]] std::optional<Stamp> stamp(std::int64_t nowUtcMs) const;

    enum class Progress { Collecting, GoodEnough, TimedOut };
    // GoodEnough: enough fixes and accuracy, and standing still. TimedOut: stop, and take stamp() as it is.
    [[nodiscard]] Progress progress(std::int64_t nowUtcMs) const;

    [[nodiscard]] SkipCounts skipped() const;
    [[nodiscard]] int taken() const {
        return m_taken;
    } // usable fixes since start(), also those that left again
    [[nodiscard]] const StampRules& rules() const { return m_rules; }

private:
    StampRules m_rules;
    std::deque<Fix> m_fixes;
    SkipCounts m_skipped;
    std::optional<Fix> m_last;
    std::int64_t m_startedUtcMs = 0;
    int m_taken = 0;
};

} // namespace halfcup::place
