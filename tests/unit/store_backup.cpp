// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Backups: all of the database in one file, and no file that is anything else passes for one.
#include "store_kit.h"

#include "store/backup.h"

#include <QDir>
#include <QElapsedTimer>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <random>
#include <sys/stat.h>

using namespace halfcup::records;
using namespace halfcup::storetest;
using namespace halfcup::store;
using Trouble = StoreError::Kind;
using Refusal = BackupError::Kind;

namespace {

constexpr Moment atHome{startMs, 120}; // 11:00 by the keeper's watch

/// Why the file is refused; nothing where it is taken.
std::optional<Refusal> refusalOf(const QString& path) {
    try {
        static_cast<void>(lookInto(path.toStdString()));
    } catch (const BackupError& error) {
        return error.kind();
    }
    return std::nullopt;
}

} // namespace

class StoreBackupTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    QString m_backup;
    Host m_host;

    std::unique_ptr<Store> open() { return std::make_unique<Store>(m_path.toStdString(), m_host.asked()); }

    /// Two colonies, three finished washes with their counts, one under way, one removed.
    void keepSome(Store& store) {
        const Place place = addPlace(store);
        const Colony second = addColony(store, place.yard.id, "zwölf \"b\"");
        Yard yard = place.yard;
        yard.position = Position{48.1173, 11.51667, 6.0};
        store.save(yard);
        for (int i = 0; i < 3; ++i) {
            const Sample sample = addSample(store, i ? second : place.colony, startMs - i * 86'400'000LL,
                                            SampleState::Finished);
            for (int tap = 0; tap < 4; ++tap)
                store.addCount(sample.id, {0, 1, CountEvent::Change::Tap, 0, startMs + tap});
        }
        addSample(store, second, startMs + 1);
        Sample removed = addSample(store, second, startMs + 2, SampleState::Finished);
        removed.removed = true;
        store.save(removed);
    }
    BackupContents make() { return makeBackup(m_path.toStdString(), m_backup.toStdString(), atHome); }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::Files | QDir::Dirs | QDir::NoDotAndDotDot);
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("halfcup.db");
        m_backup = m_folder->filePath("Sunday? 100 % #1.halfcup-backup"); // a path may hold anything
        m_host = {};
    }

    void holdsAllThatIsKept() {
        const auto store = open(); // stays open: the newest records are in its log
        keepSome(*store);
        const BackupContents made = make();
        const QStringList expected{"halfcup.db", "halfcup.db-shm", "halfcup.db-wal",
                                   m_backup.section('/', -1)};
        QCOMPARE(names(), expected);
        for (const BackupContents& contents : {made, lookInto(m_backup.toStdString())}) {
            QVERIFY(contents.isBackup);
            QCOMPARE(contents.path, m_backup.toStdString());
            QVERIFY(contents.madeAt == atHome);
            QCOMPARE(contents.yards, 1);
            QCOMPARE(contents.colonies, 2);
            QCOMPARE(contents.washes, 3);
            QCOMPARE(contents.treatments, 0);
            QVERIFY((contents.newestWash == Date{2026, 6, 15}));
            QCOMPARE(contents.rows.at("sample"), 5);
            QCOMPARE(contents.rows.at("count_event"), 12);
            QCOMPARE(contents.schema, static_cast<int>(allMigrations().size()));
            QCOMPARE(contents.sizeBytes, bytesOf(m_backup).size());
        }
        QCOMPARE(names().size(), 4); // looking into it left nothing beside it
        QCOMPARE(open()->finishedWashes(), std::int64_t{3});

        // Read by the SQLite library alone, table by table against the database.
        for (const char* text :
             {"SELECT group_concat(id || name || latitude_deg || longitude_deg) FROM yard",
              "SELECT group_concat(id || label) FROM colony", "SELECT group_concat(id || state) FROM sample",
              "SELECT group_concat(sample_id || number || change || at_ms) FROM count_event",
              "SELECT group_concat(record_id || field || stamp || coalesce(value, '')) FROM revision",
              "SELECT group_concat(name || value) FROM setting", "PRAGMA user_version"}) {
            QCOMPARE(sql(m_backup, text), sql(m_path, text));
            QVERIFY2(!sql(m_backup, text).empty(), text);
        }
        QCOMPARE(sql(m_backup, "SELECT value FROM backup_note WHERE name = 'rows count_event'"),
                 std::string("12"));
        QCOMPARE(sql(m_backup, "SELECT value FROM backup_note WHERE name = 'made_at_ms'"),
                 std::to_string(startMs));
        QCOMPARE(sql(m_backup, "PRAGMA journal_mode"), std::string("delete")); // whole in one file
        struct stat info {};
        QCOMPARE(stat(m_backup.toUtf8().constData(), &info), 0);
        QCOMPARE(info.st_mode & 07777, 0600U);
        QCOMPARE(sql(m_path, "SELECT count(*) FROM sqlite_master WHERE name = 'backup_note'"),
                 std::string("0"));
    }

    void theHashIsOfTheContentAlone() {
        const auto store = open();
        keepSome(*store);
        const std::string first = make().sha256;
        QVERIFY(QRegularExpression("^[0-9a-f]{64}$").match(QString::fromStdString(first)).hasMatch());
        QCOMPARE(make().sha256, first);                   // the same records at the same time
        sql(m_backup, "PRAGMA page_size = 8192; VACUUM"); // laid out anew, nothing changed
        QCOMPARE(lookInto(m_backup.toStdString()).sha256, first);
        store->setSetting("dusk", std::int64_t{1});
        QVERIFY(make().sha256 != first);
    }

    void aSecondOneTakesThePlaceOfTheFirst() {
        const auto store = open();
        keepSome(*store);
        QVERIFY(putBytes(m_backup + ".part", "left over from a try that was cut short"));
        make();
        addPlace(*store, "Another");
        QCOMPARE(make().yards, 2);
        QCOMPARE(lookInto(m_backup.toStdString()).yards, 2);
        QVERIFY(!names().join(' ').contains(".part"));
    }

    void placesThatCannotBeWritten() {
        const auto store = open();
        keepSome(*store);
        const auto troubleAt = [&](const QString& place) {
            return troubleOf([&] { makeBackup(m_path.toStdString(), place.toStdString(), atHome); });
        };
        QVERIFY(troubleAt(m_folder->filePath("gone/a.halfcup-backup")) == Trouble::FolderMissing);
        QVERIFY(QDir(m_folder->path()).mkpath("folder.halfcup-backup/inside"));
        QVERIFY(troubleAt(m_folder->filePath("folder.halfcup-backup")) == Trouble::Failed);
        QVERIFY(!names().join(' ').contains(".part"));
        QVERIFY(troubleOf([&] {
                    makeBackup(m_folder->filePath("none.db").toStdString(), m_backup.toStdString(), atHome);
                }) == Trouble::NotAllowed);
        QVERIFY(!names().contains("none.db"));
    }

    void readOnlyFolder() {
        const auto path = m_folder->filePath("readonly");
        QVERIFY(QDir().mkpath(path));
        const int result = inChild([&] {
            QFile::setPermissions(m_folder->path(), QFile::Permissions(0x7777));
            QFile::setPermissions(path,
                                  QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
            if (!giveUpRights())
                return skipped;
            Store store(m_path.toStdString(), m_host.asked());
            keepSome(store);
            const auto trouble = troubleOf([&] {
                makeBackup(m_path.toStdString(), (path + "/a.halfcup-backup").toStdString(), atHome);
            });
            if (trouble != Trouble::NotAllowed)
                return trouble ? 10 + static_cast<int>(*trouble) : 3;
            return QDir(path).isEmpty() ? 0 : 4;
        });
        if (result == skipped)
            QSKIP("This user may write everywhere and cannot become another.");
        QCOMPARE(result, 0);
    }

    void fullDisk() {
        const int result = inChild([&] {
            const QString disk = m_folder->filePath("disk");
            if (!QDir().mkpath(disk) || !mountSmallDisk(disk, "size=400k"))
                return skipped;
            Store store(m_path.toStdString(), m_host.asked());
            keepSome(store);
            const QString place = disk + "/a.halfcup-backup";
            const BackupContents first = makeBackup(m_path.toStdString(), place.toStdString(), atHome);
            Sample big = addSample(store, store.allColonies(store.yards().front().id).front(), startMs);
            big.note = std::string(600'000, 'n');
            store.save(big);
            const auto trouble =
                troubleOf([&] { makeBackup(m_path.toStdString(), place.toStdString(), atHome); });
            if (trouble != Trouble::DiskFull)
                return trouble ? 10 + static_cast<int>(*trouble) : 3;
            if (QDir(disk).entryList(QDir::Files) != QStringList{"a.halfcup-backup"})
                return 4;
            return lookInto(place.toStdString()).sha256 == first.sha256 ? 0 : 5; // the earlier one is whole
        });
        if (result == skipped)
            QSKIP("This system lets the test mount no disk of its own, so no disk can be filled.");
        QCOMPARE(result, 0);
    }

    void whatIsNoBackupIsRefused() {
        keepSome(*open());
        make();
        const QByteArray good = bytesOf(m_backup);
        const auto refusedAs = [&](const QByteArray& bytes) {
            const QString path = m_folder->filePath("try.halfcup-backup");
            return putBytes(path, bytes) ? refusalOf(path) : std::nullopt;
        };
        QVERIFY(!refusedAs(good));
        QVERIFY(refusalOf(m_folder->filePath("nowhere")) == Refusal::NotThere);
        QVERIFY(refusalOf(m_folder->path()) == Refusal::NotAFile);
        QVERIFY(refusalOf("/dev/zero") == Refusal::NotAFile);
        QVERIFY(refusedAs({}) == Refusal::Empty);
        QVERIFY(refusedAs("Dear keeper, this is a letter.\n") == Refusal::NotOurs);
        QVERIFY(refusedAs(QByteArray("Dear keeper, this is a letter.\n").repeated(1000)) == Refusal::NotOurs);
        QVERIFY(refusedAs(QByteArray(4096, '\0')) == Refusal::NotOurs);
        QVERIFY(refusedAs(good + "more") == Refusal::Damaged);
        for (int length = 1; length < good.size(); length += 997) {
            const auto refusal = refusedAs(good.left(length));
            QVERIFY2(refusal == Refusal::Cut || (length < 100 && refusal),
                     qPrintable(QString::number(length)));
        }
        const QString other = m_folder->filePath("other.db");
        QCOMPARE(sql(other, "CREATE TABLE sample(id); PRAGMA application_id = 7"), std::string());
        QVERIFY(refusalOf(other) == Refusal::NotOurs);
    }

    void whatWasChangedIsRefused_data() {
        QTest::addColumn<QString>("change");
        QTest::addColumn<int>("refusal");
        const auto row = [](const char* name, const char* change, Refusal refusal) {
            QTest::newRow(name) << QString(change) << static_cast<int>(refusal);
        };
        row("a value", "UPDATE colony SET label = '5' WHERE label = '4'", Refusal::Damaged);
        row("a row less", "DELETE FROM count_event WHERE number = 4", Refusal::Damaged);
        row("a row more", "INSERT INTO setting VALUES ('x', 1)", Refusal::Damaged);
        row("another type", "UPDATE setting SET value = CAST(value AS BLOB)", Refusal::Damaged);
        row("points nowhere", "UPDATE colony SET yard_id = 'gone'", Refusal::Damaged);
        row("its day", "UPDATE backup_note SET value = value + 1 WHERE name = 'made_at_ms'",
            Refusal::Damaged);
        row("no hash", "DELETE FROM backup_note WHERE name = 'sha256'", Refusal::Damaged);
        row("another hash", "UPDATE backup_note SET value = 'aa' WHERE name = 'sha256'", Refusal::Damaged);
        row("no note", "DROP TABLE backup_note", Refusal::Damaged);
        row("another note", "DROP TABLE backup_note; CREATE TABLE backup_note(a)", Refusal::Damaged);
        row("an index less", "DROP INDEX colony_by_yard", Refusal::Damaged);
        row("a trigger", "CREATE TRIGGER t AFTER INSERT ON yard BEGIN DELETE FROM sample; END",
            Refusal::Damaged);
        row("newer", "PRAGMA user_version = 9999", Refusal::Newer);
        row("no version", "PRAGMA user_version = 0", Refusal::NotOurs);
        row("another program's", "PRAGMA application_id = 1", Refusal::NotOurs);
    }
    void whatWasChangedIsRefused() {
        QFETCH(QString, change);
        QFETCH(int, refusal);
        keepSome(*open());
        make();
        const std::string said = sql(m_backup, change.toStdString());
        QVERIFY2(said.rfind("trouble", 0) != 0, said.c_str());
        const auto found = refusalOf(m_backup);
        QVERIFY(found);
        QCOMPARE(static_cast<int>(*found), refusal);
    }

    /// Every bit of the header, and 2,000 more anywhere: refused, or nothing of the content changed by it.
    void oneBitFlippedAnywhere() {
        keepSome(*open());
        const BackupContents made = make();
        const QByteArray good = bytesOf(m_backup);
        std::mt19937_64 chance(20'260'615);
        std::vector<qint64> bits;
        for (qint64 bit = 0; bit < 800; ++bit)
            bits.push_back(bit);
        while (bits.size() < 2800)
            bits.push_back(static_cast<qint64>(chance() % (static_cast<std::uint64_t>(good.size()) * 8)));
        const QString path = m_folder->filePath("flipped.halfcup-backup");
        int refused = 0;
        for (const qint64 bit : bits) {
            QByteArray bytes = good;
            bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
            QVERIFY(putBytes(path, bytes));
            try {
                const BackupContents found = lookInto(path.toStdString());
                QVERIFY2(found.sha256 == made.sha256 && found.rows == made.rows && found.isBackup &&
                             found.madeAt == made.madeAt && found.washes == made.washes,
                         qPrintable(QStringLiteral("bit %1").arg(bit)));
            } catch (const BackupError&) {
                ++refused;
            }
        }
        qInfo("%d of %d flips refused, the others change nothing of the content", refused,
              static_cast<int>(bits.size()));
        QVERIFY(refused > 500); // the file has free room, but is not mostly that
    }

    void hugeFilesAreToldAtOnce() {
        keepSome(*open());
        make();
        QElapsedTimer timer;
        timer.start();
        const QString huge = m_folder->filePath("huge.halfcup-backup");
        QVERIFY(putBytes(huge, "x"));
        QVERIFY(QFile::resize(huge, 3LL << 30));
        QVERIFY(refusalOf(huge) == Refusal::NotOurs);
        QVERIFY(QFile::resize(m_backup, 3LL << 30));
        QVERIFY(refusalOf(m_backup) == Refusal::Damaged);
        QVERIFY2(timer.elapsed() < 5000, qPrintable(QString::number(timer.elapsed())));
    }

    void aPlainDatabaseIsSaidToBeOne() {
        keepSome(*open());
        const BackupContents contents = lookInto(m_path.toStdString());
        QVERIFY(!contents.isBackup);
        QVERIFY(!contents.madeAt);
        QCOMPARE(contents.washes, 3);
        for (int version = 1; version < contents.schema; ++version) {
            const auto old =
                QStringLiteral(HALFCUP_SOURCE_DIR "/tests/unit/schemas/schema_%1.db").arg(version);
            QCOMPARE(lookInto(old.toStdString()).schema, version);
            QVERIFY(!QFile::exists(old + "-wal"));
        }
    }
};

QTEST_GUILESS_MAIN(StoreBackupTest)
#include "store_backup.moc"
