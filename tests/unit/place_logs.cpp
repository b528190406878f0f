// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Logs of real receivers (from the regression logs of the GPSD project), served over TCP through Qt's NMEA
// code, up to the yard. Whatever logs lie in the folder are played: "still" ones must find their place, no
// other may do harm.
#include "place/qt_position_source.h"
#include "place/yards.h"
#include "place_server.h"

#include <QDir>
#include <QGeoPositionInfoSource>
#include <QTest>

using namespace halfcup::place;
using namespace placetest;
using Problem = PositionSource::Problem;

namespace {

QList<QByteArray> linesOf(const QString& path) {
    QFile file(path);
    QList<QByteArray> lines;
    if (file.open(QIODevice::ReadOnly)) {
        while (!file.atEnd())
            lines << file.readLine();
    }
    return lines;
}

// Degrees from "4404.13387", read by its digits, not by the code under test.
double degrees(const QByteArray& field) {
    const auto point = field.indexOf('.');
    const QByteArray minutes = field.mid((point < 0 ? field.size() : point) - 2);
    return field.left(field.size() - minutes.size()).toDouble() + minutes.toDouble() / 60.0;
}

struct LogMean {
    Place place;
    int fixes = 0;
};

// Mean of the GGA fixes with quality above 0; logs here keep away from the antimeridian.
LogMean meanOf(const QList<QByteArray>& lines) {
    LogMean mean;
    for (const QByteArray& each : lines) {
        const QList<QByteArray> fields = each.split(',');
        if (fields.size() < 10 || !fields[0].endsWith("GGA") || fields[6].toInt() < 1 || fields[2].isEmpty())
            continue;
        mean.place.latitudeDeg += degrees(fields[2]) * (fields[3] == "S" ? -1 : 1);
        mean.place.longitudeDeg += degrees(fields[4]) * (fields[5] == "W" ? -1 : 1);
        ++mean.fixes;
    }
    mean.place.latitudeDeg /= std::max(mean.fixes, 1);
    mean.place.longitudeDeg /= std::max(mean.fixes, 1);
    return mean;
}

} // namespace

class PlaceLogsTest : public QObject {
    Q_OBJECT

private:
    const QDir m_logs{QStringLiteral(HALFCUP_SHARED_DIR "/nmea")};

    void rowPerLog(const QString& pattern) {
        QTest::addColumn<QString>("path");
        for (const QString& name : m_logs.entryList({pattern}, QDir::Files, QDir::Name))
            QTest::newRow(qPrintable(name)) << m_logs.filePath(name);
    }

private slots:
    void initTestCase() {
        // Qt Positioning hides its real plugins from whatever runs under Qt Test.
        qunsetenv("QT_QTESTLIB_RUNNING");
        if (m_logs.entryList({QStringLiteral("*.nmea")}, QDir::Files).isEmpty())
            QSKIP("No recorded logs beside the checkout (../shared/nmea): nothing to play.");
    }

