// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The exchange folder by touch: used, looked into by itself, taken back, stopped; and its page measured.
#include "measure.h"
#include "other_phone.h"
#include "screens.h"

#include "exchange/keep_folder.h"
#include "store/merge_log.h"
#include "touch/navigator.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using touch::FolderController;

class FolderTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_shared;

    static FolderController& folder(Stage& stage) { return *stage.app().folder(); }

    static void open(Stage& stage) {
        stage.app().navigator()->open(touch::Navigator::Share);
        stage.settle();
        QVERIFY(stage.touch(QStringLiteral("exchangeFolder")));
        QVERIFY(stage.find(QStringLiteral("folderPage")));
    }

    /// What the other phone does with the same folder.
    static void otherExchanges(OtherPhone& other, const QString& path) {
        const exchange::ExchangeFolder place(path, store::Outgoing(other.store()).device());
        exchange::FolderState state;
        static_cast<void>(exchange::exchangeThrough<store::Merge, store::Outgoing, store::MergePlan>(
            place, state, other.store(), other.nowMs()));
    }

    static std::size_t yards(Stage& stage) { return stage.program().store().yards().size(); }

private slots:
    void aFolderIsUsedAndExchangesByItself() {
        const QString path = m_shared.filePath("exchange");
        Stage stage(Stage::Nothing);
        OtherPhone other(stage.device().clock->now().utcMs);
        open(stage);
        QVERIFY(!folder(stage).isOn());
        QVERIFY(folder(stage).use(path));
        QVERIFY(QDir(path).exists());
        QVERIFY(folder(stage).isOn());
        QVERIFY2(folder(stage).stateLine().startsWith(QLatin1String("Last exchanged at")),
                 qPrintable(folder(stage).stateLine()));

        other.addYard("By the mill");
        otherExchanges(other, path);
        QVERIFY(stage.touch(QStringLiteral("mainAction"))); // Exchange now
        QCOMPARE(yards(stage), std::size_t{1});
        QVERIFY2(folder(stage).lines().contains(QStringLiteral("1 record came in, new or changed.")),
                 qPrintable(folder(stage).lines().join(u'|')));

        // Going home looks into it again, but not more often than once a minute.
        other.addYard("By the ford");
        otherExchanges(other, path);
        stage.app().navigator()->home();
        stage.settle();
        QCOMPARE(yards(stage), std::size_t{1});
        stage.wait(61'000);
        stage.app().navigator()->open(touch::Navigator::Share);
        stage.app().navigator()->home();
        stage.settle();
        QCOMPARE(yards(stage), std::size_t{2});

        // And what this phone records goes to the others.
        records::Yard own;
        own.id = stage.program().store().newId();
        own.name = "Mine";
        stage.program().store().save(own);
        stage.wait(61'000);
        stage.app().navigator()->open(touch::Navigator::Share);
        stage.app().navigator()->home();
        stage.settle();
        otherExchanges(other, path);
        QCOMPARE(other.store().yards().size(), std::size_t{3});
    }

    /// A wash that another keeper is in the middle of, at another hive.
    void theOthersDraftIsNotGoneOnWithHere() {
        const QString path = m_shared.filePath("draft");
        QVERIFY(QDir().mkpath(path));
        Stage stage(Stage::Nothing);
        OtherPhone other(stage.device().clock->now().utcMs);
        const auto colony = other.addColony(other.addYard("By the mill"), "4");
        records::Sample draft;
        draft.id = other.store().newId();
        draft.colonyId = colony.id;
        draft.yardId = colony.yardId;
        draft.startedAtMs = other.nowMs();
        draft.step = records::Step::Scoop;
        other.store().save(draft);
        otherExchanges(other, path);
        QVERIFY(folder(stage).use(path));
        QCOMPARE(stage.program().store().drafts().size(), std::size_t{1});
        stage.app().here()->refresh();
        QCOMPARE(stage.app().here()->draftLine(), QString());
        stage.app().navigator()->home();
        stage.app().start();
        QCOMPARE(stage.app().navigator()->page(), touch::Navigator::Here);
    }

    void whatWasTakenBackDoesNotComeByItself() {
        const QString path = m_shared.filePath("again");
        Stage stage(Stage::Nothing);
        OtherPhone other(stage.device().clock->now().utcMs);
        QVERIFY(QDir().mkpath(path));
        other.addYard("Not wanted yet");
        otherExchanges(other, path);
        QVERIFY(folder(stage).use(path));
        QCOMPARE(yards(stage), std::size_t{1});
        QVERIFY(store::MergeLog(stage.program().store()).undoLast());
        QCOMPARE(yards(stage), std::size_t{0});
        stage.wait(61'000);
        folder(stage).exchangeQuietly();
        QCOMPARE(yards(stage), std::size_t{0});
        QVERIFY2(folder(stage).stateLine().startsWith(QLatin1String("Paused")),
                 qPrintable(folder(stage).stateLine()));
        folder(stage).exchangeNow();
        QCOMPARE(yards(stage), std::size_t{1});
        QVERIFY(!folder(stage).stateLine().startsWith(QLatin1String("Paused")));
    }

    void badFoldersAreSaidAndNotUsed() {
        Stage stage(Stage::Nothing);
        const QString file = m_shared.filePath("a file");
        QFile made(file);
        QVERIFY(made.open(QIODevice::WriteOnly));
        for (const QString& path : {QString(), QStringLiteral("not/absolute"), file,
                                    m_shared.filePath("no/such/parent"), QStringLiteral("/proc/none")}) {
            QVERIFY2(!folder(stage).use(path), qPrintable(path));
            QVERIFY(!folder(stage).problem().isEmpty());
            QVERIFY(!folder(stage).isOn());
        }
        // One that goes away while it is used.
        const QString path = m_shared.filePath("goes away");
        QVERIFY(folder(stage).use(path));
        QVERIFY(QDir(path).removeRecursively());
        folder(stage).exchangeNow();
        QVERIFY(folder(stage).problem().contains(path));
        QVERIFY(folder(stage).isOn());
        folder(stage).stop();
        QVERIFY(!folder(stage).isOn() && folder(stage).problem().isEmpty());
    }

    void thePageIsMeasured_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("320") << QSize(320, 568);
        QTest::newRow("360") << QSize(360, 740);
        QTest::newRow("412") << QSize(412, 915);
    }

    void thePageIsMeasured() {
        QFETCH(const QSize, size);
        const QString path = m_shared.filePath(QStringLiteral("measured%1").arg(size.width()));
        Stage stage(Stage::Demo, size);
        OtherPhone other(stage.device().clock->now().utcMs);
        QStringList wrong;
        const QString pictures = qEnvironmentVariable("HALFCUP_PICTURES");
        const auto look = [&](const char* screen) {
            wrong += whatIsWrong(stage, QLatin1String(screen), 1);
            if (!pictures.isEmpty())
                QVERIFY(stage.picture().save(QDir(pictures).filePath(
                    QStringLiteral("%1-%2.png").arg(QLatin1String(screen)).arg(size.width()))));
        };
        open(stage);
        look("folder-off");
        QVERIFY(folder(stage).use(path));
        other.addYard("By the mill");
        otherExchanges(other, path);
        QFile half(path + QStringLiteral("/halfcup-on-its-way.halfcup"));
        QVERIFY(half.open(QIODevice::WriteOnly) && half.write("{\"halfcup\"") > 0);
        half.close();
        folder(stage).exchangeNow();
        stage.settle();
        look("folder-on");
        for (const QString& each : wrong)
            qWarning("%s", qPrintable(each));
        QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1 complaints").arg(wrong.size())));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }
};

QTEST_MAIN(FolderTest)
#include "folder_test.moc"
