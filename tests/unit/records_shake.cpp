// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The shake: what is kept survives sleep, a new start and a clock that somebody set.
#include "records/shake.h"

#include <QTest>

using namespace halfcup::records;
using Phase = ShakeProgress::Phase;

namespace {

constexpr std::int64_t bootStart = 5'000'000;
constexpr std::int64_t utcStart = 1'779'090'000'000;

/// Both clocks so many milliseconds after the start of the shake.
ShakeReading after(std::int64_t ms) {
    return {bootStart + ms, utcStart + ms, "boot-1"};
}

ShakeRun running(int plannedS = usualShakeS) {
    ShakeRun run;
    run.plannedS = plannedS;
    return started(run, after(0));
}

} // namespace

class RecordsShakeTest : public QObject {
    Q_OBJECT

private slots:
    void nothingRunsBeforeTheStart() {
        const ShakeRun run;
        QVERIFY(!run.isRunning() && !run.isPaused());
        const ShakeProgress now = progress(run, after(99'000));
        QCOMPARE(now.phase, Phase::Ready);
        QCOMPARE(now.shakenMs, 0);
        QCOMPARE(now.leftMs, 60'000);
        QCOMPARE(now.overdueMs, 0);
    }

    void phasesFollowTheSeconds_data() {
        QTest::addColumn<int>("plannedS");
        QTest::addColumn<qint64>("ms");
        QTest::addColumn<Phase>("phase");
        QTest::newRow("start") << 60 << qint64{0} << Phase::FirstHalf;
        QTest::newRow("before half") << 60 << qint64{29'999} << Phase::FirstHalf;
        QTest::newRow("half") << 60 << qint64{30'000} << Phase::SecondHalf;
        QTest::newRow("before ten") << 60 << qint64{49'999} << Phase::SecondHalf;
        QTest::newRow("ten left") << 60 << qint64{50'000} << Phase::LastTenSeconds;
        QTest::newRow("last millisecond") << 60 << qint64{59'999} << Phase::LastTenSeconds;
        QTest::newRow("end") << 60 << qint64{60'000} << Phase::Over;
        QTest::newRow("long after") << 60 << qint64{3'600'000} << Phase::Over;
        QTest::newRow("shortest: half is ten left") << 20 << qint64{10'000} << Phase::LastTenSeconds;
        QTest::newRow("longest, half") << 180 << qint64{90'000} << Phase::SecondHalf;
        QTest::newRow("longest, end") << 180 << qint64{180'000} << Phase::Over;
    }
    void phasesFollowTheSeconds() {
        QFETCH(const int, plannedS);
        QFETCH(const qint64, ms);
        const ShakeProgress now = progress(running(plannedS), after(ms));
        QTEST(now.phase, "phase");
        QCOMPARE(now.shakenMs, std::min<qint64>(ms, plannedS * 1000));
        QCOMPARE(now.shakenMs + now.leftMs, plannedS * 1000);
        QCOMPARE(now.overdueMs, std::max<qint64>(0, ms - plannedS * 1000));
        QVERIFY(!now.interrupted);
    }

    void timeNeverRunsBackwards() {
        const ShakeRun run = running();
        std::int64_t before = -1;
        for (std::int64_t ms = 0; ms < 70'000; ms += 37) {
            const std::int64_t shaken = progress(run, after(ms)).shakenMs;
            QVERIFY(shaken >= before);
            before = shaken;
        }
    }

    void sleepOfThePhoneCounts() { // the boot clock goes on, and both clocks agree on how long
        const ShakeProgress now = progress(running(), after(45'000));
        QCOMPARE(now.shakenMs, 45'000);
        QVERIFY(!now.interrupted);
    }

    void pauseDoesNotCount() {
        ShakeRun run = paused(running(), after(20'000));
        QVERIFY(run.isPaused() && !run.isRunning());
        QCOMPARE(progress(run, after(500'000)).phase, Phase::Paused);
        QCOMPARE(progress(run, after(500'000)).shakenMs, 20'000);
        run = started(run, after(500'000));
        QCOMPARE(progress(run, after(510'000)).shakenMs, 30'000);
        QCOMPARE(progress(run, after(510'000)).phase, Phase::SecondHalf);
        QVERIFY(!progress(run, after(510'000)).interrupted);
    }

    void endBeforeTheTimeKeepsWhatWasShaken() {
        const ShakeRun run = ended(running(), after(38'000));
        QVERIFY(run.ended && !run.isRunning() && !run.isPaused());
        QCOMPARE(run.shakenBeforeMs, 38'000);
        QCOMPARE(progress(run, after(900'000)).phase, Phase::Over);
        QCOMPARE(progress(run, after(900'000)).overdueMs, 0);
    }

    void endAfterTheTimeKeepsWhatWasPlanned() { // nobody shakes on for minutes after the sound
        QCOMPARE(ended(running(), after(300'000)).shakenBeforeMs, 60'000);
    }

    void actsThatMakeNoSenseChangeNothing() {
        ShakeRun run;
        QVERIFY(!paused(run, after(10)).isPaused());
        run = started(running(), after(30'000)); // a second touch on start
        QCOMPARE(progress(run, after(40'000)).shakenMs, 40'000);
        run = ended(run, after(40'000));
        QVERIFY(!started(run, after(50'000)).isRunning());
        QCOMPARE(ended(run, after(90'000)).shakenBeforeMs, 40'000);
        QCOMPARE(paused(run, after(90'000)).shakenBeforeMs, 40'000);
    }

    void newStartOfThePhoneFallsBackToTheWallClock() {
        const ShakeReading reborn{700, utcStart + 25'000, "boot-2"};
        const ShakeProgress now = progress(running(), reborn);
        QCOMPARE(now.shakenMs, 25'000);
        QVERIFY(now.interrupted);
        const ShakeRun run = ended(running(), reborn);
        QVERIFY(run.interrupted);
        QCOMPARE(run.shakenBeforeMs, 25'000);
    }

    void newStartAndAClockSetBackGiveNoNegativeTime() {
        const ShakeProgress now = progress(running(), {700, utcStart - 86'400'000, "boot-2"});
        QCOMPARE(now.shakenMs, 0);
        QCOMPARE(now.leftMs, 60'000);
        QVERIFY(now.interrupted);
    }

    void wallClockSetIsNoticedAndNotBelieved_data() {
        QTest::addColumn<qint64>("shiftMs");
        QTest::addColumn<bool>("interrupted");
        QTest::newRow("nudged by the network") << qint64{1'900} << false;
        QTest::newRow("nudged back") << qint64{-1'900} << false;
        QTest::newRow("two seconds and a bit") << qint64{2'001} << true;
        QTest::newRow("back an hour") << qint64{-3'600'000} << true;
        QTest::newRow("on a day") << qint64{86'400'000} << true;
    }
    void wallClockSetIsNoticedAndNotBelieved() {
        QFETCH(const qint64, shiftMs);
        ShakeReading reading = after(30'000);
        reading.utcMs += shiftMs;
        const ShakeProgress now = progress(running(), reading);
        QCOMPARE(now.shakenMs, 30'000); // the boot clock is the truth
        QTEST(now.interrupted, "interrupted");
    }

    void interruptedStaysInterrupted() {
        ShakeReading reading = after(30'000);
        reading.utcMs += 60'000;
        ShakeRun run = paused(running(), reading);
        QVERIFY(run.interrupted);
        run = started(run, after(100'000));
        QVERIFY(progress(run, after(101'000)).interrupted);
        QVERIFY(ended(run, after(101'000)).interrupted);
    }

    void bootClockThatJumpsBackGivesNoNegativeTime() { // no phone should; one that does harms nothing
        ShakeReading reading = after(30'000);
        reading.bootMs = bootStart - 1;
        const ShakeProgress now = progress(running(), reading);
        QCOMPARE(now.shakenMs, 0);
        QVERIFY(now.interrupted);
    }
};

QTEST_GUILESS_MAIN(RecordsShakeTest)
#include "records_shake.moc"
