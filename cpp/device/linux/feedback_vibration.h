// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/linux/session_bus.h"
#include "device/vibration.h"

namespace halfcup::device {

/// Buzzes by feedbackd, the daemon that owns the motor on Linux phones (session bus, org.sigxcpu.Feedback).
///
/// Asks for a buzz of the wanted length (interface org.sigxcpu.Feedback.Haptic, Vibrate). Older daemons know
/// only named events (TriggerFeedback): the length is then the daemon's own, short or long. Either way the
/// phone's own "quiet" and "silent" stay in force.
class FeedbackVibration final : public Vibration {
    Q_OBJECT
public:
    explicit FeedbackVibration(std::shared_ptr<SessionBus> bus, QObject* parent = nullptr);
    void buzz(std::chrono::milliseconds length) override;
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override;

private:
    void trigger(std::chrono::milliseconds length);

    std::shared_ptr<SessionBus> m_bus;
    BusService m_service;
    bool m_on = true;
    bool m_eventsOnly = false;
};

} // namespace halfcup::device
