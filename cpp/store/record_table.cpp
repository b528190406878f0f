// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/record_table.h"

#include "records/clean_text.h"

#include <algorithm>

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

Row rowIn(SQLite::Statement& statement) {
    Row row;
    for (int column = 0; column < statement.getColumnCount(); ++column) {
        const std::string_view name = statement.getColumnName(column);
        if (name == "id")
            row.id = statement.getColumn(column).getString();
        else
            row.fields.emplace(name, valueIn(statement, column));
    }
    return row;
}

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
    if (value.isInteger())
        return value.getInt64();
    if (value.isFloat())
        return value.getDouble();
    if (value.isText())
        return value.getString();
    return {};
}

RecordTable::RecordTable(SQLite::Database& database, records::Kind kind)
    : m_database(database)
    , m_kind(kind)
    , m_name(records::nameOf(kind))
    , m_find(database, "SELECT * FROM " + m_name + " WHERE id = ?")
    , m_insert(database, insertText(m_name, records::fieldNames(kind)))
    , m_revise(database,
               "INSERT INTO revision(record_id, field, stamp, kind, value) VALUES (?, ?, ?, ?, ?)") {}

std::optional<Row> RecordTable::find(const records::RecordId& id) {
    m_find.tryReset();
    m_find.bind(1, id);
    std::optional<Row> row;
    if (m_find.executeStep())
        row = rowIn(m_find);
    m_find.tryReset(); // a statement left open would hold the read snapshot
    return row;
}

std::vector<Row> RecordTable::select(const std::string& rest, const std::vector<Value>& values) {
    SQLite::Statement statement(m_database, "SELECT " + m_name + ".* FROM " + m_name + " " + rest);
    for (std::size_t i = 0; i < values.size(); ++i)
        bindValue(statement, static_cast<int>(i) + 1, values[i]);
    std::vector<Row> rows;
    while (statement.executeStep())
        rows.push_back(rowIn(statement));
    return rows;
}

int RecordTable::write(const records::RecordId& id, const Fields& fields,
                       const records::RevisionStamp& stamp) {
    const std::optional<Row> present = find(id);
    Fields merged = present ? present->fields : Fields{};
    int written = 0;
    for (const std::string_view name : records::fieldNames(m_kind)) {
        const auto given = fields.find(name);
        if (given == fields.end())
            continue;
        const auto there = merged.find(name);
        const Value value = records::cleanValue(given->second);
        const bool isNew = !present && !std::holds_alternative<std::monostate>(value);
        const bool differs = present && (there == merged.end() || there->second != value);
        if (!isNew && !differs)
            continue;
        merged[std::string(name)] = value;
        m_revise.tryReset();
        m_revise.bind(1, id);
        m_revise.bind(2, std::string(name));
        m_revise.bind(3, records::toText(stamp));
        m_revise.bind(4, m_name);
        bindValue(m_revise, 5, value);
        m_revise.exec();
        ++written;
    }
    if (written > 0)
        put(id, merged);
    return written;
}

void RecordTable::put(const records::RecordId& id, const Fields& fields) {
    m_insert.tryReset();
    m_insert.bind(1, id);
    int index = 1;
    for (const std::string_view name : records::fieldNames(m_kind)) {
        const auto value = fields.find(name);
        bindValue(m_insert, ++index, value == fields.end() ? Value{} : value->second);
    }
    m_insert.exec();
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
