// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Recovery measured by washing the same bees twice.
//
// Model: of M mites the first rinse finds a share c, the second the same share of the rest; M unknown. Then
// of the mites found, the first rinse has 1/(2 - c) and the second (1 - c)/(2 - c), so
//   p(c | k1, k2) ~ Beta(c; a, b) (1/(2 - c))^K1 ((1 - c)/(2 - c))^K2, K summed over bees washed twice.
// Mites stuck so fast that no rinse moves them are not seen by this; published full washes bound them (98.7 %
// of what five washes find is found by three). mostLikely = 1 - K2/K1 without the prior (NaN where K1 = 0;
// may be negative). Use mean and sd as Wash::recovery and recoverySd (a Beta by its moments). Errors:
// std::domain_error with a plain sentence: negative or huge counts, a prior that is no Beta. A prior with sd
// 0 stays as it is.
#include <cstdint>
#include <span>

namespace halfcup::mites {

struct Rinses {
    std::int64_t first = 0;
    std::int64_t second = 0;
};

struct RecoveryEstimate {
    double mean = 0, sd = 0;
    double q05 = 0, q50 = 0, q95 = 0;
    double mostLikely = 0;
};

RecoveryEstimate recoveryFromRinses(std::span<const Rinses> rinses, double priorMean, double priorSd);

} // namespace halfcup::mites
