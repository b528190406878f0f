// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/revision.h"
#include "store/store.h"

#include <functional>
#include <map>
#include <string>

namespace halfcup::store {

/// What leaves this phone for another. Throws StoreError.
class Outgoing {
public:
    using Visit = std::function<void(const records::RecordPart&)>;
    explicit Outgoing(Store& store)
        : m_store(store) {}

    [[nodiscard]] std::string device();
    /// The greatest stamp known here of every phone, this one included.
    [[nodiscard]] std::map<std::string, std::string> seen();
    /// How many records of each kind there are.
    [[nodiscard]] std::map<std::string, std::int64_t> counts();

    /// Whether this phone made any of the record: false for what came from others and was left as it came.
    [[nodiscard]] bool isFromHere(const records::RecordId& id);

    /// Everything: each record as one part with its whole history, in the order of their ids. Holds one
    /// record at a time.
    void forEachPart(const Visit& visit);

    /// Where a file that grows was left off.
    struct Mark {
        std::string ownStamp; // the greatest of this phone's own in it
        std::int64_t merge = 0;
    };
    [[nodiscard]] Mark now();
    /// What this phone made since, and what reached it since by another way than the exchange folder.
    void forEachPartSince(const Mark& mark, const Visit& visit);

private:
    void forEach(const std::string& revisionsWhere, const std::string& countsWhere,
                 const std::vector<records::Value>& values, const Visit& visit);

    Store& m_store;
};

} // namespace halfcup::store
