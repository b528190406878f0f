// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Databases damaged in 200 seeded ways (40 of them unless HALFCUP_ALL_FAULTS is set): never a crash, and what
// can be read is saved. What was on each page
// is asked of SQLite itself (its table of pages, "dbstat"), and what was saved is read with SQLite alone.
#include "store_kit.h"

#include "exchange/demo_reader.h"
#include "exchange/keep_demo.h"
#include "store/rescue.h"
#include "store/restore.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include <map>
#include <random>
#include <set>

using namespace halfcup;
using namespace halfcup::storetest;
using store::Rescued;
using store::Store;
using Trouble = store::StoreError::Kind;

namespace {

constexpr int pageBytes = 4096;
const store::StandInNames lostNames{"Yard without a name", "?"};

/// All rows a query gives, one text each.
std::set<std::string> rowsOf(const QString& path, const std::string& text) {
    std::set<std::string> rows;
    sqlite3* database = nullptr;
    const auto keep = [](void* into, int columns, char** values, char**) {
        std::string row;
        for (int i = 0; i < columns; ++i)
            row += std::string(values[i] ? values[i] : "NULL") + "|";
        static_cast<std::set<std::string>*>(into)->insert(row);
        return 0;
    };
    if (sqlite3_open_v2(path.toUtf8().constData(), &database, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK)
        sqlite3_exec(database, text.c_str(), keep, &rows, nullptr);
    sqlite3_close(database);
    return rows;
}

constexpr auto allValues = "SELECT record_id, field, stamp, kind, quote(value) FROM revision";
constexpr auto allCounts = "SELECT sample_id, stamp, rinse, change, typed, at_ms FROM count_event";
constexpr auto allSamples = "SELECT id, mites, load_q50, state, jar, note FROM sample";

/// All of it, or the part that is run with every change.
bool everything() {
    return qEnvironmentVariableIsSet("HALFCUP_ALL_FAULTS");
}

qsizetype missingFrom(const std::set<std::string>& there, const std::set<std::string>& wanted) {
    return static_cast<qsizetype>(
        std::ranges::count_if(wanted, [&](const auto& row) { return !there.contains(row); }));
}

} // namespace

class DamagedDatabase : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_path;
    QByteArray m_whole; // a season, settled into one file
    std::set<std::string> m_values;
    std::set<std::string> m_counts;
    std::set<std::string> m_samples;
    std::map<int, std::string> m_tableOfPage; // as dbstat has it, from 1
    std::map<int, int> m_rowsOfPage;
    Host m_host;
    int m_saved = 0; // over all damaged files, for the line at the end
    int m_whole200 = 0;

    Rescued rescueIt() { return store::rescue(m_path.toStdString(), m_host.asked(), lostNames); }

    void startOver(const QByteArray& database) {
        for (const QString& name : QDir(m_folder.path()).entryList(QDir::Files))
            QFile::remove(m_folder.filePath(name));
        QVERIFY(putBytes(m_path, database));
    }

    void damage(QByteArray& bytes, int page, std::mt19937& chance) const {
        const int at = (page - 1) * pageBytes;
        switch (chance() % 5) {
        case 0: // another file's block
            for (int i = 0; i < pageBytes; ++i)
                bytes[at + i] = static_cast<char>(chance());
            break;
        case 1: // never written
            bytes.replace(at, pageBytes, QByteArray(pageBytes, '\0'));
            break;
        case 2: { // a sector of 512 bytes
            const int sector = static_cast<int>(chance() % 8) * 512;
            bytes.replace(at + sector, 512, QByteArray(512, static_cast<char>(chance())));
            break;
        }
        case 3: // some bits
            for (int i = 0; i < 20; ++i)
                bytes[at + static_cast<int>(chance() % pageBytes)] ^= static_cast<char>(1U << (chance() % 8));
            break;
        default: { // what lay there is another page now
            const int other = static_cast<int>(chance() % static_cast<unsigned>(bytes.size() / pageBytes));
            bytes.replace(at, pageBytes, bytes.mid(other * pageBytes, pageBytes));
        }
        }
    }

private slots:
    void initTestCase() {
        m_path = m_folder.filePath("halfcup.db");
        {
            Store store(m_path.toStdString(), m_host.asked());
            exchange::keepDemo(store, exchange::readDemo(exchange::builtInDemo()));
            const Place place = addPlace(store);
            for (int i = 0; i < 30; ++i) {
                auto sample = addSample(store, place.colony, startMs + i * 1000);
                for (int tap = 0; tap < 6; ++tap)
                    store.addCount(sample.id, {0, 1, {}, 0, startMs + tap});
                sample.note = "after rain";
                sample.state = records::SampleState::Finished;
                store.save(sample);
            }
        }
        QVERIFY(!QFileInfo::exists(m_path + "-wal"));
        m_whole = bytesOf(m_path);
        m_values = rowsOf(m_path, allValues);
        m_counts = rowsOf(m_path, allCounts);
        m_samples = rowsOf(m_path, allSamples);
        QVERIFY(m_values.size() > 1500 && m_counts.size() > 180 && m_samples.size() > 30);
        for (const std::string& row : rowsOf(m_path, "SELECT pageno, name, ncell FROM dbstat")) {
            const QStringList parts = QString::fromStdString(row).split('|');
            m_tableOfPage[parts[0].toInt()] = parts[1].toStdString();
            m_rowsOfPage[parts[0].toInt()] = parts[2].toInt();
        }
    }

