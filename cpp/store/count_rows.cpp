// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/count_rows.h"

#include <SQLiteCpp/Column.h>

namespace halfcup::store {

using records::CountEvent;

void bindCount(SQLite::Statement& statement, const records::RecordId& sampleId, const std::string& stamp,
               std::int64_t number, const CountEvent& event) {
    statement.tryReset();
    statement.bind(1, sampleId);
    statement.bind(2, stamp);
    statement.bind(3, number);
    statement.bind(4, event.rinse);
    statement.bind(5, std::string(records::nameOf(event.change)));
    statement.bind(6, event.typed);
    statement.bind(7, event.atUtcMs);
}

CountEvent countIn(SQLite::Statement& statement, int firstColumn) {
    CountEvent event;
    event.number = statement.getColumn(firstColumn + 1).getInt64();
    event.rinse = statement.getColumn(firstColumn + 2).getInt();
    event.change = records::changeFrom(statement.getColumn(firstColumn + 3).getString())
                       .value_or(CountEvent::Change::Tap);
    event.typed = statement.getColumn(firstColumn + 4).getInt64();
    event.atUtcMs = statement.getColumn(firstColumn + 5).getInt64();
    return event;
}

} // namespace halfcup::store
