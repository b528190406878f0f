// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the tests of exchange files share: a phone with a store, its file as bytes, and its whole database as
// text.
#pragma once

#include "exchange/demo_reader.h"
#include "exchange/keep_demo.h"
#include "exchange/keep_exchange.h"
#include "exchange/line_sum.h"
#include "store/merge.h"
#include "store/outgoing.h"
#include "store_kit.h"

#include <QBuffer>
#include <QProcess>

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace halfcup::exchangetest {

using namespace halfcup::storetest;

inline QByteArray bytesOf(std::string_view text) {
    return {text.data(), static_cast<qsizetype>(text.size())};
}

inline exchange::ByteSink into(QByteArray& bytes) {
    return
        [&bytes](std::string_view text) { bytes.append(text.data(), static_cast<qsizetype>(text.size())); };
}

struct Taken {
    exchange::ExchangeReport report;
    store::MergePlan plan;
};

class Phone {
public:
    explicit Phone(const QString& path, std::uint64_t chance = 1)
        : m_path(path) {
        host.chance = chance;
        m_store = std::make_unique<store::Store>(path.toStdString(), host.asked());
    }

    QByteArray file() {
        QByteArray bytes;
        store::Outgoing outgoing(*m_store);
        exchange::writeExchange(outgoing, into(bytes), host.nowMs);
        return bytes;
    }

    Taken take(const QByteArray& bytes) {
        QBuffer buffer;
        buffer.setData(bytes);
        buffer.open(QIODevice::ReadOnly);
        store::Merge merge(*m_store);
        merge.from({"file", {}, false});
        Taken taken;
        taken.report = exchange::readExchange(buffer, exchange::takerFor(merge, "file"));
        taken.plan = merge.finish();
        if (taken.report.refusal == exchange::ExchangeRefusal::None)
            merge.keep();
        return taken;
    }

    store::Store& store() { return *m_store; }
    const QString& path() const { return m_path; }

    Host host;

private:
    QString m_path;
    std::unique_ptr<store::Store> m_store;
};

/// Rows of a query as text, through the SQLite library itself; texts and numbers stay apart.
inline std::string rowsOf(sqlite3* database, const std::string& query) {
    std::string all;
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(database, query.c_str(), -1, &statement, nullptr) != SQLITE_OK)
        return std::string("trouble: ") + sqlite3_errmsg(database);
    while (sqlite3_step(statement) == SQLITE_ROW) {
        for (int i = 0; i < sqlite3_column_count(statement); ++i) {
            const auto* value = static_cast<const char*>(sqlite3_column_blob(statement, i));
            all += std::to_string(sqlite3_column_type(statement, i)) + ":";
            all.append(value ? value : "",
                       static_cast<std::size_t>(value ? sqlite3_column_bytes(statement, i) : 0));
            all += '|';
        }
        all += '\n';
    }
    sqlite3_finalize(statement);
    return all;
}

/// All that phones have to agree on: records, their history, their counts. With own: what is the phone's own
/// too (settings, marks of merges), so that equal means untouched.
inline std::string dumpOf(const QString& path, bool own = false) {
    sqlite3* database = nullptr;
    sqlite3_open_v2(path.toUtf8().constData(), &database, SQLITE_OPEN_READONLY, nullptr);
    std::string all;
    for (const char* table :
         {"yard", "colony", "sample", "event", "treatment", "treated", "scoop_count", "round"})
        all += rowsOf(database, std::string("SELECT * FROM ") + table + " ORDER BY id") + "--\n";
    const std::string merged = own ? ", merged" : "";
    all += rowsOf(database, "SELECT record_id, field, stamp, kind, value" + merged +
                                " FROM revision ORDER BY record_id, field, stamp");
    all += rowsOf(database, "SELECT sample_id, stamp, number, rinse, change, typed, at_ms" + merged +
                                " FROM count_event ORDER BY sample_id, stamp");
    all += rowsOf(database, "SELECT * FROM joined ORDER BY id");
    all += rowsOf(database, "SELECT * FROM waiting ORDER BY record_id");
    if (own)
        for (const char* table : {"device", "merge", "setting"})
            all += rowsOf(database, std::string("SELECT * FROM ") + table + " ORDER BY 1") + "--\n";
    sqlite3_close(database);
    return all;
}

/// The lines of a file without their ends; the last one is empty where the file ends as it should.
inline QByteArrayList linesOf(const QByteArray& bytes) {
    return bytes.split('\n');
}

/// A line with its check sum: from text that lacks it and its last brace.
inline QByteArray summed(QByteArray body) {
    const std::string sum = exchange::lineSum(body.toStdString());
    return body + ",\"sum\":\"" + QByteArray::fromStdString(sum) + "\"}";
}

inline std::string stampAt(std::int64_t utcMs, std::uint32_t counter = 0,
                           const std::string& device = "stranger") {
    return records::toText(records::RevisionStamp{utcMs, counter, device});
}

/// A file around lines that lack their check sums and last braces: header, these, end, all as they must be.
inline QByteArray fileOf(const QByteArrayList& bodies, const QByteArray& header = {}) {
    QByteArray file = header;
    if (header.isEmpty()) {
        exchange::ExchangeHeader plain;
        plain.device = "stranger";
        plain.written = "2026-06-15T09:00:00Z";
        file = QByteArray::fromStdString(exchange::headerLine(plain));
    }
    file += '\n';
    for (const QByteArray& body : bodies)
        file += summed(body) + '\n';
    exchange::ExchangeEnd end;
    end.lines = bodies.size() + 1;
    end.sha256 = QCryptographicHash::hash(file, QCryptographicHash::Sha256).toHex().toStdString();
    return file + QByteArray::fromStdString(exchange::endLine(end)) + '\n';
}

/// A record line without its sum: {"kind":...,"id":...,"revisions":[{"at":...,"fields":{...}}]
inline QByteArray partBody(const std::string& kind, const std::string& id, const std::string& stamp,
                           const QByteArray& fields) {
    return "{\"kind\":\"" + QByteArray::fromStdString(kind) + "\",\"id\":\"" + QByteArray::fromStdString(id) +
           "\",\"revisions\":[{\"at\":\"" + QByteArray::fromStdString(stamp) + "\",\"fields\":{" + fields +
           "}}]";
}

/// The demo season, a counted scoop and a round: all kinds there are.
inline void keepAllKinds(Phone& phone) {
    const exchange::Demo demo = exchange::readDemo(exchange::builtInDemo());
    exchange::keepDemo(phone.store(), demo);
    const auto place = addPlace(phone.store(), "Am Damm \"Süd\"\n\xF0\x9F\x90\x9D");
    const auto sample = addSample(phone.store(), place.colony, startMs, records::SampleState::Finished);
    for (const auto change : {records::CountEvent::Change::Tap, records::CountEvent::Change::Typed,
                              records::CountEvent::Change::Undo}) {
        records::CountEvent event;
        event.change = change;
        event.typed = change == records::CountEvent::Change::Typed ? 12 : 0;
        event.atUtcMs = startMs;
        phone.store().addCount(sample.id, event);
    }
    records::ScoopCount scoop;
    scoop.id = phone.store().newId();
    scoop.sampleId = sample.id;
    scoop.bees = 311;
    scoop.countedAtMs = startMs;
    phone.store().save(scoop);
    records::Round round;
    round.id = phone.store().newId();
    round.yardId = place.yard.id;
    round.startedAtMs = startMs;
    round.colonyIds = {place.colony.id};
    phone.store().save(round);
}

} // namespace halfcup::exchangetest
