// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Real lines: a pseudo terminal as a serial receiver, and the real gpsd fed by gpsfake, both on this machine
// only.
#include "place/qt_position_source.h"
#include "place_server.h"

#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <cstdlib>
#include <fcntl.h>
#include <unistd.h>

using namespace halfcup::place;
using namespace placetest;
using Problem = PositionSource::Problem;

namespace {

const Place kHome{50.84020, 4.34708};

// The receiver's end of a serial line.
class Receiver {
public:
    Receiver() {
        m_fd = posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK);
        if (m_fd >= 0 && (grantpt(m_fd) != 0 || unlockpt(m_fd) != 0))
            unplug();
    }
    ~Receiver() { unplug(); }
    Receiver(const Receiver&) = delete;
    Receiver& operator=(const Receiver&) = delete;

    [[nodiscard]] bool works() const { return m_fd >= 0; }
    [[nodiscard]] QString path() const { return QString::fromLocal8Bit(ptsname(m_fd)); }
    void say(const QByteArray& bytes) const {
        (void)!write(m_fd, bytes.constData(), static_cast<std::size_t>(bytes.size()));
    }
    void unplug() {
        if (m_fd >= 0)
            close(m_fd);
        m_fd = -1;
    }

private:
    int m_fd = -1;
};

} // namespace

class PlaceLinesTest : public QObject {
    Q_OBJECT

private slots:
    void aSerialReceiverIsHeardAndMissedWhenPulled() {
        Receiver receiver;
        if (!receiver.works())
            QSKIP("This machine gives no pseudo terminal, so there is no serial line to try.");
        QtPositionSource source(QStringLiteral("nmea:serial:%1?baud=9600").arg(receiver.path()));
        Listener heard(source);
        source.start();
        QTest::qWait(300);
        if (heard.told(Problem::NoSource) && heard.sentences.first().contains(QStringLiteral("build")))
            QSKIP("Built without Qt's serial port module.");
        const QList<QByteArray> lines = talkStill(kHome, 12, 100);
        for (const QByteArray& each : lines) {
            receiver.say(each);
            QTest::qWait(5);
        }
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 12, 5000);
        QVERIFY(offM(*heard.stamp(), kHome) < 0.5);
        QVERIFY(heard.problems.isEmpty());
        receiver.unplug();
        QTRY_VERIFY_WITH_TIMEOUT(!heard.problems.isEmpty(), 5000);
        QVERIFY(source.isRunning());
        source.stop();
    }

    void theSpeedIsFoundByListening() {
        Receiver receiver;
        if (!receiver.works())
            QSKIP("This machine gives no pseudo terminal, so there is no serial line to try.");
        QtPositionSource source(QStringLiteral("nmea:serial:") + receiver.path());
        Listener heard(source);
        source.start();
        QTest::qWait(300);
        if (heard.told(Problem::NoSource))
            QSKIP("Built without Qt's serial port module.");
        receiver.say("\x81\xfe\x03 not a sentence");
        QTest::qWait(3500); // one change of speed
        for (const QByteArray& each : talkStill(kHome, 5, 100)) {
            receiver.say(each);
            QTest::qWait(5);
        }
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 5, 5000);
    }

    void aMissingSerialLineIsTold() {
        QtPositionSource source(QStringLiteral("nmea:serial:/dev/no-such-receiver"));
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.problems.size(), 1, 5000);
        QCOMPARE(heard.problems.first(), Problem::NoSource);
        QVERIFY(heard.sentences.first().endsWith(u'.'));
    }

    void theRealGpsd() {
        const QString gpsfake = QStandardPaths::findExecutable(QStringLiteral("gpsfake"));
        const QString gpsd = QStandardPaths::findExecutable(
            QStringLiteral("gpsd"), {QStringLiteral("/usr/sbin"), QStringLiteral("/usr/local/sbin")});
        if (gpsfake.isEmpty() || gpsd.isEmpty())
            QSKIP("gpsd and gpsfake are not installed (packages gpsd and gpsd-clients).");
        QTemporaryDir dir;
        QFile log(dir.filePath(QStringLiteral("still.nmea")));
        QVERIFY(log.open(QIODevice::WriteOnly));
        Talk how;
        how.gsa = true;
        for (const QByteArray& each : talkStill(kHome, 300, 40'000, how))
            log.write(each);
        log.close();

        quint16 port = 0;
        {
            QTcpServer probe;
            QVERIFY(probe.listen(QHostAddress::LocalHost));
            port = probe.serverPort();
        }
        // The source first: the daemon is found when it comes.
        QtPositionSource source(QStringLiteral("gpsd://127.0.0.1:%1").arg(port));
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Closed), 5000);

        QProcess daemon;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("PATH"),
                           environment.value(QStringLiteral("PATH")) + QStringLiteral(":/usr/sbin"));
        environment.insert(QStringLiteral("TMPDIR"), dir.path());
        daemon.setProcessEnvironment(environment);
        daemon.setProcessChannelMode(QProcess::MergedChannels);
        // Round and round, a sentence every 10 ms; ends itself after 40 s should this test die.
        daemon.start(gpsfake, {QStringLiteral("-q"), QStringLiteral("-n"), QStringLiteral("-c"),
                               QStringLiteral("0.01"), QStringLiteral("-W"), QStringLiteral("40"),
                               QStringLiteral("-P"), QString::number(port), log.fileName()});
        QVERIFY(daemon.waitForStarted(5000));
        bool came = false;
        for (int i = 0; i < 250 && !came; ++i) {
            QTest::qWait(100);
            came = heard.fixes.size() >= 10;
        }
        const bool died = daemon.state() == QProcess::NotRunning;
        daemon.terminate();
        if (!daemon.waitForFinished(5000)) {
            daemon.kill();
            daemon.waitForFinished(5000);
        }
        const QByteArray said = daemon.readAll();
        if (!came && died)
            QSKIP(
                qPrintable(QStringLiteral("gpsfake cannot run here: ") + QString::fromUtf8(said.right(300))));
        QVERIFY2(came, said.constData());
        QVERIFY2(offM(*heard.stamp(), kHome) < 1.0, qPrintable(QString::number(offM(*heard.stamp(), kHome))));
        // And when the daemon goes, that is told, and nothing else happens.
        QTRY_COMPARE_WITH_TIMEOUT(heard.problems.last(), Problem::Closed, 5000);
        QVERIFY(source.isRunning());
    }
};

QTEST_GUILESS_MAIN(PlaceLinesTest)
#include "place_lines.moc"
