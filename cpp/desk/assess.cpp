// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/calculator.h"
#include "desk/calculators.h"
#include "desk/defaults.h"
#include "desk/wash_cells.h"
#include "mites/standing.h"
#include "mites/wash_load.h"

namespace halfcup::desk {

namespace {

enum Cell : std::size_t { kMites, kBees, kBeesCv, kRecovery, kRecoverySd, kJarShapeCell, kLine };

constexpr const char* kColumnsOut = R"(
Columns out: load_q05, load_q50, load_q95 (mites per 100 bees: ends and middle of the 90 % range),
chance_over (that the true load is over the line), standing, note.
)";

std::vector<Column> columns() {
    return {
        {"mites", "mites counted, a whole number", true},
        {"bees",
         "bees washed, arithmetic mean; default: a half cup nobody counted, 302.17 with a spread of 0.1204"},
        {"bees_cv", "their coefficient of variation; default 0.12"},
        {"recovery", "share of the mites that is found, above 0 to 1; default 1"},
        {"recovery_sd", "its standard deviation; default 0"},
        {"jar_shape", "gamma shape of the differences between jars, inf for none; default 7"},
        {"line", "the line, mites per 100 bees; default 3"}};
}

const char* words(mites::Standing standing) {
    switch (standing) {
    case mites::Standing::Under:
        return "Under your line";
    case mites::Standing::Close:
        return "Close to your line";
    case mites::Standing::Over:
        return "Over your line";
    case mites::Standing::CannotTell:
        break;
    }
    return "Can't tell yet";
}

const char* words(mites::Caution caution) {
    switch (caution) {
    case mites::Caution::FewBees:
        return "Very few bees: this says little.";
    case mites::Caution::MoreMitesThanBees:
        return "Unusual: more mites than bees; check that they are not swapped.";
    case mites::Caution::BeyondAdvice:
        return "Beyond any load a line was made for.";
    case mites::Caution::NoneFound:
        break;
    }
    return "None found is not none there.";
}

Answer assess(const Table& row) {
    mites::Wash wash;
    wash.mites = row.count(kMites);
    const auto& book = bookScoop();
    wash.beesMean = row.number(kBees, book.mean, kBeesBounds);
    wash.beesCv = row.number(kBeesCv, row.has(kBees) ? kScoopCv : book.cv, kCvBounds);
    wash.recovery = row.number(kRecovery, 1.0, kRecoveryBounds);
    wash.recoverySd = row.number(kRecoverySd, 0.0, kRecoverySdBounds);
    if (wash.recoverySd > 0 && wash.recoverySd * wash.recoverySd >= wash.recovery * (1 - wash.recovery))
        row.complain(kRecoverySd, shown(row.cell(kRecoverySd)) + " is too large for the recovery beside it.");
    wash.jarShape = row.number(kJarShapeCell, mites::kJarShape, kShapeBounds);
    const double line = row.number(kLine, kTradeLine, kLineBounds);

    const mites::LoadPosterior load(wash);
    const mites::LoadEstimate range = load.estimate();
    const double over = load.chanceOver(line);
    CsvLine cells;
    cells.add(range.q05).add(range.q50).add(range.q95).add(over);
    cells.add(words(mites::standing(range.q50, over, range.q05, range.q95, line, wash.beesMean)));
    Answer answer{cells.text(), {}};
    for (const mites::Caution caution : mites::cautions(wash, range))
        addNote(answer.note, words(caution));
    return answer;
}

} // namespace

Verb assessVerb() {
    return {.name = "assess",
            .summary = "The load of each wash, and what it means against a line.",
            .usage = "[FILE]",
            .help = csvHelp() + columnHelp(columns()) + kColumnsOut,
            .run = [](const Arguments& arguments, Streams& streams) {
                return answerEachRow(arguments, streams, columns(),
                                     {"load_q05", "load_q50", "load_q95", "chance_over", "standing"}, assess);
            }};
}

} // namespace halfcup::desk
