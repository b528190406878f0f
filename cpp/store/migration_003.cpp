// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// The tray (scooped now, washed later) and the keeper's own counted scoops.
void migrateTo3(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE sample ADD COLUMN jar TEXT;

CREATE TABLE scoop_count(
    id TEXT PRIMARY KEY NOT NULL,
    sample_id TEXT REFERENCES sample(id),
    volume_ml REAL, packing TEXT, bees REAL, counted_at_ms INTEGER, odd INTEGER, demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
)sql");
}

} // namespace halfcup::store
