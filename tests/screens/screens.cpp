// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "screens.h"

#include "touch/navigator.h"

namespace halfcup::screens {

namespace {

using touch::Navigator;

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

/// Drawn once, so that all of a page lies where it will be touched.
bool drawn(Stage& stage) {
    return !stage.picture().isNull();
}

bool open(Stage& stage, Navigator::Page page) {
    stage.app().navigator()->open(page);
    stage.settle();
    return true;
}

bool message(Stage& stage) {
    stage.program().services().messages.say(
        QStringLiteral("The storage of this phone is full. What you did is on the screen, but not kept yet. "
                       "Make room, then go on."));
    stage.settle();
    return at(stage, "understood");
}

bool longNames(Stage& stage) {
    touch::YardsController* yards = stage.app().yards();
    yards->makeNew();
    stage.settle();
    if (!yards->save(QStringLiteral("The old orchard behind the upper mill"), QStringLiteral("3"),
                     QString()) ||
        !yards->addColonies(QStringLiteral("Nucleus east 3")) || !yards->addColonies(QStringLiteral("B12")))
        return false;
    stage.app().navigator()->home();
    stage.settle();
    return at(stage, "herePage");
}

bool openColony(Stage& stage) {
    stage.app().here()->openColony(stage.app().here()->colonies()->entries().first().colonyId);
    stage.settle();
    return at(stage, "colonyPage");
}

bool editYard(Stage& stage) {
    stage.app().yards()->edit(stage.app().here()->yardId());
    stage.settle();
    return at(stage, "yardEditPage");
}

bool badLine(Stage& stage) {
    if (!editYard(stage))
        return false;
    stage.find(QStringLiteral("treatLine"))->setProperty("text", QStringLiteral("three"));
    return press(stage, {"done"}) && at(stage, "problem");
}

bool typed(Stage& stage, const char* digits) {
    for (const char* digit = digits; *digit; ++digit)
        if (!stage.touch(QStringLiteral("key") + QLatin1Char(*digit)))
            return false;
    return true;
}

bool figurePage(Stage& stage) {
    stage.app().sources()->show(QStringLiteral("what-the-figure-means"));
    stage.app().navigator()->open(touch::Navigator::Sources);
    return !stage.app().sources()->pageText().isEmpty();
}

bool cautionsPage(Stage& stage) {
    stage.app().sources()->show(QStringLiteral("cautions"));
    stage.app().navigator()->open(touch::Navigator::Sources);
    return !stage.app().sources()->pageText().isEmpty();
}

bool sources(Stage& stage) {
    stage.app().sources()->show(QStringLiteral("lines"));
    return open(stage, Navigator::Sources);
}

} // namespace

bool pressMain(Stage& stage, int times) {
    for (int i = 0; i < times; ++i)
        if (!stage.touch(QStringLiteral("mainAction")))
            return false;
    return true;
}

bool toTheCount(Stage& stage) {
    if (!pressMain(stage, 4)) // wash, queen, scooped, lid on
        return false;
    stage.wait(60'000);
    return pressMain(stage, 2) && at(stage, "countStep"); // set down, settled
}

bool toTheAnswer(Stage& stage, int mites) {
    if (!toTheCount(stage))
        return false;
    for (int i = 0; i < mites; ++i)
        if (!stage.touch(QStringLiteral("countField")))
            return false;
    return pressMain(stage, 1) && (mites > 0 || press(stage, {"noneFound"})) && press(stage, {"skipRinse"}) &&
           at(stage, "answerPage");
}

const std::vector<Screen>& allScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"welcome", S::Nothing, 1, [](S& s) { return at(s, "makeYard"); }},
        {"here", S::Demo, 1, [](S& s) { return at(s, "mainAction"); }},
        {"here, long names", S::Demo, 1, longNames},
        {"here, no colonies", S::Nothing, 1,
         [](S& s) {
             s.app().yards()->makeNew();
             const bool kept = s.app().yards()->save(QStringLiteral("Alder"), QStringLiteral("3"), {});
             s.app().navigator()->home();
             s.settle();
             return kept && at(s, "addColonies");
         }},
        {"message", S::Demo, 1, message},
        {"yards", S::Demo, 1, [](S& s) { return press(s, {"yards"}) && at(s, "yardsPage"); }},
        {"new yard", S::Nothing, 1, [](S& s) { return press(s, {"makeYard"}) && at(s, "yardEditPage"); }},
        {"yard", S::Demo, 1, editYard},
        {"yard, bad line", S::Demo, 1, badLine},
        {"share", S::Demo, 1,
         [](S& s) {
             return press(s, {"season", "corner"}) && at(s, "sharePage");
         }},
        {"shared", S::Demo, 1,
         [](S& s) {
             return press(s, {"season", "corner", "forPeople", "positionsSecond", "mainAction"}) &&
                    at(s, "result");
         }},
        {"share, nothing", S::Nothing, 1, [](S& s) { return open(s, Navigator::Share); }},
        {"setup", S::Demo, 1, [](S& s) { return press(s, {"corner"}) && at(s, "setupPage"); }},
        {"sources", S::Demo, 1, sources},
        {"figure page", S::Demo, 1, figurePage},
        {"cautions page", S::Demo, 1, cautionsPage},
        {"colony", S::Demo, 1, openColony},
        {"colony, name", S::Demo, 1, [](S& s) { return openColony(s) && press(s, {"changeName"}); }},
        {"wash: safety", S::Demo, 1, [](S& s) { return pressMain(s, 1) && at(s, "safetyStep"); }},
        {"wash: colony", S::Demo, 1,
         [](S& s) { return pressMain(s, 1) && press(s, {"back"}) && at(s, "colonyStep"); }},
        {"wash: leave", S::Demo, 1, [](S& s) { return pressMain(s, 1) && press(s, {"corner"}); }},
        {"wash: abandon", S::Demo, 1,
         [](S& s) {
             return pressMain(s, 1) && press(s, {"corner", "abandon"});
         }},
        {"wash: scoop", S::Demo, 1, [](S& s) { return pressMain(s, 2) && at(s, "scoopStep"); }},
        {"wash: scoop, queen not seen", S::Demo, 1,
         [](S& s) { return pressMain(s, 1) && press(s, {"queenNotSeen"}) && at(s, "scoopStep"); }},
        {"wash: another scoop", S::Demo, 1,
         [](S& s) { return pressMain(s, 2) && press(s, {"changeScoop"}); }},
        {"wash: scoop typed wrong", S::Demo, 1,
         [](S& s) {
             return pressMain(s, 2) && press(s, {"changeScoop", "typeVolume"}) && typed(s, "0") &&
                    press(s, {"keyKeep"}) && at(s, "problem");
         }},
        {"wash: pour", S::Demo, 1, [](S& s) { return pressMain(s, 3) && at(s, "pourStep"); }},
        {"wash: shake", S::Demo, 1, [](S& s) { return pressMain(s, 4) && at(s, "shakeStep"); }},
        {"wash: shake past half", S::Demo, 1,
         [](S& s) {
             const bool there = pressMain(s, 4);
             s.wait(38'000);
             return there && at(s, "shakeStep");
         }},
        {"wash: shake over", S::Demo, 1,
         [](S& s) {
             const bool there = pressMain(s, 4);
             s.wait(60'000);
             return there && at(s, "shakeStep");
         }},
        {"wash: settle", S::Demo, 1, [](S& s) { return pressMain(s, 5) && at(s, "settleStep"); }},
        {"wash: count", S::Demo, 1, toTheCount},
        {"wash: count 9", S::Demo, 1,
         [](S& s) {
             bool there = toTheCount(s);
             for (int i = 0; i < 9; ++i)
                 there = there && press(s, {"countField"});
             return there;
         }},
        {"wash: count 1234", S::Demo, 1,
         [](S& s) {
             return toTheCount(s) && press(s, {"typeIt"}) && typed(s, "1234") && press(s, {"keyKeep"}) &&
                    at(s, "countField");
         }},
        {"wash: number pad", S::Demo, 1,
         [](S& s) { return toTheCount(s) && press(s, {"typeIt"}) && typed(s, "123"); }},
        {"wash: too many typed", S::Demo, 1,
         [](S& s) {
             return toTheCount(s) && press(s, {"typeIt"}) && typed(s, "10001") && press(s, {"keyKeep"}) &&
                    at(s, "problem");
         }},
        {"wash: none found?", S::Demo, 1,
         [](S& s) { return toTheCount(s) && pressMain(s, 1) && at(s, "noneFound"); }},
        {"wash: second rinse", S::Demo, 1,
         [](S& s) {
             return toTheCount(s) && press(s, {"countField", "mainAction"}) && at(s, "skipRinse");
         }},
        {"wash: second rinse counted", S::Demo, 1,
         [](S& s) {
             return toTheCount(s) && press(s, {"countField", "mainAction", "countSecondRinse", "countField"});
         }},
        {"wash: second rinse, none", S::Demo, 1,
         [](S& s) {
             return toTheCount(s) &&
                    press(s, {"countField", "mainAction", "countSecondRinse", "mainAction"}) &&
                    at(s, "notRinsed");
         }},
        {"answer, 9 mites", S::Demo, 1, [](S& s) { return toTheAnswer(s, 9); }},
        {"count the bees", S::Demo, 1,
         [](S& s) { return toTheAnswer(s, 9) && press(s, {"countBees"}) && at(s, "countBeesPage"); }},
        {"count the bees: wrong", S::Demo, 1,
         [](S& s) {
             return toTheAnswer(s, 9) && press(s, {"countBees"}) && drawn(s) && type(s, "bees", "many") &&
                    drawn(s) && press(s, {"mainAction"}) && at(s, "problem");
         }},
        {"count the bees: odd", S::Demo, 1,
         [](S& s) {
             return toTheAnswer(s, 9) && press(s, {"countBees"}) && drawn(s) && type(s, "bees", "30") &&
                    drawn(s) && press(s, {"mainAction"}) && at(s, "keepAllTheSame");
         }},
        {"weigh the bees", S::Demo, 1,
         [](S& s) {
             return toTheAnswer(s, 9) && press(s, {"countBees", "howSecond"}) && at(s, "state-drained");
         }},
        {"own scoops: none", S::Demo, 1,
         [](S& s) {
             s.app().navigator()->open(touch::Navigator::OwnScoops);
             s.settle();
             return at(s, "ownScoopsPage");
         }},
        {"own scoops", S::Demo, 1,
         [](S& s) {
             if (!toTheAnswer(s, 9) || !press(s, {"countBees"}) || !drawn(s) || !type(s, "bees", "352") ||
                 !drawn(s) || !press(s, {"mainAction"}))
                 return false;
             s.app().navigator()->open(touch::Navigator::OwnScoops);
             s.settle();
             return at(s, "ownScoopsPage");
         }},
        {"answer, none found", S::Demo, 1, [](S& s) { return toTheAnswer(s, 0); }},
        {"answer, 400 mites", S::Demo, 1,
         [](S& s) {
             return toTheCount(s) && press(s, {"typeIt"}) && typed(s, "400") &&
                    press(s, {"keyKeep", "mainAction", "skipRinse"}) && at(s, "answerPage");
         }},
    };
    static const std::vector<Screen> all = [] {
        std::vector<Screen> list = screens;
        list.insert(list.end(), seasonScreens().begin(), seasonScreens().end());
        list.insert(list.end(), methodScreens().begin(), methodScreens().end());
        list.insert(list.end(), storyScreens().begin(), storyScreens().end());
        list.insert(list.end(), planScreens().begin(), planScreens().end());
        list.insert(list.end(), yardPlanScreens().begin(), yardPlanScreens().end());
        list.insert(list.end(), browserScreens().begin(), browserScreens().end());
        list.insert(list.end(), twoPhonesScreens().begin(), twoPhonesScreens().end());
        return list;
    }();
    return all;
}

} // namespace halfcup::screens
