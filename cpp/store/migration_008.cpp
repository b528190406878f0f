// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// The newest wash of a colony, and the days of this year's, are found without reading the wide rows of any
// others: all that is asked of them stands in the index, also what makes it a part of the index (SQLite 3.40
// looks at that again). Samples that were left off are few, and counted without a look at all others.
void migrateTo8(SQLite::Database& database) {
    database.exec(R"sql(
CREATE INDEX sample_washes ON sample(
    colony_id, started_at_ms, id, scooped_at_ms, utc_offset_min, mites, state, other_count, removed)
    WHERE state = 'finished' AND other_count IS NULL AND removed = 0;
CREATE INDEX sample_abandoned ON sample(state, removed) WHERE state = 'abandoned';
)sql");
}

} // namespace halfcup::store
