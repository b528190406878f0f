// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/brightness.h"

namespace halfcup::device {

/// Knows whether the screen would be bright now.
class FakeBrightness final : public Brightness {
public:
    [[nodiscard]] std::shared_ptr<Hold> raise() override {
        std::shared_ptr<Hold> hold = m_hold.lock();
        if (!hold)
            m_hold = hold = std::make_shared<Hold>();
        return hold;
    }
    [[nodiscard]] bool works() const override { return true; }
    [[nodiscard]] bool isRaised() const { return !m_hold.expired(); }

private:
    std::weak_ptr<Hold> m_hold;
};

} // namespace halfcup::device
