// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Share of capped cells that are infested, from cells opened (drone brood as a rule).
// Model: infested ~ Binomial(opened, share), Jeffreys prior: share ~ Beta(infested + 1/2, opened - infested +
// 1/2). q05 is shown as 0 where none was infested, q95 as 1 where all were. Cells of one patch are not
// independent: open cells in several places. Source: Brown, Cai & DasGupta 2001, Stat Sci 16:101-133 (the
// Jeffreys interval). Errors: std::domain_error with a plain sentence: nothing opened, more infested than
// opened, negative, huge.
#include <cstdint>

namespace halfcup::mites {

class BroodShare {
public:
    BroodShare(std::int64_t opened, std::int64_t infested);
    double quantile(double p) const; // 0 to 1
    double chanceOver(double line) const;
    double q05() const;
    double q50() const { return quantile(0.5); }
    double q95() const;
    double seen() const; // infested / opened

private:
    double m_opened;
    double m_infested;
};

} // namespace halfcup::mites
