// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "failing_disk.h"

#include <cerrno>
#include <cstdarg>
#include <cstdint>
#include <linux/fcntl.h> // the flags alone: <fcntl.h> declares what is defined here
#include <sys/syscall.h>
#include <sys/types.h>
#include <sys/uio.h>

extern "C" long syscall(long number, ...) noexcept;

namespace halfcup::faults {

namespace {

struct Disk {
    std::string folder; // empty: sound
    int nth = 0;
    int calls = 0;
    Failure failure = Failure::Broken;
    bool failed = false;
    bool full = false;
    std::string what;
};
Disk disk; // the test has one thread that writes

enum class Wants { Room, Nothing };

/// 0, or the error that this call has to give.
int errorFor(const char* call, const std::string& path, Wants wants) {
    if (disk.folder.empty() || !path.starts_with(disk.folder))
        return 0;
    const int number = disk.calls++;
    const bool isFull = disk.failure == Failure::Full || disk.failure == Failure::Crowded;
    const bool goesOn = disk.failure == Failure::Dead || disk.failure == Failure::Crowded;
    if (number < disk.nth || (number > disk.nth && !goesOn))
        return 0;
    if (number > disk.nth && isFull && wants == Wants::Nothing)
        return 0;
    const int error = isFull && wants == Wants::Room ? ENOSPC : EIO;
    if (!disk.failed) {
        disk.what = std::string(call) + " " + path;
        disk.full = error == ENOSPC;
    }
    disk.failed = true;
    return error;
}

std::string pathOf(int file) {
    if (disk.folder.empty())
        return {};
    char name[4096];
    const std::string link = "/proc/self/fd/" + std::to_string(file);
    const long length = syscall(SYS_readlinkat, AT_FDCWD, link.c_str(), name, sizeof name);
    return length > 0 ? std::string(name, static_cast<std::size_t>(length)) : std::string();
}

long refused(int error) {
    errno = error;
    return -1;
}

constexpr int writes = O_WRONLY | O_RDWR | O_CREAT | O_TRUNC;

int opened(int folder, const char* path, int flags, unsigned mode) {
    if ((flags & writes) != 0 && !disk.folder.empty()) {
        const bool isNew = (flags & O_CREAT) != 0 && syscall(SYS_faccessat, folder, path, 0) != 0;
        if (const int error = errorFor("open", path, isNew ? Wants::Room : Wants::Nothing))
            return static_cast<int>(refused(error));
    }
    return static_cast<int>(syscall(SYS_openat, folder, path, flags, mode));
}

/// What is written of so many bytes before there is no more room: half of them, and then nothing.
bool writesHalf(int error, std::size_t bytes) {
    return error == ENOSPC && disk.failure == Failure::Full && bytes > 1;
}

} // namespace

void failAt(const std::string& folder, int nth, Failure failure) {
    disk = {folder, nth, 0, failure, false, false, {}};
}

int repair() {
    disk.folder.clear();
    return disk.calls;
}

bool hasFailed() {
    return disk.failed;
}

bool wasFull() {
    return disk.full;
}

std::string failedCall() {
    return disk.what;
}

} // namespace halfcup::faults

using namespace halfcup::faults;

#define INSTEAD extern "C" __attribute__((visibility("default")))

INSTEAD int open(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const unsigned mode = va_arg(more, unsigned);
    va_end(more);
    return opened(AT_FDCWD, path, flags, mode);
}

INSTEAD int open64(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const unsigned mode = va_arg(more, unsigned);
    va_end(more);
    return opened(AT_FDCWD, path, flags, mode);
}

INSTEAD ssize_t write(int file, const void* bytes, std::size_t size) {
    if (const int error = errorFor("write", pathOf(file), Wants::Room)) {
        if (writesHalf(error, size))
            static_cast<void>(syscall(SYS_write, file, bytes, size / 2));
        return refused(error);
    }
    return syscall(SYS_write, file, bytes, size);
}

INSTEAD ssize_t writev(int file, const struct iovec* parts, int count) {
    if (const int error = errorFor("writev", pathOf(file), Wants::Room))
        return refused(error);
    return syscall(SYS_writev, file, parts, count);
}

INSTEAD ssize_t pwrite64(int file, const void* bytes, std::size_t size, std::int64_t at) {
    if (const int error = errorFor("pwrite", pathOf(file), Wants::Room)) {
        if (writesHalf(error, size))
            static_cast<void>(syscall(SYS_pwrite64, file, bytes, size / 2, at));
        return refused(error);
    }
    return syscall(SYS_pwrite64, file, bytes, size, at);
}

INSTEAD ssize_t pwrite(int file, const void* bytes, std::size_t size, std::int64_t at) {
    return pwrite64(file, bytes, size, at);
}

INSTEAD int ftruncate64(int file, std::int64_t size) noexcept {
    if (!disk.folder.empty()) {
        constexpr int fromHere = 1;
        constexpr int fromEnd = 2;
        const long here = syscall(SYS_lseek, file, 0L, fromHere);
        const bool grows = size > syscall(SYS_lseek, file, 0L, fromEnd);
        static_cast<void>(syscall(SYS_lseek, file, here, 0));
        if (const int error = errorFor("ftruncate", pathOf(file), grows ? Wants::Room : Wants::Nothing))
            return static_cast<int>(refused(error));
    }
    return static_cast<int>(syscall(SYS_ftruncate, file, size));
}

INSTEAD int ftruncate(int file, std::int64_t size) noexcept {
    return ftruncate64(file, size);
}

INSTEAD int fsync(int file) {
    if (const int error = errorFor("fsync", pathOf(file), Wants::Room))
        return static_cast<int>(refused(error));
    return static_cast<int>(syscall(SYS_fsync, file));
}

INSTEAD int fdatasync(int file) {
    if (const int error = errorFor("fdatasync", pathOf(file), Wants::Room))
        return static_cast<int>(refused(error));
    return static_cast<int>(syscall(SYS_fdatasync, file));
}

INSTEAD int unlink(const char* path) noexcept {
    if (const int error = errorFor("unlink", path, Wants::Nothing))
        return static_cast<int>(refused(error));
    return static_cast<int>(syscall(SYS_unlinkat, AT_FDCWD, path, 0));
}

INSTEAD int rename(const char* path, const char* place) noexcept {
    if (const int error = errorFor("rename", path, Wants::Nothing))
        return static_cast<int>(refused(error));
    return static_cast<int>(syscall(SYS_renameat2, AT_FDCWD, path, AT_FDCWD, place, 0));
}

INSTEAD int linkat(int folder, const char* path, int intoFolder, const char* into, int flags) noexcept {
    if (const int error = errorFor("link", into, Wants::Room))
        return static_cast<int>(refused(error));
    return static_cast<int>(syscall(SYS_linkat, folder, path, intoFolder, into, flags));
}
