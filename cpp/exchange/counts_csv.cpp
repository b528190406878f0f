// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/counts_csv.h"

#include "records/moment.h"

#include <array>
#include <map>

namespace halfcup::exchange {

namespace {

using Change = records::CountEvent::Change;

constexpr std::array<std::string_view, 10> columns{
    "sample_id",    // UUID, as in the table of washes
    "yard",         // its name
    "colony",       // its label
    "demo",         // yes: invented data
    "number",       // 1, 2, 3 ... within the sample
    "rinse",        // 1 the first, 2 the second
    "act",          // tap, typed, undo
    "typed_count",  // the figure typed
    "mites_so_far", // of this rinse, after this act
    "at",           // RFC 3339 with the keeper's offset from UTC
};

std::string_view wordOf(Change change) {
    switch (change) {
    case Change::Typed:
        return "typed";
    case Change::Undo:
        return "undo";
    case Change::Tap:
        break;
    }
    return "tap";
}

} // namespace

std::span<const std::string_view> countColumns() {
    return columns;
}

void writeCountHeader(CsvWriter& csv) {
    for (const std::string_view column : columns)
        csv.text(column);
    csv.endRow();
}

int writeCountRows(CsvWriter& csv, const SampleRow& row, std::span<const records::CountEvent> events) {
    std::map<int, records::CountTally> tallies;
    for (const records::CountEvent& event : events) {
        records::CountTally& tally = tallies[event.rinse];
        tally.add(event);
        csv.text(row.sample.id);
        csv.text(row.yardName);
        csv.text(row.colonyLabel);
        csv.flag(row.sample.demo);
        csv.number(event.number);
        csv.number(std::int64_t{event.rinse});
        csv.text(wordOf(event.change));
        if (event.change == Change::Typed)
            csv.number(event.typed);
        else
            csv.empty();
        csv.number(tally.mites());
        csv.text(records::toRfc3339({event.atUtcMs, row.sample.utcOffsetMinutes}));
        csv.endRow();
    }
    return static_cast<int>(events.size());
}

} // namespace halfcup::exchange
