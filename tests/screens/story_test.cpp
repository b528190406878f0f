// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "screens.h"

#include "touch/navigator.h"

#include <QTest>

#include <algorithm>

using namespace halfcup;
using namespace halfcup::screens;
using halfcup::touch::Navigator;

/// What happens to colonies, told and taken back on the real pages with a set clock (15 June 2026 at first);
/// and the days, lines and visits of their yard. The duty to keep product, course and withdrawal: Regulation
/// (EU) 2019/6, Article 108; the lines of Ontario: handbook "lines".
class StoryTest : public QObject {
    Q_OBJECT

    // A yard of three colonies, and the page of the first.
    static void makeYard(Stage& stage, const char* name = "Alder") {
        stage.app().yards()->makeNew();
        QVERIFY(stage.app().yards()->save(QLatin1String(name), QStringLiteral("3"), {}));
        QVERIFY(stage.app().yards()->addColonies(QStringLiteral("1-3")));
        stage.app().navigator()->home();
        stage.settle();
    }

    static std::string colonyId(Stage& stage, const char* label, const char* yardName = "Alder") {
        for (const records::Yard& yard : stage.program().store().yards())
            for (const records::Colony& colony : stage.program().store().colonies(yard.id))
                if (yard.name == yardName && colony.label == label)
                    return colony.id;
        return {};
    }

    static void openColony(Stage& stage, const std::string& id) {
        stage.app().navigator()->home();
        stage.app().here()->openColony(QString::fromStdString(id));
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("colonyPage")));
    }

    static void write(Stage& stage, const char* field, const QString& text) {
        QQuickItem* item = stage.find(QLatin1String(field));
        QVERIFY2(item, field);
        item->setProperty("text", text);
    }

    static QString textOf(Stage& stage, const char* name) {
        const QQuickItem* item = stage.find(QLatin1String(name));
        return item ? item->property("text").toString() : QString();
    }

    static void keys(Stage& stage, const char* text) {
        for (const char* key = text; *key; ++key)
            QTest::keyClick(stage.window(), *key);
        stage.settle();
    }

    // All that is written on the page, scrolled out of sight or not.
    static QString page(Stage& stage) {
        QStringList texts;
        for (const QQuickItem* item : visibleItems(stage.window()->contentItem()))
            if (item->inherits("QQuickText"))
                texts.append(item->property("text").toString());
        return texts.join(u'\n');
    }

    static records::GivenTreatment course(Stage& stage, const std::string& colony, const records::Date& first,
                                          const records::Date& last, int withdrawalDays) {
        records::GivenTreatment given;
        given.treatment.id = stage.program().store().newId();
        given.treatment.yardId = stage.program().store().colony(colony)->yardId;
        given.treatment.substance = "thymol";
        given.treatment.product = "Trays from the shed";
        given.treatment.batch = "TH-0815";
        given.treatment.expiry = records::Date{2027, 9, 30};
        given.treatment.supplier = "The farm shop, 2 Mill Lane";
        given.treatment.quantity = "4 trays";
        given.treatment.prescriber = "the practice in town";
        given.treatment.doneBy = "the keeper";
        given.treatment.firstDay = first;
        given.treatment.lastDay = last;
        given.treatment.withdrawalDays = withdrawalDays;
        given.colonyIds = {colony};
        return given;
    }

