// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/keep_awake.h"

namespace halfcup::device {

/// Keeps the screen on by UIApplication.idleTimerDisabled while any Hold lives. iOS takes it back when the
/// program goes.
class IdleTimerKeepAwake final : public KeepAwake {
    Q_OBJECT
public:
    explicit IdleTimerKeepAwake(QObject* parent = nullptr);
    [[nodiscard]] std::unique_ptr<Hold> hold(const QString& reason) override;
    [[nodiscard]] bool works() const override { return true; }

private:
    class CountedHold;
    std::shared_ptr<int> m_holds; // shared: a Hold may outlive this
};

} // namespace halfcup::device
