// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "mites/stop_rule.h"
#include "mites_tables.h"

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

class StopTest : public QObject {
    Q_OBJECT
private slots:
    void tableOfLines() {
        const Table table("reference/sprt_boundaries.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString id = row.text("id");
            const StopRule rule{row.number("l0"), row.number("l1"), row.number("phi"), row.number("alpha"),
                                row.number("beta")};
            const double exposure = row.number("E");
            const StopLines lines = stopLines(rule, exposure);
            RELATIVE(lines.slope, row.number("slope"), 1e-7, id);
            RELATIVE(lines.upper, row.number("h_upper"), 1e-7, id);
            RELATIVE(lines.lower, row.number("h_lower"), 1e-7, id);
            RELATIVE(lines.evidencePerMite, row.number("llr_per_mite"), 1e-7, id);
            NEAR(lines.slope + lines.lower, row.number("accept0_at_n1"), 1e-6, id);
            NEAR(lines.slope + lines.upper, row.number("reject0_at_n1"), 1e-6, id);
            QCOMPARE(lines.unitsBeforeLow, row.count("n_min_accept_zero"));
            // Forty thousand simulated runs: five standard errors of a share; 0.05 units for the mean number.
            const auto share = [](double p) { return 5 * std::sqrt(std::max(p * (1 - p), 1e-5) / 40000); };
            const std::int64_t most = row.count("nmax");
            const StopRuleBehaviour low = stopRuleBehaviour(rule, exposure, most, rule.low);
            const StopRuleBehaviour high = stopRuleBehaviour(rule, exposure, most, rule.high);
            NEAR(low.chanceHigh, row.number("sim_alpha_trunc"), share(low.chanceHigh), id);
            NEAR(1 - high.chanceHigh, row.number("sim_beta_trunc"), share(high.chanceHigh), id);
            NEAR(low.meanUnits, row.number("ASN_at_l0"), 0.02 * low.meanUnits, id);
            NEAR(high.meanUnits, row.number("ASN_at_l1"), 0.02 * high.meanUnits, id);
            NEAR(low.chanceUnsettled, row.number("undecided_l0"), share(low.chanceUnsettled), id);
            NEAR(high.chanceUnsettled, row.number("undecided_l1"), share(high.chanceUnsettled), id);
        }
    }
    void
    linesPrintedWithTheMethod() { // 2 against 4, E 2.85, shape 20: slope 8.129, +-4.458; low at 3, high at 13
        const StopRule rule{2, 4, 20};
        const StopLines lines = stopLines(rule, 2.85);
        NEAR(lines.slope, 8.129, 5e-4, "slope");
        NEAR(lines.upper, 4.458, 5e-4, "upper");
        NEAR(lines.lower, -4.458, 5e-4, "lower");
        const auto after = [&rule](std::int64_t mites) {
            const StopUnit unit{mites, 2.85};
            return verdict(rule, {&unit, 1});
        };
        QCOMPARE(after(3), Verdict::Low);
        QCOMPARE(after(4), Verdict::GoOn);
        QCOMPARE(after(12), Verdict::GoOn);
        QCOMPARE(after(13), Verdict::High);
        const StopLines colony = stopLines({2, 4, 1.5}, 2.85);
        NEAR(colony.slope, 7.952, 5e-4, "colony slope");
        NEAR(colony.upper, 19.98, 6e-3, "colony upper");
    }
    void evidenceIsALikelihoodRatio() {
        const StopRule poisson{2, 4, kInfinity};
        NEAR(unitEvidence(poisson, {7, 3}), 7 * std::log(2.0) - 6, 1e-12, "Poisson");
        const StopRule nearly{2, 4, 1e9};
        NEAR(unitEvidence(nearly, {7, 3}), 7 * std::log(2.0) - 6, 1e-6, "limit");
        const double phi = 5;
        const auto logNb = [phi](double k, double mean) {
            return k * std::log(mean / (mean + phi)) - phi * std::log1p(mean / phi);
        };
        NEAR(unitEvidence({2, 4, phi}, {7, 3}), logNb(7, 12) - logNb(7, 6), 1e-12, "negative binomial");
        const StopRule book{2, 4};
        QCOMPARE(book.unitShape, 7.0);
        QCOMPARE(book.alpha, 0.1);
        QCOMPARE(book.beta, 0.1);
    }
    void unequalJarsAndForcedVerdicts() {
        const StopRule rule{2, 4, 20};
        const std::vector<StopUnit> units{{8, 2.85}, {6, 2.0}, {9, 3.1}};
        QCOMPARE(verdict(rule, units), Verdict::GoOn);
        QCOMPARE(verdict(rule, units, 4), Verdict::GoOn);
        QCOMPARE(verdict(rule, units, 3), Verdict::HighNotSettled); // 23 against about 22.7
        const std::vector<StopUnit> less{{8, 2.85}, {6, 2.0}, {8, 3.1}};
        QCOMPARE(verdict(rule, less, 3), Verdict::LowNotSettled);
        QCOMPARE(verdict(rule, {}, 3), Verdict::GoOn);
    }
    void colonyAsAUnit() { // printed with the method: 1/phi about .7 to .8
        NEAR(1 / colonyUnitShape(20, 0.1), (1 + 0.05 + 0.01) * 1.64 - 1, 1e-12, "default between colonies");
        NEAR(1 / colonyUnitShape(20, 0.1), 0.74, 0.01, "printed");
    }
    void behaviourIsBelowNominal() {
        const StopRuleBehaviour low = stopRuleBehaviour({2, 4, 20}, 2.85, 12, 2);
        NEAR(low.chanceHigh, .036, .003, "simulated with the method");
        NEAR(low.meanUnits, 2.6, .06, "simulated with the method");
        double before = 0;
        for (const double load : {0.5, 1.0, 2.0, 3.0, 4.0, 8.0}) {
            const double now = stopRuleBehaviour({2, 4, 7}, 2.85, 10, load).chanceHigh;
            QVERIFY(now >= before && now <= 1 + 1e-12);
            before = now;
        }
    }
    void badRulesAreRefused() {
        for (const double bad : {0.0, -1.0, kNaN}) {
            REFUSES(stopLines({bad, 4}, 2.85));
            REFUSES(stopLines({2, bad}, 2.85));
            REFUSES(stopLines({2, 4, bad}, 2.85));
            REFUSES(stopLines({2, 4, 7, bad}, 2.85));
            REFUSES(stopLines({2, 4, 7, 0.1, bad}, 2.85));
            REFUSES(stopLines({2, 4}, bad));
        }
        REFUSES(stopLines({4, 4}, 2.85));
        REFUSES(stopLines({2, kInfinity}, 2.85));
        REFUSES(stopLines({2, 4, 7, 0.5, 0.5}, 2.85));
        REFUSES(unitEvidence({2, 4}, {-1, 2.85}));
        REFUSES(unitEvidence({2, 4}, {2000000000, 2.85}));
        REFUSES(verdict({2, 4}, {}, -1));
        REFUSES(colonyUnitShape(0, 0.1));
        REFUSES(colonyUnitShape(7, kNaN));
        REFUSES(colonyUnitShape(7, 0.1, -1));
        REFUSES(stopRuleBehaviour({2, 4}, 2.85, 0, 2));
        REFUSES(stopRuleBehaviour({2, 4}, 2.85, 10001, 2));
        REFUSES(stopRuleBehaviour({2, 4}, 2.85, 10, kNaN));
        REFUSES(stopRuleBehaviour({2, 4}, 1e6, 10000, 2));
    }
};

QTEST_APPLESS_MAIN(StopTest)
#include "mites_stop.moc"
