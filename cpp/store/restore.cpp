// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/restore.h"

#include "store/backup_file.h"
#include "store/checked_copy.h"
#include "store/content_hash.h"
#include "store/database_files.h"
#include "store/durable_file.h"
#include "store/open_database.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

namespace halfcup::store {

namespace fs = std::filesystem;

namespace {

using Settings = std::vector<std::pair<std::string, records::Value>>;

/// The copy that is being made ready, which goes with everything beside it unless it took its place.
class Next {
public:
    explicit Next(std::string path)
        : m_path(std::move(path)) {
        remove(); // left over from a try that was cut short
    }
    ~Next() { remove(); }
    Next(const Next&) = delete;
    Next& operator=(const Next&) = delete;
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    void remove() {
        removeDatabase(m_path);
        for (const Migration& step : allMigrations()) // the backup itself is the copy before the step
            removeDatabase(copyNameBefore(m_path, step.version));
    }
    std::string m_path;
};

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
    Store store(path,
                host); // brings it to the newest schema, still as the phone that made it: steps use its id
    becomeAnother(store);
    const std::string report = store.integrityReport();
    if (report != "ok")
        throw BackupError(BackupError::Kind::Damaged, report);
}

/// Takes the log into the file, so that no log of the old database lies beside the new one.
void settle(SQLite::Database& database) {
    if (database.execAndGet("PRAGMA journal_mode = DELETE").getString() != "delete")
        throw StoreError(StoreError::Kind::Busy, "the log is in use");
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

    /// Where it is kept; empty where there was none. Nothing of it lies beside the path afterwards.
    std::string keepAside(const std::string& aside) {
        if (!m_isThere)
            return {};
        if (m_database)
            tryTo([&] { copyChecked(*m_database, aside); });
        if (m_database) { // still: it is sound
            settle(*m_database);
            m_database.reset();
        } else {
            moveDatabase(m_path, aside); // nothing is thrown away
        }
        return aside;
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
        const Next next(databasePath + ".restoring");
        std::vector<std::string> ours = settingsOfThisPhone;
        ours.insert(ours.end(), std::begin(settingsThatReachOut), std::end(settingsThatReachOut));
        makeReady(restored.contents, next.path(), host, present.settings(ours));
        syncFile(next.path());
        const std::string aside = freeName(keptAsidePrefix(databasePath) + timeInName(host.utcNowMs()));
        restored.keptAside = present.keepAside(aside);
        moveIntoPlace(next.path(), databasePath);
        return restored;
    });
}

} // namespace halfcup::store
