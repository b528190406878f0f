// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The filter in front of Qt's NMEA code, and the position setting.
#include "place/nmea_lines.h"
#include "place/source_setting.h"

#include <QTest>

#include <random>
#include <vector>

using namespace halfcup::place;

namespace {

// Handbook section 9: the vector every text on NMEA 0183 prints, checksum 47.
const std::string kKnown = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47";

std::vector<std::string> sentencesOf(NmeaLines& lines, std::string_view bytes) {
    std::vector<std::string> found;
    lines.feed(bytes, [&](std::string_view s) { found.emplace_back(s); });
    return found;
}

std::vector<std::string> sentencesOf(std::string_view bytes) {
    NmeaLines lines;
    return sentencesOf(lines, bytes);
}

using Sentences = std::vector<std::string>;

} // namespace

class PlaceNmeaTest : public QObject {
    Q_OBJECT

private slots:
    void checksumOfTheKnownSentence() {
        QCOMPARE(nmeaChecksum(std::string_view(kKnown).substr(1, kKnown.size() - 4)), 0x47u);
        QCOMPARE(nmeaSentence(std::string_view(kKnown).substr(1, kKnown.size() - 4)), kKnown);
        QCOMPARE(nmeaSentence(""), std::string("$*00"));
    }

    void takesWholeSentences() {
        QCOMPARE(sentencesOf(kKnown + "\r\n"), Sentences{kKnown});
        QCOMPARE(sentencesOf(kKnown + "\n"), Sentences{kKnown});
        QCOMPARE(sentencesOf(kKnown + "\r"), Sentences{kKnown});
        QCOMPARE(sentencesOf("\r\n\n" + kKnown + "\r\n" + kKnown + "\r\n"), (Sentences{kKnown, kKnown}));
    }

    void takesThemInPiecesOfAnySize() {
        const std::string stream = kKnown + "\r\n" + kKnown + "\r\n" + kKnown + "\r\n";
        for (std::size_t size = 1; size < stream.size(); ++size) {
            NmeaLines lines;
            std::size_t found = 0;
            for (std::size_t at = 0; at < stream.size(); at += size)
                found += sentencesOf(lines, std::string_view(stream).substr(at, size)).size();
            QCOMPARE(found, std::size_t(3));
        }
    }

    void dropsWhatIsDamaged() {
        // The handbook's own warning: the same line with 47.0,M and the old checksum is wrong.
        QVERIFY(sentencesOf("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,47.0,M,,*47\r\n").empty());
        QVERIFY(sentencesOf("$GPGGA,123519,4807.038,N*\r\n").empty());
        QVERIFY(sentencesOf("$GPGGA,123519,4807.038,N*4\r\n").empty());
        QVERIFY(sentencesOf("$GPGGA,123519,4807.038,N*zz\r\n").empty());
        QVERIFY(sentencesOf(kKnown).empty()); // no line end yet
        QVERIFY(sentencesOf("!AIVDM,1,1,,A,13aG?P0P00PD;88MD5MTDww@2D0k,0*46\r\n").empty());
        QVERIFY(sentencesOf("{\"class\":\"VERSION\",\"release\":\"3.22\"}\r\n").empty());
        QVERIFY(sentencesOf(std::string("$GPGGA,12\0", 10) + kKnown.substr(10) + "\r\n").empty());
    }

    void aCutLineDoesNotTakeTheNextWithIt() {
        QCOMPARE(sentencesOf("$GPGGA,123519,4807.0" + kKnown + "\r\n"), Sentences{kKnown});
        QCOMPARE(sentencesOf("07.038,N,01131.000,E*47\r\n" + kKnown + "\r\n"), Sentences{kKnown});
        QCOMPARE(sentencesOf("\\s:net,c:1577836800*12\\" + kKnown + "\r\n"),
                 Sentences{kKnown}); // a tag block
    }

    void smallLettersInTheChecksumAreFine() {
        const std::string body =
            "GNZDA,000941.00,10,01,2017,00,00"; // 70 in a real log; pick one with letters
        const std::string sentence = nmeaSentence(body);
        std::string lower = sentence;
        for (char& c : lower)
            c = c >= 'A' && c <= 'F' && &c > &lower[lower.size() - 3] ? static_cast<char>(c + 32) : c;
        QCOMPARE(sentencesOf(lower + "\r\n"), Sentences{sentence});
    }

