// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/window_insets.h"

#include <QPointer>
#include <QWindow>

namespace halfcup::device {

/// The safe area of Qt's view (UIView.safeAreaInsets), read anew whenever the window gets another size, is
/// turned or comes into sight. Its points are device-independent pixels.
class SafeAreaInsets final : public WindowInsets {
    Q_OBJECT
public:
    using WindowInsets::WindowInsets;
    void watch(QWindow* window) override;
    [[nodiscard]] Insets now() const override { return m_insets; }

private:
    void look();
    void lookSoon(); // UIKit lays out after Qt has told of the new size

    QPointer<QWindow> m_window;
    Insets m_insets;
};

} // namespace halfcup::device
