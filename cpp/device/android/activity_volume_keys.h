// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/android/calls_from_java.h"
#include "device/volume_keys.h"

namespace halfcup::device {

/// The volume keys as the activity gets them, before Android turns the volume (VolumeKeys.java).
class ActivityVolumeKeys final : public VolumeKeys {
    Q_OBJECT
public:
    explicit ActivityVolumeKeys(std::shared_ptr<CallsFromJava> calls, QObject* parent = nullptr);
    ~ActivityVolumeKeys() override;
    void setGrabbed(bool grabbed) override;
    [[nodiscard]] bool isGrabbed() const override { return m_grabbed; }
    [[nodiscard]] bool works() const override { return true; }

private:
    std::shared_ptr<CallsFromJava> m_calls;
    bool m_grabbed = false;
};

} // namespace halfcup::device
