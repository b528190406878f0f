// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Samples as rows of CSV, read back by Python's csv module.
#include "exchange/demo_reader.h"
#include "exchange/samples_csv.h"
#include "exchange_python.h"
#include "records/judgement.h"
#include "records/moment.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

using namespace halfcup;
using namespace halfcup::exchange;
using exchange_test::readByPython;
using exchange_test::Rows;

namespace {

using Cells = std::map<std::string, std::string>;

records::Sample finishedSample() {
    records::Sample s;
    s.id = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";
    s.state = records::SampleState::Finished;
    s.step = records::Step::Answer;
    s.startedAtMs = records::parseRfc3339("2026-05-18T09:40:00+02:00")->utcMs;
    s.utcOffsetMinutes = 120;
    s.scoopedAtMs = s.startedAtMs + 65'250;
    s.finishedAtMs = s.startedAtMs + 300'000;
    s.queen = records::Queen::SeenAndSafe;
    s.scoop.beesMean = 302.1736;
    s.scoop.beesCv = 0.1204;
    s.stamp.state = records::PositionState::Stamped;
    s.stamp.position = {53.0714321, 19.6418768, 4.26};
    s.shake.shakenBeforeMs = 59'500;
    s.shake.ended = true;
    records::Lines lines;
    lines.own = 1.7;
    s.answer = records::answerOf(s, 5, 1, lines);
    s.note = "=four bees, \"crippled\" wings\r\n\xF0\x9F\x90\x9D";
    return s;
}

std::string file(const std::vector<SampleRow>& rows, PositionDetail detail) {
    std::string out;
    CsvWriter csv([&](std::string_view bytes) { out += bytes; });
    writeSampleHeader(csv);
    for (const SampleRow& row : rows)
        writeSampleRow(csv, row, detail);
    return out;
}

std::vector<Cells> cellsOf(const std::vector<SampleRow>& rows,
                           PositionDetail detail = PositionDetail::Blurred) {
    const Rows read = readByPython(file(rows, detail));
    std::vector<Cells> result;
    for (std::size_t i = 1; i < read.size(); ++i) {
        Cells cells;
        if (read[i].size() != read[0].size())
            qFatal("A row has %zu cells and the header %zu.", read[i].size(), read[0].size());
        for (std::size_t column = 0; column < read[0].size(); ++column)
            cells[read[0][column]] = read[i][column];
        result.push_back(cells);
    }
    return result;
}

SampleRow row(const records::Sample& sample) {
    return {sample, "4", "Alder Bend", records::Position{53.071, 19.642, 5.0}};
}

double number(const Cells& cells, const char* name) {
    bool ok = false;
    const double value = QByteArray::fromStdString(cells.at(name)).toDouble(&ok);
    return ok ? value : std::nan("");
}

std::string demoText() {
    QFile file(HALFCUP_SOURCE_DIR "/demo-data/season.json");
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

} // namespace

class ExchangeSamplesTest : public QObject {
    Q_OBJECT

private slots:
    void headerNamesUnitsAndIsWrittenWhole() {
        const Rows read = readByPython(file({}, PositionDetail::Blurred));
        QCOMPARE(read.size(), std::size_t{1});
        QCOMPARE(read[0].size(), sampleColumns().size());
        for (const char* name :
             {"mites", "bees_mean", "load_q05_per_100", "scooped_at", "latitude_deg", "demo",
              "treat_line_per_100", "position_is", "position_accuracy_m", "shaken_s"})
            QVERIFY2(std::ranges::count(read[0], name) == 1, name);
        QCOMPARE(std::set<std::string>(read[0].begin(), read[0].end()).size(), read[0].size());
    }

