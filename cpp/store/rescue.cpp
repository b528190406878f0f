// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/rescue.h"

#include "store/backup_file.h"
#include "store/count_rows.h"
#include "store/database_files.h"
#include "store/durable_file.h"
#include "store/found_records.h"
#include "store/next_database.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <filesystem>

namespace halfcup::store {

using records::Fields;
using records::Kind;
using records::RecordId;
using records::Value;

namespace {

constexpr const char* deviceSetting = "device_id";

bool isNothing(const Value& value) {
    return std::holds_alternative<std::monostate>(value);
}

FoundRecords::Columns columnsIn(SQLite::Database& database) {
    FoundRecords::Columns columns;
    for (const Kind kind : records::allKinds) {
        SQLite::Statement names(database, "SELECT name FROM pragma_table_info(?)");
        names.bind(1, std::string(records::nameOf(kind)));
        while (names.executeStep())
            columns[kind].push_back(names.getColumn(0).getString());
    }
    return columns;
}

/// Adds to what was found what follows from it.
class Completion {
public:
    Completion(FoundRecords& found, std::string device)
        : m_found(found)
        , m_device(std::move(device)) {}

    /// A row holds the newest value of each field. Where the index names a value that is newer than those
    /// that were found, the row has it; where nothing of a field was found at all, too.
    void fromRows() {
        std::map<std::pair<RecordId, std::string>, std::string> newestNamed;
        for (const auto& key : m_found.namedValues) // in the order of stamps
            newestNamed[{key.id, key.field}] = key.stamp;
        const auto latest = latestValues();
        for (const auto& [id, row] : m_found.rows)
            for (const auto& [field, value] : row.second) {
                const auto known = latest.find({id, field});
                const auto named = newestNamed.find({id, field});
                const std::string stamp = named == newestNamed.end() ? std::string() : named->second;
                if (known != latest.end() && stamp <= known->second)
                    continue;
                const bool byDefault = known == latest.end() && stamp.empty() &&
                                       (isNothing(value) || value == Value{std::int64_t{0}});
                if (!byDefault)
                    m_found.values[{id, field, stamp.empty() ? firstStamp(id) : stamp}] = {
                        std::string(records::nameOf(row.first)), value};
            }
    }

    /// A yard and a colony for what belongs to one of which nothing was found. Any true value of theirs that
    /// a merge brings is newer.
    std::int64_t standIns(const StandInNames& names) {
        const auto before = m_added;
        for (const auto& [id, record] : whatRefers()) {
            const auto yard = record.find("yard_id");
            for (const auto& [field, to] : record)
                if (field == "colony_id" || field == "other_colony_id")
                    addColony(to, yard == record.end() ? RecordId() : yard->second, names);
            for (const auto& [field, to] : record)
                if (field == "yard_id" || field == "other_yard_id")
                    addYard(to, names);
        }
        return m_added - before;
    }

private:
    [[nodiscard]] std::string firstStamp(const RecordId& id) const {
        return records::toText({std::max<std::int64_t>(records::madeAtUtcMs(id), 0), 0, m_device});
    }

    [[nodiscard]] std::map<std::pair<RecordId, std::string>, std::string> latestValues() const {
        std::map<std::pair<RecordId, std::string>, std::string> latest;
        for (const auto& [key, valued] : m_found.values) // in the order of stamps
            latest[{key.id, key.field}] = key.stamp;
        return latest;
    }

    /// The references of each record to yards and colonies; notes which records there are.
    std::map<RecordId, std::map<std::string, RecordId>> whatRefers() {
        std::map<RecordId, std::map<std::string, RecordId>> records;
        for (const auto& [key, valued] : m_found.values) {
            const auto kind = records::kindFrom(valued.kind);
            if (!kind)
                continue;
            const bool isNamed = *kind != Kind::Colony || key.field == "yard_id"; // else nobody finds it
            if (isNamed)
                m_there.insert(key.id);
            const auto* to = std::get_if<std::string>(&valued.value);
            if (to && records::isRecordId(*to) && key.field != "same_as" &&
                records::referredKind(*kind, key.field))
                records[key.id][key.field] = *to;
        }
        return records;
    }

