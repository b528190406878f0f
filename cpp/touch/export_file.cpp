// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/export_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <iterator>

namespace halfcup::touch {

namespace {

class ExportFile {
    Q_DECLARE_TR_FUNCTIONS(ExportFile)
};

/// A mail program or a browser shows a file by its type.
struct FileType {
    QLatin1String ending;
    QLatin1String mimeType;
};
const FileType fileTypes[] = {
    {QLatin1String("csv"), QLatin1String("text/csv")},                 // RFC 4180
    {QLatin1String("geojson"), QLatin1String("application/geo+json")}, // RFC 7946
    {QLatin1String("ics"), QLatin1String("text/calendar")},            // RFC 5545
    {QLatin1String("pdf"), QLatin1String("application/pdf")},          // RFC 8118
};

/// Our own files have no type that is registered anywhere; mail programs carry those as they are.
QString mimeTypeOf(const QString& path) {
    const QString ending = QFileInfo(path).suffix();
    const auto* const type = std::find_if(std::begin(fileTypes), std::end(fileTypes),
                                          [&](const FileType& each) { return ending == each.ending; });
    return type == std::end(fileTypes) ? QStringLiteral("application/octet-stream") : QString(type->mimeType);
}

} // namespace

QString noPlaceToWrite(const device::Folder& folder) {
    return folder.path.isEmpty()
               ? ExportFile::tr("This phone has no place for files to hand on.")
               : ExportFile::tr("%1 cannot be written. Nothing was written.").arg(folder.path);
}

void handOn(Services& services, const QString& path) {
    if (services.device.files->hasShareSheet())
        services.device.files->share(path, mimeTypeOf(path));
}

QString whereItIs(const Services& services, const QString& path) {
    return services.device.folders->areSeen()
               ? path
               : ExportFile::tr("%1, handed to the browser", "a file's name").arg(QFileInfo(path).fileName());
}

QString fileTrouble(exchange::FileProblem problem, const QString& path) {
    using Problem = exchange::FileProblem;
    switch (problem) {
    case Problem::FolderMissing:
        return ExportFile::tr("The folder for %1 is not there. Nothing was written.").arg(path);
    case Problem::NotAllowed:
        return ExportFile::tr("%1 cannot be written: the folder is read-only. Nothing was written.")
            .arg(path);
    case Problem::DiskFull:
        return ExportFile::tr("The storage is full. %1 was not written; your records are safe.").arg(path);
    case Problem::NotAFile:
        return ExportFile::tr("%1 is a folder, not a file. Nothing was written.").arg(path);
    case Problem::Failed:
        break;
    }
    return ExportFile::tr("%1 could not be written. Your records are safe.").arg(path);
}

Exported writeExport(Services& services, const QString& name, const std::string& text) {
    const device::Folder folder = services.device.folders->exports();
    if (!folder.ok())
        return {true, noPlaceToWrite(folder), {}};
    const QString path = QDir(folder.path).filePath(name);
    const auto error = exchange::writeSafely(path, [&](const exchange::ByteSink& sink) { sink(text); });
    if (error)
        return {true, fileTrouble(error->problem, path), {}};
    handOn(services, path);
    return {false, {}, path};
}

} // namespace halfcup::touch
