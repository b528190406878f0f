// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/revision.h"
#include "store/database_pages.h"

#include <compare>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace halfcup::store {

/// Sorts what lies on the pages of a database (of any schema so far) into records. What no program of ours
/// can have written is left out: an id, a stamp or a figure that is none comes from a damaged page. For
/// rescue.h.
class FoundRecords {
public:
    struct Key { // of a value
        records::RecordId id;
        std::string field;
        std::string stamp;
        friend auto operator<=>(const Key&, const Key&) = default;
    };
    struct Valued {
        std::string kind;
        records::Value value;
    };
    struct CountKey {
        records::RecordId sample;
        std::string stamp;
        friend auto operator<=>(const CountKey&, const CountKey&) = default;
    };
    /// Columns of a kind's table as today's schema has them, the id first. Earlier schemas have the first of
    /// them: columns were only ever added behind.
    using Columns = std::map<records::Kind, std::vector<std::string>>;

    FoundRecords(DatabasePages& pages, const Columns& columns);

    std::map<Key, Valued> values;
    std::map<CountKey, records::CountEvent> counts;
    std::map<std::string, records::Value> settings;
    /// Rows, where it is sure of which table they are.
    std::map<records::RecordId, std::pair<records::Kind, records::Fields>> rows;
    /// What the indices name, whether it was found or not.
    std::set<Key> namedValues;
    std::set<CountKey> namedCounts;

private:
    using Values = std::vector<records::Value>;
    bool takeValue(const Values& row);
    bool takeCount(const Values& row);
    bool takeEarlierCount(const Values& row);
    void takeNamed(std::string_view index, const Values& row);
    void takeRow(records::Kind kind, const std::vector<std::string>& columns, const Values& row);
    void takeSetting(const Values& row, bool sure);
    void stampEarlierCounts();

    std::map<records::RecordId, std::vector<records::CountEvent>> m_earlierCounts; // without stamps yet
};

} // namespace halfcup::store
