// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The plan of a yard, looked at and while hives are moved.
#include "screens.h"

#include "touch/navigator.h"

namespace halfcup::screens {

namespace {

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

/// From the page of the yard at hand.
bool toThePlan(Stage& stage) {
    stage.app().yards()->edit(stage.app().here()->yardId());
    stage.settle();
    return press(stage, {"yardPlan"}) && at(stage, "yardPlanPage");
}

QString hive(Stage& stage, std::size_t index) {
    return stage.app().yardPlan()->picture().plan.hives.at(index).key;
}

/// A yard without a position, and hives that nobody washed.
bool newYard(Stage& stage, const QString& labels) {
    touch::YardsController* yards = stage.app().yards();
    yards->makeNew();
    stage.settle();
    return yards->save(QStringLiteral("The old orchard behind the upper mill"), QStringLiteral("3"), {}) &&
           yards->addColonies(labels) && toThePlan(stage);
}

bool pickIn(Stage& stage, std::size_t index) {
    stage.app().yardPlan()->touched(hive(stage, index), true, 0, 0);
    stage.settle();
    return true;
}

} // namespace

const std::vector<Screen>& yardPlanScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"yard plan", S::Demo, 1, toThePlan},
        {"yard plan, a hive picked", S::Demo, 1, [](S& s) { return toThePlan(s) && pickIn(s, 1); }},
        {"yard plan, moving", S::Demo, 1, [](S& s) { return toThePlan(s) && press(s, {"corner"}); }},
        {"yard plan, where it stands", S::Demo, 1,
         [](S& s) { return toThePlan(s) && press(s, {"corner"}) && pickIn(s, 0); }},
        {"yard plan, steps", S::Demo, 1,
         [](S& s) {
             return toThePlan(s) && press(s, {"corner", "corner", "stepNorth"}) && at(s, "takeOff");
         }},
        {"yard plan, none placed", S::Nothing, 1, [](S& s) { return newYard(s, QStringLiteral("1-12")); }},
        {"yard plan, none placed, steps", S::Nothing, 1,
         [](S& s) {
             return newYard(s, QStringLiteral("Nucleus east 3")) && press(s, {"corner", "corner"});
         }},
        {"yard plan, 40 hives put in rows", S::Nothing, 1,
         [](S& s) {
             if (!newYard(s, QStringLiteral("1-40")) || !press(s, {"corner"}))
                 return false;
             for (std::size_t i = 0; i < 40; ++i) {
                 s.app().yardPlan()->touched(hive(s, i), false, 0, 0);
                 s.app().yardPlan()->touched({}, true, static_cast<double>(i % 10) * 2,
                                             -static_cast<double>(i / 10) * 4);
             }
             return press(s, {"mainAction"});
         }},
    };
    return screens;
}

} // namespace halfcup::screens
