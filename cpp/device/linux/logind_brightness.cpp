// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/linux/logind_brightness.h"

#include <QDBusMessage>
#include <QDir>
#include <QFile>

#include <optional>
#include <utility>

namespace halfcup::device {

namespace {

const QString kService = QStringLiteral("org.freedesktop.login1");

/// The whole number a file of the kernel holds.
std::optional<uint> numberIn(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    bool isNumber = false;
    const uint number = file.readLine(32).trimmed().toUInt(&isNumber);
    return isNumber ? std::optional(number) : std::nullopt;
}

struct Light {
    QString name;
    QString folder;
    uint now = 0;
    uint most = 0;
};

std::optional<Light> firstLight(const QString& backlights) {
    const QDir place(backlights);
    // The kernel's folders are links.
    for (const QString& name : place.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name)) {
        const QString folder = place.filePath(name);
        const auto now = numberIn(folder + QStringLiteral("/brightness"));
        const auto most = numberIn(folder + QStringLiteral("/max_brightness"));
        if (now && most && *most > 0)
            return Light{name, folder, *now, *most};
    }
    return std::nullopt;
}

} // namespace

class LogindBrightness::LightHold final : public Brightness::Hold {
public:
    LightHold(std::shared_ptr<SessionBus> bus, Light light)
        : m_bus(std::move(bus))
        , m_light(std::move(light)) {
        set(m_light.most);
    }
    ~LightHold() override {
        // Whoever set it meanwhile, by hand or by the phone's own sensor, knows better.
        if (numberIn(m_light.folder + QStringLiteral("/brightness")) == m_light.most)
            set(m_light.now);
    }

private:
    void set(uint brightness) const {
        QDBusMessage call = QDBusMessage::createMethodCall(
            kService, QStringLiteral("/org/freedesktop/login1/session/auto"),
            QStringLiteral("org.freedesktop.login1.Session"), QStringLiteral("SetBrightness"));
        call << QStringLiteral("backlight") << m_light.name << brightness;
        call.setAutoStartService(false);
        m_bus->connection().send(call); // nobody waits for the answer
    }

    std::shared_ptr<SessionBus> m_bus;
    Light m_light;
};

LogindBrightness::LogindBrightness(std::shared_ptr<SessionBus> bus, QString backlights)
    : m_bus(std::move(bus))
    , m_backlights(std::move(backlights))
    , m_service(m_bus, kService) {}

bool LogindBrightness::works() const {
    return m_bus->isConnected() && m_service.isThere() && firstLight(m_backlights);
}

std::shared_ptr<Brightness::Hold> LogindBrightness::raise() {
    if (auto hold = m_hold.lock())
        return hold;
    const auto light = firstLight(m_backlights);
    std::shared_ptr<Hold> hold;
    if (light && light->now < light->most && m_bus->isConnected() && m_service.isThere())
        hold = std::make_shared<LightHold>(m_bus, *light);
    else
        hold = std::make_shared<Hold>();
    m_hold = hold;
    return hold;
}

} // namespace halfcup::device
