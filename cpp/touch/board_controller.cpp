// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/board_controller.h"

#include "records/colony_state.h"
#include "records/typed_input.h"
#include "touch/story.h"
#include "touch/words.h"

namespace halfcup::touch {

namespace {

constexpr double shortestHours = 1; // below that chance alone decides [own choice]
constexpr std::int64_t mostCells = records::largestCount;

} // namespace

BoardController::BoardController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

void BoardController::setSample(const records::Sample& sample) {
    m_colonyId = sample.colonyId;
    m_utcOffsetMinutes = sample.utcOffsetMinutes;
    m_board = sample.board;
    m_problem.clear();
    m_wantsHours = false;
    m_countedTyped = 0;
    readFloor();
    emit changed();
}

void BoardController::readFloor() {
    m_floor = records::Floor::NotKnown;
    m_floorLine = tr("Floor: not written down");
    m_services.kept([&] {
        const auto colony = m_services.store.colony(m_colonyId);
        if (!colony)
            return;
        const auto state =
            records::stateOn(*colony, m_services.store.eventsOf(m_colonyId), m_services.today());
        if (!state.floor)
            return;
        m_floor = state.floor->value;
        m_floorLine =
            tr("Floor: %1 since %2").arg(story::floorName(m_floor), story::day(m_services, state.floor->day));
    });
}

QString BoardController::floorLine() const {
    return m_floorLine;
}

QString BoardController::laidLine() const {
    if (!m_board.laidAtMs)
        return tr("When it was laid is not written down.");
    const records::Moment laid{*m_board.laidAtMs, m_utcOffsetMinutes};
    const QString when =
        tr("Laid on %1 at %2.").arg(words::day(records::localDate(laid)), words::timeOfDay(laid));
    const std::int64_t until = m_board.pulledAtMs.value_or(m_services.now().utcMs);
    if (until < *m_board.laidAtMs)
        return when;
    return tr("%1 %2 h under the colony.", "the sentence before, hours")
        .arg(when)
        .arg((until - *m_board.laidAtMs) / 3'600'000);
}

QString BoardController::hoursLine() const {
    return m_board.typedHours ? tr("%1 h, as you typed").arg(words::line(*m_board.typedHours)) : QString();
}

QString BoardController::whyNotHours(const std::optional<double>& hours) const {
    if (!hours && !m_board.laidAtMs)
        return tr("How many hours did it lie under the colony?");
    if (!hours)
        return tr("By the phone's clock the board was pulled before it was laid: the clock was changed. How "
                  "many hours did it lie?");
    if (*hours < shortestHours)
        return tr("By the clock it lay for less than an hour, too short for a count. If that is wrong, type "
                  "the hours; else leave it and pull it later.");
    if (*hours > records::longestBoardHours)
        return tr(
            "By the clock it lay for more than two weeks: ants, wax and wind have been at it. If that is "
            "wrong, type the hours; else lay a fresh board.");
    return {};
}

void BoardController::lay() {
    if (!floorIsScreened())
        return;
    m_board = {};
    m_board.laidAtMs = m_services.now().utcMs;
    emit stepDone();
}

void BoardController::liesThere() {
    if (!floorIsScreened())
        return;
    m_board = {};
    emit stepDone();
}

void BoardController::countWhole() {
    m_board.cells = 0;
    m_board.cellsCounted = 0;
    emit stepDone();
}

bool BoardController::pull() {
    records::BoardStay pulled = m_board;
    if (!pulled.pulledAtMs)
        pulled.pulledAtMs = m_services.now().utcMs;
    m_problem = whyNotHours(records::hoursOf(pulled));
    m_wantsHours = !m_problem.isEmpty();
    const bool done = !m_wantsHours;
    if (done) {
        m_board = pulled;
        emit stepDone();
    }
    emit changed();
    return done;
}

bool BoardController::typeHours(const QString& hours) {
    const auto read = records::readNumber(hours.toStdString());
    const double typed = std::holds_alternative<double>(read) ? std::get<double>(read) : 0;
    if (const auto* problem = std::get_if<records::InputProblem>(&read))
        m_problem =
            words::problem(*problem, tr("The number of hours"), shortestHours, records::longestBoardHours);
    else if (typed < shortestHours || typed > records::longestBoardHours)
        m_problem = words::problem(typed < shortestHours ? records::InputProblem::TooSmall
                                                         : records::InputProblem::TooLarge,
                                   tr("The number of hours"), shortestHours, records::longestBoardHours);
    else
        m_problem.clear();
    if (m_problem.isEmpty()) {
        m_board.typedHours = typed;
        m_wantsHours = false;
        emit edited();
    }
    emit changed();
    return m_problem.isEmpty();
}

bool BoardController::floorWasChanged() {
    const bool done = m_services.kept([&] {
        const auto colony = m_services.store.colony(m_colonyId);
        if (!colony)
            return;
        records::ColonyEvent event;
        event.id = m_services.store.newId();
        event.colonyId = m_colonyId;
        event.yardId = colony->yardId;
        event.kind = records::EventKind::Floor;
        event.floor = records::Floor::Screened;
        event.day = m_services.today();
        event.recordedAtMs = m_services.now().utcMs;
        event.demo = colony->demo;
        m_services.store.save(event);
    });
    readFloor();
    emit changed();
    return done && floorIsScreened();
}

bool BoardController::typeCounted(const QString& cells) {
    const auto read = records::readCount(cells.toStdString());
    const auto* problem = std::get_if<records::InputProblem>(&read);
    m_countedTyped = problem ? 0 : std::get<std::int64_t>(read);
    m_problem = problem ? words::problem(*problem, tr("The number of cells"), 1, mostCells)
                : m_countedTyped < 1
                    ? tr("No cell counted is no count. Count some cells, or the whole board.")
                    : QString();
    emit changed();
    return m_problem.isEmpty();
}

bool BoardController::typeCells(const QString& cells) {
    const auto read = records::readCount(cells.toStdString());
    const auto* problem = std::get_if<records::InputProblem>(&read);
    const std::int64_t all = problem ? 0 : std::get<std::int64_t>(read);
    if (problem)
        m_problem = words::problem(*problem, tr("The number of cells"), 1, mostCells);
    else if (all < m_countedTyped)
        m_problem = tr("You count %1 cells: the board has so many at the least.").arg(m_countedTyped);
    else
        m_problem.clear();
    if (m_problem.isEmpty()) {
        m_board.cells = all;
        m_board.cellsCounted = m_countedTyped;
        emit stepDone();
    }
    emit changed();
    return m_problem.isEmpty();
}

void BoardController::clearProblem() {
    if (m_problem.isEmpty())
        return;
    m_problem.clear();
    emit changed();
}

} // namespace halfcup::touch
