// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "published_checks.h"

#include "mites/scoop.h"
#include "mites/standing.h"
#include "mites/wash_load.h"

#include <array>

using namespace halfcup::mites;

namespace {

constexpr double kNone = std::numeric_limits<double>::infinity();

// A wash of half a cup nobody counted scoops of, as the washed load is held against lines.
LoadPosterior halfCup(std::int64_t mites) {
    const BeesInScoop scoop = scoopFromVolume(kHalfCupMl);
    return LoadPosterior({mites, scoop.mean, scoop.cv, 1, 0, kJarShape});
}

double plainLoad(double mites, double bees) {
    return 100 * mites / bees;
}

} // namespace

class PublishedWashes : public QObject {
    Q_OBJECT

private slots:
    // The trade's rule, 9 mites in a half cup is 3 per 100: common practice, no source. It is the plain
    // ratio, with no correction in it, so the washed load has recovery 1 and its middle lies within 7 % of
    // the rule.
    void theTradesRule() {
        QCOMPARE(plainLoad(9, kBeesPerHalfCup), 3.0);
        QCOMPARE(washedRecovery(WashMethod::Alcohol).mean, 1.0);
        QCOMPARE(washedRecovery(WashMethod::Alcohol).sd, 0.0);
        QCOMPARE_LE(std::abs(halfCup(9).estimate().q50 / 3 - 1), 0.07);
        // With bees known, no differences between jars and many mites the posterior is the plain ratio.
        const LoadPosterior many({90000, 3000000, 0, 1, 0, kNone});
        QCOMPARE_LE(std::abs(many.quantile(0.5) - 3), 3e-5);
    }

    // Bees in half a cup: 250 to 400 by source (trade; University of Minnesota, poster 155; Mississippi State
    // University Extension). 9 mites read with each: computed, two decimals.
    void nineMitesByScoop() {
        const std::array<std::pair<double, double>, 4> read{
            {{250, 3.60}, {300, 3.00}, {350, 2.57}, {400, 2.25}}};
        for (const auto& [bees, load] : read)
            COMPARE_PRINTED(plainLoad(9, bees), load, 2);
        // 1 fl oz of settled bees is about 100 (poster 155), half a cup is 4: 3.38 a ml. 300 in 100 ml:
        // Dietemann et al. 2013, J Apic Res 52(1), 4.2.3.1.1.
        COMPARE_PRINTED(400 / kHalfCupMl, 3.38, 2);
        COMPARE_PRINTED(kBeesPerHalfCup / kHalfCupMl, 2.54, 2);
        QCOMPARE_LE(std::abs(scoopFromVolume(100, 3.0).median - 300), 1e-9);
        QCOMPARE_LE(std::abs(scoopFromVolume(kHalfCupMl).median - 300), 1e-9);
    }

    // Dietemann et al. 2013 print 43 mites on 310 bees as 14.3; 100 * 43/310 is 13.87, and so is ours.
    void aMisprintIsNotFollowed() {
        COMPARE_PRINTED(plainLoad(43, 310), 13.87, 2);
        const double middle = LoadPosterior({43000, 310000, 0, 1, 0, kNone}).quantile(0.5);
        COMPARE_PRINTED(middle, 13.87, 2);
        QVERIFY(!asPrinted(middle, 14.3, 1));
    }

    // German wash scale: 10 g of live bees are about 100 (quoted). Aurell et al. 2024, J Insect Sci (data
    // CC-BY-4.0): 100 drained bees after an alcohol wash weigh 18.3 g.
    void beesByMass() {
        QCOMPARE_LE(std::abs(scoopFromLiveMass(30).median - 300), 1e-9);
        QCOMPARE_LE(std::abs(scoopFromDrainedMass(54.9).median - 300), 1e-9);
    }

    // 0.99^300 and 0.99^100: computed. Nothing found at a true 1 per 100; three and four figures after the
    // point.
    void nothingFound() {
        COMPARE_PRINTED(std::pow(1 - 0.01, 300), 0.0490, 4);
        COMPARE_PRINTED(std::pow(1 - 0.01, 100), 0.366, 3);
        // The program's answer to nothing found points the same way: with 300 bees known exactly a load over
        // 1 is unlikely, with 100 it is not.
        const double with300 = LoadPosterior({0, 300, 0, 1, 0, kNone}).chanceOver(1);
        const double with100 = LoadPosterior({0, 100, 0, 1, 0, kNone}).chanceOver(1);
        // chi-square with one degree over 6 and over 2 (Abramowitz & Stegun, table 26.8 and its formula
        // erfc).
        QCOMPARE_LE(std::abs(with300 - std::erfc(std::sqrt(3.0))), 1e-10);
        QCOMPARE_LE(std::abs(with100 - std::erfc(1.0)), 1e-10);
    }

