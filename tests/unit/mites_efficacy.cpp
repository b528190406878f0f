// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "mites/classic_limits.h"
#include "mites/efficacy.h"
#include "mites/efficacy_textbook.h"
#include "mites_tables.h"

#include <algorithm>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

namespace {

BeforeAfter pair(std::int64_t before, std::int64_t after, double bees = 300, double cv = 0.1) {
    return {{before, bees, cv}, {after, bees, cv}};
}

bool says(const EfficacyPosterior& e, EfficacyCaution caution) {
    return std::find(e.cautions().begin(), e.cautions().end(), caution) != e.cautions().end();
}

} // namespace

class EfficacyTest : public QObject {
    Q_OBJECT
private slots:
    void tableOfRatios() {
        const Table table("reference/efficacy_ratio.csv");
        NEED_TABLE(table);
        for (const Table::Row& row : table.rows()) {
            const QString id = row.text("id");
            const double cv = row.number("bees_cv");
            const auto arm = [&](const char* k1, const char* n1, const char* k2, const char* n2) {
                return BeforeAfter{{row.count(k1), row.number(n1), cv}, {row.count(k2), row.number(n2), cv}};
            };
            std::optional<BeforeAfter> control;
            if (row.has("ctrl_pre_k"))
                control = arm("ctrl_pre_k", "ctrl_pre_n", "ctrl_post_k", "ctrl_post_n");
            const EfficacyPosterior e(arm("pre_k", "pre_n", "post_k", "post_n"), row.number("phi"), control);
            const double point = row.number("point_eff");
            if (std::isfinite(point))
                NEAR(e.point(), point, 1e-7, id);
            else
                QCOMPARE(e.point(), point);
            NEAR(e.q05(), row.number("eff_q05_mc"), 5 * row.number("eff_q05_se"), id);
            NEAR(e.q50(), row.number("eff_q50_mc"), 5 * row.number("eff_q50_se"), id);
            NEAR(e.q95(), row.number("eff_q95_mc"), 5 * row.number("eff_q95_se"), id);
            NEAR(e.chanceOver(0.9), row.number("P_eff_gt90_mc"), 5 * row.number("P_gt90_se") + 1e-6, id);
            NEAR(e.chanceOver(0.8), row.number("P_eff_gt80_mc"), 5 * row.number("P_gt80_se") + 1e-6, id);
            // The collapsed form, good to a thousandth in [-1, 1] and to the same share outside.
            const auto wide = [](double value) { return 1e-3 * std::max(1.0, std::abs(value)); };
            NEAR(e.q05(), row.number("spec_q05"), wide(row.number("spec_q05")), id);
            NEAR(e.q50(), row.number("spec_q50"), wide(row.number("spec_q50")), id);
            NEAR(e.q95(), row.number("spec_q95"), wide(row.number("spec_q95")), id);
            NEAR(e.chanceOver(0.9), row.number("spec_P_gt90"), 1e-3, id);
        }
    }
    void withoutNoiseItIsABeta() { // the exact ratio of two gammas
        const EfficacyPosterior e(pair(20, 2, 300, 0), kInfinity);
        const LimitsAndMedian ratio = jeffreysRatio(20, 1, 2, 1, 0.9);
        NEAR(e.q05(), 1 - ratio.upper, 1e-9, "q05");
        NEAR(e.q50(), 1 - ratio.median, 1e-9, "q50");
        NEAR(e.q95(), 1 - ratio.lower, 1e-9, "q95");
        NEAR(e.chanceOver(e.q50()), 0.5, 1e-9, "round trip");
    }
    void valuesPrintedWithTheMethod() { // shape 20, CV .1: after 0 mites at least 89, 75, 52 %
        NEAR(EfficacyPosterior(pair(20, 0), 20).q05(), .89, .006, "20 to 0");
        NEAR(EfficacyPosterior(pair(9, 0), 20).q05(), .75, .006, "9 to 0");
        NEAR(EfficacyPosterior(pair(5, 0), 20).q05(), .52, .006, "5 to 0");
        const EfficacyPosterior one(pair(1, 0), 20);
        NEAR(one.q05(), -2.6, .05, "1 to 0");
        NEAR(one.q95(), .998, .0006, "1 to 0");
    }
    void pointsAreTheTextbook() {
        const EfficacyPosterior e(pair(50, 5), 7, pair(40, 60));
        NEAR(100 * e.point(), hendersonTiltonPercent(50, 5, 40, 60), 1e-9, "point");
        NEAR(EfficacyPosterior({{50, 300, 0.1}, {5, 150, 0.1}}).point(), 0.8, 1e-12, "bees differ");
        QVERIFY(std::isnan(EfficacyPosterior(pair(0, 0)).point()));
        QCOMPARE(EfficacyPosterior(pair(0, 3)).point(), -kInfinity);
    }
    void cautionsAreSaid() {
        QVERIFY(says(EfficacyPosterior(pair(0, 3)), EfficacyCaution::NoneBefore));
        QVERIFY(says(EfficacyPosterior(pair(4, 3)), EfficacyCaution::FewBefore));
        QVERIFY(!says(EfficacyPosterior(pair(5, 3)), EfficacyCaution::FewBefore));
        QVERIFY(says(EfficacyPosterior(pair(5, 0)), EfficacyCaution::NoneAfter));
        QVERIFY(says(EfficacyPosterior(pair(5, 1), 7, pair(0, 3)), EfficacyCaution::NoneInControl));
        QVERIFY(says(EfficacyPosterior(pair(5, 1), 7, pair(3, 0)), EfficacyCaution::NoneInControl));
        QVERIFY(EfficacyPosterior(pair(50, 5), 7, pair(40, 60)).cautions().empty());
    }
    void orderAndMonotony() {
        double before = 1;
        for (const std::int64_t after : {0, 1, 3, 9, 30, 200}) {
            const EfficacyPosterior e(pair(30, after));
            QVERIFY(e.q05() < e.q50() && e.q50() < e.q95() && e.q95() < 1 && e.q50() < before);
            QVERIFY(e.chanceOver(0.5) >= e.chanceOver(0.9));
            QCOMPARE(e.chanceOver(1), 0.0);
            before = e.q50();
        }
    }
    void sharedErrorsCancel() { // the same figure for both recoveries leaves nothing but the ratio
        BeforeAfter both = pair(30, 3);
        both.before.recovery = both.after.recovery = 0.8;
        NEAR(EfficacyPosterior(both).q05(), EfficacyPosterior(pair(30, 3)).q05(), 1e-9, "same method");
        // A sugar roll after an alcohol wash finds fewer: the same count means more mites.
        both.before.recovery = 0.95;
        both.before.recoverySd = 0.03;
        both.after.recovery = 0.85;
        both.after.recoverySd = 0.08;
        const EfficacyPosterior mixed(both);
        QVERIFY(mixed.q50() < EfficacyPosterior(pair(30, 3)).q50());
        QVERIFY(mixed.q95() - mixed.q05() >
                EfficacyPosterior(pair(30, 3)).q95() - EfficacyPosterior(pair(30, 3)).q05());
    }
    void growthIsTakenOut() {
        const EfficacyPosterior plain(pair(30, 6));
        const EfficacyPosterior grown(pair(30, 6), 7, {}, GrowthCorrection{.days = 40});
        NEAR(1 - grown.point(), 0.2 * std::exp(-0.021 * 40), 1e-12, "default growth a day");
        QVERIFY(grown.q50() > plain.q50());
        const EfficacyPosterior fixed(pair(30, 6), 7, {}, GrowthCorrection{0.021, 0, 40});
        NEAR(1 - fixed.q50(), (1 - plain.q50()) * std::exp(-0.84), 1e-9, "shift only");
        QVERIFY(grown.q95() - grown.q05() > 0);
        // 0.015 * 40 = 0.6 of ln(ratio): with huge counts that is all there is.
        const EfficacyPosterior huge(pair(100000000, 10000000, 300, 0), kInfinity, {},
                                     GrowthCorrection{.days = 40});
        NEAR(std::log((1 - huge.q05()) / (1 - huge.q50())), 0.6 * 1.6448536, 1e-3, "default spread");
        REFUSES(EfficacyPosterior(pair(30, 6), 7, pair(3, 3), GrowthCorrection{}));
        REFUSES(EfficacyPosterior(pair(30, 6), 7, {}, GrowthCorrection{kNaN, 0.01, 30}));
        REFUSES(EfficacyPosterior(pair(30, 6), 7, {}, GrowthCorrection{0.02, -0.01, 30}));
        REFUSES(EfficacyPosterior(pair(30, 6), 7, {}, GrowthCorrection{0.02, 0.01, -1}));
        REFUSES(EfficacyPosterior(pair(30, 6), 7, {}, GrowthCorrection{0.02, 0.01, 3651}));
    }
    void dispersionByHand() {
        // Two colonies of equal scoops without any noise expected: D0 = 1, Dr = 2/1 * sum (k2 - N p)^2 / (K p
        // (1 - p)).
        const std::vector<BeforeAfter> arm{pair(10, 0, 300, 0), pair(10, 20, 300, 0)};
        const double p = 20.5 / 41;
        const double seen = 2 * (std::pow(0 - 10 * 0.5, 2) + std::pow(20 - 30 * 0.5, 2)) / (40 * p * (1 - p));
        NEAR(armDispersion(arm, kInfinity), (4 * 1 + 1 * seen) / 5, 1e-9, "D");
        // Expected from jars and scoops: D0 = 1 + sum N(N-1)/K p(1-p) v, v = 2 ln(1 + CV^2) + 2 psi1(7).
        const BeforeAfter one = pair(20, 20);
        const double v = 2 * std::log(1.01) + 2 * 0.1535451779593379;
        NEAR(armDispersion({&one, 1}, 7), (4 * (1 + 39 * 0.25 * v)) / 4, 1e-9, "D0");
        const BeforeAfter none = pair(0, 0);
        QCOMPARE(armDispersion({&none, 1}, 7), 1.0);
        const std::vector<BeforeAfter> even(5, pair(10, 1, 300, 0));
        QCOMPARE(armDispersion(even, kInfinity), 1.0); // never below 1
    }
    void severalColonies() {
        const std::vector<BeforeAfter> treated{pair(20, 1), pair(35, 4), pair(9, 0), pair(50, 5)};
        const std::vector<BeforeAfter> control{pair(12, 18), pair(25, 33)};
        const EfficacyPosterior e(treated, 7, control);
        NEAR(100 * e.point(), hendersonTiltonPercent(114, 10, 37, 51), 1e-9, "point");
        QVERIFY(e.q05() < e.point() && e.point() < e.q95());
        const EfficacyPosterior alone(std::span(&treated[0], 1), 7);
        NEAR(alone.q05(), EfficacyPosterior(treated[0]).q05(), 1e-12, "an arm of one is one colony");
        // Sums over D with equal scoops: Beta((K2/D) + 1/2, (K1/D) + 1/2).
        const double d = armDispersion(treated, 7);
        const EfficacyPosterior arm(treated, 7);
        QVERIFY(d > 1);
        QVERIFY(arm.q95() - arm.q05() <
                EfficacyPosterior(pair(20, 1)).q95() - EfficacyPosterior(pair(20, 1)).q05());
    }
    void badPairsAreRefused() {
        REFUSES(EfficacyPosterior(pair(-1, 3)));
        REFUSES(EfficacyPosterior(pair(3, 2000000000)));
        for (const double bees : {0.0, -1.0, kNaN, kInfinity})
            REFUSES(EfficacyPosterior(pair(9, 3, bees)));
        REFUSES(EfficacyPosterior(pair(9, 3, 300, kNaN)));
        REFUSES(EfficacyPosterior(pair(9, 3), 0));
        REFUSES(EfficacyPosterior(pair(9, 3), kNaN));
        REFUSES(EfficacyPosterior(pair(9, 3), 7, pair(9, -3)));
        REFUSES(EfficacyPosterior(std::span<const BeforeAfter>(), 7));
        REFUSES(armDispersion({}, 7));
        const EfficacyPosterior e(pair(9, 3));
        REFUSES(e.quantile(0));
        REFUSES(e.chanceOver(kNaN));
    }
};

QTEST_APPLESS_MAIN(EfficacyTest)
#include "mites_efficacy.moc"
