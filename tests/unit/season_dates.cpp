// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What lies ahead: washes, removals, withdrawals, checks and turn dates of several yards.
#include "season/dates.h"

#include "records/judgement.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace halfcup;
using namespace halfcup::season;
using halfcup::records::Date;

namespace {

std::int64_t noonMs(const Date& day) {
    return records::daysSinceEpoch(day) * 86'400'000 + 43'200'000;
}

records::Sample washed(const std::string& label, const Date& day) {
    records::Sample sample;
    sample.colonyId = "id-" + label;
    sample.state = records::SampleState::Finished;
    sample.startedAtMs = noonMs(day);
    sample.scoop.beesMean = 302;
    sample.scoop.beesCv = 0.12;
    sample.answer = records::answerOf(sample, 1, {}, {});
    return sample;
}

YardRecords yardWith(std::initializer_list<const char*> labels, double latitudeDeg = 53) {
    YardRecords kept;
    kept.yard.id = "yard" + std::to_string(latitudeDeg);
    kept.yard.position = records::Position{latitudeDeg, 19.6, {}};
    for (const char* label : labels)
        kept.colonies.push_back({std::string("id-") + label, kept.yard.id, label, "", {}, false, false});
    return kept;
}

GivenTreatment strips(std::vector<records::RecordId> ids) {
    GivenTreatment given;
    given.treatment.id = "t1";
    given.treatment.substance = "amitraz";
    given.treatment.product = "as on the label";
    given.treatment.firstDay = {2026, 8, 1};
    given.treatment.lastDay = {2026, 9, 11};
    given.treatment.removalDue = Date{2026, 9, 12};
    given.treatment.withdrawalDays = 7;
    given.colonyIds = std::move(ids);
    return given;
}

std::vector<SeasonDate> dates(const YardRecords& yard, const Date& today, int ahead = 400) {
    return seasonDates(std::vector{yard}, {noonMs(today), 0}, ahead);
}

const SeasonDate* find(const std::vector<SeasonDate>& all, DateKind kind) {
    const auto found = std::ranges::find(all, kind, &SeasonDate::kind);
    return found == all.end() ? nullptr : &*found;
}

} // namespace

class SeasonDatesTest : public QObject {
    Q_OBJECT

private slots:
    void washesOfADayStandTogether() {
        YardRecords yard = yardWith({"10", "2", "4"});
        yard.latestWashes = {washed("10", {2026, 5, 1}), washed("2", {2026, 5, 1}),
                             washed("4", {2026, 5, 9})};
        const auto all = dates(yard, {2026, 5, 18});
        QCOMPARE(all[0].day, (Date{2026, 5, 31}));
        QCOMPARE(all[0].colonyLabels, (std::vector<std::string>{"2", "10"}));
        QCOMPARE(all[1].day, (Date{2026, 6, 8}));
        QCOMPARE(QString::fromStdString(inEnglish(all[0].phrase)), QStringLiteral("Wash: monthly wash"));
        QVERIFY(!all[0].late);
        QCOMPARE(find(all, DateKind::TurnDate)->day, (Date{2026, 8, 15}));
    }

    void lateOnesAreOneEntry() {
        YardRecords yard = yardWith({"1", "2", "3"});
        yard.latestWashes = {washed("1", {2026, 4, 1}), washed("2", {2026, 4, 9}),
                             washed("3", {2026, 5, 17})};
        const auto all = dates(yard, {2026, 5, 18});
        QVERIFY(all[0].late);
        QCOMPARE(all[0].day, (Date{2026, 5, 1}));
        QCOMPARE(all[0].colonyLabels.size(), std::size_t{2});
        QCOMPARE(all[1].colonyLabels, (std::vector<std::string>{"3"}));
    }

    void whatIsForTodayIsNotLate() {
        YardRecords yard = yardWith({"1"});
        yard.latestWashes = {washed("1", {2026, 4, 18})};
        const auto all = dates(yard, {2026, 5, 18}, 0); // and nothing but today
        QCOMPARE(all.size(), std::size_t{1});
        QCOMPARE(all[0].day, (Date{2026, 5, 18}));
        QVERIFY(!all[0].late);
        QVERIFY(dates(yard, {2026, 5, 19}, 0)[0].late);
    }

