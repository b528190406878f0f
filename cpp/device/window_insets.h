// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

class QWindow;

namespace halfcup::device {

/// How far the phone reaches into the window from each edge: a notch, rounded corners, bars, the strip along
/// the bottom where a touch means the system. Device-independent pixels, 0 or more; all 0 where nothing does.
struct Insets {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
    bool operator==(const Insets&) const = default;
};

/// Watches them for the one window: they change when the phone is turned or unfolded, or when a bar comes or
/// goes. Nothing of the page that is read or touched may lie in them. GUI thread only.
class WindowInsets : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// Called once the window is there; a window that goes is no error. Never fails: a system that does not
    /// tell has none.
    virtual void watch(QWindow* window) = 0;
    [[nodiscard]] virtual Insets now() const = 0;

Q_SIGNALS:
    void changed(); // only where now() differs from before
};

} // namespace halfcup::device
