// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What is due, why, and in which order. "Every month of the bee season" and "the first wash as soon as
// colonies can be opened" are common practice, no source; a week after an unclear wash is our convention.
#include "season/due.h"

#include "records/judgement.h"

#include <QTest>

#include <algorithm>
#include <array>
#include <random>
#include <stdexcept>

using namespace halfcup;
using namespace halfcup::season;
using mites::Standing;
using records::Date;

namespace {

/// Noon of a day in Central European summer time.
records::Moment noon(const Date& date, int offsetMinutes = 120) {
    return {records::daysSinceEpoch(date) * 86'400'000 + (720 - offsetMinutes) * 60'000LL, offsetMinutes};
}

records::Yard yardAt(double latitudeDeg) {
    records::Yard yard;
    yard.position = records::Position{latitudeDeg, 19.6, {}};
    return yard;
}

ColonyToJudge washed(const char* label, const Date& on, Standing standing = Standing::Under) {
    return {std::string("id-") + label, label, LastWash{on, standing, 1.0}};
}

ColonyToJudge unwashed(const char* label) {
    return {std::string("id-") + label, label, {}};
}

Due dueOf(const ColonyToJudge& colony, const Date& today, BeeYearStart start = BeeYearStart::January) {
    return judge(colony, start, noon(today)).due;
}

records::Sample finished(std::int64_t mites, double bees, std::optional<double> ownLine) {
    records::Sample sample;
    sample.state = records::SampleState::Finished;
    sample.startedAtMs = noon({2026, 5, 18}).utcMs;
    sample.utcOffsetMinutes = 120;
    sample.scoop.beesMean = bees;
    sample.scoop.beesCv = 0.12;
    records::Lines lines;
    lines.own = ownLine;
    sample.answer = records::answerOf(sample, mites, {}, lines);
    return sample;
}

} // namespace

class SeasonDueTest : public QObject {
    Q_OBJECT

private slots:
    void neverWashedIsDueToday() {
        const DueColony result = judge(unwashed("4"), BeeYearStart::January, noon({2026, 5, 18}));
        QCOMPARE(result.due, (Due{DueReason::FirstWashOfYear, {2026, 5, 18}, 0}));
        QVERIFY(!result.washedThisBeeYear && !result.overLine);
    }

    void dates_data() {
        QTest::addColumn<Date>("washedOn");
        QTest::addColumn<Standing>("standing");
        QTest::addColumn<Date>("today");
        QTest::addColumn<BeeYearStart>("start");
        QTest::addColumn<DueReason>("reason");
        QTest::addColumn<Date>("dueOn");
        QTest::addColumn<int>("daysLate");
        const auto row = [](const char* name, const Date& on, Standing standing, const Date& today,
                            BeeYearStart start, DueReason reason, const Date& dueOn, int late) {
            QTest::newRow(name) << on << standing << today << start << reason << dueOn << late;
        };
        constexpr auto north = BeeYearStart::January;
        constexpr auto south = BeeYearStart::July;
        using S = Standing;
        using R = DueReason;
        row("a month later", {2026, 4, 12}, S::Over, {2026, 5, 18}, north, R::Monthly, {2026, 5, 12}, 6);
        row("due today", {2026, 4, 18}, S::Under, {2026, 5, 18}, north, R::Monthly, {2026, 5, 18}, 0);
        row("days ahead", {2026, 4, 20}, S::Close, {2026, 5, 18}, north, R::Monthly, {2026, 5, 20}, -2);
        row("washed today", {2026, 5, 18}, S::Under, {2026, 5, 18}, north, R::Monthly, {2026, 6, 17}, -30);
        row("unclear", {2026, 5, 14}, S::CannotTell, {2026, 5, 18}, north, R::AgainBecauseUnclear,
            {2026, 5, 21}, -3);
        row("unclear, late", {2026, 5, 1}, S::CannotTell, {2026, 5, 18}, north, R::AgainBecauseUnclear,
            {2026, 5, 8}, 10);
        // 2028 has a 29 February, 2027 has not.
        row("over 29 February", {2028, 2, 10}, S::Under, {2028, 2, 29}, north, R::Monthly, {2028, 3, 11},
            -11);
        row("washed on 29 February", {2028, 2, 29}, S::Under, {2028, 3, 30}, north, R::Monthly, {2028, 3, 30},
            0);
        row("due on 29 February", {2028, 1, 30}, S::Under, {2028, 3, 1}, north, R::Monthly, {2028, 2, 29}, 1);
        row("no 29 February", {2027, 2, 10}, S::Under, {2027, 2, 28}, north, R::Monthly, {2027, 3, 12}, -12);
        row("a year after 29 February", {2028, 2, 29}, S::Under, {2029, 2, 28}, north, R::FirstWashOfYear,
            {2029, 2, 28}, 0);
        // New Year in the north begins a bee year; a wash of the last weeks still counts for its month.
        row("last autumn, north", {2026, 10, 26}, S::Over, {2027, 3, 20}, north, R::FirstWashOfYear,
            {2027, 3, 20}, 0);
        row("New Year's Eve", {2026, 12, 10}, S::Under, {2026, 12, 31}, north, R::Monthly, {2027, 1, 9}, -9);
        row("New Year's Day", {2026, 12, 10}, S::Under, {2027, 1, 1}, north, R::FirstWashOfYear, {2027, 1, 9},
            -8);
        row("unclear at New Year", {2026, 12, 30}, S::CannotTell, {2027, 1, 1}, north, R::FirstWashOfYear,
            {2027, 1, 6}, -5);
        // In the south New Year falls into the season and 1 July begins a bee year.
        row("New Year, south", {2026, 11, 20}, S::Under, {2027, 1, 1}, south, R::Monthly, {2026, 12, 20}, 12);
        row("autumn, south", {2027, 4, 10}, S::Close, {2027, 6, 30}, south, R::Monthly, {2027, 5, 10}, 51);
        row("1 July, south", {2027, 4, 10}, S::Close, {2027, 7, 1}, south, R::FirstWashOfYear, {2027, 7, 1},
            0);
        row("washed before 1 July, south", {2027, 6, 20}, S::Under, {2027, 7, 2}, south, R::FirstWashOfYear,
            {2027, 7, 20}, -18);
        // A clock that was wrong: nothing breaks, and the wash counts.
        row("washed tomorrow", {2026, 5, 19}, S::Under, {2026, 5, 18}, north, R::Monthly, {2026, 6, 18}, -31);
        row("washed next year", {2027, 5, 1}, S::Under, {2026, 5, 18}, north, R::Monthly, {2027, 5, 31},
            -378);
    }
    void dates() {
        QFETCH(const Date, washedOn);
        QFETCH(const Standing, standing);
        QFETCH(const Date, today);
        QFETCH(const BeeYearStart, start);
        const Due due = dueOf(washed("4", washedOn, standing), today, start);
        QTEST(due.reason, "reason");
        QTEST(due.dueOn, "dueOn");
        QTEST(due.daysLate, "daysLate");
    }

