// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/open_database.h"

#include "store/durable_file.h"
#include "store/next_database.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/Statement.h>

#include <chrono>
#include <filesystem>
#include <sqlite3.h>
#include <system_error>
#include <thread>
#include <unistd.h>

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
    makePrivateWhereMissing(path);
}

void checkOurs(SQLite::Database& database) {
    const bool empty = database.execAndGet("SELECT count(*) FROM sqlite_master").getInt() == 0;
    const int id = database.execAndGet("PRAGMA application_id").getInt();
    const bool free = empty && id == 0;
    if (!free && id != applicationId)
        throw StoreError(StoreError::Kind::NotOurs, "application id " + std::to_string(id));
}

constexpr const char* onlyForReading = " could only be opened for reading";

/// Only who is alone can bring a database into the mode with a log. While another program does just that,
/// SQLite says at once that it is busy; while one only reads, it waits by itself as it does elsewhere.
void keepLog(SQLite::Database& database) {
    const auto end = std::chrono::steady_clock::now() + std::chrono::milliseconds(busyTimeoutMs);
    int code = database.tryExec("PRAGMA journal_mode = WAL");
    while ((code & 0xFF) == SQLITE_BUSY && std::chrono::steady_clock::now() < end) {
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
        code = database.tryExec("PRAGMA journal_mode = WAL");
    }
    if (code != SQLITE_OK)
        throw SQLite::Exception(database.getHandle(), code);
}

/// SQLite opens for reading what it cannot open for writing, whatever the reason, also the log alone: every
/// later save would be refused until the app is started anew. A file that is read-only may be read.
void checkWritable(SQLite::Database& database) {
    const std::string path = database.getFilename();
    if (sqlite3_db_readonly(database.getHandle(), "main") == 1) {
        if (::access(path.c_str(), W_OK) == 0)
            throw StoreError(StoreError::Kind::Failed, path + onlyForReading);
        return;
    }
    database.setBusyTimeout(0);
    const int code = database.tryExec("BEGIN IMMEDIATE") & 0xFF;
    database.setBusyTimeout(busyTimeoutMs);
    if (code == SQLITE_OK)
        database.exec("ROLLBACK");
    if (code == SQLITE_READONLY)
        throw StoreError(StoreError::Kind::Failed, "the log of " + path + onlyForReading);
    // A disk that fails just now: the next look at the log would open it for reading, and so it would stay.
    if (code == SQLITE_IOERR || code == SQLITE_CANTOPEN)
        throw SQLite::Exception(database.getHandle(), code);
}

} // namespace

std::unique_ptr<SQLite::Database> openDatabase(const std::string& path) {
    endReplacement(path);
    makePrivate(path);
    return guarded([&] {
        std::unique_ptr<SQLite::Database> database;
        try {
            // No lock around each value that is read: one thread at a time has the connection.
            database = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX,
                                                          busyTimeoutMs);
        } catch (const SQLite::Exception& error) {
            throw StoreError(StoreError::Kind::NotAllowed,
                             error.what()); // the file is there, see makePrivate
        }
        checkOurs(*database);
        // A tap is acknowledged only once it is on the disk, not in a cache that a dead battery loses.
        database->exec("PRAGMA synchronous = FULL");
        database->exec("PRAGMA foreign_keys = ON");
        // 8 MB, where SQLite's usual 2 MB let pages of a thousand colonies go that the same question needs
        // again.
        database->exec("PRAGMA cache_size = -8000");
        return database;
    });
}

void claim(SQLite::Database& database) {
    guarded([&] {
        if (database.execAndGet("PRAGMA application_id").getInt() != applicationId)
            database.exec("PRAGMA application_id = " + std::to_string(applicationId));
        keepLog(database);
        checkWritable(database);
    });
}

} // namespace halfcup::store
