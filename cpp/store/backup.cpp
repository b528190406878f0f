// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/backup.h"

#include "store/backup_file.h"
#include "store/checked_copy.h"
#include "store/content_hash.h"
#include "store/database_files.h"
#include "store/durable_file.h"
#include "store/finished_washes.h"
#include "store/migration.h"
#include "store/open_database.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

namespace halfcup::store {

using Kind = BackupError::Kind;

namespace {

constexpr int noteFormat = 1;
constexpr const char* rowsPrefix = "rows ";

bool hasTable(const SQLite::Database& database, const std::string& name) {
    SQLite::Statement found(database, "SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = ?");
    found.bind(1, name);
    return found.executeStep();
}

std::int64_t count(const SQLite::Database& database, const std::string& table, const std::string& where) {
    if (!hasTable(database, table)) // an earlier schema
        return 0;
    SQLite::Statement rows(database, "SELECT count(*) FROM " + table + " WHERE " + where);
    rows.executeStep();
    return rows.getColumn(0).getInt64();
}

std::string firstText(const SQLite::Database& database, const std::string& sql) {
    SQLite::Statement statement(database, sql);
    return statement.executeStep() ? statement.getColumn(0).getString() : std::string();
}

std::map<std::string, std::string> notesIn(const SQLite::Database& database) {
    std::map<std::string, std::string> notes;
    SQLite::Statement rows(database, std::string("SELECT name, value FROM ") + noteTable);
    while (rows.executeStep())
        notes[rows.getColumn(0).getString()] = rows.getColumn(1).getString();
    return notes;
}

void checkWhose(const SQLite::Database& database, BackupContents& contents) {
    if (firstText(database, "PRAGMA application_id") != std::to_string(applicationId))
        throw BackupError(Kind::NotOurs, "another application id");
    contents.schema = std::stoi(firstText(database, "PRAGMA user_version"));
    if (contents.schema > allMigrations().back().version)
        throw BackupError(Kind::Newer, "schema " + std::to_string(contents.schema));
    if (contents.schema < 1 || !hasTable(database, "sample"))
        throw BackupError(Kind::NotOurs, "no records in it");
}

/// No schema of ours has any (see the migrations); one that was put into the file would act on the records.
void refuseForeignObjects(const SQLite::Database& database) {
    const std::string found =
        firstText(database, "SELECT name FROM sqlite_master WHERE type IN ('trigger', 'view')");
    if (!found.empty())
        throw BackupError(Kind::Damaged, "there is a trigger or a view in it: " + found);
}

void checkForm(const SQLite::Database& database) {
    const std::string verdict = firstText(database, "PRAGMA integrity_check");
    if (verdict != "ok")
        throw BackupError(Kind::Damaged, verdict);
    SQLite::Statement strays(database, "PRAGMA foreign_key_check");
    if (strays.executeStep())
        throw BackupError(Kind::Damaged, "a row of " + strays.getColumn(0).getString() + " points nowhere");
}

void checkNotes(const SQLite::Database& database, BackupContents& contents) {
    const std::map<std::string, std::string> notes = notesIn(database);
    const auto note = [&](const std::string& name) {
        const auto found = notes.find(name);
        if (found == notes.end())
            throw BackupError(Kind::Damaged, "its note lacks " + name);
        return found->second;
    };
    if (note(hashName) != contents.sha256)
        throw BackupError(Kind::Damaged, "the hash over its content is another");
    // What follows is covered by the hash: it cannot be wrong unless it was written wrong.
    if (note("format") != std::to_string(noteFormat) || note("schema") != std::to_string(contents.schema))
        throw BackupError(Kind::Damaged, "its note belongs to another file");
    for (const auto& [table, rows] : contents.rows)
        if (table != noteTable && note(rowsPrefix + table) != std::to_string(rows))
            throw BackupError(Kind::Damaged, "rows are missing in " + table);
    contents.madeAt = records::Moment{std::stoll(note("made_at_ms")), std::stoi(note("utc_offset_min"))};
}

void summarise(const SQLite::Database& database, BackupContents& contents) {
    contents.yards = count(database, "yard", "removed IS NOT 1");
    contents.colonies = count(database, "colony", "removed IS NOT 1");
    contents.treatments = count(database, "treatment", "removed IS NOT 1");
    contents.washes = countFinishedWashes(database);
    SQLite::Statement newest(database,
                             "SELECT started_at_ms, coalesce(utc_offset_min, 0) FROM sample WHERE"
                             " state = 'finished' AND removed IS NOT 1 ORDER BY started_at_ms DESC LIMIT 1");
    if (newest.executeStep())
        contents.newestWash =
            records::localDate({newest.getColumn(0).getInt64(), newest.getColumn(1).getInt()});
}

void look(const SQLite::Database& database, const FileForm& form, BackupContents& contents) {
    checkWhose(database, contents);
    refuseForeignObjects(database);
    checkForm(database);
    contents.isBackup = hasTable(database, noteTable);
    // A backup whose note was lost is no plain database; and nothing hangs on behind a backup.
    if (!contents.isBackup && contents.path.ends_with(backupEnding))
        throw BackupError(Kind::Damaged, "its note is missing");
    if (contents.isBackup && form.sizeBytes != form.bytesByHeader)
        throw BackupError(Kind::Damaged, "it is longer than it was written");
    Content content = contentOf(database);
    contents.rows = std::move(content.rows);
    contents.sha256 = std::move(content.sha256);
    if (contents.isBackup)
        checkNotes(database, contents);
    summarise(database, contents);
}

BackupError::Kind kindOf(const SQLite::Exception& error) {
    switch (storeErrorFrom(error).kind()) {
    case StoreError::Kind::NotAllowed:
        return Kind::NotAllowed;
    default:
        return Kind::Damaged; // it began as a database of ours: see formOf
    }
}

/// The note, and last the hash over everything else. Without a journal beside it: a note cut short makes a
/// file that is thrown away.
void writeNote(const std::string& path, const records::Moment& now) {
    SQLite::Database database(path, SQLite::OPEN_READWRITE);
    database.exec("PRAGMA journal_mode = MEMORY");
    SQLite::Transaction transaction(database);
    const Content before = contentOf(database);
    database.exec(std::string("CREATE TABLE ") + noteTable +
                  "(name TEXT PRIMARY KEY NOT NULL, value ANY) STRICT, WITHOUT ROWID");
    SQLite::Statement insert(database, std::string("INSERT INTO ") + noteTable + " VALUES (?, ?)");
    const auto keep = [&](const std::string& name, const auto& value) {
        insert.bind(1, name);
        insert.bind(2, value);
        insert.exec();
        insert.reset();
    };
    keep("format", noteFormat);
    keep("made_at_ms", now.utcMs);
    keep("utc_offset_min", now.offsetMinutes);
    keep("schema", database.execAndGet("PRAGMA user_version").getInt());
    for (const auto& [table, rows] : before.rows)
        keep(rowsPrefix + table, rows);
    keep(hashName, contentOf(database).sha256);
    transaction.commit();
}

} // namespace

BackupContents lookInto(const std::string& path) {
    BackupContents contents;
    contents.path = path;
    const FileForm form = formOf(path);
    contents.sizeBytes = form.sizeBytes;
    try {
        const auto database = openForReading(path, form);
        look(*database, form, contents);
    } catch (const SQLite::Exception& error) {
        throw BackupError(kindOf(error), error.what());
    } catch (const std::logic_error& error) { // a figure that is none
        throw BackupError(Kind::Damaged, error.what());
    }
    return contents;
}

BackupContents makeBackup(const std::string& databasePath, const std::string& place,
                          const records::Moment& now) {
    const std::string beside = place + ".part";
    try {
        return guarded([&] {
            SQLite::Database database(databasePath, SQLite::OPEN_READONLY, 3000);
            if (database.execAndGet("PRAGMA application_id").getInt() != applicationId)
                throw StoreError(StoreError::Kind::NotOurs, databasePath);
            refuseNewer(database, allMigrations());
            copyChecked(database, beside);
            writeNote(beside, now);
            syncFile(beside);
            BackupContents contents = lookInto(beside); // what is on the disk, not what was meant
            moveIntoPlace(beside, place);
            contents.path = place;
            return contents;
        });
    } catch (const BackupError& error) {
        removeDatabase(beside);
        throw StoreError(StoreError::Kind::CopyFailed, error.what());
    } catch (const StoreError&) {
        removeDatabase(beside);
        throw;
    }
}

} // namespace halfcup::store