    void dayIsTheKeepersDay() { // 23:30 UTC on the 11th is the 12th in Central Europe
        const records::Moment late = records::parseRfc3339("2026-05-12T01:30:00+02:00").value();
        QCOMPARE(judge(washed("4", {2026, 4, 12}), BeeYearStart::January, late).due.daysLate, 0);
        const records::Moment utc{late.utcMs, 0};
        QCOMPARE(judge(washed("4", {2026, 4, 12}), BeeYearStart::January, utc).due.daysLate, -1);
    }

    void impossibleDateIsRefused() {
        QVERIFY_EXCEPTION_THROWN(dueOf(washed("4", {2026, 2, 29}), {2026, 5, 18}), std::invalid_argument);
        QVERIFY_EXCEPTION_THROWN(static_cast<void>(beeYearBegin({2026, 13, 1}, BeeYearStart::July)),
                                 std::invalid_argument);
    }

    void beeYearFollowsTheHemisphere() {
        QCOMPARE(beeYearStart(yardAt(53)), BeeYearStart::January);
        QCOMPARE(beeYearStart(yardAt(-37)), BeeYearStart::July);
        QCOMPARE(beeYearStart(yardAt(0)), BeeYearStart::January);
        QCOMPARE(beeYearStart(records::Yard{}), BeeYearStart::January); // no position
        QCOMPARE(beeYearBegin({2028, 2, 29}, BeeYearStart::January), (Date{2028, 1, 1}));
        QCOMPARE(beeYearBegin({2028, 2, 29}, BeeYearStart::July), (Date{2027, 7, 1}));
        QCOMPARE(beeYearBegin({2028, 7, 1}, BeeYearStart::July), (Date{2028, 7, 1}));
        QCOMPARE(beeYearBegin({2028, 6, 30}, BeeYearStart::July), (Date{2027, 7, 1}));
        QCOMPARE(beeYearBegin({2028, 12, 31}, BeeYearStart::July), (Date{2028, 7, 1}));
    }

    void mirrorYardIsDueHalfAYearLater() {
        const auto north = dueList(std::vector{washed("1", {2026, 4, 10})}, yardAt(40), noon({2026, 5, 10}));
        const auto south =
            dueList(std::vector{washed("1", {2026, 10, 10})}, yardAt(-40), noon({2026, 11, 9}));
        QCOMPARE(north.front().due.daysLate, 0);
        QCOMPARE(south.front().due.daysLate, 0);
        QCOMPARE(north.front().due.reason, DueReason::Monthly);
        QCOMPARE(south.front().due.reason, DueReason::Monthly);
    }

