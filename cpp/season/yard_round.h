// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "mites/wash_load.h"
#include "records/colony_event.h"
#include "records/round.h"
#include "records/sample.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <vector>

/// A yard round: which of its colonies are washed, what they say of the yard together, and whether the answer
/// is clear before all are washed. Loads and lines in mites per 100 bees.
namespace halfcup::season {

/// No verdict from fewer colonies: one bad hive is not a yard [own choice].
inline constexpr std::size_t fewestForVerdict = 3;
/// The stop rule tests a yard at two thirds of the line against one at four thirds of it [own choice]: what
/// lies between is close to the line, and no early stop is promised there.
inline constexpr double stopLowShare = 2.0 / 3;
inline constexpr double stopHighShare = 4.0 / 3;
/// A colony stands out where the chance is at least this that its load is over this many times that of the
/// others together [own choice].
inline constexpr double standsOutChance = 0.95;
inline constexpr double standsOutFactor = 1.5;
/// Standard error over mean that a plan for the keeper's decision asks for [convention; 0.10 is research].
inline constexpr double planPrecision = 0.25;

/// A colony with what happened to it: those of the round, and all that stand in its yard now.
struct ColonyOfYard {
    records::Colony colony;
    std::vector<records::ColonyEvent> events;
};

enum class RoundPlace {
    Left,        // still to be washed
    Washed,      // counts for the yard's figure
    OtherMethod, // washed in a way that finds another share of the mites: cannot be pooled
    Damaged,     // a wash with figures no wash can have
    Gone,        // died, went into another, or stands in another yard
};

struct RoundPart {
    records::RecordId colonyId;
    RoundPlace place = RoundPlace::Left;
    std::string jar;                     // for Left: scooped, and waits in the tray under this label
    std::optional<records::Sample> wash; // for Washed, OtherMethod and Damaged
    bool standsOut = false;              // far above the others, for Washed
};

struct YardFigure {
    mites::LoadEstimate load{};
    double chanceOver = 0; // of the yard's mean being over the line
    mites::Standing standing = mites::Standing::CannotTell;
};

/// GoOn: not clear, or fewer than three washed. Under, Over: clear by the stop rule. NotSettled: all that
/// were planned are washed, and no side is clear.
enum class RoundVerdict { GoOn, Under, Over, NotSettled };

struct RoundReading {
    std::vector<RoundPart> parts; // in the order of the round
    std::int64_t colonies = 0;    // that live in the yard; at least as many as are washed
    std::optional<YardFigure> figure;
    RoundVerdict verdict = RoundVerdict::GoOn;

    [[nodiscard]] std::size_t count(RoundPlace place) const;
    /// The colonies that the round can still be about: without those that are gone.
    [[nodiscard]] std::size_t planned() const { return parts.size() - count(RoundPlace::Gone); }
    /// Washed in whatever way.
    [[nodiscard]] std::size_t done() const { return planned() - count(RoundPlace::Left); }
    /// Scooped, not yet counted.
    [[nodiscard]] std::size_t inTray() const;
    /// The next colony to scoop; nothing where all are washed or in the tray.
    [[nodiscard]] std::optional<records::RecordId> next() const;
};

/// samples: any of the colonies; what is no finished count of bees, of another yard or outside the round's
/// time is passed over. A colony's first wash since the start counts, dated by its scoop, so that a jar
/// scooped before the end and counted after it belongs. day: the local day on which the colonies are looked
/// at: today, or that of the end.
///
/// The yard's mean: mites/yard_mean.h, each scoop's own spread a tenth (kScoopOwnCv) and what its kept spread
/// has beyond that common to all scoops (as for desk's yard verb); none common to counted ones. Where washes
/// differ in recovery, the larger group is pooled, of equal ones that of the first wash. The verdict:
/// mites/stop_rule.h, colony by colony in the order washed. Errors: std::domain_error for a line that is not
/// above 0.
[[nodiscard]] RoundReading readRound(const records::Round& round, std::span<const ColonyOfYard> colonies,
                                     std::span<const records::Sample> samples, double line,
                                     const records::Date& day);

/// Lives, is not removed, and stands in that yard on the day.
[[nodiscard]] bool standsInYard(const ColonyOfYard& each, const records::RecordId& yardId,
                                const records::Date& day);

/// How many to wash where nothing is known of the yard: so many as the handbook says (colonies-per-yard, Lee
/// et al. 2010), or all where there are not more.
[[nodiscard]] std::int64_t plannedByHandbook(double coloniesPerYard, std::int64_t colonies);

/// How many for a standard error of a quarter of the mean, from the load that the yard's last washes found
/// together. Nothing where there is none to expect (no wash, or no mite found).
struct PlannedByLoad {
    std::int64_t washes = 0; // at most the colonies
    double expectedLoad = 0; // per 100
    bool enoughForIt = true; // false: even all colonies, one wash each, are fewer than it takes
};
[[nodiscard]] std::optional<PlannedByLoad> plannedByLoad(std::span<const records::Sample> lastWashes,
                                                         double exposure, std::int64_t colonies);

/// 64 bits, every value equally likely.
using Chance = std::function<std::uint64_t()>;

/// So many of them in an order by chance; every order is equally likely. All where there are not as many.
[[nodiscard]] std::vector<records::RecordId> pickAtRandom(std::vector<records::RecordId> from,
                                                          std::size_t count, const Chance& chance);

/// The round without a colony that cannot be opened, and in its place one by chance of spare (those in the
/// round already are passed over), where there is one.
[[nodiscard]] records::Round withoutColony(records::Round round, const records::RecordId& colonyId,
                                           const std::vector<records::RecordId>& spare, const Chance& chance);

} // namespace halfcup::season
