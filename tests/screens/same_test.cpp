// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "other_phone.h"
#include "two_phones.h"

#include "store/joining.h"
#include "store/not_same.h"
#include "touch/navigator.h"

#include <QTest>

#include <algorithm>

using namespace halfcup;
using namespace halfcup::screens;
using halfcup::touch::Navigator;

/// What two phones made twice is joined and separated, and what lost between them is put back, touched on the
/// real pages. The distance of 40 m is that of two_phones.cpp, on the sphere of the IUGG's mean radius.
class SameTest : public QObject {
    Q_OBJECT

    static QString textOf(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QString();
    }
    static void openYards(Stage& stage) {
        stage.app().navigator()->home();
        stage.app().navigator()->open(Navigator::Yards);
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("yardsPage")));
    }

private slots:
    void nothingIsAskedWhereNothingWasMadeTwice() {
        Stage stage(Stage::Demo);
        openYards(stage);
        QCOMPARE(stage.app().same()->count(), 0);
        QVERIFY(!stage.find(QStringLiteral("maybeSame")));
        QVERIFY(!stage.find(QStringLiteral("shownAsOne")));
    }

    void yesJoinsAndSeparateAgainPutsBack() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        phones.bringHere();
        openYards(stage);
        QCOMPARE(stage.app().same()->countLine(), QStringLiteral("2 pairs may be the same"));
        QVERIFY(press(stage, {"maybeSame"}));
        QCOMPARE(textOf(stage, "reason"), QStringLiteral("They are named alike and lie 40 m apart."));
        const auto pair = stage.app().same()->pair()->entries();
        QCOMPARE(pair.size(), 2);
        QCOMPARE(pair[0].title, QStringLiteral("By the ford")); // made first
        QCOMPARE(pair[0].detail, QStringLiteral("1 colony"));
        QCOMPARE(pair[0].note, QStringLiteral("1 wash, on 5 June 2026"));
        QCOMPARE(pair[1].title, QStringLiteral("by the Ford"));
        QCOMPARE(pair[1].note, QStringLiteral("2 washes, from 6 June 2026 to 14 June 2026"));

        QVERIFY(press(stage, {"mainAction"})); // yes
        QCOMPARE(textOf(stage, "result"),
                 QStringLiteral("Both are now shown as \"By the ford\"; nothing was thrown away."));
        QCOMPARE(phones.here().yards().size(), std::size_t{1});
        QCOMPARE(stage.app().same()->title(), QStringLiteral("Same colony?"));
        QVERIFY(press(stage, {"mainAction"})); // and their colonies
        QCOMPARE(phones.here().samplesOf(phones.ourColony.id).size(), std::size_t{3});
        QCOMPARE(stage.app().same()->count(), 0);
        QCOMPARE(stage.app().here()->colonies()->count(), 1); // one hive at the yard, not two

        QVERIFY(press(stage, {"mainAction"})); // back to the yards
        QVERIFY(stage.find(QStringLiteral("yardsPage")));
        QVERIFY(press(stage, {"shownAsOne"}));
        const auto joined = stage.app().same()->joined()->entries();
        QCOMPARE(joined.size(), 2);
        for (const auto& entry : joined) {
            QVERIFY(press(stage, QStringLiteral("joined-") + entry.key));
            QVERIFY(press(stage, {"separate"}));
        }
        QCOMPARE(phones.here().yards().size(), std::size_t{2});
        QCOMPARE(phones.here().samplesOf(phones.ourColony.id).size(), std::size_t{1});
        QCOMPARE(phones.here().samplesOf(phones.theirColony.id).size(), std::size_t{2});
        QCOMPARE(stage.app().same()->count(), 0); // the keeper has answered
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void noIsRememberedAndWritesNoRecord() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        phones.bringHere();
        openYards(stage);
        QVERIFY(press(stage, {"maybeSame", "corner"}));
        QVERIFY(!textOf(stage, "result").isEmpty());
        QCOMPARE(stage.app().same()->count(), 0); // two yards have no colonies in common
        QVERIFY(store::Joining(phones.here()).all().empty());
        QCOMPARE(store::NotSame(phones.here()).all().size(), std::size_t{1});
        QCOMPARE(phones.here().history(records::Kind::Yard, phones.theirYard.id).size(),
                 phones.there().history(records::Kind::Yard, phones.theirYard.id).size());
        openYards(stage);
        QVERIFY(!stage.find(QStringLiteral("maybeSame")));
    }

    void theYardAtHandIsStillThere() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        phones.bringHere();
        stage.app().here()->pickYard(QString::fromStdString(phones.theirYard.id));
        openYards(stage);
        QVERIFY(press(stage, {"maybeSame", "mainAction"}));
        QCOMPARE(stage.app().here()->yardId().toStdString(), phones.ourYard.id);
        QCOMPARE(stage.app().here()->colonies()->count(), 2);
    }

    void whatLostIsPutBack() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        phones.bringHere();
        phones.bringThere();
        stage.device().clock->advance(60'000);
        phones.wait(600'000);
        records::Colony ours = phones.ourColony;
        ours.label = "4 by the gate";
        phones.here().save(ours);
        records::Colony theirs = phones.ourColony;
        theirs.label = "4a";
        phones.there().save(theirs); // later
        phones.bringHere();
        QCOMPARE(phones.here().colony(ours.id)->label, std::string("4a"));

        stage.app().here()->openColony(QString::fromStdString(ours.id));
        stage.settle();
        QVERIFY(press(stage, {"colonyHistory"}));
        const auto entries = stage.app().history()->values()->entries();
        QCOMPARE(entries.size(), 3);
        QCOMPARE(entries[0].title, QStringLiteral("4a"));
        QCOMPARE(entries[0].section, QStringLiteral("Label"));
        QVERIFY(entries[0].key.isEmpty()); // it is so now
        QVERIFY(entries[0].detail.contains(QLatin1String("another phone, ")));
        QCOMPARE(entries[1].title, QStringLiteral("4 by the gate"));
        QVERIFY(entries[1].detail.startsWith(QLatin1String("15 June 2026 at ")));
        QVERIFY(entries[1].detail.endsWith(QLatin1String(", this phone")));
        QVERIFY(press(stage, {"value-1", "putBack"}));
        QCOMPARE(phones.here().colony(ours.id)->label, std::string("4 by the gate"));
        QVERIFY(!textOf(stage, "result").isEmpty());
        phones.bringThere();
        QCOMPARE(phones.there().colony(ours.id)->label, std::string("4 by the gate"));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void whatClashedIsLookedAtFromTheFileThatBroughtIt() {
        Stage stage(Stage::Nothing);
        OtherPhone other(stage.device().clock->now().utcMs + 1000);
        const records::Yard yard = other.addYard("Mill Race");
        const records::Sample wash = other.addWash(other.addColony(yard, "12"));
        QTemporaryDir folder;
        const auto takeIn = [&](const char* name) {
            stage.app().openFiles({other.write(folder.path(), QLatin1String(name))});
            stage.settle();
            QVERIFY(press(stage, {"mainAction"}));
        };
        takeIn("first.halfcup");
        QVERIFY(!stage.find(QStringLiteral("lookAt-yard/") + QString::fromStdString(yard.id)));
        stage.device().clock->advance(60'000);
        records::Yard renamed = yard;
        renamed.name = "Mill, upper";
        stage.program().store().save(renamed);
        other.wait(600'000);
        renamed.name = "Mill, lower"; // later
        other.store().save(renamed);
        records::Sample gone = *other.store().sample(wash.id);
        gone.removed = true;
        other.store().save(gone);
        takeIn("second.halfcup");
        QVERIFY(press(stage, QStringLiteral("lookAt-yard/") + QString::fromStdString(yard.id)));
        QVERIFY(stage.find(QStringLiteral("historyPage")));
        QVERIFY(press(stage, {"value-1", "putBack"}));
        QCOMPARE(stage.program().store().yard(yard.id)->name, std::string("Mill, upper"));
        stage.app().navigator()->back();
        stage.settle();
        QVERIFY(press(stage, QStringLiteral("lookAt-sample/") + QString::fromStdString(wash.id)));
        QVERIFY(press(stage, {"mainAction"})); // bring it back
        QVERIFY(!stage.program().store().sample(wash.id)->removed);
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void aLabelThatAnotherHiveHasNowIsNotPutBack() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        stage.device().clock->advance(60'000);
        records::Colony ours = phones.ourColony;
        ours.label = std::string("5");
        phones.here().save(ours);
        records::Colony other = phones.ourColony;
        other.id = phones.here().newId();
        phones.here().save(other); // is called 4 now
        auto* history = stage.app().history();
        QVERIFY(history->show(QStringLiteral("colony"), QString::fromStdString(ours.id)));
        history->ask(history->values()->entries().at(1).key);
        history->putBack();
        QVERIFY(history->isFailed());
        QVERIFY(history->result().contains(QLatin1String("Another colony of this yard is called 4")));
        QCOMPARE(phones.here().colony(ours.id)->label, std::string("5"));
    }

    void whatWasRemovedElsewhereComesBack() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        phones.bringThere();
        phones.wait(600'000);
        records::Sample gone = *phones.there().sample(phones.ourWash.id);
        gone.removed = true;
        phones.there().save(gone);
        phones.bringHere();
        QVERIFY(phones.here().samplesOf(phones.ourColony.id).empty());
        QVERIFY(stage.app().history()->show(QStringLiteral("sample"), QString::fromStdString(gone.id)));
        stage.app().navigator()->open(Navigator::History);
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("removedLine")));
        QVERIFY(press(stage, {"mainAction"})); // bring it back
        QCOMPARE(phones.here().samplesOf(phones.ourColony.id).size(), std::size_t{1});
        QVERIFY(!stage.find(QStringLiteral("removedLine")));
    }

    void ofWhatHasNoPastNothingIsShown() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        auto* history = stage.app().history();
        QVERIFY(!history->show(QStringLiteral("yard"), QStringLiteral("no such id")));
        QVERIFY(!history->show(QStringLiteral("queen bee"), QString::fromStdString(phones.ourYard.id)));
        QVERIFY(!history->show(QStringLiteral("round"), QString::fromStdString(phones.ourYard.id)));
        QVERIFY(history->show(QStringLiteral("yard"), QString::fromStdString(phones.ourYard.id)));
        QCOMPARE(history->values()->count(), 0);
        history->ask(QStringLiteral("7")); // no such row
        history->putBack();
        QVERIFY(history->result().isEmpty());
    }

    void theYardsPageTakesUpWhatWasPutBack() {
        Stage stage(Stage::Nothing);
        TwoPhones phones(stage);
        stage.device().clock->advance(60'000);
        records::Yard moved = phones.ourYard;
        moved.name = "Mill";
        moved.position->latitudeDeg = 48.2;
        phones.here().save(moved);
        stage.app().yards()->edit(QString::fromStdString(moved.id));
        stage.settle();
        QVERIFY(press(stage, {"yardHistory"}));
        const auto entries = stage.app().history()->values()->entries();
        const auto place = std::ranges::find_if(
            entries, [](const auto& entry) { return entry.title.startsWith(QLatin1String("48.11730")); });
        QVERIFY(place != entries.end());
        QVERIFY(press(stage, QStringLiteral("value-%1").arg(place - entries.begin())));
        QVERIFY(press(stage, {"putBack"}));
        QCOMPARE(phones.here().yard(moved.id)->position->latitudeDeg, 48.1173);
        stage.app().navigator()->back();
        stage.settle();
        QVERIFY(press(stage, {"done"})); // keeps what stands on the page
        QCOMPARE(phones.here().yard(moved.id)->position->latitudeDeg, 48.1173);
        QCOMPARE(phones.here().yard(moved.id)->name, std::string("Mill"));
    }
};

QTEST_MAIN(SameTest)
#include "same_test.moc"
