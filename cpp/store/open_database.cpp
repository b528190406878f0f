// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/open_database.h"

#include "store/sqlite_errors.h"

#include <SQLiteCpp/Statement.h>

#include <filesystem>
#include <fstream>
#include <system_error>

namespace halfcup::store {

namespace fs = std::filesystem;

namespace {

constexpr int busyTimeoutMs = 3000;

/// Makes an empty file only its owner can read, before SQLite writes anything into it. The log files beside
/// it take over its permissions.
void makePrivate(const std::string& path) {
    std::error_code error;
    const fs::path folder = fs::path(path).parent_path();
    if (!folder.empty() && !fs::is_directory(folder, error)) // no folder named: the working folder
        throw StoreError(StoreError::Kind::FolderMissing, "no folder for " + path);
    if (fs::exists(path, error))
        return;
    std::ofstream file(path, std::ios::app);
    if (!file)
        throw StoreError(StoreError::Kind::NotAllowed, "cannot create " + path);
    file.close();
    fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write, error);
}

void checkOurs(SQLite::Database& database) {
    const bool empty = database.execAndGet("SELECT count(*) FROM sqlite_master").getInt() == 0;
    const int id = database.execAndGet("PRAGMA application_id").getInt();
    const bool free = empty && id == 0;
    if (!free && id != applicationId)
        throw StoreError(StoreError::Kind::NotOurs, "application id " + std::to_string(id));
}

} // namespace

std::unique_ptr<SQLite::Database> openDatabase(const std::string& path) {
    makePrivate(path);
    return guarded([&] {
        std::unique_ptr<SQLite::Database> database;
        try {
            database = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE, busyTimeoutMs);
        } catch (const SQLite::Exception& error) {
            throw StoreError(StoreError::Kind::NotAllowed,
                             error.what()); // the file is there, see makePrivate
        }
        checkOurs(*database);
        // A tap is acknowledged only once it is on the disk, not in a cache that a dead battery loses.
        database->exec("PRAGMA synchronous = FULL");
        database->exec("PRAGMA foreign_keys = ON");
        return database;
    });
}

void claim(SQLite::Database& database) {
    guarded([&] {
        if (database.execAndGet("PRAGMA application_id").getInt() != applicationId)
            database.exec("PRAGMA application_id = " + std::to_string(applicationId));
        database.exec("PRAGMA journal_mode = WAL");
    });
}

} // namespace halfcup::store
