// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/linux/logind_brightness.h"
#include "device_bus_services.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace halfcup::device;
using namespace halfcup::device::test;

namespace {

const QString kLogin = QStringLiteral("org.freedesktop.login1");

void write(const QString& path, const QByteArray& text) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        qFatal("%s cannot be written", qPrintable(path));
    file.write(text);
}

QByteArray read(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll().trimmed() : QByteArray();
}

} // namespace

/// The login manager as its manual page has it: SetBrightness(s subsystem, s name, u brightness) writes the
/// kernel's file. Source: org.freedesktop.login1(5), from memory.
class DeviceBrightness : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        if (QStandardPaths::findExecutable(QStringLiteral("dbus-daemon")).isEmpty())
            QSKIP("dbus-daemon is not installed here (package dbus-daemon).");
    }
    void init() {
        m_daemon = std::make_unique<PrivateBus>();
        m_lights = std::make_unique<QTemporaryDir>();
        m_bus = SessionBus::openAt(m_daemon->address);
        QVERIFY(m_bus->isConnected());
        QVERIFY(QDir(m_lights->path()).mkpath(QStringLiteral("panel")));
        write(file("brightness"), "120\n");
        write(file("max_brightness"), "255\n");
        m_login = std::make_unique<Service>(
            m_daemon->address, kLogin, QStringLiteral("/org/freedesktop/login1/session/auto"),
            [this](const QDBusMessage& call) {
                if (call.member() != QLatin1String("SetBrightness") ||
                    call.signature() != QLatin1String("ssu"))
                    return call.createErrorReply(QDBusError::InvalidArgs, QStringLiteral("not understood"));
                const QString name = call.arguments().at(1).toString();
                write(m_lights->filePath(name) + QStringLiteral("/brightness"),
                      QByteArray::number(call.arguments().at(2).toUInt()) + '\n');
                return call.createReply();
            });
    }
    void cleanup() {
        m_login.reset();
        m_bus.reset();
        m_daemon.reset();
    }

    void asBrightAsItGoesAndThenAsItWas() {
        LogindBrightness light(m_bus, m_lights->path());
        QTRY_VERIFY(light.works());
        auto hold = light.raise();
        QTRY_COMPARE(read(file("brightness")), QByteArray("255"));
        auto second = light.raise();
        hold.reset();
        QTest::qWait(50);
        QCOMPARE(read(file("brightness")), QByteArray("255")); // one more still counts
        second.reset();
        QTRY_COMPARE(read(file("brightness")), QByteArray("120"));
        QCOMPARE(m_login->calls.at(0).arguments().at(0).toString(), QStringLiteral("backlight"));
    }

    void whatTheKeeperSetMeanwhileStays() {
        LogindBrightness light(m_bus, m_lights->path());
        QTRY_VERIFY(light.works());
        auto hold = light.raise();
        QTRY_COMPARE(read(file("brightness")), QByteArray("255"));
        write(file("brightness"), "80\n");
        hold.reset();
        QTest::qWait(50);
        QCOMPARE(read(file("brightness")), QByteArray("80"));
    }

    void aScreenThatIsBrightAlreadyIsLeft() {
        write(file("brightness"), "255\n");
        LogindBrightness light(m_bus, m_lights->path());
        QTRY_VERIFY(light.works());
        light.raise().reset();
        QTest::qWait(50);
        QVERIFY(m_login->calls.isEmpty());
    }

    void aComputerWithoutBacklightIsSilent() {
        LogindBrightness light(m_bus, m_lights->filePath(QStringLiteral("none")));
        QTest::qWait(50);
        QVERIFY(!light.works());
        QVERIFY(light.raise() != nullptr);
        QVERIFY(m_login->calls.isEmpty());
    }

    void aFileThatHoldsNoNumberIsNoLight() {
        write(file("max_brightness"), "a lot\n");
        LogindBrightness light(m_bus, m_lights->path());
        QTest::qWait(50);
        QVERIFY(!light.works());
    }

    void noBusIsSilent() {
        LogindBrightness light(SessionBus::openAt({}), m_lights->path());
        QVERIFY(!light.works());
        QVERIFY(light.raise() != nullptr);
        QCOMPARE(read(file("brightness")), QByteArray("120"));
    }

private:
    [[nodiscard]] QString file(const char* name) const {
        return m_lights->filePath(QStringLiteral("panel/") + QLatin1String(name));
    }

    std::unique_ptr<PrivateBus> m_daemon;
    std::unique_ptr<QTemporaryDir> m_lights;
    std::shared_ptr<SessionBus> m_bus;
    std::unique_ptr<Service> m_login;
};

QTEST_GUILESS_MAIN(DeviceBrightness)
#include "device_brightness.moc"
