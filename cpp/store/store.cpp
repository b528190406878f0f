// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/store.h"

#include "store/count_rows.h"
#include "store/finished_washes.h"
#include "store/open_database.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/Transaction.h>

#include <algorithm>
#include <utility>

namespace halfcup::store {

using namespace records;

namespace {

std::vector<Sample> samplesIn(RecordTable& table, const std::string& rest,
                              const std::vector<Value>& values = {}) {
    return guarded([&] {
        std::vector<Sample> samples;
        table.forEach(rest, values,
                      [&](const Row& row) { samples.push_back(sampleFrom(row.id, row.fields)); });
        return samples;
    });
}

constexpr auto latestOfYard =
    "JOIN colony ON colony.id = sample.colony_id WHERE colony.yard_id = ? AND sample.id = ("
    "SELECT s.id FROM sample s WHERE s.colony_id = colony.id AND s.state = 'finished'"
    " AND s.other_count IS NULL AND s.removed = 0 AND s.started_at_ms <= ?"
    " ORDER BY s.started_at_ms DESC, s.id DESC LIMIT 1)";

} // namespace

/// Made once: what a tap needs is ready when the finger comes down.
struct Store::Statements {
    explicit Statements(SQLite::Database& database)
        : yard(database, Kind::Yard)
        , colony(database, Kind::Colony)
        , sample(database, Kind::Sample)
        , event(database, Kind::Event)
        , treatment(database, Kind::Treatment)
        , treated(database, Kind::Treated)
        , scoopCount(database, Kind::ScoopCount)
        , round(database, Kind::Round)
        , addCount(database, "INSERT INTO count_event(sample_id, stamp, number, rinse, change, typed, at_ms)"
                             " SELECT id, ?2, coalesce(?3, 1 + (SELECT coalesce(max(number), 0) FROM"
                             " count_event WHERE sample_id = ?1)), ?4, ?5, ?6, ?7 FROM sample WHERE id = ?1")
        , counts(database, std::string("SELECT ") + countColumns +
                               " FROM count_event WHERE sample_id = ? ORDER BY stamp")
        , setting(database, "SELECT value FROM setting WHERE name = ?")
        , setSetting(database, "INSERT INTO setting(name, value) VALUES (?, ?)"
                               " ON CONFLICT(name) DO UPDATE SET value = excluded.value") {}

    RecordTable yard;
    RecordTable colony;
    RecordTable sample;
    RecordTable event;
    RecordTable treatment;
    RecordTable treated;
    RecordTable scoopCount;
    RecordTable round;
    SQLite::Statement addCount;
    SQLite::Statement counts;
    SQLite::Statement setting;
    SQLite::Statement setSetting;

