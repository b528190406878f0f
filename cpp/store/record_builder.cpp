// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/record_builder.h"

#include "records/clean_text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace halfcup::store {

using records::Fields;
using records::Kind;
using records::RecordId;
using records::Value;

namespace {

/// Each after all that it may refer to.
constexpr std::array parentsFirst{Kind::Yard,  Kind::Colony,  Kind::Treatment,  Kind::Sample,
                                  Kind::Event, Kind::Treated, Kind::ScoopCount, Kind::Round};

bool isNothing(const Value& value) {
    return std::holds_alternative<std::monostate>(value);
}

/// Without these two a record would be in no list.
void putDefaults(Fields& fields) {
    for (const char* flag : {"demo", "removed"})
        if (isNothing(fields[flag]))
            fields[flag] = std::int64_t{0};
}

} // namespace

RecordBuilder::RecordBuilder(SQLite::Database& database, Tables tables)
    : m_database(database)
    , m_tables(std::move(tables))
    , m_revisions(database, "SELECT field, value FROM revision WHERE record_id = ? AND kind = ?"
                            " ORDER BY field, stamp")
    , m_wait(database, "INSERT INTO waiting(record_id, kind) VALUES (?, ?) ON CONFLICT DO NOTHING")
    , m_waitNoMore(database, "DELETE FROM waiting WHERE record_id = ?") {
    for (const Kind kind : records::allKinds)
        m_find.try_emplace(kind, database,
                           "SELECT 1 FROM " + std::string(records::nameOf(kind)) + " WHERE id = ?");
    readJoined();
}

void RecordBuilder::readJoined() {
    m_joined.clear();
    SQLite::Statement rows(m_database, "SELECT id, into_id FROM joined");
    while (rows.executeStep())
        m_joined[rows.getColumn(0).getString()] = rows.getColumn(1).getString();
}

void RecordBuilder::forget() {
    m_there.clear();
    readJoined();
}

const RecordId& RecordBuilder::standsFor(const RecordId& id) const {
    const auto joined = m_joined.find(id);
    return joined == m_joined.end() ? id : joined->second;
}

bool RecordBuilder::isThere(Kind kind, const RecordId& id) {
    if (m_there.contains(id))
        return true;
    SQLite::Statement& find = m_find.at(kind);
    find.tryReset();
    find.bind(1, id);
    const bool found = find.executeStep();
    find.tryReset();
    if (found && (kind == Kind::Yard || kind == Kind::Colony || kind == Kind::Treatment))
        m_there.insert(id); // few, and asked for again and again
    return found;
}

bool RecordBuilder::build(const RecordId& id, Kind kind) {
    m_revisions.tryReset();
    m_revisions.bind(1, id);
    m_revisions.bind(2, std::string(records::nameOf(kind)));
    Fields fields;
    while (m_revisions.executeStep()) {
        const std::string field = m_revisions.getColumn(0).getString();
        if (!records::typeOf(kind, field))
            continue;
        Value value = records::cleanValue(valueIn(m_revisions, 1));
        fields[field] = records::fits(value, kind, field) ? std::move(value) : Value{};
    }
    m_revisions.tryReset();

    bool complete = true;
    for (const std::string_view name : records::fieldNames(kind)) {
        Value& value = fields[name];
        complete = complete && !(records::isNeeded(kind, name) && isNothing(value));
        const auto referred = name == "same_as" ? std::nullopt : records::referredKind(kind, name);
        auto* to = std::get_if<std::string>(&value);
        if (!referred || !to)
            continue;
        *to = standsFor(*to);
        complete = complete && isThere(*referred, *to);
    }
    SQLite::Statement& mark = complete ? m_waitNoMore : m_wait;
    mark.tryReset();
    mark.bind(1, id);
    if (!complete)
        mark.bind(2, std::string(records::nameOf(kind)));
    mark.exec();
    if (complete) {
        putDefaults(fields);
        m_tables(kind).put(id, fields);
    }
    return complete;
}

