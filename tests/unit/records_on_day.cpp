// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What was in a hive on a day, and when honey may be taken. The duty to write down product, course and
// withdrawal, "even if zero", is that of Regulation (EU) 2019/6, Article 108; the days are counted by hand.
#include "records/on_day.h"

#include <QTest>

#include <algorithm>

using namespace halfcup::records;

namespace {

const Colony four{"four", "home", "4", "", {}, false, false};

ColonyEvent happened(EventKind kind, const Date& day) {
    ColonyEvent e;
    e.id = std::string(nameOf(kind)) + toIso(day);
    e.colonyId = four.id;
    e.yardId = "home";
    e.kind = kind;
    e.day = day;
    return e;
}

GivenTreatment given(const Date& first, const Date& last, std::optional<int> withdrawalDays,
                     const char* colony = "four") {
    GivenTreatment g;
    g.treatment.id = toIso(first);
    g.treatment.substance = "thymol";
    g.treatment.product = "typed by the keeper";
    g.treatment.firstDay = first;
    g.treatment.lastDay = last;
    g.treatment.withdrawalDays = withdrawalDays;
    g.colonyIds = {colony};
    return g;
}

Sample washed(const Date& day, const char* id) {
    Sample s;
    s.id = id;
    s.colonyId = four.id;
    s.state = SampleState::Finished;
    s.startedAtMs = daysSinceEpoch(day) * 86'400'000 + 9 * 3'600'000;
    s.scoopedAtMs = s.startedAtMs;
    return s;
}

} // namespace

class RecordsOnDayTest : public QObject {
    Q_OBJECT

private slots:
    void inspectorsQuestion() {
        GivenTreatment course = given({2026, 6, 20}, {2026, 7, 21}, 14);
        course.treatment.batch = "B-17";
        const std::vector treatments{course, given({2026, 6, 25}, {2026, 7, 30}, 0, "another")};
        const std::vector events{happened(EventKind::SupersOn, {2026, 5, 3}),
                                 happened(EventKind::SupersOff, {2026, 6, 19})};
        const std::vector samples{washed({2026, 6, 10}, "before"), washed({2026, 8, 4}, "after"),
                                  washed({2026, 5, 8}, "long before")};
        const ColonyOnDay told = onDay(four, events, treatments, samples, {2026, 7, 1});
        QCOMPARE(told.inHive.size(), std::size_t{1}); // that of another colony is not its own
        QCOMPARE(told.inHive.front().treatment.batch, std::string("B-17"));
        QVERIFY(told.honey.held && !told.honey.withdrawalMissing);
        QVERIFY((told.honey.from == Date{2026, 8, 4})); // 21 July and fourteen days
        QVERIFY(told.state.supersOn && !told.state.supersOn->value);
        QCOMPARE(told.lastWash->id, std::string("before"));
        QVERIFY(!told.beforeRecords);
    }

    void courseIsOverButHoneyWaits() {
        const std::vector treatments{given({2026, 6, 20}, {2026, 7, 21}, 14)};
        const ColonyOnDay told = onDay(four, {}, treatments, {}, {2026, 8, 3});
        QVERIFY(told.inHive.empty());
        QCOMPARE(told.withdrawn.size(), std::size_t{1});
        QVERIFY(told.honey.held);
        QVERIFY(!honeyOn(treatments, {2026, 8, 4}).held);
        QVERIFY(onDay(four, {}, treatments, {}, {2026, 8, 4}).withdrawn.empty());
        QVERIFY(!honeyOn(treatments, {2026, 6, 19}).held);
    }

    void takenOutEarlyEndsIt() {
        GivenTreatment course = given({2026, 6, 20}, {2026, 7, 21}, 0);
        course.treatment.removedOn = Date{2026, 7, 1};
        QVERIFY((honeyOn(std::vector{course}, {2026, 6, 30}).from == Date{2026, 7, 1}));
        QVERIFY(!honeyOn(std::vector{course}, {2026, 7, 1}).held); // withdrawal of nought days
    }

    void treatmentThatFollowsMovesTheDay() {
        const std::vector treatments{given({2026, 8, 1}, {2026, 8, 10}, 0),
                                     given({2026, 6, 20}, {2026, 7, 21}, 14),
                                     given({2026, 10, 1}, {2026, 10, 1}, 7)};
        QVERIFY((honeyOn(treatments, {2026, 7, 1}).from == Date{2026, 8, 10}));
        QVERIFY((honeyOn(treatments, {2026, 8, 20}).from == Date{2026, 8, 20}));
    }

