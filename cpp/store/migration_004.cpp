// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// Boards and drone brood beside the washes, and yard rounds.
void migrateTo4(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE sample ADD COLUMN board_laid_at_ms INTEGER;
ALTER TABLE sample ADD COLUMN board_pulled_at_ms INTEGER;
ALTER TABLE sample ADD COLUMN board_hours REAL;
ALTER TABLE sample ADD COLUMN board_cells_counted INTEGER;
ALTER TABLE sample ADD COLUMN board_cells INTEGER;
ALTER TABLE sample ADD COLUMN opened_cells INTEGER;
ALTER TABLE sample ADD COLUMN other_count INTEGER;
ALTER TABLE sample ADD COLUMN other_q05 REAL;
ALTER TABLE sample ADD COLUMN other_q50 REAL;
ALTER TABLE sample ADD COLUMN other_q95 REAL;
ALTER TABLE sample ADD COLUMN other_line REAL;
ALTER TABLE sample ADD COLUMN other_line_source TEXT;
ALTER TABLE sample ADD COLUMN other_chance_over REAL;
ALTER TABLE sample ADD COLUMN other_load_q05 REAL;
ALTER TABLE sample ADD COLUMN other_load_q50 REAL;
ALTER TABLE sample ADD COLUMN other_load_q95 REAL;

CREATE TABLE round(
    id TEXT PRIMARY KEY NOT NULL,
    yard_id TEXT REFERENCES yard(id),
    started_at_ms INTEGER, utc_offset_min INTEGER, ended_at_ms INTEGER, picked TEXT, colony_ids TEXT,
    demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX round_by_yard ON round(yard_id, started_at_ms);
)sql");
}

} // namespace halfcup::store
