// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/migrations.h"

#include <SQLiteCpp/Database.h>

namespace halfcup::store {

// Where the keeper put a hive on the plan of its yard.
void migrateTo6(SQLite::Database& database) {
    database.exec(R"sql(
ALTER TABLE colony ADD COLUMN stand_east_m REAL;
ALTER TABLE colony ADD COLUMN stand_north_m REAL;
)sql");
}

} // namespace halfcup::store
