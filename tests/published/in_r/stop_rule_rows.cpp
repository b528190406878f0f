// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// What mites/stop_rule.h says to rows from stdin, for stop_rule.R: low, high, exposure, shape, alpha, beta,
// most; out: slope, upper, lower, evidence per mite, then chance high, units and forced verdicts at load low
// and at load high.
#include "mites/stop_rule.h"

#include <iomanip>
#include <iostream>
#include <string>

int main() {
    using namespace halfcup::mites;
    StopRule rule;
    double exposure = 0;
    std::int64_t most = 0;
    std::string shape;
    std::cout << std::setprecision(15);
    while (std::cin >> rule.low >> rule.high >> exposure >> shape >> rule.alpha >> rule.beta >> most) {
        rule.unitShape = shape == "inf" ? kJarShapeNone : std::stod(shape);
        const StopLines lines = stopLines(rule, exposure);
        std::cout << lines.slope << ' ' << lines.upper << ' ' << lines.lower << ' ' << lines.evidencePerMite;
        for (const double load : {rule.low, rule.high}) {
            const StopRuleBehaviour real = stopRuleBehaviour(rule, exposure, most, load);
            std::cout << ' ' << real.chanceHigh << ' ' << real.meanUnits << ' ' << real.chanceUnsettled;
        }
        std::cout << '\n';
    }
    return 0;
}
