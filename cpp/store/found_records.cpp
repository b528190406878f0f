// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/found_records.h"

#include "records/revision_stamp.h"

#include <algorithm>

namespace halfcup::store {

using records::CountEvent;
using records::Kind;
using records::Value;

namespace {

const std::string* textAt(const std::vector<Value>& row, std::size_t column) {
    return column < row.size() ? std::get_if<std::string>(&row[column]) : nullptr;
}

const std::int64_t* wholeAt(const std::vector<Value>& row, std::size_t column) {
    return column < row.size() ? std::get_if<std::int64_t>(&row[column]) : nullptr;
}

bool isId(const std::string* text) {
    return text && records::isRecordId(*text);
}

bool isStamp(const std::string* text) {
    return text && records::parseRevisionStamp(*text).has_value();
}

/// As fields, kinds and settings are called.
bool isName(const std::string* text) {
    return text && !text->empty() && text->size() <= 60 && std::ranges::all_of(*text, [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
           });
}

/// rinse, change, typed, at: the last four of an act of counting, from the given column on.
std::optional<CountEvent> countFrom(const std::vector<Value>& row, std::size_t column) {
    const auto* rinse = wholeAt(row, column);
    const auto* change = textAt(row, column + 1);
    const auto* typed = wholeAt(row, column + 2);
    const auto* at = wholeAt(row, column + 3);
    const auto kind = change ? records::changeFrom(*change) : std::nullopt;
    if (!rinse || !kind || !typed || !at || *rinse < 1 || *rinse > 2 || *typed < 0 ||
        *typed > records::largestCount)
        return std::nullopt;
    return CountEvent{0, static_cast<int>(*rinse), *kind, *typed, *at};
}

} // namespace

FoundRecords::FoundRecords(DatabasePages& pages, const Columns& columns) {
    pages.forEachRow([&](const DatabasePages::Found& found) {
        const bool sure = !found.table.empty();
        if (sure && found.table.ends_with("_by_stamp")) {
            takeNamed(found.table, found.values);
            return;
        }
        if ((!sure || found.table == "revision") && takeValue(found.values))
            return;
        if ((!sure || found.table == "count_event") &&
            (takeCount(found.values) || takeEarlierCount(found.values)))
            return;
        if (!sure || found.table == "setting")
            takeSetting(found.values, sure);
        if (const auto kind = records::kindFrom(found.table))
            takeRow(*kind, columns.at(*kind), found.values);
    });
    stampEarlierCounts();
}

/// record, field, stamp, kind, value and, since schema 5, in which merge it came.
bool FoundRecords::takeValue(const Values& row) {
    const auto* id = textAt(row, 0);
    const auto* field = textAt(row, 1);
    const auto* stamp = textAt(row, 2);
    const auto* name = textAt(row, 3);
    if (row.size() < 5 || row.size() > 6 || !isId(id) || !isName(field) || !isStamp(stamp) || !isName(name))
        return false;
    const auto kind = records::kindFrom(*name);
    const bool isKnown = kind && records::typeOf(*kind, *field);
    const bool isNothing = std::holds_alternative<std::monostate>(row[4]);
    if (isKnown && !isNothing && !records::fits(row[4], *kind, *field))
        return true; // it was one, but what it says is not what anybody kept
    values[{*id, *field, *stamp}] = {*name, row[4]};
    return true;
}

/// sample, stamp, number, rinse, change, typed, at, merge.
bool FoundRecords::takeCount(const Values& row) {
    const auto count = row.size() == 7 || row.size() == 8 ? countFrom(row, 3) : std::nullopt;
    if (!count || !isId(textAt(row, 0)) || !isStamp(textAt(row, 1)))
        return false;
    counts[{*textAt(row, 0), *textAt(row, 1)}] = *count;
    return true;
}

/// sample, number, rinse, change, typed, at: before schema 5.
bool FoundRecords::takeEarlierCount(const Values& row) {
    auto count = row.size() == 6 ? countFrom(row, 2) : std::nullopt;
    const auto* number = wholeAt(row, 1);
    if (!count || !number || *number < 1 || *number > 1'000'000 || !isId(textAt(row, 0)))
        return false;
    count->number = *number;
    m_earlierCounts[*textAt(row, 0)].push_back(*count);
    return true;
}

void FoundRecords::takeNamed(std::string_view index, const Values& row) {
    const auto* stamp = textAt(row, 0);
    const auto* id = textAt(row, 1);
    if (!isStamp(stamp) || !isId(id))
        return;
    if (index == "revision_by_stamp" && isName(textAt(row, 2)))
        namedValues.insert({*id, *textAt(row, 2), *stamp});
    else if (index == "count_event_by_stamp")
        namedCounts.insert({*id, *stamp});
}

void FoundRecords::takeRow(Kind kind, const std::vector<std::string>& columns, const Values& row) {
    if (!isId(textAt(row, 0)) || row.size() > columns.size())
        return;
    records::Fields fields;
    for (std::size_t i = 1; i < row.size(); ++i) {
        const auto type = records::typeOf(kind, columns[i]);
        if (!type || !records::fits(row[i], kind, columns[i]))
            continue;
        const auto* whole = std::get_if<std::int64_t>(&row[i]);
        // SQLite keeps 3.0 in a column of reals as 3.
        fields[columns[i]] =
            whole && *type == records::FieldType::Real ? Value{static_cast<double>(*whole)} : row[i];
    }
    rows[*textAt(row, 0)] = {kind, std::move(fields)};
}

void FoundRecords::takeSetting(const Values& row, bool sure) {
    if (row.size() == 2 && isName(textAt(row, 0)) && (sure || !settings.contains(*textAt(row, 0))))
        settings[*textAt(row, 0)] = row[1];
}

/// As the step to schema 5 does (migration_005.cpp).
void FoundRecords::stampEarlierCounts() {
    const auto device = settings.find("device_id");
    const auto* own = device == settings.end() ? nullptr : std::get_if<std::string>(&device->second);
    std::set<records::RecordId> demo;
    for (const auto& [key, valued] : values)
        if (key.field == "demo" && valued.value == Value{std::int64_t{1}})
            demo.insert(key.id);
    for (auto& [sample, events] : m_earlierCounts) {
        std::ranges::sort(events, {}, &CountEvent::number);
        std::int64_t latestMs = 0;
        for (const CountEvent& event : events) {
            latestMs = std::max(latestMs, event.atUtcMs);
            counts[{sample, records::toText({latestMs, static_cast<std::uint32_t>(event.number),
                                             demo.contains(sample) ? "demo"
                                             : own                 ? *own
                                                                   : "before"})}] = event;
        }
    }
}

} // namespace halfcup::store
