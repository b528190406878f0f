// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Where a hive stands, from the positions of its samples.
#include "place/geometry.h"
#include "place/hive_stand.h"

#include <QTest>

#include <array>
#include <cmath>
#include <limits>

using namespace halfcup;
using namespace halfcup::place;
using halfcup::records::Position;

namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

bool near(double a, double b, double within) {
    return std::abs(a - b) <= within;
}

} // namespace

class PlaceStandsTest : public QObject {
    Q_OBJECT

private slots:
    // WGS 84 gives 111 132.95 m - 559.85 m cos(2 lat) for a degree of latitude and 111 412.88 m cos(lat) -
    // 93.50 m cos(3 lat) for one of longitude (series of the National Geospatial-Intelligence Agency's
    // "Length of a Degree" calculator, from memory). Our sphere is within 0.6 % of it.
    void metresAreThoseOfTheEllipsoidWithinPointSixPercent() {
        const Position yard{48.1, 11.5, 5.0};
        const double rad = 48.1 * std::acos(-1.0) / 180;
        const double perLat = 111132.95 - 559.85 * std::cos(2 * rad);
        const double perLon = 111412.88 * std::cos(rad) - 93.50 * std::cos(3 * rad);
        const std::array samples{Position{48.1 + 30 / perLat, 11.5 + 40 / perLon, 5.0}};
        const auto stand = standFromPositions(samples, yard, 150);
        QVERIFY(stand);
        QVERIFY(near(stand->stand.northM, 30, 30 * 0.006));
        QVERIFY(near(stand->stand.eastM, 40, 40 * 0.006));
        QCOMPARE(stand->used, 1);
        QCOMPARE(stand->accuracyM, 5.0);
    }

    void theBetterPositionWeighsMore() {
        const Position yard{48.1, 11.5, {}};
        const auto at = [&](double eastM, double northM, std::optional<double> accuracyM) {
            const Place place = placeAt({yard.latitudeDeg, yard.longitudeDeg}, {eastM, northM});
            return Position{place.latitudeDeg, place.longitudeDeg, accuracyM};
        };
        // Weights 1/25 and 1/100: a mean at a fifth of the way, 1 / sqrt(0.05) = 4.47 m good.
        const auto mean = standFromPositions(std::array{at(0, 0, 5.0), at(20, -10, 10.0)}, yard, 150);
        QVERIFY(mean);
        QVERIFY(near(mean->stand.eastM, 4, 1e-3));
        QVERIFY(near(mean->stand.northM, -2, 1e-3));
        QVERIFY(near(mean->accuracyM, 4.4721, 1e-3));
        // No accuracy, or one that cannot be: as one that is not known, all alike.
        for (const double odd : {kNan, 0.0, -3.0}) {
            const auto half = standFromPositions(std::array{at(0, 0, {}), at(20, 0, odd)}, yard, 150);
            QVERIFY(half && near(half->stand.eastM, 10, 1e-3));
        }
        // A boast does not outweigh all others: not better than 1 m.
        const auto boast = standFromPositions(std::array{at(0, 0, 0.001), at(10, 0, 1.0)}, yard, 150);
        QVERIFY(boast && near(boast->stand.eastM, 5, 1e-3));
    }

    void westAndSouthAreNegative() {
        const Position yard{-33.4, -70.6, {}};
        const auto stand = standFromPositions(std::array{Position{-33.4001, -70.6001, 5.0}}, yard, 150);
        QVERIFY(stand && stand->stand.eastM < -9 && stand->stand.northM < -11);
    }

    void theAntimeridianAndThePolesAreNoEdges() {
        const Position yard{-17.0, 179.9999, {}};
        const auto over = standFromPositions(std::array{Position{-17.0, -179.9999, 5.0}}, yard, 150);
        QVERIFY(over); // 0.0002 degrees at 17 south: 111 195 m * cos(17) * 0.0002
        QVERIFY(near(over->stand.eastM, 111194.9 * std::cos(17 * std::acos(-1.0) / 180) * 0.0002, 0.01));
        const auto mean =
            meanPosition(std::array{Position{-17.0, 179.9999, 5.0}, Position{-17.0, -179.9999, 5.0}});
        QVERIFY(mean && near(std::abs(mean->longitudeDeg), 180, 1e-6));
        // On both sides of the pole: 0.0001 degrees are 11.1 m.
        const auto pole = meanPosition(std::array{Position{89.9999, 10, 5.0}, Position{89.9999, -170, 5.0}});
        QVERIFY(pole && near(pole->latitudeDeg, 90, 1e-5));
        const auto across =
            standFromPositions(std::array{Position{89.9999, -170, 5.0}}, Position{89.9999, 10, {}}, 150);
        QVERIFY(across && near(across->stand.northM, 22.24, 0.01));
    }

