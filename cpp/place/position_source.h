// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/fix.h"

#include <QMetaType>
#include <QObject>
#include <QString>

#include <memory>

// Where positions come from, as the rest of the program sees it. Thread: lives in the thread that made it;
// its signals come from that thread's event loop and it never blocks it.

namespace halfcup::place {

class PositionSource : public QObject {
    Q_OBJECT
public:
    enum class Problem {
        NoSource, // nothing on this device tells positions, or the setting names something that is not there
        BadSetting, // the setting cannot be understood
        Denied,     // the keeper or the system does not allow it
        Closed,     // the line dropped or cannot be opened; it is tried again while running
        NoFixYet,   // connected, but the receiver knows no place (yet)
        Ended,      // a recording came to its end; nothing more will come
    };
    Q_ENUM(Problem)

    explicit PositionSource(QObject* parent = nullptr);
    ~PositionSource() override;

    // Positions flow only between start() and stop(); both may be called at any time and repeatedly. Starting
    // never fails at once: what goes wrong comes as problem(), always after start() has returned.
    virtual void start() = 0;
    virtual void stop() = 0;
    [[nodiscard]] virtual bool isRunning() const = 0;
    // For the setup page and the record: "nmea:tcp://127.0.0.1:10110".
    [[nodiscard]] virtual QString name() const = 0;

signals:
    // As received: may be unusable, StampBuilder decides.
    void fixReceived(const halfcup::place::Fix& fix);
    // A plain sentence for the keeper, and its kind. Not an end: the wash goes on without a position, and a
    // fix may still come. The same problem is not told twice in a row.
    void problem(halfcup::place::PositionSource::Problem kind, const QString& sentence);
    void runningChanged(bool running);
};

// The source that this build has for a setting: Qt Positioning's, or a browser's. Never null.
[[nodiscard]] std::unique_ptr<PositionSource> makePositionSource(const QString& setting);

// What that source says with Denied.
[[nodiscard]] QString positionDeniedSentence();

} // namespace halfcup::place

Q_DECLARE_METATYPE(halfcup::place::Fix)
