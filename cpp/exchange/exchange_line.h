// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/revision.h"

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>

/// The lines of an exchange file. exchange-file.md beside this says what they look like and why.
namespace halfcup::exchange {

inline constexpr int exchangeFormat = 1;                           // what this version writes
inline constexpr std::size_t longestLine = 512 * 1024;             // bytes, without the line end [convention]
inline constexpr std::int64_t largestExchangeFile = 1'000'000'000; // bytes [convention]
inline constexpr std::size_t mostSeen = 500;                       // phones named in a header [convention]
/// How every file begins: by it a file can be told from others, and a cut one from a stranger's.
inline constexpr std::string_view exchangeMagic = R"({"halfcup":"exchange")";

/// No stamp is later. A reader with a clock draws the line nearer: see latestStampMs().
inline constexpr std::int64_t endOfTimeMs = (std::int64_t{1} << 48) - 1; // as in a record's id
/// The latest time of a stamp that is believed: 25 years after the reader's own clock, or after 2026 where
/// that clock is behind [convention]. A receiver of satellites that has lost count of the weeks is 19.6
/// years off (1024 weeks) and still heard. A stamp of the year 10000 would draw every clock it meets after
/// it, and after the last possible stamp none could be made at all.
[[nodiscard]] std::int64_t latestStampMs(std::int64_t nowUtcMs);

/// The first line of a file or of what was added to it later.
struct ExchangeHeader {
    int format = exchangeFormat;
    int needs = exchangeFormat;                 // the oldest format whose readers may read this
    std::string device;                         // id of the phone that wrote it
    std::string written;                        // when by its clock, RFC 3339; for people
    std::map<std::string, std::int64_t> counts; // how many records of each kind the phone held; for people
    std::map<std::string, std::string> seen;    // device -> the greatest stamp of it that the writer knew
};

/// The last line of what one header began.
struct ExchangeEnd {
    std::int64_t lines = 0; // before this one, the header included
    std::string sha256;     // of all bytes before this line, from the header's first; hexadecimal
};

/// What is wrong with a line, in kinds that a sentence can be made of.
enum class LineTrouble {
    Damaged,   // its own check sum does not match, or it is no line of this format
    TooLong,   // longer than longestLine
    TooDeep,   // nested deeper than the format goes
    BadId,     // the id of a record is none
    BadStamp,  // a stamp is none, or of a time that cannot be
    BadField,  // a name or value cannot be; the field says which
    BadCount,  // an act of counting cannot be
    OtherKind, // the record is known here as one of another kind
    TooMuch,   // there is more of one record than any has
};

struct DamagedLine {
    std::int64_t number = 0; // from 1
    LineTrouble trouble = LineTrouble::Damaged;
    std::string field; // for BadField; of a first line its member
};

/// One line without its line end, its check sum in place.
/// Of more phones than mostSeen those are named that wrote last: a header must stay one line.
[[nodiscard]] std::string headerLine(const ExchangeHeader& header);
[[nodiscard]] std::string endLine(const ExchangeEnd& end);
/// Some of a record: revisions sorted by stamp.
[[nodiscard]] std::string partLine(const records::RecordId& id, std::string_view kind,
                                   std::span<const records::Revision> revisions,
                                   std::span<const records::StampedCount> counts);

/// A line that was read: one of the three, or what is wrong with it.
struct ReadLine {
    std::optional<ExchangeHeader> header;
    std::optional<records::RecordPart> part;
    std::optional<ExchangeEnd> end;
    LineTrouble trouble = LineTrouble::Damaged; // where it is none of them
    std::string field;
};
/// Fields and members that only a newer version knows: fields and kinds of records are read, other members
/// are passed over. latestMs: what has a later stamp is refused.
[[nodiscard]] ReadLine readLine(std::string_view line, std::int64_t latestMs = endOfTimeMs);

} // namespace halfcup::exchange
