// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/count.h"
#include "records/record_id.h"

#include <SQLiteCpp/Statement.h>

#include <string>

namespace halfcup::store {

/// The columns of an act of counting, in the order that countIn() reads them from.
inline constexpr const char* countColumns = "stamp, number, rinse, change, typed, at_ms";

/// Binds sample, stamp, number and the act to the first seven parameters.
void bindCount(SQLite::Statement& statement, const records::RecordId& sampleId, const std::string& stamp,
               std::int64_t number, const records::CountEvent& event);
/// The act in the columns countColumns, which begin at the given one.
[[nodiscard]] records::CountEvent countIn(SQLite::Statement& statement, int firstColumn);

} // namespace halfcup::store
