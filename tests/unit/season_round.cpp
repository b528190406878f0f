// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A yard round through the records. Yard means and stop boundaries are compared with tables that were
// computed by another program (outside the project; skipped where they are absent); the rest are hand-made
// cases.
#include "mites/stop_rule.h"
#include "mites_tables.h"
#include "season/yard_round.h"

#include <map>

using namespace halfcup;
using namespace halfcup::season;
using namespace halfcup::mites::testing;
using records::RecordId;

namespace {

constexpr std::int64_t startMs = 1'780'000'000'000; // 28 May 2026
constexpr std::int64_t minuteMs = 60'000;
const records::Date theDay{2026, 5, 28};

struct Yard {
    records::Round round;
    std::vector<ColonyOfYard> colonies;
    std::vector<records::Sample> samples;

    explicit Yard(int count, int inRound) {
        round.id = "round";
        round.yardId = "yard";
        round.startedAtMs = startMs;
        for (int i = 0; i < count; ++i) {
            ColonyOfYard each;
            each.colony.id = idOf(i);
            each.colony.yardId = "yard";
            colonies.push_back(each);
            if (i < inRound)
                round.colonyIds.push_back(idOf(i));
        }
    }

    static RecordId idOf(int i) { return "colony-" + std::to_string(i); }

    records::Sample& wash(int colony, std::int64_t mites, double bees = 300, std::int64_t atMs = 0) {
        records::Sample sample;
        sample.id = "sample-" + std::to_string(1000 + samples.size());
        sample.colonyId = idOf(colony);
        sample.yardId = "yard";
        sample.state = records::SampleState::Finished;
        sample.startedAtMs = atMs ? atMs : startMs + static_cast<std::int64_t>(samples.size() + 1) * minuteMs;
        sample.scoop.beesMean = bees;
        sample.scoop.beesCv = 0.1;
        sample.answer = records::Answer{};
        sample.answer->mites = mites;
        samples.push_back(sample);
        return samples.back();
    }

    RoundReading read(double line = 3) const { return readRound(round, colonies, samples, line, theDay); }

    void happens(int colony, records::EventKind kind, const RecordId& otherYard = {}) {
        records::ColonyEvent event;
        event.id = "event";
        event.colonyId = idOf(colony);
        event.yardId = "yard";
        event.otherYardId = otherYard;
        event.kind = kind;
        event.day = theDay;
        colonies[static_cast<std::size_t>(colony)].events.push_back(event);
    }
};

/// The shape at which colonyUnitShape() gives what the table has.
double jarShapeFor(double unitShape) {
    return 1 / ((1 + 1 / unitShape) / (1 + 0.8 * 0.8) - 1 - 0.1 * 0.1);
}

std::vector<RecordId> ids(int count) {
    std::vector<RecordId> all;
    for (int i = 0; i < count; ++i)
        all.push_back(Yard::idOf(i));
    return all;
}

Chance chanceFrom(std::uint64_t seed) { // splitmix64 (Steele, Lea & Flood 2014; constants from memory)
    return [state = seed]() mutable {
        std::uint64_t z = (state += 0x9E3779B97F4A7C15ULL);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
        return z ^ (z >> 31);
    };
}

} // namespace

class SeasonRoundTest : public QObject {
    Q_OBJECT

private slots:
    void yardMeansOfTheTable() {
        const Table table("reference/yard_mean_formula.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const auto counts = row.numbers("k");
            const auto bees = row.numbers("n");
            Yard yard(static_cast<int>(row.count("N")), static_cast<int>(counts.size()));
            for (std::size_t i = 0; i < counts.size(); ++i) {
                auto& answer =
                    *yard.wash(static_cast<int>(i), static_cast<std::int64_t>(counts[i]), bees[i]).answer;
                answer.recovery = 0.95; // as the table has it
                answer.recoverySd = 0.03;
                answer.jarShape = 20;
            }
            const RoundReading reading = yard.read(2);
            const QString id = row.text("id");
            QVERIFY(reading.figure);
            RELATIVE(reading.figure->load.q05, row.number("q05"), 1e-7, id);
            RELATIVE(reading.figure->load.q50, row.number("q50"), 1e-7, id);
            RELATIVE(reading.figure->load.q95, row.number("q95"), 1e-7, id);
            NEAR(reading.figure->chanceOver, row.number("P_mean_gt2"), 1e-8, id);
        }
    }

