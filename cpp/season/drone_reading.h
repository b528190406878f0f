// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "records/sample.h"

namespace halfcup::season {

/// What opened drone brood says: cells with mites in 100 (mites/brood_share.h), held against the handbook's
/// drone-brood-line. No load can be read from it: how many mites sit in drone cells depends on how many drone
/// cells there are. Throws std::domain_error with a sentence where the cells opened are not known or fewer
/// than those with mites.
[[nodiscard]] records::OtherAnswer droneAnswer(const records::Sample& sample, std::int64_t infested,
                                               const handbook::Handbook& handbook);

} // namespace halfcup::season
