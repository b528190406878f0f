// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/asking_source.h"

#include "place/position_source.h"

#include <QTimer>

namespace halfcup::touch {

AskingSource::AskingSource(std::unique_ptr<place::PositionSource> source,
                           std::unique_ptr<device::PositionPermission> permission)
    : m_source(std::move(source))
    , m_permission(std::move(permission)) {
    connect(m_source.get(), &PositionSource::fixReceived, this, &PositionSource::fixReceived);
    connect(m_source.get(), &PositionSource::problem, this, &PositionSource::problem);
}

AskingSource::~AskingSource() = default;

void AskingSource::start() {
    if (m_running)
        return;
    m_running = true;
    const int round = ++m_round;
    emit runningChanged(true);
    m_permission->ask(this, [this, round](bool allowed) {
        if (m_running && round == m_round)
            take(allowed);
    });
}

void AskingSource::take(bool allowed) {
    if (allowed)
        return m_source->start();
    // Later, because start() promises that a problem comes after it has returned.
    QTimer::singleShot(0, this, [this, round = m_round] {
        if (m_running && round == m_round)
            emit problem(Problem::Denied, place::positionDeniedSentence());
    });
}

void AskingSource::stop() {
    if (!m_running)
        return;
    m_running = false;
    ++m_round;
    m_source->stop();
    emit runningChanged(false);
}

} // namespace halfcup::touch