    /// Two against four per 100 is a line of three; looked at after three colonies, to the mite.
    void stopsAtTheTablesBoundaries() {
        const Table table("reference/sprt_boundaries.csv");
        NEED_TABLE(table);
        int rows = 0;
        for (const Table::Row& row : table.rows()) {
            if (row.number("l0") != 2 || row.number("l1") != 4 || row.number("phi") != 1.5 ||
                row.number("alpha") != 0.1 || row.number("beta") != 0.1)
                continue;
            ++rows;
            const auto upper =
                static_cast<std::int64_t>(std::ceil(row.number("slope") * 3 + row.number("h_upper")));
            const auto lower =
                static_cast<std::int64_t>(std::floor(row.number("slope") * 3 + row.number("h_lower")));
            const auto afterThree = [&](std::int64_t mites) {
                Yard yard(20, 8);
                for (int i = 0; i < 3; ++i) {
                    auto& sample = yard.wash(i, i < 2 ? mites / 3 : mites - 2 * (mites / 3), 300);
                    sample.scoop.beesMean = row.number("E") * 100;
                    sample.answer->jarShape = jarShapeFor(row.number("phi"));
                }
                return yard.read(3).verdict;
            };
            QCOMPARE(afterThree(lower), RoundVerdict::Under);
            QCOMPARE(afterThree(lower + 1), RoundVerdict::GoOn);
            QCOMPARE(afterThree(upper - 1), RoundVerdict::GoOn);
            QCOMPARE(afterThree(upper), RoundVerdict::Over);
        }
        QVERIFY(rows > 0);
    }

    void neverBeforeThreeColonies() {
        Yard yard(20, 8);
        yard.wash(0, 60);
        yard.wash(1, 60);
        QCOMPARE(yard.read().verdict, RoundVerdict::GoOn);
        yard.wash(2, 60);
        QCOMPARE(yard.read().verdict, RoundVerdict::Over);
        QCOMPARE(yard.read().count(RoundPlace::Left), std::size_t{5});
        QCOMPARE(*yard.read().next(), Yard::idOf(3));
    }

    void endsUnsettledAtThePlannedNumber() {
        Yard yard(20, 4);
        for (int i = 0; i < 4; ++i) {
            QCOMPARE(yard.read().verdict, RoundVerdict::GoOn);
            yard.wash(i, 8); // 2.7 per 100: close to the line
        }
        QCOMPARE(yard.read().verdict, RoundVerdict::NotSettled);
        QVERIFY(!yard.read().next());
        QCOMPARE(yard.read().figure->standing, mites::Standing::Close);
    }

    void onlyTheFirstWashOfItsTimeCounts() {
        Yard yard(8, 8);
        yard.wash(0, 50, 300, startMs - 1);
        QCOMPARE(yard.read().done(), std::size_t{0});
        yard.wash(0, 9, 300, startMs);
        yard.wash(0, 1, 300, startMs + minuteMs);
        QCOMPARE(yard.read().parts[0].wash->answer->mites, std::int64_t{9});
        yard.wash(1, 3, 300, startMs + 9 * minuteMs);
        yard.round.endedAtMs = startMs + 9 * minuteMs; // at the end is after it
        QCOMPARE(yard.read().done(), std::size_t{1});
        yard.samples.back().scoopedAtMs = startMs + 8 * minuteMs; // scooped before, washed later
        QCOMPARE(yard.read().done(), std::size_t{2});
        yard.samples.back().state = records::SampleState::Draft;
        QCOMPARE(yard.read().done(), std::size_t{1});
        yard.samples.back().state = records::SampleState::Finished;
        yard.samples.back().removed = true;
        QCOMPARE(yard.read().done(), std::size_t{1});
    }

    void deadMergedAndMovedColoniesAreLeftOut() {
        Yard yard(10, 6);
        for (int i = 0; i < 4; ++i)
            yard.wash(i, 6);
        yard.happens(0, records::EventKind::Dead);
        yard.happens(1, records::EventKind::Moved, "elsewhere");
        yard.happens(4, records::EventKind::Merged);
        const RoundReading reading = yard.read();
        QCOMPARE(reading.count(RoundPlace::Gone), std::size_t{3});
        QCOMPARE(reading.planned(), std::size_t{3});
        QCOMPARE(reading.count(RoundPlace::Washed), std::size_t{2});
        QCOMPARE(reading.colonies, std::int64_t{7});
        QCOMPARE(*reading.next(), Yard::idOf(5));
    }

    void anotherRecoveryIsNotPooled() {
        Yard yard(8, 8);
        auto& roll = *yard.wash(0, 30).answer;
        roll.recovery = 0.9;
        roll.recoverySd = 0.08;
        QCOMPARE(yard.read().count(RoundPlace::Washed), std::size_t{1}); // alone it is the yard's figure
        yard.wash(1, 3);
        QCOMPARE(yard.read().parts[1].place, RoundPlace::OtherMethod); // one and one: the first
        yard.wash(2, 3);
        QCOMPARE(yard.read().parts[0].place, RoundPlace::OtherMethod); // two to one
        QCOMPARE(yard.read().done(), std::size_t{3});
        QVERIFY(yard.read().figure->load.q50 < 2);
    }

    void damagedFiguresAreLeftOut() {
        Yard yard(8, 8);
        yard.wash(0, 9);
        yard.wash(1, -4);
        yard.wash(2, 9, 0);
        const RoundReading reading = yard.read();
        QCOMPARE(reading.count(RoundPlace::Damaged), std::size_t{2});
        QCOMPARE(reading.count(RoundPlace::Washed), std::size_t{1});
    }

