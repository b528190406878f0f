// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Each way of counting, touched through on the real pages with a set clock. The figures of the answers are
// checked in season_boards and records_methods; here that they reach the page and the disk.
#include "screens.h"

#include "touch/navigator.h"
#include "touch/standing_word.h"

#include <QTest>

#include <cmath>

using namespace halfcup;
using namespace halfcup::screens;
using touch::WashController;

namespace {

constexpr std::int64_t hourMs = 3'600'000;
constexpr std::int64_t dayMs = 24 * hourMs;

} // namespace

class MethodsTest : public QObject {
    Q_OBJECT

    static QString colonyId(Stage& stage) {
        for (const auto& entry : stage.app().here()->colonies()->entries()) // whatever is most urgent
            if (entry.label == QLatin1String("4"))
                return entry.colonyId;
        return {};
    }

    static QString loadLine(Stage& stage) {
        for (const auto& entry : stage.app().here()->colonies()->entries())
            if (entry.label == QLatin1String("4"))
                return entry.loadLine;
        return {};
    }

    /// From a colony's page to the first page of a method.
    static bool begin(Stage& stage, const char* method) {
        stage.app().here()->openColony(colonyId(stage));
        stage.settle();
        return stage.touch(QStringLiteral("countAnotherWay")) &&
               stage.touch(QStringLiteral("method-") + QLatin1String(method));
    }

    static bool type(Stage& stage, const char* digits) {
        for (const char* digit = digits; *digit; ++digit)
            if (!stage.touch(QStringLiteral("key") + QLatin1Char(*digit)))
                return false;
        return stage.touch(QStringLiteral("keyKeep"));
    }

    static QString text(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QStringLiteral("(not there)");
    }

    static records::Sample newest(Stage& stage) {
        return stage.program().store().samplesOf(colonyId(stage).toStdString()).front();
    }

    static void writeFloor(Stage& stage, records::Floor floor) {
        records::ColonyEvent event;
        event.id = stage.program().store().newId();
        event.colonyId = colonyId(stage).toStdString();
        event.yardId = stage.app().here()->yardId().toStdString();
        event.kind = records::EventKind::Floor;
        event.floor = floor;
        event.day = stage.program().services().today();
        event.recordedAtMs = stage.program().services().now().utcMs;
        stage.program().store().save(event);
    }

    /// A board laid under a screened floor; 17 July, 32 days after the stage.s 15 June.
    static bool layInJuly(Stage& stage) {
        stage.device().clock->advance(32 * dayMs);
        writeFloor(stage, records::Floor::Screened);
        return begin(stage, "sticky_board") && press(stage, {"mainAction"});
    }

    static bool takeUp(Stage& stage) {
        const QString id = QString::fromStdString(newest(stage).id);
        const bool there = stage.app().wash()->resume(id);
        stage.app().navigator()->open(touch::Navigator::Wash);
        stage.settle();
        return there;
    }

private slots:
    void soapyWaterIsAWashThatDoesNotBurn() {
        Stage stage(Stage::Demo);
        QVERIFY(begin(stage, "soapy_wash"));
        for (const QString& caution : stage.app().wash()->cautions())
            QVERIFY(!caution.contains(QLatin1String("burn")));
        QVERIFY(press(stage, {"mainAction", "mainAction"}));
        QVERIFY(stage.app().wash()->lines().join(u' ').contains(QLatin1String("washing-up")));
        QVERIFY(stage.app().wash()->maySetAside());
        QVERIFY(press(stage, {"mainAction"}));
        stage.wait(61'000);
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.app().wash()->settleSecondsLeft(), 60); // foam takes its time
        stage.wait(61'000);
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.app().wash()->count()->type(QStringLiteral("9")));
        QVERIFY(press(stage, {"mainAction", "skipRinse"}));
        const records::Sample sample = newest(stage);
        QCOMPARE(sample.method, std::string("soapy_wash"));
        QVERIFY(sample.answer && std::abs(sample.answer->loadQ50 - 3.20871) < 1e-4); // as an alcohol wash
        QCOMPARE(text(stage, "headline"), QStringLiteral("Over your line"));
    }

