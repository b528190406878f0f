// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Counting the keeper's own scoops through the real pages, and what follows for a wash.
#include "screens.h"

#include "records/judgement.h"
#include "touch/navigator.h"

#include <QTest>

#include <cmath>

using namespace halfcup;
using namespace halfcup::screens;

class ScoopsTest : public QObject {
    Q_OBJECT

    /// A finished wash of half a cup from the demo, open at its answer: the newest, or one so many before it.
    static records::Sample openAnswer(Stage& stage, std::size_t before = 0) {
        std::vector<records::Sample> washes;
        stage.program().store().forEachSample([&](const records::Sample& sample) {
            if (sample.answer && sample.scoop.volumeMl == records::halfCupMl &&
                sample.scoop.packing == records::Packing::Loose)
                washes.insert(washes.begin(), sample);
        });
        const records::Sample wash = washes.at(before);
        stage.app().answer()->show(QString::fromStdString(wash.id));
        stage.app().navigator()->home();
        stage.app().navigator()->open(touch::Navigator::Answer);
        stage.settle();
        return wash;
    }

    static bool openCount(Stage& stage) {
        stage.app().answer()->countBees();
        stage.settle();
        stage.picture(); // drawn once, so that all of it lies where it will be touched
        return stage.find(QStringLiteral("countBeesPage")) != nullptr;
    }

    static bool count(Stage& stage, const char* bees, std::size_t before = 0) {
        openAnswer(stage, before);
        return openCount(stage) && type(stage, "bees", bees) && !stage.picture().isNull() &&
               stage.touch(QStringLiteral("mainAction"));
    }

private slots:
    // Five invented scoops; computed by other means beforehand: median 336, mean 337.9, CV 0.099, and 9 mites
    // read 2.9 per 100 (1.2 to 6.9) with a chance of 46 % of being over 3: close to the line, not over it.
    void fiveScoopsChangeWhatNineMitesMean() {
        Stage stage(Stage::Demo);
        std::size_t wash = 0;
        for (const char* bees : {"352", "340", "361", "349", "358"})
            QVERIFY(count(stage, bees, wash++));
        QCOMPARE(stage.program().store().scoopCounts().size(), std::size_t{5});
        touch::ScoopController* scoop = stage.app().wash()->scoop();
        scoop->useUsual();
        QCOMPARE(std::round(scoop->value().beesMean * 10) / 10, 337.9);
        QCOMPARE(std::round(scoop->value().beesCv * 1000) / 1000, 0.099);
        QCOMPARE(scoop->value().source, records::Scoop::BeesSource::OwnScoops);
        QCOMPARE(scoop->sourceLine(), QStringLiteral("from your 5 counted scoops"));
        QVERIFY(scoop->beesLine().contains(QLatin1String("336")));

        stage.app().navigator()->home();
        stage.settle();
        QVERIFY(toTheAnswer(stage, 9)); // a wash from its first page to its answer
        records::Sample washed;
        stage.program().store().forEachSample([&](const records::Sample& sample) {
            if (sample.scoop.source == records::Scoop::BeesSource::OwnScoops)
                washed = sample; // the only one: the five were counted themselves
        });
        QVERIFY(washed.answer.has_value());
        QCOMPARE(washed.scoop.source, records::Scoop::BeesSource::OwnScoops);
        QCOMPARE(washed.answer->mites, 9);
        const auto tenths = [](double value) { return std::round(value * 10) / 10; };
        QCOMPARE(tenths(washed.answer->loadQ50), 2.9);
        QCOMPARE(tenths(washed.answer->loadQ05), 1.2);
        QCOMPARE(tenths(washed.answer->loadQ95), 6.9);
        QCOMPARE(std::round(washed.answer->chanceOver * 100), 46.0);
        QVERIFY(records::graverStanding(washed) == mites::Standing::Close);
        QVERIFY2(stage.app().answer()->headline().startsWith(QStringLiteral("Close to your line")),
                 qPrintable(stage.app().answer()->headline()));

        stage.app().navigator()->open(touch::Navigator::OwnScoops);
        stage.settle();
        QCOMPARE(stage.app().ownScoops()->summary(),
                 QStringLiteral("336 bees in half a cup, from 5 counted scoops"));
        // e^(mu -+ 1.645 s) = 285.76 to 395.62, the update of mites/scoop.h worked in a few lines of Python
        QVERIFY2(stage.app().ownScoops()->rangeLine().contains(QStringLiteral("286 to 396")),
                 qPrintable(stage.app().ownScoops()->rangeLine()));

        scoop->choose(QStringLiteral("100-ml")); // another size: the book again
        QCOMPARE(scoop->value().source, records::Scoop::BeesSource::Book);
    }