    void aLineWithoutEndStaysBounded() {
        NmeaLines lines;
        const std::string megabyte(1 << 20, 'A');
        QVERIFY(sentencesOf(lines, "$GP" + megabyte).empty());
        for (int i = 0; i < 20; ++i)
            QVERIFY(sentencesOf(lines, megabyte).empty());
        QCOMPARE(lines.dropped(), 1LL);
        QCOMPARE(sentencesOf(lines, kKnown + "\r\n"), Sentences{kKnown});
        // 256 characters between '$' and line end are taken, one more is not.
        const std::string longest = nmeaSentence("PXYZ," + std::string(kLongestSentence - 8, 'x'));
        QCOMPARE(longest.size(), kLongestSentence + 1);
        QCOMPARE(sentencesOf(longest + "\r\n"), Sentences{longest});
        QVERIFY(sentencesOf(nmeaSentence("PXYZ," + std::string(kLongestSentence - 7, 'x')) + "\r\n").empty());
    }

    void oldReceiversWithoutChecksumsAreBelievedLate() {
        const std::string bare = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,\r\n";
        NmeaLines lines;
        for (int i = 0; i < 4; ++i)
            QVERIFY(sentencesOf(lines, bare).empty());
        QCOMPARE(sentencesOf(lines, bare), Sentences{kKnown});
        // A cut one is not, and neither is any once the stream has shown a checksum.
        QVERIFY(sentencesOf(lines, "$GPGGA,123519,4807.038,N,01131.0\r\n").empty());
        QCOMPARE(sentencesOf(lines, kKnown + "\r\n"), Sentences{kKnown});
        QVERIFY(sentencesOf(lines, bare).empty());
    }

    void randomBytesNeverPass() {
        std::mt19937_64 chance(31);
        NmeaLines lines;
        for (int i = 0; i < 200; ++i) {
            std::string bytes(4096, '\0');
            for (char& c : bytes)
                c = static_cast<char>(chance());
            for (const std::string& s : sentencesOf(lines, bytes)) {
                QVERIFY(s.size() <= kLongestSentence + 4);
                QVERIFY(s.find('*') != std::string::npos);
            }
        }
    }

    void readsTheTimeOfDay() {
        auto at = [](int h, int m, int s, int ms = 0) { return ((h * 60 + m) * 60 + s) * 1000 + ms; };
        QCOMPARE(nmeaTimeOfDayMs(kKnown), std::optional(at(12, 35, 19)));
        QCOMPARE(nmeaTimeOfDayMs("$GNRMC,184040.25,V,,,,,,,030416,,,N*6A"),
                 std::optional(at(18, 40, 40, 250)));
        QCOMPARE(nmeaTimeOfDayMs("$GNGLL,4404.13387,N,12118.85628,W,000941.007,A,A*69"),
                 std::optional(at(0, 9, 41, 7)));
        QCOMPARE(nmeaTimeOfDayMs("$GNZDA,235960.00,10,01,2017,00,00*70"), std::optional(at(23, 59, 60)));
        for (const char* none :
             {"$GPGGA,,,,,,0,,,,M,,M,,*66", "$GPGGA,250000,*00", "$GPGGA,126000,*00", "$GPGGA,1235x9,*00",
              "$GPGGA,123519.4y,*00", "$GPGSA,A,3*00", "", "$", "$GPGGA"})
            QVERIFY2(!nmeaTimeOfDayMs(none), none);
    }

    void hearsTheReceiverSayNo() {
        QVERIFY(!nmeaSaysNoFix(kKnown));
        QVERIFY(nmeaSaysNoFix("$GPGGA,095257.809,2712.6404,S,15303.1201,E,0,00,00.0,4.0,M,42.2,M,,*7B"));
        QVERIFY(nmeaSaysNoFix("$GPGGA,,,,,,,,,,M,,M,,*66"));
        QVERIFY(nmeaSaysNoFix("$GPRMC,095257.809,V,2712.6404,S,15303.1201,E,0.00,0.00,080407,,,A*64"));
        QVERIFY(!nmeaSaysNoFix("$GPRMC,095257.809,A,2712.6404,S,15303.1201,E,0.00,0.00,080407,,,A*64"));
        QVERIFY(nmeaSaysNoFix("$GPGLL,,,,,,V,N*64"));
        QVERIFY(!nmeaSaysNoFix("$GPGLL,4916.45,N,12311.12,W,225444,A*31"));
        QVERIFY(!nmeaSaysNoFix("$GPGLL,4916.45,N,12311.12,W*71")); // version 1.5: no word on it
        QVERIFY(nmeaCarriesPosition(kKnown) && nmeaCarriesPosition("$GLGLL,") &&
                nmeaCarriesPosition("$GNRMC,"));
        QVERIFY(!nmeaCarriesPosition("$GPGSA,A,1") && !nmeaCarriesPosition("") &&
                !nmeaCarriesPosition("$PGGA,"));
    }

