// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/found_files.h"

#include "touch/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QStandardPaths>

#include <algorithm>

namespace halfcup::touch {

namespace {

class FoundFiles {
    Q_DECLARE_TR_FUNCTIONS(FoundFiles)
};

} // namespace

QStringList foldersOfFiles(const Services& services) {
    QStringList folders;
    if (services.device.folders->areSeen())
        for (const auto place : {QStandardPaths::DownloadLocation, QStandardPaths::DocumentsLocation})
            folders.append(QStandardPaths::standardLocations(place));
    if (const device::Folder exports = services.device.folders->exports(); exports.ok())
        folders.append(exports.path);
    folders.removeDuplicates();
    return folders;
}

QFileInfoList newestFiles(const QStringList& folders, const QStringList& patterns, qsizetype most) {
    QFileInfoList found;
    for (const QString& folder : folders)
        found.append(QDir(folder).entryInfoList(patterns, QDir::Files | QDir::Readable));
    std::ranges::stable_sort(
        found, [](const QFileInfo& a, const QFileInfo& b) { return a.lastModified() > b.lastModified(); });
    return found.first(std::min(most, found.size()));
}

QString ageAndSize(const Services& services, const QFileInfo& file) {
    const qint64 utcMs = file.lastModified().toMSecsSinceEpoch();
    const records::Moment changed{utcMs, services.device.clock->utcOffsetMinutes(utcMs)};
    return FoundFiles::tr("%1, %2", "day, size")
        .arg(words::dayAndYear(records::localDate(changed)),
             QLocale().formattedDataSize(file.size(), 1, QLocale::DataSizeSIFormat));
}

QString mainActionOfFiles(const Services& services) {
    return services.device.folders->areSeen() ? FoundFiles::tr("Look again")
                                              : FoundFiles::tr("Choose a file");
}

QString chooserOfFiles(const Services& services, bool anyFound) {
    if (!services.device.files->canChoose() || !services.device.folders->areSeen())
        return {};
    return anyFound ? FoundFiles::tr("Choose another file") : FoundFiles::tr("Choose a file");
}

} // namespace halfcup::touch
