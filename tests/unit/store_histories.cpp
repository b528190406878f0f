// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Random histories on two to five phones: whatever was recorded where, by whatever clock, and in whatever
// order files came, came again, were cut or never came, in the end all phones hold the same, and nothing that
// any of them acknowledged is missing anywhere.
//
// HALFCUP_HISTORIES: how many (the figure below without it); HALFCUP_FIRST_HISTORY: the first one's number,
// which is its seed.
#include "exchange/keep_exchange.h"
#include "store/joining.h"
#include "store/merge.h"
#include "store/merge_log.h"
#include "store/outgoing.h"
#include "store_kit.h"

#include <QBuffer>
#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <map>
#include <memory>
#include <random>
#include <set>

using namespace halfcup;
using namespace halfcup::records;
using namespace halfcup::storetest;

namespace {

constexpr int usualHistories = 1000;
constexpr std::int64_t dayMs = 86'400'000;

/// What all phones must agree on, and what is each phone's own.
const char* const shared[] = {
    "SELECT * FROM yard ORDER BY id",
    "SELECT * FROM colony ORDER BY id",
    "SELECT * FROM sample ORDER BY id",
    "SELECT * FROM event ORDER BY id",
    "SELECT * FROM treatment ORDER BY id",
    "SELECT * FROM treated ORDER BY id",
    "SELECT * FROM scoop_count ORDER BY id",
    "SELECT * FROM round ORDER BY id",
    "SELECT record_id, field, stamp, kind, quote(value) FROM revision ORDER BY record_id, field, stamp",
    "SELECT sample_id, stamp, number, rinse, change, typed, at_ms FROM count_event ORDER BY sample_id, stamp",
    "SELECT * FROM joined ORDER BY id",
    "SELECT * FROM waiting ORDER BY record_id",
};
const char* const own[] = {
    "SELECT record_id, field, stamp, merged FROM revision ORDER BY record_id, field, stamp",
    "SELECT sample_id, stamp, merged FROM count_event ORDER BY sample_id, stamp",
    "SELECT * FROM device ORDER BY id",
    "SELECT * FROM merge ORDER BY number",
    "SELECT * FROM setting ORDER BY name",
};

template <std::size_t N>
std::string dump(sqlite3* database, const char* const (&texts)[N]) {
    std::string all;
    for (const char* text : texts) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(database, text, -1, &statement, nullptr) != SQLITE_OK)
            return std::string("trouble: ") + sqlite3_errmsg(database);
        while (sqlite3_step(statement) == SQLITE_ROW) {
            for (int i = 0; i < sqlite3_column_count(statement); ++i) {
                const auto* value = sqlite3_column_text(statement, i);
                all += value ? reinterpret_cast<const char*>(value) : "NULL";
                all += '|';
            }
            all += '\n';
        }
        sqlite3_finalize(statement);
        all += "--\n";
    }
    return all;
}

/// One phone: its store, its clock, and what it has told its keeper is kept.
struct Phone {
    std::int64_t nowMs = startMs;
    std::unique_ptr<store::Store> store;
    sqlite3* eyes = nullptr; // reads the same file beside the store

    Phone(const QString& path, std::mt19937_64& chance) {
        const std::uint64_t salt = chance();
        auto number = std::make_shared<std::uint64_t>(salt);
        store = std::make_unique<store::Store>(
            path.toStdString(), store::StoreHost{[this] { return nowMs; },
                                                 [number] {
                                                     return *number = *number * 6364136223846793005U +
                                                                      1442695040888963407U;
                                                 }});
        sqlite3_open_v2(path.toUtf8().constData(), &eyes, SQLITE_OPEN_READONLY, nullptr);
    }
    ~Phone() { sqlite3_close(eyes); }
    Phone(const Phone&) = delete;
    Phone& operator=(const Phone&) = delete;

    QByteArray file() {
        QByteArray bytes;
        store::Outgoing outgoing(*store);
        exchange::writeExchange(
            outgoing,
            [&](std::string_view text) { bytes.append(text.data(), static_cast<qsizetype>(text.size())); },
            nowMs);
        return bytes;
    }

