// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/recovery_controller.h"

#include "store/rescue.h"
#include "touch/backup_controller.h"
#include "touch/restoring.h"
#include "touch/words.h"

namespace halfcup::touch {

using Kind = store::StoreError::Kind;

namespace {

int number(std::int64_t count) {
    return static_cast<int>(count);
}

QString inIt(const store::BackupContents& contents) {
    return BackupController::tr("%1, %2, %3, %4", "yards, colonies, washes, treatments")
        .arg(BackupController::tr("%n yard(s)", nullptr, number(contents.yards)),
             BackupController::tr("%n colony(ies)", nullptr, number(contents.colonies)),
             BackupController::tr("%n wash(es)", nullptr, number(contents.washes)),
             BackupController::tr("%n treatment(s)", nullptr, number(contents.treatments)));
}

/// A figure is a lower bound, and said so.
QString whatIsLost(const store::Rescued& rescued) {
    QStringList sentences;
    if (rescued.lost > 0)
        sentences.append(RecoveryController::tr("%n entry(ies) could not be read and are lost; there may be "
                                                "more.",
                                                nullptr, number(rescued.lost)));
    else if (rescued.badPages > 0)
        sentences.append(RecoveryController::tr("Part of the file could not be read. Nothing is known to be "
                                                "missing, but look through your records."));
    else
        sentences.append(RecoveryController::tr("Nothing is known to be missing."));
    if (rescued.standIns > 0)
        sentences.append(RecoveryController::tr("%n yard(s) or colony(ies) lost their name and stand there "
                                                "without it.",
                                                nullptr, number(rescued.standIns)));
    if (rescued.waiting > 0)
        sentences.append(RecoveryController::tr("Of %n record(s) too little was read to show them; a merge "
                                                "with another phone may complete them.",
                                                nullptr, number(rescued.waiting)));
    return sentences.join(u' ');
}

} // namespace

RecoveryController::RecoveryController(device::Platform& platform, QString databasePath, Kind kind,
                                       QString technical, QObject* parent)
    : QObject(parent)
    , m_platform(platform)
    , m_path(std::move(databasePath))
    // Of a file whose first page is gone SQLite says that it is no database.
    , m_isDamaged(kind == Kind::Damaged || kind == Kind::NotOurs)
    , m_sentence(words::trouble(kind, m_path))
    , m_detail(std::move(technical)) {
    if (kind == Kind::Newer && !m_platform.folders->areSeen())
        m_sentence = tr("Your records were written by a newer Halfcup. They are safe and unchanged; this "
                        "version cannot read them. Start again where there is a network: the newer version "
                        "comes by itself.");
    if (m_isDamaged)
        m_backups.setEntries(backupsOn(m_platform, m_path));
}

QString RecoveryController::title() const {
    return m_done ? tr("Halfcup can be started again") : tr("Halfcup cannot open its records");
}

QString RecoveryController::mainAction() const {
    if (m_done)
        return tr("Start Halfcup");
    return m_platform.folders->areSeen() ? tr("Close Halfcup") : tr("Start again");
}

QString RecoveryController::question() const {
    if (m_picked.isEmpty())
        return {};
    return tr("Put %1 back? Your records become what is in it. What lies there now is not thrown away: it "
              "stays beside them.")
        .arg(m_picked.section(u'/', -1));
}

void RecoveryController::rescue() {
    if (!canRescue())
        return;
    const store::StoreHost host{[this] { return m_platform.clock->now().utcMs; },
                                [this] { return m_platform.random->next(); }};
    const store::StandInNames names{tr("Yard whose name is lost").toStdString(), "?"};
    try {
        const store::Rescued rescued = store::rescue(m_path.toStdString(), host, names);
        const QString kept = tr("The damaged file is kept as %1.")
                                 .arg(QString::fromStdString(rescued.keptAside).section(u'/', -1));
        finish(tr("Saved: %1.", "yards, colonies, washes, treatments").arg(inIt(rescued.contents)),
               tr("%1 %2", "sentences").arg(whatIsLost(rescued), kept));
    } catch (const store::StoreError& error) {
        m_problem = error.kind() == Kind::NotOurs
                        ? tr("No record of Halfcup can be read in it. It was left as it is.")
                        : words::trouble(error.kind(), m_path);
        emit changed();
    }
}

void RecoveryController::pick(const QString& backupPath) {
    m_picked = backupPath;
    m_problem.clear();
    emit changed();
}

void RecoveryController::putBack() {
    if (m_picked.isEmpty() || m_done)
        return;
    bool done = false;
    const QString told = touch::putBack(m_picked, m_path, m_platform, &done);
    m_picked.clear();
    if (done)
        return finish(told, {});
    m_problem = told;
    emit changed();
}

void RecoveryController::start() {
    m_wantsStart = m_done;
    emit closeWanted();
}

void RecoveryController::finish(const QString& sentence, const QString& detail) {
    m_done = true;
    m_sentence = sentence;
    m_detail = detail;
    m_problem.clear();
    m_backups.setEntries({});
    emit changed();
}

void refuseDamaged(const QString& databasePath) {
    const std::string path = databasePath.toStdString();
    if (!store::wasNotClosed(path))
        return;
    if (const std::string damage = store::damageIn(path); !damage.empty())
        throw store::StoreError(Kind::Damaged, damage);
}

} // namespace halfcup::touch
