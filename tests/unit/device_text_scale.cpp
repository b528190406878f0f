// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/linux/portal_text_scale.h"
#include "device_bus_services.h"

#include <QDBusVariant>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTest>

#include <limits>

using namespace halfcup::device;
using namespace halfcup::device::test;

namespace {

const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPortalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kSettings = QStringLiteral("org.freedesktop.portal.Settings");
const QString kSpace = QStringLiteral("org.gnome.desktop.interface");
const QString kKey = QStringLiteral("text-scaling-factor");

} // namespace

/// The Settings portal as its description has it: Read(s namespace, s key) answers with the value in a
/// variant, which it wraps once more; SettingChanged(s, s, v) tells of another one. Source: XDG desktop
/// portal documentation, org.freedesktop.portal.Settings. That desktops name this key so is from memory.
class DeviceTextScale : public QObject {
    Q_OBJECT

    std::unique_ptr<PrivateBus> m_daemon;
    std::shared_ptr<SessionBus> m_bus;
    std::unique_ptr<Service> m_portal;
    QVariant m_value;

    void tell(const QString& key, const QVariant& value) {
        QDBusMessage signal =
            QDBusMessage::createSignal(kPortalPath, kSettings, QStringLiteral("SettingChanged"));
        signal << kSpace << key << QVariant::fromValue(QDBusVariant(value));
        QVERIFY(m_portal->bus().send(signal));
    }

private slots:
    void initTestCase() {
        if (QStandardPaths::findExecutable(QStringLiteral("dbus-daemon")).isEmpty())
            QSKIP("dbus-daemon is not installed here (package dbus-daemon).");
    }
    void init() {
        m_daemon = std::make_unique<PrivateBus>();
        m_bus = SessionBus::openAt(m_daemon->address);
        QVERIFY(m_bus->isConnected());
        m_value = 1.5;
        m_portal = std::make_unique<Service>(
            m_daemon->address, kPortal, kPortalPath, [this](const QDBusMessage& call) {
                if (call.member() != QLatin1String("Read") || call.signature() != QLatin1String("ss") ||
                    call.arguments().at(0).toString() != kSpace ||
                    call.arguments().at(1).toString() != kKey || !m_value.isValid())
                    return call.createErrorReply(QStringLiteral("org.freedesktop.portal.Error.NotFound"),
                                                 QStringLiteral("no such setting"));
                const QVariant inner = QVariant::fromValue(QDBusVariant(m_value));
                return call.createReply(QVariant::fromValue(QDBusVariant(inner)));
            });
    }
    void cleanup() {
        m_portal.reset();
        m_bus.reset();
        m_daemon.reset();
    }

    void asTheSystemSays() {
        PortalTextScale scale(m_bus);
        QSignalSpy changes(&scale, &TextScale::changed);
        QTRY_COMPARE(scale.now(), 1.5);
        QCOMPARE(changes.size(), 1);
        tell(kKey, 2.0);
        QTRY_COMPARE(scale.now(), 2.0);
        tell(QStringLiteral("cursor-size"), 48);
        tell(kKey, 1.25);
        QTRY_COMPARE(scale.now(), 1.25);
        QCOMPARE(changes.size(), 3);
    }

    void aDesktopWithoutTheSettingIsAsUsual() {
        m_value = {};
        PortalTextScale scale(m_bus);
        QTRY_VERIFY(!m_portal->calls.isEmpty());
        QTest::qWait(50);
        QCOMPARE(scale.now(), 1.0);
    }

    void whatIsNoFactorChangesNothing() {
        for (const QVariant& odd :
             {QVariant(QStringLiteral("large")), QVariant(0.0), QVariant(-1.0),
              QVariant(std::numeric_limits<double>::infinity()), QVariant(std::nan(""))}) {
            m_value = odd;
            m_portal->calls.clear();
            PortalTextScale scale(m_bus);
            QTRY_VERIFY(!m_portal->calls.isEmpty());
            QTest::qWait(20);
            QCOMPARE(scale.now(), 1.0);
        }
    }

    void withoutABusItIsSilent() {
        PortalTextScale scale(SessionBus::openAt(QString()));
        QTest::qWait(20);
        QCOMPARE(scale.now(), 1.0);
    }
};

QTEST_GUILESS_MAIN(DeviceTextScale)
#include "device_text_scale.moc"
