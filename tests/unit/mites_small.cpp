// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// Bees in a scoop, standing, second rinse, mites in the colony, brood opened, natural fall.
#include "mites/brood_share.h"
#include "mites/colony_mites.h"
#include "mites/mite_fall.h"
#include "mites/scoop.h"
#include "mites/second_rinse.h"
#include "mites/standing.h"
#include "mites/wash_load.h"
#include "mites_tables.h"

#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <random>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

class SmallTest : public QObject {
    Q_OBJECT
private slots:
    void halfACupIsThreeHundred() { // the trade's rule; common practice, no source
        const BeesInScoop scoop = scoopFromVolume(kHalfCupMl);
        NEAR(scoop.median, 300, 1e-9, "median");
        NEAR(scoop.mean, 302.1678, 5e-5, "mean");
        NEAR(scoop.cv, 0.12043330, 5e-9, "cv");
        NEAR(scoop.ownSd, std::sqrt(0.0096), 1e-12, "own");
        NEAR(scoop.sharedSd, std::sqrt(0.0048), 1e-12, "shared");
        QCOMPARE(scoop.countedScoops, 0);
        NEAR(kHalfCupMl, 236.5882365 / 2, 1e-7, "US cup, by definition");
    }
    void otherVolumesScale() {
        NEAR(scoopFromVolume(100, 3.0).median, 300, 1e-9, "100 ml settled: Dietemann et al. 2013");
        NEAR(scoopFromVolume(29.5735, 3.38).median, 100, 0.1,
             "one US fl oz after tapping: Univ. of Minnesota");
        RELATIVE(scoopFromVolume(2 * kHalfCupMl).median, 600, 1e-12, "twice");
    }
    void tableOfScoops() {
        const Table table("reference/scoop_calibration.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const std::vector<double> counts = row.numbers("scoops");
            const BeesInScoop scoop = scoopFromCounts(kHalfCupMl, counts);
            const QString id = row.text("id");
            RELATIVE(scoop.median, row.number("bees_median"), 2e-7, id);
            RELATIVE(scoop.mean, row.number("bees_mean"), 2e-7, id);
            RELATIVE(scoop.cv, row.number("bees_cv"), 2e-7, id);
            RELATIVE(scoop.ownSd * scoop.ownSd, row.number("s2_indep"), 2e-7, id);
            RELATIVE(scoop.sharedSd * scoop.sharedSd, row.number("s2_shared"), 2e-7, id);
            QCOMPARE(scoop.countedScoops, static_cast<int>(counts.size()));
        }
    }
    void fiveOwnScoops() { // printed with the method: 329 bees, CV .098; ten good ones CV .068
        const std::vector<double> five{340, 355, 310, 362, 330};
        NEAR(scoopFromCounts(kHalfCupMl, five).mean, 328.8484, 5e-5, "mean");
        NEAR(scoopFromCounts(kHalfCupMl, five).cv, 0.0976856, 5e-8, "cv");
        const std::vector<double> same(10, 300.0);
        NEAR(scoopFromCounts(kHalfCupMl, same).cv, std::sqrt(std::expm1(6 * 0.0064 / 14 * 13 / 12)), 1e-12,
             "ten alike");
        QVERIFY(scoopFromCounts(kHalfCupMl, same).cv < scoopFromVolume(kHalfCupMl).cv);
    }
    void beesByMass() {
        const BeesInScoop live = scoopFromLiveMass(30); // 10 g is about 100 bees: German wash scale
        NEAR(live.median, 300, 1e-9, "live");
        NEAR(live.sharedSd, 0.10, 1e-12, "convention");
        NEAR(live.ownSd, 0.03, 1e-12, "convention");
        // 18.3 g and SD 1.5 for 100 drained bees: Aurell et al. 2024, J Insect Sci, data.
        const BeesInScoop drained = scoopFromDrainedMass(18.3);
        NEAR(drained.median, 100, 1e-9, "drained");
        NEAR(drained.ownSd, 1.5 / 18.3, 1e-9, "spread");
        NEAR(drained.sharedSd, 0.05, 1e-12, "convention");
        const BeesInScoop counted = scoopCountedByHand(312, 0.02);
        QCOMPARE(counted.mean, 312.0);
        QCOMPARE(counted.cv, 0.02);
        QCOMPARE(scoopCountedByHand(312).ownSd, 0.0);
    }
    void badScoopsAreRefused() {
        for (const double volume : {0.0, -1.0, kNaN, kInfinity, 10001.0}) {
            REFUSES(scoopFromVolume(volume));
            REFUSES(scoopFromLiveMass(volume));
            REFUSES(scoopFromDrainedMass(volume));
        }
        for (const double count : {0.0, -5.0, kNaN, kInfinity, 100001.0})
            REFUSES(scoopFromCounts(118, std::vector<double>{300, count}));
        REFUSES(scoopFromVolume(118, 0));
        REFUSES(scoopFromVolume(118, 101));
        REFUSES(scoopFromLiveMass(30, kNaN));
        REFUSES(scoopFromDrainedMass(30, 1001));
        REFUSES(scoopCountedByHand(0));
        REFUSES(scoopCountedByHand(300, -0.1));
        REFUSES(scoopFromSpreads(300, kNaN, 0));
        REFUSES(scoopFromSpreads(300, 0, 5.1));
        scoopFromVolume(10000);
        scoopFromLiveMass(10000, 1000);
        scoopFromCounts(118, std::vector<double>{100000});
        scoopFromVolume(118, 100);
    }
    void standingsOfTheDesign() {
        const BeesInScoop scoop = scoopFromVolume(kHalfCupMl);
        const auto of = [&scoop](std::int64_t mites, double line) {
            const LoadPosterior load({mites, scoop.mean, scoop.cv});
            const LoadEstimate e = load.estimate();
            return standing(e.q50, load.chanceOver(line), e.q05, e.q95, line, scoop.median);
        };
        QCOMPARE(of(9, 3), Standing::Over);   // nine in a half cup is three per 100: the trade's rule
        QCOMPARE(of(8, 3), Standing::Close);  // 46 %
        QCOMPARE(of(5, 1.7), Standing::Over); // five in a half cup: a careful keeper's own line
        QCOMPARE(of(5, 3), Standing::Under);  // 19.6 %
        QCOMPARE(of(0, 3), Standing::Under);
    }
    void standingAtItsEdges() {
        QCOMPARE(standing(3, 0.1, 1, 5, 3, 300), Standing::Over); // point at the line
        QCOMPARE(standing(2.9, 0.51, 1, 5, 3, 300), Standing::Over);
        QCOMPARE(standing(2.9, 0.5, 1, 5, 3, 300), Standing::Close);
        QCOMPARE(standing(2.9, 0.2, 1, 5, 3, 300), Standing::Close);
        QCOMPARE(standing(2.9, 0.199, 1, 5, 3, 300), Standing::Under);
        // Too few bees, the line in the range, the range wider than four times.
        QCOMPARE(standing(2.9, 0.3, 1, 4.1, 3, 199), Standing::CannotTell);
        QCOMPARE(standing(2.9, 0.1, 1, 4.1, 3, 199), Standing::CannotTell);
        QCOMPARE(standing(2.9, 0.3, 1, 4.1, 3, 200), Standing::Close);
        QCOMPARE(standing(2.9, 0.3, 1, 4.0, 3, 199), Standing::Close);
        QCOMPARE(standing(2.0, 0.04, 0.5, 2.9, 3, 199), Standing::Under); // line outside the range
        QCOMPARE(standing(3.1, 0.3, 1, 9, 3, 50), Standing::Over);        // over stays over
        for (const double bad : {kNaN, -1.0}) {
            REFUSES(standing(bad, 0.3, 1, 4, 3, 300));
            REFUSES(standing(2, bad, 1, 4, 3, 300));
            REFUSES(standing(2, 0.3, bad, 4, 3, 300));
            REFUSES(standing(2, 0.3, 1, bad, 3, 300));
            REFUSES(standing(2, 0.3, 1, 4, bad, 300));
            REFUSES(standing(2, 0.3, 1, 4, 3, bad));
        }
        REFUSES(standing(2, 1.01, 1, 4, 3, 300));
        REFUSES(standing(2, 0.3, 4, 1, 3, 300));
        REFUSES(standing(2, 0.3, 1, 4, 0, 300));
    }
    void tableOfRinses() {
        const Table table("reference/recovery_double_wash.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const Rinses rinses{row.count("k_first"), row.count("k_second")};
            const RecoveryEstimate e =
                recoveryFromRinses({&rinses, 1}, row.number("prior_mean"), row.number("prior_sd"));
            RELATIVE(e.mean, row.number("post_mean"), 1e-6, row.text("k_first"));
            RELATIVE(e.sd, row.number("post_sd"), 1e-6, row.text("k_first"));
            NEAR(e.mostLikely, row.number("mle_c"), 1e-7, row.text("k_first"));
        }
    }
    void rinsesMoveTheRecovery() {
        const Rinses poor{60, 25};
        const RecoveryEstimate e = recoveryFromRinses({&poor, 1}, 0.95, 0.03);
        NEAR(e.mean, 0.7903934, 5e-8, "printed with the method");
        NEAR(e.sd, 0.03915583, 5e-9, "printed with the method");
        QVERIFY(e.q05 < e.q50 && e.q50 < e.q95 && e.q95 < 1);
        NEAR(recoveryFromRinses({}, 0.95, 0.03).mean, 0.95, 1e-9, "no rinse: the prior");
        NEAR(recoveryFromRinses({}, 0.95, 0.03).sd, 0.03, 1e-9, "no rinse: the prior");
        const std::vector<Rinses> two{{30, 10}, {30, 15}};
        NEAR(recoveryFromRinses(two, 0.95, 0.03).mean, e.mean, 1e-12, "only the sums count");
        QCOMPARE(recoveryFromRinses({&poor, 1}, 0.9, 0).mean, 0.9);
        const Rinses none{0, 0};
        QVERIFY(std::isnan(recoveryFromRinses({&none, 1}, 0.95, 0.03).mostLikely));
        const Rinses worse{5, 9};
        QVERIFY(recoveryFromRinses({&worse, 1}, 0.95, 0.03).mostLikely < 0);
        const Rinses many{1000000000, 1000};
        NEAR(recoveryFromRinses({&many, 1}, 0.95, 0.03).mean, 1, 1e-5, "many");
        const Rinses bad{-1, 2};
        REFUSES(recoveryFromRinses({&bad, 1}, 0.95, 0.03));
        REFUSES(recoveryFromRinses({&poor, 1}, 1.2, 0.03));
        REFUSES(recoveryFromRinses({&poor, 1}, 0.95, 0.3));
        REFUSES(recoveryFromRinses({&poor, 1}, 0.95, kNaN));
    }
    void adultsPlusBroodIsDouble() { // Lee et al. 2010: double the adult figure
        const Wash wash{9, 302.1678, 0.1204, 0.95, 0.03};
        const LoadEstimate adult = LoadPosterior(wash).estimate();
        const LoadEstimate fixed = adultsPlusBrood(wash, {0.5, 0});
        RELATIVE(fixed.q05, 2 * adult.q05, 1e-9, "double");
        RELATIVE(fixed.q95, 2 * adult.q95, 1e-9, "double");
        const LoadEstimate range = adultsPlusBrood(wash);
        NEAR(ShareOnBees{}.mean, 0.5, 0, "double");
        NEAR(ShareOnBees{}.sd, 0.15, 0, "convention");
        QVERIFY(range.q05 < fixed.q05 && range.q95 > fixed.q95);
        RELATIVE(adultsPlusBrood(wash, {1, 0}).q50, adult.q50, 1e-12, "no brood");
    }
    void mitesInColonyAgainstDraws() {
        // The same product drawn a million times with the library's generators (seed fixed).
        const Wash wash{9, 300, 0.1, 0.95, 0.03, 7};
        const ColonyMites exact = mitesInColony(wash, 20000, 0.2, {0.4, 0.1});
        std::mt19937_64 chance(20260101);
        std::gamma_distribution<double> mites(9.5, 1);
        std::gamma_distribution<double> jar(7, 1 / 7.0);
        std::normal_distribution<double> unit;
        const auto beta = [&chance](double mean, double sd) {
            const double nu = mean * (1 - mean) / (sd * sd) - 1;
            const double a = std::gamma_distribution<double>(mean * nu, 1)(chance);
            const double b = std::gamma_distribution<double>((1 - mean) * nu, 1)(chance);
            return a / (a + b);
        };
        const auto logNormal = [&](double mean, double cv) {
            const double variance = std::log1p(cv * cv);
            return mean * std::exp(std::sqrt(variance) * unit(chance) - variance / 2);
        };
        std::vector<double> onBees;
        std::vector<double> inColony;
        for (int i = 0; i < 1000000; ++i) {
            const double load = mites(chance) / (logNormal(300, 0.1) * beta(0.95, 0.03) * jar(chance)) *
                                logNormal(20000, 0.2);
            onBees.push_back(load);
            inColony.push_back(load / beta(0.4, 0.1));
        }
        std::sort(onBees.begin(), onBees.end());
        std::sort(inColony.begin(), inColony.end());
        RELATIVE(exact.onBees.q05, onBees[50000], 0.006, "drawn");
        RELATIVE(exact.onBees.q95, onBees[950000], 0.006, "drawn");
        RELATIVE(exact.inColony.q05, inColony[50000], 0.006, "drawn");
        RELATIVE(exact.inColony.q50, inColony[500000], 0.006, "drawn");
        RELATIVE(exact.inColony.q95, inColony[950000], 0.006, "drawn");
    }
    void badColoniesAreRefused() {
        const Wash wash{9, 300, 0.1};
        REFUSES(mitesInColony(wash, 0, 0.1));
        REFUSES(mitesInColony(wash, kNaN, 0.1));
        REFUSES(mitesInColony(wash, 20000, -1));
        REFUSES(mitesInColony(wash, 20000, 0.1, {0, 0}));
        REFUSES(mitesInColony(wash, 20000, 0.1, {0.5, 0.6}));
        REFUSES(adultsPlusBrood(wash, {1.1, 0}));
        REFUSES(adultsPlusBrood({-1, 300, 0.1}));
        REFUSES(beesOnFrames(-1));
        REFUSES(beesOnFrames(kNaN));
        REFUSES(beesOnFrames(10, 0));
        REFUSES(beesOnFrames(201));
        REFUSES(beesOnFrames(1, 10001));
        QCOMPARE(beesOnFrames(10), 14000.0); // Burgett & Burikam 1985: 1,400 on an average deep frame
        QCOMPARE(beesOnFrames(200, 10000), 2e6);
    }
    void broodOpened() {
        const BroodShare share(100, 10);
        NEAR(share.q05(), boost::math::ibeta_inv(10.5, 90.5, 0.05), 1e-12, "q05");
        NEAR(share.q50(), boost::math::ibeta_inv(10.5, 90.5, 0.5), 1e-12, "q50");
        NEAR(share.q95(), boost::math::ibeta_inv(10.5, 90.5, 0.95), 1e-12, "q95");
        NEAR(share.chanceOver(0.1), boost::math::ibetac(10.5, 90.5, 0.1), 1e-12, "chance");
        QCOMPARE(share.seen(), 0.1);
        QCOMPARE(share.chanceOver(-0.1), 1.0);
        QCOMPARE(share.chanceOver(1), 0.0);
        QVERIFY(BroodShare(20, 0).q95() > 0 && BroodShare(20, 20).q05() < 1);
        QVERIFY(BroodShare(1000000000, 5).q50() < 1e-7);
        REFUSES(BroodShare(0, 0));
        REFUSES(BroodShare(-5, 0));
        REFUSES(BroodShare(10, 11));
        REFUSES(BroodShare(10, -1));
        REFUSES(BroodShare(1000000001, 1));
        REFUSES(share.quantile(0));
        REFUSES(share.chanceOver(kNaN));
    }
    void naturalFall() {
        // Whole board: a plain gamma. 30 mites in 3 days.
        const FallPosterior whole(boardCount(30, 3));
        NEAR(whole.estimate().q05, boost::math::gamma_p_inv(30.5, 0.05) / 3, 1e-7, "q05");
        NEAR(whole.estimate().q95, boost::math::gamma_p_inv(30.5, 0.95) / 3, 1e-7, "q95");
        NEAR(whole.chanceOver(10), boost::math::gamma_q(30.5, 30), 1e-9, "chance");
        // A third of the cells counted: same fall per count, wider (Ostiguy & Sammataro 2000: 9.5 %).
        QCOMPARE(boardCount(10, 3, 1.0 / 3).countCv, 0.095);
        QCOMPARE(boardCount(30, 3).countCv, 0.0);
        const FallPosterior third(boardCount(30, 3, 1.0 / 3));
        NEAR(third.estimate().q50 / whole.estimate().q50, 3, 0.03, "third");
        QVERIFY(third.estimate().q95 / third.estimate().q05 > whole.estimate().q95 / whole.estimate().q05);
        const FallPosterior none(boardCount(0, 2));
        NEAR(none.quantile(0.95), boost::math::gamma_p_inv(0.5, 0.95) / 2, 1e-9, "none fallen");
        QCOMPARE(none.chanceOver(0), 1.0);
        // x30 in summer (UK NBU after Martin 1998, from memory), given as a range.
        const LoadEstimate colony = mitesFromFall({5, 10, 15}, {20, 30, 40});
        QCOMPARE(colony.q05, 100.0);
        QCOMPARE(colony.q50, 300.0);
        QCOMPARE(colony.q95, 600.0);
    }
    void badBoardsAreRefused() {
        for (const double bad : {0.0, -1.0, kNaN, kInfinity}) {
            REFUSES(FallPosterior(boardCount(10, bad)));
            REFUSES(FallPosterior(boardCount(10, 1, bad)));
            REFUSES(mitesFromFall({1, 2, 3}, {bad, 2, 3}));
        }
        REFUSES(FallPosterior(boardCount(-1, 1)));
        REFUSES(FallPosterior(boardCount(1000000001, 1)));
        REFUSES(FallPosterior(boardCount(10, 366)));
        REFUSES(FallPosterior(boardCount(10, 1, 1.1)));
        REFUSES(FallPosterior({10, 1, 1, -0.1}));
        REFUSES(mitesFromFall({3, 2, 1}, {1, 2, 3}));
        REFUSES(mitesFromFall({1, 2, 3}, {3, 2, 1}));
        const FallPosterior good(boardCount(10, 365));
        REFUSES(good.quantile(1));
        REFUSES(good.chanceOver(kNaN));
    }
};

QTEST_APPLESS_MAIN(SmallTest)
#include "mites_small.moc"
