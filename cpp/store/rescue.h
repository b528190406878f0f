// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/backup.h"
#include "store/store.h"

#include <string>

namespace halfcup::store {

/// What a yard and a colony are called whose own entry is lost while others belong to it, in the keeper's
/// language.
struct StandInNames {
    std::string yard;
    std::string colony;
};

/// What could be read of a damaged database.
struct Rescued {
    BackupContents contents;   // what is in the new database
    std::int64_t values = 0;   // of records, and acts of counting, that were read
    std::int64_t lost = 0;     // of which only the index was read: a lower bound of what is gone
    std::int64_t waiting = 0;  // records of which too little was read to show them; a merge may complete them
    std::int64_t standIns = 0; // yards and colonies that stand there under a name of StandInNames
    std::int64_t badPages = 0; // pages that could not be read, or not all of them
    std::string keptAside;     // the damaged database, as it was
};

/// Reads what can still be read of a damaged database into a new one and puts that into its place. No Store
/// may be open on it, in no program.
/// 1. The file and its log are read page by page (database_pages.h); nothing in them is changed.
/// 2. Every value with its stamp and every act of counting go into a new database beside it, with the
///    settings that were found; rows follow from them (record_builder.h). Where a row says something else
///    than the values that were found, the newest value was lost: the row is believed. The new database is
///    another phone to all others, as after a restore (restore.h says why), so that nothing which only they
///    still know is taken for known here.
/// 3. The new database is checked as a backup is.
/// 4. The damaged file is copied to "<name>.damaged-<UTC yyyymmdd-hhmmss>", its log with it, and the new one
///    takes its place, once and for all even where that is cut short (next_database.h).
///
/// Throws StoreError: NotOurs where nothing of ours can be read in it, Busy where a program has it open,
/// DiskFull, NotAllowed, FolderMissing, Failed. Then nothing has changed, or the next opening brings the new
/// one to its place.
Rescued rescue(const std::string& databasePath, const StoreHost& host, const StandInNames& names);

/// Moves a database that cannot be used to "<name>.damaged-<time>", its log with it, and returns that name.
/// Throws StoreError; then it lies where it was.
std::string moveDamagedAside(const std::string& databasePath, std::int64_t utcNowMs);

/// What lies before the time in that name.
[[nodiscard]] std::string damagedPrefix(const std::string& databasePath);

/// Whether the last program that had the database open was killed, or still has it: its log is there. The
/// last one to close it takes the log into the file.
[[nodiscard]] bool wasNotClosed(const std::string& databasePath);

/// What is wrong with the form of the database (SQLite's quick check: all pages are read, nothing is
/// written); empty where nothing is, where there is no database yet, or where the file is none of ours.
/// Throws StoreError.
[[nodiscard]] std::string damageIn(const std::string& databasePath);

} // namespace halfcup::store
