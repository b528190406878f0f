// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/method.h"
#include "records/other_count.h"
#include "records/record_id.h"
#include "records/scoop.h"
#include "records/shake.h"
#include "records/yard.h"

#include <cstdint>
#include <optional>
#include <string>

namespace halfcup::records {

/// Whether the queen was found before bees were taken: washed bees die, and so would she.
enum class Queen { NotAsked, SeenAndSafe, NotSeen };

/// What is known of where the scoop was taken. Only Stamped has a position; the others say why there is none.
enum class PositionState { NotTried, Waiting, Stamped, NoFix, NoSource, Denied };

struct PositionStamp {
    PositionState state = PositionState::NotTried;
    Position position;      // for Stamped
    int fixCount = 0;       // how many fixes were combined
    std::int64_t ageMs = 0; // of the newest fix when it was stamped
    bool moving = false;    // the fixes lie further apart than their accuracy explains
    std::string source;     // "geoclue", "nmea tcp", ... as the receiver's side names itself
};

enum class SampleState { Draft, Finished, Abandoned };

/// What a finished sample said, kept as it was said: an old answer must not change with a new line or a new
/// model.
struct Answer {
    std::int64_t mites = 0;
    std::optional<std::int64_t> mitesSecondRinse;
    double loadQ05 = 0; // mites per 100 bees, washed load
    double loadQ50 = 0;
    double loadQ95 = 0;
    Lines lines;
    double chanceOver = 0; // of the true load being over the treat line
    std::optional<double> chanceOverOwn;
    double recovery = 1;
    double recoverySd = 0;
    double jarShape = 7;
};

/// One sample of one colony, from the first touch to the answer. A draft is a sample like any other: it is on
/// disk from its first step on, and each step is kept as it is taken.
struct Sample {
    RecordId id;
    RecordId colonyId;
    RecordId yardId; // where the colony stood then; it may be moved later
    std::string method = "alcohol_wash";
    SampleState state = SampleState::Draft;
    Step step = Step::Colony;
    std::int64_t startedAtMs = 0; // all times UTC, milliseconds since 1970
    int utcOffsetMinutes = 0;
    Queen queen = Queen::NotAsked;
    Scoop scoop;
    /// The moment of the sample: bees scooped, a board pulled, brood opened.
    std::optional<std::int64_t> scoopedAtMs;
    /// What is written on a jar that was scooped to be washed later. It waits in the tray while the sample is
    /// a draft, and a label stands on one waiting jar only; after that the label stays as a note.
    std::string jar;
    BoardStay board;                         // for a sticky board
    std::optional<std::int64_t> openedCells; // for drone brood: all cells opened
    PositionStamp stamp;
    ShakeRun shake;
    std::optional<std::int64_t> settleStartedMs;
    std::optional<std::int64_t> finishedAtMs;
    std::optional<std::int64_t> abandonedAtMs;
    std::optional<Answer> answer;           // of bees: a load
    std::optional<OtherAnswer> otherAnswer; // of a board or of brood: in terms of its own, never both
    std::string note;
    bool demo = false;
    bool removed = false;
};

/// In the tray: a jar scooped and not yet counted, or a board under its colony.
[[nodiscard]] bool isInTray(const Sample& sample);
/// Put aside: in the tray, and nothing begun since.
[[nodiscard]] bool waits(const Sample& sample);

[[nodiscard]] Fields toFields(const Sample& sample);
/// Missing or wrongly typed fields keep their defaults; unknown words in word fields read as the first of
/// their kind.
[[nodiscard]] Sample sampleFrom(const RecordId& id, const Fields& fields);

/// The words that enum fields are kept under; the inverse reads an unknown word as the first value.
[[nodiscard]] std::string_view nameOf(Queen queen);
[[nodiscard]] std::string_view nameOf(PositionState state);
[[nodiscard]] std::string_view nameOf(SampleState state);
[[nodiscard]] std::string_view nameOf(Packing packing);
[[nodiscard]] std::string_view nameOf(Scoop::BeesSource source);

/// So far the clocks of two phones may be apart, or one clock before and after it was set, and both are still
/// believed [own choice]. A phone that was set a year ahead by mistake is not.
inline constexpr std::int64_t clocksDifferByMs = 86'400'000;

/// Whether the sample was dated by a clock that was wrong: it lies further ahead than that. It is kept and
/// shown; but nothing is due later, and nothing foretold, because of it until its day has come.
[[nodiscard]] bool liesAhead(const Sample& sample, std::int64_t nowUtcMs);

} // namespace halfcup::records
