// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Records as named values and back, and the methods and their steps.
#include "records/colony_event.h"
#include "records/field_access.h"
#include "records/method.h"
#include "records/round.h"
#include "records/sample.h"
#include "records/scoop_count.h"
#include "records/treatment.h"
#include "records/yard.h"

#include <QTest>

#include <algorithm>
#include <functional>
#include <set>
#include <stdexcept>

using namespace halfcup::records;

namespace {

Yard fullYard() {
    Yard yard;
    yard.id = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";
    yard.name = "Alder \"Bend\", \xE2\x9C\xBF\n";
    yard.position = Position{-33.9, 151.2, 4.5};
    yard.reachM = 90;
    yard.registrationNumber = "AB-1";
    yard.lines = {2.0, "own", 1.7};
    yard.lineRegion = "Ontario";
    yard.turnDate = MonthDay{2, 14};
    yard.firstWashFrom = MonthDay{9, 1};
    yard.visitedOn = Date{2026, 2, 20};
    yard.sameAs = "other";
    yard.demo = true;
    yard.removed = true;
    return yard;
}

Colony fullColony() {
    return {"id", "yard", "nuc by the gate", "swarm", "other", true, true, Stand{-3.5, 12}};
}

Sample fullSample() {
    Sample s;
    s.id = "id";
    s.colonyId = "colony";
    s.yardId = "yard";
    s.method = "another_method";
    s.state = SampleState::Finished;
    s.step = Step::Answer;
    s.startedAtMs = 1;
    s.utcOffsetMinutes = -210;
    s.queen = Queen::SeenAndSafe;
    s.scoop = {100, Packing::Settled, 297.5, 0.12, Scoop::BeesSource::Counted};
    s.scoopedAtMs = 2;
    s.jar = "J 7";
    s.stamp = {PositionState::Stamped, {52.5, -13.25, 3.5}, 7, 450, true, "nmea tcp"};
    s.shake.plannedS = 90;
    s.shake.runningSince = ShakeReading{11, 12, "boot"};
    s.shake.shakenBeforeMs = 13;
    s.shake.interrupted = true;
    s.shake.ended = true;
    s.settleStartedMs = 3;
    s.finishedAtMs = 4;
    s.abandonedAtMs = 5;
    s.answer = Answer{9, 1, 1.37, 3.2, 7.77, {3.0, "own", 1.7}, 0.55, 0.9, 0.9, 0.08, 6.5};
    s.board = {5, 6, 24.5, 17, 51};
    s.openedCells = 120;
    s.otherAnswer = OtherAnswer{12, 7.3, 12.2, 18.8, 10, "a-line", 0.77, 0.5, 1.5, 4.6};
    s.note = "four bees with crippled wings";
    s.demo = true;
    s.removed = true;
    return s;
}

ColonyEvent fullEvent(EventKind kind) {
    ColonyEvent e;
    e.id = "id";
    e.colonyId = "colony";
    e.yardId = "yard";
    e.kind = kind;
    e.day = {2028, 2, 29};
    e.recordedAtMs = 7;
    e.brood = Brood::OpenOnly;
    e.floor = Floor::Screened;
    e.frames = 8.5;
    e.otherColonyId = "other";
    e.otherYardId = "elsewhere";
    e.words = "quiet stock";
    e.demo = true;
    e.removed = true;
    return e;
}

Treatment fullTreatment() {
    Treatment t;
    t.id = "id";
    t.yardId = "yard";
    t.substance = "thymol";
    t.product = "as on its label";
    t.batch = "B-1";
    t.expiry = Date{2028, 2, 29};
    t.supplier = "a shop";
    t.proof = "receipt 4";
    t.quantity = "2 trays";
    t.firstDay = {2026, 8, 1};
    t.lastDay = {2026, 9, 1};
    t.removalDue = Date{2026, 9, 2};
    t.removedOn = Date{2026, 9, 3};
    t.withdrawalDays = 3;
    t.prescriber = "a vet";
    t.doneBy = "me";
    t.verdict = "fits";
    t.note = "warm";
    t.recordedAtMs = 5;
    t.demo = true;
    t.removed = true;
    return t;
}

Round fullRound() {
    Round round;
    round.id = "id";
    round.yardId = "yard";
    round.startedAtMs = 1;
    round.utcOffsetMinutes = 120;
    round.endedAtMs = 2;
    round.picked = Round::Picked::ByKeeper;
    round.colonyIds = {"017f22e2-79b0-7cc3-98c4-dc0c0c07398f", "017f22e2-79b0-7cc3-98c4-dc0c0c073990"};
    round.demo = true;
    round.removed = true;
    return round;
}

template <typename Record>
std::vector<std::string> keys(const Record& record) {
    std::vector<std::string> names;
    for (const auto& [name, value] : toFields(record))
        names.push_back(name);
    return names;
}

std::vector<std::string> names(Kind kind) {
    const auto all = fieldNames(kind);
    return {all.begin(), all.end()};
}

int notKnown(const Fields& fields) {
    return static_cast<int>(std::ranges::count_if(
        fields, [](const auto& field) { return std::holds_alternative<std::monostate>(field.second); }));
}

Value valueAt(const Fields& fields, std::string_view name) {
    const auto found = fields.find(name);
    if (found == fields.end())
        throw std::out_of_range(std::string(name));
    return found->second;
}

/// Every field given a value of a type it never has.
Fields wronglyTyped(Kind kind, const Fields& good) {
    Fields fields;
    for (const std::string_view name : fieldNames(kind)) {
        const bool isText = std::holds_alternative<std::string>(valueAt(good, name));
        fields[name] = isText ? Value{std::int64_t{7}} : Value{std::string("seven")};
    }
    return fields;
}

} // namespace

