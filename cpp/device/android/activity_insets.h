// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/android/calls_from_java.h"
#include "device/window_insets.h"

#include <QPointer>
#include <QWindow>

namespace halfcup::device {

/// The notch, the bars and the strip for gestures, as far as they lie over Qt's view (Edges.java, which tells
/// them in dots of the glass). Where Qt's view ends at a bar, that bar counts as nothing.
class ActivityInsets final : public WindowInsets {
    Q_OBJECT
public:
    explicit ActivityInsets(std::shared_ptr<CallsFromJava> calls, QObject* parent = nullptr);
    void watch(QWindow* window) override;
    [[nodiscard]] Insets now() const override { return m_insets; }

private:
    void take(int left, int top, int right, int bottom);

    std::shared_ptr<CallsFromJava> m_calls;
    QPointer<QWindow> m_window;
    Insets m_insets;
};

} // namespace halfcup::device
