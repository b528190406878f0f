// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "two_phones.h"

#include "other_phone.h"
#include "store/merge.h"
#include "store/outgoing.h"
#include "touch/navigator.h"

namespace halfcup::screens {

namespace {

constexpr std::int64_t dayMs = 86'400'000;

void take(store::Store& into, store::Store& from) {
    store::Merge merge(into);
    store::Outgoing outgoing(from);
    merge.from({"parcel", outgoing.seen(), false});
    outgoing.forEachPart([&](const records::RecordPart& part) { merge.take(part); });
    merge.finish();
    merge.keep();
}

records::Yard makeYard(store::Store& store, const std::string& name, double latitudeDeg) {
    records::Yard yard;
    yard.id = store.newId();
    yard.name = name;
    yard.position = records::Position{latitudeDeg, 11.5167, 6.0};
    store.save(yard);
    return yard;
}

records::Colony makeColony(store::Store& store, const records::Yard& yard) {
    records::Colony colony;
    colony.id = store.newId();
    colony.yardId = yard.id;
    colony.label = std::string("4");
    store.save(colony);
    return colony;
}

records::Sample makeWash(store::Store& store, const records::Colony& colony, std::int64_t atMs) {
    records::Sample sample;
    sample.id = store.newId();
    sample.colonyId = colony.id;
    sample.yardId = colony.yardId;
    sample.state = records::SampleState::Finished;
    sample.startedAtMs = atMs;
    sample.scoopedAtMs = atMs;
    sample.finishedAtMs = atMs + 600'000;
    store.save(sample);
    return sample;
}

} // namespace

TwoPhones::TwoPhones(Stage& stage)
    : m_stage(stage) {
    const std::int64_t now = stage.device().clock->now().utcMs;
    m_thereMs = now + 60'000; // so that what this phone makes is older
    m_there = std::make_unique<store::Store>(
        m_folder.filePath(QStringLiteral("there.db")).toStdString(),
        store::StoreHost{[this] { return m_thereMs; }, [this] { return m_chance += 0x9E3779B97F4A7C15U; }});
    ourYard = makeYard(here(), "By the ford", 48.1173);
    ourColony = makeColony(here(), ourYard);
    ourWash = makeWash(here(), ourColony, now - 10 * dayMs);
    theirYard = makeYard(there(), "by the Ford", 48.1173 + 40 / 111'195.08); // 40 m further north
    theirColony = makeColony(there(), theirYard);
    theirWash = makeWash(there(), theirColony, now - 9 * dayMs);
    makeWash(there(), theirColony, now - dayMs);
}

void TwoPhones::bringHere() {
    take(here(), there());
    m_stage.app().here()->refresh();
}

void TwoPhones::bringThere() {
    take(there(), here());
}

namespace {

bool at(Stage& stage, const char* name) {
    return stage.find(QLatin1String(name)) != nullptr;
}

bool toYards(Stage& stage) {
    stage.app().navigator()->open(touch::Navigator::Yards);
    stage.settle();
    return at(stage, "yardsPage");
}

bool toSame(Stage& stage) {
    TwoPhones phones(stage);
    phones.bringHere();
    return toYards(stage) && press(stage, {"maybeSame"}) && at(stage, "samePage");
}

/// Two clashes, of a label and of a note, and a name changed here.
bool toHistory(Stage& stage, bool removed) {
    TwoPhones phones(stage);
    phones.bringHere();
    phones.bringThere();
    stage.device().clock->advance(120'000);
    phones.wait(180'000);
    records::Colony ours = phones.ourColony;
    ours.label = "4 by the gate";
    ours.note = "strong in spring";
    phones.here().save(ours);
    records::Colony theirs = phones.ourColony;
    theirs.label = "4a";
    theirs.note = "to be split in May, before the lime flow";
    theirs.removed = removed;
    phones.there().save(theirs);
    phones.bringHere();
    const bool shown =
        stage.app().history()->show(QStringLiteral("colony"), QString::fromStdString(phones.ourColony.id));
    stage.app().navigator()->open(touch::Navigator::History);
    stage.settle();
    return shown && at(stage, "historyPage");
}

/// A file that brings a clash and a removal, taken in.
bool toLookAt(Stage& stage) {
    static QTemporaryDir folder;
    OtherPhone other(stage.device().clock->now().utcMs + 1000);
    const records::Yard yard = other.addYard("Mill Race");
    const records::Sample wash = other.addWash(other.addColony(yard, "12"));
    const auto takeIn = [&](const char* name) {
        stage.app().openFiles({other.write(folder.path(), QLatin1String(name))});
        stage.settle();
        return press(stage, {"mainAction"});
    };
    if (!takeIn("first.halfcup"))
        return false;
    stage.device().clock->advance(60'000);
    records::Yard renamed = yard;
    renamed.name = "Mill, upper";
    stage.program().store().save(renamed);
    other.wait(600'000);
    renamed.name = "Mill, lower";
    other.store().save(renamed);
    records::Sample gone = *other.store().sample(wash.id);
    gone.removed = true;
    other.store().save(gone);
    return takeIn("second.halfcup") && stage.app().share()->plan()->toLookAt()->count() == 2;
}

} // namespace

const std::vector<Screen>& twoPhonesScreens() {
    using S = Stage;
    static const std::vector<Screen> screens{
        {"yards, may be the same", S::Nothing, 1,
         [](S& s) {
             TwoPhones phones(s);
             phones.bringHere();
             return toYards(s) && at(s, "maybeSame");
         }},
        {"same: two yards", S::Nothing, 1, toSame},
        {"same: two colonies", S::Nothing, 1, [](S& s) { return toSame(s) && press(s, {"mainAction"}); }},
        {"same: joined", S::Nothing, 1,
         [](S& s) {
             return toSame(s) && press(s, {"mainAction", "mainAction"}) && at(s, "result");
         }},
        {"same: separate?", S::Nothing, 1,
         [](S& s) {
             if (!toSame(s) || !press(s, {"mainAction"}))
                 return false;
             const QString row = "joined-" + s.app().same()->joined()->entries().first().key;
             return press(s, {qPrintable(row)}) && at(s, "separate");
         }},
        {"yards, shown as one", S::Nothing, 1,
         [](S& s) {
             return toSame(s) && press(s, {"mainAction", "mainAction", "mainAction"}) && at(s, "shownAsOne");
         }},
        {"what changed", S::Nothing, 1, [](S& s) { return toHistory(s, false); }},
        {"take in: to look at", S::Nothing, 1, toLookAt},
        {"what changed, nothing", S::Demo, 1,
         [](S& s) {
             s.app().here()->openColony(s.app().here()->colonies()->entries().first().colonyId);
             s.settle();
             return press(s, {"colonyHistory"}) && at(s, "historyPage");
         }},
        {"what changed, removed", S::Nothing, 1, [](S& s) { return toHistory(s, true); }},
        {"what changed: put back?", S::Nothing, 1,
         [](S& s) {
             if (!toHistory(s, false))
                 return false;
             const auto entries = s.app().history()->values()->entries();
             for (qsizetype i = 0; i < entries.size(); ++i)
                 if (!entries[i].key.isEmpty())
                     return press(s, {qPrintable(QStringLiteral("value-%1").arg(i))}) && at(s, "putBack");
             return false;
         }},
    };
    return screens;
}

} // namespace halfcup::screens
