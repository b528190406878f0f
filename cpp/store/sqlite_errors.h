// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/store_error.h"

#include <SQLiteCpp/Exception.h>

#include <utility>

namespace halfcup::store {

/// The StoreError that an SQLite result code means.
[[nodiscard]] StoreError storeErrorFrom(const SQLite::Exception& error);

/// Runs what talks to SQLite and lets nothing but StoreError out.
template <typename Work>
auto guarded(Work&& work) {
    try {
        return std::forward<Work>(work)();
    } catch (const SQLite::Exception& error) {
        throw storeErrorFrom(error);
    }
}

} // namespace halfcup::store
