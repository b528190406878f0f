// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What may not be kept of an event, and what is asked about. That supers stay off inside a course or a
// withdrawal is what labels and Regulation (EU) 2019/6 ask for; the rest is common practice, no source.
#include "records/event_check.h"

#include <QTest>

#include <algorithm>

using namespace halfcup::records;

namespace {

const Colony four{"four", "home", "4", "", {}, false, false};
constexpr Date today{2026, 7, 1};

ColonyEvent happened(EventKind kind, const Date& day = today) {
    ColonyEvent e;
    e.id = std::string(nameOf(kind)) + toIso(day);
    e.colonyId = four.id;
    e.yardId = "home";
    e.kind = kind;
    e.day = day;
    return e;
}

std::vector<GivenTreatment> course(std::optional<int> withdrawalDays) {
    GivenTreatment g;
    g.treatment.product = "typed by the keeper";
    g.treatment.firstDay = {2026, 6, 1};
    g.treatment.lastDay = {2026, 6, 20};
    g.treatment.withdrawalDays = withdrawalDays;
    g.colonyIds = {four.id};
    return {g};
}

using Problems = std::vector<EventProblem>;

Problems found(const ColonyEvent& event, const std::vector<ColonyEvent>& events = {},
               const std::vector<GivenTreatment>& treatments = {}) {
    return problemsOf(event, four, events, treatments, today);
}

} // namespace

class RecordsEventCheckTest : public QObject {
    Q_OBJECT

private slots:
    void plainEventsPass() {
        for (const EventKind kind : {EventKind::SupersOn, EventKind::SupersOff, EventKind::Split,
                                     EventKind::Requeened, EventKind::Swarmed})
            QVERIFY(found(happened(kind)).empty());
    }

    void daysThatCannotBe() {
        QVERIFY((found(happened(EventKind::Swarmed, {2026, 7, 2})) == Problems{EventProblem::DayInFuture}));
        QVERIFY(
            (found(happened(EventKind::Swarmed, {2026, 2, 29})) == Problems{EventProblem::ImpossibleDay}));
    }

    void whatWasSeenMustBeChosen() {
        for (const EventKind kind :
             {EventKind::Brood, EventKind::Strength, EventKind::Floor, EventKind::Moved})
            QVERIFY((found(happened(kind)) == Problems{EventProblem::NothingChosen}));
        ColonyEvent frames = happened(EventKind::Strength);
        frames.frames = 8.5;
        QVERIFY(found(frames).empty());
        for (const double wrong : {-1.0, 61.0}) {
            frames.frames = wrong;
            QVERIFY((found(frames) == Problems{EventProblem::FramesOutOfRange}));
        }
    }

    void notIntoItselfAndNotToWhereItStands() {
        ColonyEvent merged = happened(EventKind::Merged);
        merged.otherColonyId = four.id;
        QVERIFY((found(merged) == Problems{EventProblem::SameColony, EventProblem::EndsIt}));
        ColonyEvent moved = happened(EventKind::Moved);
        moved.otherYardId = "home";
        QVERIFY((found(moved) == Problems{EventProblem::SameYard}));
        moved.otherYardId = "away";
        QVERIFY(found(moved).empty());
        ColonyEvent earlier = happened(EventKind::Moved, {2026, 5, 1});
        earlier.otherYardId = "away";
        QVERIFY((found(moved, {earlier}) == Problems{EventProblem::SameYard}));
    }

    void supersInsideCourseOrWithdrawalAreAskedAbout() {
        const auto on = [](const Date& day) { return happened(EventKind::SupersOn, day); };
        QVERIFY((found(on({2026, 6, 10}), {}, course(0)) == Problems{EventProblem::HoneyHeld}));
        QVERIFY((found(on({2026, 6, 30}), {}, course(14)) == Problems{EventProblem::HoneyHeld}));
        QVERIFY(found(on({2026, 6, 30}), {}, course(10)).empty()); // honey from the 30th
        QVERIFY(found(on({2026, 5, 31}), {}, course(14)).empty());
        QVERIFY(found(happened(EventKind::SupersOff, {2026, 6, 10}), {}, course(0)).empty());
        QVERIFY(!isForbidding(EventProblem::HoneyHeld) && isForbidding(EventProblem::SameYard));
    }

    void endIsAskedAboutAndWhatComesAfterIt() {
        const ColonyEvent dead = happened(EventKind::Dead, {2026, 6, 1});
        QVERIFY((found(dead) == Problems{EventProblem::EndsIt}));
        QVERIFY((found(happened(EventKind::SupersOn), {dead}) == Problems{EventProblem::EndedBefore}));
        QVERIFY(found(happened(EventKind::SupersOn, {2026, 5, 1}), {dead}).empty());
    }

    void sameStateTwiceIsAskedAbout() {
        const ColonyEvent on = happened(EventKind::SupersOn, {2026, 6, 1});
        QVERIFY((found(happened(EventKind::SupersOn), {on}) == Problems{EventProblem::SaidAlready}));
        QVERIFY(found(happened(EventKind::SupersOff), {on}).empty());
    }

    void takingBackAMoveGoesBackToWhereItStood() {
        Colony now = four;
        ColonyEvent first = happened(EventKind::Moved, {2026, 5, 1});
        first.otherYardId = "away";
        ColonyEvent second = happened(EventKind::Moved, {2026, 6, 1});
        second.yardId = "away";
        second.otherYardId = "heath";
        now.yardId = "heath";
        QCOMPARE(yardAfterTakingBack(now, second, std::vector{first, second}, today), std::string("away"));
        QCOMPARE(yardAfterTakingBack(now, first, std::vector{first, second}, today), std::string("heath"));
        now.yardId = "away";
        QCOMPARE(yardAfterTakingBack(now, first, std::vector{first}, today), std::string("home"));
        QCOMPARE(yardAfterTakingBack(now, happened(EventKind::Swarmed), {}, today), std::string("away"));
    }
};

QTEST_GUILESS_MAIN(RecordsEventCheckTest)
#include "records_event_check.moc"
