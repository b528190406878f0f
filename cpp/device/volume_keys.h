// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

namespace halfcup::device {

/// The volume keys as two buttons that are felt through a glove: up counts, down takes back.
///
/// Only while grabbed: the keys are then kept from the system, one signal a press, held keys do not repeat. A
/// page grabs them while it counts and lets go when it pauses, hides or goes. GUI thread only.
class VolumeKeys : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    virtual void setGrabbed(bool grabbed) = 0;
    [[nodiscard]] virtual bool isGrabbed() const = 0;
    /// Whether the system may pass the keys on. True is no promise: some desktops keep them for themselves,
    /// which a program cannot find out, so every page must also work without them.
    [[nodiscard]] virtual bool works() const = 0;

Q_SIGNALS:
    void volumeUpPressed();
    void volumeDownPressed();
};

} // namespace halfcup::device
