// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "measure.h"
#include "screens.h"

#include "records/judgement.h"
#include "touch/load_chart_item.h"
#include "touch/navigator.h"

#include <QAccessible>
#include <QDir>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using halfcup::records::Date;

/// The picture of a colony's loads on the real page, with a set clock (15 June 2026).
class LoadsTest : public QObject {
    Q_OBJECT

    static records::Sample washed(Stage& stage, const records::Colony& colony, const Date& day,
                                  std::int64_t mites, const char* method = "alcohol_wash") {
        records::Sample sample;
        sample.id = stage.program().store().newId();
        sample.colonyId = colony.id;
        sample.yardId = colony.yardId;
        sample.method = method;
        sample.state = records::SampleState::Finished;
        sample.step = records::Step::Answer;
        sample.startedAtMs = records::daysSinceEpoch(day) * 86'400'000 + 40'000'000;
        sample.scoopedAtMs = sample.startedAtMs;
        sample.finishedAtMs = sample.startedAtMs + 600'000;
        sample.scoop.beesMean = 300;
        sample.scoop.beesCv = 0.1;
        sample.answer = records::answerOf(sample, mites, {}, {});
        return sample;
    }

    static records::Colony makeColony(Stage& stage) {
        stage.app().yards()->makeNew();
        [&] {
            QVERIFY(stage.app().yards()->save(QStringLiteral("Alder"), QStringLiteral("3"), {}));
            QVERIFY(stage.app().yards()->addColonies(QStringLiteral("1-2")));
        }();
        stage.app().navigator()->home();
        stage.settle();
        return stage.program().store().colonies(stage.app().here()->yardId().toStdString()).front();
    }

    static void open(Stage& stage, const records::Colony& colony) {
        stage.app().navigator()->home();
        stage.app().here()->openColony(QString::fromStdString(colony.id));
        stage.settle();
        stage.picture();
    }

    static touch::LoadChartItem* chart(Stage& stage) {
        return qobject_cast<touch::LoadChartItem*>(stage.find(QStringLiteral("loadChart")));
    }

    static QString textOf(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QString();
    }

