// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/merge.h"

#include "records/field_access.h"
#include "store/checked_copy.h"
#include "store/count_rows.h"
#include "store/open_database.h"
#include "store/sqlite_errors.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace halfcup::store {

using namespace records;

namespace {

constexpr std::size_t stampHead = 26; // time and counter; the device stands behind them

std::string deviceOf(const std::string& stamp) {
    return stamp.substr(std::min(stamp.size(), stampHead));
}

/// Any order will do, as long as it is the same on all phones.
bool isGreater(const Value& one, const Value& other) {
    return std::pair(one.index(), one) > std::pair(other.index(), other);
}

} // namespace

struct Merge::Known {
    bool any = false; // the record was here
    bool otherKind = false;
    struct Latest {
        std::string stamp;
        Value value;
    };
    std::map<std::string, Latest, std::less<>> latest;        // by field
    std::map<std::pair<std::string, std::string>, Value> all; // by field and stamp
};

Merge::Merge(Store& store) try
    : m_store(store)
    , m_transaction(store.database(), SQLite::TransactionBehavior::IMMEDIATE)
    , m_builder(store.builder())
    , m_known(store.database(),
              "SELECT field, stamp, kind, value FROM revision WHERE record_id = ? ORDER BY field, stamp")
    , m_insert(store.database(),
               "INSERT INTO revision(record_id, field, stamp, kind, value, merged) VALUES (?, ?, ?, ?, ?, ?)"
               " ON CONFLICT DO UPDATE SET value = excluded.value")
    , m_knownCounts(store.database(), "SELECT stamp FROM count_event WHERE sample_id = ?")
    , m_insertCount(store.database(),
                    "INSERT INTO count_event(sample_id, stamp, number, rinse, change, typed, at_ms, merged)"
                    " VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
    , m_number(store.database(), "UPDATE count_event SET number = ?3 WHERE sample_id = ?1 AND stamp = ?2") {
    m_builder.forget();
    m_mergeNumber = store.database().execAndGet("SELECT 1 + coalesce(max(number), 0) FROM merge").getInt64();
} catch (const SQLite::Exception& error) { // another program may hold the database
    throw storeErrorFrom(error);
}

Merge::~Merge() {
    m_builder.forget(); // a transaction that is rolled back takes joins and rows with it
}

void Merge::from(const MergeSource& source) {
    if (m_source.name != source.name) // one file may say it more than once
        m_sources += (m_sources.empty() ? "" : ", ") + source.name;
    m_source = source;
    m_allPassedOn = m_allPassedOn && source.passedOn;
}

Merge::Known Merge::knownOf(const RecordPart& part) {
    Known known;
    m_known.tryReset();
    m_known.bind(1, part.id);
    while (m_known.executeStep()) {
        known.any = true;
        known.otherKind = known.otherKind || m_known.getColumn(2).getString() != part.kind;
        const std::string field = m_known.getColumn(0).getString();
        const std::string stamp = m_known.getColumn(1).getString();
        Value value = valueIn(m_known, 3);
        known.latest[field] = {stamp, value};
        known.all.emplace(std::pair(field, stamp), std::move(value));
    }
    m_known.tryReset();
    if (!known.any && part.kind != nameOf(Kind::Sample)) { // acts of counting may have come before the rest
        m_knownCounts.tryReset();
        m_knownCounts.bind(1, part.id);
        known.otherKind = m_knownCounts.executeStep();
        m_knownCounts.tryReset();
    }
    return known;
}

bool Merge::takeRevision(const RecordPart& part, const Revision& revision, Known& known) {
    const auto [there, isNew] = known.all.emplace(std::pair(revision.field, revision.stamp), revision.value);
    if (!isNew && !isGreater(revision.value, there->second))
        return false;
    there->second = revision.value;
    m_insert.tryReset();
    m_insert.bind(1, part.id);
    m_insert.bind(2, revision.field);
    m_insert.bind(3, revision.stamp);
    m_insert.bind(4, part.kind);
    bindValue(m_insert, 5, revision.value);
    m_insert.bind(6, m_mergeNumber);
    m_insert.exec();
    ++m_plan.newRevisions;
    noteStamp(revision.stamp);
    return true;
}

void Merge::noteStamp(const std::string& stamp) {
    std::string& latest = m_latest[deviceOf(stamp)];
    latest = std::max(latest, stamp);
    m_greatest = std::max(m_greatest, stamp);
}

int Merge::takeCounts(const RecordPart& part) {
    if (part.counts.empty())
        return 0;
    std::set<std::string> stamps;
    m_knownCounts.tryReset();
    m_knownCounts.bind(1, part.id);
    while (m_knownCounts.executeStep())
        stamps.insert(m_knownCounts.getColumn(0).getString());
    m_knownCounts.tryReset();
    int taken = 0;
    for (const StampedCount& count : part.counts) {
        if (!stamps.insert(count.stamp).second)
            continue;
        bindCount(m_insertCount, part.id, count.stamp, 0, count.event);
        m_insertCount.bind(8, m_mergeNumber);
        m_insertCount.exec();
        noteStamp(count.stamp);
        ++taken;
    }
    if (taken == 0)
        return 0;
    std::int64_t number = 0; // all phones number the acts alike: by their stamps
    for (const std::string& stamp : stamps) {
        m_number.tryReset();
        m_number.bind(1, part.id);
        m_number.bind(2, stamp);
        m_number.bind(3, ++number);
        m_number.exec();
    }
    m_plan.newCounts += taken;
    return taken;
}

bool Merge::take(const RecordPart& part) {
    return guarded([&] {
        Known known = knownOf(part);
        if (known.otherKind)
            return false;
        const auto before = known.latest;
        bool removedHere = false;
        if (const auto removed = before.find("removed"); removed != before.end())
            removedHere = removed->second.value == Value{std::int64_t{1}};
        int taken = 0;
        bool removedThere = false;
        std::map<std::string, Revision, std::less<>> theirs; // the latest new one of each field
        for (const Revision& revision : part.revisions) {
            if (!takeRevision(part, revision, known))
                continue;
            ++taken;
            Revision& latest = theirs[revision.field];
            if (latest.stamp <= revision.stamp)
                latest = revision;
        }
        std::vector<Clash> clashes;
        for (const auto& [field, revision] : theirs) {
            const auto ours = before.find(field);
            const bool wins = ours == before.end() || ours->second.stamp < revision.stamp;
            removedThere = removedThere || (field == "removed" && wins && !removedHere &&
                                            revision.value == Value{std::int64_t{1}});
            if (ours == before.end() || ours->second.value == revision.value)
                continue;
            const auto seen = m_source.seen.find(deviceOf(ours->second.stamp));
            if (seen == m_source.seen.end() || seen->second < ours->second.stamp)
                clashes.push_back({field, ours->second.value, revision.value, !wins});
        }
        taken += takeCounts(part);
        const auto kind = kindFrom(part.kind);
        if (taken > 0 && kind)
            m_builder.build(part.id, *kind);
        if (!kind) {
            m_plan.unknownKinds += known.any ? 0 : taken > 0;
            return true;
        }
        const Change change = taken == 0        ? Change::Same
                              : !known.any      ? Change::New
                              : removedThere    ? Change::RemovedThere
                              : clashes.empty() ? Change::Changed
                                                : Change::BothChanged;
        note(part, *kind, change, std::move(clashes));
        return true;
    });
}

void Merge::note(const RecordPart& part, Kind kind, Change change, std::vector<Clash> clashes) {
    const auto [found, first] = m_taken.emplace(part.id, Taken{kind, change});
    Taken& taken = found->second;
    if (!first) {
        // A second part of the record: what was new stays new, and more is worse than less.
        if (taken.change == Change::New || change == Change::Same)
            return;
        taken.change = taken.change == Change::Same ? change : std::max(taken.change, change);
    }
    if (taken.change == Change::Same)
        return;
    if (taken.item < 0) {
        if (m_plan.items.size() >= MergePlan::mostItems)
            return;
        taken.item = static_cast<int>(m_plan.items.size());
        m_plan.items.push_back({kind, part.id, taken.change, {}, {}, {}, {}, {}, {}});
    }
    MergeItem& item = m_plan.items[static_cast<std::size_t>(taken.item)];
    item.change = taken.change;
    std::ranges::move(clashes, std::back_inserter(item.clashes));
}

void Merge::describe(MergeItem& item) {
    const auto row = m_store.table(item.kind).find(item.id);
    if (!row)
        return;
    const Fields& fields = row->fields;
    const auto text = [&](const char* name) { return textIn(fields, name).value_or(""); };
    const auto yardName = [&](const RecordId& id) {
        const auto yard = m_store.table(Kind::Yard).find(id);
        return yard ? textIn(yard->fields, "name").value_or("") : std::string();
    };
    item.yard = item.kind == Kind::Yard ? text("name") : yardName(text("yard_id"));
    item.colony = text("label");
    if (const auto colony = m_store.table(Kind::Colony).find(text("colony_id"))) {
        item.colony = textIn(colony->fields, "label").value_or("");
        if (item.yard.empty())
            item.yard = yardName(textIn(colony->fields, "yard_id").value_or(""));
    }
    item.word = text(item.kind == Kind::Sample ? "method" : item.kind == Kind::Event ? "event" : "substance");
    item.day = text(item.kind == Kind::Event ? "day" : "first_day");
    for (const char* name : {"scooped_at_ms", "started_at_ms", "counted_at_ms"})
        if (!item.atMs)
            item.atMs = integerIn(fields, name);
}

const MergePlan& Merge::finish() {
    guarded([&] {
        m_builder.buildWaiting();
        m_builder.joinAnew();
        for (const auto& [id, taken] : m_taken)
            ++m_plan.counts[{taken.kind, taken.change}];
        for (MergeItem& item : m_plan.items)
            describe(item);
        m_plan.waiting = m_store.database().execAndGet("SELECT count(*) FROM waiting").getInt();
    });
    m_finished = true;
    return m_plan;
}

void Merge::keep() {
    if (!m_finished || m_plan.nothingNew())
        return;
    // A second connection sees the database as it was: what was taken is not committed yet.
    copyChecked(*openDatabase(m_store.path()), mergeCopyName(m_store.path()));
    guarded([&] {
        SQLite::Database& database = m_store.database();
        for (const auto& [device, latest] : m_latest) {
            SQLite::Statement write(database, "INSERT INTO device(id, latest) VALUES (?, ?) ON CONFLICT DO"
                                              " UPDATE SET latest = max(latest, excluded.latest)");
            write.bind(1, device);
            write.bind(2, latest);
            write.exec();
        }
        SQLite::Statement log(database, "INSERT INTO merge(number, at_ms, source, own_stamp, records,"
                                        " passed_on) VALUES (?, ?, ?, ?, ?, ?)");
        log.bind(1, m_mergeNumber);
        log.bind(2, m_store.utcNowMs());
        log.bind(3, m_sources);
        log.bind(4, toText(m_store.revisionClock().latest()));
        log.bind(5, static_cast<int>(m_taken.size()) - m_plan.count(Change::Same) + m_plan.unknownKinds);
        log.bind(6, m_allPassedOn ? 1 : 0);
        log.exec();
        m_transaction.commit();
    });
    if (const auto greatest = parseRevisionStamp(m_greatest))
        m_store.revisionClock().see(*greatest);
}

std::string mergeCopyName(const std::string& databasePath) {
    return databasePath + ".before-merge";
}

} // namespace halfcup::store
