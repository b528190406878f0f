// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The demo season: what the file holds, and what happens to files that are wrong.
#include "exchange/demo_reader.h"
#include "records/judgement.h"
#include "season/due.h"

#include <QFile>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

using namespace halfcup;
using namespace halfcup::exchange;
using mites::Standing;

namespace {

const std::string& demoText() {
    static const std::string text = [] {
        QFile file(HALFCUP_SOURCE_DIR "/demo-data/season.json");
        return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
    }();
    return text;
}

records::Moment moment(const char* text) {
    return records::parseRfc3339(text).value();
}

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    const std::size_t at = text.find(what);
    if (at == std::string::npos)
        qFatal("The demo file has no '%s' any more; the test wants another piece of it.", what.c_str());
    return text.replace(at, what.size(), with);
}

std::string errorOf(const std::string& text) {
    try {
        static_cast<void>(readDemo(text));
    } catch (const DemoError& error) {
        return error.what();
    }
    return "(it was taken)";
}

const records::Colony& colonyWith(const Demo& demo, const std::string& label) {
    return *std::ranges::find(demo.colonies, label, &records::Colony::label);
}

/// The list of a yard as the program shows it on the demo's day.
std::vector<season::DueColony> dueIn(const Demo& demo, const records::Yard& yard,
                                     const records::Moment& now) {
    std::vector<season::ColonyToJudge> colonies;
    for (const records::Colony& colony : demo.colonies) {
        if (colony.yardId != yard.id)
            continue;
        season::ColonyToJudge each{colony.id, colony.label, {}};
        for (const DemoSample& sample : demo.samples)
            if (sample.sample.colonyId == colony.id)
                if (const auto last = season::lastWashOf(sample.sample))
                    each.lastWash = last;
        colonies.push_back(each);
    }
    return season::dueList(colonies, yard, now);
}

} // namespace

class ExchangeDemoTest : public QObject {
    Q_OBJECT

private slots:
    void holdsTwoYardsNineColoniesAndASeason() {
        const Demo demo = readDemo(demoText());
        QCOMPARE(demo.yards.size(), std::size_t{2});
        QCOMPARE(demo.yards[0].name, std::string("Alder Bend"));
        QCOMPARE(demo.colonies.size(), std::size_t{9});
        QCOMPARE(demo.samples.size(), std::size_t{66});
        QCOMPARE(demo.shiftedYears, 0);
        QCOMPARE(demo.today, moment("2026-05-18T09:40:00+02:00"));
        for (const records::Yard& yard : demo.yards)
            QVERIFY(yard.demo && !yard.removed && yard.position);
        for (const records::Colony& colony : demo.colonies)
            QVERIFY(colony.demo && !colony.removed);
        std::set<int> months;
        for (const DemoSample& each : demo.samples) {
            QVERIFY(each.sample.demo && !each.sample.removed);
            const records::Sample& s = each.sample;
            const records::Date day = records::localDate({s.startedAtMs, s.utcOffsetMinutes});
            QCOMPARE(day.year, 2026);
            months.insert(day.month);
        }
        QCOMPARE(months, (std::set<int>{3, 4, 5, 6, 7, 8, 9, 10}));
    }

