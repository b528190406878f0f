// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/vibration.h"

#include <vector>

namespace halfcup::device {

/// Writes down each buzz a hand would have felt: none while off, or without a motor.
class FakeVibration final : public Vibration {
    Q_OBJECT
public:
    explicit FakeVibration(QObject* parent = nullptr);
    void buzz(std::chrono::milliseconds length) override;
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_works; }
    void setWorks(bool works);

    [[nodiscard]] const std::vector<std::chrono::milliseconds>& buzzes() const { return m_buzzes; }
    [[nodiscard]] int count() const { return static_cast<int>(m_buzzes.size()); }

private:
    std::vector<std::chrono::milliseconds> m_buzzes;
    bool m_on = true;
    bool m_works = true;
};

} // namespace halfcup::device
