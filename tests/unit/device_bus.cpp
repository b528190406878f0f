// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/linux/feedback_vibration.h"
#include "device/linux/screen_saver_keep_awake.h"
#include "device/platform.h"
#include "device_bus_services.h"

#include <QDBusArgument>
#include <QDBusMessage>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTest>

using namespace halfcup::device;
using namespace halfcup::device::test;
using namespace std::chrono_literals;

class DeviceBus : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        if (QStandardPaths::findExecutable(QStringLiteral("dbus-daemon")).isEmpty()) {
            QSKIP("dbus-daemon is not installed here (package dbus-daemon).");
        }
        QCoreApplication::setApplicationName(QStringLiteral("halfcup"));
    }
    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral(".*")));
        m_daemon = std::make_unique<PrivateBus>();
        QVERIFY2(!m_daemon->address.isEmpty(), "the private bus did not start");
        m_bus = SessionBus::openAt(m_daemon->address);
        QVERIFY(m_bus->isConnected());
    }
    void cleanup() {
        m_bus.reset();
        m_daemon.reset();
    }

    void aHoldInhibitsUntilItGoes() {
        ScreenSaver saver(m_daemon->address);
        QVERIFY(saver.isRegistered);
        ScreenSaverKeepAwake awake(m_bus);
        QTRY_VERIFY(awake.works());
        auto hold = awake.hold(QStringLiteral("Wäsche läuft"));
        QVERIFY(hold != nullptr);
        QTRY_COMPARE(saver.held.size(), 1U);
        QCOMPARE(saver.calls.at(0).interface(), kScreenSaver);
        QCOMPARE(saver.calls.at(0).arguments().at(0).toString(), QStringLiteral("halfcup"));
        QCOMPARE(saver.calls.at(0).arguments().at(1).toString(), QStringLiteral("Wäsche läuft"));
        QTest::qWait(30);
        QCOMPARE(saver.held.size(), 1U);
        hold.reset();
        QTRY_COMPARE(saver.held.size(), 0U);
        QCOMPARE(saver.inhibited, 1);
        QCOMPARE(saver.strangeCalls, 0);
    }

    void eachHoldIsItsOwn() {
        ScreenSaver saver(m_daemon->address);
        ScreenSaverKeepAwake awake(m_bus);
        auto first = awake.hold(QStringLiteral("a"));
        const auto second = awake.hold(QStringLiteral("b"));
        QTRY_COMPARE(saver.held.size(), 2U);
        first.reset();
        QTRY_COMPARE(saver.held.size(), 1U);
        QTest::qWait(30);
        QCOMPARE(saver.held.size(), 1U);
    }

    void aHoldGoneBeforeTheAnswerIsGivenBack() {
        ScreenSaver saver(m_daemon->address);
        ScreenSaverKeepAwake awake(m_bus);
        awake.hold(QStringLiteral("short")).reset();
        QTRY_COMPARE(saver.calls.size(), 2);
        QCOMPARE(saver.inhibited, 1);
        QVERIFY(saver.held.empty());
    }

    void aHoldMayOutliveItsSource() {
        ScreenSaver saver(m_daemon->address);
        auto awake = std::make_unique<ScreenSaverKeepAwake>(m_bus);
        auto hold = awake->hold(QStringLiteral("a"));
        awake.reset(); // before the answer
        QTRY_COMPARE(saver.held.size(), 1U);
        hold.reset();
        QTRY_COMPARE(saver.held.size(), 0U);
    }

    void aServiceThatComesLaterIsAsked() {
        ScreenSaverKeepAwake awake(m_bus);
        QSignalSpy changed(&awake, &KeepAwake::worksChanged);
        auto hold = awake.hold(QStringLiteral("a"));
        QTest::qWait(50);
        QVERIFY(!awake.works());
        ScreenSaver saver(m_daemon->address);
        QTRY_COMPARE(saver.held.size(), 1U);
        QVERIFY(awake.works());
        QCOMPARE(changed.count(), 1);
        hold.reset();
        QTRY_COMPARE(saver.held.size(), 0U);
    }

    void aServiceStartedAnewIsAskedAnew() {
        auto first = std::make_unique<ScreenSaver>(m_daemon->address);
        ScreenSaverKeepAwake awake(m_bus);
        auto hold = awake.hold(QStringLiteral("a"));
        QTRY_COMPARE(first->held.size(), 1U);
        first.reset(); // its connection goes, and its name with it
        QTRY_VERIFY(!awake.works());
        ScreenSaver second(m_daemon->address);
        QTRY_COMPARE(second.held.size(), 1U);
        hold.reset();
        QTRY_COMPARE(second.held.size(), 0U);
        QCOMPARE(second.inhibited, 1);
        QCOMPARE(second.strangeCalls, 0);
    }

    void aNewServiceIsNotGivenTheOldOnesCookie() {
        auto first = std::make_unique<ScreenSaver>(m_daemon->address);
        ScreenSaverKeepAwake awake(m_bus);
        auto hold = awake.hold(QStringLiteral("a"));
        QTRY_COMPARE(first->held.size(), 1U);
        QTest::qWait(20); // for the cookie to come back
        first.reset();
        ScreenSaver second(m_daemon->address);
        second.isDeaf = true;
        QTRY_COMPARE(second.calls.size(), 1);
        hold.reset(); // has no cookie of the second one yet
        QTest::qWait(50);
        QCOMPARE(second.calls.size(), 1);
        QCOMPARE(second.calls.at(0).member(), QStringLiteral("Inhibit"));
    }

    void aServiceThatNeverAnswersBlocksNothing() {
        ScreenSaver saver(m_daemon->address);
        saver.isDeaf = true;
        QElapsedTimer timer;
        timer.start();
        {
            ScreenSaverKeepAwake awake(m_bus);
            for (int i = 0; i < 20; ++i) {
                awake.hold(QStringLiteral("a")).reset();
            }
        }
        QVERIFY2(timer.elapsed() < 200, qPrintable(QString::number(timer.elapsed())));
        QTRY_COMPARE(saver.calls.size(), 20);
    }

    void missingServiceIsSilent() {
        ScreenSaverKeepAwake awake(m_bus);
        FeedbackVibration vibration(m_bus);
        const auto hold = awake.hold(QStringLiteral("a"));
        vibration.buzz(100ms);
        QTest::qWait(50);
        QVERIFY(!awake.works());
        QVERIFY(!vibration.works());
    }

    void missingBusIsSilent_data() {
        QTest::addColumn<QString>("address");
        QTest::newRow("none") << QString();
        QTest::newRow("nothing there") << QStringLiteral("unix:path=/nonexistent/bus");
        QTest::newRow("nonsense") << QStringLiteral("nonsense");
    }
    void missingBusIsSilent() {
        QFETCH(QString, address);
        QElapsedTimer timer;
        timer.start();
        const auto bus = SessionBus::openAt(address);
        QVERIFY(!bus->isConnected());
        ScreenSaverKeepAwake awake(bus);
        FeedbackVibration vibration(bus);
        auto hold = awake.hold(QStringLiteral("a"));
        QVERIFY(hold != nullptr);
        hold.reset();
        vibration.buzz(100ms);
        QTest::qWait(10);
        QVERIFY(!awake.works());
        QVERIFY(!vibration.works());
        QVERIFY2(timer.elapsed() < 500, qPrintable(QString::number(timer.elapsed())));
    }

    void aBusThatDiesUnderAHoldIsSilent() {
        ScreenSaver saver(m_daemon->address);
        ScreenSaverKeepAwake awake(m_bus);
        FeedbackVibration vibration(m_bus);
        auto hold = awake.hold(QStringLiteral("a"));
        QTRY_COMPARE(saver.held.size(), 1U);
        m_daemon->stop();
        QTRY_VERIFY(!m_bus->isConnected());
        QVERIFY(!awake.works());
        const auto another = awake.hold(QStringLiteral("b"));
        hold.reset();
        vibration.buzz(10ms);
        QTest::qWait(20);
    }

    void flagsFollowTheBusGoing() {
        ScreenSaver saver(m_daemon->address);
        ScreenSaverKeepAwake awake(m_bus);
        QTRY_VERIFY(awake.works());
        QSignalSpy changed(&awake, &KeepAwake::worksChanged);
        m_daemon->stop();
        QTRY_VERIFY(!awake.works());
        QTRY_COMPARE(changed.count(), 1);
    }

    // Source of the call: org.sigxcpu.Feedback.Haptic.xml of feedbackd, Vibrate(s app_id, a(du) pattern)
    // gives b; strength 0.0 to 1.0, length in ms.
    void aBuzzHasItsLength() {
        Service daemon(m_daemon->address, kFeedback, kFeedbackPath,
                       [](const QDBusMessage& call) { return call.createReply(true); });
        FeedbackVibration vibration(m_bus);
        QTRY_VERIFY(vibration.works());
        vibration.buzz(0ms);
        vibration.buzz(-1ms);
        vibration.buzz(40ms);
        vibration.buzz(1h);
        vibration.setOn(false);
        vibration.buzz(50ms);
        QTRY_COMPARE(daemon.calls.size(), 2);
        QTest::qWait(30);
        QCOMPARE(daemon.calls.size(), 2);
        QList<uint> lengthsMs;
        for (const QDBusMessage& call : daemon.calls) {
            QCOMPARE(call.interface(), kFeedback + QStringLiteral(".Haptic"));
            QCOMPARE(call.member(), QStringLiteral("Vibrate"));
            QCOMPARE(call.signature(), QStringLiteral("sa(du)"));
            QVERIFY(!call.arguments().at(0).toString().isEmpty());
            const auto pattern = call.arguments().at(1).value<QDBusArgument>();
            double strength = 0;
            uint lengthMs = 0;
            pattern.beginArray();
            pattern.beginStructure();
            pattern >> strength >> lengthMs;
            pattern.endStructure();
            QVERIFY(pattern.atEnd());
            pattern.endArray();
            QCOMPARE(strength, 1.0);
            lengthsMs.append(lengthMs);
        }
        QCOMPARE(lengthsMs, (QList<uint>{40, static_cast<uint>(Vibration::kLongest.count())}));
    }

    // Source of the call: org.sigxcpu.Feedback.xml of feedbackd 0.0.3 (Debian 12), TriggerFeedback(s app_id,
    // s event, a{sv} hints, i timeout) gives u; timeout -1 is "just run each feedback once".
    void anOlderDaemonGetsAnEvent() {
        Service daemon(m_daemon->address, kFeedback, kFeedbackPath, [](const QDBusMessage& call) {
            return call.interface() == kFeedback ? call.createReply(7U)
                                                 : call.createErrorReply(QDBusError::UnknownMethod,
                                                                         QStringLiteral("No such interface"));
        });
        FeedbackVibration vibration(m_bus);
        QTRY_VERIFY(vibration.works());
        vibration.buzz(20ms);
        QTRY_COMPARE(daemon.calls.size(), 2);
        vibration.buzz(300ms);
        QTRY_COMPARE(daemon.calls.size(), 3); // not asked for the impossible a second time
        for (const auto& [index, event] :
             {std::pair{1, "button-pressed"}, std::pair{2, "timeout-completed"}}) {
            const QDBusMessage& call = daemon.calls.at(index);
            QCOMPARE(call.member(), QStringLiteral("TriggerFeedback"));
            QCOMPARE(call.signature(), QStringLiteral("ssa{sv}i"));
            QCOMPARE(call.arguments().at(1).toString(), QString::fromLatin1(event));
            QCOMPARE(call.arguments().at(3).toInt(), -1);
        }
    }

    void theWholePlatformOnThisBus() {
        ScreenSaver saver(m_daemon->address);
        qputenv("DBUS_SESSION_BUS_ADDRESS", m_daemon->address.toUtf8());
        QElapsedTimer timer;
        timer.start();
        Platform platform = makePlatform();
        const qint64 madeMs = timer.elapsed();
        qunsetenv("DBUS_SESSION_BUS_ADDRESS");
        QVERIFY2(madeMs < 500, qPrintable(QString::number(madeMs)));
        QSignalSpy changed(platform.capabilities.get(), &CapabilityWatch::changed);
        QTRY_VERIFY(platform.capabilities->now().keepAwake);
        QCOMPARE(changed.count(), 1);
        QVERIFY(!platform.capabilities->now().vibration);
        QVERIFY(platform.clock && platform.random && platform.folders && platform.tones &&
                platform.volumeKeys);
        QVERIFY(platform.clock->now().bootMs > 0);
        auto hold = platform.keepAwake->hold(QStringLiteral("a"));
        QTRY_COMPARE(saver.held.size(), 1U);
        Platform moved = std::move(platform);
        moved = Platform(); // everything goes; the hold is still ours
        hold.reset();
        QTRY_COMPARE(saver.held.size(), 0U);
    }

    void aPlatformWithoutBus() {
        qunsetenv("DBUS_SESSION_BUS_ADDRESS");
        qputenv("XDG_RUNTIME_DIR", "/nonexistent");
        const Platform platform = makePlatform();
        QTest::qWait(10);
        QVERIFY(!platform.capabilities->now().keepAwake);
        QVERIFY(!platform.capabilities->now().vibration);
        const auto hold = platform.keepAwake->hold(QStringLiteral("a"));
        platform.vibration->buzz(10ms);
    }

private:
    std::unique_ptr<PrivateBus> m_daemon;
    std::shared_ptr<SessionBus> m_bus;
};

QTEST_MAIN(DeviceBus)
#include "device_bus.moc"
