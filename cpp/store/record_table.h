// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/record_id.h"
#include "records/revision_stamp.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace halfcup::store {

/// A record as it lies in its table; a field that holds nothing is left out.
struct Row {
    records::RecordId id;
    records::Fields fields;
};

/// One value a field has had.
struct PastValue {
    std::string field;
    records::Value value;
    records::RevisionStamp stamp;
};

/// Reads and writes one kind of record, field by field. Table and column names come from
/// records::fieldNames() alone, never from data; values are always bound. Throws SQLite::Exception; Store
/// turns it into StoreError.
class RecordTable {
public:
    RecordTable(SQLite::Database& database, records::Kind kind);

    [[nodiscard]] std::optional<Row> find(const records::RecordId& id);
    /// rest: what follows "SELECT * FROM <kind>", with ? for each of the values. The program's own texts
    /// alone: each is prepared once and kept.
    [[nodiscard]] std::vector<Row> select(const std::string& rest,
                                          const std::vector<records::Value>& values = {});
    /// The same row by row, each only for as long as the call: none but that one is held. visit may ask for
    /// anything but the same rest.
    void forEach(const std::string& rest, const std::vector<records::Value>& values,
                 const std::function<void(const Row&)>& visit);

    /// Writes the fields that differ from what is there, each with a revision stamp. Call inside a
    /// transaction. Returns how many fields were written: none is no write at all.
    int write(const records::RecordId& id, const records::Fields& fields,
              const records::RevisionStamp& stamp);

    /// Makes the record's row hold exactly these fields, and no revision of it: for a row that is worked out
    /// from revisions which are there.
    void put(const records::RecordId& id, const records::Fields& fields);
    /// Takes the record's row away, and no revision of it.
    void remove(const records::RecordId& id);
    /// How often a row was put or removed since this was made: as long as it stays, no row differs by this
    /// connection.
    [[nodiscard]] int changes() const { return m_changes; }

    /// Every value the record's fields have had, oldest first.
    [[nodiscard]] std::vector<PastValue> history(const records::RecordId& id);

private:
    SQLite::Database& m_database;
    records::Kind m_kind;
    std::string m_name;
    int m_changes = 0;
    // Prepared at the first use: of most kinds nothing is read or written in most runs.
    std::optional<SQLite::Statement> m_find;
    std::optional<SQLite::Statement> m_insert;
    std::optional<SQLite::Statement> m_remove;
    std::optional<SQLite::Statement> m_revise;
    std::map<std::string, SQLite::Statement, std::less<>> m_selects; // by what follows the table's name
};

/// Binds a value of any type to a parameter, 1-based; reads a column back.
void bindValue(SQLite::Statement& statement, int index, const records::Value& value);
[[nodiscard]] records::Value valueIn(const SQLite::Statement& statement, int column);

} // namespace halfcup::store
