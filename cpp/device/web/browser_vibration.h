// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/vibration.h"

namespace halfcup::device {

/// navigator.vibrate(). Desktops have the function and no motor, which a page cannot find out.
class BrowserVibration final : public Vibration {
    Q_OBJECT
public:
    using Vibration::Vibration;
    void buzz(std::chrono::milliseconds length) override;
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override;

private:
    bool m_on = true;
};

} // namespace halfcup::device
