// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The tray, touched through on the real pages: scooped now, washed later.
#include "screens.h"

#include "records/tray.h"
#include "touch/navigator.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace halfcup;
using namespace halfcup::screens;
using touch::WashController;

namespace {

constexpr std::int64_t minuteMs = 60'000;

} // namespace

class TrayTest : public QObject {
    Q_OBJECT

    /// From Here: the most urgent colony's bees into a jar that waits.
    static bool scoopOne(Stage& stage) {
        stage.app().navigator()->home();
        stage.settle();
        return pressMain(stage, 3) && press(stage, {"washLater", "toTray"}) &&
               stage.find(QStringLiteral("trayPage"));
    }

    static std::vector<records::Sample> drafts(Stage& stage) { return stage.program().store().drafts(); }

    static touch::TrayController& tray(Stage& stage) { return *stage.app().tray(); }

    static QString lineOf(Stage& stage, int row) { // without its place
        return tray(stage).jars()->entries().at(row).loadLine.section(QLatin1Char(','), 0, 0);
    }

    static bool countJar(Stage& stage, int mites) {
        if (!pressMain(stage, 1)) // the lid is on
            return false;
        stage.wait(60'000);
        if (!pressMain(stage, 2))
            return false;
        stage.app().wash()->count()->type(QString::number(mites));
        return pressMain(stage, 1) && press(stage, {"skipRinse"});
    }

private slots:
    void scoopedInARowAndWashedInAnotherOrder() {
        Stage stage(Stage::Demo);
        QStringList colonies;
        for (int i = 0; i < 3; ++i) {
            colonies.append(stage.app().here()->colonies()->entries().first().label);
            QVERIFY(scoopOne(stage));
            stage.wait(20'000);
        }
        QCOMPARE(tray(stage).jars()->count(), 3);
        QStringList labels;
        for (const auto& entry : tray(stage).jars()->entries())
            labels.append(entry.label);
        QCOMPARE(labels, colonies); // each jar bears its colony's label, in the order of the scoops
        QVERIFY(press(stage, {"back"}));
        QCOMPARE(stage.app().here()->trayLine(), QStringLiteral("3 jars wait"));
        const auto& here = stage.app().here()->colonies()->entries();
        QVERIFY(!colonies.contains(here.first().label)); // not asked for again
        QVERIFY(here.last().dueLine.startsWith(QLatin1String("In the tray: jar")));

        QVERIFY(press(stage, {"tray"}));
        const QString last = QStringLiteral("jar-") + colonies.last();
        QVERIFY(stage.touch(last));
        QVERIFY(stage.app().wash()->header().startsWith(
            QStringLiteral("Jar %1, colony %1").arg(colonies.last())));
        QVERIFY(countJar(stage, 7));
        QCOMPARE(stage.app().answer()->mainAction(),
                 QStringLiteral("Wash jar %1 next").arg(colonies.first()));
        QVERIFY(pressMain(stage, 1));
        QVERIFY(countJar(stage, 2));
        QVERIFY(pressMain(stage, 1));
        QVERIFY(countJar(stage, 4));
        QVERIFY(drafts(stage).empty());
        const int expected[] = {2, 4, 7};
        int found = 0;
        stage.program().store().forEachSample([&](const records::Sample& sample) {
            if (sample.jar.empty())
                return;
            const auto colony = stage.program().store().colony(sample.colonyId);
            const auto at = colonies.indexOf(QString::fromStdString(colony->label));
            QCOMPARE(sample.answer->mites, expected[at]);
            QCOMPARE(sample.jar, colony->label);
            ++found;
        });
        QCOMPARE(found, 3);
    }

    void twoJarsNeverBearOneLabel() {
        Stage stage(Stage::Demo);
        QVERIFY(scoopOne(stage));
        const QString taken = tray(stage).jars()->entries().first().label;
        QVERIFY(press(stage, {"back"}) && pressMain(stage, 3));
        QVERIFY(press(stage, {"washLater"}));
        QVERIFY(type(stage, "jarLabel", taken.toUtf8().constData()));
        QVERIFY(press(stage, {"toTray"}));
        QVERIFY(!stage.find(QStringLiteral("trayPage")));
        QVERIFY2(tray(stage).problem().contains(QStringLiteral("with bees of colony %1").arg(taken)),
                 qPrintable(tray(stage).problem()));
        QVERIFY(tray(stage).problem().contains(QLatin1String("is free")));
        QCOMPARE(records::waitingJars(drafts(stage)), 1);
        QVERIFY(type(stage, "jarLabel", "  "));
        QVERIFY(press(stage, {"toTray"}));
        QVERIFY(!tray(stage).problem().isEmpty());
        QVERIFY(type(stage, "jarLabel", "lid with the dent"));
        QVERIFY(press(stage, {"toTray"}));
        QVERIFY(stage.find(QStringLiteral("trayPage")));
        QCOMPARE(records::waitingJars(drafts(stage)), 2);
    }

    void fortyJarsAreEnough() {
        Stage stage(Stage::Demo);
        const auto yard = stage.program().store().yards().front();
        const auto colony = stage.program().store().colonies(yard.id).front();
        for (int i = 0; i < records::mostWaitingJars; ++i) {
            records::Sample sample;
            sample.id = stage.program().store().newId();
            sample.colonyId = colony.id;
            sample.yardId = yard.id;
            sample.step = records::Step::Pour;
            sample.jar = std::to_string(100 + i);
            sample.startedAtMs = stage.program().services().now().utcMs - minuteMs + i;
            sample.scoopedAtMs = sample.startedAtMs;
            stage.program().store().save(sample);
        }
        QVERIFY(pressMain(stage, 3));
        QVERIFY(press(stage, {"washLater", "toTray"}));
        QVERIFY(!stage.find(QStringLiteral("trayPage")));
        QVERIFY2(tray(stage).problem().startsWith(QLatin1String("40 jars wait already")),
                 qPrintable(tray(stage).problem()));
        QVERIFY(press(stage, {"washNow", "mainAction"})); // and the wash goes on
        QCOMPARE(stage.app().wash()->step(), WashController::Shake);
    }

    void minutesSinceTheScoop() {
        Stage stage(Stage::Demo);
        QVERIFY(scoopOne(stage));
        tray(stage).show(stage.app().here()->yardId());
        QCOMPARE(lineOf(stage, 0), QStringLiteral("0 minutes since the scoop"));
        const auto after = [&](std::int64_t ms) {
            stage.wait(ms);
            tray(stage).show(stage.app().here()->yardId());
            return lineOf(stage, 0);
        };
        QCOMPARE(after(minuteMs), QStringLiteral("1 minute since the scoop"));
        QCOMPARE(after(11 * minuteMs), QStringLiteral("12 minutes since the scoop"));
        QCOMPARE(after(3 * 60 * minuteMs), QStringLiteral("3 hours since the scoop"));
        QVERIFY(after(24 * 60 * minuteMs).startsWith(QLatin1String("scooped on 15 June at")));
        stage.device().clock->setUtc(stage.device().clock->now().utcMs - 60LL * 24 * 60 * minuteMs);
        tray(stage).show(stage.app().here()->yardId());
        QVERIFY2(lineOf(stage, 0).startsWith(QLatin1String("scooped on 15 June")),
                 qPrintable(lineOf(stage, 0)));
    }

    void startsOnHereWhileJarsWaitAndAtTheStepOfAWashBegun() {
        Stage stage(Stage::Demo);
        QVERIFY(scoopOne(stage));
        stage.app().navigator()->home();
        stage.app().start();
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("herePage")));
        QVERIFY(press(stage, {"tray"}));
        tray(stage).washNext();
        stage.settle();
        QVERIFY(pressMain(stage, 1)); // the shake runs
        stage.app().navigator()->home();
        stage.app().start();
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("washPage")));
        QCOMPARE(stage.app().wash()->step(), WashController::Shake);
    }

    // A round says who is next; whoever is in the tray is not asked for again.
    void aRoundScoopedIntoTheTray() {
        Stage stage(Stage::Demo);
        touch::RoundController& round = *stage.app().round();
        QVERIFY(round.show(stage.app().here()->yardId()));
        round.act(); // started, as it is proposed
        const int planned = static_cast<int>(round.left()->entries().size());
        QStringList asked;
        for (int i = 0; i < planned; ++i) {
            stage.app().navigator()->home();
            stage.settle();
            const QString action = stage.app().here()->mainAction();
            QVERIFY2(action.startsWith(QLatin1String("Wash colony")) && !asked.contains(action),
                     qPrintable(action));
            asked.append(action);
            QVERIFY(scoopOne(stage));
            QVERIFY2(tray(stage).mainAction().startsWith(
                         QLatin1String(i + 1 < planned ? "Scoop colony" : "Wash jar")),
                     qPrintable(tray(stage).mainAction()));
        }
        stage.app().navigator()->home();
        stage.settle();
        QCOMPARE(stage.app().here()->mainAction(), QStringLiteral("Wash the jars"));
        round.refresh();
        QCOMPARE(round.mainAction(), QStringLiteral("Wash the jars"));
        QVERIFY(round.left()->entries().first().detail.startsWith(QLatin1String("in the tray: jar")));
        QVERIFY(pressMain(stage, 1));
        QVERIFY(stage.find(QStringLiteral("trayPage")));
    }

    void theWholeYardScooped() {
        Stage stage(Stage::Demo);
        int scooped = 0;
        while (!stage.app().here()->mainAction().startsWith(QLatin1String("Wash the jars")) && scooped < 20) {
            QVERIFY(scoopOne(stage));
            stage.app().navigator()->home();
            stage.settle();
            ++scooped;
        }
        QCOMPARE(scooped, stage.app().here()->colonies()->count());
        QVERIFY(pressMain(stage, 1));
        QVERIFY(tray(stage).mainAction().startsWith(QLatin1String("Wash jar")));
        QVERIFY(tray(stage).washAction().isEmpty());
    }

    // Two jars scooped one after the other, the receiver slow: each gets the place that is known soon
    // after its scoop, and no jar another's.
    void aPositionThatComesLateIsItsOwnJars() {
        Stage stage(Stage::Demo);
        const auto yard = stage.program().store().yards().front();
        stage.standAt(yard.position->latitudeDeg, yard.position->longitudeDeg);
        QVERIFY(scoopOne(stage));
        stage.wait(12'000);
        constexpr double stepDeg = 0.0003; // 33 m on, in the same yard
        stage.standAt(yard.position->latitudeDeg + stepDeg, yard.position->longitudeDeg);
        QVERIFY(scoopOne(stage));
        stage.wait(12'000);
        std::map<std::string, double> places;
        for (const records::Sample& sample : drafts(stage)) {
            QCOMPARE(sample.stamp.state, records::PositionState::Stamped);
            places[sample.jar] = sample.stamp.position.latitudeDeg - yard.position->latitudeDeg;
        }
        QCOMPARE(places.size(), std::size_t{2});
        const auto& entries = tray(stage).jars()->entries();
        QVERIFY(std::abs(places[entries.at(0).label.toStdString()]) < stepDeg / 10);
        QVERIFY(std::abs(places[entries.at(1).label.toStdString()] - stepDeg) < stepDeg / 10);
    }

    // The receiver says nothing until the keeper stands at the next hive: that is not where the first jar
    // was.
    void aPositionThatComesAtTheNextHiveIsNotTheFirstJars() {
        Stage stage(Stage::Demo);
        QVERIFY(scoopOne(stage)); // no fix yet
        QCOMPARE(drafts(stage).front().stamp.state, records::PositionState::Waiting);
        stage.app().navigator()->home();
        stage.settle();
        QVERIFY(pressMain(stage, 1)); // at the next hive
        const auto yard = stage.program().store().yards().front();
        stage.standAt(yard.position->latitudeDeg, yard.position->longitudeDeg);
        stage.wait(12'000);
        const auto jars = drafts(stage);
        const auto first = std::ranges::find_if(jars, [](const auto& jar) { return !jar.jar.empty(); });
        QVERIFY(first != jars.end());
        QCOMPARE(first->stamp.state, records::PositionState::NoFix);
    }

    void emptyTraySaysHowItFills() {
        Stage stage(Stage::Demo);
        stage.app().navigator()->open(touch::Navigator::Tray);
        stage.settle();
        QCOMPARE(tray(stage).title(), QStringLiteral("The tray is empty"));
    }
};

QTEST_MAIN(TrayTest)
#include "tray_test.moc"
