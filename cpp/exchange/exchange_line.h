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
    BadField,  // a field's name or value cannot be; the field says which
    BadCount,  // an act of counting cannot be
    OtherKind, // the record is known here as one of another kind
};

struct DamagedLine {
    std::int64_t number = 0; // from 1
    LineTrouble trouble = LineTrouble::Damaged;
    std::string field; // for BadField
};

/// One line without its line end, its check sum in place.
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
/// are passed over.
[[nodiscard]] ReadLine readLine(std::string_view line);

} // namespace halfcup::exchange
