// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/folder_controller.h"

#include "store/merge.h"
#include "store/merge_log.h"
#include "store/outgoing.h"
#include "store/restore.h"
#include "touch/export_file.h"
#include "touch/words.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace halfcup::touch {

namespace {

constexpr const char* folderSetting = store::exchangeFolderSetting;
constexpr const char* stateSetting = store::exchangeFolderStateSetting;
constexpr const char* resumedSetting = store::exchangeFolderResumedSetting; // the undone merge that was met
constexpr std::int64_t quietMs = 60'000;

std::string textSetting(store::Store& store, const char* name) {
    const records::Value value = store.setting(name);
    const auto* text = std::get_if<std::string>(&value);
    return text ? *text : std::string();
}

} // namespace

FolderController::FolderController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString FolderController::folder() const {
    if (isOn())
        return m_folder;
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return documents.isEmpty() ? QString()
                               : QDir(documents).filePath(tr("Halfcup exchange", "name of a folder"));
}

QString FolderController::stateLine() const {
    if (!isOn())
        return tr("Not used yet.");
    if (m_paused)
        return tr("Paused, because you took back what came last. \"Exchange now\" takes it in again.");
    if (m_lookedAtMs == 0)
        return tr("Not looked into since the start.");
    return tr("Last exchanged at %1.").arg(words::timeOfDay({m_lookedAtMs, m_services.now().offsetMinutes}));
}

void FolderController::refresh() {
    m_services.kept([&] {
        m_folder = QString::fromStdString(textSetting(m_services.store, folderSetting));
        m_paused = isPaused();
    });
    emit changed();
}

/// After a merge was taken back the folder would bring it again at once.
bool FolderController::isPaused() {
    const auto last = store::MergeLog(m_services.store).last();
    return last && last->undone && isOn() &&
           m_services.store.setting(resumedSetting) != records::Value{last->number};
}

bool FolderController::use(const QString& path) {
    m_problem.clear();
    const QString wanted = QDir::cleanPath(path.trimmed());
    const QFileInfo info(wanted);
    if (path.trimmed().isEmpty() || !info.isAbsolute())
        m_problem = tr("Write the whole way to the folder, beginning with /.");
    else if (info.exists() && !info.isDir())
        m_problem = tr("%1 is a file. A folder is needed.").arg(wanted);
    else if (!info.exists() && !QDir().mkdir(wanted))
        m_problem = tr("There is no folder %1, and it could not be made.").arg(wanted);
    else if (!QFileInfo(wanted).isWritable())
        m_problem = tr("Nothing can be written into %1.").arg(wanted);
    if (m_problem.isEmpty() &&
        m_services.kept([&] { m_services.store.setSetting(folderSetting, wanted.toStdString()); })) {
        m_folder = wanted;
        exchangeThroughFolder(true);
    }
    emit changed();
    return m_problem.isEmpty();
}

void FolderController::stop() {
    m_services.kept([&] { m_services.store.setSetting(folderSetting, records::Value{}); });
    m_problem.clear();
    m_lines.clear();
    m_lookedAtMs = 0;
    refresh();
}

void FolderController::exchangeNow() {
    if (isOn())
        exchangeThroughFolder(true);
    emit changed();
}

void FolderController::exchangeQuietly() {
    refresh();
    const std::int64_t nowMs = m_services.now().utcMs;
    if (isOn() && !m_paused && (m_lookedAtMs == 0 || std::abs(nowMs - m_lookedAtMs) >= quietMs))
        exchangeThroughFolder(false);
    emit changed();
}

void FolderController::exchangeThroughFolder(bool again) {
    m_problem.clear();
    m_lines.clear();
    bool brought = false;
    m_services.kept([&] {
        store::Store& store = m_services.store;
        const std::string device = store::Outgoing(store).device();
        auto state =
            exchange::FolderState::from(textSetting(store, stateSetting), m_folder.toStdString(), device);
        if (again && isPaused()) {
            state.others.clear(); // what was taken back comes once more
            store.setSetting(resumedSetting, store::MergeLog(store).last()->number);
        }
        const exchange::ExchangeFolder folder(m_folder, device);
        const std::int64_t nowMs = m_services.now().utcMs;
        const Look look = exchange::exchangeThrough<store::Merge, store::Outgoing, store::MergePlan>(
            folder, state, store, nowMs);
        if (look.trouble == exchange::FolderTrouble::None) {
            store.setSetting(stateSetting, state.toText());
            m_lookedAtMs = nowMs;
        }
        m_paused = isPaused();
        brought = !look.plan.nothingNew();
        tell(look);
    });
    if (brought)
        emit recordsChanged();
}

void FolderController::tell(const Look& look) {
    if (look.trouble != exchange::FolderTrouble::None) {
        m_problem =
            tr("The folder %1 cannot be read. Nothing was exchanged; your records are safe.").arg(m_folder);
        return;
    }
    const int records = look.plan.count(store::Change::New) + look.plan.count(store::Change::Changed) +
                        look.plan.count(store::Change::BothChanged) +
                        look.plan.count(store::Change::RemovedThere);
    m_lines.append(records > 0 ? tr("%n record(s) came in, new or changed.", nullptr, records)
                               : tr("Nothing new came in."));
    if (const int both = look.plan.count(store::Change::BothChanged); both > 0)
        m_lines.append(tr("%n record(s) changed on both phones: the later value was kept.", nullptr, both));
    if (look.written)
        m_lines.append(tr("What you recorded is in the folder for the others."));
    for (const std::string& name : look.waiting)
        m_lines.append(tr("%1 is still on its way.").arg(QString::fromStdString(name)));
    for (const auto& file : look.taken)
        if (!file.report.isWhole())
            m_lines.append(tr("%1 is damaged. What is intact in it was taken; a good copy completes it.")
                               .arg(QString::fromStdString(file.name)));
    if (look.writing)
        m_problem = fileTrouble(look.writing->problem, m_folder);
}

} // namespace halfcup::touch
