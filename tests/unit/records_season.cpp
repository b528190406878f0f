// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Events, the state that follows from them, treatments, and days that come every year.
#include "records/colony_state.h"
#include "records/treatment.h"

#include <QTest>

#include <algorithm>

using namespace halfcup::records;

namespace {

const Colony colony{"four", "home", "4", "", {}, false, false};

ColonyEvent happened(EventKind kind, const Date& day, std::int64_t at = 0) {
    ColonyEvent e;
    e.id = std::string(nameOf(kind)) + toIso(day) + std::to_string(at);
    e.colonyId = colony.id;
    e.yardId = "home";
    e.kind = kind;
    e.day = day;
    e.recordedAtMs = at;
    return e;
}

Treatment strips() {
    Treatment t;
    t.substance = "amitraz";
    t.product = "typed by the keeper";
    t.firstDay = {2026, 8, 1};
    t.lastDay = {2026, 9, 12};
    t.withdrawalDays = 0;
    return t;
}

bool has(const Treatment& t, TreatmentProblem problem, int colonies = 1) {
    return std::ranges::count(problemsOf(t, colonies, {2026, 8, 1}), problem) == 1;
}

} // namespace

class RecordsSeasonTest : public QObject {
    Q_OBJECT

private slots:
    void wordsReadBack() {
        for (const EventKind kind : allEventKinds)
            QVERIFY(eventKindFrom(nameOf(kind)) == kind);
        QVERIFY(!eventKindFrom("from a newer version"));
        for (const Brood brood : {Brood::NotKnown, Brood::None, Brood::OpenOnly, Brood::Capped})
            QVERIFY(broodFrom(nameOf(brood)) == brood);
        for (const Floor floor : {Floor::NotKnown, Floor::Solid, Floor::Screened})
            QVERIFY(floorFrom(nameOf(floor)) == floor);
        QVERIFY(broodFrom("seen by others") == Brood::NotKnown);
    }

    void eventThatCannotBeUnderstoodIsNoEvent() {
        Fields fields = toFields(happened(EventKind::Dead, {2026, 6, 1}));
        QVERIFY(colonyEventFrom("x", fields));
        fields["event"] = std::string("from a newer version");
        QVERIFY(!colonyEventFrom("x", fields));
        fields = toFields(happened(EventKind::Dead, {2026, 6, 1}));
        fields["day"] = std::string("2026-02-29");
        QVERIFY(!colonyEventFrom("x", fields));
    }

    void stateFollowsFromEvents() {
        ColonyEvent brood = happened(EventKind::Brood, {2026, 5, 1});
        brood.brood = Brood::Capped;
        ColonyEvent frames = happened(EventKind::Strength, {2026, 5, 2});
        frames.frames = 8;
        ColonyEvent floor = happened(EventKind::Floor, {2026, 3, 1});
        floor.floor = Floor::Screened;
        ColonyEvent queen = happened(EventKind::Requeened, {2026, 6, 10});
        queen.words = "hygienic";
        const std::vector events{queen, happened(EventKind::SupersOff, {2026, 7, 20}), floor, frames,
                                 brood, happened(EventKind::SupersOn, {2026, 5, 3})};
        const ColonyState before = stateOn(colony, events, {2026, 2, 28});
        QVERIFY(!before.supersOn && !before.brood && !before.frames && !before.floor && before.alive());
        const ColonyState may = stateOn(colony, events, {2026, 5, 3});
        QCOMPARE(may.supersOn->value, true);
        QCOMPARE(may.supersOn->day, (Date{2026, 5, 3}));
        QVERIFY(may.brood->value == Brood::Capped);
        QCOMPARE(may.frames->value, 8.0);
        QVERIFY(may.floor->value == Floor::Screened);
        QVERIFY(!may.seriesBroken && !may.stock);
        const ColonyState july = stateOn(colony, events, {2026, 7, 20});
        QCOMPARE(july.supersOn->value, false);
        QCOMPARE(july.stock->value, std::string("hygienic"));
        QCOMPARE(*july.seriesBroken, (Date{2026, 6, 10}));
        QCOMPARE(july.yardId, RecordId("home"));
    }