private slots:
    void eventsChangeTheStateAndAreTakenBack() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        const std::string one = colonyId(stage, "1");
        openColony(stage, one);
        QVERIFY(textOf(stage, "stateLine").contains(QLatin1String("Nothing is written down")));
        QVERIFY(press(stage, {"somethingHappened", "kind-brood", "choice-capped"}));
        QCOMPARE(stage.window()->activeFocusItem()->objectName(),
                 QStringLiteral("mainAction")); // no keyboard
        QVERIFY(press(stage, {"dayEarlier", "mainAction"}));
        QCOMPARE(stage.app().navigator()->page(), Navigator::Colony);
        QCOMPARE(textOf(stage, "stateLine"), QStringLiteral("Capped brood on 14 June"));
        QVERIFY(press(stage,
                      {"somethingHappened", "mainAction", "mainAction"})); // supers on, the likeliest; keep
        QCOMPARE(textOf(stage, "stateLine"),
                 QStringLiteral("Supers on since 15 June, capped brood on 14 June"));
        QVERIFY(press(stage, {"somethingHappened", "kind-strength"}));
        write(stage, "eventField", QStringLiteral("7"));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(textOf(stage, "stateLine").contains(QLatin1String("7 frames of bees")));
        QCOMPARE(stage.app().colony()->story()->count(), 3);

        QVERIFY(press(stage, {"story-0"})); // the strength, told last
        write(stage, "eventNote", QStringLiteral("in a hurry"));
        QVERIFY(press(stage, {"mainAction"}));
        const auto noted = stage.program().store().eventsOf(one);
        QVERIFY(std::ranges::any_of(noted, [](const auto& event) { return event.words == "in a hurry"; }));
        QVERIFY(press(stage, {"story-0", "takeBack", "takeBackForGood"}));
        QVERIFY(!textOf(stage, "stateLine").contains(QLatin1String("frames")));
        QCOMPARE(stage.app().colony()->story()->count(), 2);
        const auto strength =
            std::ranges::find(noted, records::EventKind::Strength, &records::ColonyEvent::kind);
        const auto kept = stage.program().store().event(strength->id);
        QVERIFY(kept && kept->removed && kept->frames == 7.0); // found by its id: nothing is lost
        QVERIFY(stage.program().qmlWarnings().isEmpty());
    }

    void whatCannotBeIsSaidAndNotKept() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        const std::string one = colonyId(stage, "1");
        openColony(stage, one);
        QVERIFY(press(stage, {"somethingHappened", "kind-strength", "mainAction"}));
        QVERIFY(!textOf(stage, "problem").isEmpty());
        for (const char* frames : {"eight", "61", "-1"}) {
            write(stage, "eventField", QLatin1String(frames));
            QVERIFY(press(stage, {"mainAction"}));
            QVERIFY2(!textOf(stage, "problem").isEmpty(), frames);
        }
        stage.app().event()->type(QStringLiteral("8")); // as each key does
        write(stage, "eventField", QStringLiteral("8"));
        for (const char* day : {"16 June 2026", "31 April", "2026-02-29", "yesterday"}) {
            write(stage, "eventDay", QLatin1String(day));
            QVERIFY(press(stage, {"mainAction"}));
            QVERIFY2(!textOf(stage, "problem").isEmpty(), day);
            QVERIFY(stage.program().store().eventsOf(one).empty());
        }
        QVERIFY(!stage.app().event()->canGoLater());
        write(stage, "eventDay", QStringLiteral("2 June"));
        QVERIFY(press(stage, {"mainAction"}));
        const auto events = stage.program().store().eventsOf(one);
        QCOMPARE(events.size(), std::size_t{1});
        QVERIFY((events.front().day == records::Date{2026, 6, 2}));
        QVERIFY(press(stage, {"somethingHappened", "kind-moved"}));
        QVERIFY(page(stage).contains(QLatin1String("There is no other yard yet")));
    }

    void supersInsideAWithdrawalAreAskedAboutOnce() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        const std::string one = colonyId(stage, "1");
        stage.program().store().save(course(stage, one, {2026, 6, 1}, {2026, 6, 10}, 14));
        openColony(stage, one);
        QVERIFY(press(stage, {"somethingHappened", "mainAction", "mainAction"}));
        QVERIFY(page(stage).contains(QLatin1String("Trays from the shed")));
        QVERIFY(page(stage).contains(QLatin1String("24 June 2026"))); // the 10th and fourteen days
        QVERIFY(press(stage, {"notSo"}));
        QVERIFY(stage.program().store().eventsOf(one).empty());
        QVERIFY(press(stage, {"mainAction", "keepAnyway"}));
        QCOMPARE(stage.app().navigator()->page(), Navigator::Colony);
        QCOMPARE(stage.program().store().eventsOf(one).size(), std::size_t{1});

        const std::string two = colonyId(stage, "2"); // not treated: nothing is asked
        openColony(stage, two);
        QVERIFY(press(stage, {"somethingHappened", "mainAction", "mainAction"}));
        QCOMPARE(stage.program().store().eventsOf(two).size(), std::size_t{1});
    }

    void movedColonyStandsElsewhereAndCanGoBack() {
        Stage stage(Stage::Nothing);
        makeYard(stage, "Heath");
        makeYard(stage);
        const std::string one = colonyId(stage, "1");
        const std::string home = stage.program().store().colony(one)->yardId;
        const std::string heath = stage.program().store().colony(colonyId(stage, "1", "Heath"))->yardId;
        openColony(stage, one);
        QVERIFY(press(stage, {"somethingHappened", "kind-moved"}));
        QVERIFY(press(stage, QStringLiteral("choice-") + QString::fromStdString(heath)));
        QVERIFY(press(stage, {"mainAction"}));
        QCOMPARE(stage.program().store().colony(one)->yardId, heath);
        QCOMPARE(stage.app().here()->colonies()->count(), 2);
        QVERIFY(stage.app().onDay()->showColony(QString::fromStdString(one)));
        QCOMPARE(stage.app().onDay()->context(), QStringLiteral("Heath"));
        stage.app().onDay()->earlier();
        QCOMPARE(stage.app().onDay()->context(), QStringLiteral("Alder"));
        QVERIFY(stage.app().onDay()->showYard(QString::fromStdString(home)));
        QCOMPARE(stage.app().onDay()->colonies()->count(), 2);
        stage.app().onDay()->earlier();
        QCOMPARE(stage.app().onDay()->colonies()->count(), 3);
        QVERIFY(press(stage, {"story-0", "takeBack", "takeBackForGood"}));
        QCOMPARE(stage.program().store().colony(one)->yardId, home);
    }

    void deadIsAskedOnceAndLeavesTheLists() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        openColony(stage, colonyId(stage, "2"));
        QVERIFY(press(stage, {"somethingHappened", "kind-dead", "mainAction", "keepAnyway"}));
        QVERIFY(textOf(stage, "stateLine").startsWith(QLatin1String("Dead since 15 June")));
        QVERIFY(!stage.find(QStringLiteral("treat")));
        QCOMPARE(stage.app().here()->colonies()->count(), 2);
    }

    void splitMakesAColonyAndMergedEndsOne() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        openColony(stage, colonyId(stage, "1"));
        QVERIFY(press(stage, {"somethingHappened", "kind-split"}));
        write(stage, "eventField", QStringLiteral("3"));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(textOf(stage, "problem").contains(QLatin1String("3"))); // taken
        write(stage, "eventField", QStringLiteral("1b"));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(!colonyId(stage, "1b").empty());
        QVERIFY(stage.app().colony()->story()->entries().first().title.contains(QLatin1String("1b")));
        QVERIFY(press(stage, {"story-0", "takeBack", "takeBackForGood"}));
        QVERIFY(colonyId(stage, "1b").empty()); // nothing else was kept of it

        const std::string three = colonyId(stage, "3");
        openColony(stage, three);
        QVERIFY(press(stage, {"somethingHappened", "kind-merged"}));
        QVERIFY(!stage.find(QStringLiteral("choice-") + QString::fromStdString(three)));
        QVERIFY(press(stage, QStringLiteral("choice-") + QString::fromStdString(colonyId(stage, "1"))));
        QVERIFY(press(stage, {"mainAction", "keepAnyway"}));
        QCOMPARE(stage.app().here()->colonies()->count(), 2);
        openColony(stage, colonyId(stage, "1"));
        QVERIFY(stage.app().colony()->story()->entries().first().title.contains(QLatin1String("Colony 3")));
    }

    void supersOfAWholeYard() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        stage.program().store().save(course(stage, colonyId(stage, "2"), {2026, 6, 1}, {2026, 6, 10}, 14));
        openColony(stage, colonyId(stage, "1"));
        QVERIFY(press(stage, {"somethingHappened", "mainAction", "mainAction"}));
        stage.app().yards()->edit(stage.app().here()->yardId());
        stage.settle();
        QVERIFY(press(stage, {"supersOnAll", "mainAction"}));
        QVERIFY(page(stage).contains(QLatin1String("Colony 2: honey may not be taken before 24 June 2026")));
        QVERIFY(press(stage, {"keepAnyway"}));
        for (const char* label : {"1", "2", "3"})
            QCOMPARE(stage.program().store().eventsOf(colonyId(stage, label)).size(), std::size_t{1});
        QVERIFY(press(stage, {"supersOnAll", "mainAction"}));
        QVERIFY(textOf(stage, "problem").contains(QLatin1String("already")));
    }

    // "What was in colony 4 on 1 July, which batch, when may honey be taken?"
    void onADayAnswersTheInspector() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        const std::string one = colonyId(stage, "1");
        stage.program().store().save(course(stage, one, {2026, 6, 20}, {2026, 7, 21}, 14));
        stage.device().clock->advance(56LL * 24 * 3'600'000); // 10 August
        openColony(stage, one);
        QVERIFY(press(stage, {"corner", "mainAction"}));
        write(stage, "onDayField", QStringLiteral("1 July"));
        QVERIFY(press(stage, {"showDay"}));
        const QString answer = page(stage);
        for (const char* said :
             {"On 1 July 2026", "Trays from the shed (Thymol)", "20 June to 21 July 2026", "TH-0815",
              "30 September 2027", "4 trays", "The farm shop, 2 Mill Lane", "the practice in town",
              "the keeper", "14 days", "Honey may be taken from 4 August 2026."})
            QVERIFY2(answer.contains(QLatin1String(said)), qPrintable(QLatin1String(said) + u'\n' + answer));
        QVERIFY(press(stage, {"mainAction"}));
        write(stage, "onDayField", QStringLiteral("4 August"));
        QVERIFY(press(stage, {"showDay"}));
        QVERIFY(page(stage).contains(QLatin1String("No treatment in the records holds the honey.")));
        QVERIFY(press(stage, {"mainAction"}));
        write(stage, "onDayField", QStringLiteral("11 August"));
        QVERIFY(press(stage, {"showDay"}));
        QVERIFY(textOf(stage, "problem").contains(QLatin1String("has not come yet")));
    }

    // Ontario: 2 from May, 3 from August; the trade's rule: 3.
    void regionChangesTheNextAnswerAndNotTheOldOne() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheAnswer(stage, 9));
        const auto answered = [&] {
            std::vector<records::Sample> all;
            stage.program().store().forEachSample([&](const records::Sample& each) { all.push_back(each); });
            std::ranges::sort(all, {}, [](const records::Sample& each) { return each.startedAtMs; });
            return all.back();
        };
        const records::Sample old = answered();
        QCOMPARE(old.answer->lines.treat, 3.0);
        stage.app().navigator()->home();
        const QString yardId = stage.app().here()->yardId();
        stage.app().yards()->edit(yardId);
        stage.settle();
        QVERIFY(press(stage, {"yardLines", "region-Ontario"}));
        QVERIFY(page(stage).contains(QLatin1String("Today 2 per 100")));
        QVERIFY(page(stage).contains(QLatin1String("By season: Ontario")));
        QCOMPARE(stage.app().lines()->past()->count(), 2);
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(textOf(stage, "followedLine").contains(QLatin1String("Ontario")));
        QVERIFY(press(stage, {"done"}));
        QCOMPARE(stage.program().store().yard(yardId.toStdString())->lineRegion, std::string("Ontario"));
        stage.wait(60'000);
        QVERIFY(toTheAnswer(stage, 9));
        const records::Sample next = answered();
        QVERIFY(next.id != old.id);
        QCOMPARE(next.answer->lines.treat, 2.0);
        QVERIFY(next.answer->chanceOver > old.answer->chanceOver);
        QCOMPARE(stage.program().store().sample(old.id)->answer->lines.treat, 3.0);
    }

    void daysOfTheYardCanBeTyped() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        const std::string yardId = stage.app().here()->yardId().toStdString();
        stage.app().yards()->edit(stage.app().here()->yardId());
        stage.settle();
        QVERIFY(stage.app().yards()->turnDateHint().contains(QLatin1String("15 August")));
        write(stage, "turnDate", QStringLiteral("31 June"));
        QVERIFY(press(stage, {"done"}));
        QVERIFY(!textOf(stage, "problem").isEmpty());
        write(stage, "turnDate", QStringLiteral("1 August"));
        write(stage, "firstWash", QStringLiteral("20 March"));
        QVERIFY(press(stage, {"done"}));
        const auto yard = stage.program().store().yard(yardId);
        QVERIFY(
            (yard->turnDate == records::MonthDay{8, 1} && yard->firstWashFrom == records::MonthDay{3, 20}));
        stage.app().yards()->edit(QString::fromStdString(yardId));
        stage.settle();
        write(stage, "turnDate", QString());
        QVERIFY(press(stage, {"done"}));
        QVERIFY(!stage.program().store().yard(yardId)->turnDate);
    }

    // What was typed with keys stays while something else of the page is changed.
    void typedTextStays() {
        Stage stage(Stage::Nothing);
        QVERIFY(press(stage, {"makeYard", "yardName"}));
        keys(stage, "Mill");
        QVERIFY(press(stage, {"useThisPlace"}));
        QCOMPARE(textOf(stage, "yardName"), QStringLiteral("Mill"));
        QVERIFY(press(stage, {"treatLine"}));
        keys(stage, "x"); // "3x": no line
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(!textOf(stage, "problem").isEmpty());
        QCOMPARE(textOf(stage, "yardName"), QStringLiteral("Mill"));
        QVERIFY(textOf(stage, "treatLine").contains(u'x'));

        makeYard(stage);
        openColony(stage, colonyId(stage, "1"));
        QVERIFY(press(stage, {"somethingHappened", "kind-strength", "eventField"}));
        keys(stage, "7");
        QVERIFY(press(stage, {"eventNote"}));
        keys(stage, "strong");
        QVERIFY(press(stage, {"more", "dayEarlier"}));
        QCOMPARE(textOf(stage, "eventField"), QStringLiteral("8"));
        QCOMPARE(textOf(stage, "eventNote"), QStringLiteral("strong"));
        QVERIFY(press(stage, {"mainAction"}));
        const auto events = stage.program().store().eventsOf(colonyId(stage, "1"));
        QVERIFY(events.size() == 1 && events.front().frames == 8.0 && events.front().words == "strong");
    }

    // Places are invented; the shift of half a year and the tropics: season/turn_date.h.
    void usualTurnDateFollowsTheLatitude() {
        Stage stage(Stage::Nothing);
        makeYard(stage);
        records::Yard yard = *stage.program().store().yard(stage.app().here()->yardId().toStdString());
        const auto hintAt = [&](double latitude) {
            yard.position = records::Position{latitude, 19.0, 5.0};
            stage.program().store().save(yard);
            stage.app().yards()->edit(QString::fromStdString(yard.id));
            return stage.app().yards()->turnDateHint();
        };
        QVERIFY(hintAt(53).contains(QLatin1String("15 August, usual in the north")));
        QVERIFY(hintAt(-40).contains(QLatin1String("13 February")));
        QVERIFY(hintAt(10).contains(QLatin1String("tropics")));
    }

    void firstVisitOfTheYearIsKeptOnce() {
        Stage stage(Stage::Demo);
        const auto yardNow = [&] {
            const auto yards = stage.program().store().yards();
            return *std::ranges::find(yards, "Alder Bend", &records::Yard::name);
        };
        QVERIFY(!yardNow().visitedOn);
        const records::Position at = *yardNow().position;
        stage.standAt(at.latitudeDeg + 1, at.longitudeDeg); // far away
        QVERIFY(!yardNow().visitedOn);
        stage.standAt(at.latitudeDeg, at.longitudeDeg);
        QTRY_VERIFY(yardNow().visitedOn.has_value());
        const records::Date first = *yardNow().visitedOn;
        QVERIFY(first == stage.program().services().today());
        stage.device().clock->advance(3LL * 24 * 3'600'000);
        stage.standAt(at.latitudeDeg, at.longitudeDeg);
        QVERIFY(*yardNow().visitedOn == first);
        stage.app().yards()->edit(QString::fromStdString(yardNow().id)); // a save elsewhere keeps it
        QVERIFY(stage.app().yards()->save(QStringLiteral("Alder Bend"), QStringLiteral("3"), {}));
        QVERIFY(*yardNow().visitedOn == first);
    }

    void firstStartSaysOnceWhatTheAppIsNot() {
        Stage stage(Stage::FirstStart);
        QVERIFY(stage.find(QStringLiteral("firstStartPage")));
        for (const char* said : {"No vet", "No label", "No law", "estimate", "this phone only"})
            QVERIFY2(page(stage).contains(QLatin1String(said)), said);
        QVERIFY(!stage.find(QStringLiteral("back")));
        QVERIFY(press(stage, {"mainAction"}));
        QVERIFY(stage.find(QStringLiteral("makeYard")));
        stage.app().start();
        stage.settle();
        QVERIFY(stage.find(QStringLiteral("makeYard")));
        QVERIFY(press(stage, {"corner", "whatThisIsNot"}));
        QVERIFY(stage.find(QStringLiteral("firstStartPage")) && stage.find(QStringLiteral("back")));
    }
};

QTEST_MAIN(StoryTest)
#include "story_test.moc"
