// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/wash_controller.h"

#include "touch/words.h"

// Where the scoop was taken: the part of the wash that asks the receiver, and goes on without it.
namespace halfcup::touch {

namespace {

// A scoop older than this is not where the phone is now: the keeper has walked on [convention].
constexpr std::int64_t stampUntilMs = 120'000;

} // namespace

QString WashController::positionLine() const {
    const records::PositionStamp& stamp = m_sample.stamp;
    switch (stamp.state) {
    case records::PositionState::Stamped:
        return stamp.moving ? tr("Position within %1, but it moved: check that you stood still.")
                                  .arg(words::metres(stamp.position.accuracyM.value_or(0)))
                            : tr("Position within %1, from %n fix(es)", nullptr, stamp.fixCount)
                                  .arg(words::metres(stamp.position.accuracyM.value_or(0)));
    case records::PositionState::Denied:
        return tr("No position: it is not allowed on this phone. The wash goes on without.");
    case records::PositionState::NoSource:
        return tr("No position: this phone has no receiver. The wash goes on without.");
    case records::PositionState::NoFix:
        return tr("No position: no fix came in time. The wash goes on without.");
    case records::PositionState::Waiting:
    case records::PositionState::NotTried:
        break;
    }
    if (const auto best = m_services.position.best())
        return tr("Position within %1 so far").arg(words::metres(best->accuracyM));
    if (!m_services.position.problemSentence().isEmpty())
        return tr("No position yet. The wash goes on without.");
    return tr("Looking for the position");
}

bool WashController::stampIsWanted() const {
    if (m_sample.state != records::SampleState::Draft || m_sample.colonyId.empty())
        return false;
    if (!m_sample.scoopedAtMs) // so that a fix is there when the scoop is filled
        return isAt(method().momentAt) || records::stepAfter(method(), m_sample.step) == method().momentAt;
    return m_sample.stamp.state == records::PositionState::Waiting &&
           m_services.now().utcMs - *m_sample.scoopedAtMs < stampUntilMs;
}

void WashController::takeStamp() {
    if (resolveStamp(false))
        keep();
}

/// True where the sample now has its position, or a reason why it has none. lastChance: no waiting any more.
bool WashController::resolveStamp(bool lastChance) {
    records::PositionStamp& stamp = m_sample.stamp;
    if (!m_sample.scoopedAtMs || stamp.state != records::PositionState::Waiting)
        return false;
    PositionStamper& position = m_services.position;
    const bool late = m_services.now().utcMs - *m_sample.scoopedAtMs >= stampUntilMs;
    if (position.isRunning() && !late && !lastChance)
        return false; // a better one is coming
    using Problem = place::PositionSource::Problem;
    const auto problem = position.problem();
    const bool never =
        problem == Problem::Denied || problem == Problem::NoSource || problem == Problem::BadSetting;
    const auto best = late ? std::nullopt : position.best();
    if (!best && !never && !late && !lastChance) {
        position.want(); // a receiver that was switched off needs longer than one try
        return false;
    }
    if (best) {
        stamp.state = records::PositionState::Stamped;
        stamp.position = {best->latitudeDeg, best->longitudeDeg, best->accuracyM};
        stamp.fixCount = best->fixesUsed;
        stamp.ageMs = best->ageMs;
        stamp.moving = best->moving;
        stamp.source = best->source;
    } else {
        stamp.state = problem == Problem::Denied ? records::PositionState::Denied
                      : never                    ? records::PositionState::NoSource
                                                 : records::PositionState::NoFix;
    }
    return true;
}

} // namespace halfcup::touch
