// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>

namespace halfcup::store {

/// How many there are that are not removed. SQLite counts them one by one in their index: 100,000 take some
/// milliseconds. Throws SQLite::Exception.
[[nodiscard]] std::int64_t countFinishedWashes(const SQLite::Database& database);

} // namespace halfcup::store
