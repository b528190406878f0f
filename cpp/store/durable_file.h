// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace halfcup::store {

/// Makes an empty file only its owner can read (mode 0600), or empties one that is there and takes its rights
/// away. Throws StoreError: NotAllowed, DiskFull, Failed.
void makeEmptyPrivate(const std::string& path);

/// Returns when all of the file is on the disk, not in a cache that a dead battery loses. SQLite 3.40 writes
/// the file of a VACUUM INTO without that. Throws StoreError: DiskFull, Failed.
void syncFile(const std::string& path);

/// Gives the file the new name, which may be another's of the same folder: at every moment there is the old
/// file of that name, whole, or the new one, whole. On the disk when it returns. Throws StoreError:
/// NotAllowed, DiskFull, Failed.
void moveIntoPlace(const std::string& path, const std::string& place);

/// Removes a file of that name. Never a folder; nothing is said where there is none or it cannot be.
void removeQuietly(const std::string& path) noexcept;

} // namespace halfcup::store
