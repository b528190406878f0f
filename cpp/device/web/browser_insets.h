// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/window_insets.h"

namespace halfcup::device {

/// CSS' safe-area-inset-*: what a notch or a bar covers when the page fills the whole glass.
class BrowserInsets final : public WindowInsets {
    Q_OBJECT
public:
    using WindowInsets::WindowInsets;
    void watch(QWindow* window) override;
    [[nodiscard]] Insets now() const override { return m_insets; }

private:
    void look();

    Insets m_insets;
};

} // namespace halfcup::device
