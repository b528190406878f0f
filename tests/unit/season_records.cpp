// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// From what is kept to what is due, to the lines in force and to the question which treatment fits.
#include "handbook_files.h"
#include "season/forecast_text.h"
#include "season/lines.h"
#include "season/situation.h"
#include "season/turn_date.h"
#include "season/yard_due.h"

#include "records/judgement.h"

#include <QTest>

#include <cmath>

using namespace halfcup;
using namespace halfcup::season;
using halfcup::records::Brood;
using halfcup::records::Colony;
using halfcup::records::ColonyEvent;
using halfcup::records::Date;
using halfcup::records::EventKind;
using halfcup::records::Yard;

namespace {

const handbook::Handbook& book() {
    static const handbook::Handbook read = wholeHandbook();
    return read;
}

Yard yardAt(double latitudeDeg) {
    Yard yard;
    yard.id = "yard";
    yard.position = records::Position{latitudeDeg, 19.6, {}};
    return yard;
}

std::int64_t noonMs(const Date& day) {
    return records::daysSinceEpoch(day) * 86'400'000 + 43'200'000;
}

Colony colony(const std::string& label) {
    return {"id-" + label, "yard", label, "", {}, false, false};
}

ColonyEvent happened(const std::string& label, EventKind kind, const Date& day) {
    ColonyEvent event;
    event.id = label + records::toIso(day) + std::string(records::nameOf(kind));
    event.colonyId = "id-" + label;
    event.kind = kind;
    event.day = day;
    return event;
}

records::Sample washed(const std::string& label, const Date& day, std::int64_t mites) {
    records::Sample sample;
    sample.id = label + records::toIso(day);
    sample.colonyId = "id-" + label;
    sample.state = records::SampleState::Finished;
    sample.startedAtMs = noonMs(day);
    sample.scoop.beesMean = 302;
    sample.scoop.beesCv = 0.12;
    sample.answer = records::answerOf(sample, mites, {}, {});
    return sample;
}

GivenTreatment given(const std::string& substance, const Date& first, const Date& last,
                     std::vector<records::RecordId> ids) {
    GivenTreatment treatment;
    treatment.treatment.substance = substance;
    treatment.treatment.firstDay = first;
    treatment.treatment.lastDay = last;
    treatment.colonyIds = std::move(ids);
    return treatment;
}

std::vector<double> temperatures(const char* text, TemperatureUnit unit = TemperatureUnit::Celsius) {
    const auto read = readTemperatures(text, unit);
    return std::holds_alternative<Phrase>(read) ? std::vector<double>{-999}
                                                : std::get<std::vector<double>>(read);
}

} // namespace

class SeasonRecordsTest : public QObject {
    Q_OBJECT

private slots:
    void deadAndMergedColoniesAreNotDue() {
        YardRecords kept;
        kept.yard = yardAt(53);
        kept.colonies = {colony("1"), colony("2"), colony("3")};
        ColonyEvent merged = happened("2", EventKind::Merged, {2026, 5, 1});
        merged.otherColonyId = "id-1";
        kept.events = {merged, happened("3", EventKind::Dead, {2026, 6, 1})};
        const auto list = dueInYard(kept, {noonMs({2026, 5, 18}), 0});
        QCOMPARE(list.size(), std::size_t{2}); // 3 dies in June only
        QCOMPARE(dueInYard(kept, {noonMs({2026, 6, 1}), 0}).size(), std::size_t{1});
    }

    void treatmentsDecideWhatIsDue() {
        YardRecords kept;
        kept.yard = yardAt(53);
        kept.colonies = {colony("1"), colony("2")};
        kept.latestWashes = {washed("1", {2026, 5, 1}, 12), washed("2", {2026, 5, 1}, 12)};
        kept.treatments = {given("formic-acid", {2026, 5, 3}, {2026, 5, 10}, {"id-1"}),
                           given("oxalic-acid", {2026, 1, 3}, {2026, 1, 3}, {"id-1", "id-2"})};
        const auto list = dueInYard(kept, {noonMs({2026, 5, 26}), 0});
        QCOMPARE(list.front().colony.label, std::string("1"));
        QCOMPARE(list.front().due, (Due{DueReason::AfterTreatment, {2026, 5, 24}, 2}));
        QCOMPARE(list.back().due.reason, DueReason::Monthly);
        kept.treatments.front().treatment.removed = true;
        QCOMPARE(dueInYard(kept, {noonMs({2026, 5, 26}), 0}).front().due.reason, DueReason::Monthly);
    }

    void bothHemispheresInOneList() {
        YardRecords north, south;
        north.yard = yardAt(40);
        south.yard = yardAt(-40);
        north.colonies = {colony("n")};
        south.colonies = {colony("s")};
        north.latestWashes = {washed("n", {2026, 10, 10}, 1)};
        south.latestWashes = {washed("s", {2026, 10, 10}, 1)};
        const auto list = dueInYards(std::vector{north, south}, {noonMs({2027, 1, 20}), 0});
        QCOMPARE(list.size(), std::size_t{2});
        QCOMPARE(list[0].yard, std::size_t{1}); // the south is late, the north sleeps
        QCOMPARE(list[0].due.due.reason, DueReason::BeforeTurnDate);
        QCOMPARE(list[1].due.due, (Due{DueReason::FirstWashOfYear, {2027, 3, 1}, -40}));
    }

