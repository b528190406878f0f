// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Washes of a table as records: what is made, what is found, and that nothing is made twice.
#include "exchange/derived_id.h"
#include "exchange/keep_import.h"
#include "exchange/samples_csv.h"
#include "records/judgement.h"
#include "store_kit.h"
#include "table_kit.h"

#include <QProcess>
#include <QTemporaryDir>

#include <cmath>

using namespace halfcup;
using namespace halfcup::exchange;
using namespace halfcup::tabletest;
using Fate = PlannedRow::Fate;

namespace {

const char* const source = "From a table: test.csv";

/// A phone: a database of its own.
struct Phone {
    QTemporaryDir folder;
    storetest::Host host;
    store::Store store{folder.filePath("halfcup.db").toStdString(), host.asked()};

    explicit Phone(std::uint64_t chance = 1) { host.chance = chance; }

    OnThisPhone here() {
        return onThisPhone(store, [](const records::Yard& yard, const records::Date&) { return yard.lines; });
    }
    ImportPlan plan(const TextTable& table, const std::string& yard = {}) {
        return planImport(readWashes(table, rulesFor(table, yard)), here(), source);
    }
    ImportRecords take(const TextTable& table, bool withQuestions, const std::string& yard = {}) {
        const OnThisPhone now = here();
        ImportRecords records = recordsOf(plan(table, yard), now, withQuestions);
        judge(records, now);
        keepImport(store, records);
        return records;
    }
    std::vector<records::Sample> samples() {
        std::vector<records::Sample> all;
        store.forEachSample([&](const records::Sample& sample) { all.push_back(sample); });
        return all;
    }
    /// Every record, without when it was written.
    std::string records() {
        std::string all;
        for (const records::Yard& yard : store.allYards()) {
            all += yard.id + yard.name + "\n";
            for (const records::Colony& colony : store.allColonies(yard.id))
                all += colony.id + colony.yardId + colony.label + "\n";
        }
        for (const records::Sample& sample : samples())
            all += sample.id + sample.colonyId + std::to_string(sample.answer->loadQ50) + sample.note + "\n";
        return all;
    }
};

std::string sentenceAt(const ImportPlan& plan, std::size_t line) {
    for (const PlannedRow& row : plan.rows)
        if (row.line == line)
            return english(row.sentence);
    return "no such line";
}

} // namespace

class ExchangeImport : public QObject {
    Q_OBJECT

private slots:
    void washesAsIfMadeHere() {
        Phone phone;
        const auto kept = phone.take(tableNamed("office-de.csv"), false);
        QCOMPARE(kept.yards.size(), std::size_t{1});
        QCOMPARE(kept.colonies.size(), std::size_t{3}); // 4, 7 and 07
        const auto samples = phone.samples();
        QCOMPARE(samples.size(), std::size_t{4});
        for (const records::Sample& sample : samples) {
            QCOMPARE(sample.state, records::SampleState::Finished);
            QCOMPARE(sample.stamp.state, records::PositionState::NotTried);
            QCOMPARE(sample.stamp.source, std::string("table"));
            QVERIFY(sample.note.ends_with(source));
            const auto answer =
                records::answerOf(sample, sample.answer->mites, std::nullopt, records::Lines{});
            QCOMPARE(sample.answer->loadQ05, answer.loadQ05);
            QCOMPARE(sample.answer->loadQ50, answer.loadQ50);
            QCOMPARE(sample.answer->loadQ95, answer.loadQ95);
            QCOMPARE(sample.answer->chanceOver, answer.chanceOver);
            const auto counts = phone.store.countEvents(sample.id);
            QCOMPARE(counts.size(), std::size_t{1});
            QCOMPARE(records::tally(counts, 1).mites(), sample.answer->mites);
        }
        QCOMPARE(phone.store.integrityReport(), std::string("ok"));
    }

