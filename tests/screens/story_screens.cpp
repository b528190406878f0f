// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The pages of a colony's story, of its yard's days and lines, and of the first start.
#include "screens.h"

#include "touch/navigator.h"

namespace halfcup::screens {

namespace {

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

bool openColony(Stage& stage) {
    stage.app().here()->openColony(stage.app().here()->colonies()->entries().first().colonyId);
    stage.settle();
    return at(stage, "colonyPage");
}

bool tell(Stage& stage, const char* kind) {
    return openColony(stage) && press(stage, {"somethingHappened", kind}) && at(stage, "eventPage");
}

/// What is told first, and kept; then the page of that event.
bool openKept(Stage& stage) {
    return openColony(stage) &&
           press(stage, {"somethingHappened", "kind-swarmed", "mainAction", "story-0"}) &&
           at(stage, "takeBack");
}

bool editYard(Stage& stage) {
    stage.app().yards()->edit(stage.app().here()->yardId());
    stage.settle();
    return at(stage, "yardEditPage");
}

/// The day of a treatment that was given to the colony, so that all of it is on the page.
bool dayOfTreatment(Stage& stage) {
    if (!openColony(stage) || !press(stage, {"corner"}))
        return false;
    const QString colonyId = stage.app().colony()->colonyId();
    const auto given = stage.program().store().treatmentsOf(colonyId.toStdString());
    return !given.empty() &&
           stage.app().onDay()->typeDay(QString::fromStdString(toIso(given.back().treatment.firstDay)));
}

} // namespace

const std::vector<Screen>& storyScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"first start", S::FirstStart, 1, [](S& s) { return at(s, "firstStartPage"); }},
        {"what this is not", S::Demo, 1,
         [](S& s) {
             return press(s, {"corner", "whatThisIsNot"}) && at(s, "firstStartPage");
         }},
        {"colony, nothing kept", S::Demo, 1,
         [](S& s) {
             return editYard(s) && s.app().yards()->addColonies(QStringLiteral("Nucleus east 3")) &&
                    s.app().colony()->show(QString::fromStdString(
                        s.program().store().colonies(s.app().here()->yardId().toStdString()).back().id)) &&
                    (s.app().navigator()->open(touch::Navigator::Colony), s.settle(), at(s, "colonyPage"));
         }},
        {"colony: marks", S::Demo, 1,
         [](S& s) { return openColony(s) && press(s, {"marksMeaning"}) && at(s, "marks"); }},
        {"colony: washes of days to come", S::Demo, 1,
         [](S& s) {
             constexpr std::int64_t yearMs = 365LL * 86'400'000;
             s.device().clock->setUtc(s.device().clock->now().utcMs - yearMs);
             return openColony(s);
         }},
        {"event: what happened", S::Demo, 1,
         [](S& s) { return openColony(s) && press(s, {"somethingHappened"}) && at(s, "eventPage"); }},
        {"event: supers", S::Demo, 1,
         [](S& s) {
             return openColony(s) && press(s, {"somethingHappened", "mainAction", "dayEarlier"});
         }},
        {"event: brood", S::Demo, 1,
         [](S& s) { return tell(s, "kind-brood") && press(s, {"choice-capped"}); }},
        {"event: brood not chosen", S::Demo, 1,
         [](S& s) { return tell(s, "kind-brood") && press(s, {"mainAction"}) && at(s, "problem"); }},
        {"event: strength", S::Demo, 1, [](S& s) { return tell(s, "kind-strength") && press(s, {"more"}); }},
        {"event: new queen", S::Demo, 1, [](S& s) { return tell(s, "kind-requeened"); }},
        {"event: split", S::Demo, 1, [](S& s) { return tell(s, "kind-split"); }},
        {"event: merged", S::Demo, 1, [](S& s) { return tell(s, "kind-merged"); }},
        {"event: moved", S::Demo, 1, [](S& s) { return tell(s, "kind-moved"); }},
        {"event: dead?", S::Demo, 1,
         [](S& s) { return tell(s, "kind-dead") && press(s, {"mainAction"}) && at(s, "keepAnyway"); }},
        {"event: kept", S::Demo, 1, openKept},
        {"event: take back?", S::Demo, 1,
         [](S& s) { return openKept(s) && press(s, {"takeBack"}) && at(s, "takeBackForGood"); }},
        {"event: whole yard", S::Demo, 1,
         [](S& s) { return editYard(s) && press(s, {"supersOnAll"}) && at(s, "eventPage"); }},
        {"on a day", S::Demo, 1,
         [](S& s) { return openColony(s) && press(s, {"corner"}) && at(s, "onDayPage"); }},
        {"on a day: treatment", S::Demo, 1, dayOfTreatment},
        {"on a day: which", S::Demo, 1,
         [](S& s) {
             return openColony(s) && press(s, {"corner", "mainAction", "onDayEarlier"}) && at(s, "showDay");
         }},
        {"on a day: no such day", S::Demo, 1,
         [](S& s) {
             if (!openColony(s) || !press(s, {"corner", "mainAction"}))
                 return false;
             s.find(QStringLiteral("onDayField"))->setProperty("text", QStringLiteral("31 April"));
             return press(s, {"showDay"}) && at(s, "problem");
         }},
        {"on a day: yard", S::Demo, 1,
         [](S& s) { return editYard(s) && press(s, {"yardOnADay"}) && at(s, "onDayPage"); }},
        {"yard lines", S::Demo, 1,
         [](S& s) { return editYard(s) && press(s, {"yardLines"}) && at(s, "yardLinesPage"); }},
        {"yard lines: by season", S::Demo, 1,
         [](S& s) {
             return editYard(s) && press(s, {"yardLines", "region-Ontario"}) && at(s, "yardLinesPage");
         }},
    };
    return screens;
}

} // namespace halfcup::screens
