// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/linux/screen_saver_keep_awake.h"

#include <QCoreApplication>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QPointer>

#include <algorithm>
#include <optional>
#include <utility>

namespace halfcup::device {

namespace {

const QString kService = QStringLiteral("org.freedesktop.ScreenSaver");

QDBusMessage toScreenSaver(const char* method) {
    return QDBusMessage::createMethodCall(kService, QStringLiteral("/org/freedesktop/ScreenSaver"), kService,
                                          QString::fromLatin1(method));
}

} // namespace

/// What one hold has asked for. Shared by the hold and by the answer on its way: whichever comes last cleans
/// up.
struct ScreenSaverKeepAwake::Inhibition {
    std::shared_ptr<SessionBus> bus;
    QString reason;
    std::optional<uint> cookie;
    int askedGeneration = 0;
    bool asking = false;
    bool released = false;

    void give() {
        if (cookie && bus->isConnected()) {
            QDBusMessage call = toScreenSaver("UnInhibit");
            call << *cookie;
            call.setAutoStartService(false);
            bus->connection().send(call); // nobody waits for the answer
        }
        cookie.reset();
    }
};

class ScreenSaverKeepAwake::BusHold final : public KeepAwake::Hold {
public:
    explicit BusHold(std::shared_ptr<Inhibition> inhibition)
        : m_inhibition(std::move(inhibition)) {}
    ~BusHold() override {
        m_inhibition->released = true;
        m_inhibition->give();
    }

private:
    std::shared_ptr<Inhibition> m_inhibition;
};

ScreenSaverKeepAwake::ScreenSaverKeepAwake(std::shared_ptr<SessionBus> bus, QObject* parent)
    : KeepAwake(parent)
    , m_bus(std::move(bus))
    , m_service(m_bus, kService) {
    connect(&m_service, &BusService::isThereChanged, this, &KeepAwake::worksChanged);
    connect(&m_service, &BusService::newOwner, this, &ScreenSaverKeepAwake::askAgain);
}

bool ScreenSaverKeepAwake::works() const {
    return m_bus->isConnected() && m_service.isThere();
}

std::unique_ptr<KeepAwake::Hold> ScreenSaverKeepAwake::hold(const QString& reason) {
    auto inhibition = std::make_shared<Inhibition>();
    inhibition->bus = m_bus;
    inhibition->reason = reason;
    m_living.erase(
        std::remove_if(m_living.begin(), m_living.end(), [](const auto& w) { return w.expired(); }),
        m_living.end());
    m_living.push_back(inhibition);
    ask(inhibition);
    return std::make_unique<BusHold>(std::move(inhibition));
}

void ScreenSaverKeepAwake::ask(const std::shared_ptr<Inhibition>& inhibition) {
    if (!m_bus->isConnected()) {
        return;
    }
    QDBusMessage call = toScreenSaver("Inhibit");
    call << QCoreApplication::applicationName() << inhibition->reason;
    inhibition->asking = true;
    inhibition->askedGeneration = m_service.generation();
    // No parent: the answer must be heard even when this object and the hold are gone, or the phone stays
    // awake.
    auto* watcher = new QDBusPendingCallWatcher(m_bus->connection().asyncCall(call));
    const QPointer<ScreenSaverKeepAwake> self(this);
    connect(watcher, &QDBusPendingCallWatcher::finished, [self, inhibition](QDBusPendingCallWatcher* done) {
        done->deleteLater();
        inhibition->asking = false;
        const QDBusPendingReply<uint> reply = *done;
        if (reply.isValid()) {
            inhibition->cookie = reply.value();
            if (inhibition->released) {
                inhibition->give();
            }
        } else if (self && !inhibition->released &&
                   inhibition->askedGeneration != self->m_service.generation()) {
            self->ask(inhibition); // the service changed hands while the question was on its way
        }
    });
}

void ScreenSaverKeepAwake::askAgain() {
    for (const auto& weak : m_living) {
        const auto inhibition = weak.lock();
        if (inhibition && !inhibition->released && !inhibition->asking) {
            inhibition->cookie.reset(); // it was the former owner's
            ask(inhibition);
        }
    }
}

} // namespace halfcup::device