    void aCourseFromStartToCheck() {
        YardRecords yard = yardWith({"1", "2"});
        yard.treatments = {strips({"id-1"})};
        const auto running = dates(yard, {2026, 8, 10});
        QCOMPARE(find(running, DateKind::RemovalDue)->day, (Date{2026, 9, 12}));
        QCOMPARE(find(running, DateKind::RemovalDue)->colonyLabels, (std::vector<std::string>{"1"}));
        QCOMPARE(find(running, DateKind::RemovalDue)->treatmentId, records::RecordId("t1"));
        QCOMPARE(find(running, DateKind::HoneyFrom)->day, (Date{2026, 9, 18}));
        QCOMPARE(find(running, DateKind::CheckWash)->day, (Date{2026, 9, 25}));
        QVERIFY(!find(running, DateKind::TreatmentEnds)); // the removal says it

        const auto forgotten = dates(yard, {2026, 9, 20});
        QVERIFY(find(forgotten, DateKind::RemovalDue)->late);
        QVERIFY(!find(forgotten, DateKind::HoneyFrom)); // past, by what is written down

        yard.treatments[0].treatment.removedOn = Date{2026, 9, 20}; // late out moves what follows
        const auto out = dates(yard, {2026, 9, 20});
        QVERIFY(!find(out, DateKind::RemovalDue));
        QCOMPARE(find(out, DateKind::HoneyFrom)->day, (Date{2026, 9, 27}));
        QCOMPARE(find(out, DateKind::CheckWash)->day, (Date{2026, 10, 4}));

        yard.latestWashes = {washed("1", {2026, 9, 29})}; // nine days after: does not count
        QVERIFY(find(dates(yard, {2026, 9, 30}), DateKind::CheckWash));
        yard.latestWashes = {washed("1", {2026, 9, 30})};
        QVERIFY(!find(dates(yard, {2026, 9, 30}), DateKind::CheckWash));
    }

    void everyTreatedColonyIsCheckedOnce() {
        YardRecords yard = yardWith({"1", "2", "3"});
        yard.treatments = {strips({"id-1", "id-2", "id-3"})};
        records::ColonyEvent died;
        died.colonyId = "id-3";
        died.kind = records::EventKind::Dead;
        died.day = {2026, 9, 20};
        yard.events = {died};
        yard.latestWashes = {washed("1", {2026, 9, 25})};
        const auto one = dates(yard, {2026, 9, 26});
        QCOMPARE(find(one, DateKind::CheckWash)->colonyLabels, (std::vector<std::string>{"2"}));
        QVERIFY(find(one, DateKind::CheckWash)->late);
        QCOMPARE(find(one, DateKind::WashDue)->colonyLabels, (std::vector<std::string>{"1"}));

        GivenTreatment second = strips({"id-2"}); // another course takes the place of the first
        second.treatment.id = "t2";
        second.treatment.firstDay = {2026, 9, 15};
        second.treatment.lastDay = {2026, 9, 25};
        second.treatment.removalDue.reset();
        yard.treatments = {second, yard.treatments[0]};
        const auto two = dates(yard, {2026, 9, 26});
        QCOMPARE(std::ranges::count(two, DateKind::CheckWash, &SeasonDate::kind), 1);
        QCOMPARE(find(two, DateKind::CheckWash)->treatmentId, records::RecordId("t2"));
        QCOMPARE(find(two, DateKind::CheckWash)->day, (Date{2026, 10, 9}));

        yard.treatments[0].treatment.lastDay = {2026, 9, 5}; // the longer one is checked, not the later
        yard.treatments[0].treatment.firstDay = {2026, 9, 5};
        const auto longer = dates(yard, {2026, 9, 24});
        QCOMPARE(std::ranges::count(longer, DateKind::CheckWash, &SeasonDate::kind), 1);
        QCOMPARE(find(longer, DateKind::CheckWash)->treatmentId, records::RecordId("t1"));
        QCOMPARE(find(longer, DateKind::CheckWash)->day, (Date{2026, 9, 25}));

        yard.treatments = {second, yard.treatments[1]};
        yard.treatments[1].colonyIds = {"id-2"};
        yard.treatments[1].treatment.firstDay = {2026, 9, 15}; // both on the same days
        yard.treatments[1].treatment.lastDay = {2026, 9, 25};
        QCOMPARE(std::ranges::count(dates(yard, {2026, 9, 26}), DateKind::CheckWash, &SeasonDate::kind), 1);
    }

