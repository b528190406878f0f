// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/fake/set_clock.h"
#include "device/linux/boot_clock.h"
#include "device/shifted_clock.h"

#include <QDateTime>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTest>
#include <QTimeZone>

#include <cmath>
#include <ctime>
#include <limits>
#include <stdexcept>

using namespace halfcup::device;

class DeviceClock : public QObject {
    Q_OBJECT
private slots:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral(".*"))); }

    void realClocksMoveTogether() {
        const BootClock clock;
        const ClockReading a = clock.now();
        QTest::qSleep(60);
        const ClockReading b = clock.now();
        QVERIFY2(b.bootMs - a.bootMs >= 60, "a sleep of 60 ms must be seen on the boot-time clock");
        QVERIFY(b.bootMs - a.bootMs < 10'000);
        QVERIFY(b.monotonicMs - a.monotonicMs >= 60);
        QVERIFY(b.utcMs - a.utcMs >= 50); // the wall clock may be slewed meanwhile
        QCOMPARE(b.bootId, a.bootId);
    }

    void realReadingsNeverGoBackAndAreTakenTogether() {
        const BootClock clock;
        ClockReading last = clock.now();
        const std::int64_t slept = last.bootMs - last.monotonicMs;
        for (int i = 0; i < 20'000; ++i) {
            const ClockReading reading = clock.now();
            QVERIFY(reading.bootMs >= last.bootMs);
            QVERIFY(reading.monotonicMs >= last.monotonicMs);
            QVERIFY(std::abs(reading.bootMs - reading.monotonicMs - slept) <= 2);
            last = reading;
        }
    }

    // Source: proc(5), "uptime: the uptime of the system, including time spent in suspend", in seconds.
    void bootTimeAgreesWithUptime() {
        QFile mounts(QStringLiteral("/proc/mounts"));
        if (mounts.open(QIODevice::ReadOnly) && mounts.readAll().contains(" /proc/uptime ")) {
            QSKIP("/proc/uptime is not the kernel's own here (a container puts another over it).");
        }
        QFile file(QStringLiteral("/proc/uptime"));
        if (!file.open(QIODevice::ReadOnly)) {
            QSKIP("There is no /proc/uptime here.");
        }
        const double uptimeS = file.readAll().split(' ').value(0).toDouble();
        QVERIFY(uptimeS > 0);
        QVERIFY(std::abs(static_cast<double>(BootClock().now().bootMs) / 1000.0 - uptimeS) < 2.0);
    }

    // Source: date(1), another program reading the same wall clock.
    void wallTimeAgreesWithDate() {
        QProcess date;
        const std::int64_t before = BootClock().now().utcMs;
        date.start(QStringLiteral("date"), {QStringLiteral("-u"), QStringLiteral("+%s%3N")});
        QVERIFY(date.waitForFinished());
        const std::int64_t after = BootClock().now().utcMs;
        const qint64 said = date.readAllStandardOutput().trimmed().toLongLong();
        QVERIFY(before <= said && said <= after);
    }

    void bootIdIsTheKernels() {
        QFile file(QStringLiteral("/proc/sys/kernel/random/boot_id"));
        if (!file.open(QIODevice::ReadOnly)) {
            QCOMPARE(BootClock().now().bootId, std::string());
            return;
        }
        const QString id = QString::fromLatin1(file.readAll().trimmed());
        QCOMPARE(QString::fromStdString(BootClock().now().bootId), id);
        // Source: random(4), a random string in the form of a UUID.
        QVERIFY(QRegularExpression(QStringLiteral("^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$"))
                    .match(id)
                    .hasMatch());
    }

    // Source: IANA time zone database, as read by Qt's own reader (the clock goes by the C library's), and
    // for the turn of 2026 in the European Union directive 2000/84/EC: last Sunday of March, 01:00 UTC.
    void offsetsFollowTheZone_data() {
        QTest::addColumn<QByteArray>("zone");
        QTest::addColumn<QString>("utc");
        QTest::addColumn<int>("minutes");
        const auto row = [](const char* zone, const char* utc, int minutes) {
            QTest::addRow("%s %s", zone, utc) << QByteArray(zone) << QString::fromLatin1(utc) << minutes;
        };
        row("UTC", "2026-07-15T12:00:00.000Z", 0);
        row("Europe/Berlin", "2026-01-15T12:00:00.000Z", 60);
        row("Europe/Berlin", "2026-03-29T00:59:59.999Z", 60);
        row("Europe/Berlin", "2026-03-29T01:00:00.000Z", 120);
        row("America/St_Johns", "2026-07-15T12:00:00.000Z", -150);
        row("Pacific/Auckland", "2026-01-15T12:00:00.000Z", 780);
    }
    void offsetsFollowTheZone() {
        QFETCH(QByteArray, zone);
        QFETCH(QString, utc);
        QFETCH(int, minutes);
        if (zone != "UTC" &&
            !QFile::exists(QStringLiteral("/usr/share/zoneinfo/") + QString::fromLatin1(zone))) {
            QSKIP("The time zone database is not installed here (package tzdata).");
        }
        const QByteArray before = qgetenv("TZ");
        qputenv("TZ", zone);
        tzset();
        const QDateTime moment = QDateTime::fromString(utc, Qt::ISODateWithMs);
        const int found = BootClock().utcOffsetMinutes(moment.toMSecsSinceEpoch());
        qputenv("TZ", before);
        tzset();
        QCOMPARE(found, minutes);
        QCOMPARE(found, QTimeZone(zone).offsetFromUtc(moment) / 60);
    }

    void offsetOfAnImpossibleMomentIsNone() {
        QCOMPARE(BootClock().utcOffsetMinutes(std::numeric_limits<std::int64_t>::max()), 0);
        QCOMPARE(BootClock().utcOffsetMinutes(std::numeric_limits<std::int64_t>::min()), 0);
    }

    void setClockStandsStill() {
        const SetClock clock;
        const ClockReading a = clock.now();
        QTest::qSleep(20);
        const ClockReading b = clock.now();
        QCOMPARE(b.bootMs, a.bootMs);
        QCOMPARE(b.utcMs, a.utcMs);
        QCOMPARE(a.utcMs, SetClock::kStartUtcMs);
        // Source: date -u -d @1781514000
        QCOMPARE(QDateTime::fromMSecsSinceEpoch(a.utcMs).toUTC().toString(Qt::ISODate),
                 QStringLiteral("2026-06-15T09:00:00Z"));
        QVERIFY2(a.bootMs != a.monotonicMs, "the two must be told apart from the start");
    }

    void setClockLaws() {
        SetClock clock;
        const ClockReading a = clock.now();

        clock.advance(1500);
        const ClockReading b = clock.now();
        QCOMPARE(b.bootMs - a.bootMs, 1500);
        QCOMPARE(b.monotonicMs - a.monotonicMs, 1500);
        QCOMPARE(b.utcMs - a.utcMs, 1500);
        QCOMPARE(b.bootId, a.bootId);

        clock.suspend(std::chrono::minutes(3));
        const ClockReading c = clock.now();
        QCOMPARE(c.bootMs - b.bootMs, 180'000);
        QCOMPARE(c.monotonicMs, b.monotonicMs);
        QCOMPARE(c.utcMs - b.utcMs, 180'000);
        QCOMPARE(c.bootId, a.bootId);

        clock.setUtc(42);
        const ClockReading d = clock.now();
        QCOMPARE(d.utcMs, 42);
        QCOMPARE(d.bootMs, c.bootMs);
        QCOMPARE(d.monotonicMs, c.monotonicMs);

        clock.reboot(5000);
        const ClockReading e = clock.now();
        QCOMPARE(e.bootMs, 0);
        QCOMPARE(e.monotonicMs, 0);
        QCOMPARE(e.utcMs, 5042);
        QVERIFY(e.bootId != a.bootId);
        clock.reboot();
        QVERIFY(clock.now().bootId != e.bootId);
        QVERIFY(clock.now().bootId != a.bootId);
    }

    void setClockRefusesToGoBack() {
        SetClock clock;
        QVERIFY_EXCEPTION_THROWN(clock.advance(-1), std::invalid_argument);
        QVERIFY_EXCEPTION_THROWN(clock.suspend(-1), std::invalid_argument);
        QVERIFY_EXCEPTION_THROWN(clock.reboot(-1), std::invalid_argument);
        QVERIFY_EXCEPTION_THROWN(clock.setSpeed(-1), std::invalid_argument);
        QVERIFY_EXCEPTION_THROWN(clock.setSpeed(std::numeric_limits<double>::quiet_NaN()),
                                 std::invalid_argument);
        QCOMPARE(clock.now().utcMs, SetClock::kStartUtcMs);
    }

    void setClockRunsAtItsSpeed() {
        SetClock clock;
        clock.setSpeed(1000);
        const auto realStart = std::chrono::steady_clock::now();
        const ClockReading a = clock.now();
        QTest::qSleep(50);
        const ClockReading b = clock.now();
        const std::chrono::duration<double, std::milli> real = std::chrono::steady_clock::now() - realStart;
        QVERIFY(b.bootMs - a.bootMs >= 50'000);
        QVERIFY(static_cast<double>(b.bootMs - a.bootMs) <= real.count() * 1000 + 1);
        QCOMPARE(b.utcMs - a.utcMs, b.bootMs - a.bootMs);
        clock.setSpeed(0);
        const ClockReading c = clock.now();
        QVERIFY2(c.bootMs >= b.bootMs, "stopping must not take back what ran");
        QTest::qSleep(10);
        QCOMPARE(clock.now().bootMs, c.bootMs);
        clock.advance(7);
        QCOMPARE(clock.now().bootMs, c.bootMs + 7);
    }

    void setClockOffsets() {
        SetClock clock(0, 60);
        QCOMPARE(clock.utcOffsetMinutes(-1), 60);
        clock.setOffsetFrom(1000, 120);
        clock.setOffsetFrom(2000, 60);
        QCOMPARE(clock.utcOffsetMinutes(999), 60);
        QCOMPARE(clock.utcOffsetMinutes(1000), 120);
        QCOMPARE(clock.utcOffsetMinutes(1999), 120);
        QCOMPARE(clock.utcOffsetMinutes(2000), 60);
        clock.setOffset(-30);
        QCOMPARE(clock.utcOffsetMinutes(0), -30);
    }

    void shiftedClockMovesOnlyTheDate() {
        auto owned = std::make_unique<SetClock>(1'000'000, 60);
        SetClock& real = *owned;
        real.setOffsetFrom(5'000'000, 120);
        const ShiftedClock clock(std::move(owned), 9'000'000);
        QCOMPARE(clock.now().utcMs, 9'000'000);
        QCOMPARE(clock.now().bootMs, real.now().bootMs);
        QCOMPARE(clock.now().monotonicMs, real.now().monotonicMs);
        QCOMPARE(clock.now().bootId, real.now().bootId);
        QCOMPARE(clock.utcOffsetMinutes(9'000'000), 120);
        QCOMPARE(clock.utcOffsetMinutes(1'000'000), 60);
        real.suspend(500);
        QCOMPARE(clock.now().utcMs, 9'000'500);
        real.setUtc(0);
        QCOMPARE(clock.now().utcMs, 8'000'000);
    }

    void shiftedClockRuns() {
        const ShiftedClock clock(std::make_unique<BootClock>(), SetClock::kStartUtcMs);
        const std::int64_t a = clock.now().utcMs;
        QVERIFY(a - SetClock::kStartUtcMs >= 0 && a - SetClock::kStartUtcMs < 5000);
        QTest::qSleep(30);
        QVERIFY(clock.now().utcMs - a >= 25);
    }
};

QTEST_GUILESS_MAIN(DeviceClock)
#include "device_clock.moc"
