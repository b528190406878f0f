// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <span>
#include <string>

namespace SQLite {
class Database;
}

namespace halfcup::store {

/// One numbered step from schema (version - 1) to version. Steps are never changed once a release has run
/// them.
struct Migration {
    int version;
    void (*apply)(SQLite::Database&);
};

/// All steps this program knows, in order, from 1.
[[nodiscard]] std::span<const Migration> allMigrations();

/// Throws StoreError::Newer where the database is ahead of the given steps; writes nothing.
void refuseNewer(SQLite::Database& database, std::span<const Migration> steps);

/// Brings the database to the newest of the given steps. Before each step, except on an empty database, a
/// copy of the database is made beside it ("<name>.before-v<version>") and checked; where that fails nothing
/// is changed. Each step is one transaction together with its number. Throws StoreError: Newer, CopyFailed,
/// DiskFull, Failed.
void migrate(SQLite::Database& database, std::span<const Migration> steps);

/// The name of the copy that is made before a step.
[[nodiscard]] std::string copyNameBefore(const std::string& databasePath, int version);

} // namespace halfcup::store