    // Ends and middle of the 90 % range and the chance of more than 3, half a cup, jar shape 7: by adaptive
    // integration in R (integrate, 1e-10), to the digits printed there.
    void halfCupsByIntegration() {
        struct Row {
            int mites;
            double q05, q50, q95, over3;
        };
        const std::array<Row, 8> rows{{{0, .00068, .07976, .77418, .00091},
                                       {1, .05684, .41357, 1.69661, .00825},
                                       {3, .32541, 1.10932, 3.28506, .06618},
                                       {5, .65660, 1.80842, 4.80002, .19605},
                                       {8, 1.18933, 2.85850, 7.03197, .46391},
                                       {9, 1.37140, 3.20871, 7.77088, .55148},
                                       {12, 1.92453, 4.25961, 9.97977, .76367},
                                       {20, 3.42333, 7.06310, 15.8429, .97487}}};
        for (const Row& row : rows) {
            const LoadPosterior load = halfCup(row.mites);
            const LoadEstimate range = load.estimate();
            COMPARE_PRINTED(range.q05, row.q05, 5);
            COMPARE_PRINTED(range.q50, row.q50, 5);
            // 9 mites: 7.770885046, so near the middle of two printed figures that integration may fall
            // either way.
            QVERIFY(asPrinted(range.q95, row.q95, row.mites == 20 ? 4 : 5) ||
                    (row.mites == 9 && asPrinted(range.q95, 7.770885, 6)));
            COMPARE_PRINTED(load.chanceOver(3), row.over3, 5);
        }
        COMPARE_PRINTED(halfCup(5).chanceOver(1.7), .54137, 5);
    }

    // The same as a keeper reads them: 9 mites 3.2 (1.4 to 7.8), 55 %; 8 mites 46 %, close to the line of 3;
    // 5 mites 54 % over an own line of 1.7 and 19.6 % over 3; none 0 to 0.8.
    void halfCupsAsShown() {
        const LoadEstimate nine = halfCup(9).estimate();
        COMPARE_PRINTED(nine.q50, 3.2, 1);
        COMPARE_PRINTED(nine.q05, 1.4, 1);
        COMPARE_PRINTED(nine.q95, 7.8, 1);
        const auto standingOf = [](int mites, double line) {
            const LoadPosterior load = halfCup(mites);
            const LoadEstimate range = load.estimate();
            return standing(range.q50, load.chanceOver(line), range.q05, range.q95, line,
                            load.wash().beesMean);
        };
        COMPARE_PRINTED(100 * halfCup(9).chanceOver(3), 55, 0);
        COMPARE_PRINTED(100 * halfCup(8).chanceOver(3), 46, 0);
        COMPARE_PRINTED(100 * halfCup(5).chanceOver(1.7), 54, 0);
        COMPARE_PRINTED(100 * halfCup(5).chanceOver(3), 19.6, 1);
        COMPARE_PRINTED(halfCup(0).estimate().q95, 0.8, 1);
        QCOMPARE(standingOf(9, 3), Standing::Over);
        QCOMPARE(standingOf(8, 3), Standing::Close);
        QCOMPARE(standingOf(5, 3), Standing::Under);
        QCOMPARE(standingOf(5, 1.7), Standing::Over);
        QCOMPARE(standingOf(0, 3), Standing::Under);
    }

    // R 4.2: qgamma(c(.05,.5,.95), 9.5, 3). 9 mites, 300 bees known, everything found, jars alike.
    void gammaQuantiles() {
        const LoadEstimate range = LoadPosterior({9, 300, 0, 1, 0, kNone}).estimate();
        COMPARE_PRINTED(range.q05, 1.686168844, 9);
        COMPARE_PRINTED(range.q50, 3.056275483, 9);
        COMPARE_PRINTED(range.q95, 5.023921201, 9);
    }

    // Normal-inverse-chi-square update of counted scoops (Gelman et al., Bayesian Data Analysis, 3.3), by
    // hand for none: s^2 = 0.08^2 * 6/4 * (1 + 1/2) = 0.0144. Five scoops (340, 355, 310, 362, 330): computed
    // in R.
    void countedScoops() {
        const BeesInScoop none = scoopFromVolume(kHalfCupMl);
        COMPARE_PRINTED(none.mean, 302.17, 2);
        COMPARE_PRINTED(none.cv, 0.1204, 4);
        QCOMPARE_LE(std::abs(none.mean - 300 * std::exp(0.0144 / 2)), 1e-9);
        const std::array<double, 5> counts{340, 355, 310, 362, 330};
        const BeesInScoop five = scoopFromCounts(kHalfCupMl, counts);
        COMPARE_PRINTED(five.median, 327.2905, 4);
        COMPARE_PRINTED(five.mean, 328.8484, 4);
        COMPARE_PRINTED(five.cv, 0.09768560, 8);
    }
};

QTEST_APPLESS_MAIN(PublishedWashes)
#include "published_washes.moc"
