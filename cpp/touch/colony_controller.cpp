// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/colony_controller.h"

#include "records/typed_input.h"
#include "touch/colony_entries.h"
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

ColonyController::ColonyController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString ColonyController::title() const {
    return tr("Colony %1").arg(label());
}

QString ColonyController::label() const {
    return QString::fromStdString(m_colony.label);
}

bool ColonyController::show(const QString& colonyId) {
    bool found = false;
    m_services.kept([&] {
        const auto colony = m_services.store.colony(colonyId.toStdString());
        if (!colony)
            return;
        found = true;
        m_colony = *colony;
        const auto yard = m_services.store.yard(colony->yardId);
        m_yardName = yard ? QString::fromStdString(yard->name) : QString();
        m_dueLine.clear();
        for (const ColonyListModel::Entry& entry :
             yard ? colonyEntries(m_services, *yard) : QList<ColonyListModel::Entry>())
            if (entry.colonyId == colonyId)
                m_dueLine = entry.dueLine;
        listWashes();
    });
    m_problem.clear();
    emit changed();
    return found;
}

void ColonyController::listWashes() {
    QList<ChoiceListModel::Entry> entries;
    for (const records::Sample& sample : m_services.store.samplesOf(m_colony.id)) {
        const records::Moment at = sampledAt(sample);
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(sample.id);
        const QString when = words::dayAndYear(records::localDate(at));
        switch (sample.state) {
        case records::SampleState::Finished: {
            const StandingWord::Value standing = words::headlineOf(sample);
            entry.standing = standing;
            entry.title = words::standing(standing);
            entry.detail = tr("%1 per 100, %2", "a load and its range")
                               .arg(words::load(sample.answer ? sample.answer->loadQ50 : 0),
                                    sample.answer ? words::loadRange(*sample.answer) : QString());
            break;
        }
        case records::SampleState::Draft:
            entry.title = tr("Not finished");
            entry.detail = tr("waits at: %1").arg(words::step(sample.step));
            break;
        case records::SampleState::Abandoned:
            entry.title = tr("Abandoned");
            entry.detail = tr("left at: %1").arg(words::step(sample.step));
            break;
        }
        entry.note =
            tr("%1, %2", "date, method").arg(when, words::method(QString::fromStdString(sample.method)));
        entries.append(entry);
    }
    m_washes.setEntries(entries);
}

void ColonyController::wash() {
    emit washWanted(QString::fromStdString(m_colony.id));
}

void ColonyController::openWash(const QString& sampleId) {
    std::optional<records::Sample> sample;
    m_services.kept([&] { sample = m_services.store.sample(sampleId.toStdString()); });
    if (!sample)
        return;
    if (sample->state == records::SampleState::Draft)
        emit draftWanted(sampleId);
    else if (sample->state == records::SampleState::Finished)
        emit answerWanted(sampleId);
}

bool ColonyController::rename(const QString& label) {
    const QString name = label.trimmed();
    std::optional<records::InputProblem> problem = records::checkName(name.toStdString());
    m_services.kept([&] {
        for (const records::Colony& other : m_services.store.colonies(m_colony.yardId))
            if (!problem && other.id != m_colony.id && other.label == name.toStdString())
                problem = records::InputProblem::AlreadyThere;
    });
    m_problem.clear();
    if (problem) {
        m_problem = words::problem(*problem, tr("The label"), 0, records::longestName);
        emit changed();
        return false;
    }
    records::Colony renamed = m_colony;
    renamed.label = name.toStdString();
    const bool done = m_services.kept([&] { m_services.store.save(renamed); });
    if (done)
        m_colony = renamed;
    emit changed();
    return done;
}

} // namespace halfcup::touch
