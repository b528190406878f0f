// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The pages of the other ways of counting, and of the tray.
#include "screens.h"

#include "touch/navigator.h"

namespace halfcup::screens {

namespace {

constexpr std::int64_t dayMs = 24LL * 3'600'000;

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

bool begin(Stage& stage, const char* method) {
    stage.app().here()->openColony(stage.app().here()->colonies()->entries().first().colonyId);
    stage.settle();
    return press(stage, {"countAnotherWay"}) &&
           stage.touch(QStringLiteral("method-") + QLatin1String(method));
}

/// A board that was laid a day ago, at the page where it is pulled.
bool layAndReturn(Stage& stage) {
    if (!begin(stage, "sticky_board"))
        return false;
    if (at(stage, "screened") && !press(stage, {"screened"}))
        return false;
    if (!press(stage, {"mainAction"}))
        return false;
    stage.wait(dayMs);
    return stage.touch(QStringLiteral("jar-") + stage.app().tray()->jars()->entries().first().label) &&
           at(stage, "pullBoardStep");
}

bool boardAnswer(Stage& stage) {
    if (!layAndReturn(stage) || !press(stage, {"mainAction", "mainAction"}))
        return false;
    stage.app().wash()->count()->type(QStringLiteral("12"));
    return press(stage, {"mainAction"}) && at(stage, "otherAnswerPage");
}

bool broodAnswer(Stage& stage) {
    if (!begin(stage, "drone_brood") || !press(stage, {"mainAction"}))
        return false;
    stage.app().wash()->count()->type(QStringLiteral("16"));
    return press(stage, {"mainAction"}) && at(stage, "openedCellsStep") &&
           stage.app().wash()->count()->typeOpened(QStringLiteral("100")) && at(stage, "otherAnswerPage");
}

bool sugarAnswer(Stage& stage) {
    if (!begin(stage, "sugar_roll") ||
        !press(stage, {"mainAction", "mainAction", "mainAction", "mainAction"}))
        return false;
    stage.wait(61'000);
    if (!press(stage, {"mainAction"}))
        return false;
    stage.app().wash()->count()->type(QStringLiteral("43"));
    return press(stage, {"mainAction"}) && at(stage, "answerPage");
}

bool fillTray(Stage& stage, int jars) {
    for (int i = 0; i < jars; ++i) {
        stage.app().navigator()->home();
        stage.settle();
        if (!pressMain(stage, 3) || !press(stage, {"washLater", "toTray"}))
            return false;
        stage.wait(90'000);
    }
    return at(stage, "trayPage");
}

/// A round of the demo's yard, begun; so many of its colonies washed.
bool goRound(Stage& stage, int washed, int mites) {
    if (!press(stage, {"yardRound", "mainAction"}))
        return false;
    for (int i = 0; i < washed; ++i) {
        stage.app().navigator()->home();
        stage.settle();
        if (!toTheAnswer(stage, mites))
            return false;
    }
    if (washed == 0)
        return at(stage, "roundPage");
    stage.app().navigator()->home();
    stage.settle();
    return press(stage, {"openRound"}) && at(stage, "roundPage");
}

bool floorIsSolid(Stage& stage) {
    const auto colonies = stage.app().here()->colonies()->entries();
    records::ColonyEvent event;
    event.id = stage.program().store().newId();
    event.colonyId = colonies.first().colonyId.toStdString();
    event.yardId = stage.app().here()->yardId().toStdString();
    event.kind = records::EventKind::Floor;
    event.floor = records::Floor::Solid;
    event.day = stage.program().services().today();
    event.recordedAtMs = stage.program().services().now().utcMs;
    stage.program().store().save(event);
    return begin(stage, "sticky_board") && at(stage, "solidFloor");
}

} // namespace

const std::vector<Screen>& methodScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"methods", S::Demo, 0,
         [](S& s) {
             s.app().here()->openColony(s.app().here()->colonies()->entries().first().colonyId);
             s.settle();
             return press(s, {"countAnotherWay"}) && at(s, "methodsPage");
         }},
        {"soap: pour", S::Demo, 1,
         [](S& s) {
             return begin(s, "soapy_wash") && press(s, {"mainAction", "mainAction"}) && at(s, "pourStep");
         }},
        {"sugar: safety", S::Demo, 1, [](S& s) { return begin(s, "sugar_roll") && at(s, "safetyStep"); }},
        {"sugar: pour", S::Demo, 1,
         [](S& s) {
             return begin(s, "sugar_roll") && press(s, {"mainAction", "mainAction"}) && at(s, "pourStep");
         }},
        {"sugar: rest", S::Demo, 1,
         [](S& s) {
             return begin(s, "sugar_roll") && press(s, {"mainAction", "mainAction", "mainAction"}) &&
                    at(s, "settleStep");
         }},
        {"sugar: shake out", S::Demo, 1,
         [](S& s) {
             return begin(s, "sugar_roll") &&
                    press(s, {"mainAction", "mainAction", "mainAction", "mainAction"}) && at(s, "shakeStep");
         }},
        {"sugar: answer", S::Demo, 1, sugarAnswer},
        {"board: lay", S::Demo, 1, [](S& s) { return begin(s, "sticky_board") && at(s, "layBoardStep"); }},
        {"board: solid floor", S::Demo, 1, floorIsSolid},
        {"board: pull", S::Demo, 1, layAndReturn},
        {"board: hours", S::Demo, 1, [](S& s) { return layAndReturn(s) && press(s, {"typeHours"}); }},
        {"board: cells", S::Demo, 1,
         [](S& s) { return layAndReturn(s) && press(s, {"mainAction"}) && at(s, "boardCellsStep"); }},
        {"board: answer", S::Demo, 1, boardAnswer},
        {"brood: safety", S::Demo, 1, [](S& s) { return begin(s, "drone_brood") && at(s, "safetyStep"); }},
        {"brood: opened", S::Demo, 1,
         [](S& s) {
             const bool there = begin(s, "drone_brood") && press(s, {"mainAction"});
             s.app().wash()->count()->type(QStringLiteral("16"));
             return there && press(s, {"mainAction"}) && at(s, "openedCellsStep");
         }},
        {"brood: answer", S::Demo, 1, broodAnswer},
        {"colony, methods side by side", S::Demo, 1,
         [](S& s) {
             if (!broodAnswer(s))
                 return false;
             s.app().here()->openColony(s.app().here()->colonies()->entries().first().colonyId);
             s.settle();
             return at(s, "methodsLine");
         }},
        {"jar: label", S::Demo, 1,
         [](S& s) { return pressMain(s, 3) && press(s, {"washLater"}) && at(s, "toTray"); }},
        {"jar: label taken", S::Demo, 1,
         [](S& s) {
             if (!fillTray(s, 1))
                 return false;
             const QString taken = s.app().tray()->jars()->entries().first().label;
             s.app().navigator()->home();
             s.settle();
             return pressMain(s, 3) && press(s, {"washLater"}) &&
                    type(s, "jarLabel", taken.toUtf8().constData()) && press(s, {"toTray"}) &&
                    at(s, "jarProblem");
         }},
        {"tray", S::Demo, 1, [](S& s) { return fillTray(s, 3); }},
        {"tray, empty", S::Demo, 1,
         [](S& s) {
             s.app().navigator()->open(touch::Navigator::Tray);
             s.settle();
             return at(s, "trayPage");
         }},
        {"round: plan", S::Demo, 1, [](S& s) { return press(s, {"yardRound"}) && at(s, "roundPage"); }},
        {"round: begun", S::Demo, 1, [](S& s) { return goRound(s, 0, 0); }},
        {"round: clear", S::Demo, 1, [](S& s) { return goRound(s, 3, 30); }},
        {"round: ended", S::Demo, 1,
         [](S& s) { return goRound(s, 3, 30) && press(s, {"endRound"}) && at(s, "roundPage"); }},
        {"here, a round", S::Demo, 1,
         [](S& s) {
             const bool there = goRound(s, 0, 0);
             s.app().navigator()->home();
             s.settle();
             return there && at(s, "openRound");
         }},
        {"here, jars wait", S::Demo, 1,
         [](S& s) { return fillTray(s, 2) && press(s, {"back"}) && at(s, "tray"); }},
        {"jar: taken up", S::Demo, 1,
         [](S& s) {
             return fillTray(s, 1) &&
                    s.touch(QStringLiteral("jar-") + s.app().tray()->jars()->entries().first().label) &&
                    at(s, "pourStep");
         }},
    };
    return screens;
}

} // namespace halfcup::screens
