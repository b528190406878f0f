// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What leaves and what comes in where the phone has ways of its own for it (a share sheet, a chooser of
// files), and what is said where nobody sees the program's folders, as in a browser.
#include "screens.h"

#include "store/backup.h"
#include "touch/navigator.h"

#include <QDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using touch::Navigator;

class HandedOnTest : public QObject {
    Q_OBJECT

    static void makeABrowser(Stage& stage) {
        stage.device().folders->setSeen(false);
        stage.device().files->setCanShare(true);
        stage.device().files->setCanChoose(true);
    }

    static bool open(Stage& stage, Navigator::Page page) {
        stage.app().navigator()->home();
        stage.app().navigator()->open(page);
        stage.settle();
        return stage.app().navigator()->page() == page;
    }

    static QString text(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QString();
    }

    static QString exportsOf(Stage& stage) { return stage.device().folders->exports().path; }

    /// What was handed on last: it must lie there, whole, when the phone takes it.
    static QString lastShared(Stage& stage) {
        const QStringList& shared = stage.device().files->shared();
        return shared.isEmpty() || !QFileInfo::exists(shared.last()) ? QString() : shared.last();
    }

    /// A page of the program names no folder of its own to a keeper who cannot look there.
    static bool namesAFolder(Stage& stage) {
        for (const QQuickItem* item : visibleItems(stage.window()->contentItem()))
            if (item->property("text").toString().contains(exportsOf(stage)) ||
                item->property("note").toString().contains(exportsOf(stage)))
                return true;
        return false;
    }

private slots:
    void eachFileForPeopleIsHandedOnByItsType_data() {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("mimeType");
        QTest::newRow("RFC 4180") << "samples"
                                  << "text/csv";
        QTest::newRow("RFC 7946") << "map"
                                  << "application/geo+json";
        QTest::newRow("RFC 5545") << "calendar"
                                  << "text/calendar";
        QTest::newRow("RFC 8118") << "report"
                                  << "application/pdf";
    }
    void eachFileForPeopleIsHandedOnByItsType() {
        QFETCH(const QString, kind);
        QFETCH(const QString, mimeType);
        Stage stage(Stage::Demo);
        stage.device().files->setCanShare(true);
        QVERIFY(open(stage, Navigator::Export));
        QVERIFY(stage.touch(QStringLiteral("what-") + kind) && press(stage, {"mainAction"}));
        QVERIFY(!lastShared(stage).isEmpty());
        QCOMPARE(stage.device().files->mimeTypes().last(), mimeType);
        QVERIFY(text(stage, "result").contains(exportsOf(stage))); // it stays there as well
    }

    void nothingIsHandedOnThatWasNotWritten() {
        Stage stage(Stage::Demo);
        makeABrowser(stage);
        stage.device().folders->setExportsTrouble(device::FolderTrouble::CannotWrite);
        for (const auto page : {Navigator::Export, Navigator::Backup, Navigator::Share})
            QVERIFY(open(stage, page) && press(stage, {"mainAction"}));
        QVERIFY(stage.device().files->shared().isEmpty());
    }

    void aBrowserGetsEveryFileAndNoFolderIsNamed() {
        Stage stage(Stage::Demo);
        makeABrowser(stage);
        QVERIFY(open(stage, Navigator::Export) && press(stage, {"mainAction"}));
        QVERIFY(text(stage, "result").endsWith(QLatin1String(".csv, handed to the browser")));
        QVERIFY(!namesAFolder(stage));
        QVERIFY(open(stage, Navigator::Season) && press(stage, {"mainAction"}));
        QVERIFY(lastShared(stage).endsWith(QLatin1String(".ics")));
        QVERIFY(!namesAFolder(stage));
        QVERIFY(open(stage, Navigator::Setup));
        QVERIFY(!stage.find(QStringLiteral("exchangeFolder")));
        bool saysWhere = false;
        for (const QQuickItem* item : visibleItems(stage.window()->contentItem()))
            saysWhere = saysWhere ||
                        item->property("text").toString() == QLatin1String("Your records: in this browser") ||
                        item->property("note").toString() == QLatin1String("Your records: in this browser");
        QVERIFY(saysWhere);
        QVERIFY(open(stage, Navigator::Share));
        QVERIFY(!stage.find(QStringLiteral("exchangeFolder"))); // no other program would fill it
    }

    void aBackupLeavesTheBrowser() {
        Stage stage(Stage::Demo);
        makeABrowser(stage);
        QVERIFY(open(stage, Navigator::Backup));
        QVERIFY(stage.app().backup()->whyLine().contains(QLatin1String("A browser may throw away")));
        QVERIFY(press(stage, {"mainAction"}));
        const QString path = lastShared(stage);
        QVERIFY(store::lookInto(path.toStdString()).isBackup);
        QVERIFY2(text(stage, "result").endsWith(QLatin1String(".halfcup-backup, handed to the browser")),
                 qPrintable(text(stage, "result")));
        QVERIFY(!namesAFolder(stage));
    }