    void samplesAreCompleteAndConsistent() {
        const Demo demo = readDemo(demoText());
        std::int64_t before = 0;
        for (const DemoSample& each : demo.samples) {
            const records::Sample& s = each.sample;
            const QByteArray where =
                QByteArray::fromStdString(records::toRfc3339({s.startedAtMs, s.utcOffsetMinutes}));
            QVERIFY(records::isRecordId(s.id));
            QVERIFY2(s.startedAtMs >= before, where); // one keeper, one wash at a time
            const bool finished = s.state == records::SampleState::Finished;
            const std::int64_t end = finished ? s.finishedAtMs.value() : s.abandonedAtMs.value();
            before = end;
            QCOMPARE(s.answer.has_value(), finished);
            if (!finished) {
                QVERIFY(each.counts.empty());
                continue;
            }
            QVERIFY(s.shake.ended && s.step == records::Step::Answer);
            QVERIFY(s.startedAtMs <= *s.scoopedAtMs && *s.scoopedAtMs < *s.settleStartedMs &&
                    *s.settleStartedMs < end);
            QCOMPARE(records::tally(each.counts, 1).mites(), s.answer->mites);
            QVERIFY(records::tally(each.counts, 1).touched());
            QCOMPARE(records::tally(each.counts, 2).touched(), s.answer->mitesSecondRinse.has_value());
            QCOMPARE(records::tally(each.counts, 2).mites(), s.answer->mitesSecondRinse.value_or(0));
            std::int64_t at = *s.settleStartedMs;
            std::int64_t count = 0;
            for (const records::CountEvent& event : each.counts) {
                QCOMPARE(event.number, ++count);
                QVERIFY2(event.atUtcMs >= at && event.atUtcMs <= end, where);
                at = event.atUtcMs;
            }
        }
    }

    void answersAreThoseOfTheProgram() {
        for (const DemoSample& each : readDemo(demoText()).samples) {
            if (!each.sample.answer)
                continue;
            const records::Answer& is = *each.sample.answer;
            const records::Answer should =
                records::answerOf(each.sample, is.mites, is.mitesSecondRinse, is.lines);
            QCOMPARE(is.loadQ50, should.loadQ50);
            QCOMPARE(is.chanceOver, should.chanceOver);
            QCOMPARE(is.chanceOverOwn, should.chanceOverOwn);
        }
    }

    void yardsLieApartAndWashesInTheirYard() {
        const Demo demo = readDemo(demoText());
        const auto metres = [](const records::Position& a,
                               const records::Position& b) { // flat is near enough
            const double north = (a.latitudeDeg - b.latitudeDeg) * 111'200;
            const double east =
                (a.longitudeDeg - b.longitudeDeg) * 111'200 * std::cos(a.latitudeDeg * 3.14159265 / 180);
            return std::hypot(north, east);
        };
        QVERIFY(metres(*demo.yards[0].position, *demo.yards[1].position) > 400);
        for (const DemoSample& each : demo.samples) {
            const auto yard = std::ranges::find(demo.yards, each.sample.yardId, &records::Yard::id);
            QVERIFY(yard != demo.yards.end());
            if (each.sample.stamp.state == records::PositionState::Stamped)
                QVERIFY(metres(each.sample.stamp.position, *yard->position) < 20);
        }
    }

    void whatWasDoneIsCutAtTheDayAsked() {
        const Demo all = readDemo(demoText());
        QCOMPARE(all.treatments.size(), std::size_t{7});
        for (const records::GivenTreatment& each : all.treatments) {
            QVERIFY(records::problemsOf(each.treatment, static_cast<int>(each.colonyIds.size()),
                                        each.treatment.firstDay)
                        .empty());
            QVERIFY(each.treatment.demo && !each.treatment.batch.empty() && !each.treatment.supplier.empty());
        }
        DemoOptions options;
        options.untilUtcMs = moment("2026-05-24T12:00:00+02:00").utcMs; // in the middle of colony 4's pads
        const Demo may = readDemo(demoText(), options);
        QCOMPARE(may.treatments.size(), std::size_t{3});
        QVERIFY(!may.treatments.back().treatment.removedOn);
        QCOMPARE(may.treatments.back().treatment.removalDue, (std::optional{records::Date{2026, 5, 27}}));
        for (const records::ColonyEvent& event : may.events)
            QVERIFY(event.day <= (records::Date{2026, 5, 24}) && event.demo);
        QVERIFY(may.events.size() < all.events.size());
        options = {};
        options.fitTo = moment("2029-06-01T12:00:00+02:00"); // the leap day of an expiry has no place in 2031
        const Demo later = readDemo(demoText(), options);
        QCOMPARE(later.treatments[5].treatment.firstDay, (records::Date{2029, 8, 14}));
        QCOMPARE(later.treatments[5].treatment.expiry, (std::optional{records::Date{2031, 2, 28}}));
    }

