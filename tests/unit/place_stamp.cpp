// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Fixes, their quality, and the stamp that is made of many.
#include "place/geometry.h"
#include "place/stamp.h"

#include <QTest>

#include <cmath>
#include <limits>
#include <random>

using namespace halfcup::place;

namespace {

constexpr std::int64_t kNow = 1'782'000'000'000; // a day in 2026
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInf = std::numeric_limits<double>::infinity();

Fix fixAt(double lat, double lon, std::optional<double> accuracyM = 5.0, std::int64_t takenAt = kNow) {
    Fix fix;
    fix.latitudeDeg = lat;
    fix.longitudeDeg = lon;
    fix.accuracyM = accuracyM;
    fix.takenAtUtcMs = takenAt;
    fix.receiverUtcMs = takenAt;
    fix.source = "test";
    return fix;
}

Fix fixNear(const Place& place, double eastM, double northM, std::optional<double> accuracyM,
            std::int64_t takenAt) {
    const Place at = placeAt(place, {eastM, northM});
    return fixAt(at.latitudeDeg, at.longitudeDeg, accuracyM, takenAt);
}

} // namespace

class PlaceStampTest : public QObject {
    Q_OBJECT

private slots:
    void judgesFixes_data() {
        QTest::addColumn<double>("lat");
        QTest::addColumn<double>("lon");
        QTest::addColumn<double>("accuracyM"); // -1 = not said
        QTest::addColumn<qint64>("ageMs");
        QTest::addColumn<int>("verdict");
        auto row = [](const char* name, double lat, double lon, double acc, qint64 age, FixVerdict v) {
            QTest::newRow(name) << lat << lon << acc << age << static_cast<int>(v);
        };
        row("good", 50, 4, 5, 0, FixVerdict::Usable);
        row("accuracy not said", 50, 4, -1, 0, FixVerdict::Usable);
        row("accuracy NaN", 50, 4, kNaN, 0, FixVerdict::Usable);
        row("on the equator", 0, 4, 5, 0, FixVerdict::Usable);
        row("on the first meridian", 50, 0, 5, 0, FixVerdict::Usable);
        row("a hair off 0/0", 1e-9, 0, 5, 0, FixVerdict::Usable);
        row("0/0", 0, 0, 5, 0, FixVerdict::NullIsland);
        row("-0/0", -0.0, 0, 5, 0, FixVerdict::NullIsland);
        row("north pole", 90, 12, 5, 0, FixVerdict::Usable);
        row("antimeridian", 10, -180, 5, 0, FixVerdict::Usable);
        row("beyond the pole", std::nextafter(90.0, 91.0), 0, 5, 0, FixVerdict::OutOfRange);
        row("beyond the antimeridian", 10, std::nextafter(180.0, 181.0), 5, 0, FixVerdict::OutOfRange);
        row("latitude and longitude swapped", 153, -27, 5, 0, FixVerdict::OutOfRange);
        row("NaN latitude", kNaN, 4, 5, 0, FixVerdict::NoCoordinates);
        row("infinite longitude", 50, -kInf, 5, 0, FixVerdict::NoCoordinates);
        row("500 m", 50, 4, 500, 0, FixVerdict::Usable);
        row("501 m", 50, 4, 501, 0, FixVerdict::TooCoarse);
        row("infinitely coarse", 50, 4, kInf, 0, FixVerdict::TooCoarse);
        row("30 s old", 50, 4, 5, 30'000, FixVerdict::Usable);
        row("older than 30 s", 50, 4, 5, 30'001, FixVerdict::Stale);
        row("from the future", 50, 4, 5, -86'400'000, FixVerdict::Usable);
    }
    void judgesFixes() {
        QFETCH(double, lat);
        QFETCH(double, lon);
        QFETCH(double, accuracyM);
        QFETCH(qint64, ageMs);
        QFETCH(int, verdict);
        const auto accuracy = accuracyM == -1 ? std::nullopt : std::optional<double>(accuracyM);
        const Fix fix = fixAt(lat, lon, accuracy, kNow - ageMs);
        QCOMPARE(static_cast<int>(judge(fix, kNow)), verdict);
        QCOMPARE(isUsable(fix, kNow), verdict == static_cast<int>(FixVerdict::Usable));
        QVERIFY(std::string_view(wordsFor(judge(fix, kNow))).size() > 3);
    }

    void accuracyIsNeverTakenAtZeroOrBelow() {
        QCOMPARE(effectiveAccuracyM(fixAt(1, 1, 7.0)), 7.0);
        for (const auto said :
             {std::optional<double>(), std::optional(0.0), std::optional(-3.0), std::optional(kNaN)})
            QCOMPARE(effectiveAccuracyM(fixAt(1, 1, said)), kUnknownAccuracyM);
        QCOMPARE(effectiveAccuracyM(fixAt(1, 1, 0.02)), kBestAccuracyM);
        // Handbook section 9: a phone in the open, 4.9 m at 95 %.
        QCOMPARE(kOpenSkyAccuracyM, 4.9);
        QVERIFY(kUnknownAccuracyM > kOpenSkyAccuracyM);
    }

    void ageDoesNotOverflow() {
        constexpr auto least = std::numeric_limits<std::int64_t>::min();
        constexpr auto most = std::numeric_limits<std::int64_t>::max();
        QCOMPARE(ageMs(5, 12), std::int64_t(7));
        QCOMPARE(ageMs(12, 5), std::int64_t(0));
        QCOMPARE(ageMs(least, most), most);
        QCOMPARE(ageMs(most, least), std::int64_t(0));
    }

    void aReplayedLogIsNewAndARememberedPlaceIsOld() {
        const std::int64_t years = 5LL * 365 * 86'400'000;
        QCOMPARE(resolveTakenAtUtcMs(kNow, kNow - years, ReceiverClock::Foreign), kNow);
        QCOMPARE(resolveTakenAtUtcMs(kNow, kNow - years, ReceiverClock::OurOwn), kNow - years);
        QCOMPARE(resolveTakenAtUtcMs(kNow, kNow - 1500, ReceiverClock::Foreign), kNow - 1500);
        QCOMPARE(resolveTakenAtUtcMs(kNow, kNow - 10'001, ReceiverClock::Foreign), kNow);
        QCOMPARE(resolveTakenAtUtcMs(kNow, kNow + 1, ReceiverClock::Foreign), kNow);
        QCOMPARE(resolveTakenAtUtcMs(kNow, kNow + years, ReceiverClock::OurOwn), kNow);
        QCOMPARE(resolveTakenAtUtcMs(kNow, std::nullopt, ReceiverClock::OurOwn), kNow);
    }

    void widenedRadiusHoldsNinetyFiveOfAHundred() {
        // Against 200,000 draws of a round normal scatter, not against the formula again.
        std::mt19937_64 chance(20260611);
        std::normal_distribution<double> axis;
        std::vector<double> distances;
        for (int i = 0; i < 200'000; ++i)
            distances.push_back(std::hypot(axis(chance), axis(chance)));
        std::sort(distances.begin(), distances.end());
        const double r68 = distances[distances.size() * 68 / 100];
        const double r95 = distances[distances.size() * 95 / 100];
        QVERIFY2(std::abs(widenTo95(r68) / r95 - 1.0) < 0.01,
                 qPrintable(QString::number(widenTo95(r68) / r95)));
    }

    // ---- stamp

    void noFixesGiveNoStamp() {
        StampBuilder builder;
        builder.start(kNow);
        QVERIFY(!builder.stamp(kNow));
        builder.add(fixAt(0, 0), kNow);
        builder.add(fixAt(kNaN, 4), kNow);
        builder.add(fixAt(95, 4), kNow);
        builder.add(fixAt(50, 4, 5000), kNow);
        builder.add(fixAt(50, 4, 5, kNow - 40'000), kNow);
        QVERIFY(!builder.stamp(kNow));
        const SkipCounts skipped = builder.skipped();
        QCOMPARE(skipped.nullIsland, 1);
        QCOMPARE(skipped.noCoordinates, 1);
        QCOMPARE(skipped.outOfRange, 1);
        QCOMPARE(skipped.tooCoarse, 1);
        QCOMPARE(skipped.stale, 1);
        QCOMPARE(skipped.total(), 5);
        QCOMPARE(builder.taken(), 0);
    }

    void aSingleFixIsAStampOfItsOwnAccuracy() {
        StampBuilder builder;
        builder.start(kNow);
        builder.add(fixAt(50.25, 4.5, 12.0, kNow - 2000), kNow);
        const auto stamp = builder.stamp(kNow + 1000);
        QVERIFY(stamp);
        QCOMPARE(stamp->latitudeDeg, 50.25);
        QCOMPARE(stamp->longitudeDeg, 4.5);
        QVERIFY(std::abs(stamp->accuracyM - 12.0) < 1e-9);
        QCOMPARE(stamp->fixesUsed, 1);
        QCOMPARE(stamp->ageMs, std::int64_t(3000));
        QCOMPARE(stamp->takenAtUtcMs, kNow - 2000);
        QCOMPARE(stamp->source, std::string("test"));
        QVERIFY(!stamp->moving);
    }

    void betterFixesWeighMore() {
        StampBuilder builder;
        builder.start(kNow);
        const Place here{50, 4};
        builder.add(fixNear(here, 0, 0, 3.0, kNow), kNow);
        builder.add(fixNear(here, 10, 0, 6.0, kNow + 1), kNow + 1);
        const auto stamp = builder.stamp(kNow + 1);
        QVERIFY(stamp);
        // Weights 1/9 and 1/36: the mean lies at 10 / 5 = 2 m.
        const double east = offsetFrom(here, {stamp->latitudeDeg, stamp->longitudeDeg}).eastM;
        QVERIFY2(std::abs(east - 2.0) < 1e-4, qPrintable(QString::number(east)));
    }

    void averagesAnywhereOnEarth_data() {
        QTest::addColumn<double>("lat");
        QTest::addColumn<double>("lon");
        QTest::newRow("temperate") << 50.84 << 4.347;
        QTest::newRow("south west") << -33.4 << -70.6;
        QTest::newRow("antimeridian, east side") << -16.5 << 179.99999;
        QTest::newRow("antimeridian, west side") << 65.0 << -179.99999;
        QTest::newRow("exactly 180") << 10.0 << 180.0;
        QTest::newRow("first meridian") << 51.5 << 0.0;
        QTest::newRow("north pole") << 90.0 << 0.0;
        QTest::newRow("near the north pole") << 89.99999 << 77.0;
        QTest::newRow("south pole") << -90.0 << 33.0;
        QTest::newRow("equator") << 0.0 << 100.0;
    }
    void averagesAnywhereOnEarth() {
        QFETCH(double, lat);
        QFETCH(double, lon);
        const Place truth{lat, lon};
        StampBuilder builder;
        builder.start(kNow);
        // Two rings of eight around the truth, in an order that is no walk; the mean is the truth.
        for (const int i : {0, 4, 2, 6, 1, 5, 3, 7, 0, 4, 2, 6, 1, 5, 3, 7}) {
            const double angle = i * std::acos(-1.0) / 4.0;
            const auto at = kNow + builder.taken() * 1000;
            builder.add(fixNear(truth, 2 * std::cos(angle), 2 * std::sin(angle), 5.0, at), at);
        }
        QCOMPARE(builder.taken(), 16);
        const auto stamp = builder.stamp(kNow + 8000);
        QVERIFY(stamp);
        const double offM = distanceM(truth, {stamp->latitudeDeg, stamp->longitudeDeg});
        QVERIFY2(offM < 0.01, qPrintable(QString::number(offM)));
        QVERIFY(std::abs(stamp->longitudeDeg) <= 180.0);
        QVERIFY(!stamp->moving);
        QCOMPARE(builder.progress(kNow + 16'000), StampBuilder::Progress::GoodEnough);
    }

    void accuracyFollowsTheDocumentedFormula() {
        StampBuilder builder;
        builder.start(kNow);
        for (int i = 0; i < 8; ++i)
            builder.add(fixAt(50, 4, 6.0, kNow + i), kNow + i);
        // All in one place: 6 * sqrt(4/5 + 1/40) = 5.449771 by hand.
        QVERIFY(std::abs(builder.stamp(kNow + 8)->accuracyM - 5.449771) < 1e-6);
    }

    void aLoneJumpIsLeftOut() {
        StampBuilder builder;
        builder.start(kNow);
        const Place here{50, 4};
        for (int i = 0; i < 8; ++i) {
            const double wobbleM = i % 2 == 0 ? 1.0 : -1.0;
            builder.add(fixNear(here, i == 3 ? 600.0 : wobbleM, 0, 5.0, kNow + i), kNow + i);
        }
        const auto stamp = builder.stamp(kNow + 8);
        QVERIFY(stamp);
        QCOMPARE(stamp->fixesUsed, 7);
        QCOMPARE(stamp->fixesSkipped, 1);
        QCOMPARE(builder.skipped().jumped, 1);
        QVERIFY(distanceM(here, {stamp->latitudeDeg, stamp->longitudeDeg}) < 1.0);
    }

    void enoughIsCountedWithoutTheJumps() {
        StampBuilder builder;
        builder.start(kNow);
        const Place here{50, 4};
        for (int i = 0; i < 16; ++i) {
            QCOMPARE(builder.progress(kNow + i), StampBuilder::Progress::Collecting);
            builder.add(fixNear(here, i == 3 ? 600.0 : 0.0, 0, 5.0, kNow + i), kNow + i);
        }
        QCOMPARE(builder.progress(kNow + 16), StampBuilder::Progress::GoodEnough);
    }

    void swappedSignsAreAJump() {
        StampBuilder builder;
        builder.start(kNow);
        for (int i = 0; i < 7; ++i)
            builder.add(fixAt(-27.21, i == 2 ? -153.05 : 153.05, 5.0, kNow + i), kNow + i);
        const auto stamp = builder.stamp(kNow + 8);
        QVERIFY(stamp);
        QCOMPARE(stamp->fixesUsed, 6);
        QVERIFY(distanceM(Place{-27.21, 153.05}, {stamp->latitudeDeg, stamp->longitudeDeg}) < 0.1);
    }

    void twoFixesThatContradictEachOtherAreNotTrusted() {
        StampBuilder builder;
        builder.start(kNow);
        builder.add(fixAt(50.0, 4.0, 5.0, kNow), kNow);
        builder.add(fixAt(50.01, 4.0, 5.0, kNow + 1), kNow + 1); // 1.1 km on
        const auto stamp = builder.stamp(kNow + 1);
        QVERIFY(stamp);
        QVERIFY2(stamp->accuracyM > 500.0, qPrintable(QString::number(stamp->accuracyM)));
    }

    void walkingIsToldAndNeverGoodEnough() {
        StampBuilder builder;
        builder.start(kNow);
        const Place here{50, 4};
        for (int i = 0; i < 12; ++i) // 1.4 m/s, a walk
            builder.add(fixNear(here, 1.4 * i, 0, 4.9, kNow + 1000 * i), kNow + 1000 * i);
        const auto stamp = builder.stamp(kNow + 12'000);
        QVERIFY(stamp);
        QVERIFY(stamp->moving);
        QCOMPARE(builder.progress(kNow + 12'000), StampBuilder::Progress::Collecting);
        QCOMPARE(builder.progress(kNow + 30'000), StampBuilder::Progress::TimedOut);
        QVERIFY(builder.stamp(kNow + 30'000));
    }

    void drivingIsToldTooAndWidensTheAccuracy() {
        StampBuilder builder;
        builder.start(kNow);
        for (int i = 0; i < 20; ++i)
            builder.add(fixNear({50, 4}, 20.0 * i, 0, 4.9, kNow + 1000 * i), kNow + 1000 * i);
        const auto stamp = builder.stamp(kNow + 20'000);
        QVERIFY(stamp && stamp->moving);
        QVERIFY2(stamp->accuracyM > 150.0, qPrintable(QString::number(stamp->accuracyM)));
    }

    void stillReceiverWithNoiseIsNotMovingAndItsAccuracyHolds() {
        // Independent normal errors of 4.9 m (95 %): the truth must lie inside the stated radius in at least
        // 95 % of 2000 stamps, and a still keeper must not be called moving often.
        std::mt19937_64 chance(7);
        std::normal_distribution<double> axis(0.0, 4.9 / std::sqrt(-2.0 * std::log(0.05)));
        const Place truth{44.07, -121.31};
        int inside = 0;
        int moving = 0;
        for (int round = 0; round < 2000; ++round) {
            StampBuilder builder;
            builder.start(kNow);
            for (int i = 0; i < 8; ++i) {
                const auto at = kNow + 1000 * i;
                builder.add(fixNear(truth, axis(chance), axis(chance), 4.9, at), at);
            }
            const auto stamp = builder.stamp(kNow + 8000);
            QVERIFY(stamp);
            inside += distanceM(truth, {stamp->latitudeDeg, stamp->longitudeDeg}) <= stamp->accuracyM;
            moving += stamp->moving;
        }
        QVERIFY2(inside >= 1900, qPrintable(QString::number(inside)));
        QVERIFY2(moving <= 40, qPrintable(QString::number(moving)));
    }

    void aFrozenReceiverIsCountedOnce() {
        StampBuilder builder;
        builder.start(kNow);
        Fix fix = fixAt(50, 4);
        QCOMPARE(builder.add(fix, kNow), StampBuilder::Taken::Yes);
        for (int i = 1; i < 10; ++i) {
            fix.takenAtUtcMs = kNow + 1000 * i; // arrives again and again, says the same time
            QCOMPARE(builder.add(fix, kNow + 1000 * i), StampBuilder::Taken::Repeated);
        }
        QCOMPARE(builder.stamp(kNow)->fixesUsed, 1);
        QCOMPARE(builder.skipped().repeated, 9);
        // Without a time nobody can know, so they count.
        fix.receiverUtcMs.reset();
        QCOMPARE(builder.add(fix, kNow + 20'000), StampBuilder::Taken::Yes);
        QCOMPARE(builder.add(fix, kNow + 21'000), StampBuilder::Taken::Yes);
    }

    void coarseFixesWaitForTheTimeout() {
        StampBuilder builder;
        builder.start(kNow);
        for (int i = 0; i < 29; ++i)
            builder.add(fixAt(50, 4, 40.0, kNow + 1000 * i), kNow + 1000 * i);
        QCOMPARE(builder.progress(kNow + 29'999), StampBuilder::Progress::Collecting);
        QCOMPARE(builder.progress(kNow + 30'000), StampBuilder::Progress::TimedOut);
        QCOMPARE(builder.progress(kNow - 1), StampBuilder::Progress::TimedOut); // clock set back
    }

    void oldFixesLeaveTheWindow() {
        StampBuilder builder;
        builder.start(kNow);
        builder.add(fixAt(50, 4, 5, kNow), kNow);
        builder.add(fixAt(50, 4.001, 5, kNow + 61'000), kNow + 61'000);
        const auto stamp = builder.stamp(kNow + 61'000);
        QCOMPARE(stamp->fixesUsed, 1);
        QCOMPARE(stamp->longitudeDeg, 4.001);
        QVERIFY(builder.stamp(kNow + 661'000));
        QVERIFY(!builder.stamp(kNow + 661'001)); // ten minutes on, the keeper has walked on
    }

    void manyFixesStayBounded() {
        StampBuilder builder;
        builder.start(kNow);
        for (int i = 0; i < 100'000; ++i)
            builder.add(fixAt(50, 4, 5, kNow + i / 10), kNow + i / 10);
        QVERIFY(builder.stamp(kNow + 10'000)->fixesUsed <= static_cast<int>(kMostFixes));
    }

    void startForgetsEverything() {
        StampBuilder builder;
        builder.start(kNow);
        builder.add(fixAt(50, 4), kNow);
        builder.add(fixAt(0, 0), kNow);
        builder.start(kNow + 5);
        QVERIFY(!builder.stamp(kNow + 5));
        QCOMPARE(builder.skipped().total(), 0);
        QCOMPARE(builder.taken(), 0);
        QCOMPARE(builder.add(fixAt(50, 4), kNow + 5), StampBuilder::Taken::Yes); // not "repeated"
    }

    void anyNumbersAtAllGiveAStampOrNone() {
        std::mt19937_64 chance(99);
        const std::vector<double> odd{0.0,   -0.0, 90,   -90,   180,        -180, 1e-300,
                                      1e300, kNaN, kInf, -kInf, 89.9999999, 4};
        for (int round = 0; round < 300; ++round) {
            StampBuilder builder;
            builder.start(kNow);
            for (int i = 0; i < 20; ++i) {
                auto any = [&] { return odd[chance() % odd.size()]; };
                builder.add(fixAt(any(), any(), any(), static_cast<std::int64_t>(chance())), kNow);
            }
            const auto stamp = builder.stamp(kNow);
            if (stamp) {
                QVERIFY(std::abs(stamp->latitudeDeg) <= 90.0);
                QVERIFY(std::abs(stamp->longitudeDeg) <= 180.0);
                QVERIFY(stamp->accuracyM > 0.0);
            }
            (void)builder.progress(kNow);
        }
    }
};

QTEST_GUILESS_MAIN(PlaceStampTest)
#include "place_stamp.moc"
