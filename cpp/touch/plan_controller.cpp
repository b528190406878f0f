// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/plan_controller.h"

#include "exchange/keep_exchange.h"
#include "store/merge.h"
#include "store/merge_log.h"
#include "store/outgoing.h"
#include "touch/found_files.h"
#include "touch/plan_words.h"
#include "touch/words.h"

#include <QDir>
#include <QTimer>

namespace halfcup::touch {

namespace {

using Entry = ChoiceListModel::Entry;

constexpr qsizetype mostFiles = 50;
constexpr qint64 largeFile = 2'000'000; // bytes; more takes longer than a blink to read [convention]
constexpr int frameMs = 60;             // until "Reading" is on the glass

/// Whether a plan is still the one that was looked at.
bool isSame(const store::MergePlan& a, const store::MergePlan& b) {
    return a.counts == b.counts && a.newRevisions == b.newRevisions && a.newCounts == b.newCounts &&
           a.unknownKinds == b.unknownKinds;
}

} // namespace

PlanController::PlanController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    const device::FileHandover* files = services.device.files.get();
    connect(files, &device::FileHandover::worksChanged, this, &PlanController::changed);
}

QString PlanController::title() const {
    switch (m_step) {
    case Files:
        return tr("Take in a file");
    case Reading:
        return tr("Reading…");
    case Plan:
        return tr("What it brings");
    case Done:
        break;
    }
    return tr("Taken in");
}

QString PlanController::mainAction() const {
    switch (m_step) {
    case Files:
        return mainActionOfFiles(m_services);
    case Reading:
        return {};
    case Plan:
        return m_plan.nothingNew() ? tr("Done") : tr("Take it in");
    case Done:
        break;
    }
    return tr("Done");
}

QString PlanController::filesLine() const {
    if (m_files.count() > 0)
        return tr(
            "Files that another phone wrote, newest first. Nothing is kept before you have seen what is in "
            "one.");
    if (!m_services.device.folders->areSeen())
        return tr("Choose the file that the other phone handed on. Nothing is kept before you have seen what "
                  "is in it.");
    return tr("No file from another phone was found. Put it into one of these folders: %1.")
        .arg(m_folders.isEmpty() ? tr("none on this phone") : m_folders.join(tr(", ", "between folders")));
}

QString PlanController::headline() const {
    return plan::headline(m_plan);
}

QStringList PlanController::troubles() const {
    return plan::troubles(m_report);
}

QStringList PlanController::remarks() const {
    return plan::remarks(m_plan);
}

QString PlanController::moreItems() const {
    return plan::moreItems(m_plan);
}

QString PlanController::undoQuestion() const {
    return tr("All that %1 brought goes again, and every record is as it was before. Taking the same file in "
              "brings it back.")
        .arg(m_fileName);
}

void PlanController::begin() {
    m_step = Files;
    m_problem.clear();
    m_path.clear();
    m_fileName.clear();
    listFiles();
    emit changed();
}

void PlanController::listFiles() {
    if (m_folders.isEmpty())
        m_folders = foldersOfFiles(m_services);
    QList<Entry> entries;
    const QString pattern = QLatin1Char('*') + QLatin1String(exchange::exchangeEnding);
    for (const QFileInfo& file : newestFiles(m_folders, {pattern}, mostFiles)) {
        Entry entry;
        entry.key = file.absoluteFilePath();
        entry.title = plan::shownName(entry.key);
        entry.detail = ageAndSize(m_services, file);
        entry.note = QDir::toNativeSeparators(file.absolutePath());
        entries.append(entry);
    }
    m_files.setEntries(entries);
}

QString PlanController::chooser() const {
    return m_step == Files ? chooserOfFiles(m_services, m_files.count() > 0) : QString();
}

void PlanController::chooseFile() {
    m_services.device.files->chooseFile(tr("Take in a file"), {QLatin1String(exchange::exchangeEnding)});
}

void PlanController::openFile(const QString& path) {
    m_path = path;
    m_fileName = plan::shownName(path);
    m_problem.clear();
    m_result.clear();
    m_canUndo = false;
    soon(&PlanController::look);
}

void PlanController::soon(void (PlanController::*work)()) {
    m_step = Reading;
    if (QFileInfo(m_path).size() < largeFile) {
        (this->*work)();
        return;
    }
    emit changed();
    QTimer::singleShot(frameMs, this, work);
}

void PlanController::look() {
    if (read(false)) {
        m_step = Plan;
        listPlan();
    } else {
        m_step = Files;
        m_fileName.clear();
        listFiles();
    }
    emit changed();
}