    void theWashIsJudgedAnewAndItsHistoryKept() {
        Stage stage(Stage::Demo);
        const records::Sample before = openAnswer(stage);
        QVERIFY(openCount(stage));
        QVERIFY(type(stage, "bees", "250"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY(stage.find(QStringLiteral("answerPage")));
        const records::Sample after = *stage.program().store().sample(before.id);
        QCOMPARE(after.scoop.source, records::Scoop::BeesSource::Counted);
        QCOMPARE(after.scoop.beesMean, 250.0);
        QVERIFY(after.answer->loadQ50 > before.answer->loadQ50);
        QCOMPARE(after.answer->lines, before.answer->lines);
        int answers = 0;
        for (const auto& past : stage.program().store().history(records::Kind::Sample, before.id))
            answers += past.field == "load_q50";
        QCOMPARE(answers, 2);
    }

    void aJarCountedAgainIsStillOneScoop() {
        Stage stage(Stage::Demo);
        QVERIFY(count(stage, "352"));
        QVERIFY(count(stage, "340"));
        const auto counts = stage.program().store().scoopCounts();
        QCOMPARE(counts.size(), std::size_t{1});
        QCOMPARE(counts.front().bees, 340.0);
    }

    void beesAreCountedByTouchAsWell() {
        Stage stage(Stage::Demo);
        openAnswer(stage);
        QVERIFY(openCount(stage));
        for (int tens = 0; tens < 31; ++tens)
            QVERIFY(stage.touch(QStringLiteral("tenMore")));
        QVERIFY(stage.touch(QStringLiteral("oneMore")));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QCOMPARE(stage.program().store().scoopCounts().front().bees, 311.0);
        QVERIFY(openCount(stage));
        QVERIFY(type(stage, "bees", "many")); // a touch does not wipe what is typed
        stage.picture();
        QVERIFY(stage.touch(QStringLiteral("tenMore")));
        QCOMPARE(stage.find(QStringLiteral("bees"))->property("text").toString(), QStringLiteral("many"));
        QVERIFY(!stage.app().ownScoops()->problem().isEmpty());
    }

    void oddCountsAreAskedAboutAndNeverDropped() {
        Stage stage(Stage::Demo);
        for (const char* bees : {"30", "3000"}) {
            QVERIFY(count(stage, bees));
            QVERIFY(
                stage.app().ownScoops()->question().contains(QLocale().toString(QByteArray(bees).toInt())));
            QVERIFY(stage.touch(QStringLiteral("countAgain")));
        }
        QVERIFY(stage.program().store().scoopCounts().empty());
        QVERIFY(count(stage, "30"));
        QVERIFY(stage.touch(QStringLiteral("keepAllTheSame")));
        QCOMPARE(stage.program().store().scoopCounts().size(), std::size_t{1});
        QVERIFY(stage.program().store().scoopCounts().front().odd);
    }

    void whatIsNoCountIsToldAndNothingKept() {
        Stage stage(Stage::Demo);
        for (const char* bees : {"many", "", "-5", "9", "5001", "300.5"}) {
            QVERIFY(count(stage, bees));
            QVERIFY2(!stage.app().ownScoops()->problem().isEmpty(), bees);
        }
        QVERIFY(stage.program().store().scoopCounts().empty());
    }

    // 18.3 g are 100 drained bees (Aurell et al. 2024, J Insect Sci), 10 g 100 live ones (a German wash
    // scale).
    void massAsksWhatWasWeighed() {
        Stage stage(Stage::Demo);
        openAnswer(stage);
        QVERIFY(openCount(stage));
        QVERIFY(stage.touch(QStringLiteral("howSecond")));
        QVERIFY(type(stage, "bees", "61"));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QVERIFY(stage.app().ownScoops()->problem().contains(QStringLiteral("drained or alive")));
        stage.app().ownScoops()->pickState(QStringLiteral("drained"));
        QVERIFY(stage.app().ownScoops()->massLine().startsWith(QStringLiteral("18.3 g")));
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        const records::Sample drained = openAnswer(stage);
        QVERIFY(std::abs(drained.scoop.beesMean - 61 / 0.183) < 10);
        QVERIFY(openCount(stage));
        stage.app().ownScoops()->setWeighs(true);
        stage.app().ownScoops()->pickState(QStringLiteral("alive"));
        QVERIFY(stage.app().ownScoops()->massLine().startsWith(QStringLiteral("10.0 g")));
        QVERIFY(stage.app().ownScoops()->keep(QStringLiteral("33")));
        const records::Sample alive = openAnswer(stage);
        QVERIFY(std::abs(alive.scoop.beesMean - 330) < 10);
        QVERIFY(stage.program().store().scoopCounts().empty()); // a mass is no scoop of the keeper's own
    }

    void aScoopCanBeLeftOut() {
        Stage stage(Stage::Demo);
        QVERIFY(count(stage, "352"));
        stage.app().navigator()->home();
        stage.app().navigator()->open(touch::Navigator::OwnScoops);
        stage.settle();
        QVERIFY(stage.app().ownScoops()->summary().contains(QStringLiteral("from 1 counted scoop")));
        QVERIFY(stage.app().ownScoops()->bookFigures()->count() >= 2);
        const QString key = stage.app().ownScoops()->counts()->entries().front().key;
        stage.picture();
        QVERIFY(stage.touch(QStringLiteral("count-") + key));
        stage.picture();
        QVERIFY(stage.touch(QStringLiteral("takeItOut")));
        QVERIFY(stage.program().store().scoopCounts().empty());
        QVERIFY(stage.app().ownScoops()->summary().startsWith(QStringLiteral("No scoop counted yet")));
    }
};

QTEST_MAIN(ScoopsTest)
#include "scoops_test.moc"
