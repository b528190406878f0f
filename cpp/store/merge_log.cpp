// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/merge_log.h"

#include "store/record_builder.h"
#include "store/sqlite_errors.h"

#include <SQLiteCpp/Transaction.h>

#include <array>

namespace halfcup::store {

using records::Kind;
using records::RecordId;

namespace {

/// Each before all that it may refer to.
constexpr std::array childrenFirst{Kind::Round,  Kind::ScoopCount, Kind::Treated, Kind::Event,
                                   Kind::Sample, Kind::Treatment,  Kind::Colony,  Kind::Yard};

} // namespace

std::optional<KeptMerge> MergeLog::last() {
    return guarded([&]() -> std::optional<KeptMerge> {
        SQLite::Statement row(m_store.database(), "SELECT number, at_ms, source, records, undone FROM merge"
                                                  " ORDER BY number DESC LIMIT 1");
        if (!row.executeStep())
            return std::nullopt;
        return KeptMerge{row.getColumn(0).getInt64(), row.getColumn(1).getInt64(),
                         row.getColumn(2).getString(), row.getColumn(3).getInt(),
                         row.getColumn(4).getInt() != 0};
    });
}

bool MergeLog::undoLast() {
    const auto merge = last();
    if (!merge || merge->undone)
        return false;
    const bool undone = guarded([&] {
        SQLite::Database& database = m_store.database();
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        SQLite::Statement stamp(database, "SELECT own_stamp FROM merge WHERE number = ?");
        stamp.bind(1, merge->number);
        stamp.executeStep();
        if (!takeBack(merge->number, stamp.getColumn(0).getString()))
            return false;
        SQLite::Statement mark(database, "UPDATE merge SET undone = 1 WHERE number = ?");
        mark.bind(1, merge->number);
        mark.exec();
        transaction.commit();
        return true;
    });
    m_store.builder().forget();
    return undone;
}

bool MergeLog::takeBack(std::int64_t number, const std::string& ownStampBefore) {
    SQLite::Database& database = m_store.database();
    const auto idsOf = [&](const std::string& text) {
        SQLite::Statement rows(database, text);
        rows.bind(1, number);
        std::vector<std::pair<RecordId, std::string>> found;
        while (rows.executeStep())
            found.emplace_back(rows.getColumn(0).getString(), rows.getColumn(1).getString());
        return found;
    };
    const auto touched = idsOf("SELECT DISTINCT record_id, kind FROM revision WHERE merged = ?");
    const auto counted = idsOf("SELECT DISTINCT sample_id, 'sample' FROM count_event WHERE merged = ?");
    for (const char* table : {"revision", "count_event"}) {
        SQLite::Statement remove(database, std::string("DELETE FROM ") + table + " WHERE merged = ?");
        remove.bind(1, number);
        remove.exec();
    }

    // A record was here before if anything of it was: of this phone's own making by then, or of a merge
    // before. What is left of one that was not can only hang on it: a later edit, or later taps.
    SQLite::Statement before(database, "SELECT count(*) FROM revision WHERE record_id = ?1 AND (merged IS NOT"
                                       " NULL OR stamp <= ?2)");
    SQLite::Statement left(database, "SELECT (SELECT count(*) FROM revision WHERE record_id = ?1) + (SELECT"
                                     " count(*) FROM count_event WHERE sample_id = ?1 AND merged IS NULL)");
    std::vector<std::pair<RecordId, Kind>> toRemove;
    std::vector<std::pair<RecordId, Kind>> toBuild;
    for (const auto& [id, word] : touched) {
        before.tryReset();
        before.bind(1, id);
        before.bind(2, ownStampBefore);
        before.executeStep();
        const bool wasHere = before.getColumn(0).getInt() > 0;
        left.tryReset();
        left.bind(1, id);
        left.executeStep();
        if (!wasHere && left.getColumn(0).getInt() > 0)
            return false;
        if (const auto kind = records::kindFrom(word))
            (wasHere ? toBuild : toRemove).emplace_back(id, *kind);
    }
    for (const Kind kind : childrenFirst) {
        for (const auto& [id, what] : toRemove) {
            if (what != kind)
                continue;
            try {
                m_store.table(kind).remove(id);
            } catch (const SQLite::Exception& error) {
                if (error.getErrorCode() == 19) // SQLITE_CONSTRAINT: a record made since refers to it
                    return false;
                throw;
            }
        }
    }
    SQLite::Statement noLonger(database, "DELETE FROM waiting WHERE record_id = ?");
    for (const auto& [id, kind] : toRemove) {
        noLonger.tryReset();
        noLonger.bind(1, id);
        noLonger.exec();
    }
    RecordBuilder& builder = m_store.builder();
    builder.forget();
    for (const auto& [id, kind] : toBuild)
        builder.build(id, kind);
    builder.joinAnew();
    SQLite::Statement numbers(database,
                              "UPDATE count_event SET number = (SELECT count(*) FROM count_event other WHERE"
                              " other.sample_id = count_event.sample_id AND other.stamp <= count_event.stamp)"
                              " WHERE sample_id = ?");
    for (const auto& [id, word] : counted) {
        numbers.tryReset();
        numbers.bind(1, id);
        numbers.exec();
    }
    return true;
}

} // namespace halfcup::store
