// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/safe_area_insets.h"

#include <QTimer>

#include <UIKit/UIKit.h>

namespace halfcup::device {

void SafeAreaInsets::watch(QWindow* window) {
    m_window = window;
    connect(window, &QWindow::widthChanged, this, &SafeAreaInsets::lookSoon);
    connect(window, &QWindow::heightChanged, this, &SafeAreaInsets::lookSoon);
    connect(window, &QWindow::visibleChanged, this, &SafeAreaInsets::lookSoon);
    connect(window, &QWindow::contentOrientationChanged, this, &SafeAreaInsets::lookSoon);
    lookSoon();
}

void SafeAreaInsets::lookSoon() {
    QTimer::singleShot(0, this, &SafeAreaInsets::look);
}

void SafeAreaInsets::look() {
    if (!m_window || !m_window->isVisible())
        return;
    UIView* view = (__bridge UIView*)reinterpret_cast<void*>(m_window->winId());
    const UIEdgeInsets safe = view.safeAreaInsets;
    const Insets insets{safe.left, safe.top, safe.right, safe.bottom};
    if (insets == m_insets)
        return;
    m_insets = insets;
    Q_EMIT changed();
}

} // namespace halfcup::device
