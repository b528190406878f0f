// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The pages of the season and of treatments, each in the states a keeper can come to.
#include "screens.h"

#include "touch/navigator.h"

#include <QTest>

namespace halfcup::screens {

namespace {

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

/// Only the rows in sight exist for sure: down the list until the one is there.
bool pressRow(Stage& stage, const char* name) {
    QQuickItem* list = stage.find(QStringLiteral("scroll"));
    for (int step = 0; list && step < 40 && !at(stage, name); ++step) {
        list->setProperty("contentY", list->property("contentY").toDouble() + 100);
        stage.settle();
    }
    return press(stage, {name});
}

bool toTheTreatment(Stage& stage) { // for the whole yard, ready to be filled in
    return toTheChoices(stage) && press(stage, {"corner"}) && pressRow(stage, "choice-formic-acid") &&
           press(stage, {"mainAction"}) && at(stage, "treatmentPage");
}

bool keepIt(Stage& stage) {
    if (!type(stage, "product", "formic acid pads") || !type(stage, "withdrawal_days", "0") ||
        !press(stage, {"mainAction"}))
        return false;
    return !at(stage, "keepAllTheSame") || press(stage, {"keepAllTheSame"});
}

bool openCheck(Stage& stage, bool worked) {
    const auto all = stage.program().store().allTreatments();
    for (auto each = all.rbegin(); each != all.rend(); ++each) {
        stage.app().check()->show(QString::fromStdString(each->treatment.id));
        if (stage.app().check()->found().efficacyQ50.has_value() == worked) {
            stage.app().navigator()->open(touch::Navigator::Check);
            stage.settle();
            return at(stage, "checkPage");
        }
    }
    return false;
}

} // namespace

bool type(Stage& stage, const char* field, const char* text) {
    if (!stage.touch(QLatin1String(field)))
        return false;
    QTest::keyClick(stage.window(), Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(stage.window(), Qt::Key_Delete);
    for (const char* letter = text; *letter; ++letter)
        QTest::keyClick(stage.window(), *letter);
    QTest::keyClick(stage.window(), Qt::Key_Return); // as the keyboard of a phone ends a field
    stage.settle();
    return true;
}

bool toTheChoices(Stage& stage) {
    return toTheAnswer(stage, 12) && press(stage, {"treat"}) && at(stage, "treatPage");
}

const std::vector<Screen>& seasonScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"season", S::Demo, 1, [](S& s) { return press(s, {"season"}) && at(s, "seasonPage"); }},
        {"season, marks", S::Demo, 1,
         [](S& s) {
             return press(s, {"season", "marksMeaning"}) && at(s, "marks");
         }},
        {"season, nothing", S::Nothing, 1,
         [](S& s) {
             s.app().navigator()->open(touch::Navigator::Season);
             s.settle();
             return at(s, "seasonPage");
         }},
        {"season, calendar", S::Demo, 1,
         [](S& s) {
             return press(s, {"season", "mainAction"}) && at(s, "result");
         }},
        {"treat", S::Demo, 1, toTheChoices},
        {"treat, whole yard", S::Demo, 1, [](S& s) { return toTheChoices(s) && press(s, {"corner"}); }},
        {"situation", S::Demo, 1,
         [](S& s) { return toTheChoices(s) && press(s, {"mainAction"}) && at(s, "situationPage"); }},
        {"situation, whole yard", S::Demo, 1,
         [](S& s) {
             return toTheChoices(s) && press(s, {"corner", "mainAction"}) && at(s, "situationPage");
         }},
        {"situation, bad forecast", S::Demo, 1,
         [](S& s) {
             return toTheChoices(s) && press(s, {"mainAction"}) && type(s, "highs", "24 200 26") &&
                    press(s, {"mainAction"}) && at(s, "problem");
         }},
        {"choice, formic acid", S::Demo, 1,
         [](S& s) { return toTheChoices(s) && pressRow(s, "choice-formic-acid") && at(s, "choicePage"); }},
        {"choice, later", S::Demo, 1,
         [](S& s) { return toTheChoices(s) && pressRow(s, "choice-amitraz") && press(s, {"later"}); }},
        {"choice, measure", S::Demo, 1,
         [](S& s) { return toTheChoices(s) && pressRow(s, "choice-drone-brood-removal"); }},
        {"treatment, new", S::Demo, 1, toTheTreatment},
        {"treatment, more", S::Demo, 1,
         [](S& s) { return toTheTreatment(s) && press(s, {"showMore"}) && at(s, "supplier"); }},
        {"treatment, colonies", S::Demo, 1,
         [](S& s) { return toTheTreatment(s) && press(s, {"pickColonies"}) && at(s, "coloniesDone"); }},
        {"treatment, no product", S::Demo, 1,
         [](S& s) { return toTheTreatment(s) && press(s, {"mainAction"}) && at(s, "problem"); }},
        {"treatment, questions", S::Demo, 1,
         [](S& s) {
             return toTheTreatment(s) && type(s, "product", "formic acid pads") && press(s, {"mainAction"}) &&
                    at(s, "keepAllTheSame");
         }},
        {"treatment, kept", S::Demo, 1,
         [](S& s) { return toTheTreatment(s) && keepIt(s) && at(s, "statusLine"); }},
        {"treatment, change", S::Demo, 1,
         [](S& s) { return toTheTreatment(s) && keepIt(s) && press(s, {"corner"}) && at(s, "product"); }},
        {"treatment, leave", S::Demo, 1,
         [](S& s) {
             return toTheTreatment(s) && type(s, "batch", "A-1") && press(s, {"back"}) && at(s, "leaveIt");
         }},
        {"treatment, remove", S::Demo, 1,
         [](S& s) { return toTheTreatment(s) && keepIt(s) && press(s, {"removeTreatment"}); }},
        {"check", S::Demo, 1, [](S& s) { return openCheck(s, true); }},
        {"check, marks", S::Demo, 1,
         [](S& s) { return openCheck(s, true) && press(s, {"marksMeaning"}) && at(s, "marks"); }},
        {"compare", S::Demo, 0, [](S& s) { return pressRow(s, "compare") && at(s, "comparePage"); }},
        {"compare, marks and words", S::Demo, 0,
         [](S& s) {
             return pressRow(s, "compare") && press(s, {"marksMeaning", "inWords"}) && at(s, "marks");
         }},
        {"check, cannot tell", S::Demo, 1, [](S& s) { return openCheck(s, false); }},
    };
    return screens;
}

} // namespace halfcup::screens
