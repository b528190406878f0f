// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// One yard or colony that was made on two phones: joined it shows the records of both, nothing is rewritten,
// and separating puts all back, in whatever order the phones hear of it. What may be seen from outside is
// read with the SQLite library itself.
#include "store/joining.h"
#include "store/merge.h"
#include "store/not_same.h"
#include "store/outgoing.h"
#include "store_kit.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace halfcup;
using namespace halfcup::records;
using namespace halfcup::storetest;
using store::Joining;
using store::Store;

namespace {

void take(Store& into, Store& from) {
    store::Merge merge(into);
    store::Outgoing outgoing(from);
    merge.from({"parcel", outgoing.seen(), false});
    outgoing.forEachPart([&](const RecordPart& part) { merge.take(part); });
    merge.finish();
    merge.keep();
}

/// A part as another program might write it.
void takeOne(Store& into, Kind kind, const RecordId& id, const std::string& field, const Value& value,
             const std::string& stamp) {
    store::Merge merge(into);
    merge.from({"by hand", {}, false});
    merge.take({id, std::string(nameOf(kind)), {{field, stamp, value}}, {}});
    merge.finish();
    merge.keep();
}

GivenTreatment treat(Store& store, const RecordId& yardId, std::vector<RecordId> colonyIds) {
    GivenTreatment given;
    given.treatment.id = store.newId();
    given.treatment.yardId = yardId;
    given.treatment.substance = "formic-acid";
    given.treatment.firstDay = given.treatment.lastDay = {2026, 6, 1};
    given.colonyIds = std::move(colonyIds);
    store.save(given);
    return given;
}

ColonyEvent tell(Store& store, const RecordId& colonyId) {
    ColonyEvent event;
    event.id = store.newId();
    event.colonyId = colonyId;
    event.kind = EventKind::Swarmed;
    event.day = {2026, 5, 30};
    store.save(event);
    return event;
}

std::vector<RecordId> idsOf(const auto& records) {
    std::vector<RecordId> ids;
    for (const auto& each : records)
        ids.push_back(each.id);
    std::ranges::sort(ids);
    return ids;
}

using Ids = std::vector<RecordId>;

Ids sorted(Ids ids) {
    std::ranges::sort(ids);
    return ids;
}

} // namespace

class StoreJoiningTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    Host m_hostA, m_hostB, m_hostC;
    std::unique_ptr<Store> m_a, m_b, m_c;
    // One yard, made by each of them, first by A, then by B, then by C.
    Place m_atA, m_atB, m_atC;

    QString path(const char* name) const { return m_folder->filePath(name); }
    int revisions(const char* name) { return std::stoi(sql(path(name), "SELECT count(*) FROM revision")); }
    /// All that follows from the revisions, and they themselves; what is each phone's own left out.
    std::string dump(const char* name) {
        const auto ask = [&](const std::string& text) {
            const std::string answer = sql(path(name), text);
            if (answer.empty() || answer.starts_with("trouble"))
                QTest::qFail(answer.c_str(), __FILE__, __LINE__); // else two troubles would be equal
            return answer + "\n--\n";
        };
        std::string all;
        for (const std::string table :
             {"yard", "colony", "sample", "event", "treatment", "treated", "round", "joined", "waiting"}) {
            // Every column by name, so that a new one is compared too.
            std::string columns = ask("SELECT group_concat('quote(' || name || ')', '||'',''||') FROM"
                                      " pragma_table_info('" +
                                      table + "')");
            columns.resize(columns.find('\n'));
            all += ask("SELECT coalesce(group_concat(line, char(10)), 'none') FROM (SELECT " + columns +
                       " AS line FROM " + table + " ORDER BY 1)");
        }
        return all + ask("SELECT group_concat(record_id || field || stamp || quote(value)) FROM"
                         " (SELECT * FROM revision ORDER BY record_id, field, stamp)");
    }
    void exchangeAll() {
        for (int round = 0; round < 2; ++round)
            for (Store* into : {m_a.get(), m_b.get(), m_c.get()})
                for (Store* from : {m_a.get(), m_b.get(), m_c.get()})
                    if (into != from)
                        take(*into, *from);
    }
    void later() {
        for (Host* host : {&m_hostA, &m_hostB, &m_hostC})
            host->nowMs += 1000;
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_hostA = {};
        m_hostB = {startMs + 60'000, 999};
        m_hostC = {startMs + 120'000, 5555};
        m_a = std::make_unique<Store>(path("a.db").toStdString(), m_hostA.asked());
        m_b = std::make_unique<Store>(path("b.db").toStdString(), m_hostB.asked());
        m_c = std::make_unique<Store>(path("c.db").toStdString(), m_hostC.asked());
        m_atA = addPlace(*m_a, "By the ford");
        m_atB = addPlace(*m_b, "Ford");
        m_atC = addPlace(*m_c, "The ford");
        m_hostA.nowMs = m_hostB.nowMs = m_hostC.nowMs = startMs + 200'000;
        QVERIFY(m_atA.yard.id < m_atB.yard.id && m_atB.yard.id < m_atC.yard.id);
    }

    void theOneMadeFirstShowsTheRecordsOfBoth() {
        const Sample one = addSample(*m_a, m_atA.colony, startMs + 1, SampleState::Finished);
        const Sample other = addSample(*m_b, m_atB.colony, startMs + 2, SampleState::Finished);
        const ColonyEvent swarm = tell(*m_b, m_atB.colony.id);
        const GivenTreatment given = treat(*m_b, m_atB.yard.id, {m_atB.colony.id});
        take(*m_a, *m_b);
        QCOMPARE(m_a->yards().size(), std::size_t{2});

        const int before = revisions("a.db");
        Joining joining(*m_a);
        QVERIFY(joining.join(Kind::Yard, m_atB.yard.id, m_atA.yard.id)); // whichever is named first
        QCOMPARE(revisions("a.db"), before + 1);
        QVERIFY(joining.join(Kind::Colony, m_atA.colony.id, m_atB.colony.id));
        QCOMPARE(revisions("a.db"), before + 2); // and nothing of the samples was written again

        QCOMPARE(idsOf(m_a->yards()), Ids{m_atA.yard.id});
        QCOMPARE(idsOf(m_a->colonies(m_atA.yard.id)), Ids{m_atA.colony.id});
        QCOMPARE(idsOf(m_a->samplesOf(m_atA.colony.id)), sorted({one.id, other.id}));
        QCOMPARE(idsOf(m_a->eventsOf(m_atA.colony.id)), Ids{swarm.id});
        QCOMPARE(m_a->treatmentsOf(m_atA.colony.id).size(), std::size_t{1});
        QCOMPARE(m_a->treatment(given.treatment.id)->treatment.yardId, m_atA.yard.id);
        QCOMPARE(m_a->sample(other.id)->yardId, m_atA.yard.id);
        QCOMPARE(m_a->samplesOfYard(m_atA.yard.id, 0).size(), std::size_t{2});
        QCOMPARE(idsOf(m_a->latestFinished(m_atA.yard.id)), Ids{other.id});
        QCOMPARE(joining.standsFor(m_atB.yard.id), m_atA.yard.id);
        QCOMPARE(joining.standsFor(m_atA.yard.id), m_atA.yard.id);
        const auto all = joining.all();
        QCOMPARE(all.size(), std::size_t{2});
        const auto yard = std::ranges::find(all, Kind::Yard, &Joining::Joined::kind);
        QCOMPARE(yard->name, std::string("Ford"));
        QCOMPARE(yard->intoName, std::string("By the ford"));
        QCOMPARE(m_a->integrityReport(), std::string("ok"));
    }

    void whatMakesTheListsOfAYardNamesNoneTwice() {
        take(*m_a, *m_b);
        Joining joining(*m_a);
        joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id);
        joining.join(Kind::Colony, m_atA.colony.id, m_atB.colony.id);
        // Also asked for by the name that a page still had in its hand.
        for (const RecordId& id : {m_atA.yard.id, m_atB.yard.id}) {
            const auto kept = m_a->yardRecords(id);
            QVERIFY(kept);
            QCOMPARE(kept->yard.id, m_atA.yard.id);
            QCOMPARE(idsOf(kept->colonies), Ids{m_atA.colony.id});
        }
        QVERIFY(m_a->colony(m_atB.colony.id)); // still found by its id
        QCOMPARE(m_a->allColonies(m_atA.yard.id).size(), std::size_t{2});
    }

    void separatingPutsAllBack() {
        addSample(*m_a, m_atA.colony, startMs + 1, SampleState::Finished);
        addSample(*m_b, m_atB.colony, startMs + 2, SampleState::Finished);
        tell(*m_b, m_atB.colony.id);
        treat(*m_b, m_atB.yard.id, {m_atB.colony.id});
        take(*m_a, *m_b);
        const auto rows = [&] {
            return sql(path("a.db"), "SELECT (SELECT group_concat(id || colony_id || yard_id) FROM (SELECT *"
                                     " FROM sample ORDER BY id)) || (SELECT group_concat(id || yard_id) FROM"
                                     " (SELECT * FROM colony ORDER BY id)) || (SELECT group_concat(colony_id)"
                                     " FROM event) || (SELECT group_concat(yard_id) FROM treatment) ||"
                                     " (SELECT group_concat(colony_id) FROM treated)");
        };
        const std::string before = rows();
        const int written = revisions("a.db");
        Joining joining(*m_a);
        joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id);
        joining.join(Kind::Colony, m_atA.colony.id, m_atB.colony.id);
        QVERIFY(rows() != before);
        QVERIFY(joining.separate(Kind::Yard, m_atB.yard.id));
        QVERIFY(joining.separate(Kind::Colony, m_atA.colony.id)); // either of the two may be named
        QCOMPARE(rows(), before);
        QCOMPARE(revisions("a.db"), written + 4); // two joins, two ends
        QVERIFY(joining.all().empty());
        QVERIFY(!joining.separate(Kind::Yard, m_atB.yard.id));
        QCOMPARE(m_a->yards().size(), std::size_t{2});
    }

    void whatCannotBeJoinedIsNot() {
        take(*m_a, *m_b);
        Joining joining(*m_a);
        const int before = revisions("a.db");
        QVERIFY(!joining.join(Kind::Yard, m_atA.yard.id, m_atA.yard.id));
        QVERIFY(!joining.join(Kind::Yard, m_atA.yard.id, m_atC.yard.id)); // not known here
        QVERIFY(!joining.join(Kind::Yard, m_atA.yard.id, m_atB.colony.id));
        QVERIFY(!joining.join(Kind::Sample, m_atA.yard.id, m_atB.yard.id));
        QVERIFY(joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id));
        QVERIFY(!joining.join(Kind::Yard, m_atB.yard.id, m_atA.yard.id)); // joined already
        QCOMPARE(revisions("a.db"), before + 1);
    }

    void aSampleOfAPhoneThatDidNotKnowShowsUnderTheRightColony() {
        take(*m_a, *m_b);
        Joining(*m_a).join(Kind::Yard, m_atA.yard.id, m_atB.yard.id);
        Joining(*m_a).join(Kind::Colony, m_atA.colony.id, m_atB.colony.id);
        const Sample late = addSample(*m_b, m_atB.colony, startMs + 9, SampleState::Finished);
        take(*m_a, *m_b);
        QCOMPARE(idsOf(m_a->samplesOf(m_atA.colony.id)), Ids{late.id});
        QCOMPARE(m_a->sample(late.id)->yardId, m_atA.yard.id);
        // And written by a page that still calls the colony by its other name.
        const Sample here = addSample(*m_a, m_atB.colony, startMs + 10, SampleState::Finished);
        QCOMPARE(idsOf(m_a->samplesOf(m_atA.colony.id)), sorted({late.id, here.id}));
        Joining(*m_a).separate(Kind::Colony, m_atB.colony.id);
        QCOMPARE(idsOf(m_a->samplesOf(m_atB.colony.id)), sorted({late.id, here.id}));
    }

    void threeAreOneInWhateverOrder_data() {
        QTest::addColumn<QList<int>>("order");
        for (const QList<int>& order :
             {QList<int>{0, 1, 1, 2}, {1, 2, 0, 1}, {0, 2, 1, 2}, {2, 1, 2, 0}, {1, 0, 2, 0}, {0, 2, 0, 1}})
            QTest::addRow("%d=%d %d=%d", order[0], order[1], order[2], order[3]) << order;
    }

    void threeAreOneInWhateverOrder() {
        QFETCH(const QList<int>, order);
        const Place* const places[] = {&m_atA, &m_atB, &m_atC};
        const Sample ofB = addSample(*m_b, m_atB.colony, startMs + 1, SampleState::Finished);
        const Sample ofC = addSample(*m_c, m_atC.colony, startMs + 2, SampleState::Finished);
        exchangeAll();
        Joining joining(*m_a);
        for (int i = 0; i < 4; i += 2) {
            QVERIFY(joining.join(Kind::Yard, places[order[i]]->yard.id, places[order[i + 1]]->yard.id));
            QVERIFY(joining.join(Kind::Colony, places[order[i]]->colony.id, places[order[i + 1]]->colony.id));
        }
        QCOMPARE(idsOf(m_a->yards()), Ids{m_atA.yard.id});
        QCOMPARE(idsOf(m_a->colonies(m_atA.yard.id)), Ids{m_atA.colony.id});
        QCOMPARE(idsOf(m_a->samplesOf(m_atA.colony.id)), sorted({ofB.id, ofC.id}));
        exchangeAll();
        QCOMPARE(dump("b.db"), dump("a.db"));
        QCOMPARE(dump("c.db"), dump("a.db"));
        // The one in the middle, whoever it is, goes back; each sample is still with a colony of its own.
        QVERIFY(Joining(*m_b).separate(Kind::Colony, m_atB.colony.id));
        QCOMPARE(idsOf(m_b->samplesOf(m_atB.colony.id)), Ids{ofB.id});
        exchangeAll();
        QCOMPARE(dump("b.db"), dump("a.db"));
        QCOMPARE(dump("c.db"), dump("a.db"));
    }

    void phonesThatJoinDifferentPairsAgree() {
        exchangeAll();
        later();
        QVERIFY(Joining(*m_b).join(Kind::Yard, m_atB.yard.id, m_atC.yard.id));
        later();
        QVERIFY(Joining(*m_c).join(Kind::Yard, m_atA.yard.id, m_atB.yard.id));
        exchangeAll();
        QCOMPARE(idsOf(m_a->yards()), Ids{m_atA.yard.id});
        QCOMPARE(dump("b.db"), dump("a.db"));
        QCOMPARE(dump("c.db"), dump("a.db"));
    }

    void ofTwoJoinsOfOneYardTheLaterCountsOnAllPhones() {
        // A yard names one other: B says it is A's, C says it is another one's. The earlier stays in the
        // history, and the two are asked about again.
        exchangeAll();
        later();
        QVERIFY(Joining(*m_b).join(Kind::Yard, m_atB.yard.id, m_atC.yard.id)); // C is the same as B
        later();
        QVERIFY(Joining(*m_c).join(Kind::Yard, m_atA.yard.id, m_atC.yard.id)); // C is the same as A
        exchangeAll();
        for (Store* store : {m_a.get(), m_b.get(), m_c.get()})
            QCOMPARE(idsOf(store->yards()), sorted({m_atA.yard.id, m_atB.yard.id}));
        QCOMPARE(dump("b.db"), dump("a.db"));
        QVERIFY(
            std::ranges::any_of(m_a->history(Kind::Yard, m_atC.yard.id), [&](const store::PastValue& past) {
                return past.value == Value{m_atB.yard.id};
            }));
    }

    void aCycleIsOneYard() {
        // What two phones that join in opposite directions would write.
        exchangeAll();
        const std::string at = "0000019f00000000-00000000-";
        takeOne(*m_a, Kind::Yard, m_atA.yard.id, "same_as", m_atB.yard.id, at + m_atC.yard.id);
        takeOne(*m_a, Kind::Yard, m_atB.yard.id, "same_as", m_atC.yard.id, at + m_atC.yard.id);
        takeOne(*m_a, Kind::Yard, m_atC.yard.id, "same_as", m_atA.yard.id, at + m_atC.yard.id);
        QCOMPARE(idsOf(m_a->yards()), Ids{m_atA.yard.id});
        QCOMPARE(m_a->colonies(m_atA.yard.id).size(), std::size_t{3});
        exchangeAll();
        QCOMPARE(dump("b.db"), dump("a.db"));
        QVERIFY(Joining(*m_a).separate(Kind::Yard, m_atB.yard.id));
        QCOMPARE(idsOf(m_a->yards()), sorted({m_atA.yard.id, m_atB.yard.id}));
        exchangeAll();
        QCOMPARE(dump("c.db"), dump("a.db"));
    }

    void oneThatNamesItselfOrNobodyIsLeftAlone() {
        const std::string at = "0000019f00000000-00000000-" + m_atC.yard.id;
        takeOne(*m_a, Kind::Yard, m_atA.yard.id, "same_as", m_atA.yard.id, at);
        QCOMPARE(m_a->yards().size(), std::size_t{1});
        takeOne(*m_a, Kind::Yard, m_atA.yard.id, "same_as", m_atC.yard.id, at + "1"); // not come yet
        QCOMPARE(m_a->yards().size(), std::size_t{1});
        take(*m_a, *m_c);
        QCOMPARE(idsOf(m_a->yards()), Ids{m_atA.yard.id});
    }

    void joinedYardsMayHaveColoniesWithEqualLabels() {
        take(*m_a, *m_b);
        Joining joining(*m_a);
        QVERIFY(joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id));
        const auto colonies = m_a->colonies(m_atA.yard.id);
        QCOMPARE(colonies.size(), std::size_t{2}); // two until the keeper says that they are one
        QCOMPARE(colonies[0].label, colonies[1].label);
        QVERIFY(joining.separate(Kind::Yard, m_atB.yard.id));
        QCOMPARE(idsOf(m_a->colonies(m_atB.yard.id)), Ids{m_atB.colony.id});
    }

    void oneEntryThatTreatedBothTreatsOne() {
        take(*m_a, *m_b);
        const GivenTreatment given = treat(*m_a, m_atA.yard.id, {m_atA.colony.id, m_atB.colony.id});
        Joining joining(*m_a);
        joining.join(Kind::Colony, m_atA.colony.id, m_atB.colony.id);
        QCOMPARE(m_a->treatment(given.treatment.id)->colonyIds, Ids{m_atA.colony.id});
        QCOMPARE(m_a->treatmentsOf(m_atA.colony.id).size(), std::size_t{1});
        const int before = revisions("a.db");
        m_a->save(*m_a->treatment(given.treatment.id)); // as a page keeps it again
        QCOMPARE(revisions("a.db"), before);
        joining.separate(Kind::Colony, m_atB.colony.id);
        QCOMPARE(sorted(m_a->treatment(given.treatment.id)->colonyIds),
                 sorted({m_atA.colony.id, m_atB.colony.id}));
    }

    void aRoundNamesTheColonyThatStandsForBoth() {
        take(*m_a, *m_b);
        Round round;
        round.id = m_a->newId();
        round.yardId = m_atB.yard.id;
        round.startedAtMs = startMs + 5;
        round.colonyIds = {m_atB.colony.id, m_atA.colony.id};
        m_a->save(round);
        Joining joining(*m_a);
        joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id);
        joining.join(Kind::Colony, m_atA.colony.id, m_atB.colony.id);
        auto rounds = m_a->roundsOf(m_atA.yard.id);
        QCOMPARE(rounds.size(), std::size_t{1});
        QCOMPARE(rounds[0].colonyIds, Ids{m_atA.colony.id});
        // Ended as it was read: the names it was kept with stay.
        rounds[0].endedAtMs = startMs + 6;
        const int before = revisions("a.db");
        m_a->save(rounds[0]);
        QCOMPARE(revisions("a.db"), before + 1);
        joining.separate(Kind::Colony, m_atB.colony.id);
        joining.separate(Kind::Yard, m_atB.yard.id);
        QCOMPARE(m_a->roundsOf(m_atB.yard.id).at(0).colonyIds, (Ids{m_atB.colony.id, m_atA.colony.id}));
    }

    void mergingBeforeOrAfterJoiningIsOne() {
        addSample(*m_a, m_atA.colony, startMs + 1, SampleState::Finished);
        addSample(*m_b, m_atB.colony, startMs + 2, SampleState::Finished);
        treat(*m_b, m_atB.yard.id, {m_atB.colony.id});
        take(*m_a, *m_b);
        Joining(*m_a).join(Kind::Yard, m_atA.yard.id, m_atB.yard.id);
        Joining(*m_a).join(Kind::Colony, m_atA.colony.id, m_atB.colony.id);
        tell(*m_c, m_atC.colony.id);
        take(*m_a, *m_c); // A: the join, then C
        take(*m_b, *m_c); // B: C, then A with the join
        take(*m_b, *m_a);
        take(*m_c, *m_a); // C: all at once
        QCOMPARE(dump("b.db"), dump("a.db"));
        QCOMPARE(dump("c.db"), dump("a.db"));
        const std::string before = dump("a.db");
        take(*m_a, *m_b);
        QCOMPARE(dump("a.db"), before);
    }

    void whatOnePhoneEditsWhileTheOtherJoinsIsKept() {
        exchangeAll();
        Joining(*m_a).join(Kind::Yard, m_atA.yard.id, m_atB.yard.id);
        later();
        Yard renamed = *m_b->yard(m_atB.yard.id);
        renamed.name = "Ford, lower";
        m_b->save(renamed);
        const Colony more = addColony(*m_b, m_atB.yard.id, "12");
        exchangeAll();
        QVERIFY(std::ranges::count(idsOf(m_a->colonies(m_atA.yard.id)), more.id) == 1);
        QCOMPARE(m_a->yard(m_atB.yard.id)->name, std::string("Ford, lower"));
        QCOMPARE(m_a->yard(m_atA.yard.id)->name, std::string("By the ford"));
        QCOMPARE(dump("b.db"), dump("a.db"));
    }

    void aJoinThatCannotBeKeptLeavesNothingJoined() {
        take(*m_a, *m_b);
        sql(path("a.db"),
            "CREATE TRIGGER full BEFORE INSERT ON joined BEGIN SELECT RAISE(ABORT, 'full'); END");
        Joining joining(*m_a);
        QVERIFY(troubleOf([&] { joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id); }));
        sql(path("a.db"), "DROP TRIGGER full");
        QCOMPARE(joining.standsFor(m_atB.yard.id), m_atB.yard.id);
        QCOMPARE(m_a->yards().size(), std::size_t{2});
        QVERIFY(!m_a->yard(m_atB.yard.id)->sameAs.size());
        QVERIFY(joining.join(Kind::Yard, m_atA.yard.id, m_atB.yard.id));
    }

    void whatTheKeeperSaidAreTwoIsRemembered() {
        store::NotSame notSame(*m_a);
        QVERIFY(notSame.all().empty());
        notSame.add(m_atB.yard.id, m_atA.yard.id);
        notSame.add(m_atA.yard.id, m_atB.yard.id);
        notSame.add(m_atA.yard.id, m_atA.yard.id);
        notSame.add(m_atA.colony.id, m_atB.colony.id);
        const std::set<store::NotSame::Pair> expected{{m_atA.yard.id, m_atB.yard.id},
                                                      {m_atA.colony.id, m_atB.colony.id}};
        QVERIFY(notSame.all() == expected);
        m_a.reset(); // and over a new start
        m_a = std::make_unique<Store>(path("a.db").toStdString(), m_hostA.asked());
        QVERIFY(store::NotSame(*m_a).all() == expected);
        m_a->setSetting("not_same", std::string("rubbish in a setting\n"));
        QVERIFY(store::NotSame(*m_a).all().empty());
        take(*m_b, *m_a); // this phone's own: nothing of it travels
        QVERIFY(store::NotSame(*m_b).all().empty());
    }
};

QTEST_GUILESS_MAIN(StoreJoiningTest)
#include "store_joining.moc"
