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

/// Opens the file, or makes an empty one, with the settings of a connection that every Halfcup database has.
/// Nothing is written into a file that is there: it may yet turn out to be a newer one. Throws StoreError.
[[nodiscard]] std::unique_ptr<SQLite::Database> openDatabase(const std::string& path);

/// Writes into the file that it is one of Halfcup's and keeps a write-ahead log. Comes before the first
/// table: a file with tables and without the application id is another program's. Throws StoreError.
void claim(SQLite::Database& database);

} // namespace halfcup::store