    void takenInTwiceAddsNothing() {
        Phone phone;
        phone.take(tableNamed("club.csv"), true, "Club");
        const std::string before = phone.records();
        const ImportPlan again = phone.plan(tableNamed("club.csv"), "Club");
        QCOMPARE(again.count(Fate::New), std::size_t{0});
        QCOMPARE(again.count(Fate::Question), std::size_t{0});
        QCOMPARE(again.count(Fate::Here), std::size_t{6});
        const auto kept = phone.take(tableNamed("club.csv"), true, "Club");
        QVERIFY(kept.yards.empty() && kept.colonies.empty() && kept.samples.empty());
        QCOMPARE(phone.records(), before);
    }

    void twoPhonesAgree() {
        Phone one(1), other(777);
        one.take(tableNamed("office-de.csv"), true);
        other.take(tableNamed("office-de.csv"), true);
        QCOMPARE(one.records(), other.records());
    }

    // RFC 9562, section 5.7: version 7, variant 10, the time in the first 48 bits. Hash by sha256sum.
    void idsAreWhatTheHeaderSays() {
        const std::int64_t at = 1'684'402'800'000;
        const std::string id = derivedId(at, {"yard", "home"});
        QVERIFY(records::isRecordId(id));
        QCOMPARE(records::madeAtUtcMs(id), at);
        QProcess sum;
        sum.start("sh", {"-c", "printf 'yard\\037home' | sha256sum"});
        QVERIFY(sum.waitForFinished(10'000));
        const QString hex = QString::fromLatin1(sum.readAllStandardOutput().left(64));
        const quint64 high = hex.left(16).toULongLong(nullptr, 16),
                      low = hex.mid(16, 16).toULongLong(nullptr, 16);
        QCOMPARE(id, records::makeRecordId(at, high, low));
        QVERIFY(id != derivedId(at, {"yard", "home", ""}));
    }

    void theSameRowTwiceIsAskedAndKeptAsTwo() {
        const TextTable table = readTable("day,colony,mites,bees\n2024-05-01,4,3,300\n2024-05-01,4,3,300\n");
        Phone phone;
        const ImportPlan plan = phone.plan(table, "Home");
        QCOMPARE(plan.rows[0].fate, Fate::New);
        QCOMPARE(plan.rows[1].fate, Fate::Question);
        QCOMPARE(sentenceAt(plan, 3),
                 std::string("the same as a row above: a second jar, or written twice?"));
        phone.take(table, true, "Home");
        QCOMPARE(phone.samples().size(), std::size_t{2});
        phone.take(table, true, "Home");
        QCOMPARE(phone.samples().size(), std::size_t{2});
    }

    void yardsAndColoniesThatAreHereAreFound() {
        Phone phone;
        const auto place = storetest::addPlace(phone.store, "Alder Bend");
        const TextTable table =
            readTable("day,yard,colony,mites\n2024-05-01,  ALDER bend,4,3\n2024-05-01,Mill,4,3\n");
        const auto kept = phone.take(table, false);
        QCOMPARE(kept.yards.size(), std::size_t{1});
        QCOMPARE(kept.yards[0].name, std::string("Mill"));
        QCOMPARE(kept.colonies.size(), std::size_t{1});
        QCOMPARE(phone.store.samplesOf(place.colony.id).size(), std::size_t{1});
        QCOMPARE(phone.store.samplesOf(place.colony.id)[0].yardId, place.yard.id);
    }

    void aRenamedYardIsStillFoundAndARemovedOneComesBack() {
        Phone phone;
        const TextTable table = readTable("day,yard,colony,mites\n2024-05-01,Mill,4,3\n");
        auto kept = phone.take(table, false);
        records::Yard yard = kept.yards[0];
        yard.name = "Old mill";
        phone.store.save(yard);
        QCOMPARE(phone.plan(table).count(Fate::Here), std::size_t{1});
        const TextTable more = readTable("day,yard,colony,mites\n2024-06-01,Mill,4,5\n");
        kept = phone.take(more, false);
        QVERIFY(kept.yards.empty() && kept.colonies.empty());
        QCOMPARE(phone.store.yards().size(), std::size_t{1});
        yard.removed = true;
        phone.store.save(yard);
        kept = phone.take(readTable("day,yard,colony,mites\n2024-07-01,Mill,4,5\n"), false);
        QCOMPARE(kept.yards.size(), std::size_t{1});
        QCOMPARE(phone.store.yards().size(), std::size_t{1});
    }

    void inventedYardsAreNoPlaceForRealWashes() {
        Phone phone;
        auto place = storetest::addPlace(phone.store, "Alder Bend");
        place.yard.demo = true;
        phone.store.save(place.yard);
        const auto kept = phone.take(readTable("day,yard,colony,mites\n2024-05-01,Alder Bend,4,3\n"), false);
        QCOMPARE(kept.yards.size(), std::size_t{1});
        QVERIFY(!phone.store.yard(kept.yards[0].id)->demo);
    }

    void twoOfANameAreNotChosenFrom() {
        Phone phone;
        const auto place = storetest::addPlace(phone.store, "Mill");
        storetest::addColony(phone.store, place.yard.id, "b1");
        storetest::addColony(phone.store, place.yard.id, "B 1");
        const TextTable table = readTable("day,yard,colony,mites\n2024-05-01,Mill,B1,3\n");
        QCOMPARE(sentenceAt(phone.plan(table), 2),
                 std::string("two colonies here are both called \"B1\": rename one first."));
        storetest::addPlace(phone.store, "mill ");
        QCOMPARE(sentenceAt(phone.plan(table), 2),
                 std::string("two yards here are both called \"Mill\": rename one first."));
        QVERIFY(phone.take(table, true).samples.empty());
    }

    void namesThatOnlyDifferInWhatIsNotKeptAreOne() {
        Phone phone;
        const TextTable table = readTable("day,yard,colony,bees,mites\n"
                                          "2026-06-01,Mill,4,300,2\n"
                                          "2026-06-02,Mi\x01\x01ll,4,300,3\n"
                                          "2026-06-03,Mi\xE2\x80\xAEll,4\x02,300,5\n");
        const auto kept = phone.take(table, false);
        QCOMPARE(kept.yards.size(), std::size_t{1});
        QCOMPARE(kept.colonies.size(), std::size_t{1});
        QCOMPARE(kept.samples.size(), std::size_t{3});
        const ImportPlan again = phone.plan(table);
        QCOMPARE(again.count(Fate::New), std::size_t{0});
        QCOMPARE(again.count(Fate::Refused), std::size_t{0});
    }

    void aWashMadeHereIsNotTakenInAgain() {
        Phone phone;
        const auto place = storetest::addPlace(phone.store, "Mill");
        records::Sample made = storetest::addSample(phone.store, place.colony,
                                                    records::parseRfc3339("2024-05-01T09:00:00+02:00")->utcMs,
                                                    records::SampleState::Finished);
        made.scoop.beesMean = 300;
        made.scoop.beesCv = 0.1;
        made.answer = records::answerOf(made, 3, std::nullopt, records::Lines{});
        phone.store.save(made);
        const ImportPlan plan =
            phone.plan(readTable("day,yard,colony,mites\n2024-05-01,Mill,4,3\n2024-05-01,Mill,4,4\n"));
        QCOMPARE(plan.rows[0].fate, Fate::Question);
        QCOMPARE(plan.rows[1].fate, Fate::New);
    }

    void nothingIsMadeForRowsThatAreLeftOut() {
        Phone phone;
        const TextTable table =
            readTable("day,yard,colony,mites,bees\n2024-05-01,Mill,4,400,300\n2024-05-01,Ford,5,x,300\n");
        const auto kept = phone.take(table, false);
        QVERIFY(kept.yards.empty() && kept.samples.empty());
        QVERIFY(phone.store.allYards().empty());
        QCOMPARE(phone.take(table, true).yards.size(), std::size_t{1});
    }

    // What this app writes of its samples, taken in on an empty phone: the same washes with the same loads.
    void anOwnTableComesBack() {
        Phone from, to;
        const auto place = storetest::addPlace(from.store, "=Mill");
        const std::int64_t day = 86'400'000;
        int number = 0;
        for (const char* method : {"alcohol_wash", "soapy_wash", "sugar_roll"})
            for (const std::int64_t mites : {0, 1, 9, 40}) {
                records::Sample sample =
                    storetest::addSample(from.store, place.colony, 1'700'000'000'000 + ++number * day,
                                         records::SampleState::Finished);
                sample.method = method;
                sample.utcOffsetMinutes = 120;
                sample.scoopedAtMs = sample.startedAtMs + 61'250;
                sample.finishedAtMs = sample.startedAtMs + 600'000;
                sample.scoop.beesMean = 302.1736 + number;
                sample.scoop.beesCv = 0.1204;
                sample.note = number % 2 ? "-5 frames" : "plain";
                sample.answer = records::answerOf(
                    sample, mites, number % 3 ? std::optional<std::int64_t>() : 2, records::Lines{});
                from.store.save(sample);
            }
        std::string text;
        CsvWriter csv([&](std::string_view bytes) { text += bytes; });
        writeSampleHeader(csv);
        from.store.forEachSample([&](const records::Sample& sample) {
            writeSampleRow(csv, {sample, place.colony.label, place.yard.name, {}}, PositionDetail::Blurred);
        });
        const TextTable table = readTable(text);
        to.take(table, false);
        const auto theirs = from.samples(), ours = to.samples();
        QCOMPARE(ours.size(), std::size_t{12});
        for (std::size_t i = 0; i < ours.size(); ++i) {
            QCOMPARE(ours[i].id, theirs[i].id);
            QCOMPARE(ours[i].method, theirs[i].method);
            QCOMPARE(ours[i].scoopedAtMs.value(), theirs[i].scoopedAtMs.value());
            QCOMPARE(ours[i].utcOffsetMinutes, theirs[i].utcOffsetMinutes);
            QCOMPARE(ours[i].answer->mites, theirs[i].answer->mites);
            QVERIFY(ours[i].answer->mitesSecondRinse == theirs[i].answer->mitesSecondRinse);
            // Bees go out with six digits.
            QVERIFY(std::abs(ours[i].scoop.beesMean / theirs[i].scoop.beesMean - 1) < 5e-6);
            for (const auto load :
                 {&records::Answer::loadQ05, &records::Answer::loadQ50, &records::Answer::loadQ95})
                QVERIFY(std::abs((*ours[i].answer).*load / ((*theirs[i].answer).*load) - 1) < 1e-5);
            QCOMPARE(ours[i].note, theirs[i].note + "\n" + source);
        }
        QCOMPARE(to.store.yards().at(0).name, std::string("=Mill"));
        // Back on the phone they came from, they are all here.
        QCOMPARE(from.plan(table).count(Fate::Here), std::size_t{12});
    }

    // A large office's table; the times are said, not judged.
    void manyRows() {
        std::string text = "day,yard,colony,mites,bees\n";
        for (int i = 0; i < 5'000; ++i)
            text += records::toIso(records::plusDays({2015, 4, 1}, i % 3000)) + ",Yard " +
                    std::to_string(i % 7) + "," + std::to_string(i % 50) + "," + std::to_string(i % 31) +
                    "," + std::to_string(280 + i % 50) + "\n";
        Phone phone;
        QElapsedTimer timer;
        timer.start();
        const TextTable table = readTable(text);
        const auto read = timer.restart();
        const OnThisPhone here = phone.here();
        const ImportPlan plan = planImport(readWashes(table, rulesFor(table)), here, source);
        const auto planned = timer.restart();
        ImportRecords records = recordsOf(plan, here, true);
        judge(records, here);
        const auto judged = timer.restart();
        keepImport(phone.store, records);
        qInfo("5,000 rows: read %lld ms, planned %lld ms, judged %lld ms, kept %lld ms", read, planned,
              judged, timer.elapsed());
        QCOMPARE(phone.store.sampleCount(), 5'000);
        QCOMPARE(phone.plan(table).count(Fate::Here), std::size_t{5'000});
    }
};

QTEST_GUILESS_MAIN(ExchangeImport)
#include "exchange_import.moc"
