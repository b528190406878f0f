// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What goes into a real database on disk comes out again, with its history.
#include "store_kit.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace halfcup::records;
using namespace halfcup::storetest;
using halfcup::store::PastValue;
using halfcup::store::Store;
using Trouble = halfcup::store::StoreError::Kind;

namespace {

/// Every field away from its default.
Sample fullSample(Store& store, const Colony& colony) {
    Sample s;
    s.id = store.newId();
    s.colonyId = colony.id;
    s.yardId = colony.yardId;
    s.state = SampleState::Finished;
    s.step = Step::Answer;
    s.startedAtMs = startMs;
    s.utcOffsetMinutes = -210;
    s.queen = Queen::NotSeen;
    s.scoop = {100.5, Packing::Settled, 312, 0.07, Scoop::BeesSource::Typed};
    s.scoopedAtMs = startMs + 1;
    s.stamp = {PositionState::Stamped, {-41.5, 174.25, 5.5}, 8, 900, true, "nmea tcp"};
    s.shake.plannedS = 75;
    s.shake.shakenBeforeMs = 61'250;
    s.shake.interrupted = true;
    s.shake.ended = true;
    s.settleStartedMs = startMs + 2;
    s.finishedAtMs = startMs + 3;
    s.answer = Answer{9, 2, 1.4, 3.2, 7.8, {2.5, "own", 1.7}, 0.55, 0.9, 0.93, 0.02, 6.5};
    s.note = "tall hive, \"calm\"; the neighbour's frame \xF0\x9F\x90\x9D";
    s.demo = true;
    return s;
}

int tallyOf(Store& store, const RecordId& id, int rinse) {
    return static_cast<int>(tally(store.countEvents(id), rinse).mites());
}

CountEvent act(CountEvent::Change change, int rinse = 1, std::int64_t typed = 0) {
    CountEvent event;
    event.change = change;
    event.rinse = rinse;
    event.typed = typed;
    event.atUtcMs = startMs;
    event.number = 77; // the store numbers them, whatever is asked
    return event;
}

} // namespace

class StoreRecordsTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    Host m_host;

    std::unique_ptr<Store> open() { return std::make_unique<Store>(m_path.toStdString(), m_host.asked()); }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_path = m_folder->filePath("halfcup.db");
        m_host = {};
    }

    void everyFieldComesBackAfterReopening() {
        Yard yard;
        Colony colony;
        Sample sample;
        {
            const auto store = open();
            yard = addPlace(*store).yard;
            yard.position = Position{52.25, -7.5, 4.5};
            yard.reachM = 90;
            yard.registrationNumber = "IE-0042";
            yard.lines = {2.0, "own", 1.5};
            yard.demo = true;
            store->save(yard);
            colony = addColony(*store, yard.id, "nuc by the gate");
            colony.note = "quiet";
            store->save(colony);
            sample = fullSample(*store, colony);
            store->save(sample);
        }
        const auto store = open();
        // All fields at once: what the records layer makes of them is tested there.
        QVERIFY(toFields(*store->yard(yard.id)) == toFields(yard));
        QVERIFY(toFields(*store->colony(colony.id)) == toFields(colony));
        QVERIFY(toFields(*store->sample(sample.id)) == toFields(sample));
        QCOMPARE(store->sample(sample.id)->answer->mites, std::int64_t{9});
        QCOMPARE(store->sample(sample.id)->note, sample.note);
        QVERIFY(!store->yard("nobody"));
        QVERIFY(!store->sample("'; DROP TABLE sample; --"));
        QCOMPARE(store->integrityReport(), std::string("ok"));
    }

    void unknownStaysUnknown() { // never 0 for "not known"
        const auto store = open();
        const auto place = addPlace(*store);
        const auto sample = addSample(*store, place.colony, startMs);
        QVERIFY(!store->yard(place.yard.id)->position);
        QVERIFY(!store->sample(sample.id)->answer);
        QVERIFY(!store->sample(sample.id)->scoopedAtMs);
        QCOMPARE(sql(m_path, "SELECT mites IS NULL AND latitude_deg IS NULL FROM sample"), std::string("1"));
    }

    void historyGrowsByChangedFieldsOnly() {
        const auto store = open();
        auto place = addPlace(*store);
        const auto first = store->history(Kind::Yard, place.yard.id);
        QVERIFY(!first.empty());
        store->save(place.yard); // nothing changed: nothing written
        QCOMPARE(store->history(Kind::Yard, place.yard.id).size(), first.size());

        m_host.nowMs += 5;
        place.yard.name = "By the mill";
        place.yard.reachM = 80;
        store->save(place.yard);
        const auto second = store->history(Kind::Yard, place.yard.id);
        QCOMPARE(second.size(), first.size() + 2);
        const PastValue& name = second[first.size()];
        const PastValue& reach = second[first.size() + 1];
        QCOMPARE(name.field, std::string("name"));
        QVERIFY(name.value == Value{std::string("By the mill")});
        QCOMPARE(reach.field, std::string("reach_m"));
        QVERIFY(name.stamp == reach.stamp); // one save, one stamp
        QVERIFY(name.stamp > second.front().stamp);
        const auto old = std::find_if(second.begin(), second.end(),
                                      [](const PastValue& past) { return past.field == "name"; });
        QVERIFY(old->value == Value{std::string("By the ford")}); // the old name is not lost

        m_host.nowMs -= 3'600'000; // the phone's clock is set back: stamps still grow, reopened or not
        place.yard.name = "By the weir";
        open()->save(place.yard);
        const auto third = store->history(Kind::Yard, place.yard.id);
        QCOMPARE(third.size(), second.size() + 1);
        QVERIFY(third.back().value == Value{std::string("By the weir")});
        QCOMPARE(third.back().stamp.device, second.back().stamp.device);
    }

    void aFieldTakenAwayIsInTheHistoryToo() {
        const auto store = open();
        auto place = addPlace(*store);
        place.yard.position = Position{1, 2, std::nullopt};
        store->save(place.yard);
        place.yard.position.reset();
        store->save(place.yard);
        QVERIFY(!store->yard(place.yard.id)->position);
        const auto past = store->history(Kind::Yard, place.yard.id);
        QCOMPARE(past.back().field, std::string("longitude_deg"));
        QVERIFY(past.back().value == Value{});
    }

    void countsAreNumberedActsAndUndoIsOne() {
        using Change = CountEvent::Change;
        const auto store = open();
        const auto place = addPlace(*store);
        const auto sample = addSample(*store, place.colony, startMs);
        const auto other = addSample(*store, place.colony, startMs + 1);
        QVERIFY(store->countEvents(sample.id).empty());
        for (int i = 0; i < 3; ++i)
            store->addCount(sample.id, act(Change::Tap));
        store->addCount(sample.id, act(Change::Undo));
        store->addCount(other.id, act(Change::Tap));
        QCOMPARE(tallyOf(*store, sample.id, 1), 2);
        store->addCount(sample.id, act(Change::Typed, 1, 17));
        store->addCount(sample.id, act(Change::Tap, 2));
        QCOMPARE(tallyOf(*store, sample.id, 1), 17);
        QCOMPARE(tallyOf(*store, sample.id, 2), 1);
        store->addCount(sample.id, act(Change::Undo)); // takes the typed figure back
        QCOMPARE(tallyOf(*store, sample.id, 1), 2);

        const auto events = open()->countEvents(sample.id);
        QCOMPARE(events.size(), std::size_t{7}); // nothing is ever taken away
        for (std::size_t i = 0; i < events.size(); ++i)
            QCOMPARE(events[i].number, static_cast<std::int64_t>(i + 1));
        QVERIFY(events[4].change == Change::Typed && events[4].typed == 17);
        QCOMPARE(sql(m_path, "SELECT group_concat(change) FROM (SELECT change FROM count_event WHERE "
                             "sample_id = '" +
                                 sample.id + "' ORDER BY number)"),
                 std::string("tap,tap,tap,undo,typed,tap,undo"));
        QCOMPARE(tallyOf(*store, other.id, 1), 1);
    }

    void listsAndTheirOrder() {
        const auto store = open();
        const auto ford = addPlace(*store, "Ford");
        const auto alder = addPlace(*store, "Alder");
        auto gone = addPlace(*store, "Gone").yard;
        gone.removed = true;
        store->save(gone);
        QCOMPARE(store->yards().size(), std::size_t{2});
        QCOMPARE(store->yards().front().name, std::string("Alder"));
        QCOMPARE(store->allYards().size(), std::size_t{3});
        QVERIFY(store->yard(gone.id)->removed);

        m_host.nowMs += 1; // ids sort by time
        auto five = addColony(*store, ford.yard.id, "5");
        QCOMPARE(store->colonies(ford.yard.id).back().label, std::string("5"));
        five.removed = true;
        store->save(five);
        QCOMPARE(store->colonies(ford.yard.id).size(), std::size_t{1});
        QCOMPARE(store->allColonies(ford.yard.id).size(), std::size_t{2});
        QCOMPARE(store->colonies(alder.yard.id).size(), std::size_t{1});
    }

    void samplesDraftsAndTheNewestFinished() {
        const auto store = open();
        const auto place = addPlace(*store);
        const auto other = addColony(*store, place.yard.id, "5");
        using enum SampleState;
        const auto old = addSample(*store, place.colony, startMs, Finished);
        const auto newest = addSample(*store, place.colony, startMs + 10, Finished);
        auto removed = addSample(*store, place.colony, startMs + 20, Finished);
        removed.removed = true;
        store->save(removed);
        const auto abandoned = addSample(*store, place.colony, startMs + 30, Abandoned);
        const auto draft = addSample(*store, place.colony, startMs + 40);
        const auto newerDraft = addSample(*store, other, startMs + 50);

        auto removedDraft = addSample(*store, other, startMs + 60);
        removedDraft.removed = true;
        store->save(removedDraft);

        const auto latest = store->latestFinished(place.yard.id);
        QCOMPARE(latest.size(), std::size_t{1}); // the other colony has a draft alone
        QCOMPARE(latest.front().id, newest.id);
        const auto drafts = store->drafts();
        QCOMPARE(drafts.size(), std::size_t{2});
        QCOMPARE(drafts.front().id, newerDraft.id);
        QCOMPARE(drafts.back().id, draft.id);
        const auto all = store->samplesOf(place.colony.id);
        QCOMPARE(all.size(), std::size_t{4});
        QCOMPARE(all.front().id, draft.id);
        QCOMPARE(all.back().id, old.id);
        QCOMPARE(store->sampleCount(), 3);
        std::vector<RecordId> seen;
        store->forEachSample([&](const Sample& sample) { seen.push_back(sample.id); });
        QVERIFY((seen == std::vector<RecordId>{old.id, newest.id, abandoned.id}));
        QVERIFY(store->sample(removed.id)->removed);
    }

    void finishedWashesAreCountedAfterEachWrite() {
        const auto store = open();
        const Place place = addPlace(*store);
        QCOMPARE(store->finishedWashes(), std::int64_t{0});
        addSample(*store, place.colony, startMs); // a draft
        addSample(*store, place.colony, startMs + 1, SampleState::Abandoned);
        auto first = addSample(*store, place.colony, startMs + 2, SampleState::Finished);
        addSample(*store, place.colony, startMs + 3, SampleState::Finished);
        QCOMPARE(store->finishedWashes(), std::int64_t{2});
        first.removed = true;
        store->save(first);
        QCOMPARE(store->finishedWashes(), std::int64_t{1});
        sql(m_path, "UPDATE sample SET removed = 0 WHERE state = 'finished'"); // by another program
        QCOMPARE(store->finishedWashes(), std::int64_t{2});
        QVERIFY(troubleOf([&] {
                    store->inOneTransaction([&] {
                        addSample(*store, place.colony, startMs + 4, SampleState::Finished);
                        throw halfcup::store::StoreError(Trouble::Failed, "and not after all");
                    });
                }) == Trouble::Failed);
        QCOMPARE(store->finishedWashes(), std::int64_t{2});
    }

    void writtenDiffersAfterEachWrite() {
        const auto store = open();
        const Place place = addPlace(*store);
        const auto first = store->written();
        (void)store->samplesOf(place.colony.id);
        QVERIFY(store->written() == first);
        addSample(*store, place.colony, startMs);
        const auto second = store->written();
        QVERIFY(second != first);
        sql(m_path, "UPDATE sample SET note = 'x'"); // by another program
        QVERIFY(store->written() != second);
    }

    void latestFollowsAColonyThatMoved() {
        const auto store = open();
        auto from = addPlace(*store, "Ford");
        const auto to = addPlace(*store, "Alder");
        const auto sample = addSample(*store, from.colony, startMs, SampleState::Finished);
        from.colony.yardId = to.yard.id;
        store->save(from.colony);
        QVERIFY(store->latestFinished(from.yard.id).empty());
        QCOMPARE(store->latestFinished(to.yard.id).front().id, sample.id);
        QCOMPARE(store->sample(sample.id)->yardId, from.yard.id); // where it was taken
    }

    void settings() {
        const auto store = open();
        QVERIFY(store->setting("scoop") == Value{});
        store->setSetting("scoop", 118.294);
        store->setSetting("sound", std::int64_t{0});
        store->setSetting("source", std::string("nmea:tcp"));
        store->setSetting("source", std::string("default"));
        const auto again = open();
        QVERIFY(again->setting("scoop") == Value{118.294});
        QVERIFY(again->setting("sound") == Value{std::int64_t{0}});
        QVERIFY(again->setting("source") == Value{std::string("default")});
        again->setSetting("source", {});
        QVERIFY(store->setting("source") == Value{});
    }

    void manyRecordsAreAllOrNothing() {
        const auto store = open();
        const auto place = addPlace(*store);
        const auto half = [&] {
            store->inOneTransaction([&] {
                addColony(*store, place.yard.id, "5");
                addColony(*store, place.yard.id, "6");
                throw std::runtime_error("the file ends in the middle");
            });
        };
        QVERIFY_EXCEPTION_THROWN(half(), std::runtime_error);
        QCOMPARE(store->colonies(place.yard.id).size(), std::size_t{1});
        addColony(*store, place.yard.id, "7"); // and it goes on
        QCOMPARE(store->colonies(place.yard.id).size(), std::size_t{2});
    }

    void aRecordThatPointsNowhereIsRefused() {
        const auto store = open();
        QVERIFY(troubleOf([&] { addColony(*store, "no such yard", "4"); }) == Trouble::Failed);
        QVERIFY(troubleOf([&] { store->addCount("no such sample", act(CountEvent::Change::Tap)); }) ==
                Trouble::Failed);
        QCOMPARE(sql(m_path, "SELECT count(*) FROM revision"), std::string("0")); // its history neither
        const auto place = addPlace(*store);                                      // the statements still work
        QCOMPARE(store->colonies(place.yard.id).size(), std::size_t{1});
    }

    void integrityReportNamesStrays() {
        {
            const auto store = open();
            addPlace(*store);
        }
        sql(m_path, "PRAGMA foreign_keys = OFF; DELETE FROM yard");
        const std::string report = open()->integrityReport();
        QVERIFY2(report.find("colony points to a missing row of yard") != std::string::npos, report.c_str());
    }
};

QTEST_GUILESS_MAIN(StoreRecordsTest)
#include "store_records.moc"
