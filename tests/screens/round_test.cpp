// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Yard rounds on the demo's yard, touched through on the real pages with a set clock. With HALFCUP_PICTURES
// set to a folder, the pictures are left there.
#include "measure.h"

#include "mites/yard_mean.h"
#include "touch/navigator.h"
#include "touch/words.h"

#include <QDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using touch::RoundController;

class RoundTest : public QObject {
    Q_OBJECT

    static RoundController& round(Stage& stage) { return *stage.app().round(); }

    static QString text(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QStringLiteral("(not there)");
    }

    static QString mainAction(Stage& stage) { return text(stage, "mainAction"); }

    /// From the page whose main action begins the wash to the answer.
    static bool wash(Stage& stage, int mites) {
        if (!press(stage, {"mainAction", "mainAction", "mainAction", "mainAction"}))
            return false;
        stage.wait(61'000);
        if (!press(stage, {"mainAction", "mainAction"}))
            return false;
        return stage.app().wash()->count()->type(QString::number(mites)) && press(stage, {"mainAction"}) &&
               (mites > 0 || press(stage, {"noneFound"})) && press(stage, {"skipRinse"}) &&
               stage.find(QStringLiteral("answerPage"));
    }

    static void home(Stage& stage) {
        stage.app().navigator()->home();
        stage.settle();
    }

    static std::vector<records::Round> kept(Stage& stage) {
        return stage.program().store().roundsOf(stage.app().here()->yardId().toStdString());
    }

    static bool plan(Stage& stage) {
        return press(stage, {"yardRound"}) && stage.find(QStringLiteral("roundPage"));
    }

    static QString labelOf(Stage& stage, const records::RecordId& id) {
        return QString::fromStdString(stage.program().store().colony(id)->label);
    }

    static void happens(Stage& stage, const records::RecordId& colony, records::EventKind kind) {
        records::ColonyEvent event;
        event.id = stage.program().store().newId();
        event.colonyId = colony;
        event.yardId = stage.app().here()->yardId().toStdString();
        event.kind = kind;
        event.day = stage.program().services().today();
        event.recordedAtMs = stage.program().services().now().utcMs;
        stage.program().store().save(event);
    }

private slots:
    void threeBadColoniesEndItEarly() {
        Stage stage(Stage::Demo);
        const auto living = stage.app().here()->colonies()->count();
        QVERIFY(living > 3);
        QVERIFY(plan(stage));
        QCOMPARE(round(stage).view(), RoundController::Planning);
        QVERIFY(kept(stage).empty());
        QVERIFY(press(stage, {"mainAction"})); // by chance, as many as the handbook says
        QCOMPARE(kept(stage).size(), std::size_t{1});
        const records::Round begun = kept(stage).front();
        QCOMPARE(static_cast<int>(begun.colonyIds.size()), std::min(8, living));
        QCOMPARE(round(stage).view(), RoundController::Going);
        QVERIFY(!stage.find(QStringLiteral("clearLine")));
        for (std::size_t i = 0; i < 3; ++i) {
            QVERIFY(mainAction(stage).contains(labelOf(stage, begun.colonyIds[i])));
            QVERIFY2(wash(stage, 60), qPrintable(QString::number(i)));
            home(stage); // and the Here page follows the round
            const QString line =
                QStringLiteral("Round: %1 of %2 washed").arg(i + 1).arg(begun.colonyIds.size());
            QCOMPARE(stage.app().here()->roundLine(), line);
            QVERIFY(!stage.find(QStringLiteral("yardRound"))); // no second one
            QVERIFY(mainAction(stage).contains(labelOf(stage, begun.colonyIds[i + 1])));
            QVERIFY(press(stage, {"openRound"}));
            QCOMPARE(round(stage).washed()->count(), static_cast<int>(i) + 1);
            QCOMPARE(stage.find(QStringLiteral("clearLine")) != nullptr, i == 2);
        }
        QVERIFY(text(stage, "clearLine")
                    .startsWith(QLatin1String("The answer is clear: the yard is over its line")));
        QVERIFY(press(stage, {"endRound"}));
        QCOMPARE(round(stage).view(), RoundController::Ended);
        QCOMPARE(text(stage, "headline"), QStringLiteral("Over your line"));
        QVERIFY(kept(stage).front().endedAtMs);

        // The page's figures are those of mites for these counts: the book's half cup, its own spread 0.1
        // of each scoop and the rest common to all.
        const records::Scoop scoop = stage.program().store().samplesOf(begun.colonyIds[0]).front().scoop;
        std::vector<mites::Wash> washes(3, mites::Wash{60, scoop.beesMean, std::min(scoop.beesCv, 0.1)});
        const double shared = std::sqrt(std::log((1 + scoop.beesCv * scoop.beesCv) / 1.01));
        const auto load = mites::YardMean(washes, living, scoop.beesCv > 0.1 ? shared : 0).estimate();
        QCOMPARE(text(stage, "sentence"),
                 QStringLiteral(
                     "About %1 mites on every 100 bees in this yard. It could be anything from %2 to %3.")
                     .arg(touch::words::load(load.q50), touch::words::load(load.q05),
                          touch::words::load(load.q95)));
        QVERIFY(text(stage, "fromLine").startsWith(QStringLiteral("From 3 of the %1").arg(living)));
        QVERIFY(!round(stage).leftOut().isEmpty());
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.find(QStringLiteral("herePage")));
        QVERIFY(stage.app().here()->roundLine().isEmpty());

        QVERIFY(plan(stage)); // an old answer can be read again
        QCOMPARE(round(stage).earlier()->count(), 1);
        const QByteArray row = "round-" + QByteArray::fromStdString(begun.id);
        QVERIFY(press(stage, {row.constData()}));
        QCOMPARE(text(stage, "headline"), QStringLiteral("Over your line"));
    }

