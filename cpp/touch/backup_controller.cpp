// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/backup_controller.h"

#include "store/restore.h"
#include "touch/export_file.h"
#include "touch/restoring.h"
#include "touch/words.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>

namespace halfcup::touch {

namespace {

QString sizeText(qint64 bytes) {
    return QLocale().formattedDataSize(bytes, 1, QLocale::DataSizeSIFormat);
}

std::int64_t wholeNumber(const records::Value& value) {
    const auto* number = std::get_if<std::int64_t>(&value);
    return number ? *number : 0;
}

QString dayAndTime(const records::Moment& moment) {
    return BackupController::tr("%1, %2", "day, time of day")
        .arg(words::dayAndYear(records::localDate(moment)), words::timeOfDay(moment));
}

} // namespace

BackupController::BackupController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    connect(services.device.files.get(), &device::FileHandover::worksChanged, this,
            &BackupController::changed);
}

QString BackupController::lastLine() const {
    return m_lastAt ? tr("Last backup: %1", "day and time").arg(dayAndTime(*m_lastAt)) : tr("No backup yet");
}

QString BackupController::placeLine() const {
    if (m_lastPlace.isEmpty() || !m_services.device.folders->areSeen())
        return {};
    return QFileInfo::exists(m_lastPlace)
               ? m_lastPlace
               : tr("It is no longer at %1. Good, if you moved it to a safe place.").arg(m_lastPlace);
}

QString BackupController::newLine() const {
    return m_newWashes > 0 ? tr("%n wash(es) in no backup yet", nullptr, static_cast<int>(m_newWashes))
                           : QString();
}

QString BackupController::reminder() const {
    // What a browser keeps can be gone tomorrow.
    const int enough = m_services.device.folders->areSeen() ? store::washesUntilReminder : 1;
    if (m_newWashes < enough)
        return {};
    bool anyOwn = false; // invented records need no keeping
    m_services.kept([&] { anyOwn = !std::ranges::all_of(m_services.store.yards(), &records::Yard::demo); });
    return anyOwn ? newLine() : QString();
}

QString BackupController::whyLine() const {
    return m_services.device.folders->areSeen()
               ? tr("A backup is one file with all you keep. Copy it off this phone: a phone can fall into "
                    "the honey.")
               : tr("A backup is one file with all you keep. A browser may throw away what it keeps: when "
                    "the phone is full, when its data are cleared, in a private window always. Keep the file "
                    "outside it.");
}

QString BackupController::question() const {
    if (!m_picked)
        return {};
    const QString becomes =
        m_picked->madeAt ? tr("Your records become what they were on %1.").arg(dayAndTime(*m_picked->madeAt))
                         : tr("Your records become what is in %1.")
                               .arg(QString::fromStdString(m_picked->path).section(u'/', -1));
    return tr("%1 What is kept now is not thrown away: it stays beside them as a copy, in the list of "
              "backups. Your settings stay. What another phone has taken over comes back when you merge "
              "with it. The app starts anew.",
              "sentence")
        .arg(becomes);
}

void BackupController::refresh() {
    m_result.clear();
    m_failed = false;
    read();
    emit changed();
}

void BackupController::read() {
    m_services.kept([&] {
        store::Store& store = m_services.store;
        const std::int64_t at = wholeNumber(store.setting(store::lastBackupAtSetting));
        m_lastAt.reset();
        if (at > 0)
            m_lastAt = records::Moment{at, m_services.device.clock->utcOffsetMinutes(at)};
        const records::Value place = store.setting(store::lastBackupPlaceSetting);
        const auto* text = std::get_if<std::string>(&place);
        m_lastPlace = text ? QString::fromStdString(*text) : QString();
        m_newWashes = store.finishedWashes() -
                      (m_lastAt ? wholeNumber(store.setting(store::lastBackupWashesSetting)) : 0);
    });
    listBackups();
}

void BackupController::listBackups() {
    m_backups.setEntries(backupsOn(m_services.device, QString::fromStdString(m_services.store.path())));
}

