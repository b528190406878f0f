// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/named_values.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace halfcup::records {

/// A record as named values. Names end in their unit where they have one ("latitude_deg", "scooped_at_ms").
using Fields = NamedValues;

/// The kinds of record that are kept field by field with their history.
enum class Kind { Yard, Colony, Sample, Event, Treatment, Treated, ScoopCount, Round };

inline constexpr std::array allKinds{Kind::Yard,      Kind::Colony,  Kind::Sample,     Kind::Event,
                                     Kind::Treatment, Kind::Treated, Kind::ScoopCount, Kind::Round};

/// "yard", "colony", "sample", "event", "treatment", "treated", "scoop_count", "round": the name in the
/// database and in files.
[[nodiscard]] std::string_view nameOf(Kind kind);
[[nodiscard]] std::optional<Kind> kindFrom(std::string_view name);

/// All field names of a kind, sorted, without the id. The database has one column for each.
[[nodiscard]] std::span<const std::string_view> fieldNames(Kind kind);

/// What a field may hold, besides nothing: a whole number, any finite number, text, 0 or 1, the id of another
/// record.
enum class FieldType { Whole, Real, Text, Flag, Id };

/// Nothing for a field this version does not know: such a field is kept and passed on as it came.
[[nodiscard]] std::optional<FieldType> typeOf(Kind kind, std::string_view field);
/// A whole number fits a Real too, because other programs write 3.0 as 3.
[[nodiscard]] bool fits(const Value& value, FieldType type);

/// Whether a known field of a record may hold the value: its type, and a range far beyond anything real, so
/// that a stranger's file cannot bring a figure that no arithmetic of ours was made for. Times 0 to 2^48 ms,
/// other whole numbers to 1e9 and reals to 1e12 either way, degrees as on the globe, texts to longestText.
[[nodiscard]] bool fits(const Value& value, Kind kind, std::string_view field);
inline constexpr std::size_t longestText = 100'000; // bytes [convention]

/// The kind of the record that a field of type Id names.
[[nodiscard]] std::optional<Kind> referredKind(Kind kind, std::string_view field);
/// Without such a field a record cannot be shown anywhere: it waits until the rest of it has come.
[[nodiscard]] bool isNeeded(Kind kind, std::string_view field);

} // namespace halfcup::records
