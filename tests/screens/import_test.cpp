// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A table of earlier washes, taken in by touch: the file, its columns, what it would be, kept.
#include "measure.h"
#include "screens.h"

#include "touch/navigator.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include <sqlite3.h>

using namespace halfcup;
using namespace halfcup::screens;
using touch::ImportController;

namespace {

const QString tables = QStringLiteral(HALFCUP_SOURCE_DIR "/tests/unit/tables");

} // namespace

class ImportTest : public QObject {
    Q_OBJECT

    static QString text(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QStringLiteral("(not there)");
    }

    static ImportController& import(Stage& stage) { return *stage.app().tableImport(); }

    /// Through the Share page to the files of this folder.
    static bool toTheFiles(Stage& stage, const QStringList& folders) {
        import(stage).setFolders(folders);
        stage.app().navigator()->open(touch::Navigator::Share);
        stage.settle();
        return press(stage, {"importTable"}) && stage.find(QStringLiteral("importPage"));
    }

    static bool pickFile(Stage& stage, const char* name) {
        return stage.touch(QStringLiteral("file-") + QDir(tables).absoluteFilePath(QLatin1String(name)));
    }

    static int washes(Stage& stage) { return stage.program().store().sampleCount(); }

    static QString counts(Stage& stage) {
        QStringList all;
        for (const auto& entry : import(stage).counts()->entries())
            all.append(entry.note.isEmpty() ? entry.detail
                                            : entry.detail + QStringLiteral(": ") + entry.note);
        return all.join(QStringLiteral("; "));
    }

