// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_line.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

class QIODevice;
class QString;

namespace halfcup::exchange {

/// Why a file is not taken. What a taker was handed before a disk failed has to be dropped then.
enum class ExchangeRefusal {
    None,
    NotThere,
    CannotRead, // no permission, a folder, a disk that fails
    Empty,
    TooLarge, // over largestExchangeFile
    NotOurs,
    Newer, // written for a newer Halfcup alone
};

/// What came out of reading a file.
struct ExchangeReport {
    ExchangeRefusal refusal = ExchangeRefusal::None;
    std::int64_t lines = 0;
    std::int64_t parts = 0;           // records, or parts of them, that were taken
    std::vector<DamagedLine> damaged; // at most mostDamagedNamed of them
    std::int64_t damagedCount = 0;
    bool cut = false;         // the end is missing
    bool incomplete = false;  // lines are missing from the middle, or not where they were written
    bool partlyNewer = false; // some of it is for a newer Halfcup alone, and was passed over
    ExchangeHeader header;    // the first one

    static constexpr std::size_t mostDamagedNamed = 1000;

    [[nodiscard]] bool isWhole() const {
        return refusal == ExchangeRefusal::None && damagedCount == 0 && !cut && !incomplete && !partlyNewer;
    }
};

/// What is read goes here, in the order of the file.
struct ExchangeTaker {
    std::function<void(const ExchangeHeader&)> header;
    /// False: it cannot be taken (LineTrouble::OtherKind).
    std::function<bool(const records::RecordPart&)> part;
    std::int64_t latestMs = endOfTimeMs; // the latest time of a stamp that is believed: latestStampMs()
};

/// Reads from where the device is to its end, or to the byte before `until`. Holds one line. Every intact
/// line is handed on, every damaged one named; a damaged first line does not spoil the rest. A byte order
/// mark in front, CR LF for LF, empty lines and a last line without its end, as mail programs and editors
/// make them, are taken as they were meant.
[[nodiscard]] ExchangeReport readExchange(QIODevice& device, const ExchangeTaker& taker,
                                          std::int64_t until = largestExchangeFile);
[[nodiscard]] ExchangeReport readExchangeFile(const QString& path, const ExchangeTaker& taker);

/// How far, counted from the start of the device, the file is complete: up to the last end line whose sum
/// matches. What comes after it is still being copied, or was cut. from: where a header begins.
[[nodiscard]] std::int64_t completeUpTo(QIODevice& device, std::int64_t from);

} // namespace halfcup::exchange
