// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/volume_keys.h"

namespace halfcup::device {

/// Volume keys pressed by a test. As with the real ones, a press is a signal only while grabbed.
class FakeVolumeKeys final : public VolumeKeys {
    Q_OBJECT
public:
    explicit FakeVolumeKeys(QObject* parent = nullptr);
    void setGrabbed(bool grabbed) override;
    [[nodiscard]] bool isGrabbed() const override { return m_grabbed; }
    [[nodiscard]] bool works() const override { return true; }

    void pressUp();
    void pressDown();
    /// How often the keys went from free to grabbed.
    [[nodiscard]] int timesGrabbed() const { return m_timesGrabbed; }

private:
    int m_timesGrabbed = 0;
    bool m_grabbed = false;
};

} // namespace halfcup::device
