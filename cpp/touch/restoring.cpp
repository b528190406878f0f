// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/restoring.h"

#include "store/restore.h"
#include "touch/backup_controller.h"
#include "touch/settings.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QLocale>

namespace halfcup::touch {

namespace {

class Restoring {
    Q_DECLARE_TR_FUNCTIONS(Restoring)
};

QString whatWasDone(const store::Restored& restored) {
    const QString name = QString::fromStdString(restored.contents.path).section(u'/', -1);
    const QString back = Restoring::tr("%1 was put back: %n wash(es) are in your records now.", nullptr,
                                       static_cast<int>(restored.contents.washes))
                             .arg(name);
    if (restored.keptAside.empty())
        return back;
    return Restoring::tr("%1 What was kept before is safe as %2, in the list of backups.", "sentence, file")
        .arg(back, QString::fromStdString(restored.keptAside).section(u'/', -1));
}

} // namespace

QString backupTrouble(store::BackupError::Kind kind, const QString& path) {
    using Kind = store::BackupError::Kind;
    const QString name = path.section(u'/', -1);
    switch (kind) {
    case Kind::NotThere:
        return Restoring::tr("%1 is no longer there.").arg(path);
    case Kind::NotAFile:
        return Restoring::tr("%1 is a folder, not a backup.").arg(name);
    case Kind::NotAllowed:
        return Restoring::tr("%1 cannot be read: this user has no permission.").arg(name);
    case Kind::Empty:
        return Restoring::tr("%1 is empty. Take another copy of it, if there is one.").arg(name);
    case Kind::NotOurs:
        return Restoring::tr("%1 is no backup of Halfcup.").arg(name);
    case Kind::Cut:
        return Restoring::tr("The end of %1 is missing: it was not copied in full, or is still being copied. "
                             "Copy it again.")
            .arg(name);
    case Kind::Damaged:
        return Restoring::tr("%1 is damaged: it is not as it was written. Take another copy of it, or an "
                             "earlier backup.")
            .arg(name);
    case Kind::Newer:
        return Restoring::tr(
                   "%1 was written by a newer Halfcup. Install the newer version, then put it back.")
            .arg(name);
    case Kind::SameFile:
        break;
    }
    return Restoring::tr("%1 holds the records that are open now.").arg(name);
}

QString putBack(const QString& backupPath, const QString& databasePath, device::Platform& platform,
                bool* done) {
    if (done)
        *done = false;
    const store::StoreHost host{[&platform] { return platform.clock->now().utcMs; },
                                [&platform] { return platform.random->next(); }};
    QString why;
    try {
        const QString told = whatWasDone(store::restoreBackup(
            backupPath.toStdString(), databasePath.toStdString(), host, Settings::ofTheHand()));
        if (done)
            *done = true;
        return told;
    } catch (const store::BackupError& error) {
        why = backupTrouble(error.kind(), backupPath);
    } catch (const store::StoreError& error) {
        using Kind = store::StoreError::Kind;
        // "The copy before" of words::trouble is another one.
        why = error.kind() == Kind::CopyFailed
                  ? Restoring::tr("What is kept now could not be copied aside first.")
                  : words::trouble(error.kind(), databasePath);
    }
    return Restoring::tr("The backup was not put back, and your records are as they were. %1", "why")
        .arg(why);
}

QList<ChoiceListModel::Entry> backupsOn(device::Platform& platform, const QString& databasePath) {
    QList<ChoiceListModel::Entry> entries;
    const auto add = [&](const QFileInfo& file, const QString& note) {
        const std::int64_t at = file.lastModified().toMSecsSinceEpoch();
        const records::Moment changed{at, platform.clock->utcOffsetMinutes(at)};
        ChoiceListModel::Entry entry;
        entry.key = file.filePath();
        entry.title = BackupController::tr("%1, %2", "day, time of day")
                          .arg(words::dayAndYear(records::localDate(changed)), words::timeOfDay(changed));
        entry.detail =
            BackupController::tr("%1, %2", "file name, size")
                .arg(file.fileName(), QLocale().formattedDataSize(file.size(), 1, QLocale::DataSizeSIFormat));
        entry.note = note;
        entries.append(entry);
    };
    const device::Folder folder = platform.folders->exports();
    if (!folder.path.isEmpty())
        for (const QFileInfo& file :
             QDir(folder.path)
                 .entryInfoList({QLatin1Char('*') + QLatin1String(store::backupEnding)}, QDir::Files,
                                QDir::Time))
            add(file, {});
    const QFileInfo aside(QString::fromStdString(store::keptAsidePrefix(databasePath.toStdString())));
    for (const QFileInfo& file :
         aside.dir().entryInfoList({aside.fileName() + QLatin1Char('*')}, QDir::Files, QDir::Time))
        add(file, BackupController::tr("kept aside when a backup was put back"));
    return entries;
}

} // namespace halfcup::touch