    // 43 mites on 310 bees: 13.9 per 100 before recovery.
    void sugarRoll() {
        Stage stage(Stage::Demo);
        QVERIFY(begin(stage, "sugar_roll"));
        QVERIFY(press(stage, {"mainAction"})); // the queen
        QVERIFY(stage.app().wash()->scoop()->typeBees(QStringLiteral("310")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(!stage.app().wash()->maySetAside()); // these bees are to live
        QVERIFY(!stage.find(QStringLiteral("washLater")));
        QVERIFY(press(stage, {"mainAction"})); // all white
        QCOMPARE(stage.app().wash()->step(), WashController::Settle);
        QCOMPARE(stage.app().wash()->settleSecondsLeft(), 120);
        stage.wait(121'000);
        QVERIFY(stage.app().wash()->settleLine().startsWith(QLatin1String("Rested")));
        QVERIFY(press(stage, {"mainAction"})); // the shake begins with it
        QCOMPARE(stage.app().wash()->step(), WashController::Shake);
        QCOMPARE(stage.app().wash()->shake()->phase(), touch::ShakeController::FirstHalf);
        QVERIFY(stage.app().wash()->shake()->word().contains(QLatin1String("white plate")));
        stage.wait(61'000);
        QCOMPARE(stage.app().wash()->shake()->stopAction(), QStringLiteral("Count the mites"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.app().wash()->step(), WashController::Count);
        QVERIFY(stage.app().wash()->count()->type(QStringLiteral("43")));
        QVERIFY(press(stage, {"mainAction"})); // no second rinse
        QVERIFY(stage.find(QStringLiteral("answerPage")));
        const records::Sample sample = newest(stage);
        QCOMPARE(sample.shake.shakenBeforeMs, std::int64_t{60'000});
        QCOMPARE(sample.answer->recovery, 0.9);
        QString details;
        for (const auto& entry : stage.app().answer()->details()->entries())
            details += QStringLiteral("%1: %2\n").arg(entry.title, entry.detail);
        QVERIFY2(details.contains(QLatin1String("13.9 per 100, before recovery")), qPrintable(details));
        QVERIFY2(details.contains(QLatin1String("90 % of what a wash finds, give or take 8")),
                 qPrintable(details));
    }

    void backFromShakingOutRestsOnceMore() {
        Stage stage(Stage::Demo);
        QVERIFY(begin(stage, "sugar_roll"));
        QVERIFY(press(stage, {"mainAction", "mainAction", "mainAction", "mainAction"}));
        QCOMPARE(stage.app().wash()->step(), WashController::Shake);
        stage.wait(61'000);
        QVERIFY(press(stage, {"mainAction", "back"})); // from the count: shaken out once more
        QCOMPARE(stage.app().wash()->step(), WashController::Settle);
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.app().wash()->shake()->phase(), touch::ShakeController::FirstHalf);
    }

    // 12 in 24 hours of July: the handbook's reading (Germany, July, over 10 a day: treat at once; quoted).
    void boardOfADayInJuly() {
        Stage stage(Stage::Demo);
        const QString loadBefore = loadLine(stage);
        QVERIFY(layInJuly(stage));
        records::Sample board = newest(stage);
        QVERIFY(records::waits(board) && board.board.laidAtMs);
        QVERIFY(!stage.find(QStringLiteral("washPage"))); // it lies; the keeper goes on
        stage.wait(dayMs);
        QVERIFY(takeUp(stage));
        QVERIFY2(text(stage, "laidLine").contains(QLatin1String("24 h under the colony")),
                 qPrintable(text(stage, "laidLine")));
        QVERIFY(press(stage, {"mainAction", "mainAction"})); // pulled, the whole board
        QVERIFY(stage.app().wash()->count()->type(QStringLiteral("12")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.find(QStringLiteral("otherAnswerPage")));
        QCOMPARE(text(stage, "headline"), QStringLiteral("Over the handbook's line"));
        QCOMPARE(text(stage, "sentence"),
                 QStringLiteral("About 12 mites a day. It could be anything from 7.3 to 19."));
        QVERIFY(text(stage, "chanceLine").contains(QLatin1String("over 10 mites a day: 75 %")));
        QVERIFY(stage.app().otherAnswer()->cautions().first().contains(QLatin1String("weak evidence")));
        board = newest(stage);
        QVERIFY(!board.answer && board.otherAnswer);
        QCOMPARE(*board.scoopedAtMs - *board.board.laidAtMs, dayMs); // its moment is that of the pull
        QCOMPARE(text(stage, "mainAction"), QStringLiteral("Wash this colony"));
        QVERIFY(press(stage, {"back"}));
        // A board is no wash: what is due, and the last load, stay as they were.
        QCOMPARE(loadLine(stage), loadBefore);
    }

    void solidFloorIsNoPlaceForABoard() {
        Stage stage(Stage::Demo);
        writeFloor(stage, records::Floor::Solid);
        stage.device().clock->advance(60'000);
        QVERIFY(begin(stage, "sticky_board"));
        QVERIFY(text(stage, "solidFloor").contains(QLatin1String("solid floor")));
        QVERIFY(!stage.find(QStringLiteral("mainAction")));
        stage.app().wash()->board()->lay();
        QCOMPARE(stage.app().wash()->step(), WashController::LayBoard);
        QVERIFY(press(stage, {"screened"})); // the keeper knows better; it is written down
        QVERIFY(stage.find(QStringLiteral("mainAction")));
        const auto colony = *stage.program().store().colony(colonyId(stage).toStdString());
        const auto state = records::stateOn(colony, stage.program().store().eventsOf(colony.id),
                                            stage.program().services().today());
        QCOMPARE(state.floor->value, records::Floor::Screened);
    }

    void boardPulledBeforeItWasLaidAsksForItsHours() {
        Stage stage(Stage::Demo);
        QVERIFY(layInJuly(stage));
        stage.device().clock->setUtc(stage.device().clock->now().utcMs -
                                     5 * hourMs); // somebody set the clock
        QVERIFY(takeUp(stage));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.app().wash()->step(), WashController::PullBoard);
        QVERIFY(stage.app().wash()->board()->problem().contains(QLatin1String("before it was laid")));
        QVERIFY(!type(stage, "0") || stage.app().wash()->board()->problem().contains(QLatin1String("1")));
        for (const char* wrong : {"0", "337", "99999"}) {
            QVERIFY(!stage.app().wash()->board()->typeHours(QLatin1String(wrong)));
            QVERIFY(!stage.app().wash()->board()->problem().isEmpty());
        }
        QVERIFY(!stage.app().wash()->board()->typeHours(QString()));
        QVERIFY(stage.app().wash()->board()->typeHours(QStringLiteral("24")));
        stage.app().navigator()->home();
        QVERIFY(takeUp(stage));
        QCOMPARE(newest(stage).board.typedHours, std::optional{24.0}); // on the disk
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.app().wash()->step(), WashController::BoardCells);
    }

    void boardThatLayTooLongOrTooShortIsAskedAbout() {
        Stage stage(Stage::Demo);
        QVERIFY(layInJuly(stage));
        stage.wait(10 * 60'000);
        QVERIFY(takeUp(stage));
        QVERIFY(!stage.app().wash()->board()->pull());
        QVERIFY(stage.app().wash()->board()->problem().contains(QLatin1String("less than an hour")));
        stage.wait(20 * dayMs);
        QVERIFY(!stage.app().wash()->board()->pull());
        QVERIFY(stage.app().wash()->board()->problem().contains(QLatin1String("two weeks")));
        QVERIFY(records::isUnderColony(newest(stage).board)); // nothing was changed by the questions
    }

    void aPartOfABoardsCells() {
        Stage stage(Stage::Demo);
        QVERIFY(layInJuly(stage));
        stage.wait(2 * dayMs);
        QVERIFY(takeUp(stage));
        QVERIFY(press(stage, {"mainAction", "partOfBoard"}));
        touch::BoardController& board = *stage.app().wash()->board();
        QVERIFY(!board.typeCounted(QStringLiteral("0")));
        QVERIFY2(board.problem().contains(QLatin1String("No cell counted")), qPrintable(board.problem()));
        QVERIFY(type(stage, "17"));
        QVERIFY(!board.typeCells(QStringLiteral("10")));
        QVERIFY(board.problem().contains(QLatin1String("17")));
        QVERIFY(type(stage, "51"));
        QCOMPARE(stage.app().wash()->step(), WashController::Count);
        QVERIFY(stage.app().wash()->count()->type(QStringLiteral("8")));
        QVERIFY(press(stage, {"mainAction"}));
        const records::Sample sample = newest(stage);
        QCOMPARE(records::shareCounted(sample.board), 1.0 / 3);
        QVERIFY(std::abs(sample.otherAnswer->q50 - 12.2) < 0.5); // 8 on a third in two days: about 12 a day
    }

    void droneBroodOpened() {
        Stage stage(Stage::Demo);
        QVERIFY(begin(stage, "drone_brood"));
        QVERIFY(press(stage, {"mainAction"})); // the queen
        QCOMPARE(stage.app().wash()->count()->oneMore(), QStringLiteral("Count one cell"));
        for (int i = 0; i < 16; ++i)
            QVERIFY(press(stage, {"countField"}));
        QCOMPARE(stage.app().wash()->count()->spoken(), QStringLiteral("16 cells"));
        QVERIFY(press(stage, {"mainAction", "mainAction"}));
        touch::CountController& count = *stage.app().wash()->count();
        for (const char* wrong : {"", "0", "15", "10001"}) {
            QVERIFY2(!count.typeOpened(QLatin1String(wrong)), wrong);
            QVERIFY2(!count.problem().isEmpty(), wrong);
        }
        QVERIFY(type(stage, "100"));
        QVERIFY(stage.find(QStringLiteral("otherAnswerPage")));
        QCOMPARE(text(stage, "sentence"),
                 QStringLiteral("About 16 of 100 drone cells. It could be anything from 11 to 23."));
        QVERIFY(text(stage, "loadLine").startsWith(QLatin1String("No load")));
        QCOMPARE(newest(stage).openedCells, std::optional<std::int64_t>{100});
    }

    void noCellInfestedIsACountToo() {
        Stage stage(Stage::Demo);
        QVERIFY(begin(stage, "drone_brood"));
        QVERIFY(press(stage, {"mainAction", "mainAction", "noneFound", "mainAction"}));
        QVERIFY(type(stage, "120"));
        QVERIFY2(text(stage, "sentence")
                     .startsWith(QLatin1String("None found. It can still be anything from 0 to")),
                 qPrintable(text(stage, "sentence")));
        QCOMPARE(text(stage, "headline"), QStringLiteral("Under the handbook's line"));
    }

    void storyShowsMethodsSideBySide() {
        Stage stage(Stage::Demo);
        QVERIFY(begin(stage, "drone_brood"));
        QVERIFY(press(stage, {"mainAction", "countField", "mainAction", "mainAction"}));
        QVERIFY(type(stage, "80"));
        stage.app().here()->openColony(colonyId(stage));
        stage.settle();
        const auto entry = stage.app().colony()->story()->entries().first();
        QVERIFY2(entry.title.startsWith(QLatin1String("Drone brood opened: 1")), qPrintable(entry.title));
        QVERIFY(entry.detail.contains(QLatin1String("the handbook's line is 10")));
        QCOMPARE(entry.standing, static_cast<int>(touch::StandingWord::Unknown)); // no mark of a wash
        QVERIFY(stage.app().colony()->methodsLine().contains(QLatin1String("own kind")));
        QVERIFY(press(stage, {"story-0"}));
        QVERIFY(stage.find(QStringLiteral("otherAnswerPage")));
    }

    void usualMethodIsTheKeepers() {
        Stage stage(Stage::Demo);
        QVERIFY(press(stage, {"corner", "usualMethod-sugar_roll", "mainAction"}));
        QVERIFY2(stage.app().here()->mainAction().startsWith(QLatin1String("Sugar-roll colony")),
                 qPrintable(stage.app().here()->mainAction()));
        QCOMPARE(stage.app().here()->mainDetail(), QStringLiteral("half a cup, powdered sugar"));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.app().wash()->methodId(), QStringLiteral("sugar_roll"));
    }

    void methodOfANewerVersionIsLeftAsItIs() {
        Stage stage(Stage::Demo);
        records::Sample draft;
        draft.id = stage.program().store().newId();
        draft.colonyId = colonyId(stage).toStdString();
        draft.yardId = stage.app().here()->yardId().toStdString();
        draft.method = "carbon_dioxide";
        draft.step = records::Step::Count;
        draft.startedAtMs = stage.program().services().now().utcMs;
        stage.program().store().save(draft);
        QVERIFY(!stage.app().wash()->resume(QString::fromStdString(draft.id)));
        QCOMPARE(newest(stage).method, std::string("carbon_dioxide"));
        QCOMPARE(newest(stage).state, records::SampleState::Draft);
    }
};

QTEST_MAIN(MethodsTest)
#include "methods_test.moc"