    std::optional<std::pair<Written, std::int64_t>> finished; // washes by then
};

Store::Store(const std::string& path, StoreHost host, std::span<const Migration> steps)
    : m_path(path)
    , m_host(std::move(host))
    , m_database(openDatabase(path)) {
    refuseNewer(*m_database, steps); // before anything is written into it
    claim(*m_database);
    migrate(*m_database, steps);
    guarded([&] { m_statements = std::make_unique<Statements>(*m_database); });
    Value device = setting("device_id");
    if (!std::holds_alternative<std::string>(device)) {
        device = newId();
        setSetting("device_id", device);
    }
    const auto latest = guarded([&] {
        return parseRevisionStamp(
            m_database
                ->execAndGet("SELECT max(coalesce((SELECT max(stamp) FROM revision), ''),"
                             " coalesce((SELECT max(stamp) FROM count_event), ''))")
                .getString());
    });
    m_revisions =
        std::make_unique<RevisionClock>(std::get<std::string>(device), latest.value_or(RevisionStamp{}));
    guarded([&] {
        m_builder = std::make_unique<RecordBuilder>(
            *m_database, [this](Kind kind) -> RecordTable& { return table(kind); });
        if (m_database->execAndGet("SELECT count(*) FROM waiting").getInt() > 0)
            inOneTransaction([this] { // this version may know what an earlier one could only keep
                m_builder->buildWaiting();
                m_builder->joinAnew();
            });
    });
}

Store::~Store() = default;

RecordId Store::newId() {
    return makeRecordId(m_host.utcNowMs(), m_host.random(), m_host.random());
}

RecordTable& Store::table(Kind kind) {
    switch (kind) {
    case Kind::Yard:
        return m_statements->yard;
    case Kind::Colony:
        return m_statements->colony;
    case Kind::Event:
        return m_statements->event;
    case Kind::Treatment:
        return m_statements->treatment;
    case Kind::Treated:
        return m_statements->treated;
    case Kind::ScoopCount:
        return m_statements->scoopCount;
    case Kind::Round:
        return m_statements->round;
    case Kind::Sample:
        break;
    }
    return m_statements->sample;
}

void Store::inOneTransaction(const std::function<void()>& work) {
    if (m_insideTransaction) {
        work();
        return;
    }
    struct Inside {
        bool& flag;
        explicit Inside(bool& f)
            : flag(f) {
            flag = true;
        }
        ~Inside() { flag = false; }
    };
    guarded([&] {
        SQLite::Transaction transaction(*m_database, SQLite::TransactionBehavior::IMMEDIATE);
        const Inside inside(m_insideTransaction);
        work();
        transaction.commit();
    });
}

void Store::write(Kind kind, const RecordId& id, const Fields& fields) {
    inOneTransaction([&] {
        table(kind).write(id, fields, m_revisions->next(m_host.utcNowMs()));
        if (m_builder->anyJoined()) // what a page still calls by the other of two names
            m_builder->build(id, kind);
    });
}

void Store::save(const Yard& yard) {
    write(Kind::Yard, yard.id, toFields(yard));
}
void Store::save(const Colony& colony) {
    write(Kind::Colony, colony.id, toFields(colony));
}
void Store::save(const Sample& sample) {
    write(Kind::Sample, sample.id, toFields(sample));
}

std::vector<Row> Store::rows(Kind kind, const std::string& rest, const std::vector<Value>& values) {
    return guarded([&] { return table(kind).select(rest, values); });
}

std::vector<Yard> Store::yards() {
    return yardsWhere("WHERE removed = 0 AND id NOT IN (SELECT id FROM joined) ORDER BY name, id");
}

std::vector<Yard> Store::allYards() {
    return yardsWhere("ORDER BY id");
}

std::vector<Yard> Store::yardsWhere(const std::string& rest) {
    return guarded([&] {
        std::vector<Yard> yards;
        m_statements->yard.forEach(rest, {},
                                   [&](const Row& row) { yards.push_back(yardFrom(row.id, row.fields)); });
        return yards;
    });
}

std::vector<Colony> Store::colonies(const RecordId& yardId) {
    return coloniesWhere(
        "WHERE yard_id = ? AND removed = 0 AND id NOT IN (SELECT id FROM joined) ORDER BY id", yardId);
}

std::vector<Colony> Store::allColonies(const RecordId& yardId) {
    return coloniesWhere("WHERE yard_id = ? ORDER BY id", yardId);
}

std::vector<Colony> Store::coloniesWhere(const std::string& rest, const RecordId& yardId) {
    return guarded([&] {
        std::vector<Colony> colonies;
        m_statements->colony.forEach(
            rest, {yardId}, [&](const Row& row) { colonies.push_back(colonyFrom(row.id, row.fields)); });
        return colonies;
    });
}

std::optional<Yard> Store::yard(const RecordId& id) {
    const auto row = guarded([&] { return m_statements->yard.find(id); });
    return row ? std::optional{yardFrom(row->id, row->fields)} : std::nullopt;
}

std::optional<Colony> Store::colony(const RecordId& id) {
    const auto row = guarded([&] { return m_statements->colony.find(id); });
    return row ? std::optional{colonyFrom(row->id, row->fields)} : std::nullopt;
}

std::optional<Sample> Store::sample(const RecordId& id) {
    const auto row = guarded([&] { return m_statements->sample.find(id); });
    return row ? std::optional{sampleFrom(row->id, row->fields)} : std::nullopt;
}

std::vector<Sample> Store::samplesOf(const RecordId& colonyId) {
    return samplesIn(m_statements->sample,
                     "WHERE colony_id = ? AND removed = 0 ORDER BY started_at_ms DESC, id DESC", {colonyId});
}

std::vector<Sample> Store::latestFinished(const RecordId& yardId) {
    return samplesIn(m_statements->sample, latestOfYard, {yardId, m_host.utcNowMs() + clocksDifferByMs});
}

std::vector<Sample> Store::drafts() {
    return samplesIn(m_statements->sample,
                     "WHERE state = 'draft' AND removed = 0 ORDER BY started_at_ms DESC, id DESC");
}

int Store::sampleCount() {
    return guarded([&] {
        const std::int64_t abandoned =
            m_database->execAndGet("SELECT count(*) FROM sample WHERE state = 'abandoned' AND removed = 0")
                .getInt64();
        return static_cast<int>(finishedWashes() + abandoned);
    });
}

Store::Written Store::written() {
    return guarded([&] {
        return Written{m_database->execAndGet("PRAGMA data_version").getInt64(),
                       m_database->getTotalChanges()};
    });
}

std::int64_t Store::finishedWashes() {
    return guarded([&] {
        const Written now{written().first, m_statements->sample.changes()}; // all its rows go through it
        if (!m_statements->finished || m_statements->finished->first != now)
            m_statements->finished = {now, countFinishedWashes(*m_database)};
        return m_statements->finished->second;
    });
}

void Store::forEachSample(const std::function<void(const Sample&)>& visit) {
    guarded([&] {
        SQLite::Statement ids(*m_database, "SELECT id FROM sample WHERE state <> 'draft' AND removed = 0"
                                           " ORDER BY started_at_ms, id");
        while (ids.executeStep())
            if (const auto row = m_statements->sample.find(ids.getColumn(0).getString()))
                visit(sampleFrom(row->id, row->fields));
    });
}

void Store::addCount(const RecordId& sampleId, const CountEvent& event) {
    guarded([&] {
        const std::string stamp = toText(m_revisions->next(m_host.utcNowMs()));
        SQLite::Statement& insert = m_statements->addCount;
        bindCount(insert, sampleId, stamp, 0, event);
        insert.bind(3);         // numbered after those there
        if (insert.exec() != 1) // a single statement is its own transaction
            throw StoreError(StoreError::Kind::Failed, "no sample " + sampleId);
    });
}

void Store::addDemoCounts(const RecordId& sampleId, const std::vector<CountEvent>& events) {
    guarded([&] {
        if (!countEvents(sampleId).empty())
            return;
        std::int64_t latestMs = 0;
        for (const CountEvent& event : events) {
            latestMs = std::max(latestMs, event.atUtcMs);
            SQLite::Statement& insert = m_statements->addCount;
            bindCount(insert, sampleId, toText({latestMs, static_cast<std::uint32_t>(event.number), "demo"}),
                      event.number, event);
            insert.exec();
        }
    });
}

std::vector<CountEvent> Store::countEvents(const RecordId& sampleId) {
    return guarded([&] {
        SQLite::Statement& select = m_statements->counts;
        select.tryReset();
        select.bind(1, sampleId);
        std::vector<CountEvent> events;
        while (select.executeStep())
            events.push_back(countIn(select, 0));
        select.tryReset();
        return events;
    });
}

Value Store::setting(const std::string& name) {
    return guarded([&]() -> Value {
        SQLite::Statement& select = m_statements->setting;
        select.tryReset();
        select.bind(1, name);
        Value value;
        if (select.executeStep())
            value = valueIn(select, 0);
        select.tryReset();
        return value;
    });
}

void Store::setSetting(const std::string& name, const Value& value) {
    guarded([&] {
        SQLite::Statement& insert = m_statements->setSetting;
        insert.tryReset();
        insert.bind(1, name);
        bindValue(insert, 2, value);
        insert.exec();
    });
}

std::vector<PastValue> Store::history(Kind kind, const RecordId& id) {
    return guarded([&] { return table(kind).history(id); });
}

std::string Store::integrityReport() {
    return guarded([&] {
        std::string report = m_database->execAndGet("PRAGMA integrity_check").getString();
        SQLite::Statement strays(*m_database, "PRAGMA foreign_key_check");
        while (strays.executeStep())
            report += "\na row of " + strays.getColumn(0).getString() + " points to a missing row of " +
                      strays.getColumn(2).getString();
        return report;
    });
}

} // namespace halfcup::store
