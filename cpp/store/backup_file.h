// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Database.h>

#include <memory>
#include <string>

namespace halfcup::store {

/// Looks at a file's first bytes, without SQLite. Throws BackupError for whatever is no database or one that
/// is cut short.
struct FileForm {
    std::int64_t sizeBytes = 0;
    std::int64_t bytesByHeader = 0; // as many as its header says; fewer on the disk is a cut file
    bool keepsLog = false;          // in write-ahead mode: its newest records may be in a file beside it
};
[[nodiscard]] FileForm formOf(const std::string& path);

/// Opens it for reading alone. Where no log lies beside it, it is read as a file that nobody changes, so that
/// SQLite neither looks for files beside it nor makes any. Throws SQLite::Exception.
[[nodiscard]] std::unique_ptr<SQLite::Database> openForReading(const std::string& path, const FileForm& form);

} // namespace halfcup::store
