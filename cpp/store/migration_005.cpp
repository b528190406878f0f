// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// What merging needs. Acts of counting get stamps, as values have them: numbers alone would meet where two
// phones count one sample. "number" stays as the place of an act among its sample's, by stamp. An act of
// earlier days gets a stamp from its time and number; those of the demo get the same on every phone.
//
// "merged" in revision and count_event: in which merge it came; nothing for what this phone made itself.
// The other tables are this phone's own and never travel:
//   device   the greatest stamp taken from each other phone
//   waiting  records whose row cannot be made yet, because what they belong to has not come
//   joined   records made twice, and the one that stands for both (worked out from same_as)
//   merge    what was taken in when, for undoing the last one
void migrateTo5(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE yard ADD COLUMN same_as TEXT;
ALTER TABLE colony ADD COLUMN same_as TEXT;
ALTER TABLE revision ADD COLUMN merged INTEGER;

CREATE TABLE stamped_count(
    sample_id TEXT NOT NULL,
    stamp TEXT NOT NULL,
    number INTEGER NOT NULL,
    rinse INTEGER NOT NULL,
    change TEXT NOT NULL CHECK (change IN ('tap', 'typed', 'undo')),
    typed INTEGER NOT NULL DEFAULT 0,
    at_ms INTEGER NOT NULL,
    merged INTEGER,
    PRIMARY KEY (sample_id, stamp)
) STRICT, WITHOUT ROWID;
INSERT INTO stamped_count(sample_id, stamp, number, rinse, change, typed, at_ms)
    SELECT sample_id,
           printf('%016x-%08x-%s',
                  max(max(at_ms, 0)) OVER (PARTITION BY sample_id ORDER BY number), number,
                  CASE WHEN coalesce((SELECT demo FROM sample WHERE id = sample_id), 0) = 1 THEN 'demo'
                       ELSE coalesce((SELECT value FROM setting WHERE name = 'device_id'), 'before') END),
           number, rinse, change, typed, at_ms
      FROM count_event;
DROP TABLE count_event;
ALTER TABLE stamped_count RENAME TO count_event;
CREATE INDEX count_event_by_stamp ON count_event(stamp);

CREATE TABLE device(id TEXT PRIMARY KEY NOT NULL, latest TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE waiting(record_id TEXT PRIMARY KEY NOT NULL, kind TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE joined(id TEXT PRIMARY KEY NOT NULL, kind TEXT NOT NULL, into_id TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE merge(
    number INTEGER PRIMARY KEY NOT NULL,
    at_ms INTEGER NOT NULL,
    source TEXT NOT NULL,
    own_stamp TEXT NOT NULL,
    records INTEGER NOT NULL,
    passed_on INTEGER NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;
)sql");
}

} // namespace halfcup::store
