// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace halfcup::store {

/// Makes an empty file only its owner can read (mode 0600), or empties one that is there and takes its rights
/// away. Throws StoreError: NotAllowed, DiskFull, Failed.
void makeEmptyPrivate(const std::string& path);

/// The same where there is none yet; one that is there is left as it is but for its rights.
void makePrivateWhereMissing(const std::string& path);

/// Copies the bytes of a file into another one, which only its owner can read, on the disk when it returns.
/// Throws StoreError: FolderMissing, NotAllowed, DiskFull, Failed; part of it may lie there then.
void copyFile(const std::string& path, const std::string& into);

/// Returns when all of the file is on the disk, not in a cache that a dead battery loses. SQLite 3.40 writes
/// the file of a VACUUM INTO without that. Throws StoreError: DiskFull, Failed.
void syncFile(const std::string& path);

/// Gives the file the new name, which may be another's of the same folder: at every moment there is the old
/// file of that name, whole, or the new one, whole. On the disk when it returns. Throws StoreError:
/// NotAllowed, DiskFull, Failed.
void moveIntoPlace(const std::string& path, const std::string& place);

/// Removes a file of that name; there may be none. Throws StoreError where there is one and it cannot be.
void removeSurely(const std::string& path);

/// Removes a file of that name. Never a folder; nothing is said where there is none or it cannot be.
void removeQuietly(const std::string& path) noexcept;

} // namespace halfcup::store
