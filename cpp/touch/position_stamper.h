// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"
#include "place/position_source.h"
#include "place/stamp.h"
#include "place/yards.h"

#include <QObject>
#include <QTimer>

#include <functional>
#include <memory>
#include <optional>

namespace halfcup::touch {

/// Switches the position source on while somebody wants to know where the phone is, and off as soon as that
/// is known well enough or the time is up. At all other times no receiver runs.
class PositionStamper : public QObject {
    Q_OBJECT
public:
    using MakeSource = std::function<std::unique_ptr<place::PositionSource>(const QString& setting)>;

    PositionStamper(const device::Clock& clock, MakeSource makeSource, QObject* parent = nullptr);
    ~PositionStamper() override;

    /// Another receiver, from the settings; what ran is switched off.
    void useSource(const QString& setting);

    /// Wanted from now on, until it is good enough or the time is up. Asking again while it runs changes
    /// nothing.
    void want();
    /// The same for another moment: what came so far is of another place, and does not count.
    void wantAnew();
    void forget(); // no longer wanted

    /// No receiver is looked for before go(), however much one is wanted: that takes time the first picture
    /// does not have.
    void hold() { m_held = true; }
    void go();

    [[nodiscard]] bool isRunning() const { return m_running; }
    [[nodiscard]] bool isDone() const { return m_done; }    // good enough, or time up
    [[nodiscard]] std::optional<place::Stamp> best() const; // so far
    [[nodiscard]] std::optional<place::PositionSource::Problem> problem() const { return m_problem; }
    [[nodiscard]] QString problemSentence() const { return m_problemSentence; }

signals:
    void changed(); // a better position, a problem, or the end of looking

private:
    void startSource();
    void stop();
    void look();
    std::int64_t now() const;

    const device::Clock& m_clock;
    MakeSource m_makeSource;
    QString m_setting;
    std::unique_ptr<place::PositionSource> m_source;
    place::StampBuilder m_builder;
    QTimer m_timer;
    bool m_running = false;
    bool m_held = false;
    bool m_done = false;
    std::optional<place::PositionSource::Problem> m_problem;
    QString m_problemSentence;
};

} // namespace halfcup::touch
