// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// A session bus for one test, and services on it that answer as the real ones do and keep every call.
#include "device/linux/session_bus.h"

#include <QDBusMessage>
#include <QDBusVirtualObject>
#include <QProcess>

#include <functional>
#include <memory>
#include <set>
#include <utility>

namespace halfcup::device::test {

inline const QString kScreenSaver = QStringLiteral("org.freedesktop.ScreenSaver");
inline const QString kScreenSaverPath = QStringLiteral("/org/freedesktop/ScreenSaver");
inline const QString kFeedback = QStringLiteral("org.sigxcpu.Feedback");
inline const QString kFeedbackPath = QStringLiteral("/org/sigxcpu/Feedback");

/// A session bus of this test's own.
class PrivateBus {
public:
    PrivateBus() {
        m_process.start(QStringLiteral("dbus-daemon"),
                        {QStringLiteral("--session"), QStringLiteral("--nofork"),
                         QStringLiteral("--print-address=1"), QStringLiteral("--address=unix:tmpdir=/tmp")});
        if (m_process.waitForStarted() && m_process.waitForReadyRead(5000)) {
            address = QString::fromUtf8(m_process.readLine().trimmed());
        }
    }
    ~PrivateBus() { stop(); }
    PrivateBus(const PrivateBus&) = delete;
    PrivateBus& operator=(const PrivateBus&) = delete;
    void stop() {
        m_process.kill();
        m_process.waitForFinished();
    }
    QString address;

private:
    QProcess m_process;
};

/// A service on the bus that answers by a function and keeps every call.
class Service : public QDBusVirtualObject {
public:
    using Answer = std::function<QDBusMessage(const QDBusMessage&)>;

    Service(const QString& address, QString name, const QString& path, Answer answer)
        : m_bus(SessionBus::openAt(address))
        , m_name(std::move(name))
        , m_answer(std::move(answer)) {
        m_bus->connection().registerVirtualObject(path, this);
        appear();
    }
    void appear() { isRegistered = m_bus->connection().registerService(m_name); }
    void vanish() { m_bus->connection().unregisterService(m_name); }
    [[nodiscard]] QString introspect(const QString&) const override { return {}; }
    bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override {
        calls.append(message);
        const QDBusMessage answer = m_answer(message);
        if (answer.type() != QDBusMessage::InvalidMessage) {
            connection.send(answer);
        }
        return true;
    }
    [[nodiscard]] QDBusConnection& bus() const { return m_bus->connection(); }
    QList<QDBusMessage> calls;
    bool isRegistered = false;

private:
    std::shared_ptr<SessionBus> m_bus;
    QString m_name;
    Answer m_answer;
};

/// The Idle Inhibition Service as its specification has it: Inhibit(s application, s reason) gives a cookie
/// (u), UnInhibit(u cookie) takes it back. Source: freedesktop.org, Idle Inhibition Service draft, from
/// memory.
class ScreenSaver : public Service {
public:
    explicit ScreenSaver(const QString& address)
        : Service(address, kScreenSaver, kScreenSaverPath,
                  [this](const QDBusMessage& call) { return answer(call); }) {}
    std::set<uint> held;
    int inhibited = 0;
    int strangeCalls = 0;
    bool isDeaf = false;

private:
    QDBusMessage answer(const QDBusMessage& call) {
        if (isDeaf) {
            return {};
        }
        if (call.member() == QLatin1String("Inhibit") && call.signature() == QLatin1String("ss")) {
            ++inhibited;
            held.insert(++m_cookie);
            return call.createReply(QVariant::fromValue(m_cookie));
        }
        if (call.member() == QLatin1String("UnInhibit") && call.signature() == QLatin1String("u") &&
            held.erase(call.arguments().at(0).toUInt()) == 1) {
            return call.createReply();
        }
        ++strangeCalls;
        return call.createErrorReply(QDBusError::InvalidArgs, QStringLiteral("not understood"));
    }
    uint m_cookie = 4'000'000'000U; // does not fit an int
};

} // namespace halfcup::device::test