    void turnDates() {
        QVERIFY(turnDay(yardAt(53)) == (records::MonthDay{8, 15}));
        QVERIFY(turnDay(yardAt(-40)) == (records::MonthDay{2, 13})); // 182 days later
        QVERIFY(!turnDay(yardAt(10)) && !turnDay(yardAt(-23.3)));
        QVERIFY(turnDay(Yard{}) == (records::MonthDay{8, 15})); // no position
        Yard own = yardAt(10);
        own.turnDate = records::MonthDay{12, 1};
        QCOMPARE(*turnDateFrom(own, {2026, 12, 2}), (Date{2027, 12, 1}));
        QCOMPARE(*turnDateFrom(yardAt(53), {2026, 8, 15}), (Date{2026, 8, 15}));
        QCOMPARE(midAutumnAfter({2026, 8, 15}), (Date{2026, 10, 15}));
        QCOMPARE(book().figureAt("turn-date-north"), 227.0); // 15 August in a common year
        QCOMPARE(records::daysBetween({2025, 1, 1}, {2025, 8, 15}) + 1, 227);
    }

    // Ontario: May 2, August 3 (provincial guidance, from memory); Mississippi: February 1, and for no other
    // month.
    void linesFollowTheRegion() {
        Yard yard = yardAt(44);
        yard.lines.own = 1.7;
        const auto on = [&](const Date& day) { return linesOn(yard, day, book()); };
        QCOMPARE(on({2026, 6, 1}), yard.lines); // no region followed
        yard.lineRegion = "Ontario";
        QCOMPARE(on({2026, 5, 1}).treat, 2.0);
        QCOMPARE(on({2026, 7, 31}).treat, 2.0);
        QCOMPARE(on({2026, 7, 31}).treatSource, std::string("line-ontario-may"));
        QCOMPARE(on({2026, 8, 1}).treat, 3.0);
        QCOMPARE(on({2026, 8, 1}).own, (std::optional{1.7}));
        QCOMPARE(on({2027, 3, 1}).treat, 3.0); // August's until May
        yard.lineRegion = "Mississippi";
        QCOMPARE(on({2026, 2, 28}).treat, 1.0);
        QCOMPARE(on({2026, 3, 1}).treat, 3.0);
        QCOMPARE(on({2026, 3, 1}).treatSource, std::string("trade-rule"));
        yard.lineRegion = "Bavaria";
        QCOMPARE(on({2026, 7, 10}).treat, 1.0); // soon, not at once: the cautious one
        yard.lineRegion = "United States";
        QCOMPARE(on({2026, 1, 1}).treat, 3.0);
        yard.lineRegion = "from a newer handbook";
        QCOMPARE(on({2026, 6, 1}), yard.lines);
    }

    void everyRegionOfTheHandbookIsUnderstood() {
        const auto regions = lineRegions(book());
        QVERIFY(regions.size() >= 7);
        for (const std::string& region : regions)
            QVERIFY2(!linesOfRegion(region, book()).empty(), region.c_str());
    }

