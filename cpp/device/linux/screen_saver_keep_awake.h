// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/keep_awake.h"
#include "device/linux/session_bus.h"

#include <vector>

namespace halfcup::device {

/// Keeps the screen on by the Idle Inhibition Service of freedesktop.org (org.freedesktop.ScreenSaver,
/// methods Inhibit and UnInhibit), which the phone and desktop shells answer. One Inhibit a hold; the service
/// itself drops them all when the program dies, so a crash leaves no phone awake. If the service is started
/// anew, living holds are asked for again.
class ScreenSaverKeepAwake final : public KeepAwake {
    Q_OBJECT
public:
    explicit ScreenSaverKeepAwake(std::shared_ptr<SessionBus> bus, QObject* parent = nullptr);
    [[nodiscard]] std::unique_ptr<Hold> hold(const QString& reason) override;
    [[nodiscard]] bool works() const override;

private:
    struct Inhibition;
    class BusHold;
    void ask(const std::shared_ptr<Inhibition>& inhibition);
    void askAgain();

    std::shared_ptr<SessionBus> m_bus;
    BusService m_service;
    std::vector<std::weak_ptr<Inhibition>> m_living;
};

} // namespace halfcup::device
