// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/count_controller.h"

#include "records/typed_input.h"
#include "touch/words.h"

namespace halfcup::touch {

CountController::CountController(Services& services, int rinse, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_rinse(rinse) {
    device::VolumeKeys& keys = *services.device.volumeKeys;
    connect(&keys, &device::VolumeKeys::volumeUpPressed, this, [this] {
        if (m_listening)
            tap();
    });
    connect(&keys, &device::VolumeKeys::volumeDownPressed, this, [this] {
        if (m_listening)
            undo();
    });
}

QString CountController::spoken() const {
    return words::mites(m_tally.mites());
}

bool CountController::keysWork() const {
    return m_services.device.volumeKeys->works();
}

void CountController::setSample(const QString& sampleId) {
    m_sampleId = sampleId;
    m_problem.clear();
    m_services.kept(
        [&] { m_tally = records::tally(m_services.store.countEvents(sampleId.toStdString()), m_rinse); });
    emit changed();
}

void CountController::setListening(bool listening) {
    m_listening = listening;
}

bool CountController::add(records::CountEvent::Change change, std::int64_t typed) {
    records::CountEvent event;
    event.rinse = m_rinse;
    event.change = change;
    event.typed = typed;
    event.atUtcMs = m_services.now().utcMs;
    // On disk first: the figure on the screen never says more than the database holds.
    if (!m_services.kept([&] { m_services.store.addCount(m_sampleId.toStdString(), event); }))
        return false;
    m_tally.add(event);
    m_problem.clear();
    emit changed();
    return true;
}

bool CountController::tap() {
    if (m_tally.mites() >= records::largestCount) {
        m_problem =
            words::problem(records::InputProblem::TooLarge, tr("The count"), 0, records::largestCount);
        emit changed();
        return false;
    }
    return add(records::CountEvent::Change::Tap, 0);
}

bool CountController::undo() {
    return m_tally.canUndo() && add(records::CountEvent::Change::Undo, 0);
}

bool CountController::type(const QString& text) {
    const auto read = records::readCount(text.toStdString());
    if (const auto* problem = std::get_if<records::InputProblem>(&read)) {
        m_problem = words::problem(*problem, tr("The count"), 0, records::largestCount);
        emit changed();
        return false;
    }
    return add(records::CountEvent::Change::Typed, std::get<std::int64_t>(read));
}

void CountController::clearProblem() {
    if (m_problem.isEmpty())
        return;
    m_problem.clear();
    emit changed();
}

} // namespace halfcup::touch
