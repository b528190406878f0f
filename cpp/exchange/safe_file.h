// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/csv_writer.h"

#include <QString>

#include <functional>
#include <optional>

namespace halfcup::exchange {

/// What stopped a file from being written, in kinds a keeper can do something about.
enum class FileProblem {
    FolderMissing, // the folder is not there
    NotAllowed,    // no permission, or a read-only disk
    DiskFull,      // no room on the disk, or a limit on the size of a file
    NotAFile,      // there is a folder of that name
    Failed,        // anything else the system reports
};

struct FileError {
    FileProblem problem = FileProblem::Failed;
    QString technical; // what the system said, for a log or a second line
};

/// The kind of a system's error number (errno).
[[nodiscard]] FileProblem problemFrom(int systemError);

/// Writes a file beside its place and swaps it in when it is complete and on the disk: at every moment there
/// is either the old file, whole, or the new one, whole. New files are for their owner alone (mode 0600),
/// also where they take the place of a more open one.
///
/// content is called once with a sink and writes all of the file through it; what it writes after the disk is
/// full is dropped. An exception out of content is passed on. Nothing returned: the file is there. An error
/// or an exception: the place is as it was before, nothing lies beside it.
[[nodiscard]] std::optional<FileError> writeSafely(const QString& path,
                                                   const std::function<void(const ByteSink&)>& content);

} // namespace halfcup::exchange
