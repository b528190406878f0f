// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The pages of what goes to another phone and what comes from one.
#include "other_phone.h"
#include "screens.h"

#include "touch/navigator.h"

#include <QFile>

namespace halfcup::screens {

namespace {

constexpr std::int64_t dayMs = 24LL * 3'600'000;
constexpr std::int64_t hourMs = 3'600'000;

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

std::int64_t now(Stage& stage) {
    return stage.device().clock->now().utcMs;
}

QString folder(Stage& stage) {
    return stage.device().folders->exports().path;
}

bool toTheHub(Stage& stage) {
    stage.app().share()->plan()->setFolders({folder(stage)});
    stage.app().navigator()->open(touch::Navigator::Share);
    stage.settle();
    return at(stage, "sharePage");
}

bool toTheFiles(Stage& stage) {
    return toTheHub(stage) && press(stage, {"takeIn"}) && at(stage, "planPage");
}

bool open(Stage& stage, const QString& path) {
    stage.app().share()->plan()->setFolders({folder(stage)});
    stage.app().openFiles({path});
    stage.settle();
    return at(stage, "planPage");
}

QString nameOf(const char* day) {
    return QStringLiteral("halfcup-%1.halfcup").arg(QLatin1String(day));
}

/// Twelve colonies with two years of washes, from a phone that this one has not met.
QString fromAStranger(Stage& stage) {
    OtherPhone other(now(stage) - 700 * dayMs);
    const records::Yard yard = other.addYard("The old orchard behind the upper mill");
    std::vector<records::Colony> colonies;
    for (int i = 1; i <= 12; ++i)
        colonies.push_back(other.addColony(yard, i == 3 ? "Nucleus east 3" : std::to_string(i)));
    for (int month = 0; month < 23; ++month) {
        other.wait(30 * dayMs);
        for (const records::Colony& colony : colonies)
            other.addWash(colony);
        other.addStrength(colonies[0], 5 + month % 4);
    }
    return other.write(folder(stage), nameOf("2026-06-14-1830"));
}

QString damaged(Stage& stage, const std::vector<int>& lines, bool cut) {
    const QString path = fromAStranger(stage);
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite))
        return {};
    QByteArrayList all = file.readAll().split('\n');
    for (const int line : lines)
        all[line - 1].replace("\"kind\"", "\"kinb\"");
    QByteArray bytes = all.join('\n');
    if (cut)
        bytes.chop(bytes.size() / 3);
    file.resize(0);
    file.seek(0);
    file.write(bytes);
    return path;
}

/// Both phones know the yard and its colonies, and both change them.
QString afterBothChanged(Stage& stage) {
    store::Store& store = stage.program().store();
    const records::Yard yard = store.yards().front();
    const QString first = QDir(folder(stage)).filePath(nameOf("first"));
    store::Outgoing out(store);
    if (exchange::writeSafely(
            first, [&](const exchange::ByteSink& sink) { exchange::writeExchange(out, sink, now(stage)); }))
        return {};
    OtherPhone other(now(stage) + hourMs);
    other.takeIn(first);
    stage.device().clock->advance(2 * hourMs); // ours are later
    auto here = store.colonies(yard.id);
    here[0].label = "Queen of the west, the grey hive";
    here[0].note = "stands askew";
    store.save(here[0]);
    auto there = other.store().colonies(yard.id);
    there[0].label = "West 1";
    there[0].note = "a new floor is needed, and the lid leaks on the side of the brook";
    other.store().save(there[0]);
    here[1].label = "B2";
    store.save(here[1]);
    other.wait(3 * hourMs); // and this one of theirs is later still
    there[1].label = "B3";
    other.store().save(there[1]);
    there[2].removed = true;
    other.store().save(there[2]);
    records::Yard theirs = *other.store().yard(yard.id);
    theirs.registrationNumber = "DE 01 234 5678";
    other.store().save(theirs);
    other.addWash(there[1]);
    return other.write(folder(stage), nameOf("2026-06-15-1400"));
}

bool notOurs(Stage& stage) {
    const QString path = QDir(folder(stage)).filePath(QStringLiteral("holiday.halfcup"));
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write("not ours\n") > 0 && file.flush() &&
           open(stage, path) && at(stage, "problem");
}

