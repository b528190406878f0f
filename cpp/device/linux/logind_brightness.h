// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/brightness.h"
#include "device/linux/session_bus.h"

#include <QString>

namespace halfcup::device {

/// Sets the backlight of a Linux phone by its login manager, which lets the one who sits at the screen do so
/// (org.freedesktop.login1.Session.SetBrightness, in the manual page org.freedesktop.login1(5) of systemd).
/// What is set and how far it goes is read from the kernel's class "backlight" (its file
/// Documentation/ABI/stable/sysfs-class-backlight), the first of the lights in the order of their names.
class LogindBrightness final : public Brightness {
public:
    /// bus: the system's. backlights: the folder with one folder a light.
    explicit LogindBrightness(std::shared_ptr<SessionBus> bus,
                              QString backlights = QStringLiteral("/sys/class/backlight"));
    [[nodiscard]] std::shared_ptr<Hold> raise() override;
    [[nodiscard]] bool works() const override;

private:
    class LightHold;

    std::shared_ptr<SessionBus> m_bus;
    QString m_backlights;
    BusService m_service;
    std::weak_ptr<Hold> m_hold;
};

} // namespace halfcup::device