class RecordsFieldsTest : public QObject {
    Q_OBJECT

private slots:
    void fieldNamesAreTheKeysOfEachKind() {
        for (const Kind kind : allKinds) {
            QVERIFY(!nameOf(kind).empty());
            QVERIFY(std::ranges::is_sorted(fieldNames(kind)));
            QCOMPARE(std::set<std::string_view>(fieldNames(kind).begin(), fieldNames(kind).end()).size(),
                     fieldNames(kind).size());
        }
        QCOMPARE(keys(Yard{}), names(Kind::Yard));
        QCOMPARE(keys(fullYard()), names(Kind::Yard));
        QCOMPARE(keys(Colony{}), names(Kind::Colony));
        QCOMPARE(keys(fullColony()), names(Kind::Colony));
        QCOMPARE(keys(Sample{}), names(Kind::Sample));
        QCOMPARE(keys(fullSample()), names(Kind::Sample));
        QCOMPARE(keys(fullEvent(EventKind::Brood)), names(Kind::Event));
        QCOMPARE(keys(fullTreatment()), names(Kind::Treatment));
        QCOMPARE(keys(TreatedColony{}), names(Kind::Treated));
        QCOMPARE(keys(ScoopCount{}), names(Kind::ScoopCount));
        QCOMPARE(keys(Round{}), names(Kind::Round));
        QCOMPARE(keys(fullRound()), names(Kind::Round));
    }

    void fullRecordsFillEveryField() { // else the round trips below would prove too little
        QCOMPARE(notKnown(toFields(fullYard())), 0);
        QCOMPARE(notKnown(toFields(fullColony())), 0);
        QCOMPARE(notKnown(toFields(fullSample())), 0);
        QCOMPARE(notKnown(toFields(fullTreatment())), 0);
        QCOMPARE(notKnown(toFields(fullRound())), 0);
        QCOMPARE(notKnown(toFields(fullEvent(EventKind::Brood))),
                 1); // a floor is in events of the floor alone
        QCOMPARE(notKnown(toFields(fullEvent(EventKind::Floor))), 1);
    }

