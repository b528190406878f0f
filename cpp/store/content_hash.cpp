// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/content_hash.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <QCryptographicHash>

#include <bit>
#include <memory>
#include <string_view>

namespace halfcup::store {

namespace {

constexpr auto schemaQuery = "SELECT type, name, tbl_name, sql FROM sqlite_master"
                             " WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY type, name";
constexpr auto tablesQuery = "SELECT name FROM sqlite_master WHERE type = 'table'"
                             " AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name";
constexpr std::size_t pieceBytes = 64 * 1024; // what is handed to the hash at once

/// Through SQLite's own calls: millions of values go through here, and each would be an object of its own.
struct Finalizer {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};
using Query = std::unique_ptr<sqlite3_stmt, Finalizer>;

Query prepare(const SQLite::Database& database, const std::string& sql) {
    sqlite3_stmt* statement = nullptr;
    const int code = sqlite3_prepare_v2(database.getHandle(), sql.c_str(), -1, &statement, nullptr);
    Query query(statement);
    if (code != SQLITE_OK)
        throw SQLite::Exception(database.getHandle(), code);
    return query;
}

bool step(const SQLite::Database& database, const Query& query) {
    const int code = sqlite3_step(query.get());
    if (code != SQLITE_ROW && code != SQLITE_DONE)
        throw SQLite::Exception(database.getHandle(), code);
    return code == SQLITE_ROW;
}

/// A name between quotation marks of that kind, those in it doubled.
std::string quoted(const std::string& name, char mark = '"') {
    std::string text(1, mark);
    for (const char c : name)
        text.append(c == mark ? 2 : 1, c);
    text.push_back(mark);
    return text;
}

/// What everything runs through.
class Digest {
public:
    void tag(char c) {
        m_piece.push_back(c);
        if (m_piece.size() >= pieceBytes)
            flush();
    }
    void number(std::uint64_t value) {
        for (int shift = 56; shift >= 0; shift -= 8)
            m_piece.push_back(static_cast<char>((value >> shift) & 0xFF));
    }
    void bytes(char kind, const void* data, std::size_t length) {
        tag(kind);
        number(length);
        if (length > 0)
            m_piece.append(static_cast<const char*>(data), length);
    }
    void text(std::string_view value) { bytes('t', value.data(), value.size()); }

    void value(sqlite3_stmt* row, int column) {
        switch (sqlite3_column_type(row, column)) {
        case SQLITE_INTEGER:
            tag('i');
            number(static_cast<std::uint64_t>(sqlite3_column_int64(row, column)));
            break;
        case SQLITE_FLOAT:
            tag('r');
            number(std::bit_cast<std::uint64_t>(sqlite3_column_double(row, column)));
            break;
        case SQLITE_NULL:
            tag('n');
            break;
        default: {
            const bool blob = sqlite3_column_type(row, column) == SQLITE_BLOB;
            const void* data = sqlite3_column_blob(row, column); // as it is stored, whatever it holds
            bytes(blob ? 'b' : 't', data, static_cast<std::size_t>(sqlite3_column_bytes(row, column)));
        }
        }
    }

    std::string result() {
        flush();
        return m_hash.result().toHex().toStdString();
    }

private:
    void flush() {
        m_hash.addData(QByteArrayView(m_piece.data(), static_cast<qsizetype>(m_piece.size())));
        m_piece.clear();
    }

    QCryptographicHash m_hash{QCryptographicHash::Sha256};
    std::string m_piece;
};

/// "id" or "sample_id, number": rows have no order of their own.
std::string orderOf(const SQLite::Database& database, const std::string& table) {
    const Query key = prepare(database, "SELECT name FROM pragma_table_info(" + quoted(table, '\'') +
                                            ") WHERE pk > 0 ORDER BY pk");
    std::string order;
    while (step(database, key))
        order += (order.empty() ? "" : ", ") +
                 quoted(reinterpret_cast<const char*>(sqlite3_column_text(key.get(), 0)));
    return order.empty() ? "rowid" : order;
}

std::int64_t digestRows(const SQLite::Database& database, const std::string& table, Digest& digest) {
    const std::string but =
        table == noteTable ? " WHERE name <> '" + std::string(hashName) + "'" : std::string();
    const Query rows =
        prepare(database, "SELECT * FROM " + quoted(table) + but + " ORDER BY " + orderOf(database, table));
    const int columns = sqlite3_column_count(rows.get());
    std::int64_t count = 0;
    while (step(database, rows)) {
        digest.tag('R');
        for (int column = 0; column < columns; ++column)
            digest.value(rows.get(), column);
        ++count;
    }
    return count;
}

} // namespace

Content contentOf(const SQLite::Database& database) {
    Content content;
    Digest digest;
    const Query schema = prepare(database, schemaQuery);
    while (step(database, schema)) {
        digest.tag('S');
        for (int column = 0; column < 4; ++column)
            digest.value(schema.get(), column);
    }
    const Query tables = prepare(database, tablesQuery);
    while (step(database, tables)) {
        const std::string table = reinterpret_cast<const char*>(sqlite3_column_text(tables.get(), 0));
        digest.tag('T');
        digest.text(table);
        content.rows[table] = digestRows(database, table, digest);
    }
    content.sha256 = digest.result();
    return content;
}

} // namespace halfcup::store
