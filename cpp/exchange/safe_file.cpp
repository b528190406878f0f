// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/safe_file.h"

#include <QFileInfo>
#include <QSaveFile>

#include <cerrno>

namespace halfcup::exchange {

FileProblem problemFrom(int systemError) {
    switch (systemError) {
    case ENOENT:
    case ENOTDIR:
        return FileProblem::FolderMissing;
    case EACCES:
    case EPERM:
    case EROFS:
        return FileProblem::NotAllowed;
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return FileProblem::DiskFull;
    default:
        return FileProblem::Failed;
    }
}

std::optional<FileError> writeSafely(const QString& path,
                                     const std::function<void(const ByteSink&)>& content) {
    const QFileInfo place(path);
    if (!QFileInfo(place.absolutePath()).isDir())
        return FileError{FileProblem::FolderMissing, place.absolutePath()};
    if (place.isDir())
        return FileError{FileProblem::NotAFile, path};

    QSaveFile file(path);
    // Qt names only some of the causes; the system's own number, read at once, tells a full disk from a
    // missing permission.
    std::optional<FileError> error;
    const auto failed = [&] {
        const int systemError = errno;
        if (!error)
            error = FileError{problemFrom(systemError), file.errorString()};
    };
    errno = 0;
    // Unbuffered, because a buffer would report a full disk from somewhere inside commit().
    if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) {
        failed();
        return error;
    }
    if (!file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner))
        failed();
    if (!error)
        content([&](std::string_view bytes) {
            const auto size = static_cast<qint64>(bytes.size());
            errno = 0;
            if (!error && file.write(bytes.data(), size) != size)
                failed();
        });
    if (error) {
        file.cancelWriting();
        static_cast<void>(file.commit()); // takes away what lies beside
        return error;
    }
    errno = 0;
    if (!file.commit())
        failed();
    return error;
}

} // namespace halfcup::exchange
