// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/record_table.h"

#include <functional>
#include <map>
#include <set>
#include <string>

namespace halfcup::store {

/// Makes rows out of revisions. A row is a function of the revisions alone: the latest value of each field,
/// references led to the record that stands for joined ones, text cleaned. So phones that hold the same
/// revisions hold the same rows, in whatever order they came.
///
/// A record whose needed fields have not come, or which belongs to a record that has no row, has no row
/// itself: it waits (table "waiting"). Call inside a transaction; throws SQLite::Exception.
class RecordBuilder {
public:
    using Tables = std::function<RecordTable&(records::Kind)>;
    RecordBuilder(SQLite::Database& database, Tables tables);

    /// True: the record has its row. False: it waits.
    bool build(const records::RecordId& id, records::Kind kind);
    /// Tries again what waits, parents first.
    void buildWaiting();

    /// Works out anew which records stand for which (same_as, followed both ways; the one made first stands
    /// for all of them) and builds what refers to any for which that changed.
    void joinAnew();
    [[nodiscard]] bool anyJoined() const { return !m_joined.empty(); }
    /// The record that stands for this one: itself where it was not joined.
    [[nodiscard]] const records::RecordId& standsFor(const records::RecordId& id) const;

    /// Looks again which records are joined, after the database was changed or put back by other hands.
    void forget();

private:
    [[nodiscard]] bool isThere(records::Kind kind, const records::RecordId& id);
    void readJoined();
    std::map<records::RecordId, records::RecordId> workOutJoined(records::Kind kind);
    void buildReferring(records::Kind kind, const records::RecordId& to);

    SQLite::Database& m_database;
    Tables m_tables;
    SQLite::Statement m_revisions;
    SQLite::Statement m_wait;
    SQLite::Statement m_waitNoMore;
    std::map<records::Kind, SQLite::Statement> m_find;
    std::set<records::RecordId> m_there; // yards, colonies and treatments seen in this transaction
    std::map<records::RecordId, records::RecordId> m_joined;
};

} // namespace halfcup::store
