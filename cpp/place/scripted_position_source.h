// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/position_source.h"

#include <vector>

// A source that says what it is told to: for tests, for the tour, and for builds without Qt Positioning. It
// keeps the promises of PositionSource: nothing flows unless it runs.

namespace halfcup::place {

class ScriptedPositionSource : public PositionSource {
    Q_OBJECT
public:
    explicit ScriptedPositionSource(QObject* parent = nullptr);

    void start() override;
    void stop() override;
    [[nodiscard]] bool isRunning() const override { return m_running; }
    [[nodiscard]] QString name() const override { return QStringLiteral("scripted"); }

    // Sent from the event loop, in order, each time start() is called.
    void setFixesOnStart(std::vector<Fix> fixes) { m_onStart = std::move(fixes); }
    // Told from the event loop each time start() is called, instead of fixes: a source that was denied, say.
    void setProblemOnStart(Problem kind, const QString& sentence);

    // At once; dropped (false) unless running.
    bool emitFix(const Fix& fix);
    bool emitProblem(Problem kind, const QString& sentence);

    [[nodiscard]] int starts() const { return m_starts; } // how often it was really switched on
    [[nodiscard]] int stops() const { return m_stops; }

private:
    std::vector<Fix> m_onStart;
    bool m_hasProblem = false;
    Problem m_problem = Problem::NoSource;
    QString m_sentence;
    bool m_running = false;
    int m_starts = 0;
    int m_stops = 0;
    int m_round = 0; // so that what was queued by an earlier start() is dropped
};

} // namespace halfcup::place
