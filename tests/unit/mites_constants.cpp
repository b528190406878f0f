// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// Constants that no formula of this layer uses by itself, held against what they are said to be. Those that
// formulas use are seen by the other tests; tests/mutation/run changes each in turn and expects a test to
// notice.
#include "mites/checks.h"
#include "mites/constants.h"
#include "mites/season_constants.h"
#include "mites_tables.h"

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

class ConstantsTest : public QObject {
    Q_OBJECT
private slots:
    void efficacyThatCounts() { // EMA/CVMP/EWP/459883/2008, as quoted in Dietemann et al. 2013, section 4.5.4
        QCOMPARE(kEffectiveSynthetic, 0.95);
        QCOMPARE(kEffectiveOther, 0.90);
    }
    void daysAndNumbersByConvention() {
        QCOMPARE(kYardInformedWashes, 5);
        QCOMPARE(kYardInformedDays, 14);
        QCOMPARE(kDaysAfterTreatment, 14.0); // one brood cycle; common practice 10 to 14 days
        QCOMPARE(kOutlookDays, 60.0);
        QCOMPARE(kPrecisionManagement, 0.25);
        QCOMPARE(kPrecisionResearch, 0.10);
        QCOMPARE(kLoadLikelyFailing, 15.0);
        QCOMPARE(kJarShapeNone, kInfinity);
    }
    void jarShapeOfTheField() { // 6.9, 90 % range 3.8 to 14.5, from the near-replicates of Aurell et al. 2025
        NEAR(kJarShape, 6.9, 0.11, "rounded");
    }
    void droneRatioOfTheLiterature() { // 0.56 and 6.49: Boot et al., Calis et al. 1999, from memory
        NEAR(kInvasionDrone / kInvasionWorker, 6.49 / 0.56, 0.03, "ratio");
    }
    void doublingInAMonth() { // 0.021 a day: 33.0 days
        NEAR(std::log(2.0) / kGrowthMean, 33.0, 0.05, "doubling");
    }
};

QTEST_APPLESS_MAIN(ConstantsTest)
#include "mites_constants.moc"
