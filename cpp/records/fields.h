// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <variant>

namespace halfcup::records {

/// One kept value. Nothing (monostate) means "not known" and is never written as 0.
using Value = std::variant<std::monostate, std::int64_t, double, std::string>;

/// A record as named values. Names end in their unit where they have one ("latitude_deg", "scooped_at_ms").
using Fields = std::map<std::string, Value, std::less<>>;

/// The kinds of record that are kept field by field with their history.
enum class Kind { Yard, Colony, Sample, Event, Treatment, Treated, ScoopCount, Round };

inline constexpr std::array allKinds{Kind::Yard,      Kind::Colony,  Kind::Sample,     Kind::Event,
                                     Kind::Treatment, Kind::Treated, Kind::ScoopCount, Kind::Round};

/// "yard", "colony", "sample", "event", "treatment", "treated", "scoop_count", "round": the name in the
/// database and in files.
[[nodiscard]] std::string_view nameOf(Kind kind);

/// All field names of a kind, sorted, without the id. The database has one column for each.
[[nodiscard]] std::span<const std::string_view> fieldNames(Kind kind);

} // namespace halfcup::records
