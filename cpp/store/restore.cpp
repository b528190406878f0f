// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/restore.h"

#include "store/backup_file.h"
#include "store/checked_copy.h"
#include "store/content_hash.h"
#include "store/database_files.h"
#include "store/durable_file.h"
#include "store/next_database.h"
#include "store/open_database.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <filesystem>

namespace halfcup::store {

namespace fs = std::filesystem;

namespace {

using Settings = std::vector<std::pair<std::string, records::Value>>;

Settings settingsIn(SQLite::Database& database, const std::vector<std::string>& names) {
    Settings settings;
    SQLite::Statement select(database, "SELECT value FROM setting WHERE name = ?");
    for (const std::string& name : names) {
        select.bind(1, name);
        if (select.executeStep())
            settings.emplace_back(name, valueIn(select, 0));
        select.reset();
    }
    return settings;
}

/// From a backup to a database of this phone.
void makeOwn(SQLite::Database& database, const BackupContents& contents, const Settings& settings) {
    SQLite::Transaction transaction(database);
    database.exec(std::string("DROP TABLE IF EXISTS ") + noteTable);
    SQLite::Statement keep(database, "INSERT INTO setting(name, value) VALUES (?, ?)"
                                     " ON CONFLICT(name) DO UPDATE SET value = excluded.value");
    SQLite::Statement drop(database, "DELETE FROM setting WHERE name = ?");
    for (const char* name : settingsThatReachOut) {
        drop.bind(1, name);
        drop.exec();
        drop.reset();
    }
    const auto set = [&](const std::string& name, const records::Value& value) {
        keep.bind(1, name);
        bindValue(keep, 2, value);
        keep.exec();
        keep.reset();
    };
    for (const auto& [name, value] : settings)
        set(name, value);
    if (contents.isBackup) { // noted in the database only after the backup was made
        set(lastBackupAtSetting, contents.madeAt->utcMs);
        set(lastBackupWashesSetting, contents.washes);
        set(lastBackupPlaceSetting, contents.path);
    }
    transaction.commit();
}

} // namespace

/// See restore.h for why. The phone that made the backup is one of the others from now on, of which this one
/// knows all that is in the backup.
void becomeAnother(Store& store) {
    const std::string before = std::get<std::string>(store.setting("device_id"));
    store.inOneTransaction([&] {
        SQLite::Statement know(store.database(),
                               "INSERT INTO device(id, latest) SELECT ?1, max(stamp) FROM"
                               " (SELECT stamp FROM revision UNION ALL SELECT stamp FROM count_event)"
                               " WHERE substr(stamp, 27) = ?1 HAVING max(stamp) IS NOT NULL"
                               " ON CONFLICT DO UPDATE SET latest = max(latest, excluded.latest)");
        know.bind(1, before);
        know.exec();
        store.setSetting("device_id", store.newId());
    });
}

namespace {

void makeReady(const BackupContents& contents, const std::string& path, const StoreHost& host,
               const Settings& settings) {
    {
        const auto source = openForReading(contents.path, formOf(contents.path));
        copyChecked(*source, path);
    }
    {
        SQLite::Database copy(path, SQLite::OPEN_READWRITE);
        if (contentOf(copy).sha256 != contents.sha256)
            throw BackupError(BackupError::Kind::Damaged, "it changed while it was read");
        makeOwn(copy, contents, settings);
    }
    {
        // Brings it to the newest schema, still as the phone that made it: steps use its id.
        Store store(path, host);
        becomeAnother(store);
        const std::string report = store.integrityReport();
        if (report != "ok")
            throw BackupError(BackupError::Kind::Damaged, report);
    }
    SQLite::Database made(path, SQLite::OPEN_READWRITE);
    settle(made);
}

bool isUnreadable(const StoreError& error) {
    return error.kind() == StoreError::Kind::Damaged || error.kind() == StoreError::Kind::CopyFailed;
}

/// The database that is to be replaced: its settings, and a copy of it aside.
class Present {
public:
    explicit Present(std::string path)
        : m_path(std::move(path)) {
        std::error_code error;
        m_isThere = fs::exists(m_path, error);
        if (m_isThere)
            tryTo([this] { m_database = openDatabase(m_path); });
    }

    Settings settings(const std::vector<std::string>& names) {
        Settings found;
        if (m_database)
            tryTo([&] {
                if (m_database->tableExists("setting"))
                    found = settingsIn(*m_database, names);
            });
        return found;
    }

    /// Where a copy of it is kept; empty where there was none. The name is given to what is whole only: after
    /// a kill, a copy of that name is offered to the keeper.
    std::string keepAside(const std::string& aside) {
        if (!m_isThere)
            return {};
        if (m_database)
            tryTo([&] {
                const NextDatabase copy(settingAside(m_path));
                copyChecked(*m_database, copy.path());
                moveIntoPlace(copy.path(), aside);
            });
        m_aside = aside;
        if (m_database) { // still: it is sound
            settle(*m_database);
            m_database.reset();
        } else {
            copyAsItIs(m_path, aside); // nothing is thrown away
        }
        return aside;
    }

    /// A log that nobody could take into it, or a journal that could not be removed, must not outlive it.
    void giveWayTo(const std::string& next) const {
        std::error_code error;
        const bool isAlone = std::ranges::none_of(
            besideDatabase, [&](const char* ending) { return fs::exists(m_path + ending, error); });
        if (isAlone)
            moveIntoPlace(next, m_path);
        else
            replaceDatabase(next, m_path);
    }

    /// A copy of what is still in its place helps nobody and fills the disk.
    void stay() const noexcept {
        if (!m_aside.empty())
            removeDatabase(m_aside);
    }

private:
    void tryTo(const std::function<void()>& work) {
        try {
            guarded(work);
        } catch (const StoreError& error) {
            if (!isUnreadable(error))
                throw;
            m_database.reset();
        }
    }

    std::string m_path;
    std::string m_aside; // once it is begun
    bool m_isThere = false;
    std::unique_ptr<SQLite::Database> m_database;
};

} // namespace

std::string keptAsidePrefix(const std::string& databasePath) {
    return databasePath + ".before-restore-";
}

Restored restoreBackup(const std::string& backupPath, const std::string& databasePath, const StoreHost& host,
                       const std::vector<std::string>& settingsOfThisPhone) {
    std::error_code error;
    if (fs::equivalent(backupPath, databasePath, error))
        throw BackupError(BackupError::Kind::SameFile, backupPath);
    Restored restored;
    restored.contents = lookInto(backupPath);
    return guarded([&] {
        Present present(databasePath);
        const NextDatabase next(databasePath + ".restoring");
        std::vector<std::string> ours = settingsOfThisPhone;
        ours.insert(ours.end(), std::begin(settingsThatReachOut), std::end(settingsThatReachOut));
        makeReady(restored.contents, next.path(), host, present.settings(ours));
        syncFile(next.path());
        const std::string aside = freeName(keptAsidePrefix(databasePath) + timeInName(host.utcNowMs()));
        try {
            restored.keptAside = present.keepAside(aside);
            present.giveWayTo(next.path());
        } catch (...) { // of the store or of SQLite
            present.stay();
            throw;
        }
        return restored;
    });
}

} // namespace halfcup::store
