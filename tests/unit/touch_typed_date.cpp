// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Days as people type them. Which day a calendar has is Qt's own (QDate), the rest follows from the header.
#include "touch/typed_date.h"

#include <QDate>
#include <QLocale>
#include <QTest>

using namespace halfcup;
using halfcup::records::Date;
using halfcup::touch::readDate;
using halfcup::touch::readYearlyDay;

class TouchTypedDateTest : public QObject {
    Q_OBJECT

    static constexpr Date today{2026, 6, 15};

private slots:
    void cleanup() { QLocale::setDefault(QLocale::c()); }

    void readsDays_data() {
        QTest::addColumn<QLocale>("locale");
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QDate>("expected");
        const QLocale us(QLocale::English, QLocale::UnitedStates);
        const QLocale uk(QLocale::English, QLocale::UnitedKingdom);
        const QLocale de(QLocale::German, QLocale::Germany);
        QTest::newRow("iso") << us << QStringLiteral("2026-05-18") << QDate(2026, 5, 18);
        QTest::newRow("iso, blanks") << us << QStringLiteral("  2026-5-8 ") << QDate(2026, 5, 8);
        QTest::newRow("month first") << us << QStringLiteral("5/18/2026") << QDate(2026, 5, 18);
        QTest::newRow("month first, short year") << us << QStringLiteral("5/6/26") << QDate(2026, 5, 6);
        QTest::newRow("day first") << uk << QStringLiteral("5/6/2026") << QDate(2026, 6, 5);
        QTest::newRow("points") << de << QStringLiteral("18.5.2026") << QDate(2026, 5, 18);
        QTest::newRow("points, no year") << de << QStringLiteral("18.5.") << QDate(2026, 5, 18);
        QTest::newRow("in words") << uk << QStringLiteral("18 May 2026") << QDate(2026, 5, 18);
        QTest::newRow("in words, month first") << us << QStringLiteral("May 18, 2026") << QDate(2026, 5, 18);
        QTest::newRow("shortened") << uk << QStringLiteral("3 Sep") << QDate(2026, 9, 3);
        QTest::newRow("another language") << de << QStringLiteral("3. Mai 2026") << QDate(2026, 5, 3);
        const QLocale es(QLocale::Spanish, QLocale::Spain);
        const QLocale fr(QLocale::French, QLocale::France);
        QTest::newRow("as Spanish says it")
            << es << QStringLiteral("18 de mayo de 2026") << QDate(2026, 5, 18);
        QTest::newRow("the first in French") << fr << QStringLiteral("1er mai 2026") << QDate(2026, 5, 1);
        QTest::newRow("without its marks") << fr << QStringLiteral("3 aout 2026") << QDate(2026, 8, 3);
        QTest::newRow("juillet, not juin") << fr << QStringLiteral("4 juil 2026") << QDate(2026, 7, 4);
        QTest::newRow("ordinal") << uk << QStringLiteral("3rd of June 2026") << QDate(2026, 6, 3);
        QTest::newRow("nearest is next year") << uk << QStringLiteral("2 January") << QDate(2027, 1, 2);
        QTest::newRow("leap day") << uk << QStringLiteral("29 February 2028") << QDate(2028, 2, 29);
    }

    void readsDays() {
        QFETCH(QLocale, locale);
        QFETCH(QString, typed);
        QFETCH(QDate, expected);
        QLocale::setDefault(locale);
        // 2 January is nearer to 2027 only from the second half of the year on.
        const Date from = typed.contains(QStringLiteral("January")) ? Date{2026, 9, 1} : today;
        const auto read = readDate(typed, from, QStringLiteral("The day"));
        QCOMPARE(read.problem, QString());
        QVERIFY(read.date);
        QCOMPARE(QDate(read.date->year, read.date->month, read.date->day), expected);
    }

    void nothingTypedIsNothing() {
        const auto read = readDate(QStringLiteral("  "), today, QStringLiteral("The day"));
        QVERIFY(!read.date);
        QVERIFY(read.problem.isEmpty());
    }

    void saysWhatIsWrong_data() {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("part");
        QTest::newRow("common year") << QStringLiteral("29 February 2027") << QStringLiteral("no leap year");
        QTest::newRow("common year, iso") << QStringLiteral("2027-02-29") << QStringLiteral("no leap year");
        QTest::newRow("no 31st") << QStringLiteral("31 June 2026") << QStringLiteral("June has no day 31");
        QTest::newRow("month 13") << QStringLiteral("2026-13-01") << QStringLiteral("month 13");
        QTest::newRow("words") << QStringLiteral("tomorrow") << QStringLiteral("is no date");
        QTest::newRow("one figure") << QStringLiteral("18") << QStringLiteral("is no date");
        QTest::newRow("too much") << QStringLiteral("1 2 3 4") << QStringLiteral("is no date");
        QTest::newRow("long figure") << QStringLiteral("123456789-1-1") << QStringLiteral("is no date");
        QTest::newRow("minus") << QStringLiteral("-2026-05-18x") << QStringLiteral("is no date");
        QTest::newRow("markup") << QStringLiteral("<b>1</b>") << QStringLiteral("is no date");
        QTest::newRow("far") << QStringLiteral("1 May 9999") << QStringLiteral("too far away");
    }

    void saysWhatIsWrong() {
        QFETCH(QString, typed);
        QFETCH(QString, part);
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const auto read = readDate(typed, today, QStringLiteral("The first day"));
        QVERIFY(!read.date);
        QVERIFY2(read.problem.startsWith(QStringLiteral("The first day")), qPrintable(read.problem));
        QVERIFY2(read.problem.contains(part), qPrintable(read.problem));
    }

    void leapDayWithoutAYearIsRefusedOutsideLeapYears() {
        QVERIFY(!readDate(QStringLiteral("29 February"), {2026, 6, 15}, QStringLiteral("x")).date);
        const auto read = readDate(QStringLiteral("29 February"), {2028, 6, 15}, QStringLiteral("x"));
        QVERIFY(read.date == (Date{2028, 2, 29}));
    }

    void daysOfTheYear() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        const QString what = QStringLiteral("The turn date");
        QVERIFY(readYearlyDay(QStringLiteral("15 August"), today, what).date == (Date{2026, 8, 15}));
        QVERIFY(readYearlyDay(QStringLiteral("08-15"), today, what).date == (Date{2026, 8, 15}));
        QVERIFY(readYearlyDay(QStringLiteral("29 February"), today, what).date == (Date{2028, 2, 29}));
        QVERIFY(!readYearlyDay(QStringLiteral("30 February"), today, what).date);
        QVERIFY(readYearlyDay(QStringLiteral("15 August 2026"), today, what)
                    .problem.contains(QStringLiteral("no day of the year")));
    }
};

QTEST_GUILESS_MAIN(TouchTypedDateTest)
#include "touch_typed_date.moc"