    void init() {
        m_host = {};
        m_host.chance = std::uint64_t{1} << 40; // not the ids that made the database
        startOver(m_whole);
    }

    void aSoundOneComesBackWhole() {
        const Rescued rescued = rescueIt();
        QCOMPARE(rowsOf(m_path, allValues), m_values);
        QCOMPARE(rowsOf(m_path, allCounts), m_counts);
        QCOMPARE(rowsOf(m_path, allSamples), m_samples);
        QCOMPARE(rescued.values, static_cast<std::int64_t>(m_values.size() + m_counts.size()));
        QCOMPARE(rescued.lost, 0);
        QCOMPARE(rescued.waiting, 0);
        QCOMPARE(rescued.standIns, 0);
        QCOMPARE(rescued.badPages, 0);
        QCOMPARE(rescued.keptAside, m_path.toStdString() + ".damaged-20260615-090000");
        QVERIFY(bytesOf(QString::fromStdString(rescued.keptAside)) == m_whole);
        QCOMPARE(sql(m_path, "PRAGMA integrity_check"), std::string("ok"));
        QCOMPARE(QDir(m_folder.path()).entryList(QDir::Files),
                 (QStringList{"halfcup.db", "halfcup.db.damaged-20260615-090000"}));
    }

    void theNewOneIsAnotherPhone() {
        const std::string before = sql(m_path, "SELECT value FROM setting WHERE name = 'device_id'");
        rescueIt();
        QVERIFY(sql(m_path, "SELECT value FROM setting WHERE name = 'device_id'") != before);
        QCOMPARE(sql(m_path, "SELECT latest FROM device WHERE id = '" + before + "'"),
                 sql(m_path, "SELECT max(stamp) FROM (SELECT stamp FROM revision UNION ALL SELECT stamp FROM"
                             " count_event) WHERE substr(stamp, 27) = '" +
                                 before + "'"));
    }

    void whatIsInTheLogIsSavedToo() {
        const auto open = std::make_unique<Store>(m_path.toStdString(), m_host.asked());
        addPlace(*open, "Only in the log");
        const QByteArray log = bytesOf(m_path + "-wal");
        QVERIFY(log.size() > 4096);
        const QString copy = m_folder.filePath("copy.db");
        QVERIFY(putBytes(copy, bytesOf(m_path)) && putBytes(copy + "-wal", log));
        const Rescued rescued = store::rescue(copy.toStdString(), m_host.asked(), lostNames);
        QCOMPARE(sql(copy, "SELECT count(*) FROM yard WHERE name = 'Only in the log'"), std::string("1"));
        QVERIFY(bytesOf(QString::fromStdString(rescued.keptAside) + "-wal") == log);
        QVERIFY(!QFileInfo::exists(copy + "-wal"));
    }

