// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/store.h"

#include <cstdint>
#include <optional>
#include <string>

namespace halfcup::store {

/// A merge that was kept.
struct KeptMerge {
    std::int64_t number = 0;
    std::int64_t atMs = 0; // UTC
    std::string source;    // the files' names
    int records = 0;       // new or changed by it
    bool undone = false;
};

/// The merges of this phone. Throws StoreError.
class MergeLog {
public:
    explicit MergeLog(Store& store)
        : m_store(store) {}

    [[nodiscard]] std::optional<KeptMerge> last();
    /// Takes back what the last merge brought. False, and nothing changed, where something recorded since
    /// hangs on it, or where there is nothing to take back. Taking the same file in again brings it all back.
    bool undoLast();

private:
    bool takeBack(std::int64_t number, const std::string& ownStampBefore);

    Store& m_store;
};

} // namespace halfcup::store
