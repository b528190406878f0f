// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace SQLite {
class Database;
}

namespace halfcup::store {

// One function for each schema version, each in a file of its own.
void migrateTo1(SQLite::Database& database);
void migrateTo2(SQLite::Database& database);
void migrateTo3(SQLite::Database& database);
void migrateTo4(SQLite::Database& database);
void migrateTo5(SQLite::Database& database);
void migrateTo6(SQLite::Database& database);
void migrateTo7(SQLite::Database& database);
void migrateTo8(SQLite::Database& database);

} // namespace halfcup::store