    /// At the tenth wash elsewhere: see screens_backup.
    void aBrowserRemindsOfTheFirstWash() {
        Stage stage(Stage::Demo);
        store::Store& store = stage.program().store();
        const std::string colonyId = store.colonies(store.yards().front().id).front().id;
        records::Yard own; // beside the invented ones, whose washes are in no backup
        own.id = store.newId();
        own.name = "Alder";
        store.save(own);
        stage.app().backup()->makeBackup();
        records::Sample wash;
        wash.id = store.newId();
        wash.yardId = own.id;
        wash.colonyId = colonyId;
        wash.state = records::SampleState::Finished;
        wash.startedAtMs = stage.program().services().now().utcMs;
        store.save(wash);
        stage.app().backup()->refresh();
        QCOMPARE(stage.app().backup()->reminder(), QString());
        makeABrowser(stage);
        QCOMPARE(stage.app().backup()->reminder(), QStringLiteral("1 wash in no backup yet"));
    }

    void aBackupThatLiesElsewhereIsPutBack() {
        Stage stage(Stage::Demo);
        QVERIFY(open(stage, Navigator::Backup));
        QVERIFY(!stage.find(QStringLiteral("chooseFile")));
        stage.device().files->setCanChoose(true);
        stage.settle();
        QVERIFY(press(stage, {"mainAction"}));
        const QTemporaryDir stick;
        const QString made = stage.app().backup()->backups()->entries().front().key;
        const QString elsewhere = stick.filePath(QStringLiteral("named by a mail program.bin"));
        QVERIFY(QFile::rename(made, elsewhere));
        QVERIFY(press(stage, {"chooseFile"}));
        QCOMPARE(stage.device().files->endings(), QStringList{QStringLiteral(".halfcup-backup")});
        stage.device().files->cancel();
        stage.settle();
        QVERIFY(!stage.find(QStringLiteral("putBack")));
        QVERIFY(press(stage, {"chooseFile"}));
        stage.device().files->choose(elsewhere);
        stage.settle();
        QVERIFY(press(stage, {"putBack", "putItBack"}));
        QCOMPARE(stage.program().restoreFrom(), elsewhere);
    }

    void whatIsChosenAsABackupAndIsNoneSaysSo() {
        Stage stage(Stage::Demo);
        makeABrowser(stage);
        QVERIFY(open(stage, Navigator::Backup) && press(stage, {"chooseFile"}));
        const QTemporaryDir stick;
        QFile letter(stick.filePath(QStringLiteral("letter.txt")));
        QVERIFY(letter.open(QIODevice::WriteOnly) && letter.write("Dear keeper") > 0);
        letter.close();
        stage.device().files->choose(letter.fileName());
        stage.settle();
        QVERIFY(!stage.find(QStringLiteral("putBack")));
        QVERIFY(stage.app().backup()->pickedProblem().contains(QLatin1String("is no backup of Halfcup")));
        QVERIFY(press(stage, {"closeContents"}));
    }

    void aTableIsChosen() {
        Stage stage(Stage::Nothing);
        makeABrowser(stage);
        QVERIFY(open(stage, Navigator::ImportTable));
        QVERIFY(text(stage, "filesLine").startsWith(QLatin1String("Choose a table of washes")));
        QVERIFY(!namesAFolder(stage));
        QVERIFY(!stage.find(QStringLiteral("chooseFile"))); // one button for it
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.device().files->endings().front(), QStringLiteral(".csv"));
        const QTemporaryDir stick;
        QFile table(stick.filePath(QStringLiteral("washes.csv")));
        QVERIFY(table.open(QIODevice::WriteOnly) &&
                table.write("Yard,Colony,Date,Mites,Bees\nAlder,3,2025-06-03,4,300\n") > 0);
        table.close();
        stage.device().files->choose(table.fileName());
        stage.settle();
        QCOMPARE(stage.app().tableImport()->step(), touch::ImportController::Columns);
        QCOMPARE(stage.app().tableImport()->fileName(), QStringLiteral("washes.csv"));
    }

    /// A portal answers a moment after the start.
    void aChooserThatIsFoundLateIsOfferedThen() {
        Stage stage(Stage::Nothing);
        QVERIFY(open(stage, Navigator::ImportTable));
        QVERIFY(!stage.find(QStringLiteral("chooseFile")));
        stage.device().files->setCanChoose(true);
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("chooseFile")));
    }

    void aFileOfAnotherPhoneIsChosen() {
        Stage stage(Stage::Nothing);
        makeABrowser(stage);
        stage.app().share()->takeIn();
        stage.settle();
        QVERIFY(!stage.find(QStringLiteral("chooseFile")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.device().files->isAsking());
        QCOMPARE(stage.device().files->endings(), QStringList{QStringLiteral(".halfcup")});
    }

    /// The keeper has gone on when the chooser answers: the file goes where its kind belongs.
    void anAnswerThatComesLate() {
        Stage stage(Stage::Nothing);
        makeABrowser(stage);
        QVERIFY(open(stage, Navigator::ImportTable) && press(stage, {"mainAction"}));
        const QTemporaryDir stick;
        QFile table(stick.filePath(QStringLiteral("washes.csv")));
        QVERIFY(table.open(QIODevice::WriteOnly) && table.write("Yard,Colony,Date,Mites\n") > 0);
        table.close();
        stage.app().navigator()->home();
        stage.device().files->choose(table.fileName());
        stage.settle();
        QCOMPARE(stage.app().navigator()->page(), Navigator::ImportTable);
    }
};

QTEST_MAIN(HandedOnTest)
#include "handed_on_test.moc"
