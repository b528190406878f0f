// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// One wash, several jars, the yard-informed load.
#include "mites/between_colonies.h"
#include "mites/checks.h"
#include "mites/informed_load.h"
#include "mites/replicate_jars.h"
#include "mites/scoop.h"
#include "mites/wash_load.h"
#include "mites_tables.h"

#include <boost/math/special_functions/gamma.hpp>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

class WashTest : public QObject {
    Q_OBJECT
private slots:
    // Half a cup, the book's scoop, washed load: computed outside by adaptive integration, printed to five
    // decimals.
    void halfACupOfTheBook() {
        struct Case {
            std::int64_t mites;
            double q05, q50, q95, over3;
        };
        const BeesInScoop scoop = scoopFromVolume(kHalfCupMl);
        for (const Case& c :
             {Case{0, .00068, .07976, .77418, .00091}, Case{1, .05684, .41357, 1.69661, .00825},
              Case{3, .32541, 1.10932, 3.28506, .06618}, Case{5, .65660, 1.80842, 4.80002, .19605},
              Case{8, 1.18933, 2.85850, 7.03197, .46391}, Case{9, 1.37140, 3.20871, 7.77088, .55148},
              Case{12, 1.92453, 4.25961, 9.97977, .76367}, Case{20, 3.42333, 7.06310, 15.8429, .97487}}) {
            const LoadPosterior load({c.mites, scoop.mean, scoop.cv});
            const LoadEstimate e = load.estimate();
            NEAR(e.q05, c.q05, 6e-6, c.mites);
            NEAR(e.q50, c.q50, 6e-6, c.mites);
            NEAR(e.q95, c.q95, 6e-5, c.mites);
            NEAR(load.chanceOver(3), c.over3, 6e-6, c.mites);
        }
        NEAR(LoadPosterior({5, scoop.mean, scoop.cv}).chanceOver(1.7), .54137, 6e-6, "own line");
    }
    // Spot values printed with the method (recovery .95 +/- .03, 300 bees, CV .1, nine mites).
    void ninesOfThreeShapes() {
        // Printed from a collapsed form good to 1e-4, so no closer than that.
        const auto check = [](double shape, double q05, double q50, double q95, double over) {
            const LoadPosterior load({9, 300, 0.1, 0.95, 0.03, shape});
            RELATIVE(load.estimate().q05, q05, 1.5e-4, shape);
            RELATIVE(load.estimate().q50, q50, 1.5e-4, shape);
            RELATIVE(load.estimate().q95, q95, 1.5e-4, shape);
            NEAR(load.chanceOver(3), over, 2e-5, shape);
        };
        check(kInfinity, 1.7425, 3.2293, 5.4779, .58360);
        check(20, 1.6194, 3.2874, 6.3566, .58739);
        check(5, 1.3863, 3.4644, 9.4746, .59958);
        // Exact bees and nothing else is a plain gamma: qgamma(c(.05, .5, .95), 9.5, 3) in R 4.2.
        const LoadEstimate plain = LoadPosterior({9, 300, 0, 1, 0, kInfinity}).estimate();
        NEAR(plain.q05, 1.68616884, 6e-9, "gamma");
        NEAR(plain.q50, 3.05627548, 6e-9, "gamma");
        NEAR(plain.q95, 5.02392120, 6e-9, "gamma");
        const LoadPosterior none({0, 300, 0.1, 0.95, 0.03, 20});
        NEAR(none.quantile(0.95), .72612, 6e-6, "zero");
        NEAR(none.chanceOver(1), .02282, 6e-6, "zero");
    }
    void zeroOfFewBeesSaysLittle() { // 50 bees, none found: P(load > 3) 0.09, upper end 4.1
        const LoadPosterior load({0, 50, 0.1, 0.95, 0.03, kInfinity});
        NEAR(load.chanceOver(3), 0.093, 5e-4, "chance");
        NEAR(load.quantile(0.95), 4.1, 0.05, "upper end");
    }
    void tableOfWashes() {
        const Table table("reference/wash_posterior.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString id = row.text("id");
            const LoadPosterior load({row.count("k_mites"), row.number("bees_mean"), row.number("bees_cv"),
                                      row.number("recov_mean"), row.number("recov_sd"),
                                      row.number("phi_nb")});
            const LoadEstimate e = load.estimate();
            const double over = load.chanceOver(row.number("threshold_per100"));
            // Adaptive integration: to its printed digits.
            RELATIVE(e.q05, row.number("q05_int"), 2e-8, id);
            RELATIVE(e.q50, row.number("q50_int"), 2e-8, id);
            RELATIVE(e.q95, row.number("q95_int"), 2e-8, id);
            NEAR(over, row.number("p_gt_T_int"), 2e-10, id);
            // Sixteen million draws: five standard errors.
            NEAR(e.q05, row.number("q05_mc"), 5 * row.number("q05_mcse"), id);
            NEAR(e.q50, row.number("q50_mc"), 5 * row.number("q50_mcse"), id);
            NEAR(e.q95, row.number("q95_mc"), 5 * row.number("q95_mcse"), id);
            NEAR(load.mean(), row.number("mean_mc"), 5 * row.number("mean_mcse"), id);
            NEAR(over, row.number("p_gt_T_mc"), 5 * row.number("p_gt_T_mcse"), id);
        }
    }
    void moreMitesMoreLoadMoreBeesLess() {
        double before = 0;
        for (const std::int64_t mites : {0, 1, 2, 5, 20, 300, 5000, 100000}) {
            const double now = LoadPosterior({mites, 300, 0.12}).quantile(0.5);
            QVERIFY(now > before);
            before = now;
        }
        for (const double bees : {20.0, 150.0, 300.0, 3000.0}) {
            const double now = LoadPosterior({9, bees, 0.12}).quantile(0.5);
            QVERIFY(now < before);
            before = now;
            RELATIVE(now * bees, LoadPosterior({9, 300, 0.12}).quantile(0.5) * 300, 1e-9,
                     "only the ratio counts");
        }
    }
    void moreDoubtWidensTheRange() {
        const auto width = [](const Wash& wash) {
            const LoadEstimate e = LoadPosterior(wash).estimate();
            return e.q95 / e.q05;
        };
        QVERIFY(width({9, 300, 0.2}) > width({9, 300, 0.1}));
        QVERIFY(width({9, 300, 0.1, 0.9, 0.05}) > width({9, 300, 0.1, 0.9, 0.01}));
        QVERIFY(width({9, 300, 0.1, 1, 0, 5}) > width({9, 300, 0.1, 1, 0, 7}));
        QVERIFY(width({9, 300, 0.1, 1, 0, 7}) > width({9, 300, 0.1, 1, 0, kInfinity}));
    }
    void meanExistsOnlyWhereItDoes() {
        // 100 (k + 1/2) (1 + CV^2)/bees * (a + b - 1)/(a - 1) * shape/(shape - 1), a + b = .95 .05/.03^2 - 1.
        const double ab = 0.95 * 0.05 / 0.0009 - 1;
        RELATIVE(LoadPosterior({9, 300, 0.1, 0.95, 0.03, 20}).mean(),
                 100 * 9.5 * 1.01 / 300 * (ab - 1) / (0.95 * ab - 1) * 20 / 19, 1e-12, "closed form");
        QCOMPARE(LoadPosterior({9, 300, 0.1, 1, 0, 1}).mean(), kInfinity);
        QCOMPARE(LoadPosterior({9, 300, 0.1, 1, 0, 0.4}).mean(), kInfinity);
        QVERIFY(std::isfinite(LoadPosterior({9, 300, 0.1, 1, 0, 0.4}).quantile(0.5)));
    }
    void extremesHaveAnswers() {
        for (const Wash& wash : {Wash{1000000000, 1e9, 0, 1, 0, kInfinity}, Wash{0, 1e-3, 5, 1, 0, 0.01},
                                 Wash{0, 1, 0, 1, 0, kInfinity}, Wash{5000, 1, 0.3}, Wash{3, 1e9, 0.1},
                                 Wash{9, 300, 0.1, 0.5, 0.4}, Wash{9, 300, 0.1, 0.999, 0.03, 0.02},
                                 Wash{9, 300, 0.1, 0.95, 1e-6}, Wash{9, 300, 1e-9, 1, 0, 1e12}}) {
            const LoadPosterior load(wash);
            const LoadEstimate e = load.estimate();
            QVERIFY(e.q05 > 0 && e.q05 < e.q50 && e.q50 < e.q95);
            NEAR(load.cumulative(e.q05), 0.05, 1e-8, wash.mites);
            NEAR(load.chanceOver(e.q95), 0.05, 1e-8, wash.mites);
        }
    }
    void linesAtTheEdge() {
        const LoadPosterior load({9, 300, 0.1});
        QCOMPARE(load.chanceOver(0), 1.0);
        QCOMPARE(load.chanceOver(-1), 1.0);
        QCOMPARE(load.chanceOver(kInfinity), 0.0);
        QCOMPARE(load.cumulative(0), 0.0);
        QCOMPARE(load.cumulative(kInfinity), 1.0);
    }
    void badWashesAreRefused() {
        const Wash good{9, 300, 0.1, 0.95, 0.03, 7};
        const auto with = [&good](auto member, auto value) {
            Wash wash = good;
            wash.*member = value;
            return wash;
        };
        for (const std::int64_t mites :
             {std::int64_t{-1}, std::int64_t{1000000001}, std::numeric_limits<std::int64_t>::min()})
            REFUSES(LoadPosterior(with(&Wash::mites, mites)));
        for (const double bees : {0.0, -300.0, kNaN, kInfinity, 1.0001e9})
            REFUSES(LoadPosterior(with(&Wash::beesMean, bees)));
        for (const double cv : {-0.1, kNaN, kInfinity, 5.01})
            REFUSES(LoadPosterior(with(&Wash::beesCv, cv)));
        for (const double recovery : {0.0, -1.0, 1.01, kNaN, kInfinity})
            REFUSES(LoadPosterior(with(&Wash::recovery, recovery)));
        for (const double sd : {-0.01, 0.3, kNaN, kInfinity})
            REFUSES(LoadPosterior(with(&Wash::recoverySd, sd)));
        for (const double shape : {0.0, -7.0, kNaN, 0.0099})
            REFUSES(LoadPosterior(with(&Wash::jarShape, shape)));
        const LoadPosterior load(good);
        for (const double p : {0.0, 1.0, -0.5, kNaN})
            REFUSES(load.quantile(p));
        REFUSES(load.chanceOver(kNaN));
        REFUSES(load.cumulative(kNaN));
        LoadPosterior({1000000000, 1e9, 5, 1, 0, 0.01}); // the ends of the ranges are good
        LoadPosterior({0, 300, 0.1, 1, 0, 0.0101});
    }
    void checksAloneRefuseToo() {
        REFUSES(checkWash({-1, 300, 0.1}));
        REFUSES(checkJarShape(0));
        REFUSES(checkRecovery(0.9, 0.3));
        REFUSES(checkRecovery(0.01, 0.0985)); // hardly above nothing: a Beta without a usable width
        REFUSES(require(false, "This has to be a sentence."));
        checkWash({9, 300, 0.1, 0.95, 0.03, 7});
    }
    void cautionsAreSaid() {
        const auto said = [](const Wash& wash, const LoadEstimate& e, Caution caution) {
            const std::vector<Caution> all = cautions(wash, e);
            return std::find(all.begin(), all.end(), caution) != all.end();
        };
        const LoadEstimate low{0.1, 1, 50};
        QVERIFY(said({1, 99.9, 0}, low, Caution::FewBees) && !said({1, 100, 0}, low, Caution::FewBees));
        QVERIFY(said({301, 300, 0}, low, Caution::MoreMitesThanBees) &&
                !said({300, 300, 0}, low, Caution::MoreMitesThanBees));
        QVERIFY(said({1, 300, 0}, {0.1, 1, 50.1}, Caution::BeyondAdvice) &&
                !said({1, 300, 0}, low, Caution::BeyondAdvice));
        QVERIFY(said({0, 300, 0}, low, Caution::NoneFound) && !said({1, 300, 0}, low, Caution::NoneFound));
    }
    void recoveriesOfTheMethods() { // washed load has no correction but for sugar; full load has one
        QCOMPARE(washedRecovery(WashMethod::Alcohol).mean, 1.0);
        QCOMPARE(washedRecovery(WashMethod::Soap).sd, 0.0);
        QCOMPARE(washedRecovery(WashMethod::Sugar).mean, 0.90);
        QCOMPARE(washedRecovery(WashMethod::Sugar).sd, 0.08);
        QCOMPARE(fullRecovery(WashMethod::Alcohol).mean, 0.95);
        QCOMPARE(fullRecovery(WashMethod::Soap).sd, 0.03);
        QCOMPARE(fullRecovery(WashMethod::Sugar).mean, 0.85);
        QCOMPARE(fullRecovery(WashMethod::Sugar).sd, 0.08);
    }
    void jarsTogetherAreOneWash() {
        const std::vector<Jar> jars{{4, 300, 0.1}, {7, 280, 0.1}, {2, 310, 0.2}};
        const Wash wash = jarsTogether(jars, 0, 0.95, 0.03, 7);
        QCOMPARE(wash.mites, std::int64_t{13});
        QCOMPARE(wash.beesMean, 890.0);
        NEAR(wash.beesCv, std::sqrt(30 * 30 + 28 * 28 + 62 * 62.0) / 890, 1e-12, "own spread averages out");
        QCOMPARE(wash.jarShape, 21.0);
        const Wash shared = jarsTogether(jars, 0.07);
        NEAR(std::log1p(shared.beesCv * shared.beesCv), std::log1p(wash.beesCv * wash.beesCv) + 0.0049, 1e-12,
             "shared spread does not");
        const Jar alone{9, 300, 0.098};
        const Wash one = jarsTogether({&alone, 1}, 0.0693);
        NEAR(one.beesCv, 0.1204, 2e-4, "one jar is a wash");
        QCOMPARE(one.jarShape, 7.0);
        REFUSES(jarsTogether({}, 0));
        REFUSES(jarsTogether(jars, -1));
        REFUSES(jarsTogether(jars, kNaN));
        const Jar bad{-1, 300, 0};
        REFUSES(jarsTogether({&bad, 1}, 0));
    }
    void jarShapeFromPairs() {
        // By hand: one colony, jars 4 and 12: mean 8, s^2 32; v = (32 - 8)/(64 - 16) = 0.5; shrunk (10*0.06 +
        // 0.5)/11.
        const std::vector<std::vector<std::int64_t>> one{{4, 12}, {5}};
        const JarShapeEstimate e = jarShapeFromDuplicates(one, 0);
        NEAR(e.rawExtraVariance, 0.5, 1e-12, "raw");
        QCOMPARE(e.freedom, 1);
        NEAR(1 / e.shape, 0.1, 1e-12, "shrunk");
        NEAR(1 / jarShapeFromDuplicates(one, 0.1).shape, 0.09, 1e-12, "less the bees' spread");
        const std::vector<std::vector<std::int64_t>> even{
            {100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100}};
        NEAR(jarShapeFromDuplicates(even, 0.3).shape, 200, 1e-9, "the floor");
        const std::vector<std::vector<std::int64_t>> zero{{0, 0}, {0, 0}};
        NEAR(1 / jarShapeFromDuplicates(zero, 0).shape, 0.06, 1e-12, "nothing found: the prior");
        const std::vector<std::vector<std::int64_t>> single{{4}, {9}};
        REFUSES(jarShapeFromDuplicates(single, 0));
        REFUSES(jarShapeFromDuplicates({}, 0));
        REFUSES(jarShapeFromDuplicates(one, kNaN));
        const std::vector<std::vector<std::int64_t>> bad{{4, -1}};
        REFUSES(jarShapeFromDuplicates(bad, 0));
    }
    void tableOfInformedLoads() {
        const Table table("reference/wash_informed_prior.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString id = row.text("id");
            const InformedPosterior load({row.count("k"), row.number("nb"), row.number("cv"),
                                          row.number("cm"), row.number("cs"), row.number("phi")},
                                         {row.number("L"), row.number("kap")});
            NEAR(load.quantile(0.05), row.number("q05"), 5 * row.number("q05_se"), id);
            NEAR(load.quantile(0.50), row.number("q50"), 5 * row.number("q50_se"), id);
            NEAR(load.quantile(0.95), row.number("q95"), 5 * row.number("q95_se"), id);
            const double over = load.chanceOver(row.number("T"));
            NEAR(over, row.number("P"), 5 * row.number("P_se"), id);
            NEAR(over, row.number("spec_P"), 0.0025, id); // the collapsed form, which costs up to that
        }
    }
    void informedWithoutNoiseIsAGamma() { // conjugate: Gamma(k + kappa, E + kappa/L)
        const InformedPosterior load({9, 300, 0, 1, 0, kInfinity}, {2, 4});
        for (const double x : {0.5, 2.0, 3.0, 6.0}) {
            NEAR(load.cumulative(x), boost::math::gamma_p(13.0, 5 * x), 1e-8, x);
            NEAR(load.chanceOver(x), boost::math::gamma_q(13.0, 5 * x), 1e-8, x);
        }
        QVERIFY(load.estimate().q05 < load.estimate().q50);
        QCOMPARE(load.chanceOver(0), 1.0);
        QCOMPARE(load.cumulative(-1), 0.0);
        // Shapes at which the tilt has to give way.
        const InformedPosterior odd({1000, 300, 0.1, 0.9, 0.25, 0.5}, {2, 30});
        QVERIFY(odd.quantile(0.05) < odd.quantile(0.95));
        REFUSES(InformedPosterior({9, 300, 0.1}, {0, 4}));
        REFUSES(InformedPosterior({9, 300, 0.1}, {2, kNaN}));
        REFUSES(InformedPosterior({-9, 300, 0.1}, {2, 4}));
        REFUSES(load.quantile(1));
        REFUSES(load.chanceOver(kNaN));
        REFUSES(load.cumulative(kNaN));
    }
    void yardPriorByHand() {
        // Three washes of exactly 300 bees without jar differences: E 3 each; counts 3, 6, 12.
        const std::vector<Wash> washes{
            {3, 300, 0, 1, 0, kInfinity}, {6, 300, 0, 1, 0, kInfinity}, {12, 300, 0, 1, 0, kInfinity}};
        const YardPrior prior = yardPrior(washes);
        const double mean = 21.5 / 9;
        NEAR(prior.meanLoad, mean, 1e-12, "mean");
        const double raw = (7.0 / 3 - mean / 3) / (mean * mean); // rates 1, 2, 4: variance 7/3
        const double variance = (4 * 0.64 + 2 * raw) / 6;
        NEAR(1 / prior.shape, variance, 1e-12, "between");
        const BetweenColonies between = betweenColonies(washes, 0.8);
        QCOMPARE(between.mites, std::int64_t{21});
        NEAR(between.rawVariance, raw, 1e-12, "raw");
        NEAR(between.freedom, 6, 0, "freedom");
        const std::vector<Wash> same(6, Wash{0, 300, 0.1});
        NEAR(1 / yardPrior(same).shape, 0.04, 1e-12, "floor");
        REFUSES(yardPrior({}));
        REFUSES(betweenColonies(washes, 0));
    }
};

QTEST_APPLESS_MAIN(WashTest)
#include "mites_wash.moc"
