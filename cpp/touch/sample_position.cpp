// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/sample_position.h"

#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace halfcup::touch {

namespace {

// A scoop older than this is not where the phone is now: the keeper has walked on [convention].
constexpr std::int64_t stampUntilMs = 120'000;

class PositionWords {
    Q_DECLARE_TR_FUNCTIONS(PositionWords)
};

} // namespace

QString SamplePosition::line(const records::PositionStamp& stamp) const {
    switch (stamp.state) {
    case records::PositionState::Stamped:
        return stamp.moving
                   ? PositionWords::tr("Position within %1, but it moved: check that you stood still.")
                         .arg(m_services.distance(stamp.position.accuracyM.value_or(0)))
                   : PositionWords::tr("Position within %1, from %n fix(es)", nullptr, stamp.fixCount)
                         .arg(m_services.distance(stamp.position.accuracyM.value_or(0)));
    case records::PositionState::Denied:
        return PositionWords::tr("No position: it is not allowed on this phone. The wash goes on without.");
    case records::PositionState::NoSource:
        return PositionWords::tr("No position: this phone has no receiver. The wash goes on without.");
    case records::PositionState::NoFix:
        return PositionWords::tr("No position: no fix came in time. The wash goes on without.");
    case records::PositionState::Waiting:
    case records::PositionState::NotTried:
        break;
    }
    if (const auto best = m_services.position.best())
        return PositionWords::tr("Position within %1 so far").arg(m_services.distance(best->accuracyM));
    if (!m_services.position.problemSentence().isEmpty())
        return PositionWords::tr("No position yet. The wash goes on without.");
    return PositionWords::tr("Looking for the position");
}

bool SamplePosition::isWanted(const records::Sample& sample, const records::Method& method) const {
    if (sample.state != records::SampleState::Draft || sample.colonyId.empty())
        return false;
    if (!sample.scoopedAtMs) // so that a fix is there when the scoop is filled
        return sample.step == method.momentAt || records::stepAfter(method, sample.step) == method.momentAt;
    return sample.stamp.state == records::PositionState::Waiting &&
           m_services.now().utcMs - *sample.scoopedAtMs < stampUntilMs;
}

bool SamplePosition::park(records::Sample& sample) {
    if (sample.state != records::SampleState::Draft || sample.stamp.state != records::PositionState::Waiting)
        return false;
    if (resolve(sample, m_services.position.best().has_value())) {
        m_services.position.forget(); // the next jar stands elsewhere: its fixes are its own
        return true;
    }
    if (std::ranges::find(m_parked, sample.id) == m_parked.end())
        m_parked.push_back(sample.id);
    return false;
}

void SamplePosition::stampParked(const records::RecordId& current, bool lastChance) {
    std::erase_if(m_parked, [&](const records::RecordId& id) {
        if (id == current)
            return false;
        bool done = true;
        m_services.kept([&] {
            auto sample = m_services.store.sample(id);
            if (!sample || sample->stamp.state != records::PositionState::Waiting)
                return;
            done = resolve(*sample, lastChance || m_services.position.best().has_value());
            if (done)
                m_services.store.save(*sample);
        });
        return done;
    });
}

bool SamplePosition::resolve(records::Sample& sample, bool lastChance) {
    records::PositionStamp& stamp = sample.stamp;
    if (!sample.scoopedAtMs || stamp.state != records::PositionState::Waiting)
        return false;
    PositionStamper& position = m_services.position;
    const bool late = m_services.now().utcMs - *sample.scoopedAtMs >= stampUntilMs;
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
