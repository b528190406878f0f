// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace SQLite {
class Database;
}

namespace halfcup::store {

/// Writes all that the database holds, its write-ahead log included, into one file of its own, readable by
/// its owner alone; checks it (SQLite's integrity check) and returns when it is on the disk. A file that is
/// there is replaced: left over from a try that was cut short. For the copy before a migration, a merge, a
/// restore, and for backups.
///
/// The database must not be inside a transaction. Throws StoreError: DiskFull, NotAllowed, FolderMissing,
/// Busy, Damaged (the database itself), or CopyFailed for everything else. What is thrown leaves the database
/// as it was and no half copy behind.
void copyChecked(SQLite::Database& database, const std::string& intoPath);

} // namespace halfcup::store