    void aTreatmentWhoseColoniesMovedApartHasAnEntryInEachYard() {
        YardRecords here = yardWith({"1"}, 53), there = yardWith({"2"}, 52);
        here.treatments = there.treatments = {strips({"id-1", "id-2"})};
        std::set<std::string> keys;
        int removals = 0;
        for (const SeasonDate& date : seasonDates(std::vector{here, there}, {noonMs({2026, 8, 10}), 0}, 60)) {
            QVERIFY(keys.insert(date.key).second);
            removals += date.kind == DateKind::RemovalDue;
        }
        QCOMPARE(removals, 2);
    }

    void withoutWithdrawalNoHoneyDate() {
        YardRecords yard = yardWith({"1"});
        yard.treatments = {strips({"id-1"})};
        yard.treatments[0].treatment.withdrawalDays.reset();
        QVERIFY(!find(dates(yard, {2026, 8, 10}), DateKind::HoneyFrom));
    }

    void whatIsGivenOnceHasNoLastDay() {
        YardRecords yard = yardWith({"1"});
        yard.treatments = {strips({"id-1"})};
        records::Treatment& once = yard.treatments[0].treatment;
        once.firstDay = once.lastDay = {2026, 12, 28};
        once.removalDue.reset();
        const auto all = dates(yard, {2026, 12, 28});
        QVERIFY(!find(all, DateKind::TreatmentEnds));
        QCOMPARE(find(all, DateKind::HoneyFrom)->day, (Date{2027, 1, 4})); // across New Year
        QCOMPARE(find(all, DateKind::CheckWash)->day, (Date{2027, 1, 11}));
        once.lastDay = {2027, 1, 20};
        QCOMPARE(find(dates(yard, {2026, 12, 28}), DateKind::TreatmentEnds)->day, (Date{2027, 1, 20}));
    }

    void leapDayIsADay() {
        YardRecords yard = yardWith({"1"});
        yard.treatments = {strips({"id-1"})};
        records::Treatment& course = yard.treatments[0].treatment;
        course.firstDay = {2028, 2, 1};
        course.lastDay = {2028, 2, 22};
        course.removalDue.reset();
        QCOMPARE(find(dates(yard, {2028, 2, 10}), DateKind::HoneyFrom)->day, (Date{2028, 2, 29}));
    }

    void removedTreatmentsAndColoniesGoneSayNothing() {
        YardRecords yard = yardWith({"1"});
        yard.treatments = {strips({"id-of-one-that-moved-away"})};
        QVERIFY(!find(dates(yard, {2026, 8, 10}), DateKind::RemovalDue));
        yard.treatments = {strips({"id-1"})};
        yard.treatments[0].treatment.removed = true;
        QVERIFY(!find(dates(yard, {2026, 8, 10}), DateKind::RemovalDue));
    }

    void orderHorizonAndKeys() {
        const YardRecords north = yardWith({"1"}, 53), south = yardWith({"2"}, -40);
        const auto all = seasonDates(std::vector{north, south}, {noonMs({2026, 5, 18}), 0}, 365);
        QVERIFY(std::ranges::is_sorted(all, {}, &SeasonDate::day));
        std::set<std::string> keys;
        for (const SeasonDate& date : all)
            QVERIFY(keys.insert(date.key).second);
        QCOMPARE(std::ranges::count(all, DateKind::TurnDate, &SeasonDate::kind), 2);
        for (const SeasonDate& date : seasonDates(std::vector{north, south}, {noonMs({2026, 5, 18}), 0}, 30))
            QVERIFY(date.day <= (Date{2026, 6, 17}));
        QVERIFY(seasonDates({}, {noonMs({2026, 5, 18}), 0}, 30).empty());
    }
};

QTEST_APPLESS_MAIN(SeasonDatesTest)
#include "season_dates.moc"
