// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// Textbook limits and formulas, and the negative binomial fit.
#include "mites/classic_limits.h"
#include "mites/efficacy_textbook.h"
#include "mites/negative_binomial.h"
#include "mites_tables.h"

#include <array>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

class ClassicTest : public QObject {
    Q_OBJECT
private slots:
    void tableOfExactLimits() { // R 4.2: binom.test, prop.test, poisson.test, qbeta, qgamma
        const Table table("reference/classic_exact.csv");
        NEED_TABLE(table);
        int seen = 0;
        for (const Table::Row& row : table.rows()) {
            const QString name = row.text("case");
            const std::int64_t k = row.count("k");
            const std::int64_t n = row.count("n_or_exposure");
            const double arg = row.number("arg");
            const double hundreds = static_cast<double>(n) / 100;
            const auto limits = [&](double lower, double upper) {
                NEAR(lower, row.number("lower"), 1e-11 + 2e-9 * std::abs(lower), name);
                NEAR(upper, row.number("upper"), 1e-11 + 2e-9 * std::abs(upper), name);
            };
            const auto point = [&](double value) {
                NEAR(value, row.number("point_or_p"), 1e-11 + 2e-9 * std::abs(value), name);
            };
            ++seen;
            if (name.startsWith("binom.test")) {
                limits(clopperPearsonLimits(k, n, arg).lower, clopperPearsonLimits(k, n, arg).upper);
            } else if (name.contains("(no cc)")) {
                limits(wilsonLimits(k, n, arg).lower, wilsonLimits(k, n, arg).upper);
            } else if (name.contains("(cc)")) {
                limits(wilsonCorrectedLimits(k, n, arg).lower, wilsonCorrectedLimits(k, n, arg).upper);
            } else if (name.startsWith("poisson.test Garwood")) {
                limits(garwoodLimits(k, hundreds, arg).lower, garwoodLimits(k, hundreds, arg).upper);
            } else if (name.startsWith("Jeffreys beta")) {
                const LimitsAndMedian e = jeffreysShare(k, n, arg);
                limits(e.lower, e.upper);
                point(e.median);
            } else if (name.startsWith("Jeffreys gamma")) {
                const LimitsAndMedian e = jeffreysRate(k, hundreds, arg);
                limits(e.lower, e.upper);
                point(e.median);
            } else if (name.startsWith("P(lambda>T)")) {
                point(jeffreysRateOver(k, hundreds, arg));
            } else if (name.startsWith("poisson.test one-sided")) {
                point(poissonTestAbove(k, hundreds, arg));
            } else if (name.startsWith("poisson.test ratio")) { // here k is after, n before
                limits(poissonRatioLimits(n, 1, k, 1, arg).lower, poissonRatioLimits(n, 1, k, 1, arg).upper);
            } else if (name.startsWith("Jeffreys Beta(k2")) {
                const LimitsAndMedian e = jeffreysRatio(n, 1, k, 1, arg);
                limits(e.lower, e.upper);
                point(e.median);
            } else {
                QFAIL(qPrintable("an unknown kind of row: " + name));
            }
        }
        QVERIFY(seen > 60);
    }
    void newcombe1998() { // Stat Med 17:857-872, table I: 95 % limits, four digits printed
        const auto check = [](std::int64_t k, std::int64_t n, double lower, double upper) {
            NEAR(wilsonLimits(k, n, 0.95).lower, lower, 5e-5, k);
            NEAR(wilsonLimits(k, n, 0.95).upper, upper, 5e-5, k);
        };
        check(81, 263, .2553, .3662);
        check(15, 148, .0624, .1605);
        check(0, 20, 0, .1611);
        check(1, 29, .0061, .1718);
        NEAR(clopperPearsonLimits(0, 20, 0.95).upper, .1684, 5e-5, "exact");
        NEAR(clopperPearsonLimits(15, 148, 0.95).lower, .0578, 5e-5, "exact");
        NEAR(clopperPearsonLimits(15, 148, 0.95).upper, .1617, 5e-5, "exact");
    }
    void correctedWilsonIsWider() { // R 4.2: prop.test(9, 300, conf.level = .9)
        NEAR(wilsonCorrectedLimits(9, 300, 0.9).lower, 1.63059794292e-02, 1e-12, "lower");
        NEAR(wilsonCorrectedLimits(9, 300, 0.9).upper, 5.29286266804e-02, 1e-12, "upper");
        QCOMPARE(wilsonCorrectedLimits(0, 20, 0.95).lower, 0.0);
        QCOMPARE(wilsonCorrectedLimits(20, 20, 0.95).upper, 1.0);
    }
    void garwood1936() { // Biometrika 28:437-442: 95 % limits of a Poisson mean
        NEAR(garwoodLimits(0, 1, 0.95).upper, 3.689, 5e-4, "0");
        NEAR(garwoodLimits(5, 1, 0.95).lower, 1.623, 5e-4, "5");
        NEAR(garwoodLimits(5, 1, 0.95).upper, 11.668, 5e-4, "5");
        NEAR(garwoodLimits(25, 1, 0.95).lower, 16.18, 5e-3, "25");
        NEAR(garwoodLimits(25, 1, 0.95).upper, 36.90, 5e-3, "25");
        NEAR(garwoodLimits(25, 1, 0.99).lower, 14.00, 5e-3, "25");
        NEAR(garwoodLimits(25, 1, 0.99).upper, 41.00, 5e-3, "25");
        QCOMPARE(garwoodLimits(0, 1, 0.95).lower, 0.0);
    }
    void testOfOneSide() {
        QCOMPARE(poissonTestAbove(0, 3, 3), 1.0);
        NEAR(poissonTestAbove(1, 3, 3), 0.99987659, 5e-9, "1 - e^-9");
        QCOMPARE(poissonTestAbove(3, 3, 0), 0.0);
        QCOMPARE(poissonRatioLimits(0, 1, 3, 1, 0.9).upper, kInfinity);
        QCOMPARE(poissonRatioLimits(3, 1, 0, 1, 0.9).lower, 0.0);
        RELATIVE(poissonRatioLimits(5, 2, 5, 1, 0.9).upper, 2 * 3.49557206590, 1e-10, "exposures");
        RELATIVE(jeffreysRatio(20, 3, 2, 1, 0.9).median, 3 * jeffreysRatio(20, 1, 2, 1, 0.9).median, 1e-12,
                 "exposures");
        QCOMPARE(jeffreysRateOver(3, 3, 0), 1.0);
    }
    void badLimitsAreRefused() {
        REFUSES(wilsonLimits(-1, 20, 0.9));
        REFUSES(wilsonLimits(21, 20, 0.9));
        REFUSES(wilsonCorrectedLimits(1, 0, 0.9));
        REFUSES(clopperPearsonLimits(1, 20, 1));
        REFUSES(clopperPearsonLimits(1, 20, kNaN));
        REFUSES(garwoodLimits(3, 0, 0.9));
        REFUSES(garwoodLimits(3, kInfinity, 0.9));
        REFUSES(garwoodLimits(2000000000, 1, 0.9));
        REFUSES(poissonTestAbove(3, 1, -1));
        REFUSES(poissonRatioLimits(0, 1, 0, 1, 0.9));
        REFUSES(jeffreysShare(1, 0, 0.9));
        REFUSES(jeffreysRate(1, kNaN, 0.9));
        REFUSES(jeffreysRateOver(1, 1, kNaN));
        REFUSES(jeffreysRatio(-1, 1, 1, 1, 0.9));
    }
    void abbott1925() { // J Econ Entomol 18:265: 50 living untreated, 2 treated: 96 %
        QCOMPARE(abbottPercent(50, 2), 96.0);
        const Table table("reference/efficacy_abbott.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows())
            NEAR(abbottFromDeathsPercent(row.number("dead_treated_pct"), row.number("dead_control_pct")),
                 row.number("Abbott_corrected_pct"), 1e-9, row.text("id"));
    }
    void hendersonTilton1955() { // worked examples quoted from J Econ Entomol 48:157
        NEAR(hendersonTiltonPercent(50, 5, 40, 60), 93.33, 5e-3, "first");
        NEAR(hendersonTiltonPercent(30, 6, 28, 26), 78.46, 5e-3, "second");
        NEAR(hendersonTiltonPercent(80, 40, 75, 60), 37.5, 1e-12, "third");
        const Table table("reference/efficacy_henderson_tilton.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString id = row.text("id");
            const double tb = row.number("T_pre");
            const double ta = row.number("T_post");
            const double cb = row.number("C_pre");
            const double ca = row.number("C_post");
            NEAR(hendersonTiltonPercent(tb, ta, cb, ca), row.number("HendersonTilton_pct"), 1e-10, id);
            NEAR(abbottPercent(ca, ta), row.number("Abbott_postonly_pct"), 1e-10, id);
            NEAR(fallPercent(tb, ta), row.number("prepost_uncorrected_pct"), 1e-10, id);
            NEAR(sunShepardPercent(tb, ta, cb, ca), row.number("SunShepard_pct"), 1e-10, id);
        }
    }
    void textbookEdges() {
        QVERIFY(std::isinf(hendersonTiltonPercent(0, 5, 40, 60)));
        QVERIFY(std::isnan(fallPercent(0, 0)));
        NEAR(sunShepardPercent(50, 5, 40, 60), hendersonTiltonPercent(50, 5, 40, 60), 1e-10, "same algebra");
        for (const double bad : {-1.0, kNaN, kInfinity}) {
            REFUSES(abbottPercent(bad, 1));
            REFUSES(hendersonTiltonPercent(1, bad, 1, 1));
            REFUSES(sunShepardPercent(1, 1, bad, 1));
            REFUSES(fallPercent(1, bad));
            REFUSES(abbottFromDeathsPercent(bad, 1));
        }
        REFUSES(abbottFromDeathsPercent(101, 1));
    }
    // Bliss & Fisher 1953, Biometrics 9:176-200: European red mites on 150 apple leaves.
    void blissAndFisher1953() {
        const std::vector<std::int64_t> leaves{70, 38, 17, 10, 9, 3, 2, 1};
        const NegativeBinomialFit fit = fitNegativeBinomial(leaves);
        NEAR(fit.mean, 1.146667, 5e-7, "mean");
        NEAR(fit.variance, 2.273647, 5e-7, "variance");
        NEAR(fit.k, 1.0246, 5e-5, "k");
        NEAR(fit.kByMoments, 1.1667, 5e-5, "k by moments");
        NEAR(fit.kSe, .2759, 5e-5, "s.e.");
        NEAR(fit.logLikelihood, -222.4372, 5e-5, "log likelihood");
        NEAR(fit.poissonLogLikelihood, -242.8099, 5e-5, "Poisson");
        const KLimits limits = profileLimits(leaves, fit, 0.90);
        NEAR(limits.lower, .6745, 5e-5, "profile");
        NEAR(limits.upper, 1.6563, 5e-5, "profile");
        const std::array<double, 9> printed{69.488, 37.600, 20.101, 10.703, 5.687, 3.018, 1.600, .848, .955};
        const std::vector<double> expected = expectedFrequencies(fit, 9);
        for (std::size_t i = 0; i < printed.size(); ++i)
            NEAR(expected[i], printed[i], 5e-4, static_cast<int>(i));
        const Table table("reference/bliss_fisher_1953.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString name = row.text("quantity");
            const double value = row.number("value");
            if (name == "n_leaves")
                QCOMPARE(fit.items, value);
            else if (name == "mean_mites_per_leaf")
                NEAR(fit.mean, value, 1e-11, name);
            else if (name == "var")
                NEAR(fit.variance, value, 1e-11, name);
            else if (name == "k_ML_optim") // a general optimiser: less exact
                NEAR(fit.k, value, 1e-6, name);
            else if (name == "k_moment")
                NEAR(fit.kByMoments, value, 1e-10, name);
            else if (name.startsWith("k_profile90"))
                NEAR(name.endsWith("lo") ? limits.lower : limits.upper, value, 1e-6, name);
            else if (name.startsWith("k_profile95")) {
                const KLimits wide = profileLimits(leaves, fit, 0.95);
                NEAR(name.endsWith("lo") ? wide.lower : wide.upper, value, 1e-6, name);
            } else if (name.startsWith("k_"))
                NEAR(fit.k, value, 1e-10, name);
            else if (name.startsWith("se_k"))
                NEAR(fit.kSe, value, 1e-8, name);
            else if (name.startsWith("loglik"))
                NEAR(name.endsWith("ML") ? fit.logLikelihood : fit.poissonLogLikelihood, value, 1e-9, name);
            else if (name.startsWith("expected_"))
                NEAR(expected[static_cast<std::size_t>(name[9].digitValue())], value, 1e-9, name);
            else
                QFAIL(qPrintable("an unknown quantity: " + name));
        }
    }
    void evenCountsHaveNoFiniteK() {
        const std::vector<std::int64_t> even{0, 0, 50};
        const NegativeBinomialFit fit = fitNegativeBinomial(even);
        QCOMPARE(fit.k, kInfinity);
        QCOMPARE(fit.kByMoments, kInfinity);
        QVERIFY(std::isnan(fit.kSe));
        QCOMPARE(fit.logLikelihood, fit.poissonLogLikelihood);
        const KLimits limits = profileLimits(even, fit, 0.9);
        QVERIFY(limits.lower > 0 && std::isinf(limits.upper));
        const std::vector<double> expected = expectedFrequencies(fit, 3);
        NEAR(expected[0], 50 * std::exp(-2.0), 1e-9, "Poisson");
        NEAR(expected[0] + expected[1] + expected[2], 50, 1e-9, "sum");
        REFUSES(fitNegativeBinomial({}));
        REFUSES(fitNegativeBinomial(std::vector<std::int64_t>{5}));
        REFUSES(fitNegativeBinomial(std::vector<std::int64_t>{0, 1}));
        REFUSES(fitNegativeBinomial(std::vector<std::int64_t>{3, -1, 4}));
        REFUSES(profileLimits(even, fit, 0));
        REFUSES(expectedFrequencies(fit, 0));
        REFUSES(expectedFrequencies(fit, 100001));
        QCOMPARE(expectedFrequencies(fit, 100000).size(), std::size_t{100000});
    }
};

QTEST_APPLESS_MAIN(ClassicTest)
#include "mites_classic.moc"
