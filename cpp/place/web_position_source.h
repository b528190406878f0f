// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/position_source.h"

#include <QTimer>

// The one adapter to a browser's Geolocation API. In place of qt_position_source where a browser runs us.

namespace halfcup::place {

class WebPositionSource : public PositionSource {
    Q_OBJECT
public:
    // setting: "" or "default" the browser's own; "none" never any position; any line to a receiver is told
    // as NoSource, since no page may open one.
    explicit WebPositionSource(const QString& setting, QObject* parent = nullptr);
    ~WebPositionSource() override;

    void start() override;
    void stop() override;
    [[nodiscard]] bool isRunning() const override { return m_running; }
    [[nodiscard]] QString name() const override { return m_name; }

    // From the browser. accuracyM: the radius that holds the place in 95 of 100 cases, as the specification
    // of the Geolocation API has it; utcMs: when the place was found.
    void take(double latitudeDeg, double longitudeDeg, double accuracyM, double utcMs);
    void lose(int code); // PositionError: 1 denied, 2 unavailable, 3 timeout; 0: no such API

private:
    void begin();
    void tell(Problem kind, const QString& sentence);

    QString m_setting;
    QString m_name;
    bool m_running = false;
    int m_watch = 0; // the browser's number for it; 0: none
    QTimer m_soon;
    std::optional<Problem> m_lastProblem;
};

} // namespace halfcup::place
