// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/finished_washes.h"

#include <SQLiteCpp/Statement.h>

namespace halfcup::store {

std::int64_t countFinishedWashes(const SQLite::Database& database) {
    SQLite::Statement count(database,
                            "SELECT count(*) FROM sample WHERE state = 'finished' AND removed IS NOT 1");
    count.executeStep();
    return count.getColumn(0).getInt64();
}

} // namespace halfcup::store
