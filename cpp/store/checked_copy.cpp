// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/checked_copy.h"

#include "store/database_files.h"
#include "store/durable_file.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace halfcup::store {

namespace {

/// Through SQLite itself: the write-ahead log is part of the database, so copying the file alone would lose
/// the newest records.
void copyAndCheck(SQLite::Database& database, const std::string& intoPath) {
    makeEmptyPrivate(intoPath); // VACUUM INTO accepts an empty file, and so it is private from the first byte
    SQLite::Statement vacuum(database, "VACUUM INTO ?");
    vacuum.bind(1, intoPath);
    vacuum.exec();
    const SQLite::Database copy(intoPath, SQLite::OPEN_READONLY);
    SQLite::Statement check(copy, "PRAGMA integrity_check");
    check.executeStep();
    const std::string verdict = check.getColumn(0).getString();
    if (verdict != "ok")
        throw StoreError(StoreError::Kind::CopyFailed, "the copy fails its check: " + verdict);
    syncFile(intoPath);
}

} // namespace

void copyChecked(SQLite::Database& database, const std::string& intoPath) {
    removeDatabase(intoPath); // with its journal: SQLite would roll the copy back to what it was before
    try {
        guarded([&] { copyAndCheck(database, intoPath); });
    } catch (const StoreError& error) {
        removeDatabase(intoPath); // half a copy helps nobody and fills the disk
        if (error.kind() == StoreError::Kind::Failed)
            throw StoreError(StoreError::Kind::CopyFailed, error.what());
        throw;
    }
}

} // namespace halfcup::store
