// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The chart of a colony's loads, made from its records.
#include "pictures/load_history.h"

#include <QTest>

using namespace halfcup;
using namespace halfcup::pictures;
using records::Date;

namespace {

constexpr std::int64_t hourMs = 3'600'000;

records::Sample wash(const char* id, std::int64_t utcMs, int offsetMinutes) {
    records::Sample sample;
    sample.id = id;
    sample.colonyId = "four";
    sample.state = records::SampleState::Finished;
    sample.startedAtMs = utcMs - hourMs;
    sample.scoopedAtMs = utcMs;
    sample.utcOffsetMinutes = offsetMinutes;
    records::Answer answer;
    answer.mites = 12;
    answer.loadQ05 = 2.2;
    answer.loadQ50 = 4.1;
    answer.loadQ95 = 7.4;
    answer.lines.treat = 2.5;
    answer.lines.own = 1.5;
    sample.answer = answer;
    return sample;
}

LoadChart chartOf(const std::vector<records::Sample>& samples,
                  const std::vector<records::GivenTreatment>& treatments = {},
                  const std::vector<records::ColonyEvent>& events = {}) {
    return loadChartOf({"four", samples, treatments, events},
                       [](const std::string& id) { return QString::fromStdString(id).toUpper(); });
}

} // namespace

class PicturesLoadHistoryTest : public QObject {
    Q_OBJECT

private slots:
    void aWashKeepsItsAnswerAndItsLines() {
        const LoadChart chart = chartOf({wash("a", 1'776'000'000'000, 0)});
        QCOMPARE(chart.washes.size(), std::size_t{1});
        const LoadWash& shown = chart.washes.front();
        QCOMPARE(shown.key, QStringLiteral("a"));
        QCOMPARE(shown.low, 2.2);
        QCOMPARE(shown.middle, 4.1);
        QCOMPARE(shown.high, 7.4);
        QVERIFY(!shown.noneFound && !shown.otherMethod);
        QCOMPARE(chart.lines.size(), std::size_t{1});
        QCOMPARE(chart.lines.front().treat, 2.5);
        QVERIFY(chart.lines.front().own == 1.5);
        QVERIFY(!chart.today && chart.ahead.empty());
    }

    // 2026-05-18T23:30Z is the 19th in Helsinki (+3 h) and the 18th in Halifax (-3 h), both in summer time.
    void daysAreThoseOfThePlace() {
        const std::int64_t lateMs = records::parseRfc3339("2026-05-18T23:30:00Z")->utcMs;
        const LoadChart chart = chartOf({wash("a", lateMs, 180), wash("b", lateMs, -180)});
        QVERIFY((chart.washes[0].day == Date{2026, 5, 19}));
        QVERIFY((chart.washes[1].day == Date{2026, 5, 18}));
        records::Sample unscooped = wash("c", lateMs, 0);
        unscooped.scoopedAtMs.reset();
        QVERIFY((sampledOn(unscooped) == Date{2026, 5, 18}));
    }

    void onlyFinishedLoadsOfTheColonyAreShown() {
        std::vector<records::Sample> samples(7, wash("x", 1'776'000'000'000, 0));
        samples[0].state = records::SampleState::Draft;
        samples[1].state = records::SampleState::Abandoned;
        samples[2].removed = true;
        samples[3].answer.reset();
        samples[4].colonyId = "five";
        samples[5].method = "sticky_board"; // no load, whatever else it says
        samples[6].method = "drone_brood";
        QVERIFY(records::findMethod("sticky_board") && records::findMethod("drone_brood"));
        QVERIFY(chartOf(samples).washes.empty());
        QVERIFY(chartOf(samples).lines.empty());
    }

    void otherMethodsAndNoneFoundAreMarked() {
        std::vector<records::Sample> samples(4, wash("x", 1'776'000'000'000, 0));
        samples[0].method = "soapy_wash";
        samples[1].method = "sugar_roll";
        samples[2].method = "method of a newer version";
        samples[3].answer->mites = 0;
        QVERIFY(records::findMethod("soapy_wash") && records::findMethod("sugar_roll"));
        const LoadChart chart = chartOf(samples);
        QVERIFY(!chart.washes[0].otherMethod);
        QVERIFY(chart.washes[1].otherMethod);
        QVERIFY(chart.washes[2].otherMethod);
        QVERIFY(chart.washes[3].noneFound && !chart.washes[2].noneFound);
    }

    void treatmentsOfTheColonyAreBands() {
        std::vector<records::GivenTreatment> given(3);
        for (records::GivenTreatment& each : given) {
            each.treatment.substance = "thymol";
            each.treatment.firstDay = {2026, 6, 20};
            each.treatment.lastDay = {2026, 7, 21};
            each.colonyIds = {"three", "four"};
        }
        given[0].treatment.removedOn = Date{2026, 7, 10}; // taken out early
        given[1].colonyIds = {"three"};
        given[2].treatment.removed = true;
        const LoadChart chart = chartOf({}, given);
        QCOMPARE(chart.treated.size(), std::size_t{1});
        QVERIFY((chart.treated[0] == TreatedDays{{2026, 6, 20}, {2026, 7, 10}, QStringLiteral("THYMOL")}));
    }

    void eventsOfTheColonyAndOnesPutIntoItAreShown() {
        std::vector<records::ColonyEvent> events(5);
        for (records::ColonyEvent& event : events) {
            event.colonyId = "four";
            event.kind = records::EventKind::Swarmed;
            event.day = {2026, 6, 1};
        }
        events[1].removed = true;
        events[2].colonyId = "five";
        events[2].kind = records::EventKind::Merged;
        events[2].otherColonyId = "four";
        events[3].colonyId = "five"; // split from this one: its own story
        events[3].kind = records::EventKind::Split;
        events[3].otherColonyId = "four";
        events[4].colonyId = "six";
        const LoadChart chart = chartOf({}, {}, events);
        QCOMPARE(chart.happenings.size(), std::size_t{2});
        QVERIFY(chart.happenings[1].kind == records::EventKind::Merged);
    }
};

QTEST_GUILESS_MAIN(PicturesLoadHistoryTest)
#include "pictures_load_history.moc"
