// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDBusConnection>
#include <QDBusServiceWatcher>
#include <QObject>

#include <memory>

namespace halfcup::device {

/// A connection of our own to the session bus, closed when the last owner goes.
///
/// Our own, so that nothing here depends on what Qt does with its shared one. Opening waits for the bus to
/// say hello (about a millisecond; the platform plug-in of a desktop has waited for the same bus before us);
/// every call after that is asynchronous.
class SessionBus {
public:
    /// The bus named by DBUS_SESSION_BUS_ADDRESS, or else the socket `bus` in XDG_RUNTIME_DIR. Where there is
    /// neither the result is there but not connected; no bus is ever started for us.
    [[nodiscard]] static std::shared_ptr<SessionBus> open();
    /// The system's bus: DBUS_SYSTEM_BUS_ADDRESS, or else the socket the D-Bus specification names.
    [[nodiscard]] static std::shared_ptr<SessionBus> openSystems();
    /// The bus at a D-Bus address; an empty address gives one that is not connected.
    [[nodiscard]] static std::shared_ptr<SessionBus> openAt(const QString& address);
    ~SessionBus();
    SessionBus(const SessionBus&) = delete;
    SessionBus& operator=(const SessionBus&) = delete;

    [[nodiscard]] bool isConnected() const { return m_connection.isConnected(); }
    [[nodiscard]] QDBusConnection& connection() { return m_connection; }

private:
    explicit SessionBus(QDBusConnection connection);
    QDBusConnection m_connection;
};

/// Watches whether one service can be called on the bus: somebody owns its name, or the bus knows how to
/// start it.
class BusService final : public QObject {
    Q_OBJECT
public:
    /// Asks the bus without waiting: isThere() is false until the answer has come.
    BusService(std::shared_ptr<SessionBus> bus, QString name, QObject* parent = nullptr);
    [[nodiscard]] bool isThere() const { return m_owned || m_startable; }
    /// Rises by one each time somebody new takes the name: what the one before was asked is forgotten then.
    [[nodiscard]] int generation() const { return m_generation; }

Q_SIGNALS:
    void isThereChanged();
    void newOwner();

private Q_SLOTS:
    void busWent();

private:
    void askBus();
    void set(bool owned, bool startable);

    std::shared_ptr<SessionBus> m_bus;
    QString m_name;
    QDBusServiceWatcher m_watcher;
    int m_generation = 0;
    bool m_owned = false;
    bool m_startable = false;
};

} // namespace halfcup::device
