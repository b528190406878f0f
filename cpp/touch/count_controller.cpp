// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/count_controller.h"

#include "records/typed_input.h"
#include "touch/words.h"

namespace halfcup::touch {

namespace {

constexpr int spokenEvery = 5;

} // namespace

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
    return m_countsCells ? words::cells(m_tally.mites()) : words::mites(m_tally.mites());
}

QString CountController::oneMore() const {
    return m_countsCells ? tr("Count one cell") : tr("Count one mite");
}

QString CountController::whatIsCounted() const {
    return m_countsCells ? tr("Cells with mites") : tr("Mites counted");
}

bool CountController::keysWork() const {
    return m_services.device.volumeKeys->works();
}

void CountController::setSample(const QString& sampleId, const records::Method& method) {
    m_sampleId = sampleId;
    m_countsCells = method.measure == records::Measure::InfestedCells;
    m_noneFound = words::ofMethod(method.noneFound);
    m_hint = words::ofMethod(records::stepOf(method, records::Step::Count).text);
    m_problem.clear();
    m_services.kept(
        [&] { m_tally = records::tally(m_services.store.countEvents(sampleId.toStdString()), m_rinse); });
    m_announced = spoken();
    emit changed();
}

void CountController::setListening(bool listening) {
    m_listening = listening;
    light();
}

void CountController::setInFront(bool inFront) {
    m_inFront = inFront;
    light();
}

void CountController::light() {
    // Mites are counted in the sun; at dusk a bright screen blinds.
    if (m_listening && m_inFront && !m_services.settings.dusk())
        m_light = m_services.device.brightness->raise();
    else
        m_light.reset();
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
    if (change != records::CountEvent::Change::Tap || mites() % spokenEvery == 0)
        m_announced = spoken();
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
    if (!add(records::CountEvent::Change::Tap, 0))
        return false;
    if (mites() % spokenEvery == 0 && m_services.device.voice->works())
        m_services.device.voice->say(spoken());
    return true;
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

bool CountController::typeOpened(const QString& text) {
    const auto read = records::readCount(text.toStdString());
    const auto* problem = std::get_if<records::InputProblem>(&read);
    const std::int64_t opened = problem ? 0 : std::get<std::int64_t>(read);
    if (problem)
        m_problem = words::problem(*problem, tr("The number of cells"), 1, records::largestCount);
    else if (opened == 0)
        m_problem = tr("No cell opened is no count. Open some, or leave this count.");
    else if (opened < m_tally.mites())
        m_problem =
            tr("You counted %n cell(s) with mites: so many at the least were opened.", nullptr, mites());
    else
        m_problem.clear();
    emit changed();
    if (!m_problem.isEmpty())
        return false;
    emit openedTyped(opened);
    return true;
}

void CountController::clearProblem() {
    if (m_problem.isEmpty())
        return;
    m_problem.clear();
    emit changed();
}

} // namespace halfcup::touch