    void theTableOfTheLogsHolds_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<int>("fixes");
        QTest::addColumn<double>("lat");
        QTest::addColumn<double>("lon");
        // README.md beside the logs.
        QTest::newRow("187") << QStringLiteral("still-187-fixes.nmea") << 187 << 50.84020 << 4.34708;
        QTest::newRow("72") << QStringLiteral("still-72-fixes.nmea") << 72 << 44.06898 << -121.31433;
        QTest::newRow("40") << QStringLiteral("still-40-fixes.nmea") << 40 << 50.00233 << 8.64389;
        QTest::newRow("27") << QStringLiteral("still-27-fixes.nmea") << 27 << 53.93691 << 27.58099;
    }
    void theTableOfTheLogsHolds() {
        QFETCH(QString, name);
        QFETCH(int, fixes);
        QFETCH(double, lat);
        QFETCH(double, lon);
        const LogMean mean = meanOf(linesOf(m_logs.filePath(name)));
        QCOMPARE(mean.fixes, fixes);
        QVERIFY(distanceM(mean.place, {lat, lon}) < 1.0);
    }

    void aStillLogFindsItsPlaceAndYard_data() { rowPerLog(QStringLiteral("still-*.nmea")); }
    void aStillLogFindsItsPlaceAndYard() {
        QFETCH(QString, path);
        const QList<QByteArray> lines = linesOf(path);
        const LogMean mean = meanOf(lines);
        QVERIFY(mean.fixes > 0);
        NmeaServer server(lines, 2);
        server.linesAtOnce(6);
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        // The wash stops as soon as the stamp is good enough; look at it there and at the end of the log.
        std::optional<Stamp> early;
        connect(&source, &PositionSource::fixReceived, this, [&] {
            const auto now = QDateTime::currentMSecsSinceEpoch();
            if (!early && (heard.builder.progress(now) != StampBuilder::Progress::Collecting ||
                           heard.fixes.size() >= 15))
                early = heard.builder.stamp(now);
        });
        source.start();
        // No fix may be lost, and none be made of lines that say "no fix". A log can hold a last RMC beyond
        // its last GGA, and two sentences of a moment can bear times of their own, so there may be more.
        QTRY_VERIFY_WITH_TIMEOUT(heard.fixes.size() >= mean.fixes, 20'000);
        const auto late = heard.stamp();
        QVERIFY(early && late);
        const std::vector<YardPlace> yards{{"other", "400 m east", placeAt(mean.place, {400, 0}).latitudeDeg,
                                            placeAt(mean.place, {400, 0}).longitudeDeg},
                                           {"home", "here", mean.place.latitudeDeg, mean.place.longitudeDeg}};
        for (const Stamp& stamp : {*early, *late}) {
            qInfo("%s: %.1f m off, +-%.1f m, %d fixes, moving %d", qPrintable(QFileInfo(path).fileName()),
                  offM(stamp, mean.place), stamp.accuracyM, stamp.fixesUsed, stamp.moving);
            QVERIFY2(offM(stamp, mean.place) < 10.0, qPrintable(QString::number(offM(stamp, mean.place))));
            const YardAnswer answer = recogniseYard(stamp, yards);
            QVERIFY(std::holds_alternative<Here>(answer));
            QCOMPARE(std::get<Here>(answer).id, std::string("home"));
        }
        QVERIFY(!heard.told(Problem::NoFixYet));
    }

    void anyLogIsPlayedToItsEnd_data() { rowPerLog(QStringLiteral("*.nmea")); }
    void anyLogIsPlayedToItsEnd() {
        QFETCH(QString, path);
        const LogMean mean = meanOf(linesOf(path));
        QtPositionSource source(QStringLiteral("nmea:file:") + path);
        source.setPace(QtPositionSource::Pace::Fast);
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.told(Problem::Ended), 20'000);
        const auto stamp = heard.stamp();
        QCOMPARE(stamp.has_value(), heard.builder.taken() > 0);
        if (QFileInfo(path).fileName() == QStringLiteral("moving-138-fixes.nmea"))
            QVERIFY(stamp && stamp->moving);
        if (stamp)
            qInfo("%s: %d fixes, %.0f m from the mean, +-%.1f m, moving %d",
                  qPrintable(QFileInfo(path).fileName()), static_cast<int>(heard.fixes.size()),
                  offM(*stamp, mean.place), stamp->accuracyM, stamp->moving);
    }

    void allLogsInOneStreamAndCutAnywhere() {
        // As if somebody plugged one receiver after another, and every third line lost its end.
        QList<QByteArray> lines;
        for (const QString& name : m_logs.entryList({QStringLiteral("*.nmea")}, QDir::Files, QDir::Name)) {
            for (const QByteArray& each : linesOf(m_logs.filePath(name)))
                lines << (lines.size() % 3 == 0 ? each.left(each.size() / 2) : each);
        }
        NmeaServer server(lines);
        QVERIFY(server.listen());
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.fixes.size() > 200, 30'000);
        QVERIFY(heard.stamp());
    }

    void agreesWithQtsOwnPlugin() {
        // The plugin "nmea" over the same TCP port: the same receiver must be in the same place.
        const QList<QByteArray> lines = linesOf(m_logs.filePath(QStringLiteral("still-72-fixes.nmea")));
        NmeaServer server(lines, 2);
        server.linesAtOnce(6);
        QVERIFY(server.listen());
        const QVariantMap parameters{
            {QStringLiteral("nmea.source"), QStringLiteral("socket://127.0.0.1:%1").arg(server.port())}};
        const std::unique_ptr<QGeoPositionInfoSource> plugin(
            QGeoPositionInfoSource::createSource(QStringLiteral("nmea"), parameters, nullptr));
        if (!plugin)
            QSKIP("Qt's plugin \"nmea\" is not installed.");
        double lat = 0.0;
        double lon = 0.0;
        int count = 0;
        connect(plugin.get(), &QGeoPositionInfoSource::positionUpdated, this,
                [&](const QGeoPositionInfo& info) {
                    lat += info.coordinate().latitude();
                    lon += info.coordinate().longitude();
                    ++count;
                });
        plugin->startUpdates();
        QTRY_VERIFY_WITH_TIMEOUT(count >= 70, 20'000);
        plugin->stopUpdates();
        QtPositionSource source(server.setting());
        Listener heard(source);
        source.start();
        QTRY_VERIFY_WITH_TIMEOUT(heard.fixes.size() >= 72, 20'000);
        QVERIFY(heard.stamp());
        QVERIFY2(offM(*heard.stamp(), {lat / count, lon / count}) < 5.0, "plugin and source disagree");
    }
};

QTEST_GUILESS_MAIN(PlaceLogsTest)
#include "place_logs.moc"