    void whatCannotBeIsLeftOut() {
        const Position yard{48.1, 11.5, {}};
        const Position good{48.1001, 11.5, 5.0};
        const auto alone = standFromPositions(std::array{good}, yard, 150);
        QVERIFY(alone);
        for (const Position& odd : {Position{0, 0, 5.0}, Position{kNan, 11.5, 5.0}, Position{91, 11.5, 5.0},
                                    Position{48.1, 200, 5.0}, Position{48.1, 11.5, 5000.0},
                                    Position{48.2, 11.5, 5.0}}) { // the last one 11 km away
            const auto with = standFromPositions(std::array{good, odd}, yard, 150);
            QVERIFY(with);
            QCOMPARE(with->used, 1);
            QCOMPARE(with->stand.northM, alone->stand.northM);
            QVERIFY(!standFromPositions(std::array{odd}, yard, 150));
        }
        QVERIFY(!standFromPositions({}, yard, 150));
        QVERIFY(!standFromPositions(std::array{good}, Position{0, 0, {}}, 150));
        QVERIFY(!standFromPositions(std::array{good}, Position{kNan, 0, {}}, 150));
        QVERIFY(standFromPositions(std::array{good}, yard, kNan));
        QVERIFY(!meanPosition({}));
        QVERIFY(!meanPosition(std::array{Position{0, 0, 5.0}}));
    }

    void theKeeperIsBelievedBeforeThePositions() {
        records::Yard yard;
        yard.id = "yard";
        yard.position = Position{48.1, 11.5, 5.0};
        const auto washed = [&](const char* colony, double eastM, const char* in = "yard") {
            records::Sample sample;
            sample.colonyId = colony;
            sample.yardId = in;
            const Place place = placeAt({48.1, 11.5}, {eastM, 0});
            sample.stamp.state = records::PositionState::Stamped;
            sample.stamp.position = {place.latitudeDeg, place.longitudeDeg, 5.0};
            return sample;
        };
        std::vector<records::Colony> colonies(4);
        const std::array ids{"put", "washed", "neither", "damaged"};
        for (std::size_t i = 0; i < colonies.size(); ++i)
            colonies[i].id = ids[i];
        colonies[0].stand = records::Stand{1, 2};
        colonies[3].stand = records::Stand{kNan, 2};
        std::vector<records::Sample> samples{washed("put", 50), washed("washed", 10), washed("washed", 14),
                                             washed("washed", 40, "elsewhere"), washed("washed", 60)};
        samples.back().removed = true;
        samples.push_back(washed("neither", 5));
        samples.back().stamp.state = records::PositionState::NoFix;
        const auto stands = hiveStands(yard, colonies, samples);
        QCOMPARE(stands.size(), std::size_t{2});
        QCOMPARE(stands[0].colonyId, records::RecordId("put"));
        QCOMPARE(stands[0].stand, (records::Stand{1, 2}));
        QVERIFY(!stands[0].fromPositions);
        QCOMPARE(stands[1].colonyId, records::RecordId("washed"));
        QVERIFY(stands[1].fromPositions && stands[1].used == 2);
        QVERIFY(near(stands[1].stand.eastM, 12, 1e-3));
        // Without a position of the yard: around the middle of all that was stamped in it (50, 10, 14).
        yard.position.reset();
        const auto around = hiveStands(yard, colonies, samples);
        QCOMPARE(around.size(), std::size_t{2});
        QVERIFY(near(around[1].stand.eastM, 12 - 74.0 / 3, 1e-3));
        QVERIFY(hiveStands(yard, {}, {}).empty());
    }

    void whatLiesWithinReachByItsAccuracyIsTaken() {
        const Position yard{48.1, 11.5, {}};
        const Place far = placeAt({48.1, 11.5}, {160, 0});
        QVERIFY(!standFromPositions(std::array{Position{far.latitudeDeg, far.longitudeDeg, 5.0}}, yard, 150));
        QVERIFY(standFromPositions(std::array{Position{far.latitudeDeg, far.longitudeDeg, 12.0}}, yard, 150));
    }
};

QTEST_GUILESS_MAIN(PlaceStandsTest)
#include "place_stands.moc"