QString BackupController::freeName(const QString& folder) const {
    const QString day = QString::fromStdString(records::toIso(m_services.today()));
    const QDir place(folder);
    QString name = tr("halfcup-%1", "file name").arg(day);
    for (int number = 2; place.exists(name + QLatin1String(store::backupEnding)); ++number)
        name = tr("halfcup-%1-%2", "file name").arg(day).arg(number);
    return place.filePath(name + QLatin1String(store::backupEnding));
}

bool BackupController::makeBackup() {
    const device::Folder folder = m_services.device.folders->exports();
    m_failed = true;
    if (!folder.ok()) {
        m_result = folder.path.isEmpty() ? tr("This phone has no place for files to hand on.")
                                         : tr("%1 cannot be written. No backup was made.").arg(folder.path);
        emit changed();
        return false;
    }
    const QString path = freeName(folder.path);
    try {
        const records::Moment now = m_services.now();
        const store::BackupContents made =
            store::makeBackup(m_services.store.path(), path.toStdString(), now);
        m_failed = false;
        m_result = tr("Written and checked: %n wash(es), %1, %2", "size, path", static_cast<int>(made.washes))
                       .arg(sizeText(made.sizeBytes), whereItIs(m_services, path));
        m_services.kept([&] {
            m_services.store.inOneTransaction([&] {
                m_services.store.setSetting(store::lastBackupAtSetting, now.utcMs);
                m_services.store.setSetting(store::lastBackupWashesSetting, made.washes);
                m_services.store.setSetting(store::lastBackupPlaceSetting, made.path);
            });
        });
        handOn(m_services, path);
    } catch (const store::StoreError& error) {
        using Kind = store::StoreError::Kind;
        if (error.kind() == Kind::NotAllowed || error.kind() == Kind::FolderMissing)
            m_result = tr("%1 cannot be written. No backup was made.").arg(folder.path);
        else if (error.kind() == Kind::CopyFailed)
            m_result = tr("The backup was written but did not pass its check, so it was thrown away. Try it "
                          "again, or into another place.");
        else
            m_result = words::trouble(error.kind(), path);
    }
    read();
    emit changed();
    return !m_failed;
}

void BackupController::chooseFile() {
    m_services.device.files->chooseFile(tr("A backup"), {QLatin1String(store::backupEnding)});
}

void BackupController::pick(const QString& key) {
    m_picked.reset();
    m_pickedProblem.clear();
    m_pickedTitle = tr("In this backup");
    m_contents.setEntries({});
    try {
        m_picked = store::lookInto(key.toStdString());
        listContents(*m_picked);
    } catch (const store::BackupError& error) {
        m_pickedTitle = tr("It cannot be used");
        m_pickedProblem = backupTrouble(error.kind(), key);
    }
    emit pickedChanged();
}

void BackupController::listContents(const store::BackupContents& contents) {
    QList<ChoiceListModel::Entry> entries;
    const auto add = [&](const QString& title, const QString& detail, const QString& note = {}) {
        ChoiceListModel::Entry entry;
        entry.title = title;
        entry.detail = detail;
        entry.note = note;
        entries.append(entry);
    };
    if (contents.madeAt)
        add(tr("Made"), dayAndTime(*contents.madeAt));
    const auto number = [](std::int64_t count) { return static_cast<int>(count); };
    add(tr("In it"), tr("%1, %2, %3, %4", "yards, colonies, washes, treatments")
                         .arg(tr("%n yard(s)", nullptr, number(contents.yards)),
                              tr("%n colony(ies)", nullptr, number(contents.colonies)),
                              tr("%n wash(es)", nullptr, number(contents.washes)),
                              tr("%n treatment(s)", nullptr, number(contents.treatments))));
    if (contents.newestWash)
        add(tr("Newest wash"), words::dayAndYear(*contents.newestWash));
    add(tr("File"),
        tr("%1, %2", "file name, size")
            .arg(QFileInfo(QString::fromStdString(contents.path)).fileName(), sizeText(contents.sizeBytes)),
        contents.isBackup ? tr("Every row was checked: it is as it was written.")
                          : tr("A plain database: its form is sound; there is no check sum in it."));
    m_contents.setEntries(entries);
}

void BackupController::putBack() {
    if (m_picked)
        emit restoreWanted(QString::fromStdString(m_picked->path));
}

} // namespace halfcup::touch
