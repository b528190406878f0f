// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// The season: what happens to colonies besides washes, treatments, and the yard's dates. Days are the
// keeper's local dates as ISO 8601 text: "first day of a treatment" is a date on paper, not a moment.
void migrateTo2(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE yard ADD COLUMN line_region TEXT;
ALTER TABLE yard ADD COLUMN turn_date TEXT;
ALTER TABLE yard ADD COLUMN first_wash_from TEXT;
ALTER TABLE yard ADD COLUMN visited_on TEXT;

CREATE TABLE event(
    id TEXT PRIMARY KEY NOT NULL,
    colony_id TEXT NOT NULL REFERENCES colony(id),
    yard_id TEXT REFERENCES yard(id),
    event TEXT, day TEXT, recorded_at_ms INTEGER, brood TEXT, floor TEXT, frames REAL,
    other_colony_id TEXT REFERENCES colony(id), other_yard_id TEXT REFERENCES yard(id),
    words TEXT, demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX event_by_colony ON event(colony_id, day);
CREATE INDEX event_by_other_colony ON event(other_colony_id) WHERE other_colony_id IS NOT NULL;

CREATE TABLE treatment(
    id TEXT PRIMARY KEY NOT NULL,
    yard_id TEXT NOT NULL REFERENCES yard(id),
    substance TEXT, product TEXT, batch TEXT, expiry TEXT, supplier TEXT, proof TEXT, quantity TEXT,
    first_day TEXT, last_day TEXT, removal_due TEXT, removed_on TEXT, withdrawal_days INTEGER,
    prescriber TEXT, done_by TEXT, verdict TEXT, note TEXT, recorded_at_ms INTEGER,
    demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX treatment_by_yard ON treatment(yard_id, first_day);

CREATE TABLE treated(
    id TEXT PRIMARY KEY NOT NULL,
    treatment_id TEXT NOT NULL REFERENCES treatment(id),
    colony_id TEXT NOT NULL REFERENCES colony(id),
    demo INTEGER, removed INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX treated_by_colony ON treated(colony_id);
CREATE INDEX treated_by_treatment ON treated(treatment_id);
)sql");
}

} // namespace halfcup::store
