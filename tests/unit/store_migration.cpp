// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// From one schema to the next, with steps of the test's own: a checked copy first, all or nothing.
#include "store_kit.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QTest>

#include <initializer_list>
#include <sys/stat.h>
#include <vector>

using namespace halfcup::records;
using namespace halfcup::storetest;
using halfcup::store::Migration;
using halfcup::store::Store;
using Trouble = halfcup::store::StoreError::Kind;

namespace {

const int today = static_cast<int>(halfcup::store::allMigrations().size()); // the schema of this program
QString copyPath; // of the copy before the first step of the test's own, for the step to look at

/// The program's own steps and, after them, some of the test's.
std::vector<Migration> with(std::initializer_list<void (*)(SQLite::Database&)> more) {
    const auto own = halfcup::store::allMigrations();
    std::vector<Migration> steps(own.begin(), own.end());
    for (const auto apply : more)
        steps.push_back({static_cast<int>(steps.size()) + 1, apply});
    return steps;
}

void second(SQLite::Database& database) {
    // The copy is complete before the step begins: it is read here, in the middle of the step.
    if (sql(copyPath, "SELECT count(*) FROM yard") != "1" ||
        sql(copyPath, "PRAGMA user_version") != std::to_string(today))
        throw std::logic_error("there is no copy yet");
    database.exec("CREATE TABLE weather(id TEXT PRIMARY KEY NOT NULL) STRICT");
}

void third(SQLite::Database& database) {
    database.exec("CREATE TABLE mood(id TEXT PRIMARY KEY NOT NULL) STRICT");
}

void failing(SQLite::Database& database) {
    database.exec("CREATE TABLE weather(id TEXT PRIMARY KEY NOT NULL) STRICT");
    database.exec("DELETE FROM revision");
    database.exec("this is no SQL");
}

const std::vector<Migration> oneStep = with({});
const std::vector<Migration> twoSteps = with({&second});
const std::vector<Migration> threeSteps = with({&second, &third});
const std::vector<Migration> failingStep = with({&failing});

} // namespace

class StoreMigrationTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    Host m_host;

    std::unique_ptr<Store> open(std::span<const Migration> steps) {
        return std::make_unique<Store>(m_path.toStdString(), m_host.asked(), steps);
    }
    std::string value(const std::string& text) const { return sql(m_path, text); }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::Files | QDir::Dirs | QDir::NoDotAndDotDot);
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("halfcup.db");
        copyPath = m_path + ".before-v" + QString::number(today + 1);
        m_host = {};
    }

    void newDatabaseNeedsNoCopy() {
        QCOMPARE(halfcup::store::copyNameBefore(m_path.toStdString(), today + 1), copyPath.toStdString());
        open(oneStep);
        QCOMPARE(names(), QStringList{"halfcup.db"});
        QCOMPARE(value("PRAGMA user_version"), std::to_string(today));
    }

    void eachStepHasItsCopyAndItsNumber() {
        addPlace(*open(oneStep));
        QVERIFY(putBytes(copyPath, "left over from a try that was cut short"));
        const auto store = open(threeSteps);
        QCOMPARE(store->yards().size(), std::size_t{1});
        QCOMPARE(value("PRAGMA user_version"), std::to_string(today + 2));
        const QString third = m_path + ".before-v" + QString::number(today + 2);
        for (const QString& copy : {copyPath, third}) {
            QCOMPARE(sql(copy, "PRAGMA integrity_check"), std::string("ok"));
            QCOMPARE(sql(copy, "SELECT name FROM yard"), std::string("By the ford"));
            QCOMPARE(sql(copy, "PRAGMA application_id"), std::to_string(0x48437570)); // opens as one of ours
            struct stat info {};
            QCOMPARE(stat(copy.toUtf8().constData(), &info), 0);
            QCOMPARE(info.st_mode & 07777, 0600U);
        }
        QCOMPARE(sql(copyPath, "SELECT count(*) FROM sqlite_master WHERE name = 'weather'"),
                 std::string("0"));
        QCOMPARE(sql(third, "PRAGMA user_version"), std::to_string(today + 1));
        QCOMPARE(store->integrityReport(), std::string("ok"));
    }

    void nothingToDoMakesNoCopy() {
        addPlace(*open(oneStep));
        open(oneStep);
        QCOMPARE(names(), QStringList{"halfcup.db"});
    }

    void recordsStillInTheLogAreInTheCopy() {
        const auto before = open(oneStep); // stays open: its records are in the log, not yet in the file
        addPlace(*before);
        QVERIFY(QFileInfo(m_path + "-wal").size() > 0);
        open(twoSteps); // the step itself looks for the yard in the copy
        QCOMPARE(sql(copyPath, "SELECT count(*) FROM yard"), std::string("1"));
    }

    void failingStepLeavesTheDatabaseAsBefore() {
        addPlace(*open(oneStep));
        const std::string revisions = value("SELECT count(*) FROM revision");
        QVERIFY(troubleOf([this] { open(failingStep); }) == Trouble::Failed);
        QCOMPARE(value("PRAGMA user_version"), std::to_string(today));
        QCOMPARE(value("SELECT count(*) FROM revision"), revisions);
        QCOMPARE(value("SELECT count(*) FROM sqlite_master WHERE name = 'weather'"), std::string("0"));
        QCOMPARE(open(oneStep)->yards().size(), std::size_t{1});  // the old program still reads it
        QCOMPARE(open(twoSteps)->yards().size(), std::size_t{1}); // and a mended one goes on
    }

    void olderProgramRefusesWhatANewerMade() {
        addPlace(*open(oneStep));
        open(twoSteps);
        const QByteArray before = bytesOf(m_path);
        QVERIFY(troubleOf([this] { open(oneStep); }) == Trouble::Newer);
        QVERIFY(bytesOf(m_path) == before);
    }

    void withoutACopyNothingIsChanged() { // something that cannot be replaced lies in its place
        addPlace(*open(oneStep));
        QVERIFY(QDir(m_folder->path()).mkpath(QFileInfo(copyPath).fileName() + "/inside"));
        const QByteArray before = bytesOf(m_path);
        QVERIFY(troubleOf([this] { open(twoSteps); }) == Trouble::CopyFailed);
        QVERIFY(bytesOf(m_path) == before);
        QCOMPARE(names(), (QStringList{"halfcup.db", QFileInfo(copyPath).fileName()}));
        QCOMPARE(open(oneStep)->yards().size(), std::size_t{1});
    }

    /// Databases that earlier versions really wrote, one for each schema before today's.
    void earlierSchemasOpenWithAllTheyHeld() {
        QVERIFY(today >= 2);
        for (int version = 1; version < today; ++version) {
            const QString kept = copyOfSchema(version, m_folder->path());
            const QString path = m_folder->filePath(QStringLiteral("old_%1.db").arg(version));
            QVERIFY2(QFile::copy(kept, path), qPrintable(kept));
            QVERIFY(QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner));
            QCOMPARE(sql(path, "PRAGMA user_version"), std::to_string(version));
            Store store(path.toStdString(), m_host.asked());
            QCOMPARE(sql(path, "PRAGMA user_version"), std::to_string(today));
            QCOMPARE(store.integrityReport(), std::string("ok"));
            for (const char* count :
                 {"SELECT count(*) FROM yard", "SELECT count(*) FROM colony",
                  "SELECT group_concat(id || mites || load_q50 || started_at_ms) FROM sample",
                  "SELECT count(*) FROM count_event", "SELECT count(*) FROM revision",
                  "SELECT group_concat(name || value) FROM setting"})
                QCOMPARE(sql(path, count), sql(kept, count));
            QCOMPARE(sql(kept, "SELECT count(*) > 0 FROM sample"), std::string("1"));
            for (const Yard& yard : store.yards()) {
                store.save(yard); // and the page goes on
                // What a version did not know yet is not known now; what it did is still there.
                QCOMPARE(store.treatmentsOfYard(yard.id).empty(), version < 2);
                QCOMPARE(store.eventsOfYard(yard.id).empty(), version < 2);
            }
            QCOMPARE(store.scoopCounts().empty(), version < 3);
            const bool jarWaits =
                std::ranges::any_of(store.drafts(), [](const Sample& sample) { return sample.jar == "4"; });
            QCOMPARE(jarWaits, version >= 3);
        }
    }

    /// Every value of every table of each earlier schema, read by the SQLite library alone, is the same in
    /// the migrated database. Only the demo's and this phone's own stamps of acts are new (schema 5).
    void earlierSchemasKeepEveryValue_data() {
        QTest::addColumn<int>("version");
        for (int version = 1; version < today; ++version)
            QTest::addRow("schema %d", version) << version;
    }
    void earlierSchemasKeepEveryValue() {
        QFETCH(const int, version);
        const QString kept = copyOfSchema(version, m_folder->path());
        QVERIFY2(QFile::copy(kept, m_path), qPrintable(kept));
        QVERIFY(QFile::setPermissions(m_path, QFile::ReadOwner | QFile::WriteOwner));
        open(oneStep);
        const QString tables = QString::fromStdString(sql(
            kept,
            "SELECT group_concat(name, ' ') FROM sqlite_master WHERE type = 'table' AND name <> 'waiting'"));
        int compared = 0;
        for (const QString& table : tables.split(u' ')) {
            const std::string name = table.toStdString();
            const std::string columns =
                sql(kept,
                    "SELECT group_concat('quote(' || name || ')', ' || '','' || ') FROM pragma_table_info('" +
                        name + "')");
            const std::string all =
                "SELECT group_concat(v, ';') FROM (SELECT " + columns + " AS v FROM " + name + " ORDER BY v)";
            const std::string before = sql(kept, all);
            QVERIFY2(!before.starts_with("trouble"), before.c_str());
            QVERIFY2(sql(m_path, all) == before, name.c_str());
            compared += before != "NULL";
        }
        QVERIFY(compared >= 6);
    }

    void diskTooFullForTheCopy() {
        const int result = inChild([&] {
            if (!mountSmallDisk(m_folder->path(), "size=32m"))
                return skipped;
            {
                const auto store = open(oneStep);
                const auto place = addPlace(*store);
                for (int i = 0; i < 40; ++i) {
                    Sample sample = addSample(*store, place.colony, startMs + i);
                    sample.note = std::string(3000, 'n');
                    store->save(sample);
                }
            }
            const QByteArray before = bytesOf(m_path);
            if (before.size() < 200'000)
                return 2;
            // Room for the database and its log, not for a second database.
            const QByteArray size = "size=" + QByteArray::number(before.size() / 1024 + 150) + "k";
            if (mount("tmpfs", m_folder->path().toUtf8().constData(), "tmpfs", MS_REMOUNT,
                      size.constData()) != 0)
                return skipped;
            const auto trouble = troubleOf([&] { open(twoSteps); });
            if (trouble != Trouble::CopyFailed)
                return trouble ? 10 + static_cast<int>(*trouble) : 3;
            if (bytesOf(m_path) != before)
                return 4;
            if (names() != QStringList{"halfcup.db"}) // no half copy that fills the disk
                return 5;
            return open(oneStep)->drafts().size() == 40 ? 0 : 6;
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }
};

QTEST_GUILESS_MAIN(StoreMigrationTest)
#include "store_migration.moc"
