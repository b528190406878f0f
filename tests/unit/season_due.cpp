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

/// Without a turn date, so that each test sees the rule it is about.
YardYear north() {
    return {};
}

YardYear south() {
    YardYear year;
    year.start = BeeYearStart::July;
    return year;
}

Due dueOf(const ColonyToJudge& colony, const Date& today, const YardYear& year = north()) {
    return judge(colony, year, noon(today)).due;
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
        const DueColony result = judge(unwashed("4"), north(), noon({2026, 5, 18}));
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
        row("a year after 29 February", {2028, 2, 29}, S::Under, {2029, 3, 1}, north, R::FirstWashOfYear,
            {2029, 3, 1}, 0);
        // New Year in the north begins a bee year; from November to February no hive is opened.
        row("last autumn, north", {2026, 10, 26}, S::Over, {2027, 3, 20}, north, R::FirstWashOfYear,
            {2027, 3, 20}, 0);
        row("the last of the year", {2026, 10, 1}, S::Under, {2026, 10, 31}, north, R::Monthly,
            {2026, 10, 31}, 0);
        row("a day too late for it", {2026, 10, 2}, S::Under, {2026, 10, 31}, north, R::FirstWashOfYear,
            {2027, 3, 1}, -121);
        row("missed in October", {2026, 9, 1}, S::Under, {2026, 11, 1}, north, R::FirstWashOfYear,
            {2027, 3, 1}, -120);
        row("New Year's Eve", {2026, 12, 10}, S::Under, {2026, 12, 31}, north, R::FirstWashOfYear,
            {2027, 3, 1}, -60);
        row("New Year's Day", {2026, 12, 10}, S::Under, {2027, 1, 1}, north, R::FirstWashOfYear, {2027, 3, 1},
            -59);
        row("washed late in winter", {2027, 2, 20}, S::Under, {2027, 2, 25}, north, R::Monthly, {2027, 3, 22},
            -25);
        // In the south New Year falls into the season and 1 July begins a bee year.
        row("New Year, south", {2026, 11, 20}, S::Under, {2027, 1, 1}, south, R::Monthly, {2026, 12, 20}, 12);
        row("autumn, south", {2027, 4, 10}, S::Close, {2027, 6, 30}, south, R::FirstWashOfYear, {2027, 9, 1},
            -63);
        row("1 July, south", {2027, 4, 10}, S::Close, {2027, 7, 1}, south, R::FirstWashOfYear, {2027, 9, 1},
            -62);
        row("September, south", {2027, 4, 10}, S::Close, {2027, 9, 1}, south, R::FirstWashOfYear,
            {2027, 9, 1}, 0);
        // A clock that was wrong: nothing breaks, and the wash counts.
        row("washed tomorrow", {2026, 5, 19}, S::Under, {2026, 5, 18}, north, R::Monthly, {2026, 6, 18}, -31);
        row("washed next year", {2027, 5, 1}, S::Under, {2026, 5, 18}, north, R::FirstWashOfYear,
            {2027, 5, 31}, -378);
    }
    void dates() {
        QFETCH(const Date, washedOn);
        QFETCH(const Standing, standing);
        QFETCH(const Date, today);
        QFETCH(const BeeYearStart, start);
        const Due due =
            dueOf(washed("4", washedOn, standing), today, start == BeeYearStart::January ? north() : south());
        QTEST(due.reason, "reason");
        QTEST(due.dueOn, "dueOn");
        QTEST(due.daysLate, "daysLate");
    }

    void dayIsTheKeepersDay() { // 23:30 UTC on the 11th is the 12th in Central Europe
        const records::Moment late = records::parseRfc3339("2026-05-12T01:30:00+02:00").value();
        QCOMPARE(judge(washed("4", {2026, 4, 12}), north(), late).due.daysLate, 0);
        const records::Moment utc{late.utcMs, 0};
        QCOMPARE(judge(washed("4", {2026, 4, 12}), north(), utc).due.daysLate, -1);
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

    // 40 N, no wash since April: due on 10 May for the month, on 20 July for the turn date; its mirror image
    // at 40 S half a year later.
    void mirrorYardIsDueHalfAYearLater() {
        const auto first = [](double latitude, const Date& last, const Date& today) {
            return dueList(std::vector{washed("1", last)}, yardAt(latitude), noon(today)).front().due;
        };
        QCOMPARE(first(40, {2026, 4, 10}, {2026, 5, 9}).daysLate, -1);
        QCOMPARE(first(40, {2026, 4, 10}, {2026, 5, 10}), (Due{DueReason::Monthly, {2026, 5, 10}, 0}));
        QCOMPARE(first(40, {2026, 4, 10}, {2026, 7, 20}),
                 (Due{DueReason::BeforeTurnDate, {2026, 5, 10}, 71}));
        QCOMPARE(first(-40, {2026, 10, 10}, {2026, 11, 9}), (Due{DueReason::Monthly, {2026, 11, 9}, 0}));
        QCOMPARE(first(-40, {2026, 10, 10}, {2027, 1, 20}),
                 (Due{DueReason::BeforeTurnDate, {2026, 11, 9}, 72}));
    }

    void turnDateWantsAWashInItsWindow() {
        YardYear year = north();
        year.turnDay = records::MonthDay{8, 15}; // the window opens on 4 July
        QCOMPARE(dueOf(washed("4", {2026, 6, 10}), {2026, 7, 4}, year),
                 (Due{DueReason::BeforeTurnDate, {2026, 7, 4}, 0}));
        QCOMPARE(dueOf(washed("4", {2026, 6, 10}), {2026, 7, 3}, year).daysLate, -1);
        QCOMPARE(dueOf(washed("4", {2026, 7, 1}), {2026, 7, 10}, year), // not twice within two weeks
                 (Due{DueReason::BeforeTurnDate, {2026, 7, 15}, -5}));
        QCOMPARE(dueOf(washed("4", {2026, 7, 4}), {2026, 7, 10}, year),
                 (Due{DueReason::Monthly, {2026, 8, 3}, -24}));
        QCOMPARE(dueOf(washed("4", {2026, 6, 10}), {2026, 8, 15}, year).reason, DueReason::BeforeTurnDate);
        QCOMPARE(dueOf(washed("4", {2026, 6, 10}), {2026, 8, 16}, year),
                 (Due{DueReason::Monthly, {2026, 7, 10}, 37}));
        QCOMPARE(dueOf(unwashed("4"), {2026, 7, 10}, year).reason, DueReason::BeforeTurnDate);
        QCOMPARE(dueOf(unwashed("4"), {2026, 7, 10}, year).daysLate, 0); // not known before today
    }

    void firstWashOfTheYear() {
        YardYear year = north();
        QCOMPARE(dueOf(unwashed("4"), {2026, 1, 10}, year),
                 (Due{DueReason::FirstWashOfYear, {2026, 3, 1}, -50}));
        QCOMPARE(dueOf(unwashed("4"), {2026, 12, 1}, year),
                 (Due{DueReason::FirstWashOfYear, {2027, 3, 1}, -90}));
        year.visitedOn = Date{2026, 3, 20}; // the first fix of the year in the yard
        QCOMPARE(dueOf(unwashed("4"), {2026, 4, 1}, year),
                 (Due{DueReason::FirstWashOfYear, {2026, 3, 20}, 12}));
        year.visitedOn = Date{2026, 1, 20}; // to heft hives
        QCOMPARE(dueOf(unwashed("4"), {2026, 1, 21}, year).dueOn, (Date{2026, 3, 1}));
        year.visitedOn = Date{2025, 3, 20}; // of another year
        QCOMPARE(dueOf(unwashed("4"), {2026, 4, 1}, year).daysLate, 0);
        year.firstWashFrom = records::MonthDay{4, 5}; // the keeper's own day comes before any visit
        year.visitedOn = Date{2026, 3, 20};
        QCOMPARE(dueOf(unwashed("4"), {2026, 4, 1}, year),
                 (Due{DueReason::FirstWashOfYear, {2026, 4, 5}, -4}));
        QCOMPARE(dueOf(washed("4", {2025, 9, 1}), {2026, 4, 9}, year).daysLate, 4);
        ColonyToJudge nucleus = unwashed("9"); // made up in May
        nucleus.knownSince = Date{2026, 5, 20};
        QCOMPARE(dueOf(nucleus, {2026, 5, 22}, year).daysLate, 2);
        YardYear down = south();
        down.visitedOn = Date{2026, 9, 12};
        QCOMPARE(dueOf(unwashed("4"), {2026, 9, 20}, down).daysLate, 8);
        down.firstWashFrom = records::MonthDay{2, 29}; // odd, but a day of the bee year
        QCOMPARE(dueOf(unwashed("4"), {2026, 9, 20}, down).dueOn, (Date{2027, 2, 28}));
    }

    void tropicsAreWashedAllYear() {
        const auto list = dueList(std::vector{washed("1", {2026, 11, 20})}, yardAt(10), noon({2027, 1, 5}));
        QCOMPARE(list.front().due, (Due{DueReason::Monthly, {2026, 12, 20}, 16}));
        QCOMPARE(dueList(std::vector{unwashed("1")}, yardAt(10), noon({2027, 1, 5})).front().due.daysLate, 0);
    }

    void afterATreatment() {
        YardYear year = north();
        year.turnDay = records::MonthDay{8, 15};
        ColonyToJudge colony = washed("4", {2026, 5, 18}, Standing::Over);
        colony.lastTreatment = LastTreatment{{2026, 5, 20}, {2026, 5, 27}};
        QCOMPARE(dueOf(colony, {2026, 5, 22}, year),
                 (Due{DueReason::AfterTreatment, {2026, 6, 10}, -19})); // runs
        QCOMPARE(dueOf(colony, {2026, 6, 12}, year), (Due{DueReason::AfterTreatment, {2026, 6, 10}, 2}));
        colony.lastWash->washedOn = {2026, 6, 5}; // nine days after its end: too soon to tell
        QCOMPARE(dueOf(colony, {2026, 6, 12}, year).reason, DueReason::AfterTreatment);
        colony.lastWash->washedOn = {2026, 6, 6};
        QCOMPARE(dueOf(colony, {2026, 6, 12}, year), (Due{DueReason::BeforeTurnDate, {2026, 7, 4}, -22}));
        colony.lastWash->washedOn = {2026, 5, 18};
        QCOMPARE(dueOf(colony, {2026, 7, 26}, year).reason, DueReason::AfterTreatment);
        QCOMPARE(dueOf(colony, {2026, 7, 27}, year).reason,
                 DueReason::BeforeTurnDate); // forgotten after 60 days
        colony.lastTreatment = LastTreatment{{2026, 6, 20}, {2026, 6, 27}};
        QCOMPARE(dueOf(colony, {2026, 6, 18}, year).reason, DueReason::Monthly); // only planned
        colony.lastTreatment = LastTreatment{{2026, 12, 20}, {2026, 12, 20}};    // over New Year, in winter
        QCOMPARE(dueOf(colony, {2027, 1, 2}, year), (Due{DueReason::AfterTreatment, {2027, 1, 3}, -1}));
    }

    void wordsOfWhatIsDue() {
        QCOMPARE(QString::fromStdString(inEnglish(phraseOf({DueReason::Monthly, {}, 6}))),
                 QStringLiteral("Due: monthly wash, 6 days late"));
        QCOMPARE(QString::fromStdString(inEnglish(phraseOf({DueReason::FirstWashOfYear, {}, 0}))),
                 QStringLiteral("Due today: first wash of the year"));
        QCOMPARE(QString::fromStdString(inEnglish(phraseOf({DueReason::AfterTreatment, {}, -1}))),
                 QStringLiteral("Due in 1 day: did the treatment work?"));
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
            return judge(colony, north(), noon({2026, 5, 18}));
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