    void morningOfTheStory() {
        DemoOptions options;
        options.untilUtcMs = moment("2026-05-18T09:40:00+02:00").utcMs;
        const Demo demo = readDemo(demoText(), options);
        const auto alder = dueIn(demo, demo.yards[0], demo.today);
        std::vector<std::string> labels;
        for (const season::DueColony& each : alder)
            labels.push_back(each.colony.label);
        QCOMPARE(labels, (std::vector<std::string>{"4", "1", "2", "7", "10"}));
        QCOMPARE(alder[0].due, (season::Due{season::DueReason::Monthly, {2026, 5, 12}, 6}));
        QVERIFY(alder[0].overLine);
        QCOMPARE(alder[1].due, (season::Due{season::DueReason::FirstWashOfYear, {2026, 5, 18}, 0}));
        QVERIFY(!alder[1].colony.lastWash);
        QCOMPARE(alder[2].colony.lastWash->standing, Standing::Close);
        QCOMPARE(alder[3].colony.lastWash->standing, Standing::Under);
        QCOMPARE(alder[3].due.daysLate, -2);
        QCOMPARE(alder[4].due, (season::Due{season::DueReason::AgainBecauseUnclear, {2026, 5, 21}, -3}));
        const auto furrow = dueIn(demo, demo.yards[1], demo.today);
        QCOMPARE(furrow[0].colony.label, std::string("Nuc by the gate"));
        QCOMPARE(furrow[1].colony.label, std::string("5")); // over the own line
        QVERIFY(furrow[1].overLine);
        QVERIFY(std::ranges::any_of(demo.samples, [&](const DemoSample& each) {
            return each.sample.state == records::SampleState::Abandoned &&
                   each.sample.colonyId == colonyWith(demo, "7").id;
        }));
    }

    void untilLeavesOutWhatEndedLater() {
        const Demo all = readDemo(demoText());
        for (const DemoSample& each : all.samples) {
            const std::int64_t end = each.sample.finishedAtMs.value_or(each.sample.abandonedAtMs.value_or(0));
            DemoOptions options;
            options.untilUtcMs = end - 1;
            const std::size_t without = readDemo(demoText(), options).samples.size();
            options.untilUtcMs = end;
            QCOMPARE(readDemo(demoText(), options).samples.size(), without + 1);
        }
    }

    void seasonIsMovedToFitTheClock_data() {
        QTest::addColumn<QByteArray>("now");
        QTest::addColumn<int>("years");
        QTest::newRow("the story's own moment") << QByteArray("2026-05-18T09:40:00+02:00") << 0;
        QTest::newRow("a second before") << QByteArray("2026-05-18T09:39:59+02:00") << -1;
        QTest::newRow("autumn") << QByteArray("2026-11-25T10:00:00+01:00") << 0;
        QTest::newRow("next spring, too early") << QByteArray("2027-03-20T10:00:00+01:00") << 0;
        QTest::newRow("a leap year") << QByteArray("2028-06-01T10:00:00+02:00") << 2;
        QTest::newRow("a clock at its factory setting") << QByteArray("1970-01-01T00:00:00Z") << -57;
        QTest::newRow("another zone") << QByteArray("2027-05-17T21:40:00-10:00") << 1;
    }
    void seasonIsMovedToFitTheClock() {
        QFETCH(const QByteArray, now);
        QFETCH(const int, years);
        const Demo plain = readDemo(demoText());
        DemoOptions options;
        options.fitTo = moment(now.constData());
        const Demo moved = readDemo(demoText(), options);
        QCOMPARE(moved.shiftedYears, years);
        QVERIFY(moved.today.utcMs <= options.fitTo->utcMs);
        QCOMPARE(records::toRfc3339(moved.today).substr(4), std::string("-05-18T09:40:00+02:00"));
        QCOMPARE(moved.samples.size(), plain.samples.size());
        for (std::size_t i = 0; i < plain.samples.size(); ++i) {
            const records::Sample& a = plain.samples[i].sample;
            const records::Sample& b = moved.samples[i].sample;
            QCOMPARE(b.id, a.id);
            const auto text = [](const records::Sample& s, std::int64_t ms) {
                return records::toRfc3339({ms, s.utcOffsetMinutes}).substr(4); // all but the year
            };
            QCOMPARE(text(b, b.startedAtMs), text(a, a.startedAtMs));
            QCOMPARE(b.finishedAtMs.value_or(0) - b.startedAtMs * b.finishedAtMs.has_value(),
                     a.finishedAtMs.value_or(0) - a.startedAtMs * a.finishedAtMs.has_value());
        }
    }