    exchange::ExchangeReport take(const QByteArray& bytes) {
        QBuffer buffer;
        buffer.setData(bytes);
        buffer.open(QIODevice::ReadOnly);
        store::Merge merge(*store);
        merge.from({"file", {}, false});
        auto report = exchange::readExchange(buffer, exchange::takerFor(merge, "file"));
        merge.finish();
        merge.keep();
        return report;
    }
};

struct Acknowledged {
    std::set<RecordId> samples, events, treatments, yards, colonies;
    std::map<RecordId, int> acts; // of counting, by sample
};

/// One history, played out of its seed.
class History {
public:
    History(std::uint64_t seed, const QString& folder, const QString& emptyDatabase)
        : m_chance(seed) {
        const int phones = below(4) + 2;
        for (int i = 0; i < phones; ++i) {
            const QString path = folder + QStringLiteral("/phone%1.db").arg(i);
            for (const char* ending : {"", "-wal", "-shm", ".before-merge"})
                QFile::remove(path + QLatin1String(ending));
            QFile::copy(emptyDatabase, path);
            m_phones.push_back(std::make_unique<Phone>(path, m_chance));
            if (below(3) == 0) // a clock that is wrong by up to a year
                m_phones.back()->nowMs += (static_cast<std::int64_t>(below(731)) - 365) * dayMs;
        }
    }

    void play() {
        const int steps = 15 + below(45);
        for (int i = 0; i < steps; ++i) {
            Phone& phone = *m_phones[pick(m_phones)];
            phone.nowMs += below(20) == 0 ? (below(3) - 1) * dayMs : below(4) * 700;
            step(phone);
        }
    }

    /// Every phone hands its last file to every other, in any order, some twice.
    void exchangeAll() {
        std::vector<QByteArray> last;
        for (const auto& phone : m_phones)
            last.push_back(phone->file());
        for (std::size_t to = 0; to < m_phones.size(); ++to) {
            std::vector<std::size_t> order;
            for (std::size_t from = 0; from < last.size(); ++from)
                order.insert(order.end(), from == to ? 0U : 1U + (below(4) == 0), from);
            std::ranges::shuffle(order, m_chance);
            for (const std::size_t from : order) {
                if (!m_phones[to]->take(last[from]).isWhole())
                    fault("a whole file is called damaged");
            }
        }
    }

    void check() {
        const std::string first = dump(m_phones[0]->eyes, shared);
        if (first.starts_with("trouble"))
            fault(first);
        for (const auto& phone : m_phones) {
            const std::string each = dump(phone->eyes, shared);
            if (each != first)
                fault("two phones differ:\n" + firstDifference(first, each));
            checkAcknowledged(*phone);
            const std::string report = phone->store->integrityReport();
            if (report != "ok")
                fault(report);
        }
        Phone& phone = *m_phones[pick(m_phones)];
        const std::string before = dump(phone.eyes, own) + dump(phone.eyes, shared);
        phone.take(m_phones[pick(m_phones)]->file());
        if (dump(phone.eyes, own) + dump(phone.eyes, shared) != before)
            fault("taking in the same once more changed something");
    }

    std::string faults;
    long files = 0;
    long acts = 0;

private:
    int below(int limit) { return static_cast<int>(m_chance() % static_cast<std::uint64_t>(limit)); }
    template <typename List>
    std::size_t pick(const List& list) {
        return static_cast<std::size_t>(below(static_cast<int>(list.size())));
    }
    void fault(const std::string& text) { faults += text + "\n"; }

    static std::string firstDifference(const std::string& one, const std::string& other) {
        std::size_t at = 0;
        while (at < one.size() && at < other.size() && one[at] == other[at])
            ++at;
        const std::size_t from = at < 200 ? 0 : at - 200;
        return one.substr(from, 400) + "\n---\n" + other.substr(from, 400);
    }

