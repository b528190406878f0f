// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Clocks that are set, that cross into another zone and that sleep, in the middle of what a keeper does on
// the real pages. What was counted is kept whole, and no page believes a clock that was wrong.
#include "other_phone.h"
#include "screens.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace halfcup;
using namespace halfcup::screens;
using touch::ShakeController;
using touch::WashController;
using Row = touch::ColonyListModel::Entry;

namespace {

constexpr std::int64_t secondMs = 1000;
constexpr std::int64_t hourMs = 3'600'000;
constexpr std::int64_t dayMs = 24 * hourMs;

} // namespace

class ClockTest : public QObject {
    Q_OBJECT

    static device::SetClock& clock(Stage& stage) { return *stage.device().clock; }
    static ShakeController& shake(Stage& stage) { return *stage.app().wash()->shake(); }

    /// The pages look at the clock by themselves.
    static void look() { QTest::qWait(1100); }

    static void shift(Stage& stage, std::int64_t ms) {
        clock(stage).setUtc(clock(stage).now().utcMs + ms);
        look();
    }

    /// From the running shake to the answer.
    static bool finish(Stage& stage, int mites) {
        if (!pressMain(stage, 1))
            return false;
        stage.wait(31 * secondMs);
        if (!pressMain(stage, 1))
            return false;
        for (int i = 0; i < mites; ++i)
            stage.app().wash()->count()->tap();
        return pressMain(stage, 1) && stage.touch(QStringLiteral("skipRinse")) &&
               stage.find(QStringLiteral("answerPage"));
    }

    static records::Sample kept(Stage& stage) {
        return stage.program().store().sample(stage.app().wash()->sampleId().toStdString()).value();
    }

    /// What every wash here must have come to, whatever its clocks did.
    static bool isWhole(Stage& stage, int mites) {
        const records::Sample sample = kept(stage);
        const auto counts = stage.program().store().countEvents(sample.id);
        return sample.state == records::SampleState::Finished && sample.answer &&
               sample.answer->mites == mites && counts.size() == static_cast<std::size_t>(mites);
    }

    /// Another phone takes all of it in, and a third one from there.
    static int washesElsewhere(Stage& stage) {
        const QTemporaryDir folder;
        store::Outgoing out(stage.program().store());
        const QString path = folder.filePath(QStringLiteral("all.halfcup"));
        const std::int64_t now = clock(stage).now().utcMs;
        if (exchange::writeSafely(
                path, [&](const exchange::ByteSink& sink) { exchange::writeExchange(out, sink, now); }))
            return -1;
        OtherPhone second(now);
        second.takeIn(path);
        OtherPhone third(now);
        third.takeIn(second.write(folder.path(), QStringLiteral("on.halfcup")));
        return third.store().sampleCount();
    }

    static const Row* rowOf(Stage& stage, const records::RecordId& colonyId) {
        const auto& entries = stage.app().here()->colonies()->entries();
        const auto found = std::ranges::find(entries, QString::fromStdString(colonyId), &Row::colonyId);
        return found == entries.end() ? nullptr : &*found;
    }

    static void goHome(Stage& stage) {
        stage.app().navigator()->home();
        stage.settle();
        stage.app().here()->refresh();
    }

private slots:
    void thePhoneSleepsInTheShake() {
        Stage stage(Stage::Demo);
        QVERIFY(pressMain(stage, 4));
        clock(stage).suspend(45 * secondMs);
        look();
        QCOMPARE(shake(stage).secondsLeft(), 15);
        QCOMPARE(shake(stage).phase(), ShakeController::SecondHalf);
        QVERIFY(!shake(stage).isInterrupted());
        QCOMPARE(stage.device().tones->count(device::Tone::End), 0);
        clock(stage).suspend(hourMs);
        look();
        QCOMPARE(shake(stage).phase(), ShakeController::Over);
        QCOMPARE(stage.device().tones->count(device::Tone::End), 1); // late, but it comes
        QVERIFY2(shake(stage).word().contains(QLatin1String("ago")), qPrintable(shake(stage).word()));
        QVERIFY(finish(stage, 3) && isWhole(stage, 3));
        QCOMPARE(kept(stage).shake.shakenBeforeMs, 60 * secondMs); // nobody shakes for an hour
        QVERIFY(!kept(stage).shake.interrupted);
    }

    void thePhoneStartsAnewInTheShake() {
        Stage stage(Stage::Demo);
        QVERIFY(pressMain(stage, 4));
        clock(stage).advance(20 * secondMs);
        clock(stage).reboot(15 * secondMs);
        look();
        QCOMPARE(shake(stage).secondsLeft(), 25); // the wall clock is what is left
        QVERIFY(shake(stage).isInterrupted());
        stage.wait(26 * secondMs);
        QVERIFY2(shake(stage).word().contains(QLatin1String("guess")), qPrintable(shake(stage).word()));
        QVERIFY(finish(stage, 2) && isWhole(stage, 2));
        QVERIFY(kept(stage).shake.interrupted);
    }

