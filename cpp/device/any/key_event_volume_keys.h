// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/volume_keys.h"

namespace halfcup::device {

/// Takes the volume keys out of the key events Qt gets from the system, before any window sees them. Good for
/// Linux and Android, which pass them on as Qt::Key_VolumeUp and Qt::Key_VolumeDown.
class KeyEventVolumeKeys final : public VolumeKeys {
    Q_OBJECT
public:
    /// Needs a QCoreApplication once grabbed; without one, nothing is ever grabbed.
    explicit KeyEventVolumeKeys(QObject* parent = nullptr);
    ~KeyEventVolumeKeys() override;
    void setGrabbed(bool grabbed) override;
    [[nodiscard]] bool isGrabbed() const override { return m_grabbed; }
    [[nodiscard]] bool works() const override { return true; }
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool m_grabbed = false;
};

} // namespace halfcup::device
