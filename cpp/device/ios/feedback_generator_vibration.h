// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/vibration.h"

namespace halfcup::device {

/// Buzzes as iOS lets a program: a tap of the motor (UIImpactFeedbackGenerator) for a short one, the system's
/// own buzz of about 0.4 s for a long one. A length of one's own is not to be had without an engine that runs
/// all the time. Phones without the motor, and tablets, have none.
class FeedbackGeneratorVibration final : public Vibration {
    Q_OBJECT
public:
    explicit FeedbackGeneratorVibration(QObject* parent = nullptr);
    void buzz(std::chrono::milliseconds length) override;
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_hasMotor; }

private:
    bool m_hasMotor;
    bool m_on = true;
};

} // namespace halfcup::device
