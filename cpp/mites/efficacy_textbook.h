// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Efficacy as the textbooks compute it, in per cent, without any uncertainty: for comparison with other work.
// Values may be negative (more after than before) and are never clamped. Where a divisor is 0 the result is
// NaN (0/0) or minus infinity, as the arithmetic says; callers print "cannot be estimated". Inputs: numbers
// living or loads, >= 0; deaths in per cent 0 to 100. Errors: std::domain_error with a plain sentence for
// NaN, negative or infinite input, deaths outside 0 to 100. Sources: Abbott 1925, J Econ Entomol 18:265-267;
// Henderson & Tilton 1955, J Econ Entomol 48:157-161; Sun & Shepard 1947 (as in Puntener 1981), which equals
// Henderson & Tilton algebraically.
namespace halfcup::mites {

// 100 (x - y)/x, living untreated x, living treated y.
double abbottPercent(double livingUntreated, double livingTreated);
// Treated and untreated after treatment only, equal numbers before.
double abbottFromDeathsPercent(double deadTreatedPercent, double deadControlPercent);
// 100 [1 - (Ta/Tb)(Cb/Ca)].
double hendersonTiltonPercent(double treatedBefore, double treatedAfter, double controlBefore,
                              double controlAfter);
double sunShepardPercent(double treatedBefore, double treatedAfter, double controlBefore,
                         double controlAfter);
// 100 (1 - after/before), no control.
double fallPercent(double before, double after);

} // namespace halfcup::mites
