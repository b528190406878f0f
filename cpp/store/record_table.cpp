// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/record_table.h"

#include "records/clean_text.h"

#include <sqlite3.h>

#include <span>

namespace halfcup::store {

using records::Fields;
using records::Value;

namespace {

std::string insertText(const std::string& table, std::span<const std::string_view> names) {
    std::string columns = "id";
    std::string marks = "?";
    std::string updates;
    for (const std::string_view name : names) {
        columns += ", " + std::string(name);
        marks += ", ?";
        updates += (updates.empty() ? "" : ", ") + std::string(name) + " = excluded." + std::string(name);
    }
    return "INSERT INTO " + table + "(" + columns + ") VALUES (" + marks +
           ") ON CONFLICT(id) DO UPDATE SET " + updates;
}

/// The id, then the fields in the order of their names.
std::string selectText(const std::string& table, std::span<const std::string_view> names,
                       const std::string& rest) {
    std::string columns = table + ".id";
    for (const std::string_view name : names)
        columns += ", " + table + "." + std::string(name);
    return "SELECT " + columns + " FROM " + table + " " + rest;
}

void readRow(SQLite::Statement& statement, std::span<const std::string_view> names, Row& row) {
    row.id = statement.getColumn(0).getString();
    row.fields.clear();
    int column = 0;
    for (const std::string_view name : names)
        if (!statement.isColumnNull(++column)) // half of a wash's values are not known
            row.fields[name] = valueIn(statement, column);
}

/// A statement left open would hold the read snapshot.
class Reset {
public:
    explicit Reset(SQLite::Statement& statement)
        : m_statement(statement) {
        m_statement.tryReset();
    }
    ~Reset() { m_statement.tryReset(); }
    Reset(const Reset&) = delete;
    Reset& operator=(const Reset&) = delete;

private:
    SQLite::Statement& m_statement;
};

} // namespace

void bindValue(SQLite::Statement& statement, int index, const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        statement.bind(index, *whole);
    else if (const auto* real = std::get_if<double>(&value))
        statement.bind(index, *real);
    else if (const auto* text = std::get_if<std::string>(&value))
        statement.bind(index, *text);
    else
        statement.bind(index); // NULL
}

Value valueIn(const SQLite::Statement& statement, int column) {
    const SQLite::Column value = const_cast<SQLite::Statement&>(statement).getColumn(column);
    switch (value.getType()) {
    case SQLITE_INTEGER:
        return value.getInt64();
    case SQLITE_FLOAT:
        return value.getDouble();
    case SQLITE_TEXT:
        return value.getString();
    default:
        return {};
    }
}

RecordTable::RecordTable(SQLite::Database& database, records::Kind kind)
    : m_database(database)
    , m_kind(kind)
    , m_name(records::nameOf(kind)) {}

std::optional<Row> RecordTable::find(const records::RecordId& id) {
    if (!m_find)
        m_find.emplace(m_database, selectText(m_name, records::fieldNames(m_kind), "WHERE id = ?"));
    const Reset reset(*m_find);
    m_find->bind(1, id);
    if (!m_find->executeStep())
        return std::nullopt;
    std::optional<Row> row(std::in_place);
    readRow(*m_find, records::fieldNames(m_kind), *row);
    return row;
}

std::vector<Row> RecordTable::select(const std::string& rest, const std::vector<Value>& values) {
    std::vector<Row> rows;
    forEach(rest, values, [&](const Row& row) { rows.push_back(row); });
    return rows;
}

void RecordTable::forEach(const std::string& rest, const std::vector<Value>& values,
                          const std::function<void(const Row&)>& visit) {
    auto prepared = m_selects.find(rest);
    if (prepared == m_selects.end())
        prepared =
            m_selects.try_emplace(rest, m_database, selectText(m_name, records::fieldNames(m_kind), rest))
                .first;
    SQLite::Statement& statement = prepared->second;
    const Reset reset(statement);
    for (std::size_t i = 0; i < values.size(); ++i)
        bindValue(statement, static_cast<int>(i) + 1, values[i]);
    Row row;
    while (statement.executeStep()) {
        readRow(statement, records::fieldNames(m_kind), row);
        visit(row);
    }
}

int RecordTable::write(const records::RecordId& id, const Fields& fields,
                       const records::RevisionStamp& stamp) {
    if (!m_revise)
        m_revise.emplace(m_database,
                         "INSERT INTO revision(record_id, field, stamp, kind, value) VALUES (?, ?, ?, ?, ?)");
    const std::optional<Row> present = find(id);
    Fields merged = present ? present->fields : Fields{};
    int written = 0;
    for (const std::string_view name : records::fieldNames(m_kind)) {
        const auto given = fields.find(name);
        if (given == fields.end())
            continue;
        const auto there = merged.find(name);
        const Value value = records::cleanValue(given->second);
        if (value == (there == merged.end() ? Value{} : there->second))
            continue;
        merged[name] = value;
        m_revise->tryReset();
        m_revise->bind(1, id);
        m_revise->bind(2, std::string(name));
        m_revise->bind(3, records::toText(stamp));
        m_revise->bind(4, m_name);
        bindValue(*m_revise, 5, value);
        m_revise->exec();
        ++written;
    }
    if (written > 0)
        put(id, merged);
    return written;
}

void RecordTable::put(const records::RecordId& id, const Fields& fields) {
    ++m_changes;
    if (!m_insert)
        m_insert.emplace(m_database, insertText(m_name, records::fieldNames(m_kind)));
    m_insert->tryReset();
    m_insert->bind(1, id);
    int index = 1;
    for (const std::string_view name : records::fieldNames(m_kind)) {
        const auto value = fields.find(name);
        bindValue(*m_insert, ++index, value == fields.end() ? Value{} : value->second);
    }
    m_insert->exec();
}

void RecordTable::remove(const records::RecordId& id) {
    ++m_changes;
    if (!m_remove)
        m_remove.emplace(m_database, "DELETE FROM " + m_name + " WHERE id = ?");
    m_remove->tryReset();
    m_remove->bind(1, id);
    m_remove->exec();
}

std::vector<PastValue> RecordTable::history(const records::RecordId& id) {
    SQLite::Statement statement(
        m_database, "SELECT field, value, stamp FROM revision WHERE record_id = ? ORDER BY stamp, field");
    statement.bind(1, id);
    std::vector<PastValue> values;
    while (statement.executeStep()) {
        const auto stamp = records::parseRevisionStamp(statement.getColumn(2).getString());
        values.push_back({statement.getColumn(0).getString(), valueIn(statement, 1),
                          stamp.value_or(records::RevisionStamp{})});
    }
    return values;
}

} // namespace halfcup::store