void PlanController::takeIn() {
    if (!read(true)) {
        m_step = Plan;
    } else if (m_kept) {
        m_services.kept([this] {
            showLast();
            m_toLookAt.setEntries(plan::toLookAt(m_services, m_plan));
        });
        m_step = Done;
    } else {
        m_step = Plan;
        m_problem =
            tr("The file, or what is kept here, has changed since you looked. This is what it would do "
               "now.");
        listPlan();
    }
    emit changed();
    if (m_kept)
        emit recordsChanged();
}

bool PlanController::read(bool keep) {
    m_problem.clear();
    m_kept = false;
    try {
        store::Merge merge(m_services.store);
        exchange::ExchangeReport report = exchange::takeExchangeFile(merge, m_path);
        if (report.refusal != exchange::ExchangeRefusal::None) {
            m_problem = plan::refusal(report.refusal, m_path);
            return false;
        }
        store::MergePlan plan = merge.finish();
        if (keep && isSame(plan, m_plan)) {
            merge.keep();
            m_kept = true;
        }
        m_plan = std::move(plan);
        m_report = std::move(report);
        return true;
    } catch (const store::StoreError& error) {
        m_problem = error.kind() == store::StoreError::Kind::CopyFailed
                        ? tr("The copy of your records that is made first could not be written. Nothing was "
                             "taken in. Make room, then do it again.")
                        : words::trouble(error.kind(), QString::fromStdString(m_services.store.path()));
    } catch (const std::exception&) {
        m_problem =
            words::trouble(store::StoreError::Kind::Failed, QString::fromStdString(m_services.store.path()));
    }
    return false;
}

// After the merge of the plan is gone: names are those from before it, and those that it would bring are in
// the plan itself.
void PlanController::listPlan() {
    m_counts.setEntries(plan::counts(m_plan));
    m_services.kept([this] {
        const std::string ownDevice = store::Outgoing(m_services.store).device();
        const QString held = plan::heldRecords(m_report.header.counts);
        m_writtenLine = plan::writtenLine(m_services, m_report.header, ownDevice);
        if (!held.isEmpty())
            m_writtenLine +=
                u' ' + tr("It held %1.", "that phone; 3 yards, 17 colonies, 85 washes").arg(held);
        m_items.setEntries(plan::items(m_services, m_plan));
    });
}

void PlanController::refreshLast() {
    m_lastLine.clear();
    m_lastNote.clear();
    m_services.kept([this] {
        const auto last = store::MergeLog(m_services.store).last();
        if (!last)
            return;
        const records::Moment at{last->atMs, m_services.device.clock->utcOffsetMinutes(last->atMs)};
        m_lastLine = tr("%1, %n record(s)", "a file", last->records)
                         .arg(plan::shownName(QString::fromStdString(last->source)));
        m_lastNote = last->undone ? tr("taken back")
                                  : tr("on %1 at %2", "a day, a time")
                                        .arg(words::dayAndYear(records::localDate(at)), words::timeOfDay(at));
    });
    emit changed();
}

bool PlanController::showLast() {
    std::optional<store::KeptMerge> last;
    m_services.kept([&] { last = store::MergeLog(m_services.store).last(); });
    if (!last)
        return false;
    m_step = Done;
    m_toLookAt.setEntries({});
    m_problem.clear();
    m_fileName = plan::shownName(QString::fromStdString(last->source));
    m_canUndo = !last->undone;
    m_result =
        last->undone
            ? tr("What %1 brought was taken back. Taking the file in again brings it back.").arg(m_fileName)
            : tr("%n record(s) taken in. Taking the same file in again changes nothing.", nullptr,
                 last->records);
    emit changed();
    return true;
}

void PlanController::undo() {
    bool undone = false;
    if (!m_services.kept([&] { undone = store::MergeLog(m_services.store).undoLast(); }))
        return;
    if (undone) {
        showLast();
        emit recordsChanged();
        return;
    }
    m_problem = tr("It cannot be taken back any more: something that was written down since hangs on it. "
                   "Nothing was changed.");
    emit changed();
}

void PlanController::openHistory(const QString& key) {
    const qsizetype slash = key.indexOf(u'/');
    emit historyWanted(key.left(slash), key.mid(slash + 1));
}

void PlanController::act() {
    switch (m_step) {
    case Files:
        if (m_services.device.folders->areSeen())
            begin();
        else
            chooseFile();
        break;
    case Plan:
        if (m_plan.nothingNew())
            emit homeWanted();
        else
            soon(&PlanController::takeIn);
        break;
    case Done:
        emit homeWanted();
        break;
    case Reading:
        break;
    }
}

void PlanController::back() {
    if (m_step == Reading)
        return; // a moment
    emit backWanted();
}

} // namespace halfcup::touch