    static void keep(Stage& stage, const QString& name) {
        const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
        if (!folder.isEmpty())
            QVERIFY(QDir().mkpath(folder) && stage.picture().save(QDir(folder).filePath(name + ".png")));
    }

private slots:
    void noWashNoPicture() {
        Stage stage(Stage::Nothing);
        open(stage, makeColony(stage));
        QVERIFY(stage.find(QStringLiteral("colonyPage")));
        QVERIFY(!chart(stage) && !stage.find(QStringLiteral("earlierWash")));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void touchedPointsTellTheirWash() {
        Stage stage(Stage::Nothing);
        const records::Colony colony = makeColony(stage);
        store::Store& store = stage.program().store();
        const records::Sample april = washed(stage, colony, {2026, 4, 12}, 12);
        const records::Sample may = washed(stage, colony, {2026, 5, 10}, 0);
        const records::Sample june = washed(stage, colony, {2026, 6, 8}, 6, "sugar_roll");
        for (const records::Sample& each : {april, may, june})
            store.save(each);
        open(stage, colony);
        touch::LoadChartItem* item = chart(stage);
        QVERIFY(item);
        QCOMPARE(item->drawing().spots.size(), std::size_t{3});
        QVERIFY2(textOf(stage, "chosenWash").startsWith(QLatin1String("8 June: ")), // the last at first
                 qPrintable(textOf(stage, "chosenWash")));
        QVERIFY(textOf(stage, "chosenWash").endsWith(QLatin1String("Powdered-sugar roll.")));

        stage.scrollTo(item);
        for (const auto& spot : item->drawing().spots)
            if (spot.key == QString::fromStdString(april.id)) {
                const QPointF at = item->mapToScene(spot.at + QPointF(6, 8)); // nobody hits it exactly
                QTest::mouseClick(stage.window(), Qt::LeftButton, Qt::NoModifier, at.toPoint());
                break;
            }
        stage.settle();
        const QLocale locale;
        // From ten on without a decimal, as everywhere in the app.
        const auto figure = [&](double load) { return locale.toString(load, 'f', load >= 9.95 ? 0 : 1); };
        QCOMPARE(textOf(stage, "chosenWash"),
                 QStringLiteral("12 April: %1 per 100, between %2 and %3. Alcohol wash.")
                     .arg(figure(april.answer->loadQ50), figure(april.answer->loadQ05),
                          figure(april.answer->loadQ95)));
        QCOMPARE(item->picture().chosen, QString::fromStdString(april.id));

        QVERIFY(!stage.app().colony()->loads()->canGoEarlier());
        QVERIFY(stage.touch(QStringLiteral("laterWash")));
        QVERIFY2(textOf(stage, "chosenWash").startsWith(QLatin1String("10 May: none found, at most ")),
                 qPrintable(textOf(stage, "chosenWash")));
        QVERIFY(stage.touch(QStringLiteral("laterWash")));
        QVERIFY(!stage.touch(QStringLiteral("laterWash"))); // the last
        QVERIFY(stage.touch(QStringLiteral("earlierWash")));
        QVERIFY(textOf(stage, "chosenWash").startsWith(QLatin1String("10 May")));

        QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(item);
        QVERIFY(spoken);
        QVERIFY(spoken->text(QAccessible::Name).contains(QLatin1String("8 June 2026")));
        QCOMPARE(spoken->text(QAccessible::Name), stage.app().colony()->loads()->spoken());
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void theMarksAreExplained() {
        Stage stage(Stage::Nothing);
        const records::Colony colony = makeColony(stage);
        stage.program().store().save(washed(stage, colony, {2026, 6, 8}, 6));
        open(stage, colony);
        QVERIFY(stage.touch(QStringLiteral("marksMeaning")));
        QQuickItem* marks = stage.find(QStringLiteral("marks"));
        QVERIFY(marks && marks->height() > 40);
        QVERIFY(stage.app().colony()->loads()->legend().spoken().contains(QLatin1String("treat line")));
        QVERIFY(!stage.app().colony()->loads()->legend().spoken().contains(QLatin1String("Treated")));
        QCOMPARE(textOf(stage, "chartInWords"), stage.app().colony()->loads()->spoken());
        QVERIFY(stage.touch(QStringLiteral("marksMeaning")));
        QVERIFY(!stage.find(QStringLiteral("marks")) && !stage.find(QStringLiteral("chartInWords")));
    }

    // The fan is there where the line about growth is, and says the same.
    void theOutlookIsShownWhereItIsTold() {
        Stage stage(Stage::Nothing);
        const records::Colony colony = makeColony(stage);
        store::Store& store = stage.program().store();
        store.save(washed(stage, colony, {2026, 5, 20}, 4));
        store.save(washed(stage, colony, {2026, 6, 10}, 7));
        open(stage, colony);
        const auto& ahead = chart(stage)->picture().chart.ahead;
        QVERIFY(!stage.app().colony()->growthLine().isEmpty());
        QVERIFY((ahead.front().day == Date{2026, 6, 10}) && (ahead.back().day == Date{2026, 8, 9}));
        QCOMPARE(ahead.front().middle, stage.app().colony()->growth()->now.q50);

        records::GivenTreatment given;
        given.treatment.id = store.newId();
        given.treatment.yardId = colony.yardId;
        given.treatment.substance = "thymol";
        given.treatment.product = "Trays from the shed";
        given.treatment.firstDay = {2026, 6, 12};
        given.treatment.lastDay = {2026, 7, 12};
        given.colonyIds = {colony.id};
        store.save(given);
        open(stage, colony);
        QVERIFY(stage.app().colony()->growthLine().isEmpty());
        QVERIFY(chart(stage)->picture().chart.ahead.empty());
        QCOMPARE(chart(stage)->picture().chart.treated.front().name, QStringLiteral("Thymol"));
    }

    void manyYearsBeginWithTheLastSeason() {
        Stage stage(Stage::Nothing);
        const records::Colony colony = makeColony(stage);
        for (int year = 2017; year <= 2026; ++year)
            for (int i = 0; i < (year == 2026 ? 3 : 12); ++i)
                stage.program().store().save(
                    washed(stage, colony, records::plusDays({year, 4, 5}, 17 * i), 1 + i * i / 4));
        open(stage, colony);
        const std::size_t season = chart(stage)->drawing().spots.size();
        QVERIFY(season >= 12 && season < 30);
        const QString chosen = textOf(stage, "chosenWash");
        QVERIFY(stage.touch(QStringLiteral("allYears")));
        QCOMPARE(chart(stage)->drawing().spots.size(), std::size_t{9 * 12 + 3});
        QCOMPARE(textOf(stage, "chosenWash"), chosen);
        keep(stage, QStringLiteral("loads-ten-years"));
        QElapsedTimer timer;
        timer.start();
        stage.app().colony()->refresh();
        qInfo("reading a colony of 111 washes and its outlook: %lld ms", timer.elapsed());
        QVERIFY(stage.touch(QStringLiteral("allYears")));
        QCOMPARE(chart(stage)->drawing().spots.size(), season);
    }

    void thePageMeasuresWell() {
        Stage stage(Stage::Demo);
        for (const auto& entry : stage.app().here()->colonies()->entries()) {
            stage.app().here()->openColony(entry.colonyId);
            stage.settle();
            if (chart(stage))
                break;
            stage.app().navigator()->home();
            stage.settle();
        }
        QVERIFY(chart(stage));
        QStringList wrong;
        for (const QSize& size : {QSize(320, 568), QSize(360, 740), QSize(412, 915)})
            for (const bool dusk : {false, true}) {
                stage.resize(size);
                stage.setDusk(dusk);
                const QString name =
                    QStringLiteral("loads-%1%2").arg(size.width()).arg(QLatin1String(dusk ? "-dusk" : ""));
                QQuickItem* item = chart(stage);
                stage.scrollTo(item);
                QCOMPARE(item->width(), size.width() - 2 * stage.look().margin());
                QVERIFY(item->height() >= 200);
                wrong += whatIsWrong(stage, name);
                keep(stage, name);
                stage.scrollTo(stage.find(QStringLiteral("marksMeaning")));
                wrong += whatIsWrong(stage, name + QStringLiteral(" under it"));
                keep(stage, name + QStringLiteral("-under"));
                QVERIFY(stage.touch(QStringLiteral("marksMeaning")));
                stage.scrollTo(stage.find(QStringLiteral("marks")));
                wrong += whatIsWrong(stage, name + QStringLiteral(" marks"));
                keep(stage, name + QStringLiteral("-marks"));
                QVERIFY(stage.touch(QStringLiteral("marksMeaning")));
            }
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void nothingIsPaintedAgainWhereNothingChanged() {
        Stage stage(Stage::Nothing);
        const records::Colony colony = makeColony(stage);
        for (int i = 0; i < 6; ++i)
            stage.program().store().save(washed(stage, colony, {2026, 5, 5 + 4 * i}, 2 * i));
        open(stage, colony);
        QVERIFY(chart(stage));
        stage.settle();
        int drawn = 0;
        connect(chart(stage), &touch::LoadChartItem::drawn, this, [&] { ++drawn; });
        const QSignalSpy frames(stage.window(), &QQuickWindow::frameSwapped);
        QTest::qWait(3000);
        QCOMPARE(frames.count(), 0);     // no frame at all, so nothing was painted
        stage.app().colony()->refresh(); // read again, and the same was found
        stage.settle();
        QTest::qWait(500);
        QCOMPARE(drawn, 0);
        QVERIFY(stage.touch(QStringLiteral("earlierWash")));
        QTRY_VERIFY(frames.count() > 0); // or the count of frames says nothing
        QCOMPARE(drawn, 1);
    }
};

QTEST_MAIN(LoadsTest)
#include "loads_test.moc"
