// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/database_files.h"

#include "records/moment.h"
#include "store/durable_file.h"
#include "store/store_error.h"

#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

namespace halfcup::store {

namespace fs = std::filesystem;

namespace {

constexpr off_t firstLockByte = 0x40000000; // pending; then reserved, then those that readers share
constexpr off_t lockBytes = 512;

void removeLogs(const std::string& path) noexcept {
    for (const char* ending : besideDatabase)
        removeQuietly(path + ending);
}

void copyLogs(const std::string& path, const std::string& aside) {
    try {
        std::error_code error;
        for (const char* ending : {"-wal", "-journal"}) // the log's index is made anew from it
            if (fs::exists(path + ending, error))
                copyFile(path + ending, aside + ending);
    } catch (const StoreError&) {
        removeLogs(aside);
        throw;
    }
}

} // namespace

void removeDatabase(const std::string& path) noexcept {
    removeQuietly(path);
    removeLogs(path);
}

std::string timeInName(std::int64_t utcMs) {
    const records::Date day = records::localDate({utcMs, 0});
    const std::int64_t second = (utcMs / 1000) % 86'400;
    char text[40];
    std::snprintf(text, sizeof text, "%04d%02d%02d-%02d%02d%02d", day.year, day.month, day.day,
                  static_cast<int>(second / 3600), static_cast<int>(second / 60 % 60),
                  static_cast<int>(second % 60));
    return text;
}

std::string freeName(const std::string& wanted) {
    std::error_code error;
    std::string name = wanted;
    for (int number = 2; fs::exists(name, error); ++number)
        name = wanted + "-" + std::to_string(number);
    return name;
}

void moveDatabase(const std::string& path, const std::string& aside) {
    copyLogs(path, aside); // first: a log without its database is removed by whoever makes a new one
    try {
        moveIntoPlace(path, aside);
    } catch (const StoreError&) {
        removeLogs(aside);
        throw;
    }
    removeLogs(path);
}

void copyAsItIs(const std::string& path, const std::string& aside) {
    for (const char* ending : besideDatabase) // of a copy that failed: SQLite would take it for this one's
        removeSurely(aside + ending);
    const std::string copy = settingAside(path);
    try {
        copyFile(path, copy);
        copyLogs(path, aside);
        moveIntoPlace(copy, aside);
    } catch (const StoreError&) {
        removeQuietly(copy);
        removeDatabase(aside);
        throw;
    }
}

std::string settingAside(const std::string& path) {
    return path + ".setting-aside";
}

bool isHeldByAnother(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDWR | O_CLOEXEC);
    if (file < 0)
        return false;
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    lock.l_start = firstLockByte;
    lock.l_len = lockBytes;
    const bool held = ::fcntl(file, F_GETLK, &lock) == 0 && lock.l_type != F_UNLCK;
    ::close(file);
    return held;
}

} // namespace halfcup::store