    void finishedSampleIsThereInFull() {
        const records::Sample sample = finishedSample();
        const Cells c = cellsOf({row(sample)}, PositionDetail::Exact).at(0);
        const records::Answer& answer = *sample.answer;
        QCOMPARE(c.at("sample_id"), sample.id);
        QCOMPARE(c.at("yard"), std::string("Alder Bend"));
        QCOMPARE(c.at("colony"), std::string("4"));
        QCOMPARE(c.at("state"), std::string("finished"));
        QCOMPARE(c.at("demo"), std::string("no"));
        QCOMPARE(c.at("method"), std::string("alcohol_wash"));
        QCOMPARE(c.at("started_at"), std::string("2026-05-18T09:40:00+02:00"));
        QCOMPARE(c.at("scooped_at"), std::string("2026-05-18T09:41:05.250+02:00"));
        QCOMPARE(c.at("finished_at"), std::string("2026-05-18T09:45:00+02:00"));
        QCOMPARE(c.at("abandoned_at"), std::string());
        QCOMPARE(c.at("queen"), std::string("seen_and_safe"));
        QCOMPARE(c.at("scoop_volume_ml"), std::string("118.294"));
        QCOMPARE(number(c, "bees_mean"), 302.174);
        QCOMPARE(number(c, "bees_cv"), 0.1204);
        QCOMPARE(c.at("bees_source"), std::string("book"));
        QCOMPARE(c.at("shake_planned_s"), std::string("60"));
        QCOMPARE(c.at("shaken_s"), std::string("59.5"));
        QCOMPARE(c.at("shake_interrupted"), std::string("no"));
        QCOMPARE(c.at("mites"), std::string("5"));
        QCOMPARE(c.at("mites_second_rinse"), std::string("1"));
        const auto near = [&](const char* name, double value) {
            return std::abs(number(c, name) - value) <= 5e-6 * value; // six digits
        };
        QVERIFY(near("load_q05_per_100", answer.loadQ05));
        QVERIFY(near("load_q50_per_100", answer.loadQ50));
        QVERIFY(near("load_q95_per_100", answer.loadQ95));
        QVERIFY(near("chance_over_treat_line", answer.chanceOver));
        QVERIFY(near("chance_over_own_line", *answer.chanceOverOwn));
        QCOMPARE(c.at("treat_line_per_100"), std::string("3"));
        QCOMPARE(c.at("treat_line_source"), std::string("trade-rule"));
        QCOMPARE(c.at("own_line_per_100"), std::string("1.7"));
        QCOMPARE(c.at("standing_treat_line"), std::string("under"));
        QCOMPARE(c.at("standing_own_line"), std::string("over"));
        QCOMPARE(c.at("jar_shape"), std::string("7"));
        QCOMPARE(c.at("note"), "'" + sample.note); // defused
    }

    void exactPositionIsExact() {
        const Cells c = cellsOf({row(finishedSample())}, PositionDetail::Exact).at(0);
        QCOMPARE(c.at("latitude_deg"), std::string("53.071432"));
        QCOMPARE(c.at("longitude_deg"), std::string("19.641877"));
        QCOMPARE(number(c, "position_accuracy_m"), 4.3);
        QCOMPARE(c.at("position_is"), std::string("exact"));
        QCOMPARE(c.at("position_state"), std::string("stamped"));
    }

    void blurredPositionIsTheYardsToAKilometre() {
        const Cells c = cellsOf({row(finishedSample())}).at(0);
        QCOMPARE(c.at("latitude_deg"), std::string("53.07"));
        QCOMPARE(c.at("longitude_deg"), std::string("19.64"));
        QCOMPARE(c.at("position_is"), std::string("blurred"));
        // Half a hundredth of a degree: 556 m north, 335 m east at 53 degrees (a degree of latitude is 111.2
        // km), together 650 m; and the 5 m of the yard.
        QVERIFY(number(c, "position_accuracy_m") > 650 && number(c, "position_accuracy_m") < 665);
    }

    void manyWashesBlurToOnePlace() { // else those on both sides of an edge would give the edge away
        std::vector<SampleRow> rows;
        for (int i = -20; i <= 20; ++i) {
            SampleRow each = row(finishedSample());
            each.yardPosition = records::Position{53.0749, 19.6449, 5.0};
            each.sample.stamp.position = {53.075 + i * 1e-5, 19.645 + i * 1e-5, 4.0};
            rows.push_back(each);
        }
        std::set<std::string> places;
        for (const Cells& c : cellsOf(rows))
            places.insert(c.at("latitude_deg") + " " + c.at("longitude_deg"));
        QCOMPARE(places, (std::set<std::string>{"53.07 19.64"}));
    }

