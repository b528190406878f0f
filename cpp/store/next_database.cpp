// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/next_database.h"

#include "store/database_files.h"
#include "store/durable_file.h"
#include "store/migration.h"
#include "store/store_error.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>

#include <fcntl.h>
#include <filesystem>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace halfcup::store {

namespace {

std::string waitingName(const std::string& path) {
    return path + ".next";
}

/// The file that waits, locked: two programs that start at once must not both remove "the old log", which is
/// the new one's as soon as the first of them has opened it.
class WaitingFile {
public:
    explicit WaitingFile(const std::string& path)
        : m_file(::open(path.c_str(), O_RDONLY | O_CLOEXEC)) {
        if (m_file < 0)
            return;
        struct stat mine {};
        struct stat there {};
        m_waits = ::flock(m_file, LOCK_EX) == 0 && ::fstat(m_file, &mine) == 0 &&
                  ::stat(path.c_str(), &there) == 0 && mine.st_ino == there.st_ino;
    }
    ~WaitingFile() {
        if (m_file >= 0)
            ::close(m_file);
    }
    WaitingFile(const WaitingFile&) = delete;
    WaitingFile& operator=(const WaitingFile&) = delete;
    [[nodiscard]] bool waits() const { return m_waits; }

private:
    int m_file;
    bool m_waits = false;
};

} // namespace

NextDatabase::NextDatabase(std::string path)
    : m_path(std::move(path)) {
    remove();
}

NextDatabase::~NextDatabase() {
    remove();
}

void NextDatabase::remove() noexcept {
    removeDatabase(m_path);
    for (const Migration& step : allMigrations()) // what it is made from is the copy before the step
        removeDatabase(copyNameBefore(m_path, step.version));
}

void settle(SQLite::Database& database) {
    if (database.execAndGet("PRAGMA journal_mode = DELETE").getString() != "delete")
        throw StoreError(StoreError::Kind::Busy, "the log is in use");
}

void replaceDatabase(const std::string& nextPath, const std::string& path) {
    moveIntoPlace(nextPath, waitingName(path));
    endReplacement(path);
}

bool isBeingReplaced(const std::string& path) {
    std::error_code error;
    return std::filesystem::exists(waitingName(path), error);
}

void endReplacement(const std::string& path) {
    const std::string waiting = waitingName(path);
    const WaitingFile held(waiting);
    if (!held.waits())
        return;
    for (const char* ending : besideDatabase)
        removeSurely(path + ending);
    moveIntoPlace(waiting, path);
}

} // namespace halfcup::store
