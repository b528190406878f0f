// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace SQLite {
class Database;
}

namespace halfcup::store {

/// The name of a database that is being made ready beside another one. It goes with everything beside it, at
/// the end and at the beginning (left over from a try that was cut short), unless it took another name by
/// then.
class NextDatabase {
public:
    explicit NextDatabase(std::string path);
    ~NextDatabase();
    NextDatabase(const NextDatabase&) = delete;
    NextDatabase& operator=(const NextDatabase&) = delete;
    [[nodiscard]] const std::string& path() const { return m_path; }

private:
    void remove() noexcept;
    std::string m_path;
};

/// Takes the log into the file, so that it can take another's place as one file, and nothing of a log is left
/// beside it. Closing it does so too, but says nothing where the disk fails. Throws StoreError: Busy where
/// another program reads it; SQLite::Exception.
void settle(SQLite::Database& database);

/// Lets a database that is ready take the place of one whose log must not outlive it: SQLite would take the
/// log for the new one's. On the disk at `path` + ".next" it waits, and from then on it counts: opening
/// the database ends what was begun (endReplacement()), also after a kill between any two steps.
/// Throws StoreError; then either nothing has changed, or the next opening brings it to its end.
void replaceDatabase(const std::string& nextPath, const std::string& path);

/// Whether it has come to that, and not to its end.
[[nodiscard]] bool isBeingReplaced(const std::string& path);

/// Brings a replacement that was cut short to its end; nothing where none was begun. Throws StoreError.
void endReplacement(const std::string& path);

} // namespace halfcup::store
