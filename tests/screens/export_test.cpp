// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Files for people, written from the real page on the demo's records. With HALFCUP_PICTURES set to a folder,
// the pictures are left there.
#include "measure.h"

#include "touch/navigator.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using touch::ExportController;

class ExportTest : public QObject {
    Q_OBJECT

    static ExportController& people(Stage& stage) { return *stage.app().share()->people(); }

    static bool open(Stage& stage) {
        stage.app().navigator()->open(touch::Navigator::Export);
        stage.settle();
        return stage.find(QStringLiteral("exportPage")) != nullptr;
    }

    static QString folder(Stage& stage) { return stage.device().folders->exports().path; }

    /// What lies at the end of the name in the folder for files to hand on; empty where nothing does.
    static QByteArray written(Stage& stage, const QString& pattern) {
        const QDir place(folder(stage));
        const QStringList names = place.entryList({pattern});
        QFile file(place.filePath(names.value(0)));
        return names.size() == 1 && file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    static void keep(Stage& stage, const QString& name) {
        const QString place = qEnvironmentVariable("HALFCUP_PICTURES");
        if (!place.isEmpty())
            stage.picture().save(QDir(place).filePath(name + QStringLiteral(".png")));
    }

private slots:
    void shareLeadsThere() {
        Stage stage(Stage::Demo);
        QVERIFY(press(stage, {"season", "corner", "forPeople"}));
        QVERIFY(stage.find(QStringLiteral("exportPage")));
    }

    void eachKindIsWrittenAndSaysWhere_data() {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("pattern");
        QTest::addColumn<QByteArray>("begin");
        QTest::newRow("washes") << "samples"
                                << "halfcup-washes-*.csv" << QByteArray("sample_id,yard,colony,");
        QTest::newRow("counts") << "counts"
                                << "halfcup-counts-*.csv" << QByteArray("sample_id,yard,colony,");
        QTest::newRow("treatments") << "treatments"
                                    << "halfcup-treatments-*.csv" << QByteArray("treatment_id,");
        QTest::newRow("map") << "map"
                             << "halfcup-map-*.geojson" << QByteArray("{\"type\":\"FeatureColl");
        QTest::newRow("calendar") << "calendar"
                                  << "halfcup-season-*.ics" << QByteArray("BEGIN:VCALENDAR\r\n");
        QTest::newRow("report") << "report"
                                << "halfcup-report-*.pdf" << QByteArray("%PDF-");
    }
    void eachKindIsWrittenAndSaysWhere() {
        QFETCH(const QString, kind);
        QFETCH(const QString, pattern);
        QFETCH(const QByteArray, begin);
        Stage stage(Stage::Demo);
        QVERIFY(open(stage));
        QVERIFY(stage.touch(QStringLiteral("what-") + kind));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY2(!people(stage).hasFailed(), qPrintable(people(stage).result()));
        QVERIFY(people(stage).result().contains(folder(stage)));
        QVERIFY(stage.find(QStringLiteral("result")));
        QVERIFY(written(stage, pattern).startsWith(begin));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void exactIsAskedEachTime() {
        Stage stage(Stage::Demo);
        QVERIFY(open(stage));
        QVERIFY(press(stage, {"what-map", "positionsSecond"}));
        QVERIFY(people(stage).isExact());
        QVERIFY(press(stage, {"mainAction"}));
        const QByteArray exact = written(stage, QStringLiteral("*.geojson"));
        QVERIFY(!people(stage).isExact());
        QVERIFY(press(stage, {"mainAction"}));
        const QByteArray blurred = written(stage, QStringLiteral("*.geojson"));
        QVERIFY(exact.contains("\"exact\"") && !exact.contains("\"blurred\""));
        QVERIFY(blurred.contains("\"blurred\"") && !blurred.contains("\"exact\""));
    }

    void semicolonsOnRequest() {
        Stage stage(Stage::Demo);
        QVERIFY(open(stage) && press(stage, {"what-samples", "dialectSecond", "mainAction"}));
        QVERIFY(written(stage, QStringLiteral("*.csv")).startsWith("\xEF\xBB\xBFsample_id;yard;"));
    }

    void reportOfOneColonyOfAllYears() {
        Stage stage(Stage::Demo);
        QVERIFY(open(stage));
        QVERIFY(press(stage, {"what-report", "scope-colony", "years-all", "paperSecond"}));
        const auto& subjects = people(stage).subjects()->entries();
        QCOMPARE(subjects.size(), 9);
        const QString second = subjects[1].key;
        QVERIFY(stage.touch(QStringLiteral("subject-") + second));
        QVERIFY(people(stage).subjects()->entries()[1].chosen);
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY2(!people(stage).hasFailed(), qPrintable(people(stage).result()));
        QVERIFY(!written(stage, QStringLiteral("halfcup-report-Colony-*.pdf")).isEmpty());
    }

    void noPlaceForFilesIsSaid() {
        Stage stage(Stage::Demo);
        QVERIFY(open(stage));
        stage.device().folders->setExportsTrouble(device::FolderTrouble::CannotWrite);
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(people(stage).hasFailed());
        QVERIFY(people(stage).result().contains(QStringLiteral("cannot be written")));
        QVERIFY(stage.find(QStringLiteral("problem")));
    }

    void pathInANameStaysInTheFolder() {
        Stage stage(Stage::Demo);
        auto yard = stage.program().store().yard(stage.app().here()->yardId().toStdString());
        yard->name = "../../etc/=cmd|' \n\x01";
        stage.program().store().save(*yard);
        QVERIFY(open(stage) && press(stage, {"what-report", "mainAction"}));
        QVERIFY2(!people(stage).hasFailed(), qPrintable(people(stage).result()));
        QCOMPARE(QDir(folder(stage)).entryList({QStringLiteral("*.pdf")}).size(), 1);
        QVERIFY(QDir(folder(stage))
                    .entryList({QStringLiteral("*.pdf")})[0]
                    .startsWith(QLatin1String("halfcup-report-------etc-")));
    }

    void nothingToWriteIsWrittenToo() {
        Stage stage(Stage::Nothing);
        QVERIFY(open(stage));
        for (const char* kind : {"what-samples", "what-map", "what-calendar", "what-report"}) {
            QVERIFY(press(stage, {kind, "mainAction"}));
            QVERIFY2(!people(stage).hasFailed(), qPrintable(people(stage).result()));
        }
    }

    void pageHoldsAtEverySize_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QStringList>("touches");
        QTest::newRow("washes") << "export washes" << QStringList{};
        QTest::newRow("map") << "export map" << QStringList{"what-map"};
        QTest::newRow("calendar") << "export calendar" << QStringList{"what-calendar"};
        QTest::newRow("report") << "export report" << QStringList{"what-report"};
        QTest::newRow("colony") << "export colony" << QStringList{"what-report", "scope-colony"};
        QTest::newRow("written") << "export written" << QStringList{"positionsSecond", "mainAction"};
    }
    void pageHoldsAtEverySize() {
        QFETCH(const QString, name);
        QFETCH(const QStringList, touches);
        Stage stage(Stage::Demo);
        QVERIFY(open(stage));
        for (const QString& each : touches)
            QVERIFY2(stage.touch(each), qPrintable(each));
        QStringList wrong;
        for (const QSize& size : {QSize(320, 568), QSize(360, 740), QSize(412, 915)}) {
            stage.resize(size);
            for (const bool dusk : {false, true}) {
                stage.setDusk(dusk);
                const QString picture = QStringLiteral("%1 %2%3")
                                            .arg(name)
                                            .arg(size.width())
                                            .arg(QLatin1String(dusk ? " dusk" : ""));
                wrong += whatIsWrong(stage, picture);
                keep(stage, picture);
            }
            stage.setDusk(false);
            for (const char* last : {"paperSecond", "positionsFirst", "dialectFirst"})
                if (QQuickItem* item = stage.find(QLatin1String(last))) {
                    stage.scrollTo(item);
                    stage.settle();
                    const QString picture =
                        QStringLiteral("%1 %2 at %3").arg(name).arg(size.width()).arg(QLatin1String(last));
                    wrong += whatIsWrong(stage, picture);
                    keep(stage, picture);
                }
        }
        for (const QString& each : wrong)
            qWarning("%s", qPrintable(each));
        QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1 complaints").arg(wrong.size())));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }
};

QTEST_MAIN(ExportTest)
#include "export_test.moc"
