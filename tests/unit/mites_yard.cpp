// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// The mean of a yard, colonies that stand out, and how many to wash.
#include "mites/sample_size.h"
#include "mites/yard_mean.h"
#include "mites_tables.h"

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

namespace {

std::vector<Wash> washesOf(const std::vector<double>& mites, const std::vector<double>& bees) {
    std::vector<Wash> washes;
    for (std::size_t i = 0; i < mites.size(); ++i)
        washes.push_back({static_cast<std::int64_t>(mites[i]), bees[i], 0.1, 0.95, 0.03, 20});
    return washes;
}

} // namespace

class YardTest : public QObject {
    Q_OBJECT
private slots:
    void tableOfYards() {
        const Table table("reference/yard_mean_formula.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString id = row.text("id");
            const YardMean mean(washesOf(row.numbers("k"), row.numbers("n")), row.count("N"));
            NEAR(mean.point(), row.number("point"), 1e-8, id);
            NEAR(mean.between().rawVariance, row.number("cvb2_raw"), 1e-7, id);
            NEAR(mean.between().variance, row.number("cvb2_shrunk"), 1e-7, id);
            RELATIVE(mean.heterogeneity(), row.number("s2_het"), 1e-7, id);
            const LoadEstimate e = mean.estimate();
            RELATIVE(e.q05, row.number("q05"), 1e-7, id);
            RELATIVE(e.q50, row.number("q50"), 1e-7, id);
            RELATIVE(e.q95, row.number("q95"), 1e-7, id);
            NEAR(mean.chanceOver(2), row.number("P_mean_gt2"), 1e-8, id);
        }
    }
    void eightOfTwentyFour() { // printed with the method: 1.91, 1.16 to 3.13, P(> 2) = .437
        const YardMean mean(washesOf({3, 9, 1, 6, 12, 0, 4, 7}, std::vector<double>(8, 300)), 24);
        NEAR(mean.estimate().q50, 1.91, .005, "median");
        NEAR(mean.estimate().q05, 1.1572997, 1e-6, "lower");
        NEAR(mean.estimate().q95, 3.1257231, 1e-6, "upper");
        NEAR(mean.chanceOver(2), .4374897, 1e-6, "chance");
    }
    void allWashedLeavesMeasurement() {
        const std::vector<Wash> washes = washesOf({3, 9, 1, 6, 12, 0, 4, 7}, std::vector<double>(8, 300));
        const auto width = [&](std::int64_t colonies, double shared) {
            const LoadEstimate e = YardMean(washes, colonies, shared).estimate();
            return e.q95 / e.q05;
        };
        QVERIFY(width(8, 0) < width(12, 0) && width(12, 0) < width(1000, 0));
        QVERIFY(width(8, 0) < width(8, 0.07));
    }
    void oneWashHasThePriorSpread() { // one wash: CV^2 between colonies stays 1, nu = 4
        const YardMean mean(washesOf({9}, {300}), 20);
        const double w = 1.0 / 20 + 0.01;
        NEAR(mean.heterogeneity(), std::log1p(0.95 * 1 * 4 / 2 + w * 2), 1e-12, "by hand");
    }
    void standsOut() {
        std::vector<Wash> washes = washesOf({3, 2, 4, 40, 3, 2}, std::vector<double>(6, 300));
        QVERIFY(chanceAboveOthers(washes, 3) > 0.98);
        QVERIFY(chanceAboveOthers(washes, 1) < 0.35);
        QVERIFY(chanceAboveOthers(washes, 3, 3) < chanceAboveOthers(washes, 3, 1));
        NEAR(chanceAboveOthers(washes, 0), chanceAboveOthers(washes, 4), 1e-12, "alike");
        REFUSES(chanceAboveOthers(washes, 6));
        REFUSES(chanceAboveOthers(std::span(washes).first(1), 0));
        REFUSES(chanceAboveOthers(washes, 0, 0));
    }
    void badYardsAreRefused() {
        std::vector<Wash> washes = washesOf({3, 9}, {300, 300});
        REFUSES(YardMean({}, 5));
        REFUSES(YardMean(washes, 1));
        REFUSES(YardMean(washes, 0));
        REFUSES(YardMean(washes, 2000000000));
        REFUSES(YardMean(washes, 5, kNaN));
        const YardMean mean(washes, 5);
        REFUSES(mean.quantile(1));
        REFUSES(mean.chanceOver(kNaN));
        QCOMPARE(mean.chanceOver(0), 1.0);
        washes[1].recovery = 0.8;
        REFUSES(YardMean(washes, 5));
        washes[1].mites = -1;
        REFUSES(YardMean(washes, 5));
    }
    void tableOfColoniesToWash() {
        const Table table("reference/sample_size_colonies.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            YardPlan plan{row.number("lambda_per100"), 2.85, 0.1, 20, row.number("CVb")};
            const SampleSize n =
                coloniesToWash(plan, row.number("D"), static_cast<std::int64_t>(row.number("N")));
            RELATIVE(n.unbounded, row.number("n_inf"), 1e-8, row.text("N"));
            QCOMPARE(n.washes, row.count("n"));
            QCOMPARE(n.feasible, row.text("feasible") == "TRUE");
        }
    }
    void tableOfTaylor() {
        const Table table("reference/sample_size_taylor.csv");
        NEED_TABLE(table);
        const std::int64_t many = 1000000000000;
        for (const Table::Row& row : table.rows()) {
            const auto of = [&](std::int64_t colonies, bool half = false) {
                return taylorSampleSize(row.number("mean_count_per_sample"), row.number("a"), row.number("b"),
                                        row.number("D"), colonies, half);
            };
            RELATIVE(of(many).unbounded, row.number("n_inf"), 1e-6, row.text("D"));
            QCOMPARE(of(12).washes, row.count("n_N12"));
            QCOMPARE(of(24).washes, row.count("n_N24"));
            QCOMPARE(of(60).washes, row.count("n_N60"));
            QCOMPARE(of(many).washes, row.count("n_ceil"));
            QCOMPARE(of(many, true).washes, row.count("n_CI90_halfwidth_D"));
        }
    }
    void sizesPrintedWithTheMethod() { // D .25, load 2, E 2.85: 10 colonies 8, 24: 11, 60: 13, any: 15
        const YardPlan plan{2, 2.85, 0.1, 20};
        QCOMPARE(coloniesToWash(plan, kPrecisionManagement, 10).washes, std::int64_t{8});
        QCOMPARE(coloniesToWash(plan, kPrecisionManagement, 24).washes, std::int64_t{11});
        QCOMPARE(coloniesToWash(plan, kPrecisionManagement, 60).washes, std::int64_t{13});
        QCOMPARE(coloniesToWash(plan, kPrecisionManagement, 1000000000).washes, std::int64_t{15});
        QVERIFY(!coloniesToWash({0.5, 2.85, 0.1, 20}, 0.25, 10).feasible);
        QCOMPARE(coloniesToWash({0.5, 2.85, 0.1, 20}, 0.25, 24).washes, std::int64_t{17});
        // (1/4 + 1/1)/.0625 = 20; with N = 20: 20/(1 + 1) = 10.
        QCOMPARE(negativeBinomialSampleSize(4, 1, 0.25, 20).washes, std::int64_t{10});
        NEAR(negativeBinomialSampleSize(4, 1, 0.25, 20, true).unbounded, 20 * 2.7055434540954, 1e-8,
             "half width");
        NEAR(taylorSampleSize(2, 1, 1, 0.25, 100).unbounded, 8, 1e-12, "Poisson");
        const double w = 1.0 / 7 + 0.01; // all defaults
        NEAR(coloniesToWash({2, 2.85}, 0.25, 100).unbounded, (0.64 + w * 1.64 + 1 / 5.7) / 0.0625, 1e-9,
             "defaults");
    }
    void badPlansAreRefused() {
        for (const double bad : {0.0, -1.0, kNaN, kInfinity}) {
            REFUSES(coloniesToWash({bad, 2.85}, 0.25, 10));
            REFUSES(coloniesToWash({2, bad}, 0.25, 10));
            REFUSES(coloniesToWash({2, 2.85}, bad, 10));
            REFUSES(taylorSampleSize(bad, 1, 1, 0.25, 10));
            REFUSES(taylorSampleSize(1, bad, 1, 0.25, 10));
            REFUSES(negativeBinomialSampleSize(bad, 1, 0.25, 10));
        }
        REFUSES(coloniesToWash({2, 2.85, kNaN}, 0.25, 10));
        REFUSES(coloniesToWash({2, 2.85, 0.1, 0}, 0.25, 10));
        REFUSES(coloniesToWash({2, 2.85, 0.1, 7, -1}, 0.25, 10));
        REFUSES(coloniesToWash({2, 2.85}, 0.25, 0));
        REFUSES(coloniesToWash({1e-300, 1e-10}, 1e-9, 10));
        REFUSES(taylorSampleSize(1, 1, kNaN, 0.25, 10));
        REFUSES(negativeBinomialSampleSize(1, 0, 0.25, 10));
    }
};

QTEST_APPLESS_MAIN(YardTest)
#include "mites_yard.moc"
