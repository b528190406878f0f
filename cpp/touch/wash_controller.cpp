// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/wash_controller.h"

#include "records/judgement.h"
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
    , m_scoop(services)
    , m_shake(services)
    , m_count(services, 1)
    , m_secondRinse(services, 2) {
    m_settleTimer.setInterval(settleTickMs);
    connect(&m_settleTimer, &QTimer::timeout, this, [this] {
        emit settleChanged();
        if (settleSecondsLeft() == 0) {
            m_settleTimer.stop();
            m_services.device.tones->play(device::Tone::End);
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
    connect(&services.position, &PositionStamper::changed, this, [this] {
        takeStamp();
        emit changed();
    });
}

WashController::Step WashController::step() const {
    switch (m_sample.step) {
    case records::Step::Colony:
        return Colony;
    case records::Step::Safety:
        return Safety;
    case records::Step::Scoop:
        return Scoop;
    case records::Step::Pour:
        return Pour;
    case records::Step::Shake:
        return Shake;
    case records::Step::Settle:
        return Settle;
    case records::Step::Count:
        return Count;
    case records::Step::SecondRinse:
    case records::Step::LayBoard:
    case records::Step::PullBoard:
    case records::Step::BoardCells:
    case records::Step::OpenedCells:
    case records::Step::Answer:
        break;
    }
    return SecondRinse;
}

const records::Method& WashController::method() const {
    const records::Method* known = records::findMethod(m_sample.method);
    return known ? *known : records::alcoholWash();
}

QString WashController::header() const {
    const QString place = tr("step %1 of %2")
                              .arg(records::stepNumber(method(), m_sample.step))
                              .arg(records::stepCount(method()));
    if (m_colonyLabel.isEmpty())
        return tr("Wash · %1").arg(place);
    return tr("Colony %1 · %2").arg(m_colonyLabel, place);
}

QStringList WashController::cautions() const {
    return {tr("Alcohol burns. No lit smoker, flame or cigarette near the jar."),
            tr("The washed bees die. Look twice that the queen is not among them."),
            tr("Stung and short of breath, dizzy or swelling? Stop and call for help.")};
}

QString WashController::queenAnswer() const {
    switch (m_sample.queen) {
    case records::Queen::SeenAndSafe:
        return tr("Queen seen and safe.");
    case records::Queen::NotSeen:
        return tr("Queen not seen: look at every bee on the frame before you scoop.");
    case records::Queen::NotAsked:
        break;
    }
    return {};
}

int WashController::settleSecondsLeft() const {
    if (!m_sample.settleStartedMs)
        return method().settleS;
    const std::int64_t since = m_services.now().utcMs - *m_sample.settleStartedMs;
    if (since < 0) // the clock was set back: no reason to make the keeper wait
        return 0;
    return static_cast<int>(std::max<std::int64_t>(0, method().settleS - since / 1000));
}

QString WashController::settleLine() const {
    return settleSecondsLeft() > 0 ? tr("Stand the jar still. The mites sink.")
                                   : tr("Settled. Look from below.");
}

void WashController::begin(const QString& yardId, const QString& colonyId) {
    const records::Moment now = m_services.now();
    m_sample = {};
    m_colonyLabel.clear();
    m_sample.id = m_services.store.newId();
    m_sample.startedAtMs = now.utcMs;
    m_sample.utcOffsetMinutes = now.offsetMinutes;
    m_sample.yardId = yardId.toStdString();
    m_sample.step = method().steps.front().step;
    readCounts();
    m_shake.setRun({});
    m_scoop.useUsual();
    m_sample.scoop = m_scoop.value();
    m_kept = m_sample;
    if (colonyId.isEmpty())
        enter();
    else
        chooseColony(colonyId);
}

bool WashController::resume(const QString& sampleId) {
    std::optional<records::Sample> kept;
    m_services.kept([&] { kept = m_services.store.sample(sampleId.toStdString()); });
    if (!kept || kept->state != records::SampleState::Draft)
        return false;
    m_sample = m_kept = *kept;
    readColony();
    readCounts();
    m_scoop.setValue(m_sample.scoop);
    m_shake.setRun(m_sample.shake);
    enter();
    return true;
}

void WashController::readCounts() {
    m_count.setSample(QString::fromStdString(m_sample.id));
    m_secondRinse.setSample(QString::fromStdString(m_sample.id));
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
    m_scoop.setValue(m_sample.scoop);
    m_shake.setRun(m_sample.shake);
    emit changed();
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
    m_count.setListening(counting);
    m_secondRinse.setListening(rinsing);
    m_services.device.volumeKeys->setGrabbed(counting || rinsing);
    if (m_sample.step == Settle && settleSecondsLeft() > 0)
        m_settleTimer.start();
    else
        m_settleTimer.stop();
    if (stampIsWanted())
        m_services.position.want();
    emit settleChanged();
    emit changed();
}

void WashController::chooseColony(const QString& colonyId) {
    m_sample.colonyId = colonyId.toStdString();
    readColony();
    goTo(records::stepAfter(method(), records::Step::Colony));
}

void WashController::queenSafe() {
    m_sample.queen = records::Queen::SeenAndSafe;
    goTo(records::stepAfter(method(), records::Step::Safety));
}

void WashController::queenNotSeen() {
    m_sample.queen = records::Queen::NotSeen;
    goTo(records::stepAfter(method(), records::Step::Safety));
}

void WashController::scooped() {
    const records::Moment now = m_services.now();
    m_sample.scoop = m_scoop.value();
    m_sample.scoopedAtMs = now.utcMs;
    m_sample.utcOffsetMinutes = now.offsetMinutes;
    m_sample.stamp = {};
    m_sample.stamp.state = records::PositionState::Waiting;
    if (goTo(records::stepAfter(method(), records::Step::Scoop)))
        takeStamp();
}

void WashController::startShake() {
    m_shake.start(m_services.settings.shakeSeconds());
    keepShakeAndGo(records::stepAfter(method(), records::Step::Pour));
}

void WashController::endShake() {
    m_shake.end();
    m_sample.settleStartedMs = m_services.now().utcMs;
    keepShakeAndGo(records::stepAfter(method(), records::Step::Shake));
}

/// The shake's act and the step it leads to are one write: no kill can come between them.
void WashController::keepShakeAndGo(records::Step step) {
    m_sample.shake = m_shake.run();
    goTo(step);
}

void WashController::endSettle() {
    goTo(records::stepAfter(method(), records::Step::Settle));
}

void WashController::endCount() {
    if (m_count.isTouched())
        goTo(records::stepAfter(method(), records::Step::Count));
}

void WashController::noneFound() {
    if (m_count.type(QStringLiteral("0")))
        goTo(records::stepAfter(method(), records::Step::Count));
}

void WashController::skipSecondRinse() {
    finish(false);
}

void WashController::endSecondRinse() {
    finish(m_secondRinse.isTouched());
}

void WashController::finish(bool withSecondRinse) {
    const auto second = withSecondRinse ? std::optional<std::int64_t>{m_secondRinse.mites()} : std::nullopt;
    const bool done = m_services.kept([&] {
        const auto yard = m_services.store.yard(m_sample.yardId);
        // The lines in force on the day of the scoop, where it was scooped.
        const records::Lines lines =
            yard ? season::linesOn(*yard, records::localDate(sampledAt(m_sample)), m_services.handbook)
                 : records::Lines{};
        m_sample.answer = records::answerOf(m_sample, m_count.mites(), second, lines);
        m_sample.state = records::SampleState::Finished;
        resolveStamp(true);
        m_sample.step = method().steps.back().step;
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

void WashController::back() {
    const records::Step earlier = records::stepBefore(method(), m_sample.step);
    if (m_sample.step == earlier) {
        pause();
        return;
    }
    if (m_sample.step == records::Step::Shake && m_shake.run().isRunning())
        m_shake.pause();
    if (m_sample.step == records::Step::Settle) { // the jar is shaken again, from the start
        m_sample.shake = {};
        m_shake.setRun(m_sample.shake);
        m_sample.settleStartedMs.reset();
        goTo(records::stepBefore(method(), earlier)); // to the page that starts a shake
        return;
    }
    goTo(earlier);
}

void WashController::pause() {
    keep();
    leave();
    emit left();
}

void WashController::abandon() {
    m_sample.state = records::SampleState::Abandoned;
    m_sample.abandonedAtMs = m_services.now().utcMs;
    resolveStamp(true);
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
