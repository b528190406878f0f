// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/other_count.h"

#include "records/field_access.h"

namespace halfcup::records {

namespace {

constexpr double msInHour = 3'600'000;

} // namespace

bool isUnderColony(const BoardStay& board) {
    return board.laidAtMs && !board.pulledAtMs;
}

std::optional<double> hoursOf(const BoardStay& board) {
    if (!board.pulledAtMs)
        return std::nullopt;
    if (board.typedHours)
        return board.typedHours;
    if (!board.laidAtMs || *board.pulledAtMs <= *board.laidAtMs)
        return std::nullopt;
    return static_cast<double>(*board.pulledAtMs - *board.laidAtMs) / msInHour;
}

double shareCounted(const BoardStay& board) {
    if (board.cells <= 0 || board.cellsCounted <= 0 || board.cellsCounted >= board.cells)
        return 1;
    return static_cast<double>(board.cellsCounted) / static_cast<double>(board.cells);
}

void putBoard(Fields& f, const BoardStay& board) {
    f["board_laid_at_ms"] = valueOf(board.laidAtMs);
    f["board_pulled_at_ms"] = valueOf(board.pulledAtMs);
    f["board_hours"] = valueOf(board.typedHours);
    f["board_cells_counted"] = board.cells > 0 ? Value{board.cellsCounted} : Value{};
    f["board_cells"] = board.cells > 0 ? Value{board.cells} : Value{};
}

BoardStay boardFrom(const Fields& f) {
    BoardStay board;
    board.laidAtMs = integerIn(f, "board_laid_at_ms");
    board.pulledAtMs = integerIn(f, "board_pulled_at_ms");
    board.typedHours = realIn(f, "board_hours");
    board.cellsCounted = integerIn(f, "board_cells_counted").value_or(0);
    board.cells = integerIn(f, "board_cells").value_or(0);
    return board;
}

void putOtherAnswer(Fields& f, const std::optional<OtherAnswer>& answer) {
    const auto real = [&](double OtherAnswer::*member) {
        return answer ? Value{(*answer).*member} : Value{};
    };
    const auto maybe = [&](std::optional<double> OtherAnswer::*member) {
        return answer ? valueOf((*answer).*member) : Value{};
    };
    f["other_count"] = answer ? Value{answer->count} : Value{};
    f["other_q05"] = real(&OtherAnswer::q05);
    f["other_q50"] = real(&OtherAnswer::q50);
    f["other_q95"] = real(&OtherAnswer::q95);
    f["other_line"] = maybe(&OtherAnswer::line);
    f["other_line_source"] = answer && answer->line ? Value{answer->lineSource} : Value{};
    f["other_chance_over"] = answer && answer->line ? Value{answer->chanceOver} : Value{};
    f["other_load_q05"] = maybe(&OtherAnswer::loadQ05);
    f["other_load_q50"] = maybe(&OtherAnswer::loadQ50);
    f["other_load_q95"] = maybe(&OtherAnswer::loadQ95);
}

std::optional<OtherAnswer> otherAnswerFrom(const Fields& f) {
    const auto count = integerIn(f, "other_count");
    if (!count)
        return std::nullopt;
    OtherAnswer answer;
    answer.count = *count;
    answer.q05 = realIn(f, "other_q05").value_or(0);
    answer.q50 = realIn(f, "other_q50").value_or(0);
    answer.q95 = realIn(f, "other_q95").value_or(0);
    answer.line = realIn(f, "other_line");
    answer.lineSource = textIn(f, "other_line_source").value_or("");
    answer.chanceOver = realIn(f, "other_chance_over").value_or(0);
    answer.loadQ05 = realIn(f, "other_load_q05");
    answer.loadQ50 = realIn(f, "other_load_q50");
    answer.loadQ95 = realIn(f, "other_load_q95");
    return answer;
}

} // namespace halfcup::records
