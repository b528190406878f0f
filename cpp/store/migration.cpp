// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

#include "store/checked_copy.h"
#include "store/migrations.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <array>

namespace halfcup::store {

namespace {

constexpr std::array migrations{Migration{1, &migrateTo1}, Migration{2, &migrateTo2},
                                Migration{3, &migrateTo3}, Migration{4, &migrateTo4},
                                Migration{5, &migrateTo5}, Migration{6, &migrateTo6},
                                Migration{7, &migrateTo7}, Migration{8, &migrateTo8}};

constexpr int firstMerging = 5; // before this schema nothing came from elsewhere

int versionOf(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt();
}

bool isEmpty(SQLite::Database& database) {
    return database.execAndGet("SELECT count(*) FROM sqlite_master").getInt() == 0;
}

/// Whatever stops the copy, also a full disk: the keeper hears that nothing was changed.
void copyBefore(SQLite::Database& database, int version) {
    try {
        copyChecked(database, copyNameBefore(database.getFilename(), version));
    } catch (const StoreError& error) {
        throw StoreError(StoreError::Kind::CopyFailed, error.what());
    }
}

} // namespace

std::span<const Migration> allMigrations() {
    return migrations;
}

std::string copyNameBefore(const std::string& databasePath, int version) {
    return databasePath + ".before-v" + std::to_string(version);
}

void refuseNewer(SQLite::Database& database, std::span<const Migration> steps) {
    const int newest = steps.empty() ? 0 : steps.back().version;
    const int present = guarded([&] { return versionOf(database); });
    if (present > newest)
        throw StoreError(StoreError::Kind::Newer, "schema " + std::to_string(present) +
                                                      ", this program knows " + std::to_string(newest));
}

void migrate(SQLite::Database& database, std::span<const Migration> steps) {
    refuseNewer(database, steps);
    const int present = guarded([&] { return versionOf(database); });
    const bool empty = guarded([&] { return isEmpty(database); });
    if (present == 0 && !empty)
        throw StoreError(StoreError::Kind::NotOurs, "tables of another program");
    for (const Migration& step : steps) {
        if (step.version <= present)
            continue;
        if (!empty)
            copyBefore(database, step.version);
        guarded([&] {
            SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
            step.apply(database);
            if (step.version > firstMerging) // a field that was only passed on so far may have a column now
                database.exec("INSERT OR IGNORE INTO waiting(record_id, kind)"
                              " SELECT DISTINCT record_id, kind FROM revision");
            database.exec("PRAGMA user_version = " + std::to_string(step.version));
            transaction.commit();
        });
    }
}

} // namespace halfcup::store
