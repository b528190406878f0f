// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/brightness.h"

namespace halfcup::device {

/// Leaves the screen to the system, whose own light sensor brightens it in the sun.
class SystemBrightness final : public Brightness {
public:
    [[nodiscard]] std::shared_ptr<Hold> raise() override { return std::make_shared<Hold>(); }
    [[nodiscard]] bool works() const override { return false; }
};

} // namespace halfcup::device
