// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Distances, and which yard this is.
#include "place/geometry.h"
#include "place/yards.h"

#include <QTest>

#include <cmath>
#include <limits>

using namespace halfcup::place;

namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

Stamp stampAt(const Place& place, double accuracyM = 5.0) {
    Stamp stamp;
    stamp.latitudeDeg = place.latitudeDeg;
    stamp.longitudeDeg = place.longitudeDeg;
    stamp.accuracyM = accuracyM;
    stamp.fixesUsed = 8;
    return stamp;
}

YardPlace yard(const char* id, const Place& place, double reachM = kYardReachM) {
    return {id, std::string("Yard ") + id, place.latitudeDeg, place.longitudeDeg, reachM};
}

const Place kHome{50.84020, 4.34708};

} // namespace

class PlaceYardsTest : public QObject {
    Q_OBJECT

private slots:
    void distancesAgreeWithOutsideFigures_data() {
        QTest::addColumn<double>("lat1");
        QTest::addColumn<double>("lon1");
        QTest::addColumn<double>("lat2");
        QTest::addColumn<double>("lon2");
        QTest::addColumn<double>("metres");
        QTest::addColumn<double>("tolerance"); // relative
        // Sphere of 6 371 008.8 m: a quarter of a great circle is pi/2 radii, 10 007 557.2 m (by hand).
        QTest::newRow("equator to pole") << 0.0 << 10.0 << 90.0 << 0.0 << 10007557.2 << 1e-8;
        QTest::newRow("half round the equator") << 0.0 << -90.0 << 0.0 << 90.0 << 20015114.4 << 1e-8;
        QTest::newRow("one degree of latitude") << 45.0 << 7.0 << 46.0 << 7.0 << 111195.080 << 1e-7;
        QTest::newRow("over the pole") << 89.0 << 0.0 << 89.0 << 180.0 << 222390.16 << 1e-7;
        // The metre was defined so that pole to equator on the ellipsoid is 10 001 965.729 m (WGS 84 meridian
        // quadrant, from memory); the sphere must be within the 0.6 % that yards.h promises.
        QTest::newRow("meridian quadrant of WGS 84") << 0.0 << 3.0 << 90.0 << 3.0 << 10001965.729 << 0.006;
        // Flinders Peak to Buninyon, 54 972.271 m on GRS 80: the worked example of the Geocentric Datum of
        // Australia technical manual for Vincenty's formula (from memory).
        QTest::newRow("Flinders Peak to Buninyon")
            << -37.95103341666667 << 144.42486788888888 << -37.65282113888889 << 143.92649552777777
            << 54972.271 << 0.006;
        QTest::newRow("the same place") << 50.0 << 4.0 << 50.0 << 4.0 << 0.0 << 0.0;
        QTest::newRow("180 is -180") << 12.0 << 180.0 << 12.0 << -180.0 << 0.0 << 0.0;
    }
    void distancesAgreeWithOutsideFigures() {
        QFETCH(double, lat1);
        QFETCH(double, lon1);
        QFETCH(double, lat2);
        QFETCH(double, lon2);
        QFETCH(double, metres);
        QFETCH(double, tolerance);
        const double there = distanceM(lat1, lon1, lat2, lon2);
        QVERIFY2(std::abs(there - metres) <= tolerance * metres + 1e-6,
                 qPrintable(QString::number(there, 'f', 3)));
        QCOMPARE(distanceM(lat2, lon2, lat1, lon1), there);
    }

    void distanceOfNothingIsNaN() {
        QVERIFY(std::isnan(distanceM(kNaN, 0, 0, 0)));
        QVERIFY(std::isnan(distanceM(0, 0, 0, std::numeric_limits<double>::infinity())));
    }

