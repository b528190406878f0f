// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/sqlite_errors.h"

#include <sqlite3.h>

namespace halfcup::store {

StoreError storeErrorFrom(const SQLite::Exception& error) {
    using Kind = StoreError::Kind;
    const auto make = [&](Kind kind) { return StoreError(kind, error.what()); };
    // The log's index beside the database could not be made larger: SQLite's word for a disk that is full
    // just there.
    if (error.getErrorCode() == SQLITE_IOERR_SHMSIZE || error.getExtendedErrorCode() == SQLITE_IOERR_SHMSIZE)
        return make(Kind::DiskFull);
    switch (error.getErrorCode() & 0xFF) { // the low byte is the plain code, the rest details
    case SQLITE_NOTADB:
        return make(Kind::NotOurs);
    case SQLITE_CORRUPT:
        return make(Kind::Damaged);
    case SQLITE_FULL:
        return make(Kind::DiskFull);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return make(Kind::Busy);
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
    case SQLITE_CANTOPEN: // the folder is there (openDatabase looks), so the log beside the file is forbidden
        return make(Kind::NotAllowed);
    default:
        return make(Kind::Failed);
    }
}

} // namespace halfcup::store
