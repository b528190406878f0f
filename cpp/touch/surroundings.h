// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/surroundings.h"
#include "touch/position_stamper.h"

#include <QObject>
#include <QQmlEngine>

class QWindow;

namespace halfcup::touch {

/// What the phone does to the program, in one place: how far its notch and bars reach into the window, as the
/// pages keep clear of them; and what is done when the program is put away, comes back, or the phone runs
/// short of memory.
class Surroundings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(
        double left READ left NOTIFY insetsChanged) // covered from each edge, as a length on the screen
    Q_PROPERTY(double top READ top NOTIFY insetsChanged)
    Q_PROPERTY(double right READ right NOTIFY insetsChanged)
    Q_PROPERTY(double bottom READ bottom NOTIFY insetsChanged)
public:
    /// Both must outlive this. While the program is away no receiver runs; one that was looking for a place
    /// begins again when it comes back, for the phone may be elsewhere then.
    Surroundings(device::Surroundings& device, PositionStamper& position, QObject* parent = nullptr);

    void watch(QWindow* window);
    double left() const { return m_device.insets->now().left; }
    double top() const { return m_device.insets->now().top; }
    double right() const { return m_device.insets->now().right; }
    double bottom() const { return m_device.insets->now().bottom; }

signals:
    void insetsChanged();
    void memoryIsShort(); // give back whatever can be made again
    void inFrontChanged(bool inFront);

private:
    void goAway();
    void comeBack();

    device::Surroundings& m_device;
    PositionStamper& m_position;
    bool m_wasLooking = false;
};

} // namespace halfcup::touch
