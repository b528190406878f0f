// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/drone_reading.h"

#include "mites/brood_share.h"

#include <stdexcept>

namespace halfcup::season {

namespace {

constexpr auto lineId = "drone-brood-line"; // in per cent of cells

} // namespace

records::OtherAnswer droneAnswer(const records::Sample& sample, std::int64_t infested,
                                 const handbook::Handbook& handbook) {
    if (!sample.openedCells)
        throw std::domain_error("How many cells were opened is not known.");
    const mites::BroodShare share(*sample.openedCells, infested);
    records::OtherAnswer answer;
    answer.count = infested;
    answer.q05 = 100 * share.q05();
    answer.q50 = 100 * share.q50();
    answer.q95 = 100 * share.q95();
    answer.line = handbook.figureAt(lineId);
    answer.lineSource = lineId;
    answer.chanceOver = share.chanceOver(*answer.line / 100);
    return answer;
}

} // namespace halfcup::season
