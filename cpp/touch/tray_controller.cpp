// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/tray_controller.h"

#include "records/tray.h"
#include "records/typed_input.h"
#include "touch/colony_entries.h"
#include "touch/round_records.h"
#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace halfcup::touch {

namespace {

class TrayWords {
    Q_DECLARE_TR_FUNCTIONS(TrayWords)
};

constexpr std::int64_t minuteMs = 60'000;
constexpr std::int64_t dayMs = 24 * 60 * minuteMs;

} // namespace

QString trayLine(const std::vector<records::Sample>& drafts) {
    const int jars = records::waitingJars(drafts);
    const auto all = static_cast<int>(std::ranges::count_if(drafts, &records::isInTray));
    const int boards = all - jars;
    if (jars == 0 && boards == 0)
        return {};
    if (boards == 0)
        return TrayWords::tr("%n jar(s) wait", nullptr, jars);
    const QString lie = TrayWords::tr("%n board(s) lie", nullptr, boards);
    return jars == 0 ? lie
                     : TrayWords::tr("%1, %2", "jars, boards")
                           .arg(TrayWords::tr("%n jar(s) wait", nullptr, jars), lie);
}

TrayController::TrayController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    m_timer.setInterval(static_cast<int>(minuteMs));
    connect(&m_timer, &QTimer::timeout, this, [this] { show(m_yardId); });
}

QString TrayController::title() const {
    return m_jars.count() == 0 ? tr("The tray is empty") : tr("In the tray");
}

void TrayController::setShown(bool shown) {
    if (shown)
        m_timer.start();
    else
        m_timer.stop();
}

void TrayController::show(const QString& yardId) {
    m_yardId = yardId;
    m_services.kept([&] { read(); });
    emit changed();
}

void TrayController::read() {
    std::vector<records::Sample> drafts = m_services.store.drafts();
    std::erase_if(drafts, [](const records::Sample& sample) { return !records::isInTray(sample); });
    std::ranges::stable_sort(drafts, {}, [](const records::Sample& sample) {
        return std::pair(sample.jar.empty(), sample.scoopedAtMs.value_or(sample.startedAtMs));
    });
    QList<ColonyListModel::Entry> entries;
    m_demo = false;
    m_jarCount = records::waitingJars(drafts);
    m_firstId.clear();
    for (const records::Sample& sample : drafts) {
        entries.append(entryOf(sample));
        m_demo = m_demo || sample.demo;
    }
    if (m_jarCount > 0) {
        m_firstId = QString::fromStdString(drafts.front().id);
        m_firstJar = QString::fromStdString(drafts.front().jar);
    }
    m_jars.setEntries(entries);
    m_nextColonyId.clear();
    const auto yard = m_services.store.yard(m_yardId.toStdString());
    const auto round = yard ? openRound(m_services, yard->id) : std::nullopt;
    if (round) { // a round says who is next, whether due or not
        const auto next = readKept(m_services, *round).reading.next();
        if (const auto colony = next ? m_services.store.colony(*next) : std::nullopt) {
            m_nextColonyId = QString::fromStdString(colony->id);
            m_nextColonyLabel = QString::fromStdString(colony->label);
        }
    } else if (yard) {
        for (const ColonyListModel::Entry& entry : colonyEntries(m_services, *yard))
            if (entry.isDue) {
                m_nextColonyId = entry.colonyId;
                m_nextColonyLabel = entry.label;
                break;
            }
    }
}

QString TrayController::waitedLine(const records::Sample& sample) const {
    const bool board = sample.jar.empty();
    const std::int64_t since =
        board ? sample.board.laidAtMs.value_or(0) : sample.scoopedAtMs.value_or(sample.startedAtMs);
    const std::int64_t waited = m_services.now().utcMs - since;
    const records::Moment then{since, sample.utcOffsetMinutes};
    if (waited < 0 || waited >= dayMs) { // the clock was set back, or it was another day
        const QString day = words::day(records::localDate(then));
        return board ? tr("laid on %1 at %2").arg(day, words::timeOfDay(then))
                     : tr("scooped on %1 at %2").arg(day, words::timeOfDay(then));
    }
    const auto minutes = static_cast<int>(waited / minuteMs);
    if (board)
        return tr("%n hour(s) under the colony", nullptr, minutes / 60);
    return minutes < 120 ? tr("%n minute(s) since the scoop", nullptr, minutes)
                         : tr("%n hour(s) since the scoop", nullptr, minutes / 60);
}

