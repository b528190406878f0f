// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// How often ranges hold and chances come true, worked out by summing over all counts (no chance in it),
// against tables that were simulated by another program; and the yard's mean, simulated here too. True bees
// scatter about the stated 300, recovery is Beta(.95, .03), jars differ with the row's shape.
// tests/bench/coverage_study.cpp is the wider study.
#include "mites/classic_limits.h"
#include "mites/efficacy.h"
#include "mites/growth.h"
#include "mites/wash_load.h"
#include "mites/yard_mean.h"
#include "mites_tables.h"

#include <map>
#include <random>

using namespace halfcup::mites;
using namespace halfcup::mites::testing;

namespace {

constexpr double kMean = 0.95;
constexpr double kSpread = 0.03;

struct Node {
    double exposure, weight; // hundreds of bees effectively washed
};

// The exposure's law on a grid: log-normal bees times Beta recovery.
std::vector<Node> exposures(double beesCv, bool recovery = true) {
    const double s = std::sqrt(std::log1p(beesCv * beesCv));
    const double nu = kMean * (1 - kMean) / (kSpread * kSpread) - 1;
    std::vector<Node> nodes;
    double sum = 0;
    for (double y = recovery ? -1.0 : 0.0; y <= (recovery ? 9.0 : 0.0); y += 0.1) // logit of the recovery
        for (double z = s > 0 ? -6.0 : 0.0; z <= (s > 0 ? 6.0 : 0.0); z += 0.25) {
            const double share = recovery ? 1 / (1 + std::exp(-y)) : 1;
            const double logWeight =
                -0.5 * z * z +
                (recovery ? kMean * nu * std::log(share) + (1 - kMean) * nu * std::log1p(-share) : 0.0);
            nodes.push_back({3 * std::exp(s * z - s * s / 2) * share, std::exp(logWeight)});
            sum += nodes.back().weight;
        }
    for (Node& node : nodes)
        node.weight /= sum;
    return nodes;
}

// P(count = 0, 1, ...) at a load, up to where nothing is left.
std::vector<double> counts(double load, double shape, const std::vector<Node>& nodes) {
    const auto size = static_cast<std::size_t>(60 + 12 * load * 3);
    std::vector<double> chances(size, 0.0);
    for (const Node& node : nodes) {
        if (node.weight < 1e-12)
            continue;
        const double mean = load * node.exposure;
        const bool poisson = std::isinf(shape);
        double now = poisson ? std::exp(-mean) : std::exp(-shape * std::log1p(mean / shape));
        for (std::size_t k = 0; k < size; ++k) {
            chances[k] += node.weight * now;
            const auto next = static_cast<double>(k) + 1;
            now *= poisson ? mean / next : (shape + next - 1) / next * mean / (shape + mean);
        }
    }
    return chances;
}

struct Range {
    double lower, upper;
};

Range rangeOf(const QString& method, std::int64_t k, double cv, double shape) {
    Range range{0, 0};
    if (method == "garwood") {
        const Limits limits = garwoodLimits(k, 3 * kMean, 0.9);
        range = {limits.lower, limits.upper};
    } else if (method.startsWith("a0=")) {
        const LogLaw law = washLaw({k, 300, cv, kMean, kSpread, shape}, 0, method == "a0=1" ? 1 : 1.0 / 3);
        range = {std::exp(law.quantile(0.05)), std::exp(law.quantile(0.95))};
    } else {
        Wash wash{k, 300, cv, kMean, kSpread, shape};
        if (method == "jeff_k20")
            wash.jarShape = 20;
        else if (method == "poisson_nocv")
            wash = {k, 300, 0, kMean, kSpread, kInfinity};
        const LoadEstimate e = LoadPosterior(wash).estimate();
        range = {e.q05, e.q95};
    }
    return {k == 0 ? 0 : range.lower, range.upper};
}

} // namespace

