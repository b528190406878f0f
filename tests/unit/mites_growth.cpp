// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "mites/growth.h"
#include "mites/growth_likelihood.h"
#include "mites/growth_pooled.h"
#include "mites/season_model.h"
#include "mites/wash_load.h"
#include "mites_tables.h"

#include <boost/math/special_functions/gamma.hpp>
#include <map>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

namespace {

// Recovery .95 as in the tables.
std::vector<DatedWash> series(const std::vector<std::pair<double, std::int64_t>>& washes, double cv = 0.1) {
    std::vector<DatedWash> dated;
    for (const auto& [day, mites] : washes)
        dated.push_back({day, mites, 300, cv, 0.95});
    return dated;
}

GrowthModel narrow(double jarShape) {
    GrowthModel model;
    model.prior = {0.021, 0.010};
    model.jarShape = jarShape;
    return model;
}

std::map<QString, std::vector<DatedWash>> seriesOf(const Table& table, double cv) {
    std::map<QString, std::vector<DatedWash>> all;
    for (const Table::Row& row : table.rows())
        all[row.text("id")].push_back(
            {row.number("t_days"), row.count("k_mites"), row.number("n_bees"), cv, 0.95});
    return all;
}

} // namespace

class GrowthTest : public QObject {
    Q_OBJECT
private slots:
    void tableOfSeries() {
        const Table washes("reference/growth_series.csv");
        const Table table("reference/growth_posterior.csv");
        NEED_TABLE(washes);
        NEED_TABLE(table);
        auto exact = seriesOf(washes, 0);
        auto noisy = seriesOf(washes, 0.1);
        for (const Table::Row& row : table.rows()) {
            const bool poisson = row.text("model") == "poisson";
            const QString id = row.text("id") + row.text("model");
            const GrowthPosterior growth(poisson ? exact[row.text("id")] : noisy[row.text("id")],
                                         narrow(poisson ? kInfinity : 20));
            const double last = growth.lastDay();
            // Importance sampling has its own noise; an all-zero series is harder for it.
            const double share = growth.allZero() ? 1e-2 : 3e-3;
            NEAR(growth.growthMean(), row.number("r_mean"), 1e-4, id);
            NEAR(growth.growthSd(), row.number("r_sd"), 1e-4, id);
            NEAR(growth.growthQuantile(0.05), row.number("r_q05"), 1e-4, id);
            NEAR(growth.growthQuantile(0.50), row.number("r_q50"), 1e-4, id);
            NEAR(growth.growthQuantile(0.95), row.number("r_q95"), 1e-4, id);
            const LoadEstimate now = growth.load(last);
            RELATIVE(now.q05, row.number("lamlast_q05"), share, id);
            RELATIVE(now.q50, row.number("lamlast_q50"), share, id);
            RELATIVE(now.q95, row.number("lamlast_q95"), share, id);
            const LoadEstimate ahead = growth.load(last + 30);
            RELATIVE(ahead.q05, row.number("lam30_q05"), share, id);
            RELATIVE(ahead.q50, row.number("lam30_q50"), share, id);
            RELATIVE(ahead.q95, row.number("lam30_q95"), share, id);
            NEAR(growth.chanceOver(last, 3), row.number("P_now_gt3"), 1e-3, id);
            NEAR(growth.chanceCrossed(3, last + 14), row.number("P_cross14"), 1e-3, id);
            NEAR(growth.chanceCrossed(3, last + 30), row.number("P_cross30"), 1e-3, id);
            NEAR(growth.chanceCrossed(3, last + 60), row.number("P_cross60"), 1e-3, id);
            const auto day = [&](double p, const char* column) {
                const double expected = row.number(column);
                NEAR(growth.crossingQuantile(3, p), expected, 0.02 + 3e-3 * expected, id);
            };
            day(0.1, "cross_q10_d");
            day(0.5, "cross_q50_d");
            day(0.9, "cross_q90_d");
        }
    }
    // Series printed with the method, NB, prior N(.021, .010): mean r / P(at least 3 now) / P(cross in 30
    // days).
    void seriesPrintedWithTheMethod() {
        const auto check = [](const std::vector<DatedWash>& washes, double r, double now, double cross) {
            const GrowthPosterior growth(washes, narrow(20));
            NEAR(growth.growthMean(), r, 6e-5, r);
            NEAR(growth.chanceOver(growth.lastDay(), 3), now, 1.1e-3, r);
            NEAR(growth.chanceCrossed(3, growth.lastDay() + 30), cross, 1.1e-3, r);
        };
        check(series({{10, 1}, {40, 2}, {70, 4}, {100, 8}}), .0224, .407, .879);
        check(series({{5, 0}, {35, 0}, {65, 3}}), .0256, .001, .128);
        check(series({{20, 6}}), .0210, .253, .715);
        check(series({{7, 0}, {37, 0}, {67, 0}, {97, 0}}), .0210, 2e-6, .0011);
        std::vector<DatedWash> uneven{{0, 3, 310, 0.1, 0.95}, {60, 12, 295, 0.1, 0.95}};
        check(uneven, .0225, .836, .981);
    }
    void oneWashIsTheLoadOfThatWash() { // and r stays at its prior
        const GrowthPosterior growth(series({{20, 6}}, 0), narrow(7));
        NEAR(growth.growthMean(), 0.021, 1e-7, "prior");
        NEAR(growth.growthSd(), 0.010, 1e-6, "prior");
        NEAR(growth.growthQuantile(0.95), 0.021 + 0.010 * 1.6448536, 2e-5, "prior");
        const LoadPosterior load({6, 300, 0, 0.95, 0, 7});
        RELATIVE(growth.load(20).q05, load.quantile(0.05), 1e-4, "load");
        RELATIVE(growth.load(20).q50, load.quantile(0.50), 1e-4, "load");
        RELATIVE(growth.load(20).q95, load.quantile(0.95), 1e-4, "load");
        NEAR(growth.chanceOver(20, 3), load.chanceOver(3), 1e-4, "chance");
        QVERIFY(!growth.measured() && !growth.allZero());
        // The default prior.
        const GrowthPosterior book(series({{20, 6}}));
        NEAR(book.growthMean(), 0.021, 1e-6, "after Calatayud & Verdu 1993; Martin 1998, from memory");
        NEAR(book.growthSd(), 0.015, 1e-5, "convention");
    }
    void poissonHasAClosedForm() { // load(t_ref) | r ~ Gamma(K + 1/2, S(r)); a prior so tight that r is known
        GrowthModel model;
        model.prior = {0.02, 1e-5};
        model.jarShape = kInfinity;
        const GrowthPosterior growth(series({{0, 2}, {30, 4}}, 0), model);
        const double shape = 6.5;
        const double sum = 2.85 * (std::exp(-0.3) + std::exp(0.3));
        for (const double p : {0.05, 0.5, 0.95})
            RELATIVE(growth.loadQuantile(15, p), boost::math::gamma_p_inv(shape, p) / sum, 3e-4, p);
    }
    void studentTailsAreWider() {
        GrowthModel student = narrow(7);
        student.prior.shape = GrowthPriorShape::StudentT4;
        const std::vector<DatedWash> steep = series({{0, 1}, {30, 30}, {60, 300}});
        QVERIFY(GrowthPosterior(steep, student).growthMean() >
                GrowthPosterior(steep, narrow(7)).growthMean());
        const GrowthPosterior alone(series({{0, 5}}), student);
        NEAR(alone.growthMean(), 0.021, 1e-5, "symmetric");
        // Student t, 4 degrees, cut at 10 scales: 95 % point 2.1318 scales (tables of t), a little less when
        // cut.
        NEAR(alone.growthQuantile(0.95), 0.021 + 0.010 * 2.125, 2e-4, "t4");
        double mass = 0;
        double square = 0;
        for (double z = -9.9995; z < 10; z += 0.001) {
            mass += std::pow(1 + z * z / 4, -2.5);
            square += z * z * std::pow(1 + z * z / 4, -2.5);
        }
        NEAR(alone.growthSd(), 0.010 * std::sqrt(square / mass), 1e-5, "cut at ten scales");
    }
    void sharedErrorWidensTheLevelOnly() {
        GrowthModel shared = narrow(7);
        shared.sharedLogSd = 0.3;
        const std::vector<DatedWash> washes = series({{0, 20}, {40, 40}});
        const GrowthPosterior without(washes, narrow(7));
        const GrowthPosterior with(washes, shared);
        NEAR(with.growthSd(), without.growthSd(), 1e-12, "growth");
        const auto logWidth = [](const GrowthPosterior& g) {
            return std::log(g.load(40).q95 / g.load(40).q05);
        };
        const double expected = std::sqrt(std::pow(logWidth(without), 2) + std::pow(2 * 1.6448536 * 0.3, 2));
        NEAR(logWidth(with), expected, 0.01, "adds in squares");
        RELATIVE(with.load(40).q50, without.load(40).q50, 0.01, "centre");
    }
    void crossingBehaves() {
        const GrowthPosterior growth(series({{10, 1}, {40, 2}, {70, 4}}), narrow(7));
        const double last = growth.lastDay();
        double before = growth.chanceOver(last, 3);
        for (const double ahead : {0.0, 5.0, 30.0, 60.0, 365.0}) {
            const double now = growth.chanceCrossed(3, last + ahead);
            QVERIFY(now >= before - 1e-12 && now <= 1);
            before = now;
        }
        const double day = growth.crossingQuantile(3, 0.5);
        NEAR(growth.chanceCrossed(3, last + day), 0.5, 1e-6, "round trip");
        QCOMPARE(growth.crossingQuantile(0.001, 0.5), 0.0);
        GrowthModel falling = narrow(7);
        falling.prior = {-0.03, 0.005};
        QCOMPARE(GrowthPosterior(series({{0, 3}}), falling).crossingQuantile(30, 0.5), kInfinity);
        QCOMPARE(growth.chanceOver(last, 0), 1.0);
        QCOMPARE(growth.chanceCrossed(0, last), 1.0);
    }
    void knownCourseIsTakenOut() {
        // A straight course of .02 a day with deviation .0 to .01 is the plain model with mean .02.
        GrowthModel straight = narrow(7);
        straight.prior = seasonalPrior();
        straight.drift = [](double day) { return 0.02 * day; };
        GrowthModel plain = narrow(7);
        plain.prior = {0.02, 0.010};
        const std::vector<DatedWash> washes = series({{10, 1}, {40, 2}, {70, 4}});
        const GrowthPosterior a(washes, straight);
        const GrowthPosterior b(washes, plain);
        NEAR(a.growthMean() + 0.02, b.growthMean(), 1e-6, "growth");
        RELATIVE(a.load(100).q95, b.load(100).q95, 1e-4, "load");
        NEAR(a.chanceCrossed(3, 100), b.chanceCrossed(3, 100), 1e-4, "crossing");
        NEAR(a.crossingQuantile(3, 0.5), b.crossingQuantile(3, 0.5), 0.05, "crossing day");
        GrowthModel season = straight;
        season.drift = loadDrift(ColonyCourse{});
        const GrowthPosterior real(series({{150, 3}, {190, 8}}), season);
        QVERIFY(real.load(230).q50 > real.load(190).q50);
        QVERIFY(real.crossingQuantile(3, 0.9) < 365);
        straight.drift = [](double day) { return -0.05 * day; };
        QCOMPARE(GrowthPosterior(series({{0, 3}}), straight).crossingQuantile(30, 0.5), kInfinity);
    }
    void offsetMovesOneWash() { // a wash without brood finds twice as much: told so, nothing else changes
        std::vector<DatedWash> washes = series({{0, 4}, {30, 16}}, 0);
        washes[1].logOffset = std::log(2.0);
        GrowthModel poisson = narrow(kInfinity);
        const GrowthPosterior told(washes, poisson);
        std::vector<DatedWash> twice = series({{0, 4}, {30, 16}}, 0);
        twice[1].beesMean *= 2;
        QVERIFY(std::abs(told.growthMean() - GrowthPosterior(twice, poisson).growthMean()) < 2e-4);
        QVERIFY(told.growthMean() < GrowthPosterior(series({{0, 4}, {30, 16}}, 0), poisson).growthMean());
    }
    void priorsOfTheSeasons() {
        QCOMPARE(broodlessPrior().mean, 0.001);
        QCOMPARE(broodlessPrior().sd, 0.004);
        QCOMPARE(seasonalPrior().mean, 0.0);
        QCOMPARE(seasonalPrior().sd, 0.010);
    }
    void extremesHaveAnswers() {
        for (const auto& washes :
             {series({{0, 0}}), series({{0, 100000}, {1, 0}}), series({{0, 0}, {300, 5000}}),
              series({{0, 5}, {0, 7}, {0, 6}}), series({{-1e6, 3}, {-1e6 + 20, 9}})}) {
            const GrowthPosterior growth(washes);
            const LoadEstimate e = growth.load(growth.lastDay());
            QVERIFY(std::isfinite(e.q05) && e.q05 > 0 && e.q05 < e.q50 && e.q50 < e.q95 &&
                    std::isfinite(e.q95));
            QVERIFY(growth.growthSd() > 0);
        }
        GrowthModel heavy = narrow(0.05);
        QVERIFY(GrowthPosterior(series({{0, 3}, {30, 5}}), heavy).load(30).q95 > 0);
    }
    void badSeriesAreRefused() {
        REFUSES(GrowthPosterior(std::span<const DatedWash>()));
        REFUSES(GrowthPosterior(series({{10, 3}, {5, 3}})));
        REFUSES(GrowthPosterior(series({{kNaN, 3}})));
        REFUSES(GrowthPosterior(series({{0, -3}})));
        std::vector<DatedWash> washes = series({{0, 3}});
        washes[0].beesMean = 0;
        REFUSES(GrowthPosterior(washes));
        washes = series({{0, 3}});
        washes[0].logOffset = kNaN;
        REFUSES(GrowthPosterior(washes));
        GrowthModel bad;
        bad.prior.sd = 0;
        REFUSES(GrowthPosterior(series({{0, 3}}), bad));
        bad.prior = {kNaN, 0.01};
        REFUSES(GrowthPosterior(series({{0, 3}}), bad));
        bad = {};
        bad.sharedLogSd = -1;
        REFUSES(GrowthPosterior(series({{0, 3}}), bad));
        bad = {};
        bad.jarShape = kNaN;
        REFUSES(GrowthPosterior(series({{0, 3}}), bad));
        const GrowthPosterior good(series({{0, 3}}));
        REFUSES(good.growthQuantile(0));
        REFUSES(good.loadQuantile(0, 1));
        REFUSES(good.loadQuantile(kNaN, 0.5));
        REFUSES(good.chanceOver(0, kNaN));
        REFUSES(good.chanceCrossed(3, -1));
        REFUSES(good.chanceCrossed(kNaN, 1));
        REFUSES(good.crossingQuantile(3, 1));
    }
    void
    likelihoodByHand() { // two washes: Poisson sum and Jeffreys' half logarithm; the grid's row is the same
        GrowthModel model = narrow(kInfinity);
        const Series poisson = prepareSeries(series({{0, 2}, {30, 4}}, 0), model);
        QCOMPARE(poisson.refDay, 15.0);
        const double m1 = 2.85 * std::exp(0.5 - 0.3);
        const double m2 = 2.85 * std::exp(0.5 + 0.3);
        NEAR(logSeries(poisson, 0.02, 0.5),
             2 * std::log(m1) - m1 + 4 * std::log(m2) - m2 + 0.5 * std::log(m1 + m2), 1e-12, "Poisson");
        model.jarShape = 7;
        const Series jars = prepareSeries(series({{0, 2}, {30, 4}}), model);
        NEAR(jars.washes[0].shape, 1 / (1.0 / 7 + 0.01), 1e-12, "own spread joins the jar's");
        const double growth = 0.02;
        const EtaGrid grid = etaGrid(jars, std::span(&growth, 1));
        double top = 0;
        const std::vector<double> row = seriesRow(jars, growth, grid, &top);
        QCOMPARE(row.size(), grid.count);
        for (const std::size_t i : {std::size_t{0}, grid.count / 3, grid.count - 1})
            NEAR(std::log(row[i]) + top,
                 logSeries(jars, growth, grid.low + grid.step * static_cast<double>(i)), 1e-9,
                 static_cast<int>(i));
        QVERIFY(row.front() < 1e-12 && row.back() < 1e-12);
    }
    void pooledByHand() {
        // Without data R and r_j are their priors; with one colony r_1 is the plain model of sd sqrt(w^2 +
        // b^2).
        GrowthModel model = narrow(7);
        const std::vector<std::vector<DatedWash>> silent{series({{0, 3}})};
        const YardGrowth prior = poolGrowth(silent, {}, model);
        NEAR(prior.yard.mean, 0.021, 1e-6, "R");
        NEAR(prior.yard.sd, 0.008, 1e-6, "R");
        NEAR(prior.colonies[0].sd, 0.010, 1e-6, "r");
        const std::vector<std::vector<DatedWash>> one{series({{10, 1}, {40, 2}, {70, 4}, {100, 8}})};
        const YardGrowth pooled = poolGrowth(one, {}, model);
        const GrowthPosterior plain(one[0], model);
        NEAR(pooled.colonies[0].mean, plain.growthMean(), 2e-6, "alone");
        NEAR(pooled.colonies[0].sd, plain.growthSd(), 2e-6, "alone");
        // Fast neighbours pull a colony with one wash up.
        const std::vector<DatedWash> fast = series({{0, 1}, {30, 8}, {60, 60}});
        const std::vector<std::vector<DatedWash>> yard{fast, fast, fast, series({{0, 3}})};
        QVERIFY(poolGrowth(yard, {}, model).colonies[3].mean > 0.024);
        QVERIFY(poolGrowth(yard, {}, model).yard.sd < 0.008);
        REFUSES(poolGrowth({}, {}, model));
        REFUSES(poolGrowth(one, {0.02, 0, 0.008}, model));
        REFUSES(poolGrowth(one, {0.02, 0.006, kNaN}, model));
        REFUSES(poolGrowth(one, {kNaN, 0.006, 0.008}, model));
    }
    void tableOfPooledYards() { // the yard of the table holds two series that may not be among the ones here
        const Table washes("reference/growth_series.csv");
        const Table table("reference/growth_yard_pooling.csv");
        NEED_TABLE(washes);
        NEED_TABLE(table);
        for (const bool poisson : {true, false}) {
            auto all = seriesOf(washes, poisson ? 0 : 0.1);
            std::vector<std::vector<DatedWash>> yard;
            const QStringList members{"G01", "G02", "G03", "G05", "G09"};
            for (const QString& id : members)
                if (all.contains(id))
                    yard.push_back(all[id]);
            if (yard.size() < 5)
                QSKIP("Two of the five series of the pooled yard are not on this machine.");
            GrowthModel model = narrow(poisson ? kInfinity : 20);
            const YardGrowth pooled = poolGrowth(yard, {}, model);
            for (const Table::Row& row : table.rows()) {
                if ((row.text("model") == "poisson") != poisson)
                    continue;
                const QString what = row.text("quantity");
                const MeanAndSd found =
                    what == "R" ? pooled.yard
                                : pooled.colonies[static_cast<std::size_t>(members.indexOf(what.mid(2)))];
                NEAR(found.mean, row.number("post_mean"), 5e-5, what);
                NEAR(found.sd, row.number("post_sd"), 5e-5, what);
            }
        }
    }
};

QTEST_APPLESS_MAIN(GrowthTest)
#include "mites_growth.moc"
