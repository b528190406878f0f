// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "published_checks.h"

#include "mites/classic_limits.h"
#include "mites/efficacy.h"
#include "mites/efficacy_textbook.h"
#include "mites/negative_binomial.h"
#include "mites/sample_size.h"
#include "mites/stop_rule.h"

#include <array>

using namespace halfcup::mites;

class PublishedStatistics : public QObject {
    Q_OBJECT

private slots:
    // Newcombe 1998, Stat Med 17:857-872, table I: the four examples, 95 %, four decimals. Method 3 (Wilson).
    void newcombeWilson() {
        const auto check = [](int k, int n, double low, double high) {
            const Limits limits = wilsonLimits(k, n, 0.95);
            COMPARE_PRINTED(limits.lower, low, 4);
            COMPARE_PRINTED(limits.upper, high, 4);
        };
        check(81, 263, 0.2553, 0.3662);
        check(15, 148, 0.0624, 0.1605);
        check(0, 20, 0.0000, 0.1611);
        check(1, 29, 0.0061, 0.1718);
    }

    // The same examples, exact method (Clopper & Pearson 1934). Computed: 1 - 0.025^(1/20) for 0 in 20; the
    // limits of 15 in 148 by R's binom.test.
    void newcombeExact() {
        COMPARE_PRINTED(clopperPearsonLimits(0, 20, 0.95).upper, 0.1684, 4);
        QCOMPARE_LE(std::abs(clopperPearsonLimits(0, 20, 0.95).upper - (1 - std::pow(0.025, 1.0 / 20))),
                    1e-12);
        const Limits limits = clopperPearsonLimits(15, 148, 0.95);
        COMPARE_PRINTED(limits.lower, 0.0578, 4);
        COMPARE_PRINTED(limits.upper, 0.1617, 4);
    }

    // Garwood 1936, Biometrika 28:437-442, table of fiducial limits. 5 and 9: computed from chi-square
    // quantiles.
    void garwood() {
        COMPARE_PRINTED(garwoodLimits(0, 1, 0.95).upper, 3.689, 3);
        COMPARE_PRINTED(garwoodLimits(25, 1, 0.95).lower, 16.18, 2);
        COMPARE_PRINTED(garwoodLimits(25, 1, 0.95).upper, 36.90, 2);
        COMPARE_PRINTED(garwoodLimits(25, 1, 0.99).lower, 14.00, 2);
        COMPARE_PRINTED(garwoodLimits(25, 1, 0.99).upper, 41.00, 2);
        COMPARE_PRINTED(garwoodLimits(5, 1, 0.95).lower, 1.623, 3);
        COMPARE_PRINTED(garwoodLimits(5, 1, 0.95).upper, 11.668, 3);
        COMPARE_PRINTED(garwoodLimits(9, 1, 0.95).lower, 4.115, 3);
        COMPARE_PRINTED(garwoodLimits(9, 1, 0.95).upper, 17.085, 3);
        QCOMPARE(garwoodLimits(0, 1, 0.95).lower, 0.0);
    }

    // Bliss & Fisher 1953, Biometrics 9:176-200: red mites on 150 apple leaves. Counts published; mean,
    // variance and k computed from them (score equation; R's optim, theta.ml and glm.nb agree to 1e-7).
    void blissAndFisher() {
        const std::array<std::int64_t, 8> leaves{70, 38, 17, 10, 9, 3, 2, 1};
        const NegativeBinomialFit fit = fitNegativeBinomial(leaves);
        COMPARE_PRINTED(fit.mean, 1.146667, 6);
        COMPARE_PRINTED(fit.variance, 2.273647, 6);
        COMPARE_PRINTED(fit.k, 1.024592, 6);
        COMPARE_PRINTED(fit.kSe, 0.2759, 4);
        COMPARE_PRINTED(fit.kByMoments, 1.1667, 4);
        COMPARE_PRINTED(fit.logLikelihood, -222.4372, 4);
        COMPARE_PRINTED(fit.poissonLogLikelihood, -242.8099, 4);
        const KLimits limits = profileLimits(leaves, fit, 0.90);
        COMPARE_PRINTED(limits.lower, 0.6745, 4);
        COMPARE_PRINTED(limits.upper, 1.6563, 4);
        const auto expected = expectedFrequencies(fit, 9);
        const std::array<double, 9> printed{69.488, 37.600, 20.101, 10.703, 5.687,
                                            3.018,  1.600,  0.848,  0.955};
        for (std::size_t i = 0; i < printed.size(); ++i)
            COMPARE_PRINTED(expected.at(i), printed.at(i), 3);
    }