    void recordsReadBack() {
        QCOMPARE(toFields(yardFrom("x", toFields(fullYard()))), toFields(fullYard()));
        QCOMPARE(toFields(yardFrom("x", toFields(Yard{}))), toFields(Yard{}));
        QCOMPARE(toFields(colonyFrom("x", toFields(fullColony()))), toFields(fullColony()));
        QCOMPARE(toFields(colonyFrom("x", toFields(Colony{}))), toFields(Colony{}));
        QCOMPARE(toFields(sampleFrom("x", toFields(fullSample()))), toFields(fullSample()));
        QCOMPARE(toFields(sampleFrom("x", toFields(Sample{}))), toFields(Sample{}));
        for (const EventKind kind : allEventKinds)
            QCOMPARE(toFields(*colonyEventFrom("x", toFields(fullEvent(kind)))), toFields(fullEvent(kind)));
        QCOMPARE(toFields(*treatmentFrom("x", toFields(fullTreatment()))), toFields(fullTreatment()));
        const TreatedColony treated{"x", "treatment", "colony", true, true};
        QCOMPARE(toFields(treatedColonyFrom("x", toFields(treated))), toFields(treated));
        const ScoopCount scoop{"x", "sample", 100, Packing::Settled, 312, 5, true, true, true};
        QCOMPARE(toFields(scoopCountFrom("x", toFields(scoop))), toFields(scoop));
        QCOMPARE(toFields(roundFrom("x", toFields(fullRound()))), toFields(fullRound()));
        QCOMPARE(roundFrom("x", toFields(fullRound())).colonyIds, fullRound().colonyIds);
        Fields listed = toFields(fullRound()); // what is no id, and what is there twice, is left out
        listed["colony_ids"] =
            "../../etc " + fullRound().colonyIds.front() + "  x " + fullRound().colonyIds.front();
        QCOMPARE(roundFrom("x", listed).colonyIds, std::vector{fullRound().colonyIds.front()});
        QCOMPARE(sampleFrom("x", {}).id, RecordId("x"));
        QCOMPARE(yardFrom("x", {}).id, RecordId("x"));
        QCOMPARE(colonyFrom("x", {}).id, RecordId("x"));
    }

    void membersReadBack() { // what toFields forgets, the comparison of fields cannot see
        const Yard yard = yardFrom("x", toFields(fullYard()));
        QCOMPARE(yard.name, fullYard().name);
        QCOMPARE(yard.position, fullYard().position);
        QCOMPARE(yard.lines, fullYard().lines);
        QVERIFY(yard.demo && yard.removed);
        const Sample sample = sampleFrom("x", toFields(fullSample()));
        QCOMPARE(sample.scoop.packing, Packing::Settled);
        QCOMPARE(sample.scoop.source, Scoop::BeesSource::Counted);
        QCOMPARE(sample.stamp.position, fullSample().stamp.position);
        QCOMPARE(sample.stamp.source, fullSample().stamp.source);
        QVERIFY(sample.shake.runningSince);
        QCOMPARE(sample.shake.runningSince->bootId, std::string("boot"));
        QVERIFY(sample.answer);
        QCOMPARE(sample.answer->lines, fullSample().answer->lines); // which line an old answer was judged by
        QCOMPARE(sample.answer->chanceOverOwn, fullSample().answer->chanceOverOwn);
        QCOMPARE(sample.answer->jarShape, 6.5);
        QCOMPARE(sample.board, fullSample().board);
        QCOMPARE(sample.otherAnswer, fullSample().otherAnswer);
        QCOMPARE(sample.openedCells, std::optional<std::int64_t>{120});
    }

    void unknownIsNothingAndNeverZero() {
        const Fields yard = toFields(Yard{});
        for (const char* name : {"latitude_deg", "longitude_deg", "position_accuracy_m", "own_line",
                                 "line_region", "turn_date", "first_wash_from", "visited_on"})
            QVERIFY2(std::holds_alternative<std::monostate>(valueAt(yard, name)), name);
        const Fields sample = toFields(Sample{});
        for (const char* name :
             {"mites", "load_q50", "chance_over", "latitude_deg", "scooped_at_ms", "jar", "finished_at_ms",
              "abandoned_at_ms", "fix_accuracy_m", "shake_since_boot_ms"})
            QVERIFY2(std::holds_alternative<std::monostate>(valueAt(sample, name)), name);
        Sample unstamped = fullSample(); // a position without a stamp is no position
        unstamped.stamp.state = PositionState::NoFix;
        QVERIFY(std::holds_alternative<std::monostate>(valueAt(toFields(unstamped), "latitude_deg")));
        QVERIFY(!yardFrom("x", {{"latitude_deg", 52.5}}).position); // half a position is none
    }

    void wrongTypesKeepTheDefaults() {
        QCOMPARE(toFields(yardFrom("x", wronglyTyped(Kind::Yard, toFields(fullYard())))), toFields(Yard{}));
        QCOMPARE(toFields(colonyFrom("x", wronglyTyped(Kind::Colony, toFields(fullColony())))),
                 toFields(Colony{}));
        QCOMPARE(toFields(sampleFrom("x", wronglyTyped(Kind::Sample, toFields(fullSample())))),
                 toFields(Sample{}));
    }