    void setBackADayInTheShake() {
        Stage stage(Stage::Demo);
        const std::int64_t start = clock(stage).now().utcMs;
        QVERIFY(pressMain(stage, 4));
        clock(stage).advance(20 * secondMs);
        shift(stage, -dayMs);
        QCOMPARE(shake(stage).secondsLeft(), 40); // not a day and 40 seconds
        QVERIFY(shake(stage).isInterrupted());
        stage.wait(41 * secondMs);
        QCOMPARE(stage.device().tones->count(device::Tone::End), 1);
        const int before = stage.program().store().sampleCount();
        QVERIFY(finish(stage, 4) && isWhole(stage, 4));
        QCOMPARE(stage.program().store().sampleCount(), before + 1);
        const records::Sample sample = kept(stage);
        QVERIFY(sample.scoopedAtMs.value() >= start); // when it was scooped, not what the clock says now
        QVERIFY(sample.finishedAtMs.value() < start);
        QCOMPARE(washesElsewhere(stage), before + 1);
    }

    void setBackADayWhileItSettles() {
        Stage stage(Stage::Demo);
        QVERIFY(pressMain(stage, 4));
        stage.wait(61 * secondMs);
        QVERIFY(pressMain(stage, 1));
        QVERIFY(stage.app().wash()->settleSecondsLeft() > 0);
        shift(stage, -dayMs);
        QCOMPARE(stage.app().wash()->settleSecondsLeft(), 0); // nobody waits for a day
        QVERIFY(pressMain(stage, 1));
        QCOMPARE(stage.app().wash()->step(), WashController::Count);
    }

