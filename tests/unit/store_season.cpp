// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Events and treatments in a real database on disk.
#include "store_kit.h"

#include "records/colony_state.h"

#include <QTemporaryDir>
#include <QTest>

using namespace halfcup::records;
using namespace halfcup::storetest;
using halfcup::store::Store;
using Trouble = halfcup::store::StoreError::Kind;

namespace {

ColonyEvent eventOf(Store& store, const Colony& colony, EventKind kind, const Date& day) {
    ColonyEvent event;
    event.id = store.newId();
    event.colonyId = colony.id;
    event.yardId = colony.yardId;
    event.kind = kind;
    event.day = day;
    event.recordedAtMs = startMs;
    return event;
}

GivenTreatment entryOf(Store& store, const Place& place, const Date& firstDay) {
    GivenTreatment entry;
    entry.treatment.id = store.newId();
    entry.treatment.yardId = place.yard.id;
    entry.treatment.substance = "formic-acid";
    entry.treatment.product = "as on its \"label\"; 50 %";
    entry.treatment.batch = "B-17";
    entry.treatment.expiry = Date{2028, 2, 29};
    entry.treatment.supplier = "the shop, 1 Main Street";
    entry.treatment.proof = "receipt 12";
    entry.treatment.quantity = "8 strips";
    entry.treatment.firstDay = firstDay;
    entry.treatment.lastDay = plusDays(firstDay, 7);
    entry.treatment.removalDue = plusDays(firstDay, 8);
    entry.treatment.removedOn = plusDays(firstDay, 9);
    entry.treatment.withdrawalDays = 0;
    entry.treatment.prescriber = "the vet";
    entry.treatment.doneBy = "me";
    entry.treatment.verdict = "with_care";
    entry.treatment.note = "windy";
    entry.treatment.recordedAtMs = startMs;
    entry.colonyIds = {place.colony.id};
    return entry;
}

std::vector<RecordId> idsOf(const std::vector<GivenTreatment>& entries) {
    std::vector<RecordId> ids;
    for (const GivenTreatment& entry : entries)
        ids.push_back(entry.treatment.id);
    return ids;
}

} // namespace