    static bool write(const QString& path, const QByteArray& bytes) {
        QFile file(path);
        return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
    }

private slots:
    void anOfficeTableInFiveTouches() {
        Stage stage(Stage::Demo);
        const int before = washes(stage);
        QVERIFY(toTheFiles(stage, {tables}));
        QCOMPARE(import(stage).files()->count(), 3);
        QVERIFY(pickFile(stage, "office-de.csv"));
        QCOMPARE(import(stage).step(), ImportController::Columns);
        const auto& fields = import(stage).fields()->entries();
        QCOMPARE(fields.first().detail, QStringLiteral("Datum"));
        QCOMPARE(fields.first().note, QStringLiteral("for example 18.05.2023"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Preview);
        QCOMPARE(counts(stage),
                 QStringLiteral("4 washes to keep; 1 new yard: Mühlgarten; 3 new colonies: 4, 7, 07"));
        const auto wash = import(stage).washes()->entries().first();
        QCOMPARE(wash.title, QStringLiteral("Colony 4, Mühlgarten"));
        QCOMPARE(wash.detail, QStringLiteral("18 May 2023: 9 mites on about 303 bees, alcohol wash"));
        QVERIFY(wash.note.contains(QLatin1String("per 100")));
        QCOMPARE(washes(stage), before); // nothing before the last touch
        QCOMPARE(text(stage, "mainAction"), QStringLiteral("Keep 4 washes"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(washes(stage), before + 4);
        QVERIFY(text(stage, "result").startsWith(QLatin1String("4 washes kept.")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.find(QStringLiteral("herePage")));

        QVERIFY(toTheFiles(stage, {tables})); // and again
        QVERIFY(pickFile(stage, "office-de.csv"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(counts(stage), QStringLiteral("0 washes to keep; 4 washes here already"));
        QVERIFY(!stage.find(QStringLiteral("mainAction")));
        QVERIFY(press(stage, {"back", "back", "back"}));
        QVERIFY(stage.find(QStringLiteral("sharePage")));
        QCOMPARE(washes(stage), before + 4);
    }

    void theYardIsAskedAndRowsInQuestionAreDecided() {
        Stage stage(Stage::Nothing);
        QVERIFY(toTheFiles(stage, {tables}));
        QVERIFY(pickFile(stage, "club.csv"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Columns);
        QVERIFY(text(stage, "problem").startsWith(QLatin1String("No column names the yard")));
        QVERIFY(type(stage, "yardForAll", "Club yard"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Preview);
        QCOMPARE(import(stage).refused()->count(), 12);
        QCOMPARE(import(stage).questions()->count(), 3);
        QCOMPARE(import(stage).questions()->entries().first().detail,
                 QStringLiteral("400 mites on 300 bees: are the two swapped?"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Preview);
        QVERIFY(text(stage, "problem").startsWith(QLatin1String("First say what becomes of the rows")));
        QCOMPARE(washes(stage), 0);
        QVERIFY(press(stage, {"decision-leave"}));
        QCOMPARE(text(stage, "mainAction"), QStringLiteral("Keep 3 washes"));
        QVERIFY(press(stage, {"decision-keep"}));
        QCOMPARE(text(stage, "mainAction"), QStringLiteral("Keep 6 washes"));
        QVERIFY(press(stage, {"decision-leave", "mainAction"}));
        QCOMPARE(washes(stage), 3);
        QCOMPARE(stage.program().store().yards().front().name, std::string("Club yard"));
    }

    void columnsAreChosenAndDaysAsked() {
        Stage stage(Stage::Nothing);
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("odd.txt"));
        QVERIFY(write(path, "a;b;c;where\n05/06/2024;K1;3;Mill\n07/08/2024;K2;0;Mill\n"));
        QVERIFY(toTheFiles(stage, {folder.path()}));
        QVERIFY(stage.touch(QStringLiteral("file-") + path));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(text(stage, "problem"), QStringLiteral("Which column holds the day?"));
        QVERIFY(press(stage, {"field-day", "column-0", "field-colony", "column-1", "field-mites", "column-2",
                              "field-yard", "column-3"}));
        QVERIFY(text(stage, "orderQuestion").contains(QLatin1String("can be read in two ways")));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Columns);
        QVERIFY(press(stage, {"order-m/d/y", "mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Preview);
        QVERIFY(import(stage).washes()->entries().first().detail.startsWith(QLatin1String("6 May 2024")));
        QVERIFY(press(stage, {"back", "field-mites", "column-none", "mainAction"}));
        QCOMPARE(text(stage, "problem"), QStringLiteral("Which column holds the mites?"));
        QVERIFY(press(stage, {"field-mites", "leaveColumn"}));
        QCOMPARE(washes(stage), 0);
    }

    void whatIsNoTableIsSaid() {
        Stage stage(Stage::Nothing);
        const QTemporaryDir folder;
        QVERIFY(toTheFiles(stage, {folder.path()}));
        QVERIFY(text(stage, "filesLine").startsWith(QLatin1String("No table was found.")));
        QVERIFY(write(folder.filePath(QStringLiteral("empty.csv")), ""));
        QVERIFY(press(stage, {"mainAction"})); // look again
        QCOMPARE(import(stage).files()->count(), 1);
        QVERIFY(stage.touch(QStringLiteral("file-") + folder.filePath(QStringLiteral("empty.csv"))));
        QCOMPARE(text(stage, "problem"), QStringLiteral("There is nothing in this file."));
        QVERIFY(!import(stage).openFile(folder.filePath(QStringLiteral("gone.csv"))));
        stage.settle();
        QVERIFY(text(stage, "problem").endsWith(QLatin1String("is not there any more.")));
    }

    void aDatabaseThatCannotBeWrittenKeepsNothingAndSaysSo() {
        Stage stage(Stage::Nothing);
        QVERIFY(toTheFiles(stage, {tables}));
        QVERIFY(pickFile(stage, "office-de.csv"));
        QVERIFY(press(stage, {"mainAction"}));
        sqlite3* other = nullptr; // holds the database, as another program would
        QCOMPARE(sqlite3_open(stage.program().store().path().c_str(), &other), SQLITE_OK);
        QCOMPARE(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(import(stage).step(), ImportController::Preview);
        QVERIFY(stage.find(QStringLiteral("understood")));
        sqlite3_close(other);
        QCOMPARE(washes(stage), 0);
        QVERIFY(stage.program().store().allYards().empty());
        QVERIFY(press(stage, {"understood", "mainAction"}));
        QCOMPARE(washes(stage), 4);
    }

    void pagesAreMeasured_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("320") << QSize(320, 568);
        QTest::newRow("360") << QSize(360, 740);
        QTest::newRow("412") << QSize(412, 915);
    }

    void pagesAreMeasured() {
        QFETCH(const QSize, size);
        Stage stage(Stage::Demo, size);
        QStringList wrong;
        const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
        const auto look = [&](const char* screen, int mainActions = 1) {
            wrong += whatIsWrong(stage, QLatin1String(screen), mainActions);
            if (!folder.isEmpty())
                QVERIFY(stage.picture().save(QDir(folder).filePath(
                    QStringLiteral("%1-%2.png").arg(QLatin1String(screen)).arg(size.width()))));
        };
        QVERIFY(toTheFiles(stage, {tables}));
        look("import-files");
        QVERIFY(pickFile(stage, "club.csv"));
        look("import-columns");
        QVERIFY(press(stage, {"mainAction"}));
        look("import-asked");
        stage.scrollTo(stage.find(QStringLiteral("yardForAll")));
        look("import-columns-end");
        QVERIFY(press(stage, {"field-bees"}));
        look("import-sheet", 0);
        QVERIFY(press(stage, {"leaveColumn"}));
        QVERIFY(type(stage, "yardForAll", "Club yard"));
        QVERIFY(press(stage, {"mainAction"}));
        look("import-preview");
        stage.scrollTo(stage.find(QStringLiteral("decision-keep")));
        look("import-decisions");
        QVERIFY(press(stage, {"decision-leave", "mainAction"}));
        look("import-done");
        QVERIFY(import(stage).openFile(tables + QStringLiteral("/gone.csv")) == false);
        stage.settle();
        look("import-no-table");
        for (const QString& each : wrong)
            qWarning("%s", qPrintable(each));
        QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1 complaints").arg(wrong.size())));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }
};

QTEST_MAIN(ImportTest)
#include "import_test.moc"