    void nothingInABlurredRowTellsMore() { // no cell may hold the exact figures, wherever it stands
        SampleRow each = row(finishedSample());
        for (const bool yardKnown : {true, false}) {
            if (!yardKnown)
                each.yardPosition.reset();
            const std::string text = file({each}, PositionDetail::Blurred);
            for (const char* digits : {"53.071", "19.641", "19.642"})
                QVERIFY2(text.find(digits) == std::string::npos, digits);
        }
    }

    void blurredSouthAndWestKeepTheirSigns() {
        SampleRow each = row(finishedSample());
        each.yardPosition = records::Position{-33.8567, -0.0012, {}};
        const Cells c = cellsOf({each}).at(0);
        QCOMPARE(c.at("latitude_deg"), std::string("-33.86"));
        QCOMPARE(c.at("longitude_deg"), std::string("0.00"));
    }

    void noPositionIsNone() {
        for (const PositionDetail detail : {PositionDetail::Blurred, PositionDetail::Exact}) {
            SampleRow each = row(finishedSample());
            each.sample.stamp.state = records::PositionState::Denied;
            const Cells c = cellsOf({each}, detail).at(0);
            for (const char* name : {"latitude_deg", "longitude_deg", "position_accuracy_m"})
                QCOMPARE(c.at(name), std::string());
            QCOMPARE(c.at("position_is"), std::string("none"));
            QCOMPARE(c.at("position_state"), std::string("denied"));
        }
    }

    void draftHasEmptyCellsAndNoZeros() {
        const Cells c = cellsOf({{records::Sample{}, "4", "Alder Bend", {}}}).at(0);
        for (const char* name :
             {"scooped_at", "finished_at", "latitude_deg", "scoop_volume_ml", "bees_mean", "shaken_s",
              "mites", "load_q50_per_100", "treat_line_per_100", "chance_over_treat_line",
              "standing_treat_line", "own_line_per_100", "jar_shape"})
            QCOMPARE(c.at(name), std::string());
        QCOMPARE(c.at("state"), std::string("draft"));
        QCOMPARE(c.at("step"), std::string("colony"));
    }

    void damagedFiguresAreShownWithoutAWord() {
        SampleRow each = row(finishedSample());
        each.sample.answer->loadQ95 = 0;
        const Cells c = cellsOf({each}).at(0);
        QCOMPARE(c.at("load_q95_per_100"), std::string("0"));
        QCOMPARE(c.at("standing_treat_line"), std::string());
    }

    void wholeDemoReadsBack() {
        const Demo demo = readDemo(demoText());
        std::vector<SampleRow> rows;
        for (const DemoSample& each : demo.samples)
            rows.push_back({each.sample, "a label", "a yard", {}});
        const auto read = cellsOf(rows, PositionDetail::Exact);
        QCOMPARE(read.size(), demo.samples.size());
        std::set<std::string> standings;
        for (std::size_t i = 0; i < read.size(); ++i) {
            const records::Sample& sample = demo.samples[i].sample;
            const Cells& c = read[i];
            QCOMPARE(c.at("sample_id"), sample.id);
            QCOMPARE(c.at("demo"), std::string("yes"));
            QCOMPARE(records::parseRfc3339(c.at("started_at"))->utcMs, sample.startedAtMs);
            QCOMPARE(c.at("mites").empty(), !sample.answer.has_value());
            standings.insert(c.at("standing_treat_line"));
            if (sample.answer) {
                QCOMPARE(std::stoll(c.at("mites")), sample.answer->mites);
                QVERIFY(number(c, "load_q05_per_100") < number(c, "load_q50_per_100"));
                QVERIFY(number(c, "load_q50_per_100") < number(c, "load_q95_per_100"));
            }
        }
        QCOMPARE(standings, (std::set<std::string>{"", "under", "close", "over", "cannot_tell"}));
    }
};

QTEST_GUILESS_MAIN(ExchangeSamplesTest)
#include "exchange_samples.moc"