    void withdrawalThatIsNotWrittenDownIsNotNone() {
        const std::vector treatments{given({2026, 6, 20}, {2026, 7, 21}, std::nullopt)};
        const HoneyOnDay during = honeyOn(treatments, {2026, 7, 1});
        QVERIFY(during.held && during.withdrawalMissing);
        QVERIFY((during.from == Date{2026, 7, 22}));
        const HoneyOnDay after = honeyOn(treatments, {2026, 9, 1});
        QVERIFY(!after.held && after.withdrawalMissing);
        QVERIFY(!honeyOn(treatments, {2027, 9, 1}).withdrawalMissing);
        QVERIFY(!honeyOn(treatments, {2026, 6, 1}).withdrawalMissing);
    }

    void whatWasRemovedIsLeftOut() {
        GivenTreatment course = given({2026, 6, 20}, {2026, 7, 21}, 14);
        course.treatment.removed = true;
        ColonyEvent on = happened(EventKind::SupersOn, {2026, 5, 3});
        on.removed = true;
        Sample wash = washed({2026, 5, 8}, "removed");
        wash.removed = true;
        const ColonyOnDay told =
            onDay(four, std::vector{on}, std::vector{course}, std::vector{wash}, {2026, 7, 1});
        QVERIFY(told.inHive.empty() && told.withdrawn.empty() && !told.honey.held && !told.lastWash);
        QVERIFY(!told.state.supersOn);
        QVERIFY(told.beforeRecords);
    }

    void beforeTheFirstRecordNothingIsKnown() {
        const std::vector samples{washed({2026, 5, 8}, "first")};
        QVERIFY(onDay(four, {}, {}, samples, {2026, 5, 7}).beforeRecords);
        QVERIFY(!onDay(four, {}, {}, samples, {2026, 5, 8}).beforeRecords);
        QVERIFY(!onDay(four, {}, {}, samples, {2026, 5, 7}).lastWash);
    }

    // A scoop late in the evening, two hours east: the keeper's date, not that in UTC.
    void washCountsOnItsLocalDay() {
        Sample wash = washed({2026, 5, 7}, "late");
        wash.scoopedAtMs = daysSinceEpoch({2026, 5, 7}) * 86'400'000 + 23 * 3'600'000;
        wash.utcOffsetMinutes = 120;
        QVERIFY(!onDay(four, {}, {}, std::vector{wash}, {2026, 5, 7}).lastWash);
        QVERIFY(onDay(four, {}, {}, std::vector{wash}, {2026, 5, 8}).lastWash.has_value());
        wash.answer.reset(); // a board in its place is no wash, but the colony was there
        wash.otherAnswer = OtherAnswer{};
        QVERIFY(!onDay(four, {}, {}, std::vector{wash}, {2026, 5, 8}).lastWash);
        QVERIFY(!onDay(four, {}, {}, std::vector{wash}, {2026, 5, 8}).beforeRecords);
    }

    void placeIsThatOfTheDay() {
        Colony moved = four;
        moved.yardId = "away"; // where it stands now
        ColonyEvent move = happened(EventKind::Moved, {2026, 7, 10});
        move.otherYardId = "away";
        QCOMPARE(onDay(moved, std::vector{move}, {}, {}, {2026, 7, 9}).state.yardId, std::string("home"));
        QCOMPARE(onDay(moved, std::vector{move}, {}, {}, {2026, 7, 10}).state.yardId, std::string("away"));
    }

    // Over New Year and 29 February: 20 December and 75 days is 5 March 2027, 4 March in the leap year 2028.
    void courseOverNewYear() {
        QVERIFY((honeyOn(std::vector{given({2026, 12, 20}, {2026, 12, 20}, 75)}, {2027, 1, 2}).from ==
                 Date{2027, 3, 5}));
        QVERIFY((honeyOn(std::vector{given({2027, 12, 20}, {2027, 12, 20}, 75)}, {2028, 1, 2}).from ==
                 Date{2028, 3, 4}));
    }
};

QTEST_GUILESS_MAIN(RecordsOnDayTest)
#include "records_on_day.moc"