    void step(Phone& phone) {
        store::Store& store = *phone.store;
        const auto yards = store.yards();
        if (yards.empty() || below(12) == 0) {
            const auto place = addPlace(store, "Yard " + std::to_string(below(3)));
            m_kept.yards.insert(place.yard.id);
            m_kept.colonies.insert(place.colony.id);
            return;
        }
        const Yard yard = yards[pick(yards)];
        const auto colonies = store.colonies(yard.id);
        if (colonies.empty() || below(10) == 0) {
            m_kept.colonies.insert(addColony(store, yard.id, std::to_string(below(4))).id);
            return;
        }
        Colony colony = colonies[pick(colonies)];
        switch (below(14)) {
        case 0:
        case 1:
            wash(phone, colony);
            break;
        case 2:
            countOn(phone);
            break;
        case 3:
            treat(store, yard, colony);
            break;
        case 4:
            happen(phone, colony);
            break;
        case 5:
            colony.label = "relabelled " + std::to_string(below(5));
            colony.removed = below(6) == 0;
            store.save(colony);
            break;
        case 6:
            edit(store, yard);
            break;
        case 7:
            joinSome(store, yards, colonies);
            break;
        case 8:
            undoSome(phone);
            break;
        case 9:
        case 10:
            m_files.push_back(phone.file());
            ++files;
            break;
        default:
            takeSome(phone);
        }
    }

    void wash(Phone& phone, const Colony& colony) {
        Sample sample = addSample(*phone.store, colony, phone.nowMs);
        m_kept.samples.insert(sample.id);
        for (int i = below(6); i > 0; --i)
            act(phone, sample.id);
        if (below(3) == 0)
            return; // left as a draft
        sample.state = SampleState::Finished;
        sample.finishedAtMs = phone.nowMs;
        sample.answer = Answer{};
        sample.answer->mites = below(20);
        sample.answer->loadQ50 = sample.answer->mites / 3.0;
        phone.store->save(sample);
    }

    void act(Phone& phone, const RecordId& sampleId) {
        CountEvent event;
        event.rinse = 1 + below(2);
        event.change = static_cast<CountEvent::Change>(below(3));
        event.typed = event.change == CountEvent::Change::Typed ? below(30) : 0;
        event.atUtcMs = phone.nowMs;
        phone.store->addCount(sampleId, event);
        ++m_kept.acts[sampleId];
        ++acts;
    }

    void countOn(Phone& phone) { // also a draft that another phone began
        const auto drafts = phone.store->drafts();
        if (!drafts.empty())
            act(phone, drafts[pick(drafts)].id);
    }

    void treat(store::Store& store, const Yard& yard, const Colony& colony) {
        GivenTreatment given;
        given.treatment.id = store.newId();
        given.treatment.yardId = yard.id;
        given.treatment.substance = "oxalic-acid";
        given.treatment.product = "as on its label";
        given.treatment.firstDay = {2026, 8, 1 + below(20)};
        given.treatment.lastDay = given.treatment.firstDay;
        given.colonyIds = {colony.id};
        store.save(given);
        m_kept.treatments.insert(given.treatment.id);
    }

    void happen(Phone& phone, const Colony& colony) {
        ColonyEvent event;
        event.id = phone.store->newId();
        event.colonyId = colony.id;
        event.yardId = colony.yardId;
        event.kind = allEventKinds[pick(allEventKinds)];
        event.day = {2026, 6, 1 + below(25)};
        event.recordedAtMs = phone.nowMs;
        phone.store->save(event);
        m_kept.events.insert(event.id);
    }

    void edit(store::Store& store, Yard yard) {
        yard.name = "Renamed " + std::to_string(below(5));
        if (below(2))
            yard.position = Position{below(90) / 2.0, below(180) / 3.0, 5.0};
        yard.removed = below(8) == 0;
        store.save(yard);
    }

