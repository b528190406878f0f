// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/calculator.h"
#include "desk/calculators.h"
#include "desk/defaults.h"
#include "desk/wash_cells.h"
#include "mites/growth.h"

#include <boost/math/special_functions/trigamma.hpp>

#include <algorithm>
#include <cmath>

namespace halfcup::desk {

namespace {

enum Cell : std::size_t { kColony, kDay, kMites, kBees, kBeesCv, kRecovery };
constexpr Bounds kDayBounds{-1e6, 1e6, true, false};
// Beyond this a crossing is told in words; the figure stands in its cell all the same.
constexpr double kFarDays = 365;

constexpr const char* kColumnsOut = R"(
Columns out, a row a colony: colony, washes, growth_mean, growth_sd (a day), load_now_q05/50/95,
load_30d_q05/50/95 (mites per 100 bees), chance_now (over the line on the day of the last wash),
chance_14d, chance_30d, chance_60d (over it at some time until then), cross_day_q10/50/90 (days from
the last wash; 0 now, inf never), note.
)";

std::vector<Column> columns() {
    return {{"colony", "name; all rows of one colony together, all since its last treatment", true},
            {"day", "day of the wash, a number from any one origin", true},
            {"mites", "mites counted, a whole number", true},
            {"bees", "bees washed, arithmetic mean; default: a half cup, 302.17"},
            {"bees_cv", "the part of their spread that differs from scoop to scoop; default 0.1"},
            {"recovery", "share of the mites that is found, above 0 to 1; default 1"}};
}

struct Settings {
    double line;
    double recoverySd;
    double scoopSharedSd;
    mites::GrowthModel model;
};

// Var ln c of a Beta with the given mean and sd.
double logRecoveryVariance(double mean, double sd) {
    if (sd == 0)
        return 0;
    const double size = mean * (1 - mean) / (sd * sd) - 1;
    if (!(size > 0))
        throw std::domain_error("The spread of the recovery (--recovery-sd) is too large for its mean.");
    return boost::math::trigamma(mean * size) - boost::math::trigamma(size);
}

class Colony : public Group {
public:
    explicit Colony(Settings settings)
        : m_settings(std::move(settings)) {}

    void clear() override {
        m_washes.clear();
        m_sameRecovery = true;
    }

    void take(const Table& row) override {
        mites::DatedWash wash;
        wash.day = row.number(kDay, std::nullopt, kDayBounds);
        wash.mites = row.count(kMites);
        const OwnBees bees = ownBees(row, kBees, row.number(kBeesCv, mites::kScoopOwnCv, kCvBounds));
        wash.beesMean = bees.mean;
        wash.beesOwnCv = bees.ownCv;
        wash.recovery = row.number(kRecovery, 1.0, kRecoveryBounds);
        m_sameRecovery = m_sameRecovery && (m_washes.empty() || m_washes.front().recovery == wash.recovery);
        m_washes.push_back(wash);
    }

    Answer answer() override {
        std::stable_sort(m_washes.begin(), m_washes.end(),
                         [](const auto& a, const auto& b) { return a.day < b.day; });
        mites::GrowthModel model = m_settings.model;
        model.sharedLogSd = std::sqrt(logRecoveryVariance(meanRecovery(), m_settings.recoverySd) +
                                      std::pow(m_settings.scoopSharedSd, 2));
        const mites::GrowthPosterior growth(m_washes, model);
        const double now = growth.lastDay(), line = m_settings.line;
        const auto today = growth.load(now), ahead = growth.load(now + 30);
        CsvLine cells;
        cells.add(static_cast<long long>(m_washes.size())).add(growth.growthMean()).add(growth.growthSd());
        for (const auto& load : {today, ahead})
            cells.add(load.q05).add(load.q50).add(load.q95);
        cells.add(growth.chanceOver(now, line));
        for (const double days : {14.0, 30.0, 60.0})
            cells.add(growth.chanceCrossed(line, now + days));
        const double middle = growth.crossingQuantile(line, 0.5);
        cells.add(growth.crossingQuantile(line, 0.1)).add(middle).add(growth.crossingQuantile(line, 0.9));
        Answer answer{cells.text(), {}};
        if (!growth.measured())
            addNote(answer.note, "Assumed growth, not measured: one wash.");
        if (growth.allZero())
            addNote(answer.note, "None found in any wash: only the upper ends say something.");
        if (middle > kFarDays)
            addNote(answer.note, "Not over the line within 365 days, more likely than not.");
        if (!m_sameRecovery)
            addNote(answer.note, "Washes with different recoveries.");
        return answer;
    }

private:
    double meanRecovery() const {
        double sum = 0, weights = 0;
        for (const auto& wash : m_washes) {
            sum += wash.beesMean * wash.recovery;
            weights += wash.beesMean;
        }
        return sum / weights;
    }

    Settings m_settings;
    std::vector<mites::DatedWash> m_washes;
    bool m_sameRecovery = true;
};

int run(const Arguments& arguments, Streams& streams) {
    Settings settings;
    settings.line = arguments.number("--line", 0, 1e9, false, false);
    settings.recoverySd = arguments.number("--recovery-sd", 0, 0.5);
    settings.scoopSharedSd = arguments.number("--scoop-shared-sd", 0, 5);
    settings.model.jarShape = arguments.number("--jar-shape", 0.01, 1e300, true);
    settings.model.prior.mean = arguments.number("--growth-mean", -0.5, 0.5);
    settings.model.prior.sd = arguments.number("--growth-sd", 0, 0.05, false, false);
    Colony colony(settings);
    return answerTogether(arguments, streams, columns(), kColony,
                          {"colony", "washes", "growth_mean", "growth_sd", "load_now_q05", "load_now_q50",
                           "load_now_q95", "load_30d_q05", "load_30d_q50", "load_30d_q95", "chance_now",
                           "chance_14d", "chance_30d", "chance_60d", "cross_day_q10", "cross_day_q50",
                           "cross_day_q90"},
                          colony);
}

} // namespace

Verb outlookVerb() {
    return {
        .name = "outlook",
        .summary = "Growth since the last treatment, the load ahead and when the line is crossed.",
        .usage = "[OPTIONS] [FILE]",
        .help = csvHelp() + columnHelp(columns()) + kColumnsOut,
        .options = {{"--line", numberText(kTradeLine), "the line, mites per 100 bees"},
                    {"--jar-shape", numberText(mites::kJarShape), "differences between jars; inf for none"},
                    {"--growth-mean", numberText(mites::kGrowthMean),
                     "growth a day before any wash was seen"},
                    {"--growth-sd", numberText(mites::kGrowthSd), "its standard deviation between colonies"},
                    {"--recovery-sd", "0", "standard deviation of the recovery, common to all washes"},
                    {"--scoop-shared-sd", numberText(kScoopSharedSd),
                     "spread of ln(bees) common to all scoops of one hand"}},
        .run = run};
}

} // namespace halfcup::desk
