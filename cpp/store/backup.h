// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <cstdint>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>

namespace halfcup::store {

/// A backup is one SQLite database that any SQLite reads: all records with their history and their exact
/// positions, and besides a table "backup_note" (name, value) that says when it was made and lets it be
/// checked: "format" (1), "made_at_ms" (UTC) and "utc_offset_min", "schema" (as user_version), "rows <table>"
/// for each table, and "sha256", a hash over all of it (content_hash.h).
inline constexpr const char* backupEnding = ".halfcup-backup";

/// Settings of the database about its own last backup, whole numbers and a path; nothing before the first.
inline constexpr const char* lastBackupAtSetting = "last_backup_at_ms"; // UTC
inline constexpr const char* lastBackupWashesSetting = "last_backup_washes";
inline constexpr const char* lastBackupPlaceSetting = "last_backup_place";
/// So many washes in no backup, and the keeper is reminded.
inline constexpr int washesUntilReminder = 10;

/// Why a file cannot be used as a backup, in kinds that a keeper can do something about. what() holds the
/// technical text.
class BackupError : public std::runtime_error {
public:
    enum class Kind {
        NotThere,   // no file of that name
        NotAFile,   // a folder, a device
        NotAllowed, // there, but this user may not read it
        Empty,      // 0 bytes
        NotOurs,    // something else: a letter, a picture, another program's database
        Cut,        // its end is missing: perhaps it is still being copied
        Damaged,    // not as it was written
        Newer,      // written by a newer Halfcup
        SameFile,   // it is the very database that it is to replace
    };
    BackupError(Kind kind, const std::string& technical)
        : std::runtime_error(technical)
        , m_kind(kind) {}
    [[nodiscard]] Kind kind() const { return m_kind; }

private:
    Kind m_kind;
};

/// What is in a backup, for the keeper to see before anything is done with it.
struct BackupContents {
    std::string path;
    std::int64_t sizeBytes = 0;
    bool isBackup = true; // false: a plain database of ours. Its form was checked; there is no hash to check
    std::optional<records::Moment> madeAt; // nothing for a plain database
    int schema = 0;
    std::int64_t yards = 0; // records marked as removed are in the file, but not in these figures
    std::int64_t colonies = 0;
    std::int64_t washes = 0; // finished, of any method
    std::int64_t treatments = 0;
    std::optional<records::Date> newestWash; // the keeper's local day
    std::map<std::string, std::int64_t> rows;
    std::string sha256; // of what is in the file now; for a backup it is the noted one
};

/// Writes a backup of the database, which may be open in this program: beside its place first, read back and
/// checked as lookInto() does, on the disk, and only then moved there. A file of that name is replaced, so
/// look first. now: of the phone. Throws StoreError: FolderMissing, NotAllowed, DiskFull, NotOurs, Newer,
/// Damaged, Busy, CopyFailed, Failed. What is thrown leaves the place as it was.
BackupContents makeBackup(const std::string& databasePath, const std::string& place,
                          const records::Moment& now);

/// Reads all of the file and checks it: SQLite's integrity and foreign key checks, whose it is, its schema,
/// and for a backup each table's number of rows and the hash. Nothing is written, also not beside it. Throws
/// BackupError.
///
/// Not for a database that this program has open: closing the file here would end SQLite's locks on it.
[[nodiscard]] BackupContents lookInto(const std::string& path);

} // namespace halfcup::store
