// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "stage.h"

#include "touch/words.h"

#include <SQLiteCpp/Database.h>

#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;
using touch::WashController;

/// The wash, touched through on the real pages with a set clock, and what it says at the end.
class WashTest : public QObject {
    Q_OBJECT

    static bool toTheCount(Stage& stage) {
        for (int i = 0; i < 4; ++i) // the main action of Here, queen, scoop, pour
            if (!stage.touch(QStringLiteral("mainAction")))
                return false;
        stage.wait(61'000);
        if (!stage.touch(QStringLiteral("mainAction"))) // shaken
            return false;
        stage.wait(31'000);
        return stage.touch(QStringLiteral("mainAction")); // settled
    }

private slots:
    void fourTouchesToTheRunningTimer() {
        Stage stage(Stage::Demo);
        for (int i = 0; i < 4; ++i)
            QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QCOMPARE(stage.app().wash()->step(), WashController::Shake);
        QCOMPARE(stage.app().wash()->shake()->phase(), touch::ShakeController::FirstHalf);
        QVERIFY(stage.device().keepAwake->isHeld());
        stage.wait(61'000);
        QVERIFY(!stage.device().keepAwake->isHeld());
        QCOMPARE(stage.device().tones->count(device::Tone::End), 1);
    }

    // The clock of the second shake is looked at as often as that of the first.
    void theSecondShakeShowsItsSecondsToo() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheCount(stage));
        WashController& wash = *stage.app().wash();
        wash.noneWasFound();
        wash.skipSecondRinse();
        stage.app().navigator()->home();
        stage.settle();
        for (int i = 0; i < 4; ++i)
            QVERIFY(stage.touch(QStringLiteral("mainAction")));
        QCOMPARE(wash.step(), WashController::Shake);
        stage.device().clock->advance(12'000);
        QTest::qWait(600); // more than two looks, less than a second
        QCOMPARE(wash.shake()->secondsLeft(), 48);
    }

    // The app was left open on the way to another yard.
    void hereLooksAgainAfterAWhile() {
        Stage stage(Stage::Demo);
        stage.wait(31'000); // nothing came: the receiver is off
        QVERIFY(!stage.program().services().position.isRunning());
        touch::Navigator& navigator = *stage.app().navigator();
        navigator.open(touch::Navigator::Setup);
        navigator.home();
        QVERIFY(!stage.program().services().position.isRunning()); // just looked
        stage.device().clock->advance(11 * 60'000);
        navigator.open(touch::Navigator::Setup);
        navigator.home();
        QVERIFY(stage.program().services().position.isRunning());
    }

    void everyTouchCounts() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheCount(stage));
        QQuickItem* field = stage.find(QStringLiteral("countField"));
        QVERIFY(field);
        const QPoint at = field->mapToScene(QPointF(field->width() / 2, field->height() / 2)).toPoint();
        constexpr int touches = 60;
        for (int i = 0; i < touches; ++i) { // far more than twenty a second
            QTest::mousePress(stage.window(), Qt::LeftButton, {}, at);
            QTest::mouseRelease(stage.window(), Qt::LeftButton, {}, at);
        }
        QCOMPARE(stage.app().wash()->count()->mites(), touches);
        const auto drafts = stage.program().store().drafts();
        QCOMPARE(drafts.size(), std::size_t{1});
        QCOMPARE(stage.program().store().countEvents(drafts.front().id).size(), std::size_t{touches});
        stage.device().volumeKeys->pressUp();
        QCOMPARE(stage.app().wash()->count()->mites(), touches + 1);
        QVERIFY(stage.touch(QStringLiteral("undo")));
        QCOMPARE(stage.app().wash()->count()->mites(), touches);
    }

    // What half a cup by the book says, treat line 3. The figures: an adaptive integration in R of the same
    // model (the reference tables' route); 9 in half a cup as the line itself: common practice, no source.
    void answers_data() {
        QTest::addColumn<QString>("mites");
        QTest::addColumn<QString>("ownLine");
        QTest::addColumn<QString>("headline");
        QTest::addColumn<QString>("inSentence");
        QTest::addColumn<QString>("inChance");
        QTest::addColumn<QString>("inOther");
        QTest::newRow("nine") << "9"
                              << ""
                              << "Over your line"
                              << "About 3.2 mites"
                              << "over 3: 55 %"
                              << "";
        QTest::newRow("nine, range") << "9"
                                     << ""
                                     << "Over your line"
                                     << "1.4 to 7.8"
                                     << "55 %"
                                     << "";
        QTest::newRow("eight") << "8"
                               << ""
                               << "Close to your line"
                               << "2.9"
                               << "46 %"
                               << "";
        QTest::newRow("five, own line 1.7") << "5"
                                            << "1.7"
                                            << "Over your line"
                                            << "1.8"
                                            << "over 1.7: 54 %"
                                            << "Under your line (19.6 %)";
        QTest::newRow("none") << "0"
                              << ""
                              << "Under your line"
                              << "0 to 0.8"
                              << "under 1 %"
                              << "";
    }

    void answers() {
        QFETCH(QString, mites);
        QFETCH(QString, ownLine);
        Stage stage(Stage::Demo);
        touch::App& app = stage.app();
        app.yards()->edit(app.here()->yardId());
        QVERIFY(app.yards()->save(QStringLiteral("Alder Bend"), QStringLiteral("3"), ownLine));
        app.navigator()->home();
        stage.settle();
        QVERIFY(toTheCount(stage));
        QVERIFY(app.wash()->count()->type(mites));
        app.wash()->endCount();
        app.wash()->skipSecondRinse();
        stage.settle();
        QCOMPARE(app.navigator()->page(), touch::Navigator::Answer);
        const touch::AnswerController& answer = *app.answer();
        QTEST(answer.headline(), "headline");
        QFETCH(QString, inSentence);
        QVERIFY2(answer.sentence().contains(inSentence), qPrintable(answer.sentence()));
        QFETCH(QString, inChance);
        QVERIFY2(answer.chanceLine().contains(inChance), qPrintable(answer.chanceLine()));
        QFETCH(QString, inOther);
        QVERIFY2(answer.ownLine().contains(inOther), qPrintable(answer.ownLine()));
        QCOMPARE(answer.zeroLine().isEmpty(), mites != QLatin1String("0"));
    }

    void theScreenIsBrightWhileMitesAreCountedByDay() {
        Stage stage(Stage::Demo);
        QVERIFY(!stage.device().brightness->isRaised());
        QVERIFY(toTheCount(stage));
        QVERIFY(stage.device().brightness->isRaised());
        QVERIFY(stage.touch(QStringLiteral("mainAction")) &&
                stage.touch(QStringLiteral("noneFound"))); // nothing was touched
        QVERIFY(stage.device().brightness->isRaised());    // a second rinse may be counted
        stage.app().wash()->skipSecondRinse();
        QVERIFY(!stage.device().brightness->isRaised());
    }

    void atDuskTheScreenStaysAsItIs() {
        Stage stage(Stage::Demo);
        stage.setDusk(true);
        QVERIFY(toTheCount(stage));
        QVERIFY(!stage.device().brightness->isRaised());
    }

    void whatCannotBeACountIsRefused() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheCount(stage));
        touch::CountController& count = *stage.app().wash()->count();
        for (const char* text : {"10001", "-1", "2.5", "", "nine", "1e9"}) {
            QVERIFY2(!count.type(QLatin1String(text)), text);
            QVERIFY2(!count.problem().isEmpty(), text);
        }
        QVERIFY(!count.isTouched());
        touch::ScoopController& scoop = *stage.app().wash()->scoop();
        for (const char* text : {"0", "-3", "9999999", "", "cup"})
            QVERIFY2(!scoop.typeVolume(QLatin1String(text)), text);
        for (const char* text : {"0", "-300", "300.5", "1000000"})
            QVERIFY2(!scoop.typeBees(QLatin1String(text)), text);
    }