QString TrayController::placeOf(const records::Sample& sample) const {
    switch (sample.stamp.state) {
    case records::PositionState::Stamped:
        return tr("within %1").arg(m_services.distance(sample.stamp.position.accuracyM.value_or(0)));
    case records::PositionState::Waiting:
        return tr("position to come");
    default:
        return tr("no position");
    }
}

ColonyListModel::Entry TrayController::entryOf(const records::Sample& sample) const {
    const auto colony = m_services.store.colony(sample.colonyId);
    const auto yard = m_services.store.yard(sample.yardId);
    const QString label = colony ? QString::fromStdString(colony->label) : QString();
    const bool board = sample.jar.empty();
    ColonyListModel::Entry entry;
    entry.colonyId = QString::fromStdString(sample.id);
    entry.label = board ? label : QString::fromStdString(sample.jar);
    const QString yardName = yard ? QString::fromStdString(yard->name) : QString();
    entry.headline = board ? tr("Board under colony %1, %2", "colony, yard").arg(label, yardName)
                           : tr("Colony %1, %2", "colony, yard").arg(label, yardName);
    entry.loadLine =
        board ? waitedLine(sample) : tr("%1, %2", "how long, where").arg(waitedLine(sample), placeOf(sample));
    entry.dueLine = tr("waits at: %1").arg(words::step(sample.step));
    entry.spoken = board ? tr("%1. %2.", "read aloud: board, how long").arg(entry.headline, entry.loadLine)
                         : tr("Jar %1. %2. %3. %4", "read aloud: label, colony, how long, step")
                               .arg(entry.label, entry.headline, entry.loadLine, entry.dueLine);
    return entry;
}

QString TrayController::mainAction() const {
    if (!m_nextColonyId.isEmpty())
        return tr("Scoop colony %1 next").arg(m_nextColonyLabel);
    return m_firstId.isEmpty() ? tr("Back") : tr("Wash jar %1").arg(m_firstJar);
}

QString TrayController::washAction() const {
    return m_nextColonyId.isEmpty() || m_firstId.isEmpty() ? QString() : tr("Wash jar %1").arg(m_firstJar);
}

void TrayController::act() {
    if (!m_nextColonyId.isEmpty())
        emit washWanted(m_nextColonyId);
    else if (!m_firstId.isEmpty())
        washNext();
    else
        emit backWanted();
}

void TrayController::washNext() {
    if (!m_firstId.isEmpty())
        emit draftWanted(m_firstId);
}

void TrayController::open(const QString& sampleId) {
    emit draftWanted(sampleId);
}

void TrayController::askLabel(const QString& sampleId) {
    m_labelFor = sampleId;
    m_problem.clear();
    m_services.kept([&] {
        const auto sample = m_services.store.sample(sampleId.toStdString());
        const auto colony = sample ? m_services.store.colony(sample->colonyId) : std::nullopt;
        m_proposedLabel = QString::fromStdString(records::freeLabel(
            colony ? colony->label : std::string(), m_services.store.drafts(), sampleId.toStdString()));
    });
    emit changed();
}

bool TrayController::check(const QString& label) {
    m_problem.clear();
    const bool read = m_services.kept([&] {
        const std::vector<records::Sample> drafts = m_services.store.drafts();
        const std::string id = m_labelFor.toStdString();
        if (const auto problem = records::checkName(label.toStdString())) {
            m_problem = words::problem(*problem, tr("The label"), 0, records::longestName);
        } else if (const records::Sample* other = records::jarWith(label.toStdString(), drafts, id)) {
            const auto colony = m_services.store.colony(other->colonyId);
            m_problem =
                tr("Jar %1 is in the tray already, with bees of colony %2. Write another label; %3 is free.")
                    .arg(label.trimmed(), colony ? QString::fromStdString(colony->label) : QString(),
                         QString::fromStdString(records::freeLabel({}, drafts, id)));
        } else if (records::waitingJars(drafts, id) >= records::mostWaitingJars) {
            m_problem =
                tr("%n jar(s) wait already. Wash some of them first.", nullptr, records::mostWaitingJars);
        }
    });
    emit changed();
    return read && m_problem.isEmpty();
}

void TrayController::clearProblem() {
    if (m_problem.isEmpty())
        return;
    m_problem.clear();
    emit changed();
}

} // namespace halfcup::touch
