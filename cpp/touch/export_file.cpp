// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/export_file.h"

#include <QCoreApplication>
#include <QDir>

namespace halfcup::touch {

namespace {

class ExportFile {
    Q_DECLARE_TR_FUNCTIONS(ExportFile)
};

} // namespace

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
        return {true,
                folder.path.isEmpty()
                    ? ExportFile::tr("This phone has no place for files to hand on.")
                    : ExportFile::tr("%1 cannot be written. Nothing was written.").arg(folder.path),
                {}};
    const QString path = QDir(folder.path).filePath(name);
    const auto error = exchange::writeSafely(path, [&](const exchange::ByteSink& sink) { sink(text); });
    if (error)
        return {true, fileTrouble(error->problem, path), {}};
    return {false, {}, path};
}

} // namespace halfcup::touch
