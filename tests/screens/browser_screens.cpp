// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The pages that differ where nobody but the program sees its folders: in a browser.
#include "screens.h"

#include "touch/navigator.h"

namespace halfcup::screens {

namespace {

bool open(Stage& stage, touch::Navigator::Page page) {
    stage.device().folders->setSeen(false);
    stage.device().files->setCanShare(true);
    stage.device().files->setCanChoose(true);
    stage.app().navigator()->open(page);
    stage.settle();
    return true;
}

bool openAndWrite(Stage& stage, touch::Navigator::Page page, const char* told) {
    return open(stage, page) && stage.touch(QStringLiteral("mainAction")) && stage.find(QLatin1String(told));
}

} // namespace

const std::vector<Screen>& browserScreens() {
    using S = Stage;
    using P = touch::Navigator;
    static const std::vector<Screen> screens{
        {"browser: share", S::Demo, 1, [](S& s) { return open(s, P::Share); }},
        {"browser: share, written", S::Demo, 1, [](S& s) { return openAndWrite(s, P::Share, "result"); }},
        {"browser: for people, written", S::Demo, 1,
         [](S& s) { return openAndWrite(s, P::Export, "result"); }},
        {"browser: keep safe", S::Demo, 1, [](S& s) { return open(s, P::Backup); }},
        {"browser: keep safe, made", S::Demo, 1, [](S& s) { return openAndWrite(s, P::Backup, "result"); }},
        {"browser: table", S::Nothing, 1, [](S& s) { return open(s, P::ImportTable); }},
        {"browser: take in", S::Nothing, 1,
         [](S& s) {
             s.app().share()->takeIn();
             return open(s, P::Plan);
         }},
        {"browser: setup", S::Nothing, 1, [](S& s) { return open(s, P::Setup); }},
    };
    return screens;
}

} // namespace halfcup::screens