    void add(const RecordId& id, Kind kind, const char* field, const std::string& value) {
        const std::string name(records::nameOf(kind));
        m_found.values.try_emplace({id, field, firstStamp(id)}, FoundRecords::Valued{name, value});
    }

    void addYard(const RecordId& id, const StandInNames& names) {
        if (!m_there.insert(id).second)
            return;
        ++m_added;
        add(id, Kind::Yard, "name", names.yard);
    }

    void addColony(const RecordId& id, const RecordId& yardId, const StandInNames& names) {
        if (yardId.empty() || m_there.contains(id))
            return;
        m_there.insert(id);
        ++m_added;
        const bool hasLabel = std::ranges::any_of(m_found.values, [&](const auto& each) {
            return each.first.id == id && each.first.field == "label";
        });
        if (!hasLabel)
            add(id, Kind::Colony, "label", names.colony);
        add(id, Kind::Colony, "yard_id", yardId);
    }

    FoundRecords& m_found;
    std::string m_device;
    std::set<RecordId> m_there;
    std::int64_t m_added = 0;
};

void insertValues(SQLite::Database& database, const FoundRecords& found) {
    SQLite::Statement insert(
        database, "INSERT INTO revision(record_id, field, stamp, kind, value) VALUES (?, ?, ?, ?, ?)");
    for (const auto& [key, valued] : found.values) {
        insert.tryReset();
        insert.bind(1, key.id);
        insert.bind(2, key.field);
        insert.bind(3, key.stamp);
        insert.bind(4, valued.kind);
        bindValue(insert, 5, valued.value);
        insert.exec();
    }
}

void insertCounts(SQLite::Database& database, const FoundRecords& found) {
    SQLite::Statement insert(database,
                             "INSERT INTO count_event(sample_id, stamp, number, rinse, change, typed, at_ms)"
                             " VALUES (?, ?, ?, ?, ?, ?, ?)");
    RecordId sample;
    std::int64_t number = 0;
    for (const auto& [key, event] : found.counts) { // by sample and stamp
        number = key.sample == sample ? number + 1 : 1;
        sample = key.sample;
        bindCount(insert, key.sample, key.stamp, number, event);
        insert.exec();
    }
}

void insertSettings(SQLite::Database& database, const FoundRecords& found) {
    SQLite::Statement insert(database, "INSERT INTO setting(name, value) VALUES (?, ?)"
                                       " ON CONFLICT(name) DO UPDATE SET value = excluded.value");
    for (const auto& [name, value] : found.settings) {
        if (name == deviceSetting)
            continue;
        insert.tryReset();
        insert.bind(1, name);
        bindValue(insert, 2, value);
        insert.exec();
    }
}

/// All that was found, its rows still waiting to be built: opening the store builds them.
void fill(SQLite::Database& database, const FoundRecords& found) {
    SQLite::Transaction transaction(database);
    insertValues(database, found);
    insertCounts(database, found);
    insertSettings(database, found);
    database.exec(
        "INSERT OR IGNORE INTO waiting(record_id, kind) SELECT DISTINCT record_id, kind FROM revision");
    // What was found of each phone is known here, that of the one this was until now included.
    database.exec("INSERT INTO device(id, latest) SELECT substr(stamp, 27), max(stamp) FROM"
                  " (SELECT stamp FROM revision UNION ALL SELECT stamp FROM count_event) GROUP BY 1");
    transaction.commit();
}

std::int64_t lostIn(const FoundRecords& found) {
    const auto values = std::ranges::count_if(found.namedValues,
                                              [&](const auto& key) { return !found.values.contains(key); });
    const auto counts = std::ranges::count_if(found.namedCounts,
                                              [&](const auto& key) { return !found.counts.contains(key); });
    return values + counts;
}

/// Makes the new database. Nothing of ours in the old one: StoreError::NotOurs.
void makeReady(const std::string& from, const std::string& path, const StoreHost& host,
               const StandInNames& names, Rescued& rescued) {
    std::string device;
    {
        Store empty(path, host);
        device = std::get<std::string>(empty.setting(deviceSetting));
    }
    {
        SQLite::Database database(path, SQLite::OPEN_READWRITE);
        DatabasePages pages(from);
        FoundRecords found(pages, columnsIn(database));
        if (found.values.empty() && found.rows.empty())
            throw StoreError(StoreError::Kind::NotOurs, "no records can be read in " + from);
        Completion completion(found, device);
        completion.fromRows();
        rescued.values = static_cast<std::int64_t>(found.values.size() + found.counts.size());
        rescued.lost = lostIn(found);
        rescued.standIns = completion.standIns(names);
        rescued.badPages = pages.unreadablePages();
        fill(database, found);
    }
    Store store(path, host);
}

std::int64_t waitingIn(const std::string& path) {
    SQLite::Database database(path, SQLite::OPEN_READWRITE);
    const auto waiting = database.execAndGet("SELECT count(*) FROM waiting").getInt64();
    settle(database);
    return waiting;
}

} // namespace

std::string damagedPrefix(const std::string& databasePath) {
    return databasePath + ".damaged-";
}

std::string moveDamagedAside(const std::string& databasePath, std::int64_t utcNowMs) {
    const std::string aside = freeName(damagedPrefix(databasePath) + timeInName(utcNowMs));
    moveDatabase(databasePath, aside);
    return aside;
}

Rescued rescue(const std::string& databasePath, const StoreHost& host, const StandInNames& names) {
    if (isHeldByAnother(databasePath))
        throw StoreError(StoreError::Kind::Busy, databasePath);
    try {
        return guarded([&] {
            Rescued rescued;
            endReplacement(databasePath);
            const NextDatabase next(databasePath + ".rescuing");
            makeReady(databasePath, next.path(), host, names, rescued);
            rescued.waiting = waitingIn(next.path());
            rescued.contents = lookInto(next.path());
            rescued.contents.path = databasePath;
            syncFile(next.path());
            const std::string aside = freeName(damagedPrefix(databasePath) + timeInName(host.utcNowMs()));
            copyAsItIs(databasePath, aside);
            rescued.keptAside = aside;
            try {
                replaceDatabase(next.path(), databasePath);
            } catch (const StoreError&) {
                if (!isBeingReplaced(databasePath))
                    removeDatabase(aside);
                throw;
            }
            return rescued;
        });
    } catch (const BackupError& error) { // what was made does not pass its check
        throw StoreError(StoreError::Kind::Failed, error.what());
    }
}

bool wasNotClosed(const std::string& databasePath) {
    std::error_code error;
    const auto bytes = std::filesystem::file_size(databasePath + "-wal", error);
    return !error && bytes > 0 && std::filesystem::file_size(databasePath, error) > 0 && !error;
}

std::string damageIn(const std::string& databasePath) {
    try {
        return guarded([&]() -> std::string {
            // With a log the length says nothing: a checkpoint that was cut short writes the new length
            // first.
            FileForm form;
            if (wasNotClosed(databasePath))
                form.keepsLog = true;
            else
                form = formOf(databasePath);
            const auto database = openForReading(databasePath, form);
            SQLite::Statement check(*database, "PRAGMA quick_check(1)");
            check.executeStep();
            std::string verdict = check.getColumn(0).getString();
            return verdict == "ok" ? std::string() : verdict;
        });
    } catch (const BackupError& error) { // but for a cut one, whoever opens it says it
        return error.kind() == BackupError::Kind::Cut ? std::string("its end is missing: ") + error.what()
                                                      : std::string();
    } catch (const StoreError& error) {
        if (error.kind() == StoreError::Kind::Damaged)
            return error.what();
        throw;
    }
}

} // namespace halfcup::store
