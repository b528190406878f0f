// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/standard_folders.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTemporaryFile>

#include <utility>

namespace halfcup::device {

namespace {

constexpr QFile::Permissions kOwnerOnly = QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner;
constexpr QFile::Permissions kOwnerBits = kOwnerOnly;
constexpr QFile::Permissions kOtherBits = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup |
                                          QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;

bool isFileInTheWay(const QString& path) {
    QString part = path;
    while (!part.isEmpty()) {
        const QFileInfo info(part);
        if (info.exists()) {
            return !info.isDir();
        }
        const QString parent = info.path();
        if (parent == part) {
            break;
        }
        part = parent;
    }
    return false;
}

bool make(const QString& path, bool ownerOnly) {
    if (!ownerOnly) {
        return QDir().mkpath(path);
    }
    // Made closed rather than closed afterwards: there is no moment at which another could look in.
    return QDir().mkpath(QFileInfo(path).path()) && QDir().mkdir(path, kOwnerOnly);
}

bool closeToOthers(const QString& path) {
    const auto bits = [&path] { return QFile::permissions(path) & (kOwnerBits | kOtherBits); };
    if (bits() == kOwnerOnly) {
        return true;
    }
    return QFile::setPermissions(path, kOwnerOnly) && bits() == kOwnerOnly;
}

// By writing: permission bits say nothing of a full disk or a folder mounted read-only.
bool canWrite(const QString& path) {
    QTemporaryFile file(path + QStringLiteral("/.halfcup-try-XXXXXX"));
    return file.open() && file.write("try", 3) == 3 && file.flush();
}

Folder ready(const QString& wanted, bool ownerOnly) {
    Folder folder;
    if (wanted.isEmpty()) {
        folder.trouble = FolderTrouble::NoPlace;
        return folder;
    }
    folder.path = QDir::cleanPath(QDir().absoluteFilePath(wanted));
    if (isFileInTheWay(folder.path)) {
        folder.trouble = FolderTrouble::NotAFolder;
        return folder;
    }
    if (!QFileInfo::exists(folder.path) && !make(folder.path, ownerOnly)) {
        folder.trouble = FolderTrouble::CannotCreate;
        return folder;
    }
    const bool isClosed = !ownerOnly || closeToOthers(folder.path);
    if (!canWrite(folder.path)) {
        folder.trouble = FolderTrouble::CannotWrite;
    } else if (!isClosed) {
        folder.trouble = FolderTrouble::CannotProtect;
    }
    return folder;
}

} // namespace

StandardFolders::StandardFolders(QString dataPath, QString exportsPath, bool areSeen)
    : m_dataPath(std::move(dataPath))
    , m_exportsPath(std::move(exportsPath))
    , m_areSeen(areSeen) {}

Folder StandardFolders::data() const {
    return ready(m_dataPath.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)
                                      : m_dataPath,
                 true);
}

Folder StandardFolders::exports() const {
    if (!m_exportsPath.isEmpty()) {
        return ready(m_exportsPath, false);
    }
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return ready(documents.isEmpty() ? QString() : documents + QStringLiteral("/Halfcup"), false);
}

} // namespace halfcup::device