    // The order of the taps is that of the finger, also where each tap's time is before the one before it.
    void setBackBetweenTheTaps() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheCount(stage));
        touch::CountController& count = *stage.app().wash()->count();
        for (int i = 0; i < 5; ++i) {
            count.tap();
            shift(stage, -hourMs);
        }
        QVERIFY(stage.touch(QStringLiteral("undo")));
        QCOMPARE(count.mites(), 4);
        QVERIFY(count.type(QStringLiteral("11")));
        count.tap();
        QCOMPARE(count.mites(), 12);
        const QString id = stage.app().wash()->sampleId();
        stage.app().wash()->pause();
        QVERIFY(stage.app().wash()->resume(id)); // added up anew from what is on the disk
        QCOMPARE(stage.app().wash()->count()->mites(), 12);
    }

    void aYearAheadForOneWashAndBack() {
        Stage stage(Stage::Demo);
        clock(stage).advance(40 * dayMs);
        goHome(stage);
        const QString colony = stage.app().here()->colonies()->entries().first().colonyId;
        const Row before = *rowOf(stage, colony.toStdString());
        QVERIFY(before.isDue);
        shift(stage, 365 * dayMs);
        stage.app().wash()->begin(stage.app().here()->yardId(), colony);
        stage.app().wash()->queenSafe();
        stage.app().wash()->scooped();
        stage.app().wash()->poured();
        stage.app().navigator()->open(touch::Navigator::Wash);
        stage.wait(61 * secondMs);
        QVERIFY(finish(stage, 30) && isWhole(stage, 30));
        const records::Sample sample = kept(stage);
        goHome(stage);
        QVERIFY(!rowOf(stage, colony.toStdString())->isDue);

        shift(stage, -365 * dayMs);
        goHome(stage);
        const Row* after = rowOf(stage, colony.toStdString());
        QCOMPARE(after->dueLine, before.dueLine); // not "Due in 395 days"
        QCOMPARE(after->loadLine, before.loadLine);
        QCOMPARE(after->isDue, before.isDue);
        stage.app().here()->openColony(colony);
        stage.settle();
        const auto& story = stage.app().colony()->story()->entries();
        const auto told =
            std::ranges::find(story, QStringLiteral("wash-") + QString::fromStdString(sample.id),
                              &touch::ChoiceListModel::Entry::key);
        QVERIFY(told != story.end()); // kept, and shown with what is wrong about it
        QVERIFY2(told->note.contains(QLatin1String("still to come")), qPrintable(told->note));
        QVERIFY(!std::ranges::any_of(story, [&](const touch::ChoiceListModel::Entry& entry) {
            return entry.key != told->key && entry.note.contains(QLatin1String("still to come"));
        }));
        if (const QString pictures = qEnvironmentVariable("HALFCUP_PICTURES"); !pictures.isEmpty()) {
            stage.scrollTo(stage.find(told->key));
            stage.picture().save(pictures + QStringLiteral("/clock_ahead.png"));
        }

        // Once its day has come it counts like any other.
        shift(stage, 366 * dayMs);
        goHome(stage);
        QVERIFY(rowOf(stage, colony.toStdString())->loadLine != before.loadLine);
    }

    // What is written last wins, here and on every other phone, though the clock went back a year between.
    void theLaterWordWinsThoughTheClockWentBack() {
        Stage stage(Stage::Demo);
        store::Store& store = stage.program().store();
        records::Yard yard = store.yards().front();
        OtherPhone other(clock(stage).now().utcMs);
        const QTemporaryDir folder;
        const auto handOver = [&] {
            store::Outgoing out(store);
            const QString path = folder.filePath(QStringLiteral("hand.halfcup"));
            const std::int64_t now = clock(stage).now().utcMs;
            static_cast<void>(exchange::writeSafely(
                path, [&](const exchange::ByteSink& sink) { exchange::writeExchange(out, sink, now); }));
            other.takeIn(path);
        };
        shift(stage, 365 * dayMs);
        yard.name = "Written a year ahead";
        store.save(yard);
        handOver();
        shift(stage, -365 * dayMs);
        yard.name = "Written after it";
        store.save(yard);
        handOver();
        QCOMPARE(other.store().yard(yard.id)->name, yard.name);
        yard.name = "Written there"; // by a clock that was never wrong
        other.store().save(yard);
        store::Merge merge(store);
        QVERIFY(exchange::takeExchangeFile(merge, other.write(folder.path(), QStringLiteral("back.halfcup")))
                    .isWhole());
        merge.finish();
        merge.keep();
        QCOMPARE(store.yard(yard.id)->name, yard.name);
    }

    // Clocks go on and back an hour: 29 March and 25 October 2026, 01:00 UTC (Directive 2000/84/EC).
    void summerTimeBeginsOrEndsInTheShake_data() {
        QTest::addColumn<qint64>("changeUtcMs");
        QTest::addColumn<int>("from");
        QTest::addColumn<int>("to");
        QTest::newRow("begins") << qint64{1'774'746'000'000} << 60 << 120;
        QTest::newRow("ends") << qint64{1'792'890'000'000} << 120 << 60;
    }
    void summerTimeBeginsOrEndsInTheShake() {
        QFETCH(const qint64, changeUtcMs);
        QFETCH(const int, from);
        QFETCH(const int, to);
        Stage stage(Stage::Demo);
        clock(stage).setUtc(changeUtcMs - 10 * secondMs);
        clock(stage).setOffset(from);
        clock(stage).setOffsetFrom(changeUtcMs, to);
        goHome(stage);
        QVERIFY(pressMain(stage, 4));
        clock(stage).advance(20 * secondMs);
        look();
        QCOMPARE(shake(stage).secondsLeft(), 40);
        QVERIFY(!shake(stage).isInterrupted());
        stage.wait(41 * secondMs);
        QVERIFY(finish(stage, 1) && isWhole(stage, 1));
        const records::Sample sample = kept(stage);
        QCOMPARE(sample.utcOffsetMinutes, from); // what the keeper's watch showed at the scoop
        QVERIFY(sample.finishedAtMs.value() > sample.scoopedAtMs.value());
    }

    // Over a border, or the phone finds out where it is: the sample stays where and when it was taken.
    void anotherZoneInTheMiddleOfAWash() {
        Stage stage(Stage::Demo);
        clock(stage).setUtc(device::SetClock::kStartUtcMs + 14 * hourMs + 50 * 60 * secondMs); // 23:50 UTC
        clock(stage).setOffset(-60); // 22:50 on 15 June
        goHome(stage);
        QVERIFY(pressMain(stage, 4));
        clock(stage).setOffset(13 * 60); // 12:50 on 16 June
        stage.wait(61 * secondMs);
        QVERIFY(!shake(stage).isInterrupted());
        QVERIFY(finish(stage, 2) && isWhole(stage, 2));
        const records::Sample sample = kept(stage);
        QCOMPARE(sample.utcOffsetMinutes, -60);
        QCOMPARE(records::localDate({*sample.scoopedAtMs, sample.utcOffsetMinutes}),
                 (records::Date{2026, 6, 15}));
        goHome(stage);
        QVERIFY2(rowOf(stage, sample.colonyId)->loadLine.contains(QLatin1String("15 June")),
                 qPrintable(rowOf(stage, sample.colonyId)->loadLine));
    }

    // 29 February 2028.
    void aWashOnLeapDay() {
        Stage stage(Stage::Demo);
        constexpr std::int64_t leapDayUtcMs = 1'835'431'200'000; // 2028-02-29T10:00Z
        QCOMPARE(records::toRfc3339({leapDayUtcMs, 0}), std::string("2028-02-29T10:00:00Z"));
        clock(stage).setUtc(leapDayUtcMs);
        goHome(stage);
        QVERIFY(pressMain(stage, 4));
        stage.wait(61 * secondMs);
        QVERIFY(finish(stage, 6) && isWhole(stage, 6));
        const records::Sample sample = kept(stage);
        goHome(stage);
        QVERIFY2(rowOf(stage, sample.colonyId)->loadLine.contains(QLatin1String("29 February")),
                 qPrintable(rowOf(stage, sample.colonyId)->loadLine));
        for (const std::int64_t days : {1, 29, 30, 31, 365, 366}) { // each has its page, none its 29 February
            clock(stage).setUtc(leapDayUtcMs + days * dayMs);
            goHome(stage);
            QVERIFY(rowOf(stage, sample.colonyId));
            QVERIFY(stage.program().services().messages.text().isEmpty());
        }
        QCOMPARE(stage.program().services().today(), (records::Date{2029, 3, 1}));
        QVERIFY(washesElsewhere(stage) > 0);
    }
};

QTEST_MAIN(ClockTest)
#include "clock_test.moc"