    void unknownWordsReadAsTheFirst() {
        Fields fields = toFields(fullSample());
        for (const char* name : {"state", "step", "queen", "position_state", "scoop_packing", "bees_source"})
            fields[name] = std::string("from a newer version");
        const Sample sample = sampleFrom("x", fields);
        QCOMPARE(sample.state, SampleState::Draft);
        QCOMPARE(sample.step, Step::Colony);
        QCOMPARE(sample.queen, Queen::NotAsked);
        QCOMPARE(sample.stamp.state, PositionState::NotTried);
        QCOMPARE(static_cast<int>(sample.scoop.packing), 0);
        QCOMPARE(sample.scoop.source, Scoop::BeesSource::Book);
    }

    void everyWordReadsBack() {
        const auto through = [](const std::function<void(Sample&)>& change) {
            Sample sample;
            change(sample);
            return sampleFrom("x", toFields(sample));
        };
        std::set<std::string_view> words;
        for (const Queen queen : {Queen::NotAsked, Queen::SeenAndSafe, Queen::NotSeen}) {
            QCOMPARE(through([&](Sample& s) { s.queen = queen; }).queen, queen);
            words.insert(nameOf(queen));
        }
        using Position = PositionState;
        for (const Position state : {Position::NotTried, Position::Waiting, Position::Stamped,
                                     Position::NoFix, Position::NoSource, Position::Denied}) {
            QCOMPARE(through([&](Sample& s) { s.stamp.state = state; }).stamp.state, state);
            words.insert(nameOf(state));
        }
        for (const SampleState state : {SampleState::Draft, SampleState::Finished, SampleState::Abandoned}) {
            QCOMPARE(through([&](Sample& s) { s.state = state; }).state, state);
            words.insert(nameOf(state));
        }
        for (const Packing packing : {Packing::Settled, Packing::Loose}) {
            QCOMPARE(through([&](Sample& s) { s.scoop.packing = packing; }).scoop.packing, packing);
            words.insert(nameOf(packing));
        }
        using Bees = Scoop::BeesSource;
        for (const Bees source : {Bees::Book, Bees::OwnScoops, Bees::Typed, Bees::Counted}) {
            QCOMPARE(through([&](Sample& s) { s.scoop.source = source; }).scoop.source, source);
            words.insert(nameOf(source));
        }
        for (const Step step : {Step::Colony, Step::Safety, Step::Scoop, Step::Pour, Step::Shake,
                                Step::Settle, Step::Count, Step::SecondRinse, Step::LayBoard, Step::PullBoard,
                                Step::BoardCells, Step::OpenedCells, Step::Answer}) {
            QCOMPARE(stepFrom(nameOf(step)), step);
            words.insert(nameOf(step));
        }
        QCOMPARE(words.size(), std::size_t{3 + 6 + 3 + 2 + 4 + 13}); // no word is used for two
    }

    void wholeNumbersAreReadAsRealsButNotBack() {
        const Fields fields{
            {"whole", std::int64_t{3}}, {"real", 3.5}, {"text", std::string("3")}, {"none", {}}};
        QCOMPARE(realIn(fields, "whole"), std::optional{3.0});
        QCOMPARE(realIn(fields, "real"), std::optional{3.5});
        QVERIFY(!realIn(fields, "text") && !realIn(fields, "none") && !realIn(fields, "absent"));
        QCOMPARE(integerIn(fields, "whole"), std::optional<std::int64_t>{3});
        QVERIFY(!integerIn(fields, "real") && !integerIn(fields, "text") && !integerIn(fields, "absent"));
        QCOMPARE(textIn(fields, "text"), std::optional<std::string>{"3"});
        QVERIFY(!textIn(fields, "whole") && !textIn(fields, "none"));
        QVERIFY(flagIn(fields, "whole"));
        QVERIFY(!flagIn(fields, "real") && !flagIn(fields, "absent"));
        QCOMPARE(valueOf(true), Value{std::int64_t{1}});
        QCOMPARE(valueOf(false), Value{std::int64_t{0}});
        QCOMPARE(valueOf(std::optional<double>{}), Value{});
        QCOMPARE(valueOf(std::optional{2.5}), Value{2.5});
    }
};

QTEST_GUILESS_MAIN(RecordsFieldsTest)
#include "records_fields.moc"
