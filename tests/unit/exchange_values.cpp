// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Days, times and numbers as people and spreadsheets write them, and columns by their names.
#include "exchange/samples_csv.h"
#include "exchange/table_values.h"
#include "exchange/wash_columns.h"

#include <QLocale>
#include <QTest>

#include <limits>

using namespace halfcup;
using namespace halfcup::exchange;

namespace {

const records::Date today{2026, 6, 15};

std::string day(std::string_view text, std::optional<DayOrder> order = {}) {
    const auto read = readDay(text, order, today);
    return read ? records::toIso(read->day) : "-";
}

std::string orderOf(const std::vector<std::string_view>& cells) {
    const OrderFound found = findDayOrder(cells);
    if (!found.order)
        return found.both ? "both " + found.example : "asked " + found.example;
    switch (*found.order) {
    case DayOrder::YearMonthDay:
        return "ymd";
    case DayOrder::DayMonthYear:
        return "dmy";
    case DayOrder::MonthDayYear:
        break;
    }
    return "mdy";
}

std::string number(std::string_view cell, double smallest, double largest) {
    using Trouble = WrittenNumber::Trouble;
    const WrittenNumber read = readTableNumber(cell, smallest, largest);
    switch (read.trouble) {
    case Trouble::None:
        return QByteArray::number(read.value, 'g', 8).toStdString();
    case Trouble::NotANumber:
        return "no";
    case Trouble::TwoWays:
        return "two ways";
    case Trouble::TooSmall:
        return "small";
    case Trouble::TooLarge:
        break;
    }
    return "large";
}

} // namespace

class ExchangeValues : public QObject {
    Q_OBJECT

private slots:
    void days() {
        using enum DayOrder;
        QCOMPARE(day("2026-05-18"), "2026-05-18");
        QCOMPARE(day("2026/5/8"), "2026-05-08");
        QCOMPARE(day("2026-05-18", MonthDayYear), "2026-05-18"); // the year in front tells
        QCOMPARE(day("18.5.2026", DayMonthYear), "2026-05-18");
        QCOMPARE(day("18. 5. 2026", DayMonthYear), "2026-05-18");
        QCOMPARE(day("05/06/2026", DayMonthYear), "2026-06-05");
        QCOMPARE(day("05/06/2026", MonthDayYear), "2026-05-06");
        QCOMPARE(day("05/06/2026"), "-"); // never chosen in silence
        QCOMPARE(day("18/05/26", DayMonthYear), "2026-05-18");
        QCOMPARE(day("18/05/98", DayMonthYear), "1998-05-18");
        QCOMPARE(day("31/06/2025", DayMonthYear), "-");
        QCOMPARE(day("29.2.2023", DayMonthYear), "-");
        QCOMPARE(day("29.2.2024", DayMonthYear), "2024-02-29");
        QCOMPARE(day("2026-05-18 09:40"), "2026-05-18");
        for (const char* no : {"", "may", "18", "18.5", "2026-13-01", "2026-05-18x", "1/2/3/4", "45063",
                               "18..2026", "99999999999999999999-1-1", "-1-1-2026"})
            QCOMPARE(day(no, DayMonthYear), "-");
    }

    void daysWithAName() {
        for (const char* text :
             {"18 May 2026", "18-May-26", "May 18, 2026", "18. Mai 2026", "18 de mayo de 2026", "18 mai 2026",
              "2026 May 18", "18th of May 2026", "18 may. 2026"})
            QCOMPARE(day(text), "2026-05-18");
        QCOMPARE(day("3 März 2024"), "2024-03-03");
        QCOMPARE(day("1er août 2024"), "2024-08-01");
        QCOMPARE(day("3 jui 2024"), "-"); // June or July
        QCOMPARE(day("3 Brumaire 2024"), "-");
    }

