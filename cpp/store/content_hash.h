// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <map>
#include <string>

namespace SQLite {
class Database;
}

namespace halfcup::store {

/// The table that makes a backup out of a database: what is noted in it, by name. See backup.h.
inline constexpr const char* noteTable = "backup_note";
/// The name in it under which the hash stands: the one row that the hash leaves out.
inline constexpr const char* hashName = "sha256";

/// All that a database holds, in two figures that do not depend on how SQLite has laid it out in the file.
struct Content {
    std::map<std::string, std::int64_t> rows; // of each table, by its name
    std::string sha256;                       // 64 lower-case hexadecimal digits
};

/// Reads every row of every table once, whatever tables a later version adds. Throws SQLite::Exception where
/// the database cannot be read.
///
/// The hash (FIPS 180-4, SHA-256) runs over these parts, each value as a tag and its bytes, numbers
/// big-endian in 64 bits: "n" for NULL; "i" and the integer; "r" and the IEEE 754 bits; "t" or "b", the
/// length, and the bytes of a text or a blob.
/// 1. The schema: for each object of sqlite_master in the order of type and name "S", then type, name, table
///    and SQL.
/// 2. For each table in the order of names "T" and its name, then for each row in the order of its primary
///    key "R" and its values in the order of the columns.
/// Objects whose name starts with "sqlite_" are SQLite's own and left out.
[[nodiscard]] Content contentOf(const SQLite::Database& database);

} // namespace halfcup::store
