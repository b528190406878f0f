// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What a record was before, and back to it; also what lost where two phones changed one field.
#include "store/history.h"
#include "store/merge.h"
#include "store/outgoing.h"
#include "store_kit.h"

#include <QTemporaryDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::records;
using namespace halfcup::storetest;
using store::History;
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

const std::vector<std::string> place{"latitude_deg", "longitude_deg", "position_accuracy_m"};

} // namespace

class StoreHistoryTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    Host m_hostA, m_hostB;
    std::unique_ptr<Store> m_a, m_b;
    Place m_place;

    QString path(const char* name) const { return m_folder->filePath(name); }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_hostA = {};
        m_hostB = {};
        m_hostB.chance = 999;
        m_a = std::make_unique<Store>(path("a.db").toStdString(), m_hostA.asked());
        m_b = std::make_unique<Store>(path("b.db").toStdString(), m_hostB.asked());
        m_place = addPlace(*m_a);
    }

    void fieldsThatChangeTogetherAreOneState() {
        m_hostA.nowMs += 1000;
        m_place.yard.position = Position{48.0, 11.0, 5.0};
        m_a->save(m_place.yard);
        m_hostA.nowMs += 1000;
        m_place.yard.position = Position{48.5, 11.0, {}}; // the accuracy is not known any more
        m_a->save(m_place.yard);
        const auto states = History(*m_a).of(Kind::Yard, m_place.yard.id, place);
        QCOMPARE(states.size(), std::size_t{2});
        QVERIFY((states[0].values ==
                 Fields{{"latitude_deg", 48.0}, {"longitude_deg", 11.0}, {"position_accuracy_m", 5.0}}));
        QVERIFY((states[1].values == Fields{{"latitude_deg", 48.5}, {"longitude_deg", 11.0}}));
        QCOMPARE(states[1].stamp.utcMs, startMs + 2000);
        QCOMPARE(states[1].stamp.device, History(*m_a).thisPhone());
        QVERIFY(History(*m_a).of(Kind::Yard, m_place.yard.id, {"label", "nonsense"}).empty());
        QVERIFY(History(*m_a).of(Kind::Yard, m_place.colony.id, {"name"}).empty());
    }

    void whatLostOnBothPhonesCanBePutBack() {
        take(*m_b, *m_a);
        m_hostA.nowMs += 1000;
        m_hostB.nowMs += 2000;
        Yard changed = m_place.yard;
        changed.name = "Ford, upper";
        m_a->save(changed);
        changed.name = "Ford, lower"; // later, so it wins
        m_b->save(changed);
        take(*m_a, *m_b);
        QCOMPARE(m_a->yard(changed.id)->name, std::string("Ford, lower"));
        const auto states = History(*m_a).of(Kind::Yard, changed.id, {"name"});
        QCOMPARE(states.size(), std::size_t{3});
        QVERIFY(states[1].values == (Fields{{"name", std::string("Ford, upper")}}));
        QCOMPARE(states[1].stamp.device, History(*m_a).thisPhone());
        QCOMPARE(states[2].stamp.device, History(*m_b).thisPhone());

        const std::string before = sql(path("a.db"), "SELECT count(*) FROM revision");
        QVERIFY(History(*m_a).putBack(Kind::Yard, changed.id, states[1].values));
        QCOMPARE(sql(path("a.db"), "SELECT count(*) FROM revision"),
                 std::to_string(std::stoi(before) + 1));                           // the past is as it was
        QVERIFY(!History(*m_a).putBack(Kind::Yard, changed.id, states[1].values)); // it is so already
        take(*m_b, *m_a);
        QCOMPARE(m_b->yard(changed.id)->name, std::string("Ford, upper"));
        QCOMPARE(History(*m_b).of(Kind::Yard, changed.id, {"name"}).size(), std::size_t{4});
    }

    void aRemovedRecordComesBack() {
        const Sample sample = addSample(*m_a, m_place.colony, startMs, SampleState::Finished);
        Sample removed = sample;
        removed.removed = true;
        take(*m_b, *m_a);
        m_hostB.nowMs += 1000;
        m_b->save(removed);
        take(*m_a, *m_b);
        QVERIFY(m_a->samplesOf(m_place.colony.id).empty());
        const auto states = History(*m_a).of(Kind::Sample, sample.id, {"removed"});
        QCOMPARE(states.size(), std::size_t{2});
        QVERIFY(History(*m_a).putBack(Kind::Sample, sample.id, states[0].values));
        QCOMPARE(m_a->samplesOf(m_place.colony.id).size(), std::size_t{1});
        take(*m_b, *m_a);
        QCOMPARE(m_b->samplesOf(m_place.colony.id).size(), std::size_t{1});
    }

    void whatCannotBePutBackIsRefusedWhole() {
        History history(*m_a);
        const std::string before = sql(path("a.db"), "SELECT count(*) FROM revision");
        const RecordId& id = m_place.yard.id;
        QVERIFY(!history.putBack(Kind::Yard, m_place.colony.id, {{"name", std::string("x")}}));
        QVERIFY(
            !history.putBack(Kind::Yard, id, {{"name", std::string("x")}, {"no_field", std::int64_t{1}}}));
        QVERIFY(!history.putBack(Kind::Yard, id, {{"name", std::string("x")}, {"removed", std::int64_t{7}}}));
        QVERIFY(!history.putBack(Kind::Yard, id, {{"latitude_deg", 91.0}}));
        QVERIFY(!history.putBack(Kind::Colony, m_place.colony.id, {{"yard_id", m_a->newId()}}));
        QVERIFY(!history.putBack(Kind::Yard, id, {}));
        QCOMPARE(sql(path("a.db"), "SELECT count(*) FROM revision"), before);
        QCOMPARE(m_a->yard(id)->name, std::string("By the ford"));
    }

    void aStrangersValueIsShownAsARowShowsIt() {
        store::Merge merge(*m_a);
        merge.from({"by hand", {}, false});
        const std::string at = "0000019f00000000-0000000";
        merge.take({m_place.yard.id,
                    "yard",
                    {{"name", at + "0-stranger", std::string("F\x01ord\xE2\x80\xAE!")},
                     {"own_line", at + "1-stranger", std::string("three")}},
                    {}});
        merge.finish();
        merge.keep();
        History history(*m_a);
        const auto names = history.of(Kind::Yard, m_place.yard.id, {"name"});
        QVERIFY(names.back().values == (Fields{{"name", std::string("Ford!")}}));
        QVERIFY(history.of(Kind::Yard, m_place.yard.id, {"own_line"}).back().values.empty());
    }
};

QTEST_GUILESS_MAIN(StoreHistoryTest)
#include "store_history.moc"