    // All names of months that Qt has from the Unicode CLDR for the four languages, long and short.
    void monthsOfTheFourLanguages() {
        for (const auto language : {QLocale::English, QLocale::Spanish, QLocale::French, QLocale::German})
            for (int month = 1; month <= 12; ++month)
                for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat}) {
                    const QString name = QLocale(language).monthName(month, format);
                    const std::string text = QStringLiteral("7 %1 2024").arg(name).toStdString();
                    QCOMPARE(day(text), records::toIso({2024, month, 7}));
                }
    }

    void orderOfAColumn() {
        QCOMPARE(orderOf({"2024-05-06", "2024-05-07"}), "ymd");
        QCOMPARE(orderOf({"5.6.2024", "6.7.2024"}), "dmy"); // with points: day first
        QCOMPARE(orderOf({"05/06/2024", "18/06/2024"}), "dmy");
        QCOMPARE(orderOf({"05/06/2024", "06/18/2024"}), "mdy");
        QCOMPARE(orderOf({"05-06-2024", "06-18-2024"}), "mdy");
        QCOMPARE(orderOf({"05/06/2024", "07/08/2024"}), "asked 07/08/2024");
        QCOMPARE(orderOf({"18/06/2024", "06/18/2024"}), "both 06/18/2024");
        QCOMPARE(orderOf({"05/05/2024"}), "dmy"); // the same either way
        QCOMPARE(orderOf({"nonsense", ""}), "ymd");
    }

    void clocks() {
        QCOMPARE(readClock("9:40").value_or(-1), 580);
        QCOMPARE(readClock("09:40:30").value_or(-1), 580);
        QCOMPARE(readClock("09:40:30.250").value_or(-1), 580);
        QCOMPARE(readClock("9h40").value_or(-1), 580);
        QCOMPARE(readClock("9.40 Uhr").value_or(-1), 580);
        QCOMPARE(readClock("9:40 pm").value_or(-1), 21 * 60 + 40);
        QCOMPARE(readClock("12:05 a.m.").value_or(-1), 5);
        for (const char* no : {"", "9", "24:00", "9:60", "9:4", "13:00 pm", "noon", "9:40x"})
            QVERIFY2(!readClock(no), no);
    }

    void numbers() {
        QCOMPARE(number("300", 10, 5000), "300");
        QCOMPARE(number(" 302,5 ", 10, 5000), "302.5");
        QCOMPARE(number("302.174", 10, 5000), "302.174"); // 302174 bees are in no jar
        QCOMPARE(number("1.200", 10, 5000), "1200");      // nor is one bee
        QCOMPARE(number("1,000", 0, 10000), "two ways");
        QCOMPARE(number("0.125", 0, 10000), "0.125");
        QCOMPARE(number("9.0", 0, 10000), "9");
        QCOMPARE(number("-1", 0, 10000), "small");
        QCOMPARE(number("10001", 0, 10000), "large");
        QCOMPARE(number(std::string(400, '9'), 0, 10000), "large");
        for (const char* no : {"", "x", "1.000,5", "1e3", "nan", "inf", "12 34", "--1", "=1+1", "9 mites"})
            QCOMPARE(number(no, 0, 10000), "no");
    }

    void namesAndLabelsToCompare() {
        QCOMPARE(comparableName("  Mites / 100 (Bees) "), "mites 100 bees");
        QCOMPARE(comparableName("Varroa %"), "varroa percent");
        QCOMPARE(comparableName("Nombre d'abeilles lavées"), "nombre d abeilles lavees");
        QCOMPARE(comparableLabel("B 12"), comparableLabel(" b12"));
        QCOMPARE(comparableLabel("Mühlgarten"), comparableLabel("MÜHL garten"));
        QVERIFY(comparableLabel("4") != comparableLabel("4a"));
        QVERIFY(comparableLabel("4-1") != comparableLabel("41"));
    }

    void columnsByTheirNames_data() {
        QTest::addColumn<QStringList>("names");
        QTest::addColumn<QString>("fields");
        QTest::newRow("en") << QStringList{"Date", "Hive #", "Apiary", "# of bees", "Mite count", "Comments"}
                            << "day colony yard bees mites note";
        QTest::newRow("es") << QStringList{"Fecha",  "Colmena",      "Colmenar", "Número de abejas",
                                           "Ácaros", "Observaciones"}
                            << "day colony yard bees mites note";
        QTest::newRow("fr") << QStringList{"Date",    "Ruche",    "Rucher", "Nombre d’abeilles",
                                           "Varroas", "Remarques"}
                            << "day colony yard bees mites note";
        QTest::newRow("de") << QStringList{"Datum",         "Volk-Nr.",   "Bienenstand",
                                           "Anzahl Bienen", "Milbenzahl", "Bemerkung"}
                            << "day colony yard bees mites note";
        QTest::newRow("percent") << QStringList{"date", "colony", "bees", "mites per 100 bees", "weather"}
                                 << "day colony bees mites_per_100 -";
        QTest::newRow("volume") << QStringList{"date", "colony", "Bees (ml)", "mites"}
                                << "day colony ml mites";
        QTest::newRow("cups") << QStringList{"date", "colony", "cups of bees", "mites in wash"}
                              << "day colony cups mites";
        QTest::newRow("nothing known") << QStringList{"a", "", "Sorte"} << "- - -";
        QTest::newRow("twice") << QStringList{"date", "mites", "mites", "hive"} << "day mites - colony";
    }

    void columnsByTheirNames() {
        QFETCH(QStringList, names);
        QFETCH(QString, fields);
        std::vector<std::string> plain;
        for (const QString& name : names)
            plain.push_back(name.toStdString());
        const ColumnMatch match = guessedMatch(plain);
        QStringList found(names.size(), "-");
        for (const WashField field : allWashFields)
            if (match[field])
                found[static_cast<qsizetype>(*match[field])] =
                    QString::fromUtf8(nameOf(field).data(), static_cast<qsizetype>(nameOf(field).size()));
        QCOMPARE(found.join(' '), fields);
    }

    void anOwnTableMatchesItself() {
        std::vector<std::string> names(sampleColumns().begin(), sampleColumns().end());
        QVERIFY(isOwnTable(names));
        const ColumnMatch match = guessedMatch(names);
        const auto named = [&](WashField field) { return match[field] ? names.at(*match[field]) : "-"; };
        QCOMPARE(named(WashField::Day), "scooped_at");
        QCOMPARE(named(WashField::Colony), "colony");
        QCOMPARE(named(WashField::Yard), "yard");
        QCOMPARE(named(WashField::Mites), "mites");
        QCOMPARE(named(WashField::Bees), "bees_mean");
        QCOMPARE(named(WashField::BeesCv), "bees_cv");
        QCOMPARE(named(WashField::SampleId), "sample_id");
        names.pop_back();
        names.erase(std::ranges::find(names, "sample_id"));
        QVERIFY(!isOwnTable(names));
    }

    void aColumnHoldsOneThing() {
        ColumnMatch match;
        match.set(WashField::Mites, 2);
        match.set(WashField::Bees, 2);
        QVERIFY(!match.has(WashField::Mites));
        QCOMPARE(match[WashField::Bees].value_or(9), std::size_t{2});
        match.set(WashField::Bees, std::nullopt);
        QVERIFY(!match.has(WashField::Bees));
    }

    void fieldNamesReadBack() {
        for (const WashField field : allWashFields)
            QVERIFY(washFieldFrom(nameOf(field)) == field);
        QVERIFY(!washFieldFrom("honey"));
    }
};

QTEST_GUILESS_MAIN(ExchangeValues)
#include "exchange_values.moc"
