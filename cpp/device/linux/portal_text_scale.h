// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/linux/session_bus.h"
#include "device/text_scale.h"

#include <QDBusMessage>

namespace halfcup::device {

/// The desktop's factor for letters: "text-scaling-factor" of "org.gnome.desktop.interface", which desktops
/// and shells of phones hand on through the Settings portal of freedesktop.org (Read and SettingChanged). The
/// portal's description leaves such keys to each desktop: where there is none, letters are as usual.
class PortalTextScale final : public TextScale {
    Q_OBJECT
public:
    explicit PortalTextScale(std::shared_ptr<SessionBus> bus, QObject* parent = nullptr);
    [[nodiscard]] double now() const override { return m_scale; }

private Q_SLOTS:
    void settingChanged(const QDBusMessage& told);

private:
    void ask();
    void take(const QVariant& value);

    std::shared_ptr<SessionBus> m_bus;
    BusService m_service;
    double m_scale = 1.0;
};

} // namespace halfcup::device