void RecordBuilder::buildWaiting() {
    SQLite::Statement kinds(m_database, "SELECT DISTINCT kind FROM waiting");
    std::vector<std::string> unknown;
    while (kinds.executeStep())
        if (std::string kind = kinds.getColumn(0).getString(); !records::kindFrom(kind))
            unknown.push_back(std::move(kind));
    for (const std::string& kind : unknown) { // such records have no rows to wait for
        SQLite::Statement remove(m_database, "DELETE FROM waiting WHERE kind = ?");
        remove.bind(1, kind);
        remove.exec();
    }
    for (const Kind kind : parentsFirst) {
        SQLite::Statement rows(m_database, "SELECT record_id FROM waiting WHERE kind = ? ORDER BY record_id");
        rows.bind(1, std::string(records::nameOf(kind)));
        std::vector<RecordId> ids;
        while (rows.executeStep())
            ids.push_back(rows.getColumn(0).getString());
        for (const RecordId& id : ids)
            build(id, kind);
    }
}

std::map<RecordId, RecordId> RecordBuilder::workOutJoined(Kind kind) {
    const std::string name(records::nameOf(kind));
    SQLite::Statement rows(m_database, "SELECT a.id, a.same_as FROM " + name + " a JOIN " + name +
                                           " b ON b.id = a.same_as WHERE a.id <> b.id");
    std::map<RecordId, RecordId> up; // each points to a smaller id of its group
    const auto root = [&](RecordId id) {
        for (auto above = up.find(id); above != up.end(); above = up.find(id))
            id = above->second;
        return id;
    };
    while (rows.executeStep()) {
        RecordId one = root(rows.getColumn(0).getString());
        RecordId other = root(rows.getColumn(1).getString());
        if (one != other)
            up[std::max(one, other)] = std::min(one, other);
    }
    std::map<RecordId, RecordId> joined;
    for (const auto& [id, above] : up)
        joined[id] = root(above);
    return joined;
}

void RecordBuilder::buildReferring(Kind kind, const RecordId& to) {
    for (const Kind from : parentsFirst)
        for (const std::string_view field : records::fieldNames(from)) {
            if (field == "same_as" || records::referredKind(from, field) != kind)
                continue;
            for (const Row& row : m_tables(from).select("WHERE " + std::string(field) + " = ?", {to}))
                build(row.id, from);
        }
}

void RecordBuilder::joinAnew() {
    for (const Kind kind : {Kind::Yard, Kind::Colony}) {
        std::map<RecordId, RecordId> before;
        for (const auto& [id, into] : m_joined) {
            m_find.at(kind).tryReset();
            m_find.at(kind).bind(1, id);
            if (m_find.at(kind).executeStep())
                before[id] = into;
            m_find.at(kind).tryReset();
        }
        const auto now = workOutJoined(kind);
        if (now == before)
            continue;
        std::set<RecordId> touched; // where rows may point now that have to be looked at again
        for (const auto& [id, into] : before)
            if (!now.contains(id) || now.at(id) != into)
                touched.insert(into);
        for (const auto& [id, into] : now)
            if (!before.contains(id) || before.at(id) != into)
                touched.insert(id);
        SQLite::Statement clear(m_database, "DELETE FROM joined WHERE kind = ?");
        clear.bind(1, std::string(records::nameOf(kind)));
        clear.exec();
        for (const auto& [id, into] : now) {
            SQLite::Statement insert(m_database, "INSERT INTO joined(id, kind, into_id) VALUES (?, ?, ?)");
            insert.bind(1, id);
            insert.bind(2, std::string(records::nameOf(kind)));
            insert.bind(3, into);
            insert.exec();
        }
        readJoined();
        for (const RecordId& id : touched)
            buildReferring(kind, id);
    }
}

} // namespace halfcup::store