    // The keeper's own, stricter line is the one that a round is held against.
    void ownLineDecides() {
        Stage stage(Stage::Demo);
        records::Yard yard = *stage.program().store().yard(stage.app().here()->yardId().toStdString());
        yard.lines.own = 1.7;
        stage.program().store().save(yard);
        QVERIFY(plan(stage));
        QVERIFY(press(stage, {"mainAction"}));
        for (int i = 0; i < 3; ++i) {
            home(stage);
            QVERIFY(wash(stage, 20));
        }
        home(stage);
        QVERIFY(press(stage, {"openRound"}));
        QVERIFY2(round(stage).clearLine().contains(QLatin1String("over its line of 1.7")),
                 qPrintable(round(stage).clearLine()));
    }

    void skippedColonyGivesItsPlaceToAnother() {
        Stage stage(Stage::Demo);
        QVERIFY(plan(stage));
        QVERIFY(press(stage, {"way-hand"}));
        QVERIFY(!stage.find(QStringLiteral("mainAction"))); // nothing picked yet
        QVERIFY(text(stage, "handLine").contains(QLatin1String("too high")));
        QVERIFY(press(stage, {"hand-0", "hand-1", "hand-2", "hand-1", "mainAction"}));
        const records::Round begun = kept(stage).front();
        QCOMPARE(begun.colonyIds.size(), std::size_t{2}); // one was touched twice
        QCOMPARE(begun.picked, records::Round::Picked::ByKeeper);
        QVERIFY(press(stage, {"skip"}));
        const records::Round swapped = kept(stage).front();
        QCOMPARE(swapped.colonyIds.size(), std::size_t{2});
        QCOMPARE(swapped.colonyIds[1], begun.colonyIds[1]);
        QVERIFY(swapped.colonyIds[0] != begun.colonyIds[0]);
        for (int i = 0; i < 100 && kept(stage).front().colonyIds.size() > 1; ++i)
            QVERIFY(press(stage, {"skip"})); // none is drawn twice, so it comes to an end
        QCOMPARE(kept(stage).front().colonyIds.size(), std::size_t{1});
        QVERIFY(!stage.find(QStringLiteral("skip"))); // one colony at least
        QVERIFY(press(stage, {"endRound", "goOn"}));
        QVERIFY(!kept(stage).front().endedAtMs);
        QVERIFY(press(stage, {"endRound", "endAllTheSame"}));
        QCOMPARE(text(stage, "headline"), QStringLiteral("No answer"));
    }

