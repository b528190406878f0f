// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/keep_awake.h"

namespace halfcup::device {

/// The Screen Wake Lock API. The browser takes the lock away from a hidden page; it is asked for again when
/// the page is seen again.
class BrowserKeepAwake final : public KeepAwake {
    Q_OBJECT
public:
    using KeepAwake::KeepAwake;
    [[nodiscard]] std::unique_ptr<Hold> hold(const QString& reason) override;
    [[nodiscard]] bool works() const override;
};

} // namespace halfcup::device
