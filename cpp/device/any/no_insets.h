// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/window_insets.h"

namespace halfcup::device {

/// For systems whose windows are never covered: desktops, and Linux phones, whose shells keep their bars and
/// the notch out of a window.
class NoInsets final : public WindowInsets {
    Q_OBJECT
public:
    using WindowInsets::WindowInsets;
    void watch(QWindow*) override {}
    [[nodiscard]] Insets now() const override { return {}; }
};

} // namespace halfcup::device