    void colonyThatDiesIsLeftOut() {
        Stage stage(Stage::Demo);
        QVERIFY(plan(stage));
        QVERIFY(press(stage, {"way-all", "mainAction"}));
        const records::Round begun = kept(stage).front();
        QCOMPARE(begun.picked, records::Round::Picked::All);
        QVERIFY(wash(stage, 2));
        happens(stage, begun.colonyIds[1], records::EventKind::Dead);
        home(stage);
        QCOMPARE(stage.app().here()->roundLine(),
                 QStringLiteral("Round: 1 of %1 washed").arg(begun.colonyIds.size() - 1));
        QVERIFY(mainAction(stage).contains(labelOf(stage, begun.colonyIds[2])));
        QVERIFY(press(stage, {"openRound", "endRound", "endAllTheSame"}));
        QVERIFY(round(stage).leftOut().first().contains(labelOf(stage, begun.colonyIds[1])));
        QVERIFY(round(stage).leftOut().first().startsWith(QLatin1String("No longer in this yard")));
    }

    void twoColoniesAreBothWashed() {
        Stage stage(Stage::Demo);
        const auto entries = stage.app().here()->colonies()->entries();
        for (qsizetype i = 2; i < entries.size(); ++i)
            happens(stage, entries[i].colonyId.toStdString(), records::EventKind::Dead);
        stage.app().here()->refresh();
        stage.settle();
        QVERIFY(plan(stage));
        QCOMPARE(text(stage, "planLine"), QStringLiteral("Two colonies stand here: wash both."));
        QVERIFY(!stage.find(QStringLiteral("way-random")));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(kept(stage).front().colonyIds.size(), std::size_t{2});
        QVERIFY(wash(stage, 0));
        home(stage);
        QVERIFY(wash(stage, 0));
        home(stage);
        QCOMPARE(mainAction(stage), QStringLiteral("End the round"));
        QVERIFY(press(stage, {"mainAction", "mainAction"}));
        QVERIFY(text(stage, "sentence").startsWith(QLatin1String("None found.")));
    }

    void pagesAreInOrder_data() {
        QTest::addColumn<QSize>("size");
        for (const QSize& size : {QSize(320, 568), QSize(360, 740), QSize(412, 915)})
            QTest::addRow("%d x %d", size.width(), size.height()) << size;
    }

    void pagesAreInOrder() {
        QFETCH(const QSize, size);
        Stage stage(Stage::Demo, size);
        QStringList wrong;
        const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
        const auto look = [&](const char* screen) {
            wrong += whatIsWrong(stage, QLatin1String(screen));
            if (!folder.isEmpty())
                stage.picture().save(QDir(folder).filePath(
                    QStringLiteral("%1 %2.png").arg(QLatin1String(screen)).arg(size.width())));
        };
        QVERIFY(plan(stage));
        look("round planned");
        QVERIFY(press(stage, {"way-hand", "hand-0", "hand-1", "hand-2", "hand-3"}));
        look("round picked by hand");
        QVERIFY(press(stage, {"mainAction"}));
        look("round begun");
        QVERIFY(press(stage, {"endRound"}));
        look("round end asked");
        QVERIFY(press(stage, {"goOn"}));
        for (const int mites : {60, 61, 62}) {
            QVERIFY(wash(stage, mites));
            home(stage);
            if (mites == 61)
                look("here with a round");
            QVERIFY(press(stage, {"openRound"}));
        }
        look("round clear");
        QVERIFY(press(stage, {"endRound"}));
        look("round ended");
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong.join(u'\n')));
        QVERIFY2(stage.program().qmlWarnings().isEmpty(),
                 qPrintable(stage.program().qmlWarnings().join(u'\n')));
    }
};

QTEST_MAIN(RoundTest)
#include "round_test.moc"
