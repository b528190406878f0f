// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The database as a file: how it is made, what is refused, and what a full, read-only or damaged disk does.
#include "store_kit.h"

#include "store/open_database.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include <chrono>
#include <future>
#include <sys/stat.h>
#include <thread>

using namespace halfcup::records;
using namespace halfcup::storetest;
using halfcup::store::Store;
using Trouble = halfcup::store::StoreError::Kind;

namespace {

int modeOf(const QString& path) {
    struct stat info {};
    return stat(path.toUtf8().constData(), &info) == 0 ? static_cast<int>(info.st_mode & 07777) : -1;
}

CountEvent tap() {
    CountEvent event;
    event.atUtcMs = startMs;
    return event;
}

} // namespace

class StoreFilesTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    Host m_host;

    std::unique_ptr<Store> open() { return std::make_unique<Store>(m_path.toStdString(), m_host.asked()); }
    std::optional<Trouble> troubleOnOpening() {
        return troubleOf([this] { open(); });
    }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("halfcup.db");
        m_host = {};
    }

    void newDatabaseIsItsOwnersAlone() {
        umask(0); // whatever the phone's default
        const auto store = open();
        addPlace(*store);
        umask(022);
        QCOMPARE(modeOf(m_path), 0600);
        QCOMPARE(modeOf(m_path + "-wal"), 0600); // the newest records are in there
        QCOMPARE(modeOf(m_path + "-shm"), 0600);
        QCOMPARE(sql(m_path, "PRAGMA journal_mode"), std::string("wal"));
        QCOMPARE(sql(m_path, "PRAGMA application_id"), std::to_string(0x48437570)); // "HCup"
        QCOMPARE(sql(m_path, "PRAGMA user_version"),
                 std::to_string(halfcup::store::allMigrations().back().version));
        QCOMPARE(store->integrityReport(), std::string("ok"));
    }

    void connectionWritesThrough() { // settings of the connection: nobody else can look
        const auto database = halfcup::store::openDatabase(m_path.toStdString());
        QVERIFY(bytesOf(m_path).isEmpty()); // opening writes nothing; claim() does
        QCOMPARE(database->execAndGet("PRAGMA foreign_keys").getInt(), 1);
        QCOMPARE(database->execAndGet("PRAGMA synchronous").getInt(), 2); // FULL
    }

    void nameWithoutAFolderIsInTheWorkingFolder() {
        const QString before = QDir::currentPath();
        QVERIFY(QDir::setCurrent(m_folder->path()));
        const auto trouble =
            troubleOf([this] { addPlace(*std::make_unique<Store>("halfcup.db", m_host.asked())); });
        QDir::setCurrent(before);
        QVERIFY(!trouble);
        QVERIFY(QFileInfo::exists(m_path));
    }

    void newerSchemaIsRefusedUntouched_data() {
        QTest::addColumn<QString>("journal");
        QTest::newRow("as this version keeps it") << "wal";
        QTest::newRow("kept in another way") << "delete";
    }
    void newerSchemaIsRefusedUntouched() {
        QFETCH(const QString, journal);
        addPlace(*open());
        sql(m_path, "PRAGMA user_version = 99; PRAGMA journal_mode = " + journal.toStdString());
        const QByteArray before = bytesOf(m_path);
        const QStringList namesBefore = names();
        QVERIFY(troubleOnOpening() == Trouble::Newer);
        QVERIFY(bytesOf(m_path) == before);
        QCOMPARE(names(), namesBefore);
    }

    void newerSchemaWithoutTables() {
        sql(m_path, "PRAGMA user_version = 99; PRAGMA application_id = " +
                        std::to_string(halfcup::store::applicationId));
        const QByteArray before = bytesOf(m_path);
        QVERIFY(troubleOnOpening() == Trouble::Newer);
        QVERIFY(bytesOf(m_path) == before);
    }

    void otherFilesAreRefusedUntouched_data() {
        QTest::addColumn<QString>("make");
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("tables of another program") << "CREATE TABLE recipe(name TEXT)" << QByteArray();
        QTest::newRow("another program's, still without tables")
            << "PRAGMA application_id = 12345" << QByteArray();
        QTest::newRow("a text") << QString() << QByteArray("colony;mites\n4;9\n");
        QTest::newRow("a long text") << QString() << QByteArray(20'000, 'x');
        QTest::newRow("two bytes") << QString() << QByteArray("xy"); // SQLite takes one byte for none
    }
    void otherFilesAreRefusedUntouched() {
        QFETCH(const QString, make);
        QFETCH(const QByteArray, bytes);
        if (make.isEmpty())
            QVERIFY(putBytes(m_path, bytes));
        else
            sql(m_path, make.toStdString());
        const QByteArray before = bytesOf(m_path);
        QVERIFY(troubleOnOpening() == Trouble::NotOurs);
        QVERIFY(bytesOf(m_path) == before);
        QCOMPARE(names(), QStringList{"halfcup.db"});
    }

    void emptyFileIsANewDatabase() { // made, and then the phone died
        QVERIFY(putBytes(m_path, {}));
        addPlace(*open());
        QCOMPARE(open()->yards().size(), std::size_t{1});
    }

    void missingFolder() {
        m_path = m_folder->filePath("not there/halfcup.db");
        QVERIFY(troubleOnOpening() == Trouble::FolderMissing);
        QVERIFY(names().isEmpty());
    }

    void folderInPlaceOfTheFile() {
        QVERIFY(QDir(m_folder->path()).mkdir("halfcup.db"));
        QVERIFY(troubleOnOpening().has_value());
        QCOMPARE(names(), QStringList{"halfcup.db"});
    }

    void readOnlyFolder_data() {
        QTest::addColumn<bool>("withDatabase");
        QTest::newRow("nothing there before") << false;
        QTest::newRow("a database there") << true;
    }
    void readOnlyFolder() {
        QFETCH(const bool, withDatabase);
        const QString inside = m_folder->filePath("records");
        QVERIFY(QDir(m_folder->path()).mkdir("records"));
        m_path = inside + "/halfcup.db";
        if (withDatabase) {
            addPlace(*open());
            QCOMPARE(chmod(m_path.toUtf8().constData(), 0444), 0);
        }
        const QByteArray before = bytesOf(m_path);
        QCOMPARE(chmod(m_folder->path().toUtf8().constData(), 0755), 0);
        QCOMPARE(chmod(inside.toUtf8().constData(), 0555), 0);
        const int result = inChild([&] {
            if (!giveUpRights())
                return skipped;
            const auto trouble = troubleOf([&] { addPlace(*open()); });
            return !trouble ? 1 : *trouble == Trouble::NotAllowed ? 0 : 10 + static_cast<int>(*trouble);
        });
        chmod(inside.toUtf8().constData(), 0755); // so that the folder can be taken away
        if (result == skipped)
            QSKIP("The test runs as root and cannot become another user, and root may write anywhere.");
        QCOMPARE(result, 0);
        QVERIFY(bytesOf(m_path) == before);
    }

    void cutShortAtAnyLength() {
        {
            const auto store = open();
            const auto place = addPlace(*store);
            for (int i = 0; i < 40; ++i)
                store->addCount(addSample(*store, place.colony, startMs + i).id, tap());
        }
        const QByteArray whole = bytesOf(m_path);
        QVERIFY(whole.size() > 50'000);
        for (const double share : {0.001, 0.01, 0.05, 0.3, 0.5, 0.9, 0.99}) {
            QVERIFY(
                putBytes(m_path, whole.left(static_cast<int>(static_cast<double>(whole.size()) * share))));
            const auto trouble = troubleOf([this] {
                const auto store = open();
                if (store->integrityReport() != "ok")
                    throw halfcup::store::StoreError(Trouble::Damaged, "reported");
            });
            QVERIFY2(trouble == Trouble::Damaged || trouble == Trouble::NotOurs,
                     qPrintable(QString("%1 of the file: kind %2")
                                    .arg(share)
                                    .arg(trouble ? static_cast<int>(*trouble) : -1)));
        }
    }

    void overwrittenPagesAreAnErrorNeverACrash() {
        RecordId colony;
        {
            const auto store = open();
            const auto place = addPlace(*store);
            colony = place.colony.id;
            for (int i = 0; i < 40; ++i)
                store->addCount(addSample(*store, place.colony, startMs + i).id, tap());
        }
        const QByteArray whole = bytesOf(m_path);
        const int pages = static_cast<int>(whole.size() / 4096);
        int noticed = 0;
        for (int page = 1; page < pages; ++page) { // the first holds the header
            QByteArray damaged = whole;
            damaged.replace(page * 4096, 4096, QByteArray(4096, '\xA5'));
            QVERIFY(putBytes(m_path, damaged));
            const auto trouble = troubleOf([&] {
                const auto store = open();
                if (store->integrityReport() != "ok")
                    ++noticed;
                static_cast<void>(store->yards());
                store->forEachSample([](const Sample&) {});
                for (const Sample& sample : store->samplesOf(colony))
                    static_cast<void>(store->countEvents(sample.id));
            });
            if (trouble && *trouble != Trouble::Damaged)
                QFAIL(qPrintable(QString("page %1: kind %2").arg(page).arg(static_cast<int>(*trouble))));
        }
        QVERIFY(noticed > 0);
    }

    void fullDisk() { // a disk of 400 KB in memory, in a mount namespace of its own
        const int result = inChild([&] {
            if (!mountSmallDisk(m_folder->path(), "size=400k"))
                return skipped;
            const auto store = open();
            const auto place = addPlace(*store);
            const auto sample = addSample(*store, place.colony, startMs);
            store->addCount(sample.id, tap());

            // Saved until nothing more fits: the last one is not there at all, all before are.
            std::size_t saved = 1;
            std::optional<Trouble> trouble;
            while (!trouble && saved < 10'000) {
                trouble = troubleOf([&] {
                    Sample next = sample;
                    next.id = store->newId();
                    next.startedAtMs += static_cast<std::int64_t>(saved);
                    next.note = std::string(3000, 'n');
                    store->save(next);
                });
                saved += trouble ? 0 : 1;
            }
            if (trouble != Trouble::DiskFull)
                return trouble ? 10 + static_cast<int>(*trouble) : 2;
            if (store->samplesOf(place.colony.id).size() != saved)
                return 3;
            // Taps need little room, so that some may still fit; the first refused is DiskFull too.
            std::size_t taps = 1;
            trouble.reset();
            while (!trouble && taps < 10'000) {
                trouble = troubleOf([&] { store->addCount(sample.id, tap()); });
                taps += trouble ? 0 : 1;
            }
            if (trouble != Trouble::DiskFull)
                return trouble ? 30 + static_cast<int>(*trouble) : 4;
            if (store->countEvents(sample.id).size() != taps || store->integrityReport() != "ok")
                return 5;
            // Room again: the same open store goes on.
            if (mount("tmpfs", m_folder->path().toUtf8().constData(), "tmpfs", MS_REMOUNT, "size=4m") != 0)
                return skipped;
            store->addCount(sample.id, tap());
            const bool whole = store->countEvents(sample.id).size() == taps + 1 &&
                               store->samplesOf(place.colony.id).size() == saved &&
                               store->integrityReport() == "ok";
            return whole ? 0 : 6;
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }

    void diskFullBeforeTheFirstTable_data() {
        QTest::addColumn<int>("freeKb");
        for (const int kb : {0, 4, 8, 16, 32, 48, 64})
            QTest::addRow("%d KB free", kb) << kb;
    }
    void diskFullBeforeTheFirstTable() {
        QFETCH(const int, freeKb);
        const int result = inChild([&] {
            if (!mountSmallDisk(m_folder->path(), "size=400k"))
                return skipped;
            QFile ballast(m_folder->filePath("ballast"));
            if (!ballast.open(QIODevice::WriteOnly) ||
                ballast.write(QByteArray((400 - freeKb) * 1024, 'b')) < 0 || !ballast.flush())
                return 2;
            const auto trouble = troubleOnOpening();
            if (trouble != Trouble::DiskFull)
                return trouble ? 10 + static_cast<int>(*trouble) : 3;
            ballast.remove(); // room again: it can be made after all
            addPlace(*open());
            return open()->yards().size() == 1 ? 0 : 4;
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }

    void readOnlyDisk() {
        const int result = inChild([&] {
            if (!mountSmallDisk(m_folder->path(), "size=1m"))
                return skipped;
            addPlace(*open());
            if (mount("tmpfs", m_folder->path().toUtf8().constData(), "tmpfs", MS_REMOUNT | MS_RDONLY,
                      nullptr) != 0)
                return skipped;
            const auto trouble = troubleOf([&] { addPlace(*open()); });
            return !trouble ? 1 : *trouble == Trouble::NotAllowed ? 0 : 10 + static_cast<int>(*trouble);
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so there is no read-only one.");
        QCOMPARE(result, 0);
    }

    /// Two programs that start at once: only who is alone can bring a database into the mode with a log, and
    /// SQLite does not wait for that by itself.
    void anotherProgramIsJustMakingItReady() {
        open();
        QCOMPARE(sql(m_path, "PRAGMA journal_mode = DELETE"), std::string("delete"));
        std::promise<void> holds;
        std::thread other([&] {
            SQLite::Database database(m_path.toStdString(), SQLite::OPEN_READWRITE);
            database.exec("BEGIN IMMEDIATE");
            holds.set_value();
            std::this_thread::sleep_for(std::chrono::milliseconds(200));
            database.exec("COMMIT");
        });
        holds.get_future().wait();
        const auto trouble = troubleOnOpening();
        other.join();
        QVERIFY2(!trouble, trouble ? std::to_string(static_cast<int>(*trouble)).c_str() : "");
        QCOMPARE(sql(m_path, "PRAGMA journal_mode"), std::string("wal"));
    }

    /// It is said after some seconds, not waited for without end.
    void anotherProgramDoesNotLetItBeMadeReady() {
        open();
        QCOMPARE(sql(m_path, "PRAGMA journal_mode = DELETE"), std::string("delete"));
        const SQLite::Database database(m_path.toStdString());
        SQLite::Statement question(database, "SELECT * FROM sqlite_master");
        QVERIFY(question.executeStep()); // not to its end: it holds the file
        QVERIFY(troubleOnOpening() == Trouble::Busy);
    }

    void anotherProgramHoldsIt() {
        const auto store = open();
        const auto place = addPlace(*store);
        sqlite3* other = nullptr;
        QCOMPARE(sqlite3_open(m_path.toUtf8().constData(), &other), SQLITE_OK);
        QCOMPARE(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
        QVERIFY(troubleOf([&] { addColony(*store, place.yard.id, "5"); }) == Trouble::Busy);
        sqlite3_exec(other, "ROLLBACK", nullptr, nullptr, nullptr);
        sqlite3_close(other);
        addColony(*store, place.yard.id, "6");
        QCOMPARE(store->colonies(place.yard.id).size(), std::size_t{2});
    }
};

QTEST_GUILESS_MAIN(StoreFilesTest)
#include "store_files.moc"
