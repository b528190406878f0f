// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace halfcup::records {

/// The id of a record: a UUID of version 7 (RFC 9562, section 5.7) in its usual 36 characters, lower case.
/// Ids made on different phones never meet, and sort by the time they were made.
using RecordId = std::string;

/// utcMs: milliseconds since 1970 (only the low 48 bits are kept, as the RFC says). chanceHigh and chanceLow:
/// 128 fresh random bits, of which 74 are used.
[[nodiscard]] RecordId makeRecordId(std::int64_t utcMs, std::uint64_t chanceHigh, std::uint64_t chanceLow);

/// True for 8-4-4-4-12 lower-case hexadecimal digits of version 7 and variant 10.
[[nodiscard]] bool isRecordId(std::string_view text);

/// The time inside an id, milliseconds since 1970; -1 where text is no record id.
[[nodiscard]] std::int64_t madeAtUtcMs(std::string_view id);

} // namespace halfcup::records