    // ---- the setting

    void readsSettings_data() {
        using Kind = SourceSetting::Kind;
        QTest::addColumn<QString>("text");
        QTest::addColumn<int>("kind");
        QTest::addColumn<QString>("where"); // host or path
        QTest::addColumn<int>("number");    // port or speed
        auto row = [](const char* text, Kind kind, const char* where = "", int number = 0) {
            QTest::newRow(text) << QString::fromUtf8(text) << static_cast<int>(kind)
                                << QString::fromUtf8(where) << number;
        };
        row("", Kind::PlatformDefault);
        row("  default ", Kind::PlatformDefault);
        row("none", Kind::None);
        row("nmea:file:/tmp/a log.nmea", Kind::File, "/tmp/a log.nmea");
        row("nmea:file:", Kind::Bad);
        row("nmea:tcp://127.0.0.1:10110", Kind::Tcp, "127.0.0.1", 10110);
        row("nmea:tcp://[::1]:10110", Kind::Tcp, "::1", 10110);
        row("nmea:tcp://jar.local:1", Kind::Tcp, "jar.local", 1);
        row("nmea:tcp://127.0.0.1", Kind::Bad);
        row("nmea:tcp://127.0.0.1:0", Kind::Bad);
        row("nmea:tcp://127.0.0.1:65536", Kind::Bad);
        row("nmea:tcp://127.0.0.1:-1", Kind::Bad);
        row("nmea:tcp://:10110", Kind::Bad);
        row("nmea:tcp://me@host:10110", Kind::Bad);
        row("nmea:tcp://host:10110/x", Kind::Bad);
        row("nmea:tcp:", Kind::Bad);
        row("gpsd://127.0.0.1", Kind::Gpsd, "127.0.0.1", 2947);
        row("gpsd://127.0.0.1:3000", Kind::Gpsd, "127.0.0.1", 3000);
        row("gpsd://", Kind::Bad);
        row("nmea:serial:/dev/ttyUSB0", Kind::Serial, "/dev/ttyUSB0", 0);
        row("nmea:serial:/dev/ttyUSB0?baud=9600", Kind::Serial, "/dev/ttyUSB0", 9600);
        row("nmea:serial:/dev/ttyUSB0?baud=fast", Kind::Bad);
        row("nmea:serial:/dev/ttyUSB0?baud=-1", Kind::Bad);
        row("nmea:serial:?baud=9600", Kind::Bad);
        row("nmea:serial:", Kind::Bad);
        row("Default", Kind::Bad);
        row("/dev/ttyUSB0", Kind::Bad);
        row("http://127.0.0.1:80", Kind::Bad);
        row("%1 %2", Kind::Bad);
    }
    void readsSettings() {
        QFETCH(QString, text);
        QFETCH(int, kind);
        QFETCH(QString, where);
        QFETCH(int, number);
        const SourceSetting read = readSourceSetting(text);
        QCOMPARE(static_cast<int>(read.kind), kind);
        if (kind == static_cast<int>(SourceSetting::Kind::Bad)) {
            QVERIFY2(read.problem.contains(text.trimmed()), qPrintable(read.problem)); // names what was typed
            QVERIFY2(read.problem.endsWith(u'.') && read.problem.contains(u"gpsd://HOST:PORT"),
                     qPrintable(read.problem));
            return;
        }
        QVERIFY(read.problem.isEmpty());
        QCOMPARE(read.host + read.path, where);
        QCOMPARE(read.port + read.baud, number);
    }

    void longSettingsAreNotEchoedWhole() {
        QVERIFY(readSourceSetting(QString(100'000, u'x')).problem.size() < 400);
        QCOMPARE(static_cast<int>(readSourceSetting(QStringLiteral("nmea:file:a") + QChar::Null).kind),
                 static_cast<int>(SourceSetting::Kind::Bad));
    }
};

QTEST_GUILESS_MAIN(PlaceNmeaTest)
#include "place_nmea.moc"
