// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/backup.h"
#include "store/store.h"

#include <string>
#include <vector>

namespace halfcup::store {

/// What a restore did.
struct Restored {
    BackupContents contents; // what is there now
    std::string keptAside;   // the database that was there before; empty where there was none
};

/// Settings that say where the app reaches: a receiver, perhaps on a network, and the folder it exchanges
/// through by itself. A backup may be a stranger's, so that it never brings them.
inline constexpr const char* positionSourceSetting = "position_source";
inline constexpr const char* exchangeFolderSetting = "exchange_folder";
inline constexpr const char* exchangeFolderStateSetting = "exchange_folder_state";
inline constexpr const char* exchangeFolderResumedSetting = "exchange_folder_resumed";
inline constexpr const char* settingsThatReachOut[] = {
    positionSourceSetting, exchangeFolderSetting, exchangeFolderStateSetting, exchangeFolderResumedSetting};

/// Puts a backup (or a plain database of ours) in the place of the database. No Store may be open on it, in
/// no program. In this order:
/// 1. The backup is looked into, copied beside the database, checked again and brought to this program's
///    schema.
/// 2. The copy gets a device id of its own: two phones out of one backup must never make the same revision
///    stamps, or one's changes would hide the other's. Of the present database it takes over the settings
///    that are named, for a restore brings back records and not the hand that holds the phone; and it has of
///    settingsThatReachOut what the present one has, and nothing else.
/// 3. The present database is kept aside beside it as "<name>.before-restore-<UTC yyyymmdd-hhmmss>", a
/// checked
///    copy; one that SQLite cannot read any more is moved there as it is, its log with it.
/// 4. The copy takes the database's place in one rename.
///
/// Whatever stops it before the last step, also a dead battery, leaves the database as it was; after it the
/// restored one is there. (Only where the present one is beyond reading there is a moment without any.)
/// Throws BackupError for the backup and StoreError for everything else; then nothing has changed.
Restored restoreBackup(const std::string& backupPath, const std::string& databasePath, const StoreHost& host,
                       const std::vector<std::string>& settingsOfThisPhone = {});

/// What lies before the time in the name of a database that was kept aside: "<name>.before-restore-".
[[nodiscard]] std::string keptAsidePrefix(const std::string& databasePath);

} // namespace halfcup::store
