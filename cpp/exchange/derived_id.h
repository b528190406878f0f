// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/record_id.h"

#include <cstdint>
#include <string>
#include <vector>

namespace halfcup::exchange {

/// An id that everyone derives alike from the same parts; see wash_import.h for how.
[[nodiscard]] records::RecordId derivedId(std::int64_t utcMs, const std::vector<std::string>& parts);

} // namespace halfcup::exchange
