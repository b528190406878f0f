// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "screens.h"

#include "pictures/yard_plan.h"
#include "touch/navigator.h"
#include "touch/yard_plan_item.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace halfcup;
using namespace halfcup::screens;
using halfcup::records::Stand;
using halfcup::touch::Navigator;
using halfcup::touch::YardPlanItem;

/// Hives are put on the plan of their yard on the real page, with a finger and by steps.
class YardPlanTest : public QObject {
    Q_OBJECT

    static void openPlan(Stage& stage) {
        stage.app().navigator()->home();
        stage.app().yards()->edit(stage.app().here()->yardId());
        stage.settle();
        QVERIFY(press(stage, {"yardPlan"}));
        QVERIFY(stage.find(QStringLiteral("yardPlanPage")));
        stage.picture();
    }
    static void makeYard(Stage& stage, const char* labels) {
        stage.app().yards()->makeNew();
        stage.settle();
        QVERIFY(stage.app().yards()->save(QStringLiteral("By the ford"), QStringLiteral("3"), {}));
        QVERIFY(stage.app().yards()->addColonies(QLatin1String(labels)));
        openPlan(stage);
    }
    static YardPlanItem* plan(Stage& stage) {
        return qobject_cast<YardPlanItem*>(stage.find(QStringLiteral("plan")));
    }
    static const pictures::PlannedHive& hive(Stage& stage, const QString& label) {
        static const pictures::PlannedHive none;
        static pictures::YardPlan shown;
        shown = stage.app().yardPlan()->picture().plan;
        const auto found = std::ranges::find(shown.hives, label, &pictures::PlannedHive::label);
        return found == shown.hives.end() ? none : *found;
    }
    static std::optional<Stand> kept(Stage& stage, const QString& label) {
        const auto colony = stage.program().store().colony(hive(stage, label).key.toStdString());
        return colony ? colony->stand : std::nullopt;
    }
    /// Where the mark of a hive is drawn.
    static QPointF spotOf(Stage& stage, const QString& label) {
        for (const pictures::Spot& spot : plan(stage)->drawing().spots)
            if (spot.key == hive(stage, label).key)
                return spot.at;
        return {-1, -1};
    }
    /// A finger on a point of the picture, through the window.
    static void touchAt(Stage& stage, QPointF point) {
        stage.picture();
        YardPlanItem* item = plan(stage);
        for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
            if (above->inherits("QQuickFlickable")) {
                const double lowest =
                    std::max(0.0, above->property("contentHeight").toDouble() - above->height());
                above->setProperty("contentY", std::clamp(point.y() - above->height() / 2, 0.0, lowest));
            }
        stage.settle();
        QTest::mouseClick(stage.window(), Qt::LeftButton, Qt::NoModifier, item->mapToScene(point).toPoint());
        stage.settle();
    }
    static bool near(const std::optional<Stand>& stand, double eastM, double northM, double withinM) {
        return stand && std::abs(stand->eastM - eastM) <= withinM &&
               std::abs(stand->northM - northM) <= withinM;
    }

private slots:
    void aHiveIsPlacedByTwoTouches() {
        Stage stage(Stage::Nothing);
        makeYard(stage, "1-3");
        QVERIFY(!hive(stage, QStringLiteral("2")).stand);
        press(stage, {"corner"});                           // move hives
        touchAt(stage, spotOf(stage, QStringLiteral("2"))); // in the row of those without a place
        QCOMPARE(stage.app().yardPlan()->line(), QStringLiteral("Touch where colony 2 stands."));
        const double pixelM = 1 / pictures::frameOf(stage.app().yardPlan()->picture().plan,
                                                    {plan(stage)->size(), pictures::Type({}, 17, 14)})
                                      .unitsPerM();
        touchAt(stage, plan(stage)->pointOf({-4, 6}));
        QVERIFY(near(kept(stage, QStringLiteral("2")), -4, 6, pixelM));
        QVERIFY(near(hive(stage, QStringLiteral("2")).stand, -4, 6, pixelM));
        QVERIFY(!kept(stage, QStringLiteral("1")));
        // The same again, and it is moved; the others stay.
        touchAt(stage, spotOf(stage, QStringLiteral("1")));
        touchAt(stage, plan(stage)->pointOf({5, -5}));
        const auto first = kept(stage, QStringLiteral("2"));
        touchAt(stage, spotOf(stage, QStringLiteral("1")));
        touchAt(stage, plan(stage)->pointOf({7, 1}));
        QVERIFY(near(kept(stage, QStringLiteral("1")), 7, 1, pixelM));
        QCOMPARE(kept(stage, QStringLiteral("2")), first);
        QVERIFY(press(stage, {"mainAction"})); // done
        QVERIFY(!stage.app().yardPlan()->isMoving());
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void placesSurviveReopening() {
        Stage stage(Stage::Nothing);
        makeYard(stage, "1-2");
        QVERIFY(press(stage, {"corner"}));
        touchAt(stage, spotOf(stage, QStringLiteral("1")));
        touchAt(stage, plan(stage)->pointOf({3, -2}));
        const auto before = kept(stage, QStringLiteral("1"));
        QVERIFY(before);
        openPlan(stage);
        QCOMPARE(hive(stage, QStringLiteral("1")).stand, before);
        QVERIFY(!hive(stage, QStringLiteral("1")).fromPositions);
        // On disk at once, as another program finds it.
        const auto id = hive(stage, QStringLiteral("1")).key.toStdString();
        store::Store again(stage.program().store().path(), {[] { return 0; }, [] { return 7; }});
        QCOMPARE(again.colony(id)->stand, before);
        QVERIFY(!again.colony(hive(stage, QStringLiteral("2")).key.toStdString())->stand);
    }

    void aHiveIsPlacedBySteps() {
        Stage stage(Stage::Nothing);
        makeYard(stage, "1-3");
        QVERIFY(press(stage, {"corner", "corner"})); // move hives, by steps: the first
        QCOMPARE(stage.app().yardPlan()->stepTitle(), QStringLiteral("Move colony 1"));
        QVERIFY(!stage.find(QStringLiteral("takeOff")));
        QVERIFY(press(stage, {"stepNorth", "stepNorth", "stepWest"})); // from the middle of an empty plan
        QCOMPARE(kept(stage, QStringLiteral("1")), std::optional(Stand{-1, 2}));
        QCOMPARE(stage.app().yardPlan()->standLine(),
                 QStringLiteral("It stands 1 m west and 2 m north of the yard's middle."));
        QVERIFY(press(stage, {"stepSouth", "stepEast", "stepEast"}));
        QCOMPARE(kept(stage, QStringLiteral("1")), std::optional(Stand{1, 1}));
        QVERIFY(press(stage, {"nextHive", "stepEast"}));
        QCOMPARE(kept(stage, QStringLiteral("2")), std::optional(Stand{1, 0}));
        QVERIFY(press(stage, {"previousHive", "previousHive"}));
        QCOMPARE(stage.app().yardPlan()->stepTitle(), QStringLiteral("Move colony 3")); // around the end
        QVERIFY(press(stage, {"stepsDone", "mainAction", "mainAction"}));
        QVERIFY(!stage.find(QStringLiteral("yardPlanPage")) || !stage.app().yardPlan()->isMoving());
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void theKeyboardStepsToo() {
        Stage stage(Stage::Nothing);
        makeYard(stage, "1");
        QVERIFY(press(stage, {"corner", "corner"}));
        stage.find(QStringLiteral("stepEast"))->forceActiveFocus();
        QTest::keyClick(stage.window(), Qt::Key_Space);
        stage.settle();
        QCOMPARE(kept(stage, QStringLiteral("1")), std::optional(Stand{1, 0}));
    }

    void takingThePlaceOffLeavesThePositions() {
        Stage stage(Stage::Demo); // its washes have positions
        openPlan(stage);
        const auto& hives = stage.app().yardPlan()->picture().plan.hives;
        const auto washed = std::ranges::find_if(hives, [](const auto& each) { return each.fromPositions; });
        QVERIFY(washed != hives.end());
        const QString label = washed->label;
        const auto byPositions = washed->stand;
        QVERIFY(press(stage, {"corner"}));
        touchAt(stage, spotOf(stage, label));
        QVERIFY(press(stage, {"corner"}));
        QVERIFY(stage.app().yardPlan()->standLine().contains(QLatin1String("That is where it was washed")));
        QVERIFY(!stage.find(QStringLiteral("takeOff"))); // nothing of the keeper's to take off
        QVERIFY(press(stage, {"stepNorth"}));
        QVERIFY(near(kept(stage, label), byPositions->eastM, byPositions->northM + 1, 0.006));
        QVERIFY(!hive(stage, label).fromPositions);
        QVERIFY(press(stage, {"takeOff"}));
        QVERIFY(!kept(stage, label));
        QVERIFY(hive(stage, label).fromPositions);
        QCOMPARE(hive(stage, label).stand, byPositions);
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void aTouchedHiveTellsItsStateAndOpens() {
        Stage stage(Stage::Demo);
        openPlan(stage);
        const QString label = stage.app().yardPlan()->picture().plan.hives.front().label;
        touchAt(stage, spotOf(stage, label));
        QCOMPARE(stage.app().yardPlan()->mainAction(), QStringLiteral("Colony %1").arg(label));
        for (const auto& entry : stage.app().here()->colonies()->entries())
            if (entry.label == label)
                QVERIFY(stage.app().yardPlan()->mainDetail().startsWith(entry.headline));
        QVERIFY(!stage.app().yardPlan()->mainDetail().isEmpty());
        touchAt(stage, spotOf(stage, label)); // once more: let go
        QCOMPARE(stage.app().yardPlan()->mainAction(), QStringLiteral("Done"));
        touchAt(stage, spotOf(stage, label));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.find(QStringLiteral("colonyPage")));
        QCOMPARE(stage.app().colony()->label(), label);
        // Looking never moves a hive.
        for (const auto& each : stage.app().yardPlan()->picture().plan.hives)
            QVERIFY(!stage.program().store().colony(each.key.toStdString())->stand);
    }

    void thePlanKeepsStillWhileHivesAreMoved() {
        Stage stage(Stage::Nothing);
        makeYard(stage, "1-2");
        QVERIFY(press(stage, {"corner"}));
        const QPointF middle = plan(stage)->pointOf({0, 0});
        touchAt(stage, spotOf(stage, QStringLiteral("1")));
        touchAt(stage, plan(stage)->pointOf({3, 3}));
        QCOMPARE(plan(stage)->pointOf({0, 0}), middle);
        // Put at the edge, it gets ground around it.
        touchAt(stage, spotOf(stage, QStringLiteral("2")));
        touchAt(stage, plan(stage)->pointOf({9.5, 0}));
        QVERIFY(stage.app().yardPlan()->picture().plan.ground->eastM > 12);
    }

    void feetGoWithFahrenheit() {
        Stage stage(Stage::Nothing);
        stage.program().services().settings.setUnits(touch::Units::UsCustomary);
        makeYard(stage, "1");
        QVERIFY(press(stage, {"corner", "corner", "stepEast"}));
        QCOMPARE(kept(stage, QStringLiteral("1")), std::optional(Stand{0.91, 0})); // 3 ft are 0.9144 m
        QCOMPARE(stage.app().yardPlan()->eastStep(), QStringLiteral("3 ft east"));
        QVERIFY(stage.app().yardPlan()->standLine().contains(QLatin1String("3 ft east")));
    }

    void aYardThatIsNotThereIsNotShown() {
        Stage stage(Stage::Nothing);
        QVERIFY(!stage.app().yardPlan()->show(QStringLiteral("nowhere")));
        stage.app().yardPlan()->startSteps();
        stage.app().yardPlan()->step(touch::YardPlanController::North);
        stage.app().yardPlan()->pickNext();
        stage.app().yardPlan()->takeOff();
        QVERIFY(!stage.app().yardPlan()->hasHives());
    }
};

QTEST_MAIN(YardPlanTest)
#include "yard_plan_test.moc"
