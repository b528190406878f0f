// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Database.h>

#include <memory>
#include <string>

namespace halfcup::store {

/// SQLite's application id of a Halfcup database ("HCup" in ASCII), so that another program's file is known
/// as such.
inline constexpr int applicationId = 0x48437570;

/// Opens or makes the file with the settings every Halfcup database has. Throws StoreError.
[[nodiscard]] std::unique_ptr<SQLite::Database> openDatabase(const std::string& path);

} // namespace halfcup::store
