// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/shake_controller.h"

#include "touch/words.h"

#include <chrono>
#include <cmath>

namespace halfcup::touch {

namespace {

using KeptPhase = records::ShakeProgress::Phase;
constexpr int lookEveryMs =
    250; // the ring moves a sixtieth of a turn each second: four looks are smooth enough
constexpr int announcedEveryS = 15;  // a reader needs some three seconds for it
constexpr int lookWhenOverMs = 1000; // only "time was up 20 s ago" still changes

} // namespace

ShakeController::ShakeController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    connect(&m_timer, &QTimer::timeout, this, &ShakeController::look);
}

ShakeController::Phase ShakeController::phase() const {
    switch (m_progress.phase) {
    case KeptPhase::FirstHalf:
        return FirstHalf;
    case KeptPhase::SecondHalf:
        return SecondHalf;
    case KeptPhase::LastTenSeconds:
        return LastTenSeconds;
    case KeptPhase::Paused:
        return Paused;
    case KeptPhase::Over:
        return Over;
    case KeptPhase::Ready:
        break;
    }
    return Ready;
}

int ShakeController::secondsLeft() const {
    return static_cast<int>((m_progress.leftMs + 999) / 1000);
}

double ShakeController::fraction() const {
    return static_cast<double>(m_progress.shakenMs) / (m_run.plannedS * 1000.0);
}

QString ShakeController::word() const {
    switch (phase()) {
    case FirstHalf:
        return m_during;
    case SecondHalf:
        return tr("Half time is past. Keep on.");
    case LastTenSeconds:
        return tr("Last ten seconds.");
    case Paused:
        return tr("Paused. The seconds so far are kept.");
    case Over: {
        if (m_progress.interrupted)
            return tr("The phone's clocks disagree: how long you shook is a guess.");
        const auto overdue = m_progress.overdueMs / 1000;
        return overdue < 15 ? m_over
                            : tr("Time was up %1 ago. Set the jar down.")
                                  .arg(words::seconds(static_cast<int>(overdue)));
    }
    case Ready:
        break;
    }
    return tr("Ready to shake.");
}

QString ShakeController::unit() const {
    return tr("second(s) left", nullptr, secondsLeft());
}

QString ShakeController::announced() const {
    const int left = (secondsLeft() + announcedEveryS - 1) / announcedEveryS * announcedEveryS;
    switch (phase()) {
    case FirstHalf:
        return tr("%n second(s) left", nullptr, left);
    case SecondHalf:
        return tr("Half time is past. %n second(s) left", nullptr, left);
    case Over:
        return isInterrupted() ? word() : m_over;
    default:
        return word();
    }
}

QString ShakeController::stopAction() const {
    return phase() == Over ? m_overAction : tr("Stop here");
}

QString ShakeController::stopDetail() const {
    // Not second by second: the ring shows them, a reader would never end, and nothing else needs painting.
    if (phase() == FirstHalf || phase() == SecondHalf || phase() == LastTenSeconds)
        return tr("The seconds so far will be on the record");
    return tr("%1 shaken will be on the record")
        .arg(words::seconds(static_cast<int>(m_progress.shakenMs / 1000)));
}

bool ShakeController::hasSound() const {
    return m_services.settings.sound();
}

void ShakeController::setSound(bool on) {
    m_services.kept([&] { m_services.settings.setSound(on); });
    m_services.applySound();
    emit changed();
}

void ShakeController::setRun(const records::ShakeRun& run) {
    m_run = run;
    m_progress = records::progress(m_run, m_services.shakeReading());
    if (m_run.isRunning() && m_progress.phase != KeptPhase::Over) {
        m_timer.start(lookEveryMs);
        if (!m_awake)
            m_awake = m_services.device.keepAwake->hold(tr("Shaking a jar"));
    } else {
        m_timer.stop();
        m_awake.reset();
    }
    emit changed();
}

void ShakeController::setWords(const QString& during, const QString& overAction, const QString& over) {
    m_during = during;
    m_overAction = overAction;
    m_over = over;
    emit changed();
}

void ShakeController::start(int plannedS) {
    records::ShakeRun fresh;
    fresh.plannedS = plannedS;
    setRun(records::started(m_run.isPaused() ? m_run : fresh, m_services.shakeReading()));
}

void ShakeController::end() {
    setRun(records::ended(m_run, m_services.shakeReading()));
}

void ShakeController::pause() {
    if (!m_run.isRunning() || phase() == Over)
        return;
    setRun(records::paused(m_run, m_services.shakeReading()));
    emit edited();
}

void ShakeController::goOn() {
    if (!m_run.isPaused())
        return;
    setRun(records::started(m_run, m_services.shakeReading()));
    emit edited();
}

void ShakeController::look() {
    const records::ShakeProgress before = m_progress;
    m_progress = records::progress(m_run, m_services.shakeReading());
    if (m_progress.phase != before.phase)
        say(before.phase);
    if (m_progress.phase == KeptPhase::Over && m_awake) {
        m_awake.reset(); // the screen may go dark: the sound has been
        m_timer.start(lookWhenOverMs);
    }
    emit changed();
}

void ShakeController::say(KeptPhase before) {
    switch (m_progress.phase) {
    case KeptPhase::SecondHalf:
        if (before == KeptPhase::FirstHalf)
            m_services.tell(tr("Half time", "spoken"), device::Tone::HalfTime);
        break;
    case KeptPhase::LastTenSeconds:
        m_services.tell(tr("Ten seconds", "spoken"), device::Tone::TenSeconds);
        break;
    case KeptPhase::Over:
        m_services.tell(tr("Stop", "spoken, the time is over"), device::Tone::End);
        m_services.device.vibration->buzz(std::chrono::milliseconds(1200));
        break;
    default:
        break;
    }
}

} // namespace halfcup::touch
