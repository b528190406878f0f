// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A rescue that is killed before any of the calls that change a file loses nothing: neither what was in the
// damaged file nor what was in its log alone.
#include "killed_at.h"
#include "store_kit.h"

#include "store/rescue.h"

#include <QDir>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::storetest;
using store::Store;

class KillRescue : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_path;
    QByteArray m_file;
    QByteArray m_log; // holds a yard that the file does not
    Host m_host;

    void startOver() {
        for (const QString& name : names())
            QFile::remove(m_folder.filePath(name));
        QVERIFY(putBytes(m_path, m_file) && putBytes(m_path + "-wal", m_log));
    }
    QStringList names() const { return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden); }
    store::Rescued rescueIt() {
        return store::rescue(m_path.toStdString(), m_host.asked(), {"Yard without a name", "?"});
    }
    std::string yards() const {
        return sql(m_path, "SELECT group_concat(name) FROM (SELECT name FROM yard ORDER BY name)");
    }
    /// The damaged file with its log is there under another name, as it was.
    bool isKeptAside() const {
        for (const QString& name :
             QDir(m_folder.path()).entryList({"halfcup.db.damaged-*-wal"}, QDir::Files)) {
            const QString log = m_folder.filePath(name);
            if (bytesOf(log) == m_log && bytesOf(log.chopped(4)) == m_file)
                return true;
        }
        return false;
    }

private slots:
    void initTestCase() {
        m_path = m_folder.filePath("halfcup.db");
        for (int i = 0; i < 6; ++i)
            addPlace(*std::make_unique<Store>(m_path.toStdString(), m_host.asked()),
                     "In the file " + std::to_string(i));
        Store store(m_path.toStdString(), m_host.asked());
        addPlace(store, "In the log");
        m_file = bytesOf(m_path);
        m_log = bytesOf(m_path + "-wal");
        QVERIFY(!m_file.contains("In the log") && m_log.contains("In the log"));
        // A page of an index: what it held can be read elsewhere, and the check of the form fails.
        const int page = std::stoi(sql(m_path, "SELECT rootpage FROM sqlite_master WHERE name ="
                                               " 'sample_by_colony'"));
        m_file.replace((page - 1) * 4096, 4096, QByteArray(4096, '\xA5'));
    }

    void killedBeforeEachChangeOfAFile() {
        startOver();
        QVERIFY(!store::damageIn(m_path.toStdString()).empty());
        startOver();
        const auto all = killedAtCall(-1, [this] { rescueIt(); });
        if (!all)
            QSKIP("This system does not let a test watch a process of its own.");
        const std::string saved = yards();
        QVERIFY(saved.find("In the file 5") != std::string::npos);
        QVERIFY(saved.find("In the log") != std::string::npos);
        QVERIFY(isKeptAside());
        QVERIFY(*all > 100);
        int old = 0;
        int rescued = 0;
        for (int nth = 0; nth < *all; nth += nth < *all - 60 ? std::max(1, *all / 60) : 1) {
            startOver();
            QCOMPARE(killedAtCall(nth, [this] { rescueIt(); }), std::optional(-1));
            const QString where = QStringLiteral("before call %1 of %2").arg(nth).arg(*all);
            const bool isOld = bytesOf(m_path) == m_file && bytesOf(m_path + "-wal") == m_log;
            QVERIFY2(isOld || isKeptAside(), qPrintable(where));
            (isOld ? old : rescued) += 1;
            // The app is started again; where that tells of damage, the keeper asks for the rescue again.
            if (nth % 2 == 0)
                static_cast<void>(troubleOf([&] { Store store(m_path.toStdString(), m_host.asked()); }));
            if (nth % 2 != 0 || !store::damageIn(m_path.toStdString()).empty())
                rescueIt();
            QVERIFY2(yards() == saved, qPrintable(where + ": " + QString::fromStdString(yards())));
            Store store(m_path.toStdString(), m_host.asked());
            QCOMPARE(store.integrityReport(), std::string("ok"));
            QVERIFY2(names().filter(QRegularExpression("resc|next")).isEmpty(),
                     qPrintable(where + ": " + names().join(' ')));
        }
        qInfo("%d calls; %d kills left the damaged database, %d one that the next start completed", *all, old,
              rescued);
        QVERIFY(old > 50 && rescued > 2);
    }

    /// The length in the header is then ahead of the file; all that is missing is in the log.
    void aCheckpointCutShortIsNoDamage() {
        const QTemporaryDir elsewhere; // startOver() empties the other one
        const QString whole = elsewhere.filePath("whole.db");
        QByteArray file;
        addPlace(*std::make_unique<Store>(whole.toStdString(), m_host.asked()));
        {
            Store store(whole.toStdString(), m_host.asked());
            for (int i = 1; i < 8; ++i) // less than what SQLite takes into the file by itself
                addPlace(store, std::string(3000, 'n') + std::to_string(i));
            file = bytesOf(whole);
            startOver();
            QVERIFY(putBytes(m_path + "-wal", bytesOf(whole + "-wal")));
        }
        const QByteArray settled = bytesOf(whole);
        QVERIFY(settled.size() > file.size());
        file.replace(0, 4096, settled.left(4096)); // its first page alone was written
        QVERIFY(putBytes(m_path, file));
        QVERIFY(store::wasNotClosed(m_path.toStdString()));
        QCOMPARE(store::damageIn(m_path.toStdString()), std::string());
        QCOMPARE(std::make_unique<Store>(m_path.toStdString(), m_host.asked())->yards().size(),
                 std::size_t{8});
        QVERIFY(!store::wasNotClosed(m_path.toStdString()));
    }

    /// What two programs do that start at once: the second must not take the log of the first for the old
    /// one.
    void onlyOneEndsIt() {
        startOver();
        rescueIt();
        const QByteArray made = bytesOf(m_path);
        startOver();
        QVERIFY(putBytes(m_path + ".next", made));
        std::vector<pid_t> children;
        for (int i = 0; i < 2; ++i) {
            children.push_back(fork());
            if (children.back() == 0) {
                const auto trouble = troubleOf([&] {
                    m_host.chance = static_cast<std::uint64_t>(100 + i);
                    Store store(m_path.toStdString(), m_host.asked());
                    addPlace(store, "New " + std::to_string(i));
                });
                _exit(trouble ? 10 + static_cast<int>(*trouble) : 0);
            }
        }
        for (const pid_t child : children) {
            int status = 0;
            waitpid(child, &status, 0);
            QCOMPARE(status, 0);
        }
        const QString there = QString::fromStdString(yards());
        QVERIFY2(there.contains("New 0") && there.contains("New 1") && there.contains("In the log"),
                 qPrintable(there));
    }
};

QTEST_GUILESS_MAIN(KillRescue)
#include "kill_rescue.moc"
