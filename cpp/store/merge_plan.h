// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/record_id.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace halfcup::store {

/// What taking in does to a record.
enum class Change {
    New,         // not known here
    Same,        // nothing in it that is not known here
    Changed,     // changed there since this phone heard of it last
    BothChanged, // a field changed on both sides: the later value wins, the other stays in the history
    RemovedThere,
};

inline constexpr Change allChanges[] = {Change::New, Change::Same, Change::Changed, Change::BothChanged,
                                        Change::RemovedThere};

/// A field that changed on both sides.
struct Clash {
    std::string field;
    records::Value ours;
    records::Value theirs;
    bool oursWins = false;
};

/// One record of a plan, with what a person knows it by. What does not belong to its kind is empty.
struct MergeItem {
    records::Kind kind = records::Kind::Yard;
    records::RecordId id;
    Change change = Change::New;
    std::string yard;                 // name of its yard, or its own
    std::string colony;               // label of its colony, or its own
    std::string word;                 // the method, the kind of event, the substance: as kept
    std::optional<std::int64_t> atMs; // when it was, UTC
    std::string day;                  // or on what day, ISO 8601
    std::vector<Clash> clashes;       // for BothChanged
};

/// What taking in a file does, or did. Records, not fields, are counted.
struct MergePlan {
    std::map<std::pair<records::Kind, Change>, int> counts;
    std::vector<MergeItem> items; // all but the same ones, at most mostItems, in the order of the file
    int unknownKinds = 0;         // records of a kind that only a newer version knows: kept and passed on
    int waiting = 0;              // records that wait here for what they belong to
    std::int64_t newRevisions = 0;
    std::int64_t newCounts = 0; // acts of counting

    static constexpr std::size_t mostItems = 500; // more is not read by anyone [convention]

    [[nodiscard]] bool nothingNew() const { return newRevisions == 0 && newCounts == 0; }
    [[nodiscard]] int count(Change change) const {
        int sum = 0;
        for (const auto& [what, records] : counts)
            sum += what.second == change ? records : 0;
        return sum;
    }
};

} // namespace halfcup::store
