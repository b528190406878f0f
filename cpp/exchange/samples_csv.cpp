// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/samples_csv.h"

#include "records/judgement.h"
#include "records/moment.h"

#include <array>

namespace halfcup::exchange {

namespace {

using records::Answer;
using records::Sample;

constexpr int loadDigits = 6; // far below what a count can resolve, and short enough to read

constexpr std::array<std::string_view, 52> columns{
    "sample_id",              // UUID
    "yard",                   // its name
    "colony",                 // its label
    "state",                  // draft, finished, abandoned
    "demo",                   // yes: invented data
    "method",                 // alcohol_wash, ...
    "started_at",             // RFC 3339 with the keeper's offset from UTC, as all times here
    "scooped_at",             //
    "finished_at",            //
    "abandoned_at",           //
    "latitude_deg",           // WGS 84, north positive
    "longitude_deg",          // east positive
    "position_accuracy_m",    // 95 % radius
    "position_is",            // exact, blurred, none
    "position_state",         // stamped, no_fix, denied, ...
    "queen",                  // not_asked, seen_and_safe, not_seen
    "scoop_volume_ml",        //
    "scoop_packing",          // settled, loose
    "bees_mean",              // bees in the jar
    "bees_cv",                // coefficient of variation of the above, 0.1 is ten per cent
    "bees_source",            // book, own_scoops, typed, counted
    "shake_planned_s",        //
    "shaken_s",               // seconds really shaken
    "shake_interrupted",      // yes: the clocks disagreed, the seconds are a guess
    "mites",                  // of the first rinse
    "mites_second_rinse",     //
    "load_q05_per_100",       // mites per 100 bees: lower end of the 90 % range
    "load_q50_per_100",       // median
    "load_q95_per_100",       // upper end
    "treat_line_per_100",     //
    "treat_line_source",      // id of the handbook value, or own
    "chance_over_treat_line", // 0 to 1, that the true load is over the line
    "standing_treat_line",    // under, close, over, cannot_tell
    "own_line_per_100",       // the keeper's own, stricter line
    "chance_over_own_line",   //
    "standing_own_line",      //
    "recovery",               // share of what an alcohol wash finds
    "recovery_sd",            //
    "jar_shape",              // gamma shape of the difference between jars of one colony
    "step",                   // where the wash stands or stopped
    "position_moving",        // yes: the fixes lay further apart than their accuracy explains
    "note",                   //
    "jar",                    // what was written on a jar that waited in the tray
    "board_hours",            // a sticky board under the colony
    "board_share_counted",    // of its cells, 0 to 1
    "cells_opened",           // of drone brood
    "other_count",            // mites on the board, or cells with mites: no load
    "other_unit",             // of the three below: mites_a_day, of_100_drone_cells
    "other_q05",              //
    "other_q50",              //
    "other_q95",              //
    "other_line",             // the handbook's, in the same unit
};

void time(CsvWriter& csv, std::optional<std::int64_t> utcMs, const Sample& sample) {
    if (utcMs)
        csv.text(records::toRfc3339({*utcMs, sample.utcOffsetMinutes}));
    else
        csv.empty();
}

void position(CsvWriter& csv, const SampleRow& row, PositionDetail detail) {
    const auto shown = shownPosition(row.sample.stamp, row.yardPosition, detail);
    if (shown) {
        csv.decimals(shown->latitudeDeg, shown->decimals);
        csv.decimals(shown->longitudeDeg, shown->decimals);
        if (shown->accuracyM)
            csv.decimals(*shown->accuracyM, shown->exact ? 1 : 0);
        else
            csv.empty();
        csv.text(shown->exact ? "exact" : "blurred");
    } else {
        csv.empty();
        csv.empty();
        csv.empty();
        csv.text("none");
    }
    csv.text(nameOf(row.sample.stamp.state));
}

void standing(CsvWriter& csv, std::optional<mites::Standing> standing) {
    if (standing)
        csv.text(wordOf(*standing));
    else
        csv.empty(); // damaged figures stand in their own cells; no word can be drawn from them
}

void emptyCells(CsvWriter& csv, int count) {
    for (int i = 0; i < count; ++i)
        csv.empty();
}

void answerCells(CsvWriter& csv, const Sample& sample) {
    if (!sample.answer)
        return emptyCells(csv, 15);
    const Answer& answer = *sample.answer;
    csv.number(answer.mites);
    if (answer.mitesSecondRinse)
        csv.number(*answer.mitesSecondRinse);
    else
        csv.empty();
    csv.significant(answer.loadQ05, loadDigits);
    csv.significant(answer.loadQ50, loadDigits);
    csv.significant(answer.loadQ95, loadDigits);
    csv.number(answer.lines.treat);
    csv.text(answer.lines.treatSource);
    csv.significant(answer.chanceOver, loadDigits);
    standing(csv, records::standingAgainstTreatLine(sample));
    if (answer.lines.own && answer.chanceOverOwn) {
        csv.number(*answer.lines.own);
        csv.significant(*answer.chanceOverOwn, loadDigits);
        standing(csv, records::standingAgainstOwnLine(sample));
    } else {
        emptyCells(csv, 3);
    }
    csv.number(answer.recovery);
    csv.number(answer.recoverySd);
    csv.number(answer.jarShape);
}

void otherCells(CsvWriter& csv, const Sample& sample) {
    if (!sample.otherAnswer)
        return emptyCells(csv, 9);
    const records::OtherAnswer& answer = *sample.otherAnswer;
    const auto hours = records::hoursOf(sample.board);
    if (hours) {
        csv.significant(*hours, loadDigits);
        csv.significant(records::shareCounted(sample.board), loadDigits);
    } else {
        emptyCells(csv, 2);
    }
    if (sample.openedCells)
        csv.number(*sample.openedCells);
    else
        csv.empty();
    csv.number(answer.count);
    csv.text(sample.openedCells ? "of_100_drone_cells" : "mites_a_day");
    csv.significant(answer.q05, loadDigits);
    csv.significant(answer.q50, loadDigits);
    csv.significant(answer.q95, loadDigits);
    if (answer.line)
        csv.number(*answer.line);
    else
        csv.empty();
}

void scoopAndShake(CsvWriter& csv, const Sample& sample) {
    csv.text(nameOf(sample.queen));
    const records::Scoop& scoop = sample.scoop;
    const bool scooped = scoop.beesMean > 0;
    if (scooped) {
        csv.number(scoop.volumeMl);
        csv.text(nameOf(scoop.packing));
        csv.significant(scoop.beesMean, loadDigits);
        csv.significant(scoop.beesCv, loadDigits);
        csv.text(nameOf(scoop.source));
    } else {
        emptyCells(csv, 5);
    }
    if (scooped)
        csv.number(std::int64_t{sample.shake.plannedS});
    else
        csv.empty();
    if (sample.shake.ended || sample.shake.shakenBeforeMs > 0)
        csv.number(static_cast<double>(sample.shake.shakenBeforeMs) / 1000.0);
    else
        csv.empty();
    csv.flag(sample.shake.interrupted);
}

} // namespace

std::string_view wordOf(mites::Standing standing) {
    switch (standing) {
    case mites::Standing::Under:
        return "under";
    case mites::Standing::Close:
        return "close";
    case mites::Standing::Over:
        return "over";
    case mites::Standing::CannotTell:
        break;
    }
    return "cannot_tell";
}

std::span<const std::string_view> sampleColumns() {
    return columns;
}

void writeSampleHeader(CsvWriter& csv) {
    for (const std::string_view column : columns)
        csv.text(column);
    csv.endRow();
}

void writeSampleRow(CsvWriter& csv, const SampleRow& row, PositionDetail detail) {
    const Sample& sample = row.sample;
    csv.text(sample.id);
    csv.text(row.yardName);
    csv.text(row.colonyLabel);
    csv.text(nameOf(sample.state));
    csv.flag(sample.demo);
    csv.text(sample.method);
    time(csv, sample.startedAtMs, sample);
    time(csv, sample.scoopedAtMs, sample);
    time(csv, sample.finishedAtMs, sample);
    time(csv, sample.abandonedAtMs, sample);
    position(csv, row, detail);
    scoopAndShake(csv, sample);
    answerCells(csv, sample);
    csv.text(nameOf(sample.step));
    csv.flag(sample.stamp.moving);
    csv.text(sample.note);
    csv.text(sample.jar);
    otherCells(csv, sample);
    csv.endRow();
}

} // namespace halfcup::exchange
