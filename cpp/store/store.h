// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/count.h"
#include "records/round.h"
#include "records/scoop_count.h"
#include "records/yard_records.h"
#include "store/migration.h"
#include "store/record_builder.h"
#include "store/record_table.h"
#include "store/store_error.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace halfcup::store {

/// What the store needs from outside: the time (UTC milliseconds) and chance, for ids and revision stamps.
struct StoreHost {
    std::function<std::int64_t()> utcNowMs;
    std::function<std::uint64_t()> random;
};

/// The keeper's records in one SQLite database (write-ahead log, full synchronisation, foreign keys on).
///
/// Each save and each addCount is a transaction of its own and is on disk when the call returns. Everything
/// throws StoreError and then has written nothing. One thread, one Store for a file; a second program may
/// read beside it.
class Store {
public:
    /// Opens the database at path, or makes a new one there, readable by its owner alone, and brings it to
    /// the newest schema. The folder must exist.
    Store(const std::string& path, StoreHost host, std::span<const Migration> steps = allMigrations());
    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    [[nodiscard]] const std::string& path() const { return m_path; }
    [[nodiscard]] records::RecordId newId();

    void save(const records::Yard& yard);
    void save(const records::Colony& colony);
    void save(const records::Sample& sample);
    void save(const records::ColonyEvent& event);
    void save(const records::Treatment& treatment);
    /// The treatment with exactly these colonies, as one transaction: those no longer among them are marked
    /// as removed.
    void save(const records::GivenTreatment& entry);

    /// Records marked as removed are left out of every list but still found by id and in allYards,
    /// allColonies.
    [[nodiscard]] std::vector<records::Yard> yards(); // by name
    [[nodiscard]] std::vector<records::Colony>
    colonies(const records::RecordId& yardId); // in the order they were made
    [[nodiscard]] std::vector<records::Yard> allYards();
    [[nodiscard]] std::vector<records::Colony> allColonies(const records::RecordId& yardId);
    [[nodiscard]] std::optional<records::Yard> yard(const records::RecordId& id);
    [[nodiscard]] std::optional<records::Colony> colony(const records::RecordId& id);
    [[nodiscard]] std::optional<records::Sample> sample(const records::RecordId& id);
    [[nodiscard]] std::vector<records::Sample> samplesOf(const records::RecordId& colonyId); // newest first
    /// The newest finished sample of bees of each colony that stands in the yard now, in no particular order.
    /// One that lies ahead (records::liesAhead) is passed over: its colony would not be due for as long.
    [[nodiscard]] std::vector<records::Sample> latestFinished(const records::RecordId& yardId);
    [[nodiscard]] std::vector<records::Sample> drafts(); // newest first
    using Written = std::pair<std::int64_t, int>;        // by other programs, and here
    [[nodiscard]] Written written();                     // another one after anything was written
    [[nodiscard]] int sampleCount();                     // finished and abandoned ones
    [[nodiscard]] std::int64_t finishedWashes(); // as BackupContents::washes; quick if no sample was written
    /// Calls once for each finished or abandoned sample, oldest first, without holding them all.
    void forEachSample(const std::function<void(const records::Sample&)>& visit);

    /// What happened to a colony, or was done to another that was merged into it; oldest first.
    [[nodiscard]] std::vector<records::ColonyEvent> eventsOf(const records::RecordId& colonyId);
    /// The same for all colonies that stand in the yard now.
    [[nodiscard]] std::vector<records::ColonyEvent> eventsOfYard(const records::RecordId& yardId);
    [[nodiscard]] std::optional<records::ColonyEvent> event(const records::RecordId& id);
    [[nodiscard]] std::optional<records::GivenTreatment> treatment(const records::RecordId& id);
    /// Newest first day first, of whatever yard they were given in.
    [[nodiscard]] std::vector<records::GivenTreatment> treatmentsOf(const records::RecordId& colonyId);
    /// Given in the yard, or to a colony that stands there now; newest first.
    [[nodiscard]] std::vector<records::GivenTreatment> treatmentsOfYard(const records::RecordId& yardId);
    [[nodiscard]] std::vector<records::GivenTreatment> allTreatments(); // newest first
    /// All of a yard that decides what is due and what fits; nothing where there is no such yard.
    [[nodiscard]] std::optional<records::YardRecords> yardRecords(const records::RecordId& yardId);
    [[nodiscard]] std::vector<records::Sample> // of bees, finished, oldest first
    samplesOfYard(const records::RecordId& yardId, std::int64_t sinceUtcMs);
    [[nodiscard]] std::vector<records::Date> washDays(std::int64_t sinceUtcMs); // of such, in all yards

    void save(const records::ScoopCount& count);
    [[nodiscard]] std::vector<records::ScoopCount> scoopCounts(); // the keeper's own, oldest first

    void save(const records::Round& round);
    [[nodiscard]] std::vector<records::Round> roundsOf(const records::RecordId& yardId); // newest first

    /// Appends one act of counting, numbered after those there. On disk when it returns.
    void addCount(const records::RecordId& sampleId, const records::CountEvent& event);
    /// The acts of a demo's sample, once, under stamps that are the same on every phone that loads the demo.
    void addDemoCounts(const records::RecordId& sampleId, const std::vector<records::CountEvent>& events);
    [[nodiscard]] std::vector<records::CountEvent> countEvents(const records::RecordId& sampleId);

    [[nodiscard]] records::Value setting(const std::string& name);
    void setSetting(const std::string& name, const records::Value& value);

    /// Saves many records as one transaction: all or nothing.
    void inOneTransaction(const std::function<void()>& work);

    [[nodiscard]] std::vector<PastValue> history(records::Kind kind, const records::RecordId& id);

    /// "ok", or what SQLite's integrity check and foreign key check find.
    [[nodiscard]] std::string integrityReport();

private:
    friend class Merge;
    friend void becomeAnother(Store& store); // restore.cpp
    friend class MergeLog;
    friend class Joining;
    friend class History;
    friend class Outgoing;
    struct Statements;

    SQLite::Database& database() { return *m_database; }
    RecordBuilder& builder() { return *m_builder; }
    records::RevisionClock& revisionClock() { return *m_revisions; }
    std::int64_t utcNowMs() const { return m_host.utcNowMs(); }

    void write(records::Kind kind, const records::RecordId& id, const records::Fields& fields);
    RecordTable& table(records::Kind kind);
    std::vector<Row> rows(records::Kind kind, const std::string& rest,
                          const std::vector<records::Value>& values);
    std::vector<records::ColonyEvent> eventsWhere(const std::string& rest, const records::RecordId& id);
    std::vector<records::GivenTreatment> treatmentsWhere(const std::string& rest,
                                                         const std::vector<records::Value>& values);
    records::Round ledRound(const Row& row);
    std::vector<records::Yard> yardsWhere(const std::string& rest);
    std::vector<records::Colony> coloniesWhere(const std::string& rest, const records::RecordId& yardId);

    std::string m_path;
    StoreHost m_host;
    std::unique_ptr<SQLite::Database> m_database;
    std::unique_ptr<Statements> m_statements;
    std::unique_ptr<records::RevisionClock> m_revisions;
    std::unique_ptr<RecordBuilder> m_builder;
    bool m_insideTransaction = false;
};

} // namespace halfcup::store
