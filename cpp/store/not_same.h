// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/store.h"

#include <set>
#include <utility>

namespace halfcup::store {

/// What the keeper was asked about on this phone and said are two: not asked again. A setting, so that it
/// stays on this phone; the keeper of another phone is asked there. Throws StoreError.
class NotSame {
public:
    using Pair = std::pair<records::RecordId, records::RecordId>; // the smaller id first

    explicit NotSame(Store& store)
        : m_store(store) {}

    [[nodiscard]] std::set<Pair> all();
    void add(const records::RecordId& one, const records::RecordId& other);

private:
    Store& m_store;
};

} // namespace halfcup::store
