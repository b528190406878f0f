// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Calendars, read back by a calendar library that is not ours (python3-icalendar of Debian; RFC 5545).
#include "exchange/calendar.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <stdexcept>

using namespace halfcup::exchange;
using halfcup::records::Date;

namespace {

constexpr std::int64_t writtenMs = 1'779'090'000'250; // 2026-05-18T07:40:00.250Z

/// What the library makes of it: a list of {uid, start, end, summary, ...}, dates in ISO.
QJsonArray readBack(const std::string& text) {
    const QTemporaryDir folder;
    QFile file(folder.filePath("some.ics"));
    if (!file.open(QIODevice::WriteOnly) || file.write(QByteArray::fromStdString(text)) < 0)
        qFatal("The test cannot write its own file.");
    file.close();
    const QString script =
        "import icalendar, json, sys\n"
        "calendar = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())\n"
        "assert not calendar.errors, calendar.errors\n"
        "assert calendar['VERSION'] == '2.0' and calendar['PRODID']\n"
        "rows = []\n"
        "for event in calendar.walk('VEVENT'):\n"
        "    assert not event.errors, event.errors\n"
        "    alarms = [str(a['TRIGGER'].dt.total_seconds()) for a in event.walk('VALARM')]\n"
        "    rows.append({'uid': event['UID'], 'start': event['DTSTART'].dt.isoformat(),\n"
        "                 'end': event['DTEND'].dt.isoformat(), 'stamp': event['DTSTAMP'].dt.isoformat(),\n"
        "                 'summary': event['SUMMARY'], 'description': event.get('DESCRIPTION', ''),\n"
        "                 'place': event.get('LOCATION', ''), 'alarms': alarms})\n"
        "print(json.dumps(rows))\n";
    QProcess python;
    python.start("/usr/bin/python3", {"-c", script, file.fileName()}); // Debian's own, which has the library
    if (!python.waitForFinished(60'000) || python.exitCode() != 0)
        qFatal("python3 did not read the file: %s", python.readAllStandardError().constData());
    return QJsonDocument::fromJson(python.readAllStandardOutput()).array();
}

CalendarEntry entry(const Date& day, const std::string& summary) {
    return {"removal/019ca869", day, summary, "", "", {}};
}

} // namespace

class ExchangeCalendarTest : public QObject {
    Q_OBJECT

private slots:
    void everyFigureComesBack() {
        CalendarEntry removal = entry({2026, 5, 27}, "Take out: formic acid pads");
        removal.description = "Colonies 4, 7\nAlder Bend";
        removal.place = "Alder Bend";
        removal.alarmDaysBefore = 1;
        CalendarEntry today = entry({2026, 12, 31}, "Wash");
        today.key = "wash/1";
        today.alarmDaysBefore = 0;
        const QJsonArray rows = readBack(calendarText(std::vector{removal, today}, "Halfcup", writtenMs));
        QCOMPARE(rows.size(), 2);
        const QJsonObject first = rows[0].toObject();
        QCOMPARE(first["uid"].toString(), "removal/019ca869@halfcup.invalid");
        QCOMPARE(first["start"].toString(), "2026-05-27");
        QCOMPARE(first["end"].toString(), "2026-05-28");
        QCOMPARE(first["stamp"].toString(), "2026-05-18T07:40:00+00:00");
        QCOMPARE(first["summary"].toString(), "Take out: formic acid pads");
        QCOMPARE(first["description"].toString(), "Colonies 4, 7\nAlder Bend");
        QCOMPARE(first["place"].toString(), "Alder Bend");
        QCOMPARE(first["alarms"].toArray()[0].toString(), "-61200.0"); // 07:00 on the day before
        const QJsonObject second = rows[1].toObject();
        QCOMPARE(second["end"].toString(), "2027-01-01");              // across New Year
        QCOMPARE(second["alarms"].toArray()[0].toString(), "25200.0"); // 07:00 that day
    }

    void leapDay() {
        const QJsonArray rows =
            readBack(calendarText(std::vector{entry({2028, 2, 28}, "x")}, "n", writtenMs));
        QCOMPARE(rows[0].toObject()["end"].toString(), "2028-02-29");
    }

    void textsThatCouldBreakIt() {
        const std::string nasty =
            "a;b,c\\d \xF0\x9F\x90\x9D\r\nBEGIN:VEVENT\r\nSUMMARY:x \x01\x7F\"quoted\":";
        CalendarEntry each = entry({2026, 5, 27}, nasty);
        each.description = nasty;
        const QJsonArray rows = readBack(calendarText(std::vector{each}, nasty, writtenMs));
        QCOMPARE(rows.size(), 1); // nothing of it became an entry of its own
        const QString expected =
            QString::fromUtf8("a;b,c\\d \xF0\x9F\x90\x9D\nBEGIN:VEVENT\nSUMMARY:x \"quoted\":");
        QCOMPARE(rows[0].toObject()["summary"].toString(), expected);
        QCOMPARE(rows[0].toObject()["description"].toString(), expected);
    }

    void linesAreFoldedWithoutCuttingACharacter() {
        for (int length = 1; length < 400; length += 7) {
            std::string text;
            for (int i = 0; i < length; ++i)
                text += (i % 5 == 4) ? "\xF0\x9F\x90\x9D" : (i % 3 == 2) ? "\xC3\xA4" : "x";
            const std::string calendar =
                calendarText(std::vector{entry({2026, 5, 27}, text)}, "n", writtenMs);
            const QList<QByteArray> lines = QByteArray::fromStdString(calendar).split('\n');
            for (int i = 0; i + 1 < lines.size(); ++i) {
                QVERIFY2(lines[i].endsWith('\r'), lines[i]);
                QVERIFY2(lines[i].size() <= 76, lines[i]); // 75 octets and the carriage return
                QVERIFY(QString::fromUtf8(lines[i]).toUtf8() == lines[i]); // each line is whole UTF-8
            }
            QCOMPARE(readBack(calendar)[0].toObject()["summary"].toString(), QString::fromStdString(text));
            if (length > 60)
                length += 40; // the library takes its time
        }
    }

    void nothingIsACalendarToo() { QCOMPARE(readBack(calendarText({}, "n", writtenMs)).size(), 0); }

    void impossibleDayIsRefused() {
        QVERIFY_EXCEPTION_THROWN((void)calendarText(std::vector{entry({2027, 2, 29}, "x")}, "n", writtenMs),
                                 std::invalid_argument);
    }

    void brokenUtf8IsCutSomewhereAndNeverHangs() {
        const std::string text(300, '\x80');
        QVERIFY(calendarText(std::vector{entry({2026, 5, 27}, text)}, "n", writtenMs).size() > 300);
    }
};

QTEST_GUILESS_MAIN(ExchangeCalendarTest)
#include "exchange_calendar.moc"