    void orderWithinADayIsThatOfTheEntries() {
        const std::vector events{happened(EventKind::SupersOff, {2026, 5, 3}, 2),
                                 happened(EventKind::SupersOn, {2026, 5, 3}, 1)};
        QCOMPARE(stateOn(colony, events, {2026, 5, 3}).supersOn->value, false);
    }

    void removedEventsSayNothing() {
        ColonyEvent dead = happened(EventKind::Dead, {2026, 5, 3});
        QVERIFY(!stateOn(colony, std::vector{dead}, {2026, 5, 3}).alive());
        QVERIFY(stateOn(colony, std::vector{dead}, {2026, 5, 2}).alive());
        dead.removed = true;
        QVERIFY(stateOn(colony, std::vector{dead}, {2026, 5, 3}).alive());
    }

    void whereItStoodIsToldForEveryDay() {
        ColonyEvent out = happened(EventKind::Moved, {2026, 6, 1});
        out.otherYardId = "heather";
        ColonyEvent back = happened(EventKind::Moved, {2026, 9, 1});
        back.yardId = "heather";
        back.otherYardId = "winter";
        Colony moved = colony;
        moved.yardId = "winter"; // as it is kept today
        const std::vector events{out, back};
        QCOMPARE(stateOn(moved, events, {2026, 5, 31}).yardId, RecordId("home"));
        QCOMPARE(stateOn(moved, events, {2026, 6, 1}).yardId, RecordId("heather"));
        QCOMPARE(stateOn(moved, events, {2026, 12, 1}).yardId, RecordId("winter"));
        QCOMPARE(stateOn(moved, {}, {2026, 5, 31}).yardId, RecordId("winter"));
    }

    void anotherColonyMergedIntoItBreaksTheSeries() {
        ColonyEvent merged = happened(EventKind::Merged, {2026, 6, 1});
        merged.colonyId = "seven";
        merged.otherColonyId = colony.id;
        const ColonyState state = stateOn(colony, std::vector{merged}, {2026, 6, 2});
        QVERIFY(state.alive());
        QCOMPARE(*state.seriesBroken, (Date{2026, 6, 1}));
        const Colony seven{"seven", "home", "7", "", {}, false, false};
        QVERIFY(stateOn(seven, std::vector{merged}, {2026, 6, 2}).ended->value == EventKind::Merged);
    }

    void honeyWaitsForTheEndAndTheWithdrawal() {
        Treatment t = strips();
        QCOMPARE(*honeyFrom(t), (Date{2026, 9, 12}));
        t.withdrawalDays = 21;
        t.removedOn = Date{2026, 9, 20}; // late out: it counts from then
        QCOMPARE(endOf(t), (Date{2026, 9, 20}));
        QCOMPARE(*honeyFrom(t), (Date{2026, 10, 11}));
        QVERIFY(isRunningOn(t, {2026, 8, 1}) && isRunningOn(t, {2026, 9, 20}));
        QVERIFY(!isRunningOn(t, {2026, 7, 31}) && !isRunningOn(t, {2026, 9, 21}));
        QVERIFY(holdsHoneyOn(t, {2026, 10, 10}) && !holdsHoneyOn(t, {2026, 10, 11}));
        t.withdrawalDays.reset(); // not written down is not "none", but nothing can be counted
        QVERIFY(!honeyFrom(t));
        QVERIFY(holdsHoneyOn(t, {2026, 9, 20}) && !holdsHoneyOn(t, {2026, 9, 21}));
        t.removed = true;
        QVERIFY(!isRunningOn(t, {2026, 8, 1}) && !holdsHoneyOn(t, {2026, 8, 1}));
    }

    void withdrawalAcrossNewYearAndLeapDay() {
        Treatment t = strips();
        t.firstDay = t.lastDay = {2027, 12, 20};
        t.withdrawalDays = 71;
        QCOMPARE(*honeyFrom(t), (Date{2028, 2, 29}));
    }