class StoreSeasonTest : public QObject {
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
        ColonyEvent event;
        GivenTreatment entry;
        {
            const auto store = open();
            const Place place = addPlace(*store);
            const Colony other = addColony(*store, place.yard.id, "5");
            event = eventOf(*store, place.colony, EventKind::Merged, {2026, 6, 1});
            event.otherColonyId = other.id;
            event.otherYardId = place.yard.id;
            event.frames = 7.5;
            event.words = "over paper";
            store->save(event);
            entry = entryOf(*store, place, {2026, 6, 2});
            store->save(entry);
        }
        const auto store = open();
        QVERIFY(toFields(*store->event(event.id)) == toFields(event));
        const auto back = store->treatment(entry.treatment.id);
        QVERIFY(back);
        QVERIFY(toFields(back->treatment) == toFields(entry.treatment));
        QCOMPARE(back->colonyIds, entry.colonyIds);
        QCOMPARE(store->integrityReport(), std::string("ok"));
        QVERIFY(!store->event("nobody"));
        QVERIFY(!store->treatment("'; DROP TABLE treatment; --"));
    }

    void eventsComeInTheirOrderAndOfBothColonies() {
        const auto store = open();
        const Place place = addPlace(*store);
        const Colony other = addColony(*store, place.yard.id, "5");
        const Place far = addPlace(*store, "Elsewhere");
        ColonyEvent late = eventOf(*store, place.colony, EventKind::SupersOff, {2026, 7, 1});
        ColonyEvent first = eventOf(*store, place.colony, EventKind::SupersOn, {2026, 5, 1});
        ColonyEvent merged = eventOf(*store, other, EventKind::Merged, {2026, 6, 1});
        merged.otherColonyId = place.colony.id;
        ColonyEvent gone = eventOf(*store, place.colony, EventKind::Dead, {2026, 6, 2});
        gone.removed = true;
        for (const ColonyEvent& event :
             {late, first, merged, gone, eventOf(*store, far.colony, EventKind::Dead, {2026, 1, 1})})
            store->save(event);
        std::vector<RecordId> ids;
        for (const ColonyEvent& event : store->eventsOf(place.colony.id))
            ids.push_back(event.id);
        QCOMPARE(ids, (std::vector<RecordId>{first.id, merged.id, late.id}));
        QCOMPARE(store->eventsOfYard(place.yard.id).size(), std::size_t{3});
        QCOMPARE(store->eventsOfYard(far.yard.id).size(), std::size_t{1});
        QVERIFY(store->event(gone.id)->removed); // taken back, not gone
    }

    void wholeYardInOneEntryAndLaterChanges() {
        const auto store = open();
        const Place place = addPlace(*store);
        const Colony fifth = addColony(*store, place.yard.id, "5");
        const Colony sixth = addColony(*store, place.yard.id, "6");
        GivenTreatment entry = entryOf(*store, place, {2026, 8, 1});
        entry.colonyIds = {place.colony.id, fifth.id, sixth.id};
        store->save(entry);
        QCOMPARE(store->treatmentsOf(sixth.id).size(), std::size_t{1});
        entry.colonyIds = {place.colony.id, fifth.id}; // not the sixth after all
        store->save(entry);
        QVERIFY(store->treatmentsOf(sixth.id).empty());
        QCOMPARE(store->treatment(entry.treatment.id)->colonyIds.size(), std::size_t{2});
        entry.colonyIds = {place.colony.id, fifth.id, sixth.id}; // and yet
        store->save(entry);
        QCOMPARE(store->treatmentsOf(sixth.id).size(), std::size_t{1});
        QCOMPARE(sql(m_path, "SELECT count(*) FROM treated"), std::string("3")); // no colony twice
        entry.treatment.removed = true;
        store->save(entry);
        QVERIFY(store->treatmentsOf(fifth.id).empty());
        QVERIFY(store->treatment(entry.treatment.id)); // kept, with its history
        QVERIFY(store->history(Kind::Treatment, entry.treatment.id).size() > 10);
    }

    void newestFirstAndAcrossYards() {
        const auto store = open();
        const Place place = addPlace(*store);
        const Place far = addPlace(*store, "Elsewhere");
        const GivenTreatment spring = entryOf(*store, place, {2026, 4, 1});
        const GivenTreatment autumn = entryOf(*store, place, {2026, 9, 1});
        const GivenTreatment there = entryOf(*store, far, {2026, 6, 1});
        for (const GivenTreatment& entry : {autumn, spring, there})
            store->save(entry);
        QCOMPARE(idsOf(store->treatmentsOf(place.colony.id)),
                 (std::vector{autumn.treatment.id, spring.treatment.id}));
        QCOMPARE(idsOf(store->allTreatments()),
                 (std::vector{autumn.treatment.id, there.treatment.id, spring.treatment.id}));
        Colony moved = far.colony; // its treatment comes with it and stays in the book of its old yard
        moved.yardId = place.yard.id;
        store->save(moved);
        QCOMPARE(store->treatmentsOfYard(place.yard.id).size(), std::size_t{3});
        QCOMPARE(store->treatmentsOfYard(far.yard.id).size(), std::size_t{1});
    }

    void strayRecordsAreRefused() {
        const auto store = open();
        const Place place = addPlace(*store);
        ColonyEvent event = eventOf(*store, place.colony, EventKind::Dead, {2026, 6, 1});
        event.colonyId = "nobody";
        QVERIFY(troubleOf([&] { store->save(event); }));
        GivenTreatment entry = entryOf(*store, place, {2026, 6, 1});
        entry.colonyIds.push_back("nobody");
        QVERIFY(troubleOf([&] { store->save(entry); }));
        QVERIFY(!store->treatment(entry.treatment.id)); // all or nothing
        QCOMPARE(sql(m_path, "SELECT count(*) FROM event"), std::string("0"));
    }

    void allOfAYardAtOnce() {
        const auto store = open();
        const Place place = addPlace(*store);
        store->save(eventOf(*store, place.colony, EventKind::SupersOn, {2026, 5, 1}));
        store->save(entryOf(*store, place, {2026, 8, 1}));
        addSample(*store, place.colony, startMs, SampleState::Finished);
        addPlace(*store, "Elsewhere");
        const auto all = store->yardRecords(place.yard.id);
        QVERIFY(all);
        QCOMPARE(all->yard.id, place.yard.id);
        QCOMPARE(all->colonies.size() * all->events.size() * all->treatments.size() *
                     all->latestWashes.size(),
                 std::size_t{1});
        QVERIFY(!store->yardRecords("nobody"));
    }

    void samplesOfAYardSince() {
        const auto store = open();
        const Place place = addPlace(*store);
        addSample(*store, place.colony, startMs, SampleState::Finished);
        const Sample newer = addSample(*store, place.colony, startMs + 10, SampleState::Finished);
        addSample(*store, place.colony, startMs + 20);
        const auto found = store->samplesOfYard(place.yard.id, startMs + 1);
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(found.front().id, newer.id);
    }

    void theirDaysAlone() {
        const auto store = open();
        Place place = addPlace(*store);
        constexpr std::int64_t dayMs = 86'400'000;
        Sample counted = addSample(*store, place.colony, startMs + dayMs, SampleState::Finished);
        counted.scoopedAtMs = startMs + 2 * dayMs; // the day is that of the scoop, where the keeper was
        counted.utcOffsetMinutes = 13 * 60;
        counted.answer.emplace();
        store->save(counted);
        addSample(*store, place.colony, startMs + 2 * dayMs, SampleState::Finished); // without an answer
        addSample(*store, place.colony, startMs + 3 * dayMs);                        // a draft
        QCOMPARE(store->washDays(startMs),
                 std::vector{localDate({*counted.scoopedAtMs, counted.utcOffsetMinutes})});
        QVERIFY(store->washDays(startMs + 2 * dayMs).empty());
        place.yard.removed = true;
        store->save(place.yard);
        QVERIFY(store->washDays(startMs).empty());
    }

    void boardsAreNoWashes() {
        const auto store = open();
        const Place place = addPlace(*store);
        const Sample wash = addSample(*store, place.colony, startMs, SampleState::Finished);
        Sample board = addSample(*store, place.colony, startMs + 10, SampleState::Finished);
        board.method = "sticky_board";
        board.otherAnswer = OtherAnswer{12, 7.3, 12.2, 18.8, 10, "a line", 0.75, {}, {}, {}};
        store->save(board);
        QCOMPARE(store->latestFinished(place.yard.id).front().id, wash.id);
        QCOMPARE(store->samplesOfYard(place.yard.id, startMs).size(), std::size_t{1});
        QCOMPARE(store->samplesOf(place.colony.id).front().otherAnswer, board.otherAnswer); // but it is there
    }

    void roundsOfAYard() {
        const auto store = open();
        const Place place = addPlace(*store);
        const auto add = [&](std::int64_t startedAtMs, bool removed) {
            Round round;
            round.id = store->newId();
            round.yardId = place.yard.id;
            round.startedAtMs = startedAtMs;
            round.colonyIds = {place.colony.id};
            round.removed = removed;
            store->save(round);
            return round.id;
        };
        const RecordId older = add(startMs, false);
        const RecordId newer = add(startMs + 10, false);
        add(startMs + 20, true);
        const auto rounds = store->roundsOf(place.yard.id);
        QCOMPARE(rounds.size(), std::size_t{2});
        QCOMPARE(rounds.front().id, newer);
        QCOMPARE(rounds.back().id, older);
        QCOMPARE(rounds.front().colonyIds, std::vector{place.colony.id});
        QVERIFY(store->roundsOf("nobody").empty());
    }
};

QTEST_GUILESS_MAIN(StoreSeasonTest)
#include "store_season.moc"
