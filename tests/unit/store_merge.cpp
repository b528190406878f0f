// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What a merge says it will do, that it does no more and no less, and that it can be taken back.
#include "store/merge.h"
#include "store/merge_log.h"
#include "store/outgoing.h"
#include "store_kit.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <sys/stat.h>

using namespace halfcup;
using namespace halfcup::records;
using namespace halfcup::storetest;
using store::Change;
using store::Merge;
using store::MergeLog;
using store::MergePlan;
using store::Outgoing;
using store::Store;

namespace {

/// All that another phone holds, as it would come in a file.
struct Parcel {
    store::MergeSource source;
    std::vector<RecordPart> parts;
};

Parcel parcelOf(Store& store) {
    Parcel parcel;
    Outgoing outgoing(store);
    parcel.source = {"parcel", outgoing.seen(), false};
    outgoing.forEachPart([&](const RecordPart& part) { parcel.parts.push_back(part); });
    return parcel;
}

MergePlan take(Store& store, const Parcel& parcel, bool keep = true) {
    Merge merge(store);
    merge.from(parcel.source);
    for (const RecordPart& part : parcel.parts)
        merge.take(part);
    const MergePlan plan = merge.finish();
    if (keep)
        merge.keep();
    return plan;
}

} // namespace

class StoreMergeTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    Host m_hostA, m_hostB;
    std::unique_ptr<Store> m_a, m_b;

    QString path(const char* name) const { return m_folder->filePath(name); }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_hostA = {};
        m_hostB = {};
        m_hostB.chance = 999;
        m_a = std::make_unique<Store>(path("a.db").toStdString(), m_hostA.asked());
        m_b = std::make_unique<Store>(path("b.db").toStdString(), m_hostB.asked());
    }

    void aPlanTouchesNothing() {
        const auto place = addPlace(*m_a);
        const Sample sample = addSample(*m_a, place.colony, startMs, SampleState::Finished);
        m_a->addCount(sample.id, {});
        const QByteArray before = bytesOf(path("b.db"));
        const MergePlan plan = take(*m_b, parcelOf(*m_a), false);
        QCOMPARE(plan.counts.at({Kind::Yard, Change::New}), 1);
        QCOMPARE(plan.counts.at({Kind::Sample, Change::New}), 1);
        QCOMPARE(plan.newCounts, std::int64_t{1});
        QCOMPARE(m_b->yards().size(), std::size_t{0});
        QVERIFY(bytesOf(path("b.db")) == before);
        QVERIFY(!QFile::exists(path("b.db.before-merge")));
    }

    void whatIsKeptIsWhatWasPlanned() {
        const auto place = addPlace(*m_a);
        const Sample sample = addSample(*m_a, place.colony, startMs, SampleState::Finished);
        m_a->addCount(sample.id, {});
        const MergePlan plan = take(*m_b, parcelOf(*m_a));
        QCOMPARE(plan.count(Change::New), 3);
        QCOMPARE(m_b->yards().at(0).name, std::string("By the ford"));
        QCOMPARE(m_b->countEvents(sample.id).size(), std::size_t{1});
        QCOMPARE(m_b->integrityReport(), std::string("ok"));
        const auto kept = MergeLog(*m_b).last();
        QVERIFY(kept && kept->records == 3 && kept->source == "parcel" && !kept->undone);
        // The copy from before it: whole, its owner's alone, and without what came.
        QCOMPARE(sql(path("b.db.before-merge"), "SELECT count(*) FROM yard"), std::string("0"));
        struct stat info {};
        QCOMPARE(stat(qPrintable(path("b.db.before-merge")), &info), 0);
        QCOMPARE(info.st_mode & 07777, 0600U);
    }

    void itemsSayWhatAPersonKnowsThemBy() {
        const auto place = addPlace(*m_a);
        Sample sample = addSample(*m_a, place.colony, startMs, SampleState::Finished);
        sample.scoopedAtMs = startMs + 5;
        m_a->save(sample);
        const MergePlan plan = take(*m_b, parcelOf(*m_a), false);
        QCOMPARE(plan.items.size(), std::size_t{3});
        const auto found = std::ranges::find(plan.items, Kind::Sample, &store::MergeItem::kind);
        QVERIFY(found != plan.items.end());
        const store::MergeItem& item = *found;
        QCOMPARE(item.yard, std::string("By the ford"));
        QCOMPARE(item.colony, std::string("4"));
        QCOMPARE(item.word, std::string("alcohol_wash"));
        QCOMPARE(item.atMs.value_or(0), startMs + 5);
    }

    void theSameAgainIsNothingAndWritesNothing() {
        addPlace(*m_a);
        take(*m_b, parcelOf(*m_a));
        const std::string merges = sql(path("b.db"), "SELECT count(*) FROM merge");
        const MergePlan again = take(*m_b, parcelOf(*m_a));
        QVERIFY(again.nothingNew());
        QCOMPARE(again.count(Change::Same), 2);
        QCOMPARE(sql(path("b.db"), "SELECT count(*) FROM merge"), merges);
    }

    void theLaterOfTwoValuesWinsAndTheOtherStays() {
        auto place = addPlace(*m_a);
        take(*m_b, parcelOf(*m_a));
        m_hostA.nowMs += 1000;
        place.yard.name = "Ford, upper";
        m_a->save(place.yard);
        m_hostB.nowMs += 2000;
        place.yard.name = "Ford, lower";
        m_b->save(place.yard);

        const MergePlan atB = take(*m_b, parcelOf(*m_a));
        QCOMPARE(atB.count(Change::BothChanged), 1);
        const auto& clash = atB.items.at(0).clashes.at(0);
        QCOMPARE(clash.field, std::string("name"));
        QVERIFY(clash.ours == Value{std::string("Ford, lower")});
        QVERIFY(clash.theirs == Value{std::string("Ford, upper")});
        QVERIFY(clash.oursWins);
        QCOMPARE(m_b->yards().at(0).name, std::string("Ford, lower"));
        // B has now told of the clash; for A the value is simply a later one, made knowing of its own.
        const MergePlan atA = take(*m_a, parcelOf(*m_b));
        QCOMPARE(atA.count(Change::Changed), 1);
        QCOMPARE(m_a->yards().at(0).name, std::string("Ford, lower"));
        for (Store* store : {m_a.get(), m_b.get()}) {
            int names = 0;
            for (const auto& past : store->history(Kind::Yard, place.yard.id))
                names += past.field == "name";
            QCOMPARE(names, 3);
        }
    }

    void aPhoneWhoseClockIsAYearBehindStillWinsWithWhatItDoesLater() {
        auto place = addPlace(*m_a);
        m_hostB.nowMs -= 365 * 86'400'000LL;
        take(*m_b, parcelOf(*m_a));
        place.yard.name = "seen first, then changed";
        m_b->save(place.yard);
        take(*m_a, parcelOf(*m_b));
        QCOMPARE(m_a->yards().at(0).name, std::string("seen first, then changed"));
    }

    void removedThereIsSaidAndDone() {
        auto place = addPlace(*m_a);
        take(*m_b, parcelOf(*m_a));
        place.colony.removed = true;
        m_a->save(place.colony);
        const MergePlan plan = take(*m_b, parcelOf(*m_a));
        QCOMPARE(plan.count(Change::RemovedThere), 1);
        QVERIFY(m_b->colonies(place.yard.id).empty());
    }

    void whatBelongsToNothingWaitsUntilItsOwnerComes() {
        const auto place = addPlace(*m_a);
        const Sample sample = addSample(*m_a, place.colony, startMs, SampleState::Finished);
        Parcel all = parcelOf(*m_a);
        Parcel part = all;
        std::erase_if(part.parts, [](const RecordPart& each) { return each.kind == "yard"; });
        const MergePlan plan = take(*m_b, part);
        QCOMPARE(plan.waiting, 2); // the colony, and the sample with it
        QVERIFY(!m_b->sample(sample.id));
        QCOMPARE(m_b->integrityReport(), std::string("ok"));
        QCOMPARE(take(*m_b, all).waiting, 0);
        QVERIFY(m_b->sample(sample.id).has_value());
    }

    void oneIdIsOneKind() {
        const auto place = addPlace(*m_a);
        RecordPart forged{
            place.yard.id, "colony", {{"label", "0000019000000000-00000000-x", std::string("x")}}, {}};
        Merge merge(*m_a);
        merge.from({"forged", {}, false});
        QVERIFY(!merge.take(forged));
        QVERIFY(merge.finish().nothingNew());
    }

    void unknownKindsAndFieldsAreKeptAndPassedOn() {
        const std::string stamp = "0000019ec0000000-00000000-phone-c";
        Parcel parcel{{"newer", {}, false},
                      {{"017f22e2-79b0-7cc3-98c4-dc0c0c07398f",
                        "queen_line",
                        {{"colour", stamp, std::string("blue")}},
                        {}},
                       {"017f22e2-79b0-7cc3-98c4-dc0c0c073990",
                        "yard",
                        {{"altitude_m", stamp, 412.5}, {"name", stamp, std::string("Known")}},
                        {}}}};
        const MergePlan plan = take(*m_b, parcel);
        QCOMPARE(plan.unknownKinds, 1);
        QCOMPARE(m_b->yards().at(0).name, std::string("Known"));
        QVERIFY(parcelOf(*m_b).parts == parcel.parts);
    }

    void aYoungerProgramTakesUpWhatAnOlderOneOnlyPassedOn() {
        // As an older program would have left it: the revisions are there, no row shows them.
        const auto place = addPlace(*m_a);
        m_a.reset();
        const std::string values = "'0000019ec0000000-00000000-c', ";
        QCOMPARE(sql(path("a.db"), "INSERT INTO revision(record_id, field, stamp, kind, value) VALUES ('" +
                                       place.yard.id + "', 'visited_on', " + values +
                                       "'yard', '2026-05-02')," +
                                       "('017f22e2-79b0-7cc3-98c4-dc0c0c073990', 'colour', " + values +
                                       "'queen_line', 'blue')"),
                 std::string());
        const auto own = store::allMigrations();
        std::vector<store::Migration> steps(own.begin(), own.end());
        steps.push_back({static_cast<int>(steps.size()) + 1, [](SQLite::Database&) {}});
        m_a = std::make_unique<Store>(path("a.db").toStdString(), m_hostA.asked(), steps);
        QVERIFY(m_a->yards().at(0).visitedOn.has_value());
        QCOMPARE(m_a->yards().at(0).name, place.yard.name);
        QCOMPARE(sql(path("a.db"), "SELECT count(*) FROM waiting"), std::string("0"));
    }

    void theLastMergeCanBeTakenBack() {
        auto mine = addPlace(*m_b, "Mine");
        take(*m_a, parcelOf(*m_b));
        mine.yard.name = "Renamed by A";
        m_a->save(mine.yard);
        const auto theirs = addPlace(*m_a, "Theirs");
        const Sample sample = addSample(*m_a, mine.colony, startMs, SampleState::Finished);
        m_a->addCount(sample.id, {});
        const std::string before =
            sql(path("b.db"), "SELECT group_concat(record_id || field || stamp) FROM revision");
        take(*m_b, parcelOf(*m_a));
        QCOMPARE(m_b->yards().size(), std::size_t{2});

        const std::int64_t washes = m_b->finishedWashes();
        QVERIFY(washes > 0);
        QVERIFY(MergeLog(*m_b).undoLast());
        QVERIFY(m_b->finishedWashes() < washes); // which was counted before
        QCOMPARE(m_b->yards().size(), std::size_t{1});
        QCOMPARE(m_b->yards().at(0).name, std::string("Mine"));
        QVERIFY(!m_b->sample(sample.id));
        QVERIFY(m_b->countEvents(sample.id).empty());
        QCOMPARE(sql(path("b.db"), "SELECT group_concat(record_id || field || stamp) FROM revision"), before);
        QCOMPARE(m_b->integrityReport(), std::string("ok"));
        QVERIFY(!MergeLog(*m_b).undoLast()); // once
        QVERIFY(MergeLog(*m_b).last()->undone);

        take(*m_b, parcelOf(*m_a)); // and it can be taken in again
        QCOMPARE(m_b->yards().size(), std::size_t{2});
        QVERIFY(m_b->sample(sample.id).has_value());
    }

    void whatHangsOnAMergeKeepsIt() {
        const auto place = addPlace(*m_a);
        const Sample theirs = addSample(*m_a, place.colony, startMs);
        take(*m_b, parcelOf(*m_a));
        const Parcel back = parcelOf(*m_b);
        // A wash of a colony that came, a rename of a yard that came, taps on a draft that came: each of
        // them.
        const Sample ours = addSample(*m_b, place.colony, startMs + 1);
        QVERIFY(!MergeLog(*m_b).undoLast());
        QVERIFY(m_b->sample(ours.id).has_value());
        QCOMPARE(m_b->integrityReport(), std::string("ok"));

        for (int way = 0; way < 2; ++way) {
            const std::string file = path(way ? "d.db" : "c.db").toStdString();
            Store other(file, m_hostB.asked());
            take(other, parcelOf(*m_a));
            if (way == 0) {
                auto yard = other.yards().at(0);
                yard.name = "renamed since";
                other.save(yard);
            } else {
                other.addCount(theirs.id, {});
            }
            QVERIFY(!MergeLog(other).undoLast());
            QCOMPARE(other.yards().size(), std::size_t{1});
            QVERIFY(other.sample(theirs.id).has_value());
        }
    }

    void undoneJoinsAreUndoneToo() {
        const auto one = addPlace(*m_a, "One");
        const auto two = addPlace(*m_a, "Two");
        take(*m_b, parcelOf(*m_a));
        auto joined = *m_a->yard(two.yard.id);
        joined.sameAs = one.yard.id;
        m_a->save(joined);
        take(*m_b, parcelOf(*m_a));
        QCOMPARE(m_b->yards().size(), std::size_t{1});
        QCOMPARE(m_b->colonies(one.yard.id).size(), std::size_t{2});
        QVERIFY(MergeLog(*m_b).undoLast());
        QCOMPARE(m_b->yards().size(), std::size_t{2});
        QCOMPARE(m_b->colonies(one.yard.id).size(), std::size_t{1});
    }

    void whatWasMadeHereIsToldFromWhatCame() {
        const auto place = addPlace(*m_a);
        const Sample theirs = addSample(*m_a, place.colony, startMs);
        take(*m_b, parcelOf(*m_a));
        QVERIFY(Outgoing(*m_a).isFromHere(theirs.id));
        QVERIFY(!Outgoing(*m_b).isFromHere(theirs.id));
        Sample goneOnWith = theirs;
        goneOnWith.note = "gone on with on B";
        m_b->save(goneOnWith);
        QVERIFY(Outgoing(*m_b).isFromHere(theirs.id));
    }

    void onlyWhatIsNewSinceAMark() {
        auto place = addPlace(*m_a);
        const auto mark = Outgoing(*m_a).now();
        std::vector<RecordPart> parts;
        const auto since = [&](Store& store, const Outgoing::Mark& from) {
            parts.clear();
            Outgoing(store).forEachPartSince(from, [&](const RecordPart& part) { parts.push_back(part); });
        };
        since(*m_a, mark);
        QVERIFY(parts.empty());
        place.yard.name = "Later";
        m_a->save(place.yard);
        since(*m_a, mark);
        QCOMPARE(parts.size(), std::size_t{1});
        QCOMPARE(parts[0].revisions.size(), std::size_t{1});
        QCOMPARE(parts[0].revisions[0].field, std::string("name"));

        // What came by mail is passed on; what came from the folder is there already.
        const auto markB = Outgoing(*m_b).now();
        take(*m_b, parcelOf(*m_a));
        since(*m_b, markB);
        QCOMPARE(parts.size(), std::size_t{2});
        const auto markThen = Outgoing(*m_b).now();
        addPlace(*m_a, "Another");
        Parcel folder = parcelOf(*m_a);
        folder.source.passedOn = true;
        take(*m_b, folder);
        since(*m_b, markThen);
        QVERIFY(parts.empty());
    }

    /// A stamp that says it is this phone's own, from a forged file or a backup that was put back: what this
    /// phone writes next must sort behind it.
    void stampsOfOurOwnNameAreNotMetAgain() {
        const auto place = addPlace(*m_a);
        const std::string device = Outgoing(*m_a).device();
        const std::string stamp = "000001a000000000-00000005-" + device;
        take(*m_a, {{"forged", {}, false},
                    {{place.yard.id, "yard", {{"name", stamp, std::string("forged")}}, {}}}});
        QCOMPARE(m_a->yards().at(0).name, std::string("forged"));
        auto yard = m_a->yards().at(0);
        yard.name = "mine again";
        m_a->save(yard);
        QCOMPARE(m_a->yards().at(0).name, std::string("mine again"));
        QCOMPARE(parcelOf(*m_a).parts.at(0).revisions.back().value, Value{std::string("mine again")});
    }
};

QTEST_APPLESS_MAIN(StoreMergeTest)
#include "store_merge.moc"
