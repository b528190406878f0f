// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/scripted_position_source.h"

namespace halfcup::place {

ScriptedPositionSource::ScriptedPositionSource(QObject* parent)
    : PositionSource(parent) {}

void ScriptedPositionSource::start() {
    if (m_running)
        return;
    m_running = true;
    ++m_starts;
    const int round = ++m_round;
    QMetaObject::invokeMethod(
        this,
        [this, round] {
            if (m_hasProblem && m_running && round == m_round)
                emit problem(m_problem, m_sentence);
            // A receiver of a fix may stop the source, then the rest is not sent.
            for (std::size_t i = 0; !m_hasProblem && i < m_onStart.size() && m_running && round == m_round;
                 ++i)
                emit fixReceived(m_onStart[i]);
        },
        Qt::QueuedConnection);
    emit runningChanged(true);
}

void ScriptedPositionSource::stop() {
    if (!m_running)
        return;
    m_running = false;
    ++m_stops;
    emit runningChanged(false);
}

void ScriptedPositionSource::setProblemOnStart(Problem kind, const QString& sentence) {
    m_hasProblem = true;
    m_problem = kind;
    m_sentence = sentence;
}

bool ScriptedPositionSource::emitFix(const Fix& fix) {
    if (!m_running)
        return false;
    emit fixReceived(fix);
    return true;
}

bool ScriptedPositionSource::emitProblem(Problem kind, const QString& sentence) {
    if (!m_running)
        return false;
    emit problem(kind, sentence);
    return true;
}

} // namespace halfcup::place
