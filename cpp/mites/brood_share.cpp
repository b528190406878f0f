// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/brood_share.h"

#include "mites/checks.h"
#include "mites/constants.h"

#include <boost/math/special_functions/beta.hpp>
#include <cmath>

namespace halfcup::mites {

BroodShare::BroodShare(std::int64_t opened, std::int64_t infested)
    : m_opened(static_cast<double>(opened))
    , m_infested(static_cast<double>(infested)) {
    require(opened > 0, "At least one cell has to be opened.");
    require(m_opened <= kMostCounted, "The number of cells is too large to be a count.");
    require(infested >= 0, "The number of infested cells cannot be negative.");
    require(infested <= opened, "There cannot be more infested cells than opened ones.");
}

double BroodShare::quantile(double p) const {
    require(p > 0 && p < 1, "A quantile has to be asked for between 0 and 1.");
    return boost::math::ibeta_inv(m_infested + 0.5, m_opened - m_infested + 0.5, p);
}

double BroodShare::chanceOver(double line) const {
    require(!std::isnan(line), "A line has to be a number.");
    if (line <= 0)
        return 1;
    if (line >= 1)
        return 0;
    return boost::math::ibetac(m_infested + 0.5, m_opened - m_infested + 0.5, line);
}

double BroodShare::q05() const {
    return quantile(kLowerEnd);
}
double BroodShare::q95() const {
    return quantile(kUpperEnd);
}
double BroodShare::seen() const {
    return m_infested / m_opened;
}

} // namespace halfcup::mites