    void situationComesFromEvents() {
        const std::vector colonies{colony("1"), colony("2")};
        ColonyEvent capped = happened("1", EventKind::Brood, {2026, 5, 1});
        capped.brood = Brood::Capped;
        ColonyEvent none = happened("2", EventKind::Brood, {2026, 5, 1});
        none.brood = Brood::None;
        ColonyEvent strong = happened("1", EventKind::Strength, {2026, 5, 1});
        strong.frames = 10;
        ColonyEvent weak = happened("2", EventKind::Strength, {2026, 5, 1});
        weak.frames = 5;
        ColonyEvent floor = happened("1", EventKind::Floor, {2026, 5, 1});
        floor.floor = records::Floor::Screened;
        std::vector<ColonyEvent> events{capped, strong, floor,
                                        happened("1", EventKind::SupersOn, {2026, 5, 3})};
        const std::vector treatments{given("formic-acid", {2026, 4, 1}, {2026, 4, 8}, {"id-2"}),
                                     given("thymol", {2026, 4, 1}, {2026, 4, 8}, {"elsewhere"})};
        const auto of = [&](std::span<const Colony> which, const Date& day) {
            return situationOf(yardAt(53), which, events, treatments, day, book());
        };
        const Situation one = of(std::span(colonies).first(1), {2026, 5, 18});
        QCOMPARE(one.supersOn, std::optional{true});
        QVERIFY(one.brood == Brood::Capped && one.floor == records::Floor::Screened);
        QCOMPARE(one.adultBees, (std::optional{beesOnFrames(10, book())}));
        QVERIFY(one.past.empty());
        QCOMPARE(one.turnDate, (std::optional{Date{2026, 8, 15}}));
        QVERIFY(!of(std::span(colonies).first(1), {2026, 5, 2}).supersOn); // before it is known
        const Situation both = of(colonies, {2026, 5, 18});
        QCOMPARE(both.supersOn, std::optional{true}); // on one of them
        QVERIFY(both.brood == Brood::Capped);
        QVERIFY(!both.adultBees); // the other's strength is not known
        QVERIFY(both.floor == records::Floor::NotKnown);
        QCOMPARE(both.past.size(), std::size_t{1});
        events = {none, weak, strong, happened("1", EventKind::SupersOff, {2026, 5, 3})};
        const Situation less = of(colonies, {2026, 5, 18});
        QVERIFY(!less.supersOn); // off on one, unknown on the other
        QVERIFY(less.brood == Brood::NotKnown);
        QCOMPARE(less.adultBees, (std::optional{beesOnFrames(5, book())})); // the weakest
        QVERIFY(problemsOf(less).empty());
        const std::vector turned{colonies[1], colonies[0]};
        QCOMPARE(of(turned, {2026, 5, 18}).adultBees, less.adultBees);
        events.push_back(happened("2", EventKind::Dead, {2026, 5, 10})); // the dead are not asked
        const Situation alive = of(colonies, {2026, 5, 18});
        QCOMPARE(alive.adultBees, (std::optional{beesOnFrames(10, book())}));
        QCOMPARE(alive.supersOn, std::optional{false});
        std::vector taken = treatments;
        taken.front().treatment.removed = true; // entered by mistake
        QVERIFY(situationOf(yardAt(53), colonies, events, taken, {2026, 5, 18}, book()).past.empty());
    }

    /// Worker cells are capped 8 to 9 days after the egg (textbook, from memory): "no brood" seen at
    /// Christmas says nothing of May.
    void oldLooksIntoTheHiveDoNotCount() {
        const std::vector colonies{colony("1")};
        ColonyEvent brood = happened("1", EventKind::Brood, {2026, 4, 10});
        ColonyEvent strength = happened("1", EventKind::Strength, {2026, 4, 10});
        strength.frames = 10;
        const auto on = [&](Brood seen, const Date& day) {
            brood.brood = seen;
            return situationOf(yardAt(53), colonies, std::vector{brood, strength}, {}, day, book());
        };
        QVERIFY(on(Brood::None, {2026, 4, 18}).brood == Brood::None);
        QVERIFY(on(Brood::None, {2026, 4, 19}).brood == Brood::NotKnown);
        QVERIFY(on(Brood::OpenOnly, {2026, 4, 12}).brood == Brood::OpenOnly);
        QVERIFY(on(Brood::OpenOnly, {2026, 4, 13}).brood == Brood::NotKnown);
        QVERIFY(on(Brood::Capped, {2026, 8, 10}).brood == Brood::Capped);
        QVERIFY(on(Brood::Capped, {2026, 6, 9}).adultBees);
        QVERIFY(!on(Brood::Capped, {2026, 6, 10}).adultBees);
    }

    void droneSeasonTurnsWithTheHemisphere() {
        QVERIFY(isDroneSeason(yardAt(53), {2026, 5, 18}) && !isDroneSeason(yardAt(53), {2026, 12, 1}));
        QVERIFY(!isDroneSeason(yardAt(-40), {2026, 5, 18}) && isDroneSeason(yardAt(-40), {2026, 12, 1}));
    }

    void forecastsAsPeopleTypeThem() {
        const std::vector<double> three{24, 26, 27};
        for (const char* text : {"24,26,27", "24 26 27", "24, 26, 27", "24; 26; 27", "  24\t26  27 ",
                                 "24C 26c 27\u00B0C", "24,0 26,0 27", "+24 26.0 27"})
            QVERIFY2(temperatures(text) == three, text);
        QCOMPARE(temperatures("24,5 26,25"), (std::vector{24.5, 26.25}));
        QCOMPARE(temperatures("-3 \u22122"), (std::vector{-3.0, -2.0}));
        QVERIFY(temperatures("").empty());
        QVERIFY(std::abs(temperatures("85", TemperatureUnit::Fahrenheit).front() - 29.444) < 1e-3);
        QCOMPARE(temperatures("50 10C", TemperatureUnit::Fahrenheit), (std::vector{10.0, 10.0}));
        QCOMPARE(fromCelsius(29.5, TemperatureUnit::Fahrenheit), 85.1);
        for (const char* text : {"warm", "24 x", "nan", "inf", "1e3 2", "24..5 3", "--3 4", "C", "99999 1"})
            QVERIFY2(temperatures(text) == std::vector<double>{-999}, text);
        QVERIFY(std::holds_alternative<Phrase>(
            readTemperatures(std::string(401, ' '), TemperatureUnit::Celsius)));
    }
};

QTEST_APPLESS_MAIN(SeasonRecordsTest)
#include "season_records.moc"
