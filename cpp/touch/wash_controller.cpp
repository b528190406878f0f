// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/wash_controller.h"

#include "records/judgement.h"
#include "season/board_reading.h"
#include "season/drone_reading.h"
#include "season/lines.h"
#include "touch/colony_entries.h"
#include "touch/words.h"

#include <stdexcept>

namespace halfcup::touch {

namespace {

constexpr int settleTickMs = 1000;

} // namespace

WashController::WashController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_position(services)
    , m_scoop(services)
    , m_shake(services)
    , m_count(services, 1)
    , m_secondRinse(services, 2)
    , m_board(services) {
    m_settleTimer.setInterval(settleTickMs);
    connect(&m_settleTimer, &QTimer::timeout, this, [this] {
        emit settleChanged();
        if (settleSecondsLeft() == 0) {
            m_settleTimer.stop();
            m_services.tell(tr("It has settled", "spoken"), device::Tone::End);
        }
    });
    connect(&m_scoop, &ScoopController::edited, this, [this] {
        m_sample.scoop = m_scoop.value();
        keep();
    });
    connect(&m_shake, &ShakeController::edited, this, [this] {
        m_sample.shake = m_shake.run();
        keep();
    });
    connect(&m_board, &BoardController::edited, this, [this] {
        m_sample.board = m_board.value();
        keep();
    });
    connect(&m_count, &CountController::openedTyped, this, &WashController::cellsOpened);
    connect(&m_board, &BoardController::stepDone, this, &WashController::boardDone);
    connect(&services.position, &PositionStamper::changed, this, [this] {
        takeStamp();
        m_position.stampParked(m_sample.id);
        emit changed();
    });
}

void WashController::begin(const QString& yardId, const QString& colonyId, const QString& methodId) {
    const records::Moment now = m_services.now();
    putDown();
    m_sample = {};
    m_colonyLabel.clear();
    m_sample.id = m_services.store.newId();
    m_sample.startedAtMs = now.utcMs;
    m_sample.utcOffsetMinutes = now.offsetMinutes;
    m_sample.yardId = yardId.toStdString();
    m_sample.method = records::findMethod(methodId.toStdString()) ? methodId.toStdString()
                                                                  : m_services.settings.usualMethod();
    m_sample.step = method().steps.front().step;
    readCounts();
    m_shake.setRun({});
    m_scoop.useUsual();
    if (records::hasStep(method(), records::Step::Scoop))
        m_sample.scoop = m_scoop.value();
    m_kept = m_sample;
    if (colonyId.isEmpty())
        enter();
    else
        chooseColony(colonyId);
}

bool WashController::resume(const QString& sampleId) {
    putDown(); // before it is read again: the same one may be at hand
    std::optional<records::Sample> kept;
    m_services.kept([&] { kept = m_services.store.sample(sampleId.toStdString()); });
    if (!kept || kept->state != records::SampleState::Draft)
        return false;
    if (!records::findMethod(kept->method)) {
        m_services.messages.say(
            tr("This count was begun with a newer version of the program, by a method that "
               "this one does not know. It is kept as it is."));
        return false;
    }
    m_sample = m_kept = *kept;
    readColony();
    readCounts();
    showKept();
    enter();
    return true;
}

void WashController::readCounts() {
    m_count.setSample(QString::fromStdString(m_sample.id), method());
    m_secondRinse.setSample(QString::fromStdString(m_sample.id), method());
}

void WashController::readColony() {
    m_services.kept([&] {
        const auto colony = m_services.store.colony(m_sample.colonyId);
        m_colonyLabel = colony ? QString::fromStdString(colony->label) : QString();
        if (colony && m_sample.step == records::Step::Colony) { // later the colony may have been moved
            m_sample.yardId = colony->yardId;
            m_sample.demo = colony->demo;
        }
    });
}

bool WashController::keep() {
    if (m_sample.colonyId.empty())
        return true; // nothing to keep before a colony is chosen
    if (m_services.kept([&] { m_services.store.save(m_sample); })) {
        m_kept = m_sample;
        return true;
    }
    goBackToKept();
    return false;
}

/// The page shows what the disk holds, and nothing that was refused.
void WashController::goBackToKept() {
    m_sample = m_kept;
    readColony();
    showKept();
    emit changed();
}

void WashController::showKept() {
    m_scoop.setValue(m_sample.scoop);
    m_shake.setRun(m_sample.shake);
    m_board.setSample(m_sample);
}

bool WashController::goTo(records::Step step) {
    m_sample.step = step;
    if (!keep())
        return false;
    enter();
    return true;
}

void WashController::enter() {
    using enum records::Step;
    const bool counting = m_sample.step == Count;
    const bool rinsing = m_sample.step == SecondRinse;
    if (m_sample.step == Colony)
        m_services.kept([&] {
            if (const auto yard = m_services.store.yard(m_sample.yardId))
                m_colonies.setEntries(colonyEntries(m_services, *yard));
        });
    const records::MethodStep& shaking = records::stepOf(method(), Shake);
    m_shake.setWords(words::ofMethod(shaking.text), words::ofMethod(shaking.action),
                     words::ofMethod(shaking.then));
    if (m_sample.step == LayBoard || m_sample.step == PullBoard)
        m_board.setSample(m_sample);
    m_count.setListening(counting);
    m_secondRinse.setListening(rinsing);
    m_services.device.volumeKeys->setGrabbed(counting || rinsing);
    if (m_sample.step == Settle && settleSecondsLeft() > 0)
        m_settleTimer.start();
    else
        m_settleTimer.stop();
    if (m_position.isWanted(m_sample, method()))
        m_services.position.want();
    emit settleChanged();
    emit changed();
}

/// To the next step. What the clocks begin with it is one write with it: no kill can come between them.
void WashController::advance() {
    const records::Step next = records::stepAfter(method(), m_sample.step);
    if (next == records::Step::Answer) {
        finish(false);
        return;
    }
    const bool moment = isAt(method().momentAt);
    if (moment)
        stampMoment();
    if (isAt(records::Step::Shake))
        m_shake.end();
    if (next == records::Step::Shake)
        m_shake.start(m_services.settings.shakeSeconds());
    if (next == records::Step::Settle)
        m_sample.settleStartedMs = m_services.now().utcMs;
    m_sample.shake = m_shake.run();
    if (goTo(next) && moment)
        takeStamp();
}

void WashController::stampMoment() {
    const records::Moment now = m_services.now();
    m_sample.scoopedAtMs = now.utcMs;
    m_sample.utcOffsetMinutes = now.offsetMinutes;
    m_sample.stamp = {};
    m_sample.stamp.state = records::PositionState::Waiting;
}

void WashController::takeStamp() {
    if (m_position.resolve(m_sample, false))
        keep();
}

void WashController::chooseColony(const QString& colonyId) {
    if (!isAt(records::Step::Colony))
        return;
    m_sample.colonyId = colonyId.toStdString();
    readColony();
    m_board.setSample(m_sample);
    m_position.stampParked(m_sample.id, true);
    m_services.position.wantAnew(); // the keeper may have come from another hive
    advance();
}

void WashController::queenSafe() {
    if (!isAt(records::Step::Safety))
        return;
    m_sample.queen = records::Queen::SeenAndSafe;
    advance();
}

void WashController::queenNotSeen() {
    if (!isAt(records::Step::Safety))
        return;
    m_sample.queen = records::Queen::NotSeen;
    advance();
}

void WashController::scooped() {
    if (!isAt(records::Step::Scoop))
        return;
    m_sample.scoop = m_scoop.value();
    advance();
}

void WashController::poured() {
    if (isAt(records::Step::Pour))
        advance();
}

void WashController::endShake() {
    if (isAt(records::Step::Shake))
        advance();
}

void WashController::endSettle() {
    if (isAt(records::Step::Settle))
        advance();
}

void WashController::endCount() {
    if (isAt(records::Step::Count) && m_count.isTouched())
        advance();
}

void WashController::noneWasFound() {
    if (isAt(records::Step::Count) && m_count.type(QStringLiteral("0")))
        advance();
}

void WashController::skipSecondRinse() {
    if (isAt(records::Step::SecondRinse))
        finish(false);
}

void WashController::endSecondRinse() {
    if (isAt(records::Step::SecondRinse))
        finish(m_secondRinse.isTouched());
}

void WashController::finish(bool withSecondRinse) {
    const auto second = withSecondRinse ? std::optional<std::int64_t>{m_secondRinse.mites()} : std::nullopt;
    const bool done = m_services.kept([&] {
        judge(m_services.store.yard(m_sample.yardId).value_or(records::Yard{}), second);
        m_sample.state = records::SampleState::Finished;
        m_position.resolve(m_sample, true);
        m_sample.step = records::Step::Answer;
        m_sample.finishedAtMs = m_services.now().utcMs;
        m_services.store.save(m_sample);
    });
    if (!done) {
        goBackToKept();
        return;
    }
    m_kept = m_sample;
    m_services.position.forget();
    leave();
    emit finished(QString::fromStdString(m_sample.id));
}

/// What was counted, judged by what held on the day of the sample, where it was taken.
void WashController::judge(const records::Yard& yard, std::optional<std::int64_t> second) {
    const records::Date day = records::localDate(sampledAt(m_sample));
    switch (method().measure) {
    case records::Measure::MitesPer100Bees:
        m_sample.answer = records::answerOf(m_sample, m_count.mites(), second,
                                            season::linesOn(yard, day, m_services.handbook()));
        break;
    case records::Measure::MitesADay: {
        const auto colony = m_services.store.colony(m_sample.colonyId).value_or(records::Colony{});
        const auto events = m_services.store.eventsOf(m_sample.colonyId);
        m_sample.otherAnswer =
            season::boardAnswer(m_sample, m_count.mites(), season::boardContext(yard, colony, events, day),
                                m_services.handbook());
        break;
    }
    case records::Measure::InfestedCells:
        m_sample.otherAnswer = season::droneAnswer(m_sample, m_count.mites(), m_services.handbook());
        break;
    }
}

void WashController::back() {
    const records::Step step = m_sample.step;
    records::Step earlier = records::stepBefore(method(), step);
    if (step == earlier || records::isUnderColony(m_sample.board)) { // a board that lies is not unlaid
        pause();
        return;
    }
    if (step == records::Step::Shake && m_shake.run().isRunning())
        m_shake.pause();
    if (step == records::Step::Settle)
        m_sample.settleStartedMs.reset();
    if (earlier == records::Step::Shake) { // shaken again, from the start
        m_sample.shake = {};
        m_shake.setRun(m_sample.shake);
        earlier = records::stepBefore(method(), earlier); // to the page that starts a shake
    }
    goTo(earlier);
}

/// Another sample takes its place: what its position is by now goes with it.
void WashController::putDown() {
    if (m_position.park(m_sample))
        keep();
}

void WashController::pause() {
    m_position.park(m_sample);
    keep();
    leave();
    emit left();
}

void WashController::abandon() {
    m_sample.state = records::SampleState::Abandoned;
    m_sample.abandonedAtMs = m_services.now().utcMs;
    m_position.resolve(m_sample, true);
    if (!keep())
        return;
    leave();
    emit left();
}

void WashController::leave() {
    m_services.device.volumeKeys->setGrabbed(false);
    m_count.setListening(false);
    m_secondRinse.setListening(false);
    m_settleTimer.stop();
    emit changed();
}

} // namespace halfcup::touch