    void joinSome(store::Store& store, const std::vector<Yard>& yards, const std::vector<Colony>& colonies) {
        store::Joining joining(store);
        if (below(4) == 0)
            joining.separate(below(2) ? Kind::Colony : Kind::Yard, yards[pick(yards)].id);
        else if (below(2) && yards.size() > 1)
            joining.join(Kind::Yard, yards[pick(yards)].id, yards[pick(yards)].id);
        else
            joining.join(Kind::Colony, colonies[pick(colonies)].id, colonies[pick(colonies)].id);
    }

    void undoSome(Phone& phone) { // and what it takes back comes again with the last files
        static_cast<void>(store::MergeLog(*phone.store).undoLast());
    }

    void takeSome(Phone& phone) {
        if (m_files.empty())
            return;
        QByteArray bytes = m_files[pick(m_files)]; // any of them: some never, some again, some very late
        if (below(4) == 0)
            bytes.truncate(below(static_cast<int>(bytes.size())));
        phone.take(bytes);
    }

    void checkAcknowledged(Phone& phone) {
        const auto all = [&](const char* table, const std::set<RecordId>& ids) {
            for (const RecordId& id : ids) {
                sqlite3_stmt* statement = nullptr;
                sqlite3_prepare_v2(
                    phone.eyes, ("SELECT 1 FROM " + std::string(table) + " WHERE id = '" + id + "'").c_str(),
                    -1, &statement, nullptr);
                if (sqlite3_step(statement) != SQLITE_ROW)
                    fault(std::string(table) + " " + id + " is missing");
                sqlite3_finalize(statement);
            }
        };
        all("yard", m_kept.yards);
        all("colony", m_kept.colonies);
        all("sample", m_kept.samples);
        all("event", m_kept.events);
        all("treatment", m_kept.treatments);
        for (const auto& [sample, many] : m_kept.acts) {
            const auto there = phone.store->countEvents(sample);
            if (there.size() != static_cast<std::size_t>(many))
                fault("of " + std::to_string(many) + " acts of counting " + std::to_string(there.size()) +
                      " are there");
            for (std::size_t i = 0; i < there.size(); ++i)
                if (there[i].number != static_cast<std::int64_t>(i + 1))
                    fault("the acts are not numbered 1, 2, 3 ...");
        }
    }

    std::mt19937_64 m_chance;
    std::vector<std::unique_ptr<Phone>> m_phones;
    std::vector<QByteArray> m_files; // on their way
    Acknowledged m_kept;
};

} // namespace

class StoreHistoriesTest : public QObject {
    Q_OBJECT

private slots:
    void allPhonesAgreeInTheEnd() {
        // In memory where the system has such a place: 50,000 small databases wear out a disk for nothing.
        QTemporaryDir folder(QDir("/dev/shm").exists() ? "/dev/shm/halfcup-XXXXXX"
                                                       : QDir::tempPath() + "/halfcup-XXXXXX");
        QVERIFY(folder.isValid());
        const QString empty = folder.filePath("empty.db");
        {
            Host host;
            store::Store store(empty.toStdString(), host.asked());
        }
        sql(empty, "DELETE FROM setting; PRAGMA wal_checkpoint(TRUNCATE)"); // each phone names itself
        bool ok = false;
        const int asked = qEnvironmentVariableIntValue("HALFCUP_HISTORIES", &ok);
        const int histories = ok ? asked : usualHistories;
        const int from = qEnvironmentVariableIntValue("HALFCUP_FIRST_HISTORY");
        long files = 0;
        long acts = 0;
        for (int seed = from; seed < from + histories; ++seed) {
            History history(static_cast<std::uint64_t>(seed), folder.path(), empty);
            history.play();
            history.exchangeAll();
            history.check();
            QVERIFY2(
                history.faults.empty(),
                qPrintable(
                    QStringLiteral("History %1: %2").arg(seed).arg(QString::fromStdString(history.faults))));
            files += history.files;
            acts += history.acts;
        }
        qInfo("%d histories, %ld files on their way, %ld acts of counting", histories, files, acts);
        QVERIFY(histories == 0 || (files > 0 && acts > 0));
    }
};

QTEST_APPLESS_MAIN(StoreHistoriesTest)
#include "store_histories.moc"
