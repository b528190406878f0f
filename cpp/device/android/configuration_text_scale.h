// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/text_scale.h"

namespace halfcup::device {

/// Android's own factor (Configuration.fontScale), looked at when the program comes to the front: a keeper
/// changes it in the system's settings, with this program behind them.
class ConfigurationTextScale final : public TextScale {
    Q_OBJECT
public:
    explicit ConfigurationTextScale(QObject* parent = nullptr);
    [[nodiscard]] double now() const override { return m_scale; }

private:
    void look();

    double m_scale = 1.0;
};

} // namespace halfcup::device