    /// Two phones wash one round: whatever order their samples come in.
    void samplesOfTwoPhonesGiveOneReading() {
        Yard yard(12, 8);
        for (int i = 0; i < 5; ++i)
            yard.wash(i, i * 4);
        yard.wash(2, 40); // the second phone washed it too, later
        const RoundReading one = yard.read();
        std::ranges::reverse(yard.samples);
        const RoundReading other = yard.read();
        QCOMPARE(one.done(), other.done());
        QCOMPARE(one.parts[2].wash->answer->mites, std::int64_t{8});
        QCOMPARE(other.parts[2].wash->answer->mites, std::int64_t{8});
        QCOMPARE(one.figure->load.q50, other.figure->load.q50);
        QCOMPARE(one.verdict, other.verdict);
    }

    void oneColonyStandsOut() {
        Yard yard(12, 8);
        for (int i = 0; i < 7; ++i)
            yard.wash(i, 3);
        yard.wash(7, 40);
        const RoundReading reading = yard.read();
        for (int i = 0; i < 8; ++i)
            QCOMPARE(reading.parts[static_cast<std::size_t>(i)].standsOut, i == 7);
    }

    /// What all scoops of one hand have in common does not average out.
    void uncountedScoopsWidenTheRange() {
        const auto width = [](double cv, records::Scoop::BeesSource source) {
            Yard yard(8, 8);
            for (int i = 0; i < 8; ++i) {
                auto& sample = yard.wash(i, 9);
                sample.scoop.beesCv = cv;
                sample.scoop.source = source;
            }
            const auto load = yard.read().figure->load;
            return load.q95 / load.q05;
        };
        using Source = records::Scoop::BeesSource;
        QVERIFY(width(0.25, Source::Book) > 1.2 * width(0.1, Source::Book));
        QVERIFY(width(0.02, Source::Counted) < width(0.1, Source::Book));
    }

    /// Component formula by hand, w = 1/7 + 0.01 = 0.1529: (0.64 + w 1.64 + 1/(2 * 2.85)) = 1.0662, over
    /// 0.0625 + 0.64/10 = 8.43, over 0.0625 + 0.64/24 = 11.96; at 0.5 per 100 1.5925/0.1265 = 12.6 of 10.
    void howManyToWash() {
        QCOMPARE(plannedByHandbook(8, 24), std::int64_t{8});
        QCOMPARE(plannedByHandbook(8, 5), std::int64_t{5});
        Yard yard(10, 0);
        QVERIFY(!plannedByLoad(yard.samples, 2.85, 10));
        yard.wash(0, 0);
        QVERIFY(!plannedByLoad(yard.samples, 2.85, 10)); // none found: no load to expect
        yard.wash(1, 12);
        QCOMPARE(plannedByLoad(yard.samples, 2.85, 10)->expectedLoad, 2.0);
        QCOMPARE(plannedByLoad(yard.samples, 2.85, 10)->washes, std::int64_t{9});
        QCOMPARE(plannedByLoad(yard.samples, 2.85, 24)->washes, std::int64_t{12});
        yard.samples[1].answer->mites = 3; // 0.5 per 100
        QVERIFY(!plannedByLoad(yard.samples, 2.85, 10)->enoughForIt);
        QCOMPARE(plannedByLoad(yard.samples, 2.85, 10)->washes, std::int64_t{10});
    }

    /// 4 of 5: each of 120 orders of five. Chi-square with 119 degrees of freedom stays below 182 in 999 of
    /// 1000 draws (R: qchisq(0.9999, 119) = 182.4); the seed is fixed.
    void everyOrderIsEquallyLikely() {
        std::map<std::vector<RecordId>, int> seen;
        const Chance chance = chanceFrom(20261125);
        constexpr int draws = 60'000;
        for (int i = 0; i < draws; ++i)
            ++seen[pickAtRandom(ids(5), 5, chance)];
        QCOMPARE(seen.size(), std::size_t{120});
        double chiSquare = 0;
        for (const auto& [order, times] : seen)
            chiSquare += std::pow(times - draws / 120.0, 2) / (draws / 120.0);
        QVERIFY2(chiSquare < 182.4, qPrintable(QString::number(chiSquare)));
        QCOMPARE(pickAtRandom(ids(5), 3, chance).size(), std::size_t{3});
        QCOMPARE(pickAtRandom(ids(2), 8, chance).size(), std::size_t{2});
        QVERIFY(pickAtRandom({}, 8, chance).empty());
    }

    void skippedColonyIsReplacedByAnother() {
        const Chance chance = chanceFrom(5);
        records::Round round;
        round.colonyIds = ids(4);
        const records::Round swapped = withoutColony(round, Yard::idOf(1), ids(5), chance);
        QCOMPARE(swapped.colonyIds[1], Yard::idOf(4)); // the only one that was not in it
        QCOMPARE(withoutColony(round, Yard::idOf(1), ids(4), chance).colonyIds.size(), std::size_t{3});
        QCOMPARE(withoutColony(round, "stranger", ids(9), chance).colonyIds, round.colonyIds);
    }

    void lineThatCannotBeIsRefused() {
        Yard yard(3, 3);
        for (const double wrong : {0.0, -1.0, kNaN})
            QVERIFY_EXCEPTION_THROWN((void)yard.read(wrong), std::domain_error);
    }
};

QTEST_GUILESS_MAIN(SeasonRoundTest)
#include "season_round.moc"
