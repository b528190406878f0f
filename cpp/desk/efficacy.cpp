// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/efficacy.h"

#include "desk/calculator.h"
#include "desk/calculators.h"
#include "desk/wash_cells.h"

#include <cmath>

namespace halfcup::desk {

namespace {

enum Cell : std::size_t {
    kBeforeMites,
    kBeforeBees,
    kAfterMites,
    kAfterBees,
    kControlBeforeMites,
    kControlBeforeBees,
    kControlAfterMites,
    kControlAfterBees,
    kBeesCv,
    kJarShapeCell
};

constexpr const char* kColumnsOut = R"(
Columns out, as fractions, which may be negative: efficacy_point (Henderson & Tilton where there is
an untreated colony), efficacy_q05, efficacy_q50, efficacy_q95, chance_over_90, note.
)";

std::vector<Column> columns() {
    return {{"before_mites", "mites counted before the treatment, a whole number", true},
            {"before_bees", "bees washed then; default: a half cup, 302.17"},
            {"after_mites", "mites counted after it", true},
            {"after_bees", "bees washed then"},
            {"control_before_mites", "the same of an untreated colony; both control counts or neither"},
            {"control_before_bees", "bees washed there"},
            {"control_after_mites", "mites counted there, the second time"},
            {"control_after_bees", "bees washed there, the second time"},
            {"bees_cv", "spread of the bees from scoop to scoop; what all scoops share cancels; default 0.1"},
            {"jar_shape", "gamma shape of the differences between jars, inf for none; default 7"}};
}

const char* words(mites::EfficacyCaution caution) {
    switch (caution) {
    case mites::EfficacyCaution::NoneBefore:
        return "Nothing found before: it cannot be estimated.";
    case mites::EfficacyCaution::FewBefore:
        return "Few mites before: the figure says little.";
    case mites::EfficacyCaution::NoneAfter:
        return "Nothing found after: read it as at least efficacy_q05.";
    case mites::EfficacyCaution::NoneInControl:
        break;
    }
    return "Nothing found in the untreated colony: the correction is weak.";
}

Answer efficacy(const Table& row) {
    const double ownCv = row.number(kBeesCv, mites::kScoopOwnCv, kCvBounds);
    const double shape = row.number(kJarShapeCell, mites::kJarShape, kShapeBounds);
    const auto count = [&](std::size_t mitesCell, std::size_t beesCell) {
        mites::Count one;
        one.mites = row.count(mitesCell);
        one.beesMean = ownBees(row, beesCell, ownCv).mean;
        one.beesOwnCv = ownCv;
        return one;
    };
    const mites::BeforeAfter treated{count(kBeforeMites, kBeforeBees), count(kAfterMites, kAfterBees)};
    std::optional<mites::BeforeAfter> control;
    bool anyControl = false;
    for (std::size_t cell = kControlBeforeMites; cell <= kControlAfterBees; ++cell)
        anyControl = anyControl || row.has(cell);
    if (anyControl) {
        // All four or none: a default for the bees of a control nobody filled in would be a guess nobody
        // sees.
        for (std::size_t cell = kControlBeforeMites; cell <= kControlAfterBees; ++cell)
            if (!row.has(cell))
                row.complain(cell, "the four control columns are filled in all together or not at all.");
        control = {count(kControlBeforeMites, kControlBeforeBees),
                   count(kControlAfterMites, kControlAfterBees)};
    }
    const mites::EfficacyPosterior posterior(treated, shape, control);
    CsvLine cells;
    cells.add(posterior.point()).add(posterior.q05()).add(posterior.q50()).add(posterior.q95());
    cells.add(posterior.chanceOver(mites::kEffectiveOther));
    Answer answer{cells.text(), {}};
    for (const auto caution : posterior.cautions())
        addNote(answer.note, words(caution));
    return answer;
}

} // namespace

Verb efficacyVerb() {
    return {.name = "efficacy",
            .summary = "Did a treatment work: the share of the mites it took away, with its range.",
            .usage = "[FILE]",
            .help = csvHelp() + columnHelp(columns()) + kColumnsOut,
            .run = [](const Arguments& arguments, Streams& streams) {
                return answerEachRow(
                    arguments, streams, columns(),
                    {"efficacy_point", "efficacy_q05", "efficacy_q50", "efficacy_q95", "chance_over_90"},
                    efficacy);
            }};
}

} // namespace halfcup::desk
