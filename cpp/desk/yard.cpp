// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/calculator.h"
#include "desk/calculators.h"
#include "desk/defaults.h"
#include "desk/wash_cells.h"
#include "mites/yard_mean.h"

namespace halfcup::desk {

namespace {

enum Cell : std::size_t { kYard, kColonies, kMites, kBees, kBeesCv };

constexpr const char* kColumnsOut = R"(
Columns out, a row a yard: yard, washed, mean_q05, mean_q50, mean_q95 (mites per 100 bees), chance_over
(that the yard's mean is over the line), note. The colonies washed have to be chosen at random, or be
all there are: no formula repairs a choice of the strongest.
)";

std::vector<Column> columns() {
    return {{"yard", "name; all rows of one yard together, one row a colony washed", true},
            {"colonies", "how many colonies stand there, the same number in each of the yard's rows", true},
            {"mites", "mites counted, a whole number", true},
            {"bees", "bees washed, arithmetic mean; default: a half cup, 302.17"},
            {"bees_cv", "the part of their spread that differs from scoop to scoop; default 0.1"}};
}

struct Settings {
    double line, jarShape, recovery, recoverySd, scoopSharedSd;
};

class Yard : public Group {
public:
    explicit Yard(const Settings& settings)
        : m_settings(settings) {}

    void clear() override {
        m_washes.clear();
        m_colonies = 0;
    }

    void take(const Table& row) override {
        row.text(kColonies); // no default: how many there are cannot be guessed
        const std::int64_t colonies = row.count(kColonies);
        if (colonies == 0)
            row.complain(kColonies, "a yard with washes has at least one colony.");
        if (m_colonies != 0 && colonies != m_colonies)
            row.complain(kColonies, "the rows of this yard say " + std::to_string(m_colonies) + " and " +
                                        std::to_string(colonies) + " colonies.");
        m_colonies = colonies;
        mites::Wash wash;
        wash.mites = row.count(kMites);
        const OwnBees bees = ownBees(row, kBees, row.number(kBeesCv, mites::kScoopOwnCv, kCvBounds));
        wash.beesMean = bees.mean;
        wash.beesCv = bees.ownCv;
        wash.recovery = m_settings.recovery;
        wash.recoverySd = m_settings.recoverySd;
        wash.jarShape = m_settings.jarShape;
        m_washes.push_back(wash);
    }

    Answer answer() override {
        const mites::YardMean mean(m_washes, m_colonies, m_settings.scoopSharedSd);
        const mites::LoadEstimate range = mean.estimate();
        CsvLine cells;
        cells.add(static_cast<long long>(m_washes.size())).add(range.q05).add(range.q50).add(range.q95);
        cells.add(mean.chanceOver(m_settings.line));
        Answer answer{cells.text(), {}};
        if (mean.point() == 0)
            addNote(answer.note, "None found is not none there.");
        if (m_washes.size() == 1)
            addNote(answer.note, "One colony says little about a yard.");
        return answer;
    }

private:
    Settings m_settings;
    std::vector<mites::Wash> m_washes;
    std::int64_t m_colonies = 0;
};

int run(const Arguments& arguments, Streams& streams) {
    const Settings settings{
        arguments.number("--line", 0, 1e9, false, false), arguments.number("--jar-shape", 0.01, 1e300, true),
        arguments.number("--recovery", 0, 1, false, false), arguments.number("--recovery-sd", 0, 0.5),
        arguments.number("--scoop-shared-sd", 0, 5)};
    Yard yard(settings);
    return answerTogether(arguments, streams, columns(), kYard,
                          {"yard", "washed", "mean_q05", "mean_q50", "mean_q95", "chance_over"}, yard);
}

} // namespace

Verb yardVerb() {
    return {
        .name = "yard",
        .summary = "The mean load of a yard from washes of some of its colonies, or all.",
        .usage = "[OPTIONS] [FILE]",
        .help = csvHelp() + columnHelp(columns()) + kColumnsOut,
        .options = {{"--line", numberText(kTradeLine), "the line, mites per 100 bees"},
                    {"--jar-shape", numberText(mites::kJarShape), "differences between jars; inf for none"},
                    {"--recovery", "1", "share of the mites that is found"},
                    {"--recovery-sd", "0", "its standard deviation, common to all washes"},
                    {"--scoop-shared-sd", "0",
                     "spread of ln(bees) common to all scoops; " + numberText(kScoopSharedSd) +
                         " for a hand that never counted one"}},
        .run = run};
}

} // namespace halfcup::desk
