// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// How many washes there are is asked by more than one page, and a season's washes by their time. The row of a
// wash is wide: without this SQLite reads all of each to look at two columns.
void migrateTo7(SQLite::Database& database) {
    database.exec(R"sql(
CREATE INDEX sample_finished ON sample(started_at_ms, state, removed) WHERE state = 'finished';
)sql");
}

} // namespace halfcup::store
