// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Counting: taps, typed figures and undo as acts that add up.
#include "records/count.h"

#include <QTest>

#include <random>

using namespace halfcup::records;
using Change = CountEvent::Change;

namespace {

CountEvent act(Change change, std::int64_t typed = 0, int rinse = 1) {
    return {1, rinse, change, typed, 0};
}

CountTally after(std::initializer_list<CountEvent> events) {
    return tally({events}, 1);
}

} // namespace

class RecordsCountTest : public QObject {
    Q_OBJECT

private slots:
    void nothingCountedIsNotNoneFound() {
        const CountTally nothing = after({});
        QCOMPARE(nothing.mites(), 0);
        QVERIFY(!nothing.touched());
        QVERIFY(!nothing.canUndo());
        const CountTally none = after({act(Change::Typed, 0)});
        QCOMPARE(none.mites(), 0);
        QVERIFY(none.touched());
    }

    void tapsAddUp() {
        CountTally count;
        for (int i = 1; i <= 500; ++i) {
            count.add(act(Change::Tap));
            QCOMPARE(count.mites(), i);
        }
    }

    void undoTakesBackTheLastTap() {
        const CountTally count = after({act(Change::Tap), act(Change::Tap), act(Change::Undo)});
        QCOMPARE(count.mites(), 1);
        QVERIFY(count.canUndo());
    }

    void undoOfATypedFigureBringsBackTheOneBefore() {
        const CountTally count = after({act(Change::Tap), act(Change::Tap), act(Change::Typed, 40),
                                        act(Change::Tap), act(Change::Undo), act(Change::Undo)});
        QCOMPARE(count.mites(), 2);
    }

    void undoWithNothingToUndoDoesNothing() {
        CountTally count = after({act(Change::Undo), act(Change::Undo)});
        QCOMPARE(count.mites(), 0);
        QVERIFY(!count.touched());
        count.add(act(Change::Tap));
        count.add(act(Change::Undo));
        count.add(act(Change::Undo)); // one more than there was
        QCOMPARE(count.mites(), 0);
        count.add(act(Change::Tap));
        QCOMPARE(count.mites(), 1);
    }

    void undoOfAllIsStillTouched() { // the keeper counted, and found it was none
        QVERIFY(after({act(Change::Tap), act(Change::Undo)}).touched());
    }

    void rinsesAreCountedApart() {
        const std::vector<CountEvent> events{act(Change::Tap), act(Change::Tap), act(Change::Tap, 0, 2),
                                             act(Change::Undo, 0, 2), act(Change::Undo, 0, 2)};
        QCOMPARE(tally(events, 1).mites(), 2);
        QCOMPARE(tally(events, 2).mites(), 0);
        QVERIFY(tally(events, 2).touched());
        QVERIFY(!tally(events, 3).touched());
    }

    void anyHistoryEqualsAStackOfFigures() { // a second, simpler way to say what the acts mean
        std::mt19937 random(17);
        CountTally count;
        std::vector<std::int64_t> figures{0};
        for (int i = 0; i < 20'000; ++i) {
            const auto kind = static_cast<Change>(random() % 3);
            const auto typed = static_cast<std::int64_t>(random() % 10'001);
            count.add(act(kind, typed));
            if (kind == Change::Tap)
                figures.push_back(figures.back() + 1);
            else if (kind == Change::Typed)
                figures.push_back(typed);
            else if (figures.size() > 1)
                figures.pop_back();
            QCOMPARE(count.mites(), figures.back());
            QCOMPARE(count.canUndo(), figures.size() > 1);
        }
    }
};

QTEST_GUILESS_MAIN(RecordsCountTest)
#include "records_count.moc"