    // Abbott 1925, J Econ Entomol 18:265-267: 100 (x - y)/x. Example with 50 and 2: computed.
    void abbott() {
        QCOMPARE(abbottPercent(50, 2), 96.0);
        // The formula on deaths, 100 (m_T - m_C)/(100 - m_C): computed.
        COMPARE_PRINTED(abbottFromDeathsPercent(92, 5), 91.58, 2);
        COMPARE_PRINTED(abbottFromDeathsPercent(75, 20), 68.75, 2);
        COMPARE_PRINTED(abbottFromDeathsPercent(40, 10), 33.33, 2);
    }

    // Henderson & Tilton 1955, J Econ Entomol 48:157-161; worked examples quoted from a second source.
    void hendersonAndTilton() {
        COMPARE_PRINTED(hendersonTiltonPercent(50, 5, 40, 60), 93.33, 2);
        COMPARE_PRINTED(hendersonTiltonPercent(30, 6, 28, 26), 78.46, 2);
        // Sun & Shepard 1947 equals it algebraically.
        COMPARE_PRINTED(sunShepardPercent(50, 5, 40, 60), 93.33, 2);
        COMPARE_PRINTED(sunShepardPercent(30, 6, 28, 26), 78.46, 2);
        // The app's own point is the same figure.
        const EfficacyPosterior posterior({{50, 300, 0}, {5, 300, 0}}, kJarShape,
                                          BeforeAfter{{40, 300, 0}, {60, 300, 0}});
        COMPARE_PRINTED(100 * posterior.point(), 93.33, 2);
    }

    // EMA/CVMP/EWP/459883/2008, quoted in Dietemann et al. 2013, J Apic Res 52(1), 4.5.4: 95 % synthetic, 90
    // % other.
    void effectiveTreatments() {
        QCOMPARE(kEffectiveSynthetic, 0.95);
        QCOMPARE(kEffectiveOther, 0.90);
    }

    // Wald 1947, Sequential Analysis, section 3.2: boundaries ln((1 - beta)/alpha) and ln(beta/(1 - alpha));
    // for two Poisson rates the evidence of one unit is k ln(l1/l0) - (l1 - l0) E. By hand: 5 ln 2 - 2.
    void waldPoisson() {
        const StopRule rule{2, 4, std::numeric_limits<double>::infinity(), 0.1, 0.1};
        QCOMPARE_LE(std::abs(unitEvidence(rule, {5, 1.0}) - (5 * std::log(2.0) - 2)), 1e-12);
        const StopLines lines = stopLines(rule, 2.85);
        QCOMPARE_LE(std::abs(lines.slope - 2 * 2.85 / std::log(2.0)), 1e-12);
        QCOMPARE_LE(std::abs(lines.upper - std::log(9.0) / std::log(2.0)), 1e-12);
        QCOMPARE_LE(std::abs(lines.lower + lines.upper), 1e-12);
    }

    // Taylor 1961, Nature 189:732-735, and Cochran's finite population: Poisson counts (a = b = 1), mean 5, D
    // = 0.1 need 1/(5 * 0.01) = 20 samples, 1/(1/20 + 1/60) = 15 of 60. By hand.
    void taylorSamples() {
        QCOMPARE_LE(std::abs(taylorSampleSize(5, 1, 1, 0.1, 60).unbounded - 20), 1e-12);
        QCOMPARE(taylorSampleSize(5, 1, 1, 0.1, 60).washes, std::int64_t(15));
    }
};

QTEST_APPLESS_MAIN(PublishedStatistics)
#include "published_statistics.moc"
