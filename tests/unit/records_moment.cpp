// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Times and dates as they are kept and written.
#include "records/moment.h"

#include <QDate>
#include <QTest>

#include <limits>
#include <random>

using namespace halfcup::records;

class RecordsMomentTest : public QObject {
    Q_OBJECT

private slots:
    // The examples of RFC 3339, section 5.8. The first figure is also that of the RFC's text; the others were
    // computed with Python's datetime.
    void examplesOfRfc3339_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<qint64>("utcMs");
        QTest::addColumn<int>("offset");
        QTest::newRow("fraction") << QByteArray("1985-04-12T23:20:50.52Z") << qint64{482196050520} << 0;
        QTest::newRow("behind UTC") << QByteArray("1996-12-19T16:39:57-08:00") << qint64{851042397000}
                                    << -480;
        QTest::newRow("before 1970") << QByteArray("1937-01-01T12:00:27.87+00:20") << qint64{-1041337172130}
                                     << 20;
        QTest::newRow("the demo's day")
            << QByteArray("2026-05-18T09:40:00+02:00") << qint64{1779090000000} << 120;
        QTest::newRow("small letters") << QByteArray("1985-04-12t23:20:50.52z") << qint64{482196050520} << 0;
        QTest::newRow("finer than we keep")
            << QByteArray("1985-04-12T23:20:50.520999999Z") << qint64{482196050520} << 0;
    }
    void examplesOfRfc3339() {
        QFETCH(const QByteArray, text);
        const auto moment = parseRfc3339(text.toStdString());
        QVERIFY(moment);
        QTEST(qint64{moment->utcMs}, "utcMs");
        QTEST(moment->offsetMinutes, "offset");
    }

    void otherTextsAreNoTimes_data() {
        QTest::addColumn<QByteArray>("text");
        for (const char* text : {"",
                                 "2026-05-18",
                                 "2026-05-18T09:40:00",
                                 "2026-05-18 09:40:00Z",
                                 "2026-05-18T09:40Z",
                                 "2026-05-18T24:00:00Z",
                                 "2026-05-18T09:60:00Z",
                                 "2026-02-29T09:40:00Z",
                                 "2026-13-01T09:40:00Z",
                                 "2026-00-01T09:40:00Z",
                                 "2026-05-18T09:40:00.Z",
                                 "2026-05-18T09:40:00.5",
                                 "2026-05-18T09:40:00+0200",
                                 "2026-05-18T09:40:00+02",
                                 "2026-05-18T09:40:00+19:00",
                                 "2026-05-18T09:40:00+02:60",
                                 "2026-05-18T09:40:00Zz",
                                 "+026-05-18T09:40:00Z",
                                 "2026-05-18T 9:40:00Z",
                                 "26-05-18T09:40:00.000Z",
                                 "1990-12-31T23:59:60Z" /* a leap second: no clock of ours has one */})
            QTest::newRow(*text ? text : "empty") << QByteArray(text);
    }
    void otherTextsAreNoTimes() {
        QFETCH(const QByteArray, text);
        QVERIFY(!parseRfc3339(text.toStdString()));
    }

    void timesReadBack() {
        QCOMPARE(toRfc3339({482196050520, 0}), std::string("1985-04-12T23:20:50.520Z"));
        QCOMPARE(toRfc3339({1779090000000, 120}), std::string("2026-05-18T09:40:00+02:00"));
        QCOMPARE(toRfc3339({851042397000, -480}), std::string("1996-12-19T16:39:57-08:00"));
        QCOMPARE(toRfc3339({-1, 0}), std::string("1969-12-31T23:59:59.999Z"));
        std::mt19937_64 random(3);
        for (int i = 0; i < 20'000; ++i) { // years 1900 to 2200, offsets of every minute
            const Moment moment{static_cast<std::int64_t>(random() % 9'467'000'000'000ULL) -
                                    2'208'988'800'000,
                                static_cast<int>(random() % 2161) - 1080};
            QCOMPARE(parseRfc3339(toRfc3339(moment)), std::optional{moment});
        }
    }

    void spoiltTimesNeverCrash() {
        const std::string good = "2026-05-18T09:41:05.250+02:00";
        std::mt19937 random(5);
        for (int i = 0; i < 50'000; ++i) {
            std::string text = good;
            for (unsigned n = 1 + random() % 3; n > 0; --n) {
                const std::size_t at = random() % text.size();
                if (random() % 3 == 0)
                    text.erase(at, 1);
                else
                    text[at] = static_cast<char>(random() % 256);
            }
            if (const auto moment = parseRfc3339(text))
                QCOMPARE(parseRfc3339(toRfc3339(*moment)), moment); // what is taken has one meaning
        }
    }

    void aTimeThatNoClockShowsIsTheNearestThatCanBeWritten() { // years 0 to 9999: RFC 3339, section 1
        constexpr auto least = std::numeric_limits<std::int64_t>::min();
        constexpr auto most = std::numeric_limits<std::int64_t>::max();
        QCOMPARE(toRfc3339({most, 120}), std::string("9999-12-31T23:59:59.999+02:00"));
        QCOMPARE(toRfc3339({most, 0}), std::string("9999-12-31T23:59:59.999Z"));
        QCOMPARE(toRfc3339({least, std::numeric_limits<int>::min()}),
                 std::string("0000-01-01T00:00:00-18:00"));
        QCOMPARE(toRfc3339({least, -60}), std::string("0000-01-01T00:00:00-01:00"));
        QCOMPARE(localDate({most, 0}), (Date{9999, 12, 31}));
        QCOMPARE(localDate({least, 0}), (Date{0, 1, 1}));
    }

    void localDateIsTheKeepersDate() {
        const auto at = [](const char* text) { return localDate(parseRfc3339(text).value()); };
        QCOMPARE(at("2026-05-18T00:30:00+02:00"), (Date{2026, 5, 18}));
        QCOMPARE(at("2026-05-17T22:30:00Z"), (Date{2026, 5, 17}));
        QCOMPARE(at("2026-12-31T23:59:59.999-08:00"), (Date{2026, 12, 31}));
        QCOMPARE(at("2028-02-29T23:00:00+12:45"), (Date{2028, 2, 29}));
        QCOMPARE(at("1969-12-31T23:59:59Z"), (Date{1969, 12, 31}));
    }

    // Against Qt's calendar, an implementation of its own: every day of eight centuries.
    void daysAgreeWithQt() {
        const qint64 epoch = QDate(1970, 1, 1).toJulianDay();
        for (QDate day(1600, 1, 1); day < QDate(2400, 1, 1); day = day.addDays(1)) {
            const Date date{day.year(), day.month(), day.day()};
            QVERIFY(isValid(date));
            QCOMPARE(daysSinceEpoch(date), day.toJulianDay() - epoch);
            QCOMPARE(dateFromDays(day.toJulianDay() - epoch), date);
            QCOMPARE(toIso(date), day.toString(Qt::ISODate).toStdString());
            QCOMPARE(parseIsoDate(toIso(date)), std::optional{date});
        }
    }

    void impossibleDatesAreNone() {
        for (const Date& date : {Date{2026, 2, 29}, Date{1900, 2, 29}, Date{2026, 4, 31}, Date{2026, 0, 1},
                                 Date{2026, 13, 1}, Date{2026, 1, 0}, Date{2026, 1, -1}, Date{2026, -3, 1}})
            QVERIFY(!isValid(date));
        QVERIFY(isValid({2000, 2, 29}));
        QVERIFY(isValid({2028, 2, 29}));
        for (const char* text :
             {"", "2026-5-18", "2026/05/18", "2026-02-29", "2026-05-18 ", "18.05.2026", "2026-05-1x"})
            QVERIFY2(!parseIsoDate(text), text);
    }
};

QTEST_GUILESS_MAIN(RecordsMomentTest)
#include "records_moment.moc"
