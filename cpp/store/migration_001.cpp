// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// The first schema. One table for each kind of record with a column for each of its fields, the history of
// every field in "revision", and counts as the acts that made them. Times are UTC milliseconds; names end in
// their unit.
void migrateTo1(SQLite::Database& database) {
    database.exec(R"sql(
CREATE TABLE yard(
    id TEXT PRIMARY KEY NOT NULL,
    name TEXT, latitude_deg REAL, longitude_deg REAL, position_accuracy_m REAL, reach_m REAL,
    registration_number TEXT, treat_line REAL, treat_line_source TEXT, own_line REAL,
    demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;

CREATE TABLE colony(
    id TEXT PRIMARY KEY NOT NULL,
    yard_id TEXT NOT NULL REFERENCES yard(id),
    label TEXT, note TEXT, demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX colony_by_yard ON colony(yard_id);

CREATE TABLE sample(
    id TEXT PRIMARY KEY NOT NULL,
    colony_id TEXT NOT NULL REFERENCES colony(id),
    yard_id TEXT NOT NULL REFERENCES yard(id),
    method TEXT, state TEXT NOT NULL, step TEXT, started_at_ms INTEGER NOT NULL, utc_offset_min INTEGER,
    queen TEXT,
    scoop_volume_ml REAL, scoop_packing TEXT, bees_mean REAL, bees_cv REAL, bees_source TEXT, scooped_at_ms INTEGER,
    position_state TEXT, latitude_deg REAL, longitude_deg REAL, fix_accuracy_m REAL, fix_count INTEGER,
    fix_age_ms INTEGER, fix_moving INTEGER, fix_source TEXT,
    shake_planned_s INTEGER, shake_since_boot_ms INTEGER, shake_since_utc_ms INTEGER, shake_boot_id TEXT,
    shake_before_ms INTEGER, shake_interrupted INTEGER, shake_ended INTEGER,
    settle_started_ms INTEGER, finished_at_ms INTEGER, abandoned_at_ms INTEGER,
    mites INTEGER, mites_second_rinse INTEGER, load_q05 REAL, load_q50 REAL, load_q95 REAL,
    treat_line REAL, treat_line_source TEXT, own_line REAL, chance_over REAL, chance_over_own REAL,
    recovery REAL, recovery_sd REAL, jar_shape REAL,
    note TEXT, demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX sample_by_colony ON sample(colony_id, started_at_ms);
CREATE INDEX sample_drafts ON sample(started_at_ms) WHERE state = 'draft';

CREATE TABLE count_event(
    sample_id TEXT NOT NULL REFERENCES sample(id),
    number INTEGER NOT NULL,
    rinse INTEGER NOT NULL,
    change TEXT NOT NULL CHECK (change IN ('tap', 'typed', 'undo')),
    typed INTEGER NOT NULL DEFAULT 0,
    at_ms INTEGER NOT NULL,
    PRIMARY KEY (sample_id, number)
) STRICT, WITHOUT ROWID;

CREATE TABLE revision(
    record_id TEXT NOT NULL,
    field TEXT NOT NULL,
    stamp TEXT NOT NULL,
    kind TEXT NOT NULL,
    value ANY,
    PRIMARY KEY (record_id, field, stamp)
) STRICT, WITHOUT ROWID;
CREATE INDEX revision_by_stamp ON revision(stamp);

CREATE TABLE setting(name TEXT PRIMARY KEY NOT NULL, value ANY) STRICT, WITHOUT ROWID;
)sql");
}

} // namespace halfcup::store
