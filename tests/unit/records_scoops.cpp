// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The keeper's own counted scoops.
#include "mites/wash_load.h"
#include "records/scoop_count.h"

#include <QTest>

#include <cmath>

using namespace halfcup;
using namespace halfcup::records;

namespace {

ScoopCount counted(double bees, double volumeMl = halfCupMl, Packing packing = Packing::Loose) {
    ScoopCount count;
    count.bees = bees;
    count.volumeMl = volumeMl;
    count.packing = packing;
    return count;
}

// Invented scoops; what follows from them was computed by other means beforehand: median 336, mean 337.9, CV
// 0.099.
const std::vector fiveScoops{counted(352), counted(340), counted(361), counted(349), counted(358)};

} // namespace

class RecordsScoopsTest : public QObject {
    Q_OBJECT

private slots:
    void fiveScoopsSpeakForTheHand() {
        const auto own = ownScoops(fiveScoops, halfCupMl, Packing::Loose);
        QVERIFY(own);
        QCOMPARE(std::round(own->median), 336.0);
        QCOMPARE(std::round(own->mean * 10) / 10, 337.9);
        QCOMPARE(std::round(own->cv * 1000) / 1000, 0.099);
        QCOMPARE(own->countedScoops, 5);
    }

    void nineMitesReadLowerWithThem() {
        const auto own = ownScoops(fiveScoops, halfCupMl, Packing::Loose);
        mites::Wash wash;
        wash.mites = 9;
        wash.beesMean = own->mean;
        wash.beesCv = own->cv;
        const mites::LoadPosterior posterior(wash);
        const auto tenths = [](double value) { return std::round(value * 10) / 10; };
        QCOMPARE(tenths(posterior.estimate().q50), 2.9);
        QCOMPARE(tenths(posterior.estimate().q05), 1.2);
        QCOMPARE(tenths(posterior.estimate().q95), 6.9);
        QCOMPARE(std::round(posterior.chanceOver(3) * 100), 46.0); // close to the line, not over it
    }

    void onlyScoopsOfThatKindCount() {
        QVERIFY(!ownScoops({}, halfCupMl, Packing::Loose));
        QVERIFY(!ownScoops(fiveScoops, 100, Packing::Loose));
        QVERIFY(!ownScoops(fiveScoops, halfCupMl, Packing::Settled));
        QCOMPARE(scoopsAlike(fiveScoops, halfCupMl * 1.015, Packing::Loose), 5); // 120 ml by another spoon
        std::vector some = fiveScoops;
        some[0].removed = true;
        QCOMPARE(scoopsAlike(some, halfCupMl, Packing::Loose), 4);
        some[1].bees = 0;
        QCOMPARE(scoopsAlike(some, halfCupMl, Packing::Loose), 3);
    }

    void settledStartsFromItsOwnBookFigure() {
        const std::vector one{counted(300, 100, Packing::Settled)};
        QCOMPARE(std::round(ownScoops(one, 100, Packing::Settled)->median), 300.0);
        BookDensity other;
        other.settledPerMl = 4;
        QVERIFY(ownScoops(one, 100, Packing::Settled, other)->median > 340);
    }

    void slipsAreAskedAbout() {
        for (const double bees : {30.0, 3000.0, 35.0, 0.0, -5.0})
            QVERIFY2(isOdd(bees, {}, halfCupMl, Packing::Loose), qPrintable(QString::number(bees)));
        for (const double bees : {250.0, 300.0, 350.0, 400.0})
            QVERIFY2(!isOdd(bees, {}, halfCupMl, Packing::Loose), qPrintable(QString::number(bees)));
        QVERIFY(!isOdd(400, fiveScoops, halfCupMl, Packing::Loose));
        QVERIFY(isOdd(200, fiveScoops, halfCupMl, Packing::Loose)); // not this hand
    }

    void oddOnesTheKeeperStoodByCount() {
        std::vector some = fiveScoops;
        some.push_back(counted(500));
        some.back().odd = true;
        QVERIFY(ownScoops(some, halfCupMl, Packing::Loose)->median > 340);
        QVERIFY(ownScoops(some, halfCupMl, Packing::Loose)->cv > 0.12);
    }
};

QTEST_APPLESS_MAIN(RecordsScoopsTest)
#include "records_scoops.moc"