    void problems() {
        QVERIFY(problemsOf(strips(), 1, {2026, 8, 1}).empty());
        QVERIFY(has(strips(), TreatmentProblem::NoColony, 0));
        Treatment t = strips();
        t.substance.clear();
        t.product.clear();
        QVERIFY(has(t, TreatmentProblem::NoSubstance) && has(t, TreatmentProblem::NoProduct));
        t = strips();
        t.lastDay = {2026, 7, 31};
        QVERIFY(has(t, TreatmentProblem::EndBeforeStart));
        t = strips();
        t.removedOn = Date{2026, 7, 31};
        QVERIFY(has(t, TreatmentProblem::RemovalBeforeStart));
        t = strips();
        t.removalDue = Date{2026, 7, 31};
        QVERIFY(has(t, TreatmentProblem::RemovalBeforeStart));
        t = strips();
        t.withdrawalDays = -1;
        QVERIFY(has(t, TreatmentProblem::NegativeWithdrawal));
        t.withdrawalDays = 731;
        QVERIFY(has(t, TreatmentProblem::LongWithdrawal));
        t = strips();
        t.firstDay = {2027, 2, 29};
        QVERIFY(has(t, TreatmentProblem::ImpossibleDay));
        t = strips();
        t.expiry = Date{2026, 7, 31};
        QVERIFY(has(t, TreatmentProblem::ExpiredProduct));
        t.expiry = t.firstDay;
        QVERIFY(!has(t, TreatmentProblem::ExpiredProduct));
        t = strips();
        t.lastDay = plusDays(t.firstDay, 121);
        QVERIFY(has(t, TreatmentProblem::LongCourse));
        t = strips();
        t.firstDay = {2025, 7, 30};
        t.lastDay = {2025, 8, 30};
        QVERIFY(has(t, TreatmentProblem::FarDay));
        for (const auto problem : {TreatmentProblem::NoSubstance, TreatmentProblem::LongWithdrawal})
            QVERIFY(isForbidding(problem));
        for (const auto problem : {TreatmentProblem::ExpiredProduct, TreatmentProblem::FarDay})
            QVERIFY(!isForbidding(problem));
    }

    void treatmentReadsBack() {
        Fields fields = toFields(strips());
        QVERIFY(toFields(*treatmentFrom("x", fields)) == fields);
        QCOMPARE(treatmentFrom("x", fields)->id, RecordId("x"));
        fields["first_day"] = std::string("2027-02-29");
        QVERIFY(!treatmentFrom("x", fields));
        fields = toFields(strips());
        fields["last_day"] = Value{};
        QCOMPARE(treatmentFrom("x", fields)->lastDay, strips().firstDay);
        QVERIFY(toFields(Treatment{}).contains("withdrawal_days"));
        QVERIFY(std::holds_alternative<std::monostate>(toFields(Treatment{})["withdrawal_days"]));
    }

    void daysThatComeEveryYear() {
        const MonthDay leap{2, 29};
        QVERIFY(isValid(leap) && !isValid(MonthDay{2, 30}) && !isValid(MonthDay{13, 1}));
        QCOMPARE(dateIn(2028, leap), (Date{2028, 2, 29}));
        QCOMPARE(dateIn(2027, leap), (Date{2027, 2, 28}));
        const MonthDay turn{8, 15};
        QCOMPARE(onOrAfter(turn, {2026, 8, 15}), (Date{2026, 8, 15}));
        QCOMPARE(onOrAfter(turn, {2026, 8, 16}), (Date{2027, 8, 15}));
        QCOMPARE(onOrBefore(turn, {2026, 8, 15}), (Date{2026, 8, 15}));
        QCOMPARE(onOrBefore(turn, {2026, 8, 14}), (Date{2025, 8, 15}));
        QCOMPARE(toText(turn), std::string("08-15"));
        QVERIFY(parseMonthDay("08-15") == turn);
        for (const char* wrong : {"", "8-15", "08/15", "02-30", "13-01", "08-15 ", "0815", "aa-bb"})
            QVERIFY2(!parseMonthDay(wrong), wrong);
        QCOMPARE(daysBetween({2026, 12, 31}, {2027, 1, 1}), 1);
        QCOMPARE(daysBetween({2028, 3, 1}, {2028, 2, 29}), -1);
        QCOMPARE(plusDays({2028, 2, 28}, 2), (Date{2028, 3, 1}));
    }
};

QTEST_APPLESS_MAIN(RecordsSeasonTest)
#include "records_season.moc"
