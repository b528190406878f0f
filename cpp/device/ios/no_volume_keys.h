// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/volume_keys.h"

namespace halfcup::device {

/// iOS gives its volume keys to no program.
class NoVolumeKeys final : public VolumeKeys {
    Q_OBJECT
public:
    using VolumeKeys::VolumeKeys;
    void setGrabbed(bool) override {}
    [[nodiscard]] bool isGrabbed() const override { return false; }
    [[nodiscard]] bool works() const override { return false; }
};

} // namespace halfcup::device
