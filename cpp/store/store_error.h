// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <stdexcept>
#include <string>

namespace halfcup::store {

/// What stopped the database, in kinds that a keeper can do something about. what() holds the technical text;
/// the screen (or the desk program) says the sentence.
class StoreError : public std::runtime_error {
public:
    enum class Kind {
        FolderMissing, // the folder is not there or cannot be looked into
        NotAllowed,    // no permission, or a read-only folder or file
        NotOurs,       // the file is no SQLite database, or not one of Halfcup's
        Newer,         // written by a newer Halfcup: refused, untouched
        Damaged,       // the database fails its own integrity check
        DiskFull,      // what was being written is not written, all before it is
        Busy,          // another program holds the database
        CopyFailed,    // the copy before a migration could not be made: nothing was changed
        Failed,        // anything else SQLite reports
    };

    StoreError(Kind kind, const std::string& technical)
        : std::runtime_error(technical)
        , m_kind(kind) {}

    [[nodiscard]] Kind kind() const { return m_kind; }

private:
    Kind m_kind;
};

} // namespace halfcup::store