    void offsetsGoThereAndBack() {
        for (const double lat : {-90.0, -89.99999, -27.21, 0.0, 50.84, 89.9999, 90.0}) {
            for (const double lon : {-180.0, -179.99999, -121.3, 0.5, 153.05, 179.99999}) {
                for (const Offset offset :
                     {Offset{0, 0}, Offset{3, -4}, Offset{-400, 0}, Offset{0, 20'000}}) {
                    const Place origin{lat, lon};
                    const Place there = placeAt(origin, offset);
                    QVERIFY(isPlace(there));
                    const double metres = std::hypot(offset.eastM, offset.northM);
                    QVERIFY(std::abs(distanceM(origin, there) - metres) < 1e-4);
                    const Offset back = offsetFrom(origin, there);
                    QVERIFY2(std::abs(back.eastM - offset.eastM) < 1e-3 &&
                                 std::abs(back.northM - offset.northM) < 1e-3,
                             qPrintable(QStringLiteral("%1 %2: %3 %4")
                                            .arg(lat)
                                            .arg(lon)
                                            .arg(back.eastM)
                                            .arg(back.northM)));
                }
            }
        }
    }

    void eastAndNorthAreWhereTheyBelong() {
        QVERIFY(placeAt(kHome, {100, 0}).longitudeDeg > kHome.longitudeDeg);
        QVERIFY(placeAt(kHome, {0, 100}).latitudeDeg > kHome.latitudeDeg);
        QVERIFY(placeAt({-27.2, 179.9999}, {100, 0}).longitudeDeg < -179.99);
    }

    void onlyYardAtHandIsHere() {
        const std::vector<YardPlace> yards{yard("a", placeAt(kHome, {60, 80}))};
        const auto answer = recogniseYard(stampAt(kHome), yards);
        QVERIFY(std::holds_alternative<Here>(answer));
        QCOMPARE(std::get<Here>(answer).id, std::string("a"));
        QVERIFY(std::abs(std::get<Here>(answer).distanceM - 100.0) < 1e-3);
    }

    void noYardsGiveNone() {
        const auto answer = recogniseYard(stampAt(kHome), {});
        QVERIFY(std::holds_alternative<NoYard>(answer));
        QVERIFY(!std::get<NoYard>(answer).nearest);
    }

    void reachGrowsWithTheAccuracy() {
        const std::vector<YardPlace> yards{yard("far", placeAt(kHome, {0, 900})),
                                           yard("a", placeAt(kHome, {170, 0}))};
        const auto sharp = recogniseYard(stampAt(kHome, 5), yards);
        QVERIFY(std::holds_alternative<NoYard>(sharp));
        QCOMPARE(std::get<NoYard>(sharp).nearest->id, std::string("a"));
        QVERIFY(std::abs(std::get<NoYard>(sharp).nearest->distanceM - 170) < 1e-3);
        QVERIFY(std::holds_alternative<Here>(recogniseYard(stampAt(kHome, 25), yards)));
    }

    void fourHundredMetresAreToldApart() {
        const std::vector<YardPlace> yards{yard("east", placeAt(kHome, {400, 0})), yard("home", kHome)};
        for (const double accuracyM : {1.0, 5.0, 20.0, 60.0, 150.0}) {
            const auto answer = recogniseYard(stampAt(placeAt(kHome, {10, 5}), accuracyM), yards);
            QVERIFY2(std::holds_alternative<Here>(answer), qPrintable(QString::number(accuracyM)));
            QCOMPARE(std::get<Here>(answer).id, std::string("home"));
        }
    }

    void fortyMetresAreToldApartOnlyBySharpFixes() {
        const std::vector<YardPlace> yards{yard("b", placeAt(kHome, {40, 0})), yard("a", kHome)};
        QVERIFY(std::holds_alternative<Here>(recogniseYard(stampAt(kHome, 5), yards)));
        const auto answer = recogniseYard(stampAt(kHome, 15), yards);
        QVERIFY(std::holds_alternative<Ambiguous>(answer));
        const auto& close = std::get<Ambiguous>(answer).yards;
        QCOMPARE(close.size(), std::size_t(2));
        QCOMPARE(close[0].id, std::string("a"));
        QCOMPARE(close[1].id, std::string("b"));
        // Half way between the two no receiver helps.
        QVERIFY(std::holds_alternative<Ambiguous>(recogniseYard(stampAt(placeAt(kHome, {20, 0}), 1), yards)));
    }

    void theQuestionNamesOnlyYardsThatCanBeMeant() {
        const std::vector<YardPlace> yards{yard("a", kHome), yard("b", placeAt(kHome, {20, 0})),
                                           yard("c", placeAt(kHome, {140, 0}))};
        const auto answer = recogniseYard(stampAt(kHome, 5), yards);
        QVERIFY(std::holds_alternative<Ambiguous>(answer));
        QCOMPARE(std::get<Ambiguous>(answer).yards.size(), std::size_t(2));
    }

    void aCoarseStampAsksEvenAboutOneYard() {
        const std::vector<YardPlace> yards{yard("a", placeAt(kHome, {300, 0}))};
        const auto answer = recogniseYard(stampAt(kHome, 300), yards);
        QVERIFY(std::holds_alternative<Ambiguous>(answer));
        QCOMPARE(std::get<Ambiguous>(answer).yards.size(), std::size_t(1));
    }

    void acrossTheAntimeridianAndAtThePole() {
        const Place east{-16.5, 179.9999};
        const std::vector<YardPlace> yards{yard("west", {-16.5, -179.9999}), yard("far", {-16.5, 179.99})};
        const auto answer = recogniseYard(stampAt(east), yards);
        QVERIFY(std::holds_alternative<Here>(answer));
        QCOMPARE(std::get<Here>(answer).id, std::string("west"));
        QVERIFY(std::get<Here>(answer).distanceM < 25.0);
        const std::vector<YardPlace> pole{yard("pole", {90, 0})};
        QVERIFY(std::holds_alternative<Here>(recogniseYard(stampAt({89.9995, 123}), pole)));
    }

    void yardsWithoutAPlaceAreLeftOut() {
        const std::vector<YardPlace> yards{yard("none", {0, 0}), yard("nan", {kNaN, 4}), yard("out", {95, 4}),
                                           yard("a", placeAt(kHome, {20, 0}), kNaN),
                                           yard("z", placeAt(kHome, {400, 0}), -5)};
        const auto answer = recogniseYard(stampAt(kHome), yards);
        QVERIFY(std::holds_alternative<Here>(answer));
        QCOMPARE(std::get<Here>(answer).id, std::string("a"));
    }

    void aStampThatIsNoPlaceFindsNoYard() {
        const std::vector<YardPlace> yards{yard("a", kHome)};
        QVERIFY(std::holds_alternative<NoYard>(recogniseYard(stampAt({kNaN, 4}), yards)));
        QVERIFY(std::holds_alternative<NoYard>(recogniseYard(stampAt({0, 0}), yards)));
        QVERIFY(std::holds_alternative<Here>(recogniseYard(stampAt(kHome, kNaN), yards)));
    }
};

QTEST_GUILESS_MAIN(PlaceYardsTest)
#include "place_yards.moc"