    // Another program holds the database: the page stays where the disk is, says so, and goes on afterwards.
    void aRefusedWriteLeavesThePageWhereTheDiskIs() {
        Stage stage(Stage::Demo);
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        const std::string id = stage.program().store().drafts().front().id;
        {
            SQLite::Database other(stage.program().store().path(), SQLite::OPEN_READWRITE);
            other.exec("BEGIN IMMEDIATE");
            stage.app().wash()->queenSafe();
            QCOMPARE(stage.app().wash()->step(), WashController::Safety);
            QVERIFY(stage.app().wash()->queenAnswer().isEmpty());
            QVERIFY(!stage.app().messages()->text().isEmpty());
            other.exec("ROLLBACK");
        }
        QCOMPARE(stage.program().store().sample(id)->queen, records::Queen::NotAsked);
        stage.app().messages()->dismiss();
        stage.app().wash()->queenSafe();
        QCOMPARE(stage.app().wash()->step(), WashController::Scoop);
        QCOMPARE(stage.program().store().sample(id)->queen, records::Queen::SeenAndSafe);
    }

    void abandonedIsKept() {
        Stage stage(Stage::Demo);
        QVERIFY(stage.touch(QStringLiteral("mainAction")));
        const std::string id = stage.program().store().drafts().front().id;
        stage.app().wash()->abandon();
        QCOMPARE(stage.app().navigator()->page(), touch::Navigator::Here);
        QCOMPARE(stage.program().store().sample(id)->state, records::SampleState::Abandoned);
        QVERIFY(stage.program().store().drafts().empty());
    }

    void theLeftHandHasItMirrored() {
        Stage stage(Stage::Demo);
        const auto place = [&](const char* name) {
            return stage.find(QLatin1String(name))->mapToScene(QPointF(0, 0)).x();
        };
        const bool before = place("yards") < place("season");
        stage.setLeftHand(true);
        QVERIFY(!stage.picture().isNull()); // a row is laid out anew with the next frame
        QCOMPARE(place("yards") < place("season"), !before);
    }

    void oneAndMany() {
        QCOMPARE(touch::words::mites(1), QStringLiteral("1 mite"));
        QCOMPARE(touch::words::mites(2), QStringLiteral("2 mites"));
        QCOMPARE(touch::words::mites(0), QStringLiteral("0 mites"));
    }
};

QTEST_MAIN(WashTest)
#include "wash_test.moc"
