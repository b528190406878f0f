// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/linux/session_bus.h"

#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QFileInfo>

#include <atomic>
#include <utility>

namespace halfcup::device {

namespace {

QDBusMessage toBus(const char* method) {
    return QDBusMessage::createMethodCall(
        QStringLiteral("org.freedesktop.DBus"), QStringLiteral("/org/freedesktop/DBus"),
        QStringLiteral("org.freedesktop.DBus"), QString::fromLatin1(method));
}

} // namespace

SessionBus::SessionBus(QDBusConnection connection)
    : m_connection(std::move(connection)) {}

SessionBus::~SessionBus() {
    const QString name = m_connection.name();
    if (!name.isEmpty()) {
        QDBusConnection::disconnectFromBus(name);
    }
}

std::shared_ptr<SessionBus> SessionBus::open() {
    QString address = qEnvironmentVariable("DBUS_SESSION_BUS_ADDRESS");
    if (address.isEmpty()) {
        const QString runtime = qEnvironmentVariable("XDG_RUNTIME_DIR");
        const QString socket = runtime + QStringLiteral("/bus");
        if (!runtime.isEmpty() && QFileInfo::exists(socket)) {
            address = QStringLiteral("unix:path=") + socket;
        }
    }
    return openAt(address);
}

std::shared_ptr<SessionBus> SessionBus::openSystems() {
    const QString socket = QStringLiteral("/var/run/dbus/system_bus_socket");
    QString address = qEnvironmentVariable("DBUS_SYSTEM_BUS_ADDRESS");
    if (address.isEmpty() && QFileInfo::exists(socket))
        address = QStringLiteral("unix:path=") + socket;
    return openAt(address);
}

std::shared_ptr<SessionBus> SessionBus::openAt(const QString& address) {
    static std::atomic<int> number{0};
    QDBusConnection connection{QString()};
    if (!address.isEmpty()) {
        const QString name = QStringLiteral("halfcup-device-%1").arg(++number);
        connection = QDBusConnection::connectToBus(address, name);
    }
    return std::shared_ptr<SessionBus>(new SessionBus(std::move(connection)));
}

BusService::BusService(std::shared_ptr<SessionBus> bus, QString name, QObject* parent)
    : QObject(parent)
    , m_bus(std::move(bus))
    , m_name(std::move(name)) {
    if (!m_bus->isConnected()) {
        return;
    }
    m_watcher.setConnection(m_bus->connection());
    m_watcher.setWatchMode(QDBusServiceWatcher::WatchForOwnerChange);
    m_watcher.addWatchedService(m_name);
    connect(&m_watcher, &QDBusServiceWatcher::serviceOwnerChanged, this,
            [this](const QString&, const QString&, const QString& owner) {
                set(!owner.isEmpty(), m_startable);
                if (!owner.isEmpty()) {
                    ++m_generation;
                    Q_EMIT newOwner();
                }
            });
    // libdbus tells itself when the connection is lost; the name watcher stays silent then.
    m_bus->connection().connect(QString(), QStringLiteral("/org/freedesktop/DBus/Local"),
                                QStringLiteral("org.freedesktop.DBus.Local"), QStringLiteral("Disconnected"),
                                this, SLOT(busWent()));
    askBus();
}

void BusService::busWent() {
    set(false, false);
}

void BusService::askBus() {
    QDBusMessage owned = toBus("NameHasOwner");
    owned << m_name;
    auto* first = new QDBusPendingCallWatcher(m_bus->connection().asyncCall(owned), this);
    connect(first, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* call) {
        call->deleteLater();
        const QDBusPendingReply<bool> reply = *call;
        // The watcher may have spoken before this answer; it knows better.
        if (reply.isValid() && m_generation == 0) {
            set(reply.value(), m_startable);
        }
    });
    auto* second =
        new QDBusPendingCallWatcher(m_bus->connection().asyncCall(toBus("ListActivatableNames")), this);
    connect(second, &QDBusPendingCallWatcher::finished, this, [this](QDBusPendingCallWatcher* call) {
        call->deleteLater();
        const QDBusPendingReply<QStringList> reply = *call;
        if (reply.isValid()) {
            set(m_owned, reply.value().contains(m_name));
        }
    });
}

void BusService::set(bool owned, bool startable) {
    const bool before = isThere();
    m_owned = owned;
    m_startable = startable;
    if (before != isThere()) {
        Q_EMIT isThereChanged();
    }
}

} // namespace halfcup::device
