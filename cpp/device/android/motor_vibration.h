// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/vibration.h"

namespace halfcup::device {

/// Buzzes by Android's vibrator (Phone.buzz).
class MotorVibration final : public Vibration {
    Q_OBJECT
public:
    explicit MotorVibration(QObject* parent = nullptr);
    void buzz(std::chrono::milliseconds length) override;
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_hasMotor; }

private:
    bool m_hasMotor;
    bool m_on = true;
};

} // namespace halfcup::device
