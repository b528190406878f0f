// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <string>

namespace halfcup::store {

/// What SQLite may have put beside a database: its log, the log's index, a journal of earlier days.
inline constexpr const char* besideDatabase[] = {"-wal", "-shm", "-journal"};

/// Removes a database and what lies beside it; nothing is said where there is none.
void removeDatabase(const std::string& path) noexcept;

/// "20260615-091500", UTC: the time as it stands in the name of a file that is kept aside.
[[nodiscard]] std::string timeInName(std::int64_t utcMs);

/// The name, or with "-2", "-3" ... behind it where there is a file of that name.
[[nodiscard]] std::string freeName(const std::string& wanted);

/// Gives a database and what lies beside it another name. Throws StoreError: NotAllowed, DiskFull, Failed.
void moveDatabase(const std::string& path, const std::string& aside);

/// Writes a copy of the database's file and of its log, byte for byte, readable by its owner alone, on the
/// disk when it returns. The copy's name is given to a whole one only. Throws StoreError: NotAllowed,
/// DiskFull, Failed.
void copyAsItIs(const std::string& path, const std::string& aside);

/// What a copy of the database is called until it is whole. A kill may leave it there; the next copy takes
/// its place.
[[nodiscard]] std::string settingAside(const std::string& path);

/// Whether another program has the database open. Each of its connections holds a lock on some of the bytes
/// that SQLite keeps for that (source: sqlite.org/lockingv3.html, and PENDING_BYTE in os.h of SQLite). It is
/// asked of the system, so that it works where SQLite cannot open the file any more.
[[nodiscard]] bool isHeldByAnother(const std::string& path);

} // namespace halfcup::store
