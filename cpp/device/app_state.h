// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

namespace halfcup::device {

/// Whether the keeper has the program before them, and whether the phone runs short of memory.
///
/// A phone stops a program that is put away, and may end it without a word: what is counted or typed is on
/// disk by then, so there is nothing to save here. What costs the phone (a receiver) is given back, and what
/// may have changed meanwhile (the place, the day) is looked at anew. GUI thread only.
class AppState : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// False while another program covers this one or the glass is dark. A window on a desktop that merely
    /// has no keyboard is in front.
    [[nodiscard]] virtual bool isInFront() const = 0;

Q_SIGNALS:
    void wentAway(); // isInFront() is false now
    void cameBack(); // isInFront() is true again
    void memoryIsShort();
};

} // namespace halfcup::device