    void ofALogCutAnywhereTheWholePartIsSaved() {
        const auto open = std::make_unique<Store>(m_path.toStdString(), m_host.asked());
        for (int i = 1; i <= 20; ++i)
            addPlace(*open, "Late " + std::to_string(i));
        const QByteArray file = bytesOf(m_path);
        const QByteArray log = bytesOf(m_path + "-wal");
        const QString copy = m_folder.filePath("copy.db");
        std::mt19937 chance(11);
        for (int i = 0; i < 12; ++i) {
            const QByteArray part = log.left(static_cast<int>(chance() % static_cast<unsigned>(log.size())));
            QVERIFY(putBytes(copy, file) && putBytes(copy + "-wal", part));
            const QString asked = m_folder.filePath("asked.db");
            QVERIFY(putBytes(asked, file) && putBytes(asked + "-wal", part));
            const std::string yards = "SELECT count(*) FROM yard";
            const std::string expected = sql(asked, yards); // SQLite's own reading of the cut log
            store::rescue(copy.toStdString(), m_host.asked(), lostNames);
            QVERIFY2(sql(copy, yards) == expected,
                     qPrintable(QString("%1 of %2 bytes: %3")
                                    .arg(part.size())
                                    .arg(log.size())
                                    .arg(QString::fromStdString(sql(copy, yards) + " for " + expected))));
            QFile::remove(asked + "-wal");
        }
    }

    void withoutItsFirstPageAllRecordsAreSaved() {
        QByteArray bytes = m_whole;
        bytes.replace(0, pageBytes, QByteArray(pageBytes, '\xA5'));
        startOver(bytes);
        QVERIFY(troubleOf([&] { Store(m_path.toStdString(), m_host.asked()); }) == Trouble::NotOurs);
        rescueIt();
        QCOMPARE(rowsOf(m_path, allValues), m_values);
        QCOMPARE(rowsOf(m_path, allCounts), m_counts);
        QCOMPARE(rowsOf(m_path, allSamples), m_samples);
    }

    void eachPageAlone() { // every page of the file, lost whole
        const int step = everything() ? 1 : 5;
        int lessThanAll = 0;
        for (const auto& [page, table] : m_tableOfPage) {
            if (page % step != 0)
                continue;
            QByteArray bytes = m_whole;
            bytes.replace((page - 1) * pageBytes, pageBytes, QByteArray(pageBytes, '\0'));
            startOver(bytes);
            const Rescued rescued = rescueIt();
            const auto values = missingFrom(rowsOf(m_path, allValues), m_values);
            const auto counts = missingFrom(rowsOf(m_path, allCounts), m_counts);
            const QString where = QString("page %1 of %2").arg(page).arg(QString::fromStdString(table));
            const bool holdsValues = table == "revision" || table == "count_event";
            QVERIFY2(values + counts <= (holdsValues ? m_rowsOfPage[page] : 0), qPrintable(where));
            QVERIFY2(rescued.lost == values + counts, qPrintable(where)); // the indices are whole: it knows
            QVERIFY2(rescued.badPages >= (table == "revision" ? 1 : 0), qPrintable(where));
            // What a row said last is there, whatever page is gone.
            QVERIFY2(rowsOf(m_path, allSamples) == m_samples, qPrintable(where));
            QVERIFY2(store::lookInto(m_path.toStdString()).rows.at("yard") == 3, qPrintable(where));
            lessThanAll += values + counts > 0;
        }
        QVERIFY(lessThanAll > 20 / step);
    }