    void mostUrgentComesFirst() {
        const Date today{2026, 5, 18};
        const std::vector expected{
            washed("over and late", {2026, 4, 17}, Standing::Over),
            washed("late since March", {2026, 3, 20}),
            washed("late since April", {2026, 4, 10}, Standing::Close),
            washed("over, due today", {2026, 4, 18}, Standing::Over),
            unwashed("2"),
            unwashed("10"),
            washed("last year", {2025, 9, 1}, Standing::Over), // a load of last year says nothing of today's
            washed("due today", {2026, 4, 18}, Standing::Close),
            washed("over, washed today", {2026, 5, 18}, Standing::Over),
            washed("ahead", {2026, 4, 20}),
            washed("2b", {2026, 5, 1}),
            washed("B2", {2026, 5, 1}),
            washed("b10", {2026, 5, 1}),
            washed("washed today", {2026, 5, 18}),
        };
        std::mt19937 random(29);
        for (int i = 0; i < 200; ++i) {
            std::vector mixed = expected;
            std::ranges::shuffle(mixed, random);
            const auto list = dueList(mixed, yardAt(53), noon(today));
            QCOMPARE(list.size(), expected.size());
            for (std::size_t at = 0; at < list.size(); ++at)
                QCOMPARE(list[at].colony.label, expected[at].label);
        }
    }

    void orderIsStrict() { // what std::sort needs, on random colonies
        std::mt19937 random(31);
        const auto any = [&] {
            const Date on = records::dateFromDays(records::daysSinceEpoch({2026, 5, 18}) - random() % 60);
            auto colony = washed(std::array{"2", "10", "02", "B"}[random() % 4], on,
                                 static_cast<Standing>(random() % 4));
            if (random() % 4 == 0)
                colony.lastWash.reset();
            colony.colonyId = std::to_string(random() % 5);
            return judge(colony, BeeYearStart::January, noon({2026, 5, 18}));
        };
        for (int i = 0; i < 20'000; ++i) {
            const DueColony a = any();
            const DueColony b = any();
            const DueColony c = any();
            QVERIFY(!moreUrgent(a, a));
            QVERIFY(!(moreUrgent(a, b) && moreUrgent(b, a)));
            if (moreUrgent(a, b) && moreUrgent(b, c))
                QVERIFY(moreUrgent(a, c));
        }
    }

    void noColoniesGiveAnEmptyList() { QVERIFY(dueList({}, yardAt(53), noon({2026, 5, 18})).empty()); }

    void lastWashComesFromFinishedSamplesOnly() {
        const records::Sample sample = finished(9, 300, {});
        const auto last = lastWashOf(sample);
        QVERIFY(last);
        QCOMPARE(last->washedOn, (Date{2026, 5, 18}));
        QCOMPARE(last->standing, Standing::Over);
        QCOMPARE(last->loadPer100, sample.answer->loadQ50);
        for (const records::SampleState state :
             {records::SampleState::Draft, records::SampleState::Abandoned}) {
            records::Sample other = sample;
            other.state = state;
            QVERIFY(!lastWashOf(other));
        }
        records::Sample removed = sample;
        removed.removed = true;
        QVERIFY(!lastWashOf(removed));
        records::Sample unanswered = sample;
        unanswered.answer.reset();
        QVERIFY(!lastWashOf(unanswered));
        records::Sample damaged = sample;
        damaged.answer->loadQ50 = -1;
        QVERIFY(!lastWashOf(damaged));
    }

    void lastWashIsDatedByTheScoop() { // scooped late in the evening, washed after midnight
        records::Sample sample = finished(1, 300, {});
        sample.startedAtMs = records::parseRfc3339("2026-05-18T23:30:00+02:00")->utcMs;
        sample.scoopedAtMs = records::parseRfc3339("2026-05-19T00:10:00+02:00")->utcMs;
        QCOMPARE(lastWashOf(sample)->washedOn, (Date{2026, 5, 19}));
    }

    void ownLineCanBeTheGraver() {
        QCOMPARE(lastWashOf(finished(5, 302, {}))->standing, Standing::Under);
        QCOMPARE(lastWashOf(finished(5, 302, 1.7))->standing, Standing::Over);
        QCOMPARE(lastWashOf(finished(3, 150, {}))->standing, Standing::CannotTell);
    }
};

QTEST_GUILESS_MAIN(SeasonDueTest)
#include "season_due.moc"
