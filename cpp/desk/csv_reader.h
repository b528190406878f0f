// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The calculators read CSV with the reader that the app takes tables in with: RFC 4180, a comma between
// cells.
#include "exchange/csv_reader.h"

namespace halfcup::desk {

using exchange::CsvReader;
using exchange::CsvRow;

inline constexpr std::size_t kMostRowBytes = exchange::CsvShape{}.mostRowBytes;

} // namespace halfcup::desk
