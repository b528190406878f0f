// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/sample.h"

#include "records/field_access.h"

#include <array>
#include <limits>
#include <utility>

namespace halfcup::records {

namespace {

template <typename E, std::size_t N>
using Words = std::array<std::pair<E, std::string_view>, N>;

constexpr Words<Queen, 3> queenWords{
    {{Queen::NotAsked, "not_asked"}, {Queen::SeenAndSafe, "seen_and_safe"}, {Queen::NotSeen, "not_seen"}}};
constexpr Words<PositionState, 6> positionWords{{{PositionState::NotTried, "not_tried"},
                                                 {PositionState::Waiting, "waiting"},
                                                 {PositionState::Stamped, "stamped"},
                                                 {PositionState::NoFix, "no_fix"},
                                                 {PositionState::NoSource, "no_source"},
                                                 {PositionState::Denied, "denied"}}};
constexpr Words<SampleState, 3> stateWords{{{SampleState::Draft, "draft"},
                                            {SampleState::Finished, "finished"},
                                            {SampleState::Abandoned, "abandoned"}}};
constexpr Words<Packing, 2> packingWords{{{Packing::Loose, "loose"}, {Packing::Settled, "settled"}}};
constexpr Words<Scoop::BeesSource, 4> sourceWords{{{Scoop::BeesSource::Book, "book"},
                                                   {Scoop::BeesSource::OwnScoops, "own_scoops"},
                                                   {Scoop::BeesSource::Typed, "typed"},
                                                   {Scoop::BeesSource::Counted, "counted"}}};

template <typename E, std::size_t N>
std::string_view wordFor(const Words<E, N>& words, E value) {
    for (const auto& [each, word] : words)
        if (each == value)
            return word;
    return words.front().second;
}

template <typename E, std::size_t N>
E valueFor(const Words<E, N>& words, const Fields& fields, std::string_view field) {
    const auto text = textIn(fields, field);
    for (const auto& [each, word] : words)
        if (text && word == *text)
            return each;
    return words.front().first;
}

Value word(std::string_view text) {
    return std::string(text);
}

void putShake(Fields& f, const ShakeRun& shake) {
    f["shake_planned_s"] = std::int64_t{shake.plannedS};
    f["shake_since_boot_ms"] = shake.runningSince ? Value{shake.runningSince->bootMs} : Value{};
    f["shake_since_utc_ms"] = shake.runningSince ? Value{shake.runningSince->utcMs} : Value{};
    f["shake_boot_id"] = shake.runningSince ? Value{shake.runningSince->bootId} : Value{};
    f["shake_before_ms"] = shake.shakenBeforeMs;
    f["shake_interrupted"] = valueOf(shake.interrupted);
    f["shake_ended"] = valueOf(shake.ended);
}

ShakeRun shakeFrom(const Fields& f) {
    ShakeRun shake;
    shake.plannedS = static_cast<int>(integerIn(f, "shake_planned_s").value_or(usualShakeS));
    const auto boot = integerIn(f, "shake_since_boot_ms");
    const auto utc = integerIn(f, "shake_since_utc_ms");
    if (boot && utc)
        shake.runningSince = ShakeReading{*boot, *utc, textIn(f, "shake_boot_id").value_or("")};
    shake.shakenBeforeMs = integerIn(f, "shake_before_ms").value_or(0);
    shake.interrupted = flagIn(f, "shake_interrupted");
    shake.ended = flagIn(f, "shake_ended");
    return shake;
}

void putStamp(Fields& f, const PositionStamp& stamp) {
    const bool stamped = stamp.state == PositionState::Stamped;
    f["position_state"] = word(nameOf(stamp.state));
    f["latitude_deg"] = stamped ? Value{stamp.position.latitudeDeg} : Value{};
    f["longitude_deg"] = stamped ? Value{stamp.position.longitudeDeg} : Value{};
    f["fix_accuracy_m"] = stamped ? valueOf(stamp.position.accuracyM) : Value{};
    f["fix_count"] = std::int64_t{stamp.fixCount};
    f["fix_age_ms"] = stamped ? Value{stamp.ageMs} : Value{};
    f["fix_moving"] = valueOf(stamp.moving);
    f["fix_source"] = stamp.source;
}

PositionStamp stampFrom(const Fields& f) {
    PositionStamp stamp;
    stamp.state = valueFor(positionWords, f, "position_state");
    const auto latitude = realIn(f, "latitude_deg");
    const auto longitude = realIn(f, "longitude_deg");
    if (latitude && longitude)
        stamp.position = {*latitude, *longitude, realIn(f, "fix_accuracy_m")};
    stamp.fixCount = static_cast<int>(integerIn(f, "fix_count").value_or(0));
    stamp.ageMs = integerIn(f, "fix_age_ms").value_or(0);
    stamp.moving = flagIn(f, "fix_moving");
    stamp.source = textIn(f, "fix_source").value_or("");
    return stamp;
}

void putAnswer(Fields& f, const std::optional<Answer>& answer) {
    const auto real = [&](double Answer::*member) { return answer ? Value{(*answer).*member} : Value{}; };
    f["mites"] = answer ? Value{answer->mites} : Value{};
    f["mites_second_rinse"] = answer ? valueOf(answer->mitesSecondRinse) : Value{};
    f["load_q05"] = real(&Answer::loadQ05);
    f["load_q50"] = real(&Answer::loadQ50);
    f["load_q95"] = real(&Answer::loadQ95);
    f["treat_line"] = answer ? Value{answer->lines.treat} : Value{};
    f["treat_line_source"] = answer ? Value{answer->lines.treatSource} : Value{};
    f["own_line"] = answer ? valueOf(answer->lines.own) : Value{};
    f["chance_over"] = real(&Answer::chanceOver);
    f["chance_over_own"] = answer ? valueOf(answer->chanceOverOwn) : Value{};
    f["recovery"] = real(&Answer::recovery);
    f["recovery_sd"] = real(&Answer::recoverySd);
    f["jar_shape"] = real(&Answer::jarShape);
}

std::optional<Answer> answerFrom(const Fields& f) {
    const auto mites = integerIn(f, "mites");
    if (!mites)
        return std::nullopt;
    Answer answer;
    answer.mites = *mites;
    answer.mitesSecondRinse = integerIn(f, "mites_second_rinse");
    answer.loadQ05 = realIn(f, "load_q05").value_or(0);
    answer.loadQ50 = realIn(f, "load_q50").value_or(0);
    answer.loadQ95 = realIn(f, "load_q95").value_or(0);
    answer.lines.treat = realIn(f, "treat_line").value_or(answer.lines.treat);
    answer.lines.treatSource = textIn(f, "treat_line_source").value_or(answer.lines.treatSource);
    answer.lines.own = realIn(f, "own_line");
    answer.chanceOver = realIn(f, "chance_over").value_or(0);
    answer.chanceOverOwn = realIn(f, "chance_over_own");
    answer.recovery = realIn(f, "recovery").value_or(1);
    answer.recoverySd = realIn(f, "recovery_sd").value_or(0);
    answer.jarShape = realIn(f, "jar_shape").value_or(answer.jarShape);
    return answer;
}

} // namespace

std::string_view nameOf(Queen queen) {
    return wordFor(queenWords, queen);
}
std::string_view nameOf(PositionState state) {
    return wordFor(positionWords, state);
}
std::string_view nameOf(SampleState state) {
    return wordFor(stateWords, state);
}
std::string_view nameOf(Packing packing) {
    return wordFor(packingWords, packing);
}
std::string_view nameOf(Scoop::BeesSource source) {
    return wordFor(sourceWords, source);
}

bool isInTray(const Sample& sample) {
    return sample.state == SampleState::Draft && !sample.removed &&
           (!sample.jar.empty() || isUnderColony(sample.board));
}

bool waits(const Sample& sample) {
    return isInTray(sample) && (sample.step == Step::Pour || isUnderColony(sample.board));
}

Fields toFields(const Sample& sample) {
    Fields f;
    f["colony_id"] = sample.colonyId;
    f["yard_id"] = sample.yardId;
    f["method"] = sample.method;
    f["state"] = word(nameOf(sample.state));
    f["step"] = word(nameOf(sample.step));
    f["started_at_ms"] = sample.startedAtMs;
    f["utc_offset_min"] = std::int64_t{sample.utcOffsetMinutes};
    f["queen"] = word(nameOf(sample.queen));
    f["scoop_volume_ml"] = sample.scoop.volumeMl;
    f["scoop_packing"] = word(nameOf(sample.scoop.packing));
    f["bees_mean"] = sample.scoop.beesMean;
    f["bees_cv"] = sample.scoop.beesCv;
    f["bees_source"] = word(nameOf(sample.scoop.source));
    f["scooped_at_ms"] = valueOf(sample.scoopedAtMs);
    f["jar"] = sample.jar.empty() ? Value{} : Value{sample.jar};
    f["settle_started_ms"] = valueOf(sample.settleStartedMs);
    f["finished_at_ms"] = valueOf(sample.finishedAtMs);
    f["abandoned_at_ms"] = valueOf(sample.abandonedAtMs);
    f["note"] = sample.note;
    f["demo"] = valueOf(sample.demo);
    f["removed"] = valueOf(sample.removed);
    putStamp(f, sample.stamp);
    putShake(f, sample.shake);
    putAnswer(f, sample.answer);
    putBoard(f, sample.board);
    f["opened_cells"] = valueOf(sample.openedCells);
    putOtherAnswer(f, sample.otherAnswer);
    return f;
}

Sample sampleFrom(const RecordId& id, const Fields& f) {
    Sample sample;
    sample.id = id;
    sample.colonyId = textIn(f, "colony_id").value_or("");
    sample.yardId = textIn(f, "yard_id").value_or("");
    sample.method = textIn(f, "method").value_or(sample.method);
    sample.state = valueFor(stateWords, f, "state");
    sample.step = stepFrom(textIn(f, "step").value_or(""));
    sample.startedAtMs = integerIn(f, "started_at_ms").value_or(0);
    sample.utcOffsetMinutes = static_cast<int>(integerIn(f, "utc_offset_min").value_or(0));
    sample.queen = valueFor(queenWords, f, "queen");
    sample.scoop.volumeMl = realIn(f, "scoop_volume_ml").value_or(halfCupMl);
    sample.scoop.packing = valueFor(packingWords, f, "scoop_packing");
    sample.scoop.beesMean = realIn(f, "bees_mean").value_or(0);
    sample.scoop.beesCv = realIn(f, "bees_cv").value_or(0);
    sample.scoop.source = valueFor(sourceWords, f, "bees_source");
    sample.scoopedAtMs = integerIn(f, "scooped_at_ms");
    sample.jar = textIn(f, "jar").value_or("");
    sample.settleStartedMs = integerIn(f, "settle_started_ms");
    sample.finishedAtMs = integerIn(f, "finished_at_ms");
    sample.abandonedAtMs = integerIn(f, "abandoned_at_ms");
    sample.note = textIn(f, "note").value_or("");
    sample.demo = flagIn(f, "demo");
    sample.removed = flagIn(f, "removed");
    sample.stamp = stampFrom(f);
    sample.shake = shakeFrom(f);
    sample.answer = answerFrom(f);
    sample.board = boardFrom(f);
    sample.openedCells = integerIn(f, "opened_cells");
    sample.otherAnswer = otherAnswerFrom(f);
    return sample;
}

bool liesAhead(const Sample& sample, std::int64_t nowUtcMs) {
    return sample.startedAtMs > nowUtcMs + clocksDifferByMs;
}

} // namespace halfcup::records
