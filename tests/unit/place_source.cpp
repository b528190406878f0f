// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The source itself, against made-up receivers on a TCP port and recordings on disk. No network, no
// ../shared.
#include "place/qt_position_source.h"
#include "place/scripted_position_source.h"
#include "place_server.h"

#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimeZone>

#include <random>

using namespace halfcup::place;
using namespace placetest;
using Problem = PositionSource::Problem;

namespace {

const Place kHome{50.84020, 4.34708};

QByteArray join(const QList<QByteArray>& lines) {
    QByteArray all;
    for (const QByteArray& each : lines)
        all += each;
    return all;
}

} // namespace

class PlaceSourceTest : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_dir;

    QString recording(const QByteArray& bytes, const QString& name = QStringLiteral("log.nmea")) {
        QFile file(m_dir.filePath(name));
        const bool written = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
        return written ? QStringLiteral("nmea:file:") + file.fileName() : QString();
    }

private slots:
    void initTestCase() {
        // Qt Positioning hides its real plugins from whatever runs under Qt Test.
        qunsetenv("QT_QTESTLIB_RUNNING");
    }

    void receiversOfEveryKindGiveAStamp_data() {
        QTest::addColumn<QByteArray>("talker");
        QTest::addColumn<QString>("sentences");
        QTest::addColumn<double>("lat");
        QTest::addColumn<double>("lon");
        QTest::addColumn<bool>("time");
        QTest::addColumn<QByteArray>("date");
        QTest::addColumn<int>("firstSecond");
        auto row = [](const char* name, const char* talker, const char* sentences, Place at = kHome,
                      bool time = true, const char* date = "110626", int first = 40'000) {
            QTest::newRow(name) << QByteArray(talker) << QString::fromUtf8(sentences) << at.latitudeDeg
                                << at.longitudeDeg << time << QByteArray(date) << first;
        };
        row("GP, GGA and RMC", "GP", "GGA RMC");
        row("GN, all of them", "GN", "GGA RMC GLL GSA");
        row("GL, RMC alone", "GL", "RMC");
        row("GA, GLL alone", "GA", "GLL");
        row("BD, GGA alone, so no date", "BD", "GGA");
        row("GP, GGA and GSA", "GP", "GGA GSA");
        row("IN, an integrated instrument", "IN", "GGA RMC");
        row("south west", "GP", "GGA RMC", {-33.45, -70.66});
        row("on the antimeridian", "GP", "GGA", {-16.5, 179.999999});
        row("on the first meridian", "GP", "RMC", {51.4779, 0.0000001});
        row("no time at all", "GP", "GGA", kHome, false);
        row("over midnight, with date", "GP", "GGA RMC", kHome, true, "110626", 86'390);
        row("over midnight, without date", "GP", "GGA", kHome, true, "", 86'390);
        row("RMC with an empty date", "GP", "RMC", kHome, true, "");
        row("a date of long ago", "GP", "GGA RMC", kHome, true, "060180");
        row("a date that does not exist", "GP", "GGA RMC", kHome, true, "320199");
    }
    void receiversOfEveryKindGiveAStamp() {
        QFETCH(QByteArray, talker);
        QFETCH(QString, sentences);
        QFETCH(double, lat);
        QFETCH(double, lon);
        QFETCH(bool, time);
        QFETCH(QByteArray, date);
        QFETCH(int, firstSecond);
        Talk how;
        how.talker = talker;
        how.gga = sentences.contains(u"GGA");
        how.rmc = sentences.contains(u"RMC");
        how.gll = sentences.contains(u"GLL");
        how.gsa = sentences.contains(u"GSA");
        how.time = time;
        how.date = date;
        NmeaServer server(talkStill({lat, lon}, 24, firstSecond, how), 2);
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 24, 5000);
        const auto stamp = heard.stamp();
        QVERIFY(stamp);
        QVERIFY2(offM(*stamp, {lat, lon}) < 0.5, qPrintable(QString::number(offM(*stamp, {lat, lon}))));
        QVERIFY(!stamp->moving);
        QCOMPARE(QString::fromStdString(stamp->source), server.setting());
        QVERIFY(stamp->ageMs < 10'000); // however old the receiver's own date is
        QVERIFY(heard.problems.isEmpty());
    }

    void accuracyFollowsTheDilution() {
        for (const double hdop : {0.8, 1.0, 7.2}) {
            Talk how;
            how.hdop = hdop;
            NmeaServer server(talkStill(kHome, 4, 100, how));
            QVERIFY(server.listen());
            QtPositionSource source(server.setting());
            Listener heard(source);
            source.start();
            QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 4, 5000);
            // 2 * HDOP * range error, what Qt documents; 4.9 m at HDOP 1 is handbook section 9.
            QVERIFY(heard.fixes.last().accuracyM);
            QVERIFY2(std::abs(*heard.fixes.last().accuracyM - 4.9 * hdop) < 1e-3,
                     qPrintable(QString::number(hdop)));
        }
    }

    void unknownDilutionIsUnknownAccuracy() {
        for (const double hdop : {-1.0, 0.0}) {
            Talk how;
            how.hdop = hdop;
            NmeaServer server(talkStill(kHome, 4, 100, how));
            QVERIFY(server.listen());
            QtPositionSource source(server.setting());
            Listener heard(source);
            source.start();
            QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 4, 5000);
            QVERIFY(!heard.fixes.last().accuracyM);
        }
    }

    void theReceiversOwnTimeIsKept() {
        NmeaServer server(talkStill(kHome, 3, 45'319));
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 3, 5000);
        // 11 June 2026, 12:35:19 to :21 UTC.
        const QDateTime first(QDate(2026, 6, 11), QTime(12, 35, 19), QTimeZone::utc());
        for (int i = 0; i < 3; ++i)
            QCOMPARE(heard.fixes[i].receiverUtcMs,
                     std::optional<std::int64_t>(first.addSecs(i).toMSecsSinceEpoch()));
    }

    void aReceiverThatSaysNoFixGivesNone() {
        // It goes on printing its last place, and GSA with mode 1, which Qt by itself takes for a fix.
        Talk how;
        how.gll = how.gsa = true;
        how.valid = false;
        NmeaServer server(talkStill(kHome, 30, 100, how));
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        source.setPatienceMs(300);
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::NoFixYet), 5000);
        QVERIFY(heard.fixes.isEmpty());
        QVERIFY(!heard.stamp());
        QVERIFY2(heard.sentences.last().contains(QStringLiteral("sky")), qPrintable(heard.sentences.last()));
    }

    void aClockThatStepsBackLosesNothing() {
        NmeaServer server(talkStill(kHome, 5, 50'000) + talkStill(kHome, 5, 49'000) +
                          talkStill(kHome, 5, 100));
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 15, 5000);
    }

    void aDroppedConnectionIsTakenUpAgain() {
        NmeaServer server(talkStill(kHome, 40, 100), 2);
        server.dropAfter(21); // in the middle of a second
        server.goOnWhereDropped();
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Closed), 5000);
        const auto before = heard.fixes.size();
        QVERIFY(before >= 9);
        QTRY_VERIFY_WITH_TIMEOUT(heard.fixes.size() >= before + 25, 5000);
        QCOMPARE(server.connections(), 2);
        QVERIFY(source.isRunning());
        QVERIFY(offM(*heard.stamp(), kHome) < 0.5);
        QVERIFY2(heard.sentences.first().contains(QStringLiteral("closed the connection")),
                 qPrintable(heard.sentences.first()));
    }

    void aReceiverThatComesLateIsFound() {
        quint16 port = 0;
        {
            QTcpServer probe;
            QVERIFY(probe.listen(QHostAddress::LocalHost));
            port = probe.serverPort();
        }
        QtPositionSource source(QStringLiteral("nmea:tcp://127.0.0.1:%1").arg(port));
        Listener heard(source);
        source.start();
        QVERIFY(heard.problems.isEmpty()); // never from within start()
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Closed), 5000);
        QVERIFY2(heard.sentences.first().contains(QStringLiteral("127.0.0.1:%1").arg(port)),
                 qPrintable(heard.sentences.first()));
        QTest::qWait(1200);                 // more than one try
        QCOMPARE(heard.problems.size(), 1); // told once
        NmeaServer server(talkStill(kHome, 10, 100));
        QVERIFY(server.listen(port));
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 10, 8000);
    }

    void stoppedMeansDisconnectedAndSilent() {
        NmeaServer server(talkStill(kHome, 2000, 100), 2);
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        QSignalSpy running(&source, &PositionSource::runningChanged);
        QTest::qWait(100);
        QCOMPARE(server.connections(), 0); // nothing before start()
        source.start();
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.fixes.size() >= 5, 5000);
        source.stop();
        source.stop();
        const auto count = heard.fixes.size();
        QTRY_COMPARE_WITH_TIMEOUT(server.connectedNow(), 0, 5000);
        QTest::qWait(700); // longer than a retry
        QCOMPARE(heard.fixes.size(), count);
        QCOMPARE(server.connections(), 1);
        QCOMPARE(running.size(), 2);
        QVERIFY(!source.isRunning());
        source.start(); // and once more
        QTRY_VERIFY_WITH_TIMEOUT(heard.fixes.size() >= count + 5, 5000);
        QVERIFY(heard.problems.isEmpty());
    }

    void stoppingFromWithinAFixIsSafe() {
        // What the wash does when its stamp is good enough.
        NmeaServer server({join(talkStill(kHome, 200, 100))});
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        int fixes = 0;
        connect(&source, &PositionSource::fixReceived, this, [&] {
            if (++fixes == 3)
                source.stop();
        });
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(!source.isRunning(), 5000);
        QTest::qWait(200);
        QCOMPARE(fixes, 3);
    }

    void deletedWhileRunning() {
        NmeaServer server(talkStill(kHome, 200, 100), 1);
        QVERIFY(server.listen());
        for (const int waitMs : {0, 5, 50}) {
            auto source = std::make_unique<QtPositionSource>(server.setting());
            source->start();
            QTest::qWait(waitMs);
            source.reset();
        }
        QTRY_COMPARE_WITH_TIMEOUT(server.connectedNow(), 0, 5000);
    }

    void gpsdIsAskedFirst() {
        NmeaServer server(talkStill(kHome, 10, 100));
        const QByteArray watch = "?WATCH={\"enable\":true,\"nmea\":true}";
        server.waitFor(watch);
        QVERIFY(server.listen());
        QtPositionSource source(QStringLiteral("gpsd://127.0.0.1:%1").arg(server.port()));
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 10, 5000);
        QCOMPARE(server.heard(), watch + ";\n");
    }

    void noiseNeverStopsIt() {
        std::mt19937_64 chance(4);
        QList<QByteArray> lines;
        const QList<QByteArray> good = talkStill(kHome, 60, 100);
        for (const QByteArray& each : good) {
            QByteArray noise(static_cast<qsizetype>(chance() % 300), '\0');
            for (char& c : noise)
                c = static_cast<char>(chance());
            QByteArray damaged = each;
            damaged[static_cast<qsizetype>(chance() % static_cast<std::size_t>(damaged.size()))] =
                static_cast<char>(chance());
            lines << noise
                  << each.left(static_cast<qsizetype>(chance() % static_cast<std::size_t>(each.size())))
                  << damaged << "\r\n"
                  << each;
        }
        lines.prepend(QByteArray(3 << 20, '$'));
        lines.append(QByteArray(3 << 20, 'x'));
        lines.append("\r\n");
        lines.append(talk(kHome, 400));
        NmeaServer server(lines);
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 61, 20'000);
        QVERIFY(offM(*heard.stamp(), kHome) < 0.5);
    }

    void silentSettingsTellWhy() {
        for (const auto& [text, kind] :
             {std::pair("none", Problem::NoSource), std::pair("nmea:tcp://host", Problem::BadSetting),
              std::pair("what?", Problem::BadSetting)}) {
            QtPositionSource source(QString::fromUtf8(text));
            Listener heard(source);
            source.start();
            QVERIFY(heard.problems.isEmpty());
            QTRY_COMPARE_WITH_TIMEOUT(heard.problems.size(), 1, 5000);
            QCOMPARE(heard.problems.first(), kind);
            QVERIFY(heard.sentences.first().endsWith(u'.'));
            QVERIFY(source.isRunning());
            source.stop();
        }
    }

    void thePlatformsOwnSourceNeverCrashes() {
        // Without a message bus the platform has no position service; with one it may have. Either way no
        // crash, and without any fix a sentence.
        QtPositionSource source{QString()};
        source.setPatienceMs(500);
        QCOMPARE(source.name(), QStringLiteral("default"));
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(!heard.problems.isEmpty() || !heard.fixes.isEmpty(), 40'000);
        source.stop();
    }

    // ---- recordings

    void aRecordingIsPlayedInItsOwnTime() {
        QtPositionSource source(recording(join(talkStill(kHome, 4, 100))));
        Listener heard(source);
        QElapsedTimer clock;
        source.start();
        clock.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Ended), 8000);
        QCOMPARE(heard.fixes.size(), 4);
        QVERIFY2(clock.elapsed() > 2500 && clock.elapsed() < 5000,
                 qPrintable(QString::number(clock.elapsed())));
        QVERIFY(source.isRunning());
    }

    void aRecordingIsPlayedFastAndAgain() {
        QByteArray bytes = join(talkStill(kHome, 300, 86'200)); // over midnight
        bytes.chop(2);                                          // the last line has no end
        QtPositionSource source(recording(bytes));
        source.setPace(QtPositionSource::Pace::Fast);
        for (int round = 0; round < 2; ++round) {
            Listener heard(source);
            source.start();
            QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Ended), 8000);
            QCOMPARE(heard.fixes.size(), 300);
            QCOMPARE(heard.problems.size(), 1);
            source.stop();
        }
    }

    void aMissingRecordingIsLookedForAgain() {
        QtPositionSource source(QStringLiteral("nmea:file:") + m_dir.filePath(QStringLiteral("late.nmea")));
        source.setPace(QtPositionSource::Pace::Fast);
        Listener heard(source);
        source.start();
        QTRY_COMPARE_WITH_TIMEOUT(heard.problems.size(), 1, 5000);
        QCOMPARE(heard.problems.first(), Problem::NoSource);
        QVERIFY2(heard.sentences.first().contains(QStringLiteral("late.nmea")),
                 qPrintable(heard.sentences.first()));
        recording(join(talkStill(kHome, 5, 100)), QStringLiteral("late.nmea"));
        QTRY_COMPARE_WITH_TIMEOUT(heard.fixes.size(), 5, 8000);
    }

    void whatIsNoRecordingIsToldAndHangsNothing() {
        const QString pipe = m_dir.filePath(QStringLiteral("pipe"));
        QCOMPARE(QProcess::execute(QStringLiteral("mkfifo"), {pipe}), 0);
        for (const QString& path : {pipe, m_dir.path(), QStringLiteral("/dev/zero")}) {
            QtPositionSource source(QStringLiteral("nmea:file:") + path);
            Listener heard(source);
            source.start();
            QTRY_COMPARE_WITH_TIMEOUT(heard.problems.size(), 1, 5000);
            QVERIFY2(heard.sentences.first().contains(path), qPrintable(heard.sentences.first()));
        }
        QtPositionSource empty(recording({}));
        Listener heard(empty);
        empty.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Ended), 5000);
        QVERIFY(!heard.stamp());
    }

    // ---- the scripted one

    void scriptedSourceKeepsThePromises() {
        ScriptedPositionSource source;
        Listener heard(source);
        Fix fix;
        fix.latitudeDeg = 50;
        fix.longitudeDeg = 4;
        fix.takenAtUtcMs = QDateTime::currentMSecsSinceEpoch();
        QVERIFY(!source.emitFix(fix));
        QVERIFY(!source.emitProblem(Problem::Denied, QStringLiteral("No.")));
        source.setFixesOnStart({fix, fix, fix});
        source.start();
        QVERIFY(heard.fixes.isEmpty());
        QTRY_COMPARE(heard.fixes.size(), 3);
        QVERIFY(source.emitFix(fix));
        QVERIFY(source.emitProblem(Problem::Closed, QStringLiteral("Gone.")));
        QCOMPARE(heard.sentences, QStringList{QStringLiteral("Gone.")});
        source.stop();
        source.start();
        source.stop(); // before the loop: what was queued is dropped
        QTest::qWait(20);
        QCOMPARE(heard.fixes.size(), 4);
        QCOMPARE(source.starts(), 2);
        QCOMPARE(source.stops(), 2);
        source.setProblemOnStart(Problem::Denied, QStringLiteral("Not allowed."));
        source.start();
        QTRY_VERIFY(heard.told(Problem::Denied));
        QCOMPARE(heard.fixes.size(), 4);
    }
};

QTEST_GUILESS_MAIN(PlaceSourceTest)
#include "place_source.moc"
