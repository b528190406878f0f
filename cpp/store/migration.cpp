// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

#include "store/migrations.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <array>
#include <filesystem>
#include <system_error>

namespace halfcup::store {

namespace {

constexpr std::array migrations{Migration{1, &migrateTo1}, Migration{2, &migrateTo2},
                                Migration{3, &migrateTo3}, Migration{4, &migrateTo4}};

int versionOf(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt();
}

bool isEmpty(SQLite::Database& database) {
    return database.execAndGet("SELECT count(*) FROM sqlite_master").getInt() == 0;
}

/// A whole copy through SQLite itself: the write-ahead log is part of the file, so copying the file alone
/// would lose the newest records.
void copyBefore(SQLite::Database& database, int version) {
    const std::string name = copyNameBefore(database.getFilename(), version);
    const auto remove = [&] {
        std::error_code ignored;
        std::filesystem::remove(name, ignored);
    };
    const auto failed = [&](const std::string& technical) {
        remove(); // half a copy helps nobody and fills the disk
        return StoreError(StoreError::Kind::CopyFailed, technical);
    };
    remove(); // left over from a try that was cut short
    try {
        SQLite::Statement vacuum(database, "VACUUM INTO ?");
        vacuum.bind(1, name);
        vacuum.exec();
        SQLite::Database copy(name, SQLite::OPEN_READONLY);
        const std::string verdict = copy.execAndGet("PRAGMA integrity_check").getString();
        if (verdict != "ok")
            throw failed("the copy fails its check: " + verdict);
        std::filesystem::permissions(name, std::filesystem::perms::owner_read |
                                               std::filesystem::perms::owner_write);
    } catch (const SQLite::Exception& error) {
        throw failed(error.what());
    } catch (const std::filesystem::filesystem_error& error) {
        throw failed(error.what());
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
            database.exec("PRAGMA user_version = " + std::to_string(step.version));
            transaction.commit();
        });
    }
}

} // namespace halfcup::store