    void leapDayBecomes28February() {
        const std::string leap =
            replaced(demoText(), "2026-05-18T09:40:00+02:00", "2028-02-29T09:40:00+01:00");
        DemoOptions options;
        options.fitTo = moment("2031-01-01T00:00:00Z");
        QCOMPARE(records::toRfc3339(readDemo(leap, options).today), std::string("2030-02-28T09:40:00+01:00"));
        options.fitTo = moment("2032-12-01T00:00:00Z");
        QCOMPARE(records::toRfc3339(readDemo(leap, options).today), std::string("2032-02-29T09:40:00+01:00"));
    }

    void wrongFilesAreRefusedWithPlaceAndReason_data() {
        QTest::addColumn<QByteArray>("what");
        QTest::addColumn<QByteArray>("with");
        QTest::addColumn<QByteArray>("place");
        const auto row = [](const char* name, const char* what, const char* with, const char* place) {
            QTest::newRow(name) << QByteArray(what) << QByteArray(with) << QByteArray(place);
        };
        row("another format", "halfcup-demo", "something", "format: ");
        row("newer version", "\"version\": 1", "\"version\": 2", "version: ");
        row("no JSON", "\"version\": 1,", "\"version\": 1", "Line 4: ");
        row("no day", "2026-05-18T09:40:00+02:00", "18 May", "today: ");
        row("missing field", "\"reach_m\": 150, ", "", "yards[0].reach_m: the field is");
        row("unknown field", "\"reach_m\": 150", "\"reach_m\": 150, \"reach\": 1",
            "yards[0].reach: there is no such");
        row("text for a number", "\"latitude_deg\": 53.071", "\"latitude_deg\": \"53\"",
            "yards[0].latitude_deg: a number");
        row("beyond the pole", "\"latitude_deg\": 53.071", "\"latitude_deg\": 95",
            "yards[0].latitude_deg: 95.0 is not");
        row("line of nothing", "\"treat_line_per_100\": 3", "\"treat_line_per_100\": 0",
            "yards[0].treat_line_per_100: ");
        row("empty name", "\"Alder Bend\"", "\" \"", "yards[0].name: ");
        row("no id", "019ca869-5000-7117", "019ca869-5000-4117", "yards[0].id: ");
        row("colony without yard", "\"yard_id\": \"019ca869", "\"yard_id\": \"019ca860",
            "colonies[0].yard_id: there is no");
        row("wash without colony", "\"colony_id\": \"019ca86d", "\"colony_id\": \"019ca860",
            "samples[0].colony_id: ");
        row("unknown method", "alcohol_wash", "tea_leaves", "samples[0].method: ");
        row("a draft", "\"state\": \"finished\"", "\"state\": \"draft\"",
            "samples[0].state: \"draft\" is not one");
        row("mites below 0", "\"mites\": 4", "\"mites\": -4", "samples[0].mites: ");
        row("mites over the limit", "\"mites\": 4", "\"mites\": 10001", "samples[0].mites: ");
        row("mites beyond 64 bits", "\"mites\": 4", "\"mites\": 18446744073709551615", "samples[0].mites: ");
        row("mites with fraction", "\"mites\": 4", "\"mites\": 4.5", "samples[0].mites: a whole number");
        row("no mites", "\"mites\": 4, ", "", "samples[0].mites: the field is");
        row("impossible time", "2026-03-15T11:05", "2026-02-29T11:05", "samples[0].started_at: ");
        row("end before the scoop", "\"ended_after_s\": 304", "\"ended_after_s\": 1",
            "samples[0].ended_after_s: ");
        row("shaken for ever", "\"shaken_s\": 60", "\"shaken_s\": 600", "samples[0].shaken_s: ");
        row("no scoop", "\"bees_source\": \"book\"}", "\"bees_source\": \"guess\"}",
            "samples[0].scoop.bees_source: ");
        row("bees rapped down, from the book", "\"packing\": \"loose\"", "\"packing\": \"settled\"",
            "samples[0].scoop.bees_source: ");
        row("list for an object",
            "\"scoop\": {\"volume_ml\": 118.294, \"packing\": \"loose\", \"bees_source\": \"book\"}",
            "\"scoop\": []", "samples[0].scoop: an object");
        row("unknown step", "\"step\": \"safety\"", "\"step\": \"dance\"", "samples[9].step: ");
        row("unknown happening", "\"event\": \"floor\"", "\"event\": \"dance\"", "events[0].event: ");
        row("happening on no day", "\"day\": \"2026-03-01\"", "\"day\": \"2026-02-29\"", "events[0].day: ");
        row("floor of another kind", "\"floor\": \"screened\"", "\"floor\": \"glass\"", "events[0].floor: ");
        row("end before the start", "\"last_day\": \"2025-12-20\"", "\"last_day\": \"2025-12-19\"",
            "treatments[0].first_day: ");
        row("withdrawal below 0", "\"withdrawal_days\": 0", "\"withdrawal_days\": -1",
            "treatments[0].withdrawal_days: ");
        row("treated nobody", "\"colony_ids\": [\"019ca86d", "\"colony_ids\": [\"019ca860",
            "treatments[0].colony_ids: ");
        row("unknown way to count", "\"counted_by\": \"typed\"", "\"counted_by\": \"guess\"",
            "samples[12].counted_by: ");
    }
    void wrongFilesAreRefusedWithPlaceAndReason() {
        QFETCH(const QByteArray, what);
        QFETCH(const QByteArray, with);
        QFETCH(const QByteArray, place);
        const QByteArray error =
            QByteArray::fromStdString(errorOf(replaced(demoText(), what.toStdString(), with.toStdString())));
        QVERIFY2(error.startsWith(place), error);
        QVERIFY2(error.size() > place.size() + 1, error);
    }