class CoverageTest : public QObject {
    Q_OBJECT
private slots:
    void rangesOfOneWash() {
        const Table table("reference/coverage_single_wash.csv");
        NEED_TABLE(table);
        std::map<double, std::vector<Node>> nodes;
        std::map<QString, Range> ranges; // by method, spread, shape and count
        double worst = 0;
        int edged = 0;
        for (const Table::Row& row : table.rows()) {
            const double cv = row.number("bee_cv");
            const double shape = row.number("phi_true");
            const double load = row.number("lambda_per100");
            const QString method = row.text("method");
            if (!nodes.contains(cv))
                nodes[cv] = exposures(cv);
            const std::vector<double> chances = counts(load, shape, nodes[cv]);
            double held = 0;
            double edge = 0; // counts with a limit so near the load that the table's 1e-3 may have put it on
                             // the other side
            for (std::size_t k = 0; k < chances.size(); ++k) {
                if (chances[k] < 1e-7)
                    continue;
                const QString key = QStringLiteral("%1 %2 %3 %4").arg(method).arg(cv).arg(shape).arg(k);
                if (!ranges.contains(key))
                    ranges[key] = rangeOf(method, static_cast<std::int64_t>(k), cv, shape);
                if (ranges[key].lower <= load && load <= ranges[key].upper)
                    held += chances[k];
                if (std::abs(ranges[key].lower / load - 1) < 1e-3 ||
                    std::abs(ranges[key].upper / load - 1) < 1e-3)
                    edge += chances[k];
            }
            edged += edge > 1e-6 ? 1 : 0;
            const double found = std::abs(held - row.number("coverage"));
            worst = std::max(worst, found);
            NEAR(held, row.number("coverage"), 5 * std::max(row.number("mcse"), 3e-4) + edge,
                 QStringLiteral("%1 cv %2 shape %3 load %4").arg(method).arg(cv).arg(shape).arg(load));
        }
        qInfo("largest difference %.4f; %d rows with a limit at the load", worst, edged);
        QVERIFY(edged < 30);
    }
    void chancesAreAsCalibratedAsStated() { // colonies log-normal about the median, sd .8 of ln; jars 20,
                                            // spread .1
        const Table table("reference/p_calibration.csv");
        NEED_TABLE(table);
        const std::vector<Node> nodes = exposures(0.1);
        for (const Table::Row& row : table.rows()) {
            const double median = row.number("pop_median");
            const QStringList ends = row.text("bin").mid(1, row.text("bin").size() - 2).split('-');
            double shown = 0;
            double over = 0;
            double all = 0;
            double prevalence = 0;
            static std::map<double, std::vector<std::pair<double, std::vector<double>>>> populations;
            auto& population = populations[median];
            if (population.empty()) // the line lies midway between two loads, so that each is on one side
                for (int i = -70; i < 70; ++i) {
                    const double step = 0.05 * 0.8;
                    const double load = std::exp(std::log(3.0) + (i + 0.5) * step);
                    const double z = std::log(load / median) / 0.8;
                    if (std::abs(z) < 5)
                        population.emplace_back(load, counts(load, 20, nodes));
                }
            static std::vector<double> chance;
            double weights = 0;
            for (const auto& [load, chances] : population) {
                const double z = std::log(load / median) / 0.8;
                const double weight = std::exp(-0.5 * z * z);
                weights += weight;
                prevalence += load > 3 ? weight : 0;
                for (std::size_t k = 0; k < chances.size(); ++k) {
                    while (chance.size() <= k)
                        chance.push_back(LoadPosterior({static_cast<std::int64_t>(chance.size()), 300, 0.1,
                                                        kMean, kSpread, 20})
                                             .chanceOver(3));
                    if (chance[k] > ends[0].toDouble() - (ends[0] == "0" ? 1 : 0) &&
                        chance[k] <= ends[1].toDouble()) {
                        shown += weight * chances[k] * chance[k];
                        over += load > 3 ? weight * chances[k] : 0;
                        all += weight * chances[k];
                    }
                }
            }
            const double n = row.number("n");
            const QString name = row.text("bin") + row.text("pop_median");
            NEAR(prevalence / weights, row.number("prevalence"), 3e-3, name);
            NEAR(shown / all, row.number("pred"), 5e-3, name);
            const double frequency = over / all;
            NEAR(frequency, row.number("obs"), 5 * std::sqrt(frequency * (1 - frequency) / n) + 3e-3, name);
        }
    }
    void
    efficacyOfOneColony() { // jars 20, spread .1; "held" counts an upper end of 1 where none was found after
        const Table table("reference/efficacy_coverage_single.csv");
        NEED_TABLE(table);
        const std::vector<Node> nodes = exposures(0.1, false);
        double worst = 0;
        for (const Table::Row& row : table.rows()) {
            const double before = row.number("lambda_pre") * kMean;
            const double truth = row.number("eff");
            const std::vector<double> first = counts(before, 20, nodes);
            const std::vector<double> second = counts(before * (1 - truth), 20, nodes);
            double held = 0;
            double enough = 0;
            double heldEnough = 0;
            for (std::size_t k1 = 0; k1 < first.size(); ++k1)
                for (std::size_t k2 = 0; k2 < second.size(); ++k2) {
                    const double weight = first[k1] * second[k2];
                    if (weight < 1e-6)
                        continue;
                    const EfficacyPosterior e({{static_cast<std::int64_t>(k1), 300, 0.1},
                                               {static_cast<std::int64_t>(k2), 300, 0.1}},
                                              20);
                    const double above = e.chanceOver(truth);
                    const bool in = above <= 0.95 && (above >= 0.05 || k2 == 0);
                    held += in ? weight : 0;
                    enough += k1 >= 5 ? weight : 0;
                    heldEnough += in && k1 >= 5 ? weight : 0;
                }
            const QString name = QStringLiteral("%1 %2").arg(before).arg(truth);
            worst = std::max(worst, std::abs(held - row.number("cov")));
            NEAR(held, row.number("cov"), 0.012, name);
            NEAR(enough, row.number("frac_pre_ge5"), 0.012, name);
            NEAR(heldEnough / enough, row.number("cov_given_pre_ge5"), 0.012, name);
        }
        qInfo("largest difference %.4f", worst);
    }
    void meansOfYards() { // log-normal colonies, jars 20, spread .1, recovery .95 +/- .03 common to a yard
        const Table table("reference/yard_mean_coverage.csv");
        NEED_TABLE(table);
        std::mt19937_64 chance(7);
        const auto logNormal = [&chance](double mean, double cv) {
            const double variance = std::log1p(cv * cv);
            return mean *
                   std::exp(std::normal_distribution<double>(-variance / 2, std::sqrt(variance))(chance));
        };
        const double nu = kMean * (1 - kMean) / (kSpread * kSpread) - 1;
        constexpr int kRuns = 1000;
        for (const Table::Row& row : table.rows()) {
            const std::int64_t colonies = row.count("N_colonies");
            const std::int64_t washed = row.count("m_sampled");
            int held = 0;
            for (int run = 0; run < kRuns; ++run) {
                const double a = std::gamma_distribution<double>(kMean * nu, 1)(chance);
                const double recovery =
                    a / (a + std::gamma_distribution<double>((1 - kMean) * nu, 1)(chance));
                double mean = 0;
                std::vector<Wash> washes;
                for (std::int64_t i = 0; i < colonies; ++i) {
                    const double load = logNormal(row.number("mean_load"), row.number("between_CV"));
                    mean += load / static_cast<double>(colonies);
                    if (i >= washed)
                        continue;
                    const double expected = load * logNormal(3, 0.1) * recovery *
                                            std::gamma_distribution<double>(20, 1 / 20.0)(chance);
                    washes.push_back({std::poisson_distribution<std::int64_t>(expected)(chance), 300, 0.1,
                                      kMean, kSpread, 20});
                }
                const YardMean yard(washes, colonies);
                const double below = 1 - yard.chanceOver(mean);
                held += below <= 0.95 && (below >= 0.05 || yard.between().mites == 0) ? 1 : 0;
            }
            NEAR(static_cast<double>(held) / kRuns, row.number("coverage90"), 0.05,
                 QStringLiteral("%1 of %2, load %3, spread %4")
                     .arg(washed)
                     .arg(colonies)
                     .arg(row.number("mean_load"))
                     .arg(row.number("between_CV")));
        }
    }
    void growthOfOneColony() { // three or five washes from day 10 to 70, jars 20, spread .1
        const Table table("reference/growth_coverage_priors.csv");
        NEED_TABLE(table);
        std::mt19937_64 chance(11);
        std::normal_distribution<double> unit;
        const double s = std::sqrt(std::log1p(0.01));
        constexpr int kRuns = 100;
        double sumOfDifferences = 0;
        for (const Table::Row& row : table.rows()) {
            const double growth = row.number("r_true");
            GrowthModel model;
            model.jarShape = 20;
            model.prior.sd = row.text("prior").contains(".015") ? 0.015 : 0.010;
            model.prior.shape =
                row.text("prior").startsWith("t4") ? GrowthPriorShape::StudentT4 : GrowthPriorShape::Normal;
            int heldLoad = 0;
            int heldGrowth = 0;
            for (int run = 0; run < kRuns; ++run) {
                std::vector<DatedWash> washes;
                for (int i = 0; i < row.count("n_washes"); ++i) {
                    const double day = 10 + 60.0 * i / static_cast<double>(row.count("n_washes") - 1);
                    const double expected = row.number("lam_first") * std::exp(growth * (day - 10)) * 3 *
                                            kMean * std::exp(s * unit(chance) - s * s / 2) *
                                            std::gamma_distribution<double>(20, 1 / 20.0)(chance);
                    washes.push_back(
                        {day, std::poisson_distribution<std::int64_t>(expected)(chance), 300, 0.1, kMean});
                }
                const GrowthPosterior found(washes, model);
                const double later = found.lastDay() + 30;
                const double above =
                    found.chanceOver(later, row.number("lam_first") * std::exp(growth * (later - 10)));
                heldLoad += above >= 0.05 && above <= 0.95 ? 1 : 0;
                heldGrowth +=
                    found.growthQuantile(0.05) <= growth && growth <= found.growthQuantile(0.95) ? 1 : 0;
            }
            // Runs here and there: five standard errors of both.
            const QString name = QStringLiteral("%1 %2 washes r %3")
                                     .arg(row.text("prior"))
                                     .arg(row.count("n_washes"))
                                     .arg(growth);
            const auto near = [](double share) {
                return 5 * std::sqrt(std::max(share * (1 - share), 0.01) / kRuns + 1e-4);
            };
            const double load = row.number("cov_lam_plus30");
            NEAR(static_cast<double>(heldLoad) / kRuns, load, near(load), name);
            NEAR(static_cast<double>(heldGrowth) / kRuns, row.number("cov_r"), near(row.number("cov_r")),
                 name);
            sumOfDifferences +=
                (static_cast<double>(heldLoad) / kRuns - load) / static_cast<double>(table.rows().size());
        }
        NEAR(sumOfDifferences, 0, 0.03, "mean difference over all rows");
    }
};

QTEST_APPLESS_MAIN(CoverageTest)
#include "mites_coverage.moc"