bool takenIn(Stage& stage) {
    return open(stage, fromAStranger(stage)) && press(stage, {"mainAction"}) && at(stage, "result");
}

} // namespace

const std::vector<Screen>& planScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"share: written", S::Demo, 1,
         [](S& s) { return toTheHub(s) && press(s, {"mainAction"}) && at(s, "result"); }},
        {"share: written, to show", S::Demo, 1,
         [](S& s) {
             s.device().files->setCanShare(true, false);
             return toTheHub(s) && press(s, {"mainAction"}) && at(s, "showWritten");
         }},
        {"share: cannot be written", S::Demo, 1,
         [](S& s) {
             s.device().folders->setExportsTrouble(device::FolderTrouble::CannotWrite);
             return toTheHub(s) && press(s, {"mainAction"}) && at(s, "problem");
         }},
        {"share: last taken in", S::Demo, 1,
         [](S& s) { return takenIn(s) && press(s, {"back"}) && toTheHub(s) && at(s, "lastTaken"); }},
        {"take in: no files", S::Nothing, 1, toTheFiles},
        {"take in: files", S::Demo, 1,
         [](S& s) {
             s.device().files->setCanChoose(true);
             OtherPhone other(now(s));
             for (const char* day : {"2026-05-01-0900", "2026-05-14-2115", "2026-06-01-1200",
                                     "of the east phone", "2026-06-14-1830 (copy)", "2026-06-15-0700"})
                 other.write(folder(s), nameOf(day));
             return toTheFiles(s);
         }},
        {"take in: plan", S::Demo, 1, [](S& s) { return open(s, fromAStranger(s)); }},
        {"take in: both changed", S::Demo, 1, [](S& s) { return open(s, afterBothChanged(s)); }},
        {"take in: damaged", S::Demo, 1,
         [](S& s) {
             return open(s, damaged(s, {5, 9, 12, 13, 14, 15, 16, 20, 31, 40}, false));
         }},
        {"take in: cut", S::Nothing, 1, [](S& s) { return open(s, damaged(s, {}, true)); }},
        {"take in: not ours", S::Demo, 1, notOurs},
        {"take in: nothing new", S::Demo, 1,
         [](S& s) {
             return toTheHub(s) && press(s, {"mainAction", "takeIn"}) &&
                    s.touch(QStringLiteral("file-") +
                            s.app().share()->plan()->files()->entries().first().key) &&
                    at(s, "headline");
         }},
        {"take in: taken in", S::Demo, 1, takenIn},
        {"take in: maybe the same", S::Nothing, 1,
         [](S& s) {
             s.app().yards()->makeNew();
             if (!s.app().yards()->save(QStringLiteral("Mill Race"), QStringLiteral("3"), {}))
                 return false;
             s.app().navigator()->home();
             OtherPhone other(now(s));
             other.addYard("mill race");
             return open(s, other.write(folder(s), nameOf("2026-06-14-1830"))) && press(s, {"mainAction"}) &&
                    at(s, "maybeSame");
         }},
        {"take in: take back?", S::Demo, 1,
         [](S& s) { return takenIn(s) && press(s, {"undo"}) && at(s, "takeItBack"); }},
        {"take in: taken back", S::Demo, 1,
         [](S& s) {
             return takenIn(s) && press(s, {"undo", "takeItBack"}) && at(s, "result");
         }},
        {"take in: no more back", S::Demo, 1,
         [](S& s) {
             if (!takenIn(s))
                 return false;
             store::Store& store = s.program().store();
             for (const records::Yard& yard : store.yards())
                 if (yard.name.starts_with("The old orchard")) {
                     records::Colony colony;
                     colony.id = store.newId();
                     colony.yardId = yard.id;
                     colony.label = "13";
                     store.save(colony);
                 }
             return press(s, {"undo", "takeItBack"}) && at(s, "problem");
         }},
        {"opened: another ending", S::Demo, 1,
         [](S& s) {
             s.app().openFiles({QStringLiteral("/tmp/holiday in the hills with a long name.jpeg")});
             s.settle();
             return at(s, "understood");
         }},
    };
    return screens;
}

} // namespace halfcup::screens