    void twoHundredDamagedFiles_data() {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = everything() ? 1 : 161; seed <= 200; ++seed)
            QTest::addRow("%u", seed) << seed;
    }
    void twoHundredDamagedFiles() {
        QFETCH(const unsigned, seed);
        std::mt19937 chance(seed);
        QByteArray bytes = m_whole;
        const int pages = static_cast<int>(bytes.size() / pageBytes);
        const int damaged = 1 + static_cast<int>(chance() % (seed % 10 == 0 ? 60 : 6));
        for (int i = 0; i < damaged; ++i)
            damage(bytes, 1 + static_cast<int>(chance() % static_cast<unsigned>(pages)), chance);
        if (seed % 7 == 0) // and its end is missing
            bytes.truncate(bytes.size() - static_cast<int>(chance() % 40'000));
        startOver(bytes);

        // Used as it is: read or refused, never a crash. On a copy, for a sound page may be written.
        const QString used = m_folder.filePath("used.db");
        QVERIFY(putBytes(used, bytes));
        const auto trouble = troubleOf([&] {
            Store store(used.toStdString(), m_host.asked());
            for (const records::Yard& yard : store.allYards()) {
                static_cast<void>(store.yardRecords(yard.id));
                for (const records::Colony& colony : store.allColonies(yard.id))
                    for (const records::Sample& sample : store.samplesOf(colony.id))
                        static_cast<void>(store.countEvents(sample.id));
            }
            addPlace(store, "After the damage");
        });
        QVERIFY(!trouble || *trouble == Trouble::Damaged || *trouble == Trouble::NotOurs ||
                *trouble == Trouble::Failed || *trouble == Trouble::Newer);
        static_cast<void>(troubleOf([&] { static_cast<void>(store::damageIn(m_path.toStdString())); }));
        QVERIFY(bytesOf(m_path) == bytes);

        const Rescued rescued = rescueIt();
        QVERIFY(bytesOf(QString::fromStdString(rescued.keptAside)) == bytes);
        Store store(m_path.toStdString(), m_host.asked());
        QCOMPARE(store.integrityReport(), std::string("ok"));
        const auto values = rowsOf(m_path, allValues);
        const auto missing = missingFrom(values, m_values) + missingFrom(rowsOf(m_path, allCounts), m_counts);
        // No more is gone than lay on so many pages: a page has room for 60 values at most.
        const int cut = pages - static_cast<int>(bytes.size() / pageBytes);
        QVERIFY2(missing <= 60 * (damaged + cut), qPrintable(QString::number(missing)));
        addPlace(store, "The page goes on");
        QCOMPARE(store.integrityReport(), std::string("ok"));
        m_saved += static_cast<int>(m_values.size() + m_counts.size() - static_cast<std::size_t>(missing));
        m_whole200 += missing == 0;
        if (seed == 200)
            qInfo(
                "Damaged files of %d pages: %.1f %% of all values and acts saved, %d files wholly.", pages,
                100.0 * m_saved /
                    ((everything() ? 200.0 : 40.0) * static_cast<double>(m_values.size() + m_counts.size())),
                m_whole200);
    }

    void whoseYardIsLostStandsUnderAnotherName() {
        const std::string yard = sql(m_path, "SELECT id FROM yard WHERE name = 'By the ford'");
        sql(m_path, "PRAGMA foreign_keys = OFF; DELETE FROM yard WHERE id = '" + yard +
                        "'; DELETE FROM revision WHERE record_id = '" + yard +
                        "'; DELETE FROM colony WHERE yard_id = '" + yard +
                        "'; DELETE FROM revision WHERE record_id IN (SELECT colony_id FROM sample WHERE"
                        " yard_id = '" +
                        yard + "')");
        const Rescued rescued = rescueIt();
        QCOMPARE(rescued.standIns, 2);
        Store store(m_path.toStdString(), m_host.asked());
        QCOMPARE(store.yard(yard)->name, lostNames.yard);
        QCOMPARE(store.colonies(yard).size(), std::size_t{1});
        QCOMPARE(store.colonies(yard).front().label, lostNames.colony);
        QCOMPARE(store.samplesOf(store.colonies(yard).front().id).size(), std::size_t{30});
        QCOMPARE(rowsOf(m_path, allSamples), m_samples);
    }

    void earlierSchemasAreSavedToo_data() {
        QTest::addColumn<int>("version");
        for (int version = 1; version < store::allMigrations().back().version; ++version)
            QTest::addRow("schema %d", version) << version;
    }
    void earlierSchemasAreSavedToo() {
        QFETCH(const int, version);
        const QString kept =
            QStringLiteral(HALFCUP_SOURCE_DIR "/tests/unit/schemas/schema_%1.db").arg(version);
        startOver(bytesOf(kept));
        const QString migrated = m_folder.filePath("migrated.db");
        QVERIFY(putBytes(migrated, bytesOf(kept)));
        Store(migrated.toStdString(), m_host.asked());
        rescueIt();
        for (const char* each : {allValues, allCounts, allSamples})
            QCOMPARE(rowsOf(m_path, each), rowsOf(migrated, each));
    }

    void whatIsNotOursStaysWhereItIs_data() {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("a letter") << QByteArray("Dear keeper, this is a letter.\n").repeated(400);
        QTest::newRow("zeros") << QByteArray(40'960, '\0');
        QByteArray noise(200'000, '\0');
        std::mt19937 chance(5);
        for (char& byte : noise)
            byte = static_cast<char>(chance());
        QTest::newRow("noise") << noise;
    }
    void whatIsNotOursStaysWhereItIs() {
        QFETCH(const QByteArray, bytes);
        startOver(bytes);
        QVERIFY(troubleOf([&] { rescueIt(); }) == Trouble::NotOurs);
        QVERIFY(bytesOf(m_path) == bytes);
        QCOMPARE(QDir(m_folder.path()).entryList(QDir::Files), QStringList{"halfcup.db"});
    }

    void anOpenOneIsNotTouched() {
        int pipe[2];
        QCOMPARE(::pipe(pipe), 0);
        const pid_t child = fork(); // locks are a matter between processes
        if (child == 0) {
            Store store(m_path.toStdString(), m_host.asked());
            const bool said = write(pipe[1], "x", 1) == 1;
            pause();
            _exit(said ? 0 : 1);
        }
        char ready = 0;
        QCOMPARE(read(pipe[0], &ready, 1), ssize_t{1});
        QVERIFY(troubleOf([&] { rescueIt(); }) == Trouble::Busy);
        kill(child, SIGKILL);
        waitpid(child, nullptr, 0);
        rescueIt();
    }

    void fullDisk() {
        const int result = inChild([&] {
            if (!mountSmallDisk(m_folder.path(), "size=32m"))
                return skipped;
            if (!putBytes(m_path, m_whole))
                return 2;
            for (int extraKb : {8, 200, 400, 600, 700}) { // room for less than two more such files
                QFile::remove(m_folder.filePath("ballast"));
                if (!putBytes(m_path, m_whole))
                    return 3;
                const qint64 room = 32 * 1024 * 1024 - m_whole.size() - extraKb * 1024 - 64 * 1024;
                if (!putBytes(m_folder.filePath("ballast"), QByteArray(static_cast<int>(room), 'b')))
                    return 4;
                const auto trouble = troubleOf([&] { rescueIt(); });
                if (trouble && *trouble != Trouble::DiskFull)
                    return 10 + static_cast<int>(*trouble);
                if (trouble && bytesOf(m_path) != m_whole)
                    return 5;
                if (trouble && QDir(m_folder.path()).entryList(QDir::Files).size() != 2)
                    return 6;
                for (const QString& name : QDir(m_folder.path()).entryList({"halfcup.db*"}, QDir::Files))
                    QFile::remove(m_folder.filePath(name));
            }
            QFile::remove(m_folder.filePath("ballast"));
            if (!putBytes(m_path, m_whole))
                return 7;
            return troubleOf([&] { rescueIt(); }) ? 8 : 0;
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }

    void damageIsFoundWithoutChangingAnything() {
        QCOMPARE(store::damageIn(m_path.toStdString()), std::string());
        QCOMPARE(store::damageIn(m_folder.filePath("none").toStdString()), std::string());
        const auto revision = std::ranges::find_if(
            m_tableOfPage, [](const auto& page) { return page.second == "revision" && page.first > 5; });
        QByteArray bytes = m_whole;
        bytes.replace((revision->first - 1) * pageBytes, pageBytes, QByteArray(pageBytes, '\xA5'));
        startOver(bytes);
        QVERIFY(!store::damageIn(m_path.toStdString()).empty());
        QVERIFY(bytesOf(m_path) == bytes);
        startOver(m_whole.left(m_whole.size() / 2));
        QVERIFY(!store::damageIn(m_path.toStdString()).empty());
        QCOMPARE(QDir(m_folder.path()).entryList(QDir::Files), QStringList{"halfcup.db"});
    }

    /// A backup can take the place of a damaged one, which is not thrown away.
    void aBackupTakesItsPlace() {
        const QString backup = m_folder.filePath("kept/one.halfcup-backup");
        QVERIFY(QDir(m_folder.path()).mkpath("kept"));
        store::makeBackup(m_path.toStdString(), backup.toStdString(), {startMs, 0});
        QByteArray bytes = m_whole;
        bytes.replace(0, 3 * pageBytes, QByteArray(3 * pageBytes, '\xA5'));
        startOver(bytes);
        const std::string aside = store::moveDamagedAside(m_path.toStdString(), startMs);
        store::restoreBackup(backup.toStdString(), m_path.toStdString(), m_host.asked());
        QVERIFY(bytesOf(QString::fromStdString(aside)) == bytes);
        QCOMPARE(rowsOf(m_path, allSamples), m_samples);
    }
};

QTEST_GUILESS_MAIN(DamagedDatabase)
#include "damaged_database.moc"
