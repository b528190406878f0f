// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A backup put back: the old state whole or the new one, whatever happens in between.
#include "killed_at.h"
#include "store_kit.h"

#include "store/restore.h"

#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>
#include <QTimeZone>

#include <csignal>
#include <set>

using namespace halfcup::records;
using namespace halfcup::storetest;
using namespace halfcup::store;
using Trouble = StoreError::Kind;
using Refusal = BackupError::Kind;

class StoreRestoreTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    QString m_backup;
    QString m_aside; // at the host's time
    Host m_host;

    std::unique_ptr<Store> open() { return std::make_unique<Store>(m_path.toStdString(), m_host.asked()); }
    std::string value(const std::string& text) const { return sql(m_path, text); }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::Files | QDir::Dirs | QDir::NoDotAndDotDot);
    }
    Restored restore(const std::vector<std::string>& settings = {}) {
        return restoreBackup(m_backup.toStdString(), m_path.toStdString(), m_host.asked(), settings);
    }

    /// A database with one yard, its backup, and then a second yard.
    void prepare(int notes = 0) {
        const auto store = open();
        const Place place = addPlace(*store, "In the backup");
        for (int i = 0; i < notes; ++i) {
            Sample sample = addSample(*store, place.colony, startMs + i, SampleState::Finished);
            sample.note = std::string(3000, 'n');
            store->save(sample);
        }
        makeBackup(m_path.toStdString(), m_backup.toStdString(), {startMs - 1000, 0});
        addPlace(*store, "Kept later");
    }

    static constexpr auto yardNames = "SELECT group_concat(name) FROM (SELECT name FROM yard ORDER BY name)";

    /// After a restore was cut short: true where the restored database is there, whole, with the old one
    /// aside; false where the old one is, whole; nothing where it is anything else.
    std::optional<bool> wholeOldOrNew(const std::string& before) {
        const std::string there = value(yardNames); // by the SQLite library alone
        const bool isOld = there == before;
        if ((!isOld && there != "In the backup") || value("PRAGMA integrity_check") != "ok" ||
            // A copy that bears that name is offered to the keeper: half of one must not.
            ((!isOld || QFile::exists(m_aside)) && sql(m_aside, yardNames) != before)) {
            qWarning("there is: %s", there.c_str());
            return std::nullopt;
        }
        const auto store = open();
        if (store->integrityReport() != "ok" || store->yards().size() != (isOld ? 2U : 1U))
            return std::nullopt;
        return !isOld;
    }

    void startOver(const QByteArray& database) {
        for (const QString& name : names())
            if (name.startsWith("halfcup.db"))
                QFile::remove(m_folder->filePath(name));
        QVERIFY(putBytes(m_path, database));
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("halfcup.db");
        m_backup = m_folder->filePath("one.halfcup-backup");
        m_aside = m_path + ".before-restore-20260615-090000";
        m_host = {};
    }

    void theOldStateIsBackAndThePresentOneAside() {
        prepare();
        const QByteArray backup = bytesOf(m_backup);
        const std::string revisions = sql(m_backup, "SELECT group_concat(stamp || field) FROM revision");
        const Restored restored = restore();
        QCOMPARE(restored.keptAside, m_aside.toStdString());
        QCOMPARE(restored.contents.yards, 1);
        QCOMPARE(names(), (QStringList{"halfcup.db", m_aside.section('/', -1), "one.halfcup-backup"}));
        QVERIFY(bytesOf(m_backup) == backup);
        QCOMPARE(value(yardNames), std::string("In the backup"));
        QCOMPARE(value("SELECT group_concat(stamp || field) FROM revision"), revisions);
        QCOMPARE(value("SELECT count(*) FROM sqlite_master WHERE name = 'backup_note'"), std::string("0"));
        QCOMPARE(sql(m_aside, yardNames), std::string("In the backup,Kept later"));
        const auto store = open();
        QCOMPARE(store->yards().size(), std::size_t{1});
        QCOMPARE(store->integrityReport(), std::string("ok"));
        QCOMPARE(std::get<std::int64_t>(store->setting(lastBackupAtSetting)), startMs - 1000);
        QCOMPARE(std::get<std::int64_t>(store->setting(lastBackupWashesSetting)), 0);
    }

    void whatWasKeptAsideCanBePutBackToo() {
        prepare();
        restore();
        m_backup = m_aside;
        QCOMPARE(restore().keptAside, (m_aside + "-2").toStdString()); // the same second
        QCOMPARE(open()->yards().size(), std::size_t{2});
    }

    /// Two phones out of one backup: their changes can be told apart.
    void eachRestoreIsAnotherPhone() {
        prepare();
        const std::string maker = sql(m_backup, "SELECT value FROM setting WHERE name = 'device_id'");
        const std::string newest = sql(m_backup, "SELECT max(stamp) FROM revision");
        std::set<std::string> devices{maker};
        std::set<std::string> stamps;
        for (int phone = 0; phone < 3; ++phone) {
            const QString path = m_folder->filePath(QStringLiteral("phone%1.db").arg(phone));
            Host same; // the worst of chance: the same time; but no two phones have the same chance
            same.chance = static_cast<std::uint64_t>(phone + 1) << 40;
            restoreBackup(m_backup.toStdString(), path.toStdString(), same.asked());
            Store store(path.toStdString(), same.asked());
            Yard yard = store.yards().front();
            yard.name = "Changed on one phone";
            store.save(yard);
            devices.insert(std::get<std::string>(store.setting("device_id")));
            stamps.insert(sql(path, "SELECT max(stamp) FROM revision"));
            QVERIFY(sql(path, "SELECT max(stamp) FROM revision") > newest);
            // The one that made the backup is another phone now, and known up to there.
            QCOMPARE(sql(path, "SELECT latest FROM device WHERE id = '" + maker + "'"), newest);
        }
        QCOMPARE(devices.size(), std::size_t{4});
        QCOMPARE(stamps.size(), std::size_t{3});
    }

    void theHandKeepsItsSettings() {
        {
            const auto store = open();
            store->setSetting("left_hand", std::int64_t{0});
            store->setSetting("usual_method", std::string("sugar-roll"));
            makeBackup(m_path.toStdString(), m_backup.toStdString(), {startMs, 0});
            store->setSetting("left_hand", std::int64_t{1});
            store->setSetting("usual_method", std::string("alcohol-wash"));
        }
        restore({"left_hand", "dusk"});
        const auto store = open();
        QCOMPARE(std::get<std::int64_t>(store->setting("left_hand")), 1);
        QCOMPARE(std::get<std::string>(store->setting("usual_method")), std::string("sugar-roll"));
        QVERIFY(std::holds_alternative<std::monostate>(store->setting("dusk")));
    }

    /// A backup from somebody else must not make the app call a stranger, or write where it says.
    void aBackupSaysNotWhereTheAppReaches() {
        {
            const auto store = open();
            store->setSetting("position_source", std::string("nmea:tcp://stranger.invalid:2947"));
            store->setSetting("exchange_folder", std::string("/srv/open to all"));
            store->setSetting("exchange_folder_state", std::string("{}"));
            makeBackup(m_path.toStdString(), m_backup.toStdString(), {startMs, 0});
            store->setSetting("position_source", std::string("gpsd://localhost"));
            store->setSetting("exchange_folder", Value{});
        }
        restore();
        {
            const auto store = open();
            QCOMPARE(std::get<std::string>(store->setting("position_source")),
                     std::string("gpsd://localhost"));
            QVERIFY(std::holds_alternative<std::monostate>(store->setting("exchange_folder")));
        }
        m_path = m_folder->filePath("new phone.db");
        restore();
        const auto store = open();
        for (const char* name : {"position_source", "exchange_folder", "exchange_folder_state"})
            QVERIFY2(std::holds_alternative<std::monostate>(store->setting(name)), name);
    }

    void whereThereWasNothing() {
        prepare();
        m_path = m_folder->filePath("new phone.db");
        QCOMPARE(restore().keptAside, std::string());
        QCOMPARE(open()->yards().size(), std::size_t{1});
        m_path = m_folder->filePath("no folder/new phone.db");
        QVERIFY(troubleOf([&] { restore(); }) == Trouble::FolderMissing);
        QVERIFY(!names().contains("no folder"));
    }

    /// Databases that earlier versions really wrote, put back by this one.
    void earlierSchemas() {
        for (int version = 1; version < static_cast<int>(allMigrations().size()); ++version) {
            m_backup = copyOfSchema(version, m_folder->path());
            m_path = m_folder->filePath(QStringLiteral("from %1.db").arg(version));
            restore();
            QCOMPARE(value("PRAGMA user_version"), std::to_string(allMigrations().size()));
            QCOMPARE(value("SELECT count(*) FROM sample"), sql(m_backup, "SELECT count(*) FROM sample"));
            // Bringing it up to date was still the work of the phone that made it.
            QCOMPARE(value("SELECT count(*) FROM count_event WHERE stamp LIKE '%before'"), std::string("0"));
            QVERIFY(!open()->yards().empty());
        }
        QVERIFY2(!names().join(' ').contains("before"), qPrintable(names().join(' ')));
    }

    /// The very case a backup is for: nothing of the broken one is thrown away either.
    void aPresentDatabaseBeyondReading() {
        prepare();
        const QByteArray good = bytesOf(m_path);
        QByteArray broken = good;
        broken.replace(200, broken.size() - 200, QByteArray(broken.size() - 200, 'x'));
        for (const QByteArray& bytes : {broken, good.left(good.size() / 2)}) {
            QVERIFY(putBytes(m_path, bytes));
            QFile::remove(m_path + "-wal");
            const Restored restored = restore();
            QVERIFY(bytesOf(QString::fromStdString(restored.keptAside)) == bytes);
            QCOMPARE(open()->yards().size(), std::size_t{1});
        }
    }

    void whatIsRefusedLeavesAllAsItWas() {
        prepare();
        const QByteArray before = bytesOf(m_path);
        const auto refusalOf = [&]() -> std::optional<Refusal> {
            try {
                restore();
            } catch (const BackupError& error) {
                return error.kind();
            }
            return std::nullopt;
        };
        const QString good = m_backup;
        const QStringList there = names();
        m_backup = m_folder->filePath("none");
        QVERIFY(refusalOf() == Refusal::NotThere);
        m_backup = m_path;
        QVERIFY(refusalOf() == Refusal::SameFile);
        m_backup = good;
        sql(m_backup, "UPDATE yard SET name = 'Changed'");
        QVERIFY(refusalOf() == Refusal::Damaged);
        QCOMPARE(names(), there);
        QVERIFY(bytesOf(m_path) == before);
    }

    void anotherProgramsFileIsNotReplaced() {
        prepare();
        m_path = m_folder->filePath("letters.db");
        QVERIFY(putBytes(m_path, QByteArray("Dear keeper, this is a letter.\n").repeated(100)));
        const QByteArray before = bytesOf(m_path);
        QVERIFY(troubleOf([&] { restore(); }) == Trouble::NotOurs);
        QVERIFY(bytesOf(m_path) == before);
        QVERIFY(!names().join(' ').contains("before-restore"));
    }

    void whileAnotherProgramHasIt() {
        prepare();
        const auto other = open();
        addPlace(*other, "Just now");
        QVERIFY(troubleOf([&] { restore(); }) == Trouble::Busy);
        QCOMPARE(other->yards().size(), std::size_t{3});
        addPlace(*other, "And after it");
        QCOMPARE(open()->yards().size(), std::size_t{4});
    }

    void fullDisk() {
        const int result = inChild([&] {
            if (!mountSmallDisk(m_folder->path(), "size=32m"))
                return skipped;
            prepare(60);
            const std::string before = value(yardNames);
            const QStringList there = names();
            qint64 total = 0;
            for (const QString& name : there)
                total += QFileInfo(m_folder->filePath(name)).size() + 4096;
            const auto makeDisk = [&](qint64 kb) {
                const QByteArray size = "size=" + QByteArray::number(kb) + "k";
                return mount("tmpfs", m_folder->path().toUtf8().constData(), "tmpfs", MS_REMOUNT,
                             size.constData()) == 0;
            };
            for (int roomKb = 0; roomKb < 4000; roomKb += 100) {
                if (!makeDisk(total / 1024 + roomKb))
                    return skipped;
                const auto trouble = troubleOf([&] { restore(); });
                if (!makeDisk(32 * 1024)) // SQLite needs some room even to look
                    return skipped;
                if (!trouble)
                    return roomKb > 0 && value(yardNames) == "In the backup" ? 0 : 2;
                if (trouble != Trouble::DiskFull)
                    return 10 + static_cast<int>(*trouble);
                if (value(yardNames) != before || names() != there)
                    return 3;
            }
            return 4; // never enough room
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }

    /// Killed at 80 moments spread over the time that a restore takes.
    void killedAnywhereLeavesOneOrTheOther() {
        prepare(40);
        const QByteArray databaseBefore = bytesOf(m_path);
        const std::string before = value(yardNames);
        QElapsedTimer timer;
        timer.start();
        restore();
        qint64 takesUs = timer.nsecsElapsed() / 1000;
        int old = 0;
        int restored = 0;
        int withLeftovers = 0;
        constexpr int runs = 80;
        for (int run = 0; run < runs; ++run) {
            startOver(databaseBefore);
            const pid_t child = fork();
            if (child == 0) {
                try {
                    restore();
                } catch (const std::exception&) {
                    _exit(1);
                }
                _exit(0);
            }
            usleep(static_cast<useconds_t>(takesUs * 13 / 10 * run / runs));
            kill(child, SIGKILL);
            int status = 0;
            waitpid(child, &status, 0);
            QVERIFY2(WIFSIGNALED(status) || WEXITSTATUS(status) == 0, "the restore itself failed");
            withLeftovers += QFile::exists(m_path + ".restoring");

            const auto seen = wholeOldOrNew(before);
            QVERIFY(seen);
            (*seen ? restored : old) += 1;
            if (run > runs * 3 / 4 && restored == 0)
                takesUs = takesUs * 3 / 2; // the machine has got more to do since it was measured
            m_host.nowMs += 1000;
            m_aside =
                QString::fromStdString(keptAsidePrefix(m_path.toStdString())) +
                QDateTime::fromMSecsSinceEpoch(m_host.nowMs, QTimeZone::utc()).toString("yyyyMMdd-HHmmss");
            restore(); // a second try is not hindered by what the first left
            QCOMPARE(value(yardNames), std::string("In the backup"));
            QVERIFY(!QFile::exists(m_path + ".restoring"));
        }
        qInfo("%d runs: %d with the old database, %d with the restored one, %d cut in the middle", runs, old,
              restored, withLeftovers);
        QVERIFY(old > 0 && restored > 0 && withLeftovers > 0);
    }

    /// Killed just before each of the last hundred calls that change a file, where one takes the other's
    /// place, and before every few of those that come first.
    void killedBeforeEachChangeOfAFile() {
        prepare(10);
        const QByteArray database = bytesOf(m_path);
        const std::string before = value(yardNames);
        const auto all = killedAtCall(-1, [this] { restore(); });
        if (!all)
            QSKIP("This system does not let a test watch a process of its own.");
        QVERIFY(*all > 100);
        int old = 0;
        int restored = 0;
        for (int nth = 0; nth < *all; nth += nth < *all - 100 ? std::max(1, *all / 60) : 1) {
            startOver(database);
            QCOMPARE(killedAtCall(nth, [this] { restore(); }), std::optional(-1));
            const auto seen = wholeOldOrNew(before);
            QVERIFY2(seen, qPrintable(QStringLiteral("before call %1 of %2").arg(nth).arg(*all)));
            (*seen ? restored : old) += 1;
        }
        qInfo("%d calls; %d kills left the old database, %d the restored one", *all, old, restored);
        QVERIFY(old > 100 && restored > 0);
    }
};

QTEST_GUILESS_MAIN(StoreRestoreTest)
#include "store_restore.moc"