    void twiceTheSameIdIsRefused() {
        const std::string id = readDemo(demoText()).colonies[0].id;
        const std::string twice = replaced(demoText(), readDemo(demoText()).colonies[1].id, id);
        QVERIFY(errorOf(twice).starts_with("colonies[1].id: "));
    }

    void otherThingsThanAnObjectAreRefused() {
        for (const char* text :
             {"", "[]", "null", "7", "\"x\"", "{}", "{\"format\": 1}", "\xFF\xFE", "{\"a\":"})
            QVERIFY2(errorOf(text) != "(it was taken)", text);
    }

    void fileCutAnywhereIsRefused() {
        for (std::size_t size = 0; size + 2 < demoText().size(); size += 61) // the last two bytes are "}\n"
            QVERIFY(errorOf(demoText().substr(0, size)) != "(it was taken)");
    }

    void spoiltFilesNeverCrash() { // taken or refused, but never anything else
        std::mt19937 random(53);
        int refused = 0;
        for (int i = 0; i < 1'000; ++i) {
            std::string text = demoText();
            for (unsigned n = 1 + random() % 4; n > 0; --n)
                text[random() % text.size()] = static_cast<char>(random() % 256);
            refused += errorOf(text) != "(it was taken)";
        }
        QVERIFY(refused > 500);
    }

    void nestingWithoutEndIsRefused() {
        QVERIFY(errorOf(std::string(200'000, '[')) != "(it was taken)");
        QVERIFY(
            errorOf(replaced(demoText(), "\"Alder Bend\"", std::string(5'000, '[') + std::string(5'000, ']')))
                .starts_with("yards[0].name: "));
    }
};

QTEST_GUILESS_MAIN(ExchangeDemoTest)
#include "exchange_demo.moc"
