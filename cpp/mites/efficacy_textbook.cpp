// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/efficacy_textbook.h"

#include "mites/checks.h"

#include <cmath>
#include <initializer_list>

namespace halfcup::mites {

namespace {

void checkNumber(double value) {
    require(value >= 0 && std::isfinite(value),
            "Numbers before and after treatment have to be zero or more.");
}

void checkPercent(double value) {
    require(value >= 0 && value <= 100, "Deaths have to be between 0 and 100 per cent.");
}

} // namespace

double abbottPercent(double livingUntreated, double livingTreated) {
    checkNumber(livingUntreated);
    checkNumber(livingTreated);
    return 100 * (livingUntreated - livingTreated) / livingUntreated;
}

double abbottFromDeathsPercent(double deadTreatedPercent, double deadControlPercent) {
    checkPercent(deadTreatedPercent);
    checkPercent(deadControlPercent);
    return 100 * (deadTreatedPercent - deadControlPercent) / (100 - deadControlPercent);
}

double hendersonTiltonPercent(double treatedBefore, double treatedAfter, double controlBefore,
                              double controlAfter) {
    for (const double value : {treatedBefore, treatedAfter, controlBefore, controlAfter})
        checkNumber(value);
    return 100 * (1 - treatedAfter * controlBefore / (treatedBefore * controlAfter));
}

double sunShepardPercent(double treatedBefore, double treatedAfter, double controlBefore,
                         double controlAfter) {
    for (const double value : {treatedBefore, treatedAfter, controlBefore, controlAfter})
        checkNumber(value);
    const double mortality = fallPercent(treatedBefore, treatedAfter);
    const double change = 100 * (controlAfter - controlBefore) / controlBefore;
    return 100 * (mortality + change) / (100 + change);
}

double fallPercent(double before, double after) {
    checkNumber(before);
    checkNumber(after);
    return 100 * (1 - after / before);
}

} // namespace halfcup::mites
