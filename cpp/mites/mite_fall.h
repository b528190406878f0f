// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Natural fall a day from a sticky board under a screened floor.
//
// Model: mites counted ~ Poisson(fall * days * share counted * e), e log-normal with mean 1 and the given
// spread for counting only some of the board's cells (0 for the whole board; a third of the cells:
// kBoardPartCv). Jeffreys prior:
//   fall = G / (days * share * e), G ~ Gamma(k + 1/2, 1).
// Not in it: differences from day to day beyond chance, mites carried off by ants, grooming. Weak evidence
// beside a wash. Fall to mites in the colony: times a factor that depends on season; the factors are the
// handbook's, given here as a range. The result is the range of fall times the range of factors, wider on
// purpose. Errors: std::domain_error with a plain sentence: no days, a share outside 0 to 1, negative or huge
// counts.
#include "mites/log_law.h"
#include "mites/wash_load.h"

#include <cstdint>

namespace halfcup::mites {

struct BoardCount {
    std::int64_t mites = 0;
    double days = 1;         // time under the colony, > 0, at most 365
    double shareCounted = 1; // share of the board's cells that was counted, > 0, at most 1
    double countCv = 0;      // spread from counting a part; see boardCount()
};

// The usual case: spread 0 for the whole board, kBoardPartCv for a part.
BoardCount boardCount(std::int64_t mites, double days, double shareCounted = 1);

class FallPosterior {
public:
    explicit FallPosterior(const BoardCount& count);
    double quantile(double p) const; // mites a day
    double chanceOver(double line) const;
    LoadEstimate estimate() const; // mites a day

private:
    LogLaw m_law;
};

// Mites in the colony for one mite a day.
struct FallFactor {
    double low = 0, usual = 0, high = 0;
};
LoadEstimate mitesFromFall(const LoadEstimate& fallPerDay, const FallFactor& factor);

} // namespace halfcup::mites
