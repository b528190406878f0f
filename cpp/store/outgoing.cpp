// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/outgoing.h"

#include "store/count_rows.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/Transaction.h>

#include <algorithm>

namespace halfcup::store {

using namespace records;

namespace {

/// One pass over the rows of one record after the other.
class Rows {
public:
    Rows(SQLite::Database& database, const std::string& text, const std::vector<Value>& values)
        : m_statement(database, text) {
        for (int i = 0; i < m_statement.getBindParameterCount(); ++i)
            bindValue(m_statement, i + 1, values[static_cast<std::size_t>(i)]);
        step();
    }

    [[nodiscard]] bool atEnd() const { return m_atEnd; }
    [[nodiscard]] const RecordId& id() const { return m_id; }
    SQLite::Statement& row() { return m_statement; }
    void step() {
        m_atEnd = !m_statement.executeStep();
        if (!m_atEnd)
            m_id = m_statement.getColumn(0).getString();
    }

private:
    SQLite::Statement m_statement;
    RecordId m_id;
    bool m_atEnd = false;
};

} // namespace

std::string Outgoing::device() {
    return std::get<std::string>(m_store.setting("device_id"));
}

std::map<std::string, std::string> Outgoing::seen() {
    return guarded([&] {
        std::map<std::string, std::string> seen;
        SQLite::Statement rows(m_store.database(), "SELECT id, latest FROM device");
        while (rows.executeStep())
            seen[rows.getColumn(0).getString()] = rows.getColumn(1).getString();
        if (const std::string own = now().ownStamp; !own.empty())
            seen[device()] = own;
        return seen;
    });
}

std::map<std::string, std::int64_t> Outgoing::counts() {
    return guarded([&] {
        std::map<std::string, std::int64_t> counts;
        for (const Kind kind : allKinds) {
            const std::string name(nameOf(kind));
            counts[name] = m_store.database().execAndGet("SELECT count(*) FROM " + name).getInt64();
        }
        return counts;
    });
}

Outgoing::Mark Outgoing::now() {
    return guarded([&] {
        const std::string own = device();
        Mark mark;
        for (const char* table : {"revision", "count_event"}) {
            // By the index on stamps from its end: own stamps are never far from it.
            SQLite::Statement latest(m_store.database(),
                                     std::string("SELECT stamp FROM ") + table +
                                         " WHERE substr(stamp, 27) = ? ORDER BY stamp DESC"
                                         " LIMIT 1");
            latest.bind(1, own);
            if (latest.executeStep())
                mark.ownStamp = std::max(mark.ownStamp, latest.getColumn(0).getString());
        }
        mark.merge = m_store.database().execAndGet("SELECT coalesce(max(number), 0) FROM merge").getInt64();
        return mark;
    });
}

bool Outgoing::isFromHere(const RecordId& id) {
    return guarded([&] {
        SQLite::Statement own(m_store.database(),
                              "SELECT 1 FROM revision WHERE record_id = ? AND merged IS NULL");
        own.bind(1, id);
        return own.executeStep();
    });
}

void Outgoing::forEachPart(const Visit& visit) {
    forEach("", "", {}, visit);
}

void Outgoing::forEachPartSince(const Mark& mark, const Visit& visit) {
    std::string where = " WHERE (stamp > ?1 AND substr(stamp, 27) = ?2)";
    const bool merged = guarded([&] {
        SQLite::Statement any(m_store.database(), "SELECT 1 FROM merge WHERE number > ? AND passed_on = 0 AND"
                                                  " undone = 0");
        any.bind(1, mark.merge);
        return any.executeStep();
    });
    if (merged) // a scan of all there is, so only where it is needed
        where += " OR merged IN (SELECT number FROM merge WHERE number > ?3 AND passed_on = 0)";
    std::vector<Value> values{mark.ownStamp, device()};
    if (merged)
        values.emplace_back(mark.merge);
    forEach(where, where, values, visit);
}

void Outgoing::forEach(const std::string& revisionsWhere, const std::string& countsWhere,
                       const std::vector<Value>& values, const Visit& visit) {
    guarded([&] {
        SQLite::Database& database = m_store.database();
        SQLite::Transaction reading(database); // both passes see one state
        Rows revisions(database,
                       "SELECT record_id, kind, field, stamp, value FROM revision" + revisionsWhere +
                           " ORDER BY record_id, field, stamp",
                       values);
        Rows counts(database,
                    std::string("SELECT sample_id, ") + countColumns + " FROM count_event" + countsWhere +
                        " ORDER BY sample_id, stamp",
                    values);
        RecordPart part;
        while (!revisions.atEnd() || !counts.atEnd()) {
            const bool hasRevisions = !revisions.atEnd() && (counts.atEnd() || revisions.id() <= counts.id());
            part.id = hasRevisions ? revisions.id() : counts.id();
            part.kind = hasRevisions ? revisions.row().getColumn(1).getString() : "sample";
            part.revisions.clear();
            part.counts.clear();
            for (; !revisions.atEnd() && revisions.id() == part.id; revisions.step())
                part.revisions.push_back({revisions.row().getColumn(2).getString(),
                                          revisions.row().getColumn(3).getString(),
                                          valueIn(revisions.row(), 4)});
            for (; !counts.atEnd() && counts.id() == part.id; counts.step())
                part.counts.push_back({counts.row().getColumn(1).getString(), countIn(counts.row(), 1)});
            std::ranges::stable_sort(part.revisions, {}, &Revision::stamp);
            visit(part);
        }
    });
}

} // namespace halfcup::store
