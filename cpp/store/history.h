// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/store.h"

#include <string>
#include <vector>

namespace halfcup::store {

/// What a record's fields were before, and back to it. Nothing is taken out of the past: putting back is a
/// new revision, the latest of all, and travels to other phones as any other does. Throws StoreError.
class History {
public:
    explicit History(Store& store)
        : m_store(store) {}

    /// One or more fields that change together (a name; latitude, longitude and accuracy), at one moment.
    struct State {
        records::Fields values; // those of the asked fields that had a value then
        records::RevisionStamp stamp;
    };
    /// The states these fields went through, oldest first: one for each moment in which one of them was
    /// written, as a row would have shown it. A write that changed nothing that shows is left out. Fields the
    /// kind does not have give nothing.
    [[nodiscard]] std::vector<State> of(records::Kind kind, const records::RecordId& id,
                                        const std::vector<std::string>& fields);

    /// Makes the fields what they were. True where that changed anything. False, and nothing written, for a
    /// record that is not here, a field its kind does not have or a value that does not fit it; a reference
    /// to another record is not put back, because that record may be gone.
    bool putBack(records::Kind kind, const records::RecordId& id, const records::Fields& values);

    /// The id of this phone in stamps.
    [[nodiscard]] std::string thisPhone();

private:
    Store& m_store;
};

} // namespace halfcup::store
