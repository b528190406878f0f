// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <string>

namespace halfcup::bench {

/// When the last wash was made, and a moment of the day after.
inline constexpr std::int64_t lastWashMs = 1'781'514'000'000;      // 2026-06-15T09:00Z
inline constexpr std::int64_t dayAfterwardsMs = 1'781'600'400'000; // 2026-06-16T09:00Z

/// Makes a database: yards of twenty colonies in a row, two kilometres apart, each colony washed once a month
/// up to 15 June 2026, as far back as the samples reach. Every wash is kept as the app keeps one, but in one
/// step instead of fifteen, with three acts of counting. The same arguments give the same records, their ids
/// included. At least a sample for each colony. Throws store::StoreError.
void makeManyRecords(const std::string& path, int colonies, int samples);

} // namespace halfcup::bench
