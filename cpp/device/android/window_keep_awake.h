// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/keep_awake.h"

namespace halfcup::device {

/// Keeps the screen on by a flag of the activity's window (Phone.keepScreenOn): on while any Hold lives. The
/// flag goes with the window, so a crash leaves no phone awake. No permission is needed.
class WindowKeepAwake final : public KeepAwake {
    Q_OBJECT
public:
    explicit WindowKeepAwake(QObject* parent = nullptr);
    [[nodiscard]] std::unique_ptr<Hold> hold(const QString& reason) override;
    [[nodiscard]] bool works() const override;

private:
    class CountedHold;
    std::shared_ptr<int> m_holds; // shared: a Hold may outlive this
};

} // namespace halfcup::device
