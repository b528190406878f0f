// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The window that stands in for the app where its records cannot be opened, with real damaged files.
#include "device/fake/fake_platform.h"
#include "stage.h"
#include "store/rescue.h"
#include "touch/recovery_controller.h"

#include <QDir>
#include <QFile>
#include <QQmlApplicationEngine>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;

namespace {

QQuickItem* findIn(QQuickWindow* window, const QString& name) {
    for (QQuickItem* item : visibleItems(window->contentItem()))
        if (item->objectName() == name)
            return item;
    return nullptr;
}

void settle() {
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
}

/// Records of the demo on a disk, without a program that has them open.
struct Records {
    QTemporaryDir folder;
    device::FakePlatform device = device::makeFakePlatform();
    QString path = folder.filePath(QStringLiteral("halfcup.db"));
    qsizetype colonies = 0;

    Records() {
        static const bool prepared = (touch::prepareQuick(), true);
        Q_UNUSED(prepared)
        touch::ProgramOptions options;
        options.databasePath = path;
        touch::Program program(device.platform, options);
        if (!program.app().share()->loadDemo())
            qFatal("no demo");
        for (const records::Yard& yard : program.store().allYards())
            colonies += static_cast<qsizetype>(program.store().allColonies(yard.id).size());
    }
    /// The first page becomes noise: SQLite calls the file no database then.
    void spoil() const {
        QFile file(path);
        if (!file.open(QIODevice::ReadWrite) || file.write(QByteArray(4096, '\x5a')) != 4096)
            qFatal("the file cannot be spoilt");
    }
    [[nodiscard]] store::StoreError::Kind whyNot() {
        touch::ProgramOptions options;
        options.databasePath = path;
        try {
            touch::Program program(device.platform, options);
        } catch (const store::StoreError& error) {
            return error.kind();
        }
        qFatal("the spoilt file was opened");
    }
};

/// The window, and a hand.
struct Window {
    explicit Window(touch::RecoveryController& recovery)
        : engine(touch::showTrouble(look, recovery)) {
        if (engine->rootObjects().isEmpty())
            qFatal("the window cannot be loaded");
        window = qobject_cast<QQuickWindow*>(engine->rootObjects().first());
        window->resize(320, 568);
        settle();
    }
    bool touch(const char* name) const {
        QQuickItem* item = findIn(window, QLatin1String(name));
        if (!item)
            return false;
        const QPointF middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
        QTest::mouseClick(window, Qt::LeftButton, Qt::NoModifier, middle.toPoint());
        settle();
        return true;
    }
    void keep(const char* name) const {
        const QString into = qEnvironmentVariable("HALFCUP_PICTURES");
        if (!into.isEmpty())
            QVERIFY(QDir().mkpath(into) &&
                    window->grabWindow().save(QDir(into).filePath(QLatin1String(name))));
    }

    touch::Look look{160 / 25.4};
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;
};

} // namespace

class TroubleTest : public QObject {
    Q_OBJECT
private slots:
    void whatCanBeReadIsSavedAndOpened() {
        Records records;
        records.spoil();
        touch::RecoveryController recovery(records.device.platform, records.path, records.whyNot(),
                                           QStringLiteral("file is not a database"));
        Window window(recovery);
        window.keep("trouble.png");
        QVERIFY(window.touch("rescue"));
        QVERIFY2(recovery.isDone(), qPrintable(recovery.problem()));
        window.keep("trouble-saved.png");
        QVERIFY(recovery.sentence().contains(QString::number(records.colonies)));
        QVERIFY(!findIn(window.window, QStringLiteral("rescue"))); // once is enough
        // The damaged file lies beside the new one.
        const QStringList files = QDir(records.folder.path()).entryList(QDir::Files);
        QCOMPARE(files.filter(QStringLiteral("damaged")).size(), 1);
        QVERIFY(window.touch("close"));
        QVERIFY(recovery.wantsStart());
        touch::ProgramOptions options;
        options.databasePath = records.path;
        touch::Program again(records.device.platform, options);
        qsizetype colonies = 0;
        for (const records::Yard& yard : again.store().allYards())
            colonies += static_cast<qsizetype>(again.store().allColonies(yard.id).size());
        QCOMPARE(colonies, records.colonies);
        QCOMPARE(again.store().integrityReport(), std::string("ok"));
    }

    /// An older program that a browser had kept, on records that a newer one has changed.
    void newerRecordsHaveAWayOnInABrowserToo() {
        Records records;
        touch::RecoveryController elsewhere(records.device.platform, records.path,
                                            store::StoreError::Kind::Newer, QString());
        QVERIFY(elsewhere.sentence().endsWith(QLatin1String("Install the newer version again.")));
        QCOMPARE(elsewhere.mainAction(), QStringLiteral("Close Halfcup"));
        records.device.folders->setSeen(false);
        touch::RecoveryController recovery(records.device.platform, records.path,
                                           store::StoreError::Kind::Newer, QString());
        Window window(recovery);
        window.keep("trouble-newer-browser.png");
        QVERIFY(recovery.sentence().endsWith(QLatin1String("the newer version comes by itself.")));
        QCOMPARE(recovery.mainAction(), QStringLiteral("Start again"));
        QVERIFY(!findIn(window.window, QStringLiteral("rescue")));
        QVERIFY(window.touch("close"));
        QVERIFY(!recovery.wantsStart()); // not on these records
    }

    void aFileThatIsNoneOfOursIsLeftAsItIs() {
        Records records;
        const QByteArray letter("Dear neighbour, the bees are well.\n");
        {
            QFile file(records.path);
            QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate) &&
                    file.write(letter) == letter.size());
        }
        touch::RecoveryController recovery(records.device.platform, records.path,
                                           store::StoreError::Kind::NotOurs, QString());
        Window window(recovery);
        QVERIFY(window.touch("rescue"));
        QVERIFY(!recovery.isDone());
        QVERIFY(!recovery.problem().isEmpty());
        QVERIFY(findIn(window.window, QStringLiteral("problem")));
        QFile file(records.path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), letter);
        QVERIFY(window.touch("close"));
        QVERIFY(!recovery.wantsStart());
    }

    void whereNothingIsDamagedNothingIsOffered() {
        Records records;
        touch::RecoveryController recovery(records.device.platform, records.path,
                                           store::StoreError::Kind::NotAllowed, QString());
        Window window(recovery);
        QVERIFY(!findIn(window.window, QStringLiteral("rescue")));
        QVERIFY(findIn(window.window, QStringLiteral("close")));
    }

    void aStartAfterAKillLooksForDamage() {
        Records records;
        touch::refuseDamaged(records.path); // ended in order: nothing is looked at
        records.spoil();
        touch::refuseDamaged(records.path);
        QFile log(records.path + QStringLiteral("-wal")); // as a kill leaves it
        QVERIFY(log.open(QIODevice::WriteOnly) && log.write(QByteArray(32, '\0')) == 32);
        log.close();
        QVERIFY_EXCEPTION_THROWN(touch::refuseDamaged(records.path), store::StoreError);
    }
};

QTEST_MAIN(TroubleTest)
#include "trouble_test.moc"
