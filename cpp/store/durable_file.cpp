// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/durable_file.h"

#include "store/store_error.h"

#include <array>
#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace halfcup::store {

namespace fs = std::filesystem;

namespace {

constexpr mode_t ownerOnly = S_IRUSR | S_IWUSR;

/// What errno means, for a keeper.
StoreError troubleWith(const std::string& path) {
    using Kind = StoreError::Kind;
    const int code = errno;
    const std::string technical = path + ": " + std::generic_category().message(code);
    switch (code) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return {Kind::DiskFull, technical};
    case EACCES:
    case EPERM:
    case EROFS:
        return {Kind::NotAllowed, technical};
    case ENOENT:
    case ENOTDIR:
        return {Kind::FolderMissing, technical};
    default:
        return {Kind::Failed, technical};
    }
}

/// An open file that is closed whatever happens.
class OpenFile {
public:
    OpenFile(const std::string& path, int flags)
        : m_path(path)
        , m_file(::open(path.c_str(), flags | O_CLOEXEC, ownerOnly)) {
        if (m_file < 0)
            throw troubleWith(path);
    }
    ~OpenFile() { ::close(m_file); }
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    void makePrivate() const {
        if (::fchmod(m_file, ownerOnly) != 0)
            throw troubleWith(m_path);
    }
    void copyTo(const OpenFile& other) const {
        std::array<char, 65536> block{};
        while (true) {
            const ssize_t got = ::read(m_file, block.data(), block.size());
            if (got < 0)
                throw troubleWith(m_path);
            if (got == 0)
                return;
            for (ssize_t at = 0; at < got;) {
                const ssize_t written =
                    ::write(other.m_file, block.data() + at, static_cast<std::size_t>(got - at));
                if (written < 0)
                    throw troubleWith(other.m_path);
                at += written;
            }
        }
    }
    void sync() const {
        if (::fsync(m_file) != 0)
            throw troubleWith(m_path);
    }

private:
    std::string m_path;
    int m_file;
};

/// A new name is on the disk only once its folder is. Some file systems cannot sync a folder; the file itself
/// is safe there all the same, so that this is no failure.
void syncFolderOf(const std::string& path) {
    const fs::path folder = fs::path(path).parent_path();
    const int handle = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0)
        return;
    ::fsync(handle);
    ::close(handle);
}

} // namespace

void makeEmptyPrivate(const std::string& path) {
    OpenFile(path, O_WRONLY | O_CREAT | O_TRUNC).makePrivate();
}

void makePrivateWhereMissing(const std::string& path) {
    OpenFile(path, O_WRONLY | O_CREAT).makePrivate();
}

void copyFile(const std::string& path, const std::string& into) {
    const OpenFile from(path, O_RDONLY);
    const OpenFile to(into, O_WRONLY | O_CREAT | O_TRUNC);
    to.makePrivate();
    from.copyTo(to);
    to.sync();
}

void syncFile(const std::string& path) {
    OpenFile(path, O_RDONLY).sync();
}

void moveIntoPlace(const std::string& path, const std::string& place) {
    if (std::rename(path.c_str(), place.c_str()) != 0)
        throw troubleWith(place);
    syncFolderOf(place);
}

void removeSurely(const std::string& path) {
    if (::unlink(path.c_str()) != 0 && errno != ENOENT)
        throw troubleWith(path);
}

void removeQuietly(const std::string& path) noexcept {
    ::unlink(path.c_str()); // refuses a folder
}

} // namespace halfcup::store
