// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/csv_line.h"
#include "desk/csv_reader.h"
#include "desk/season_cells.h"
#include "desk/table.h"

#include <QTest>

#include <cmath>
#include <limits>
#include <random>
#include <sstream>

using namespace halfcup::desk;

namespace {

using Rows = std::vector<std::vector<std::string>>;

// All rows of a text; a malformed one is a single cell "!" and its line.
Rows rowsOf(const std::string& text) {
    std::istringstream in(text);
    CsvReader reader(in);
    CsvRow row;
    Rows rows;
    while (reader.next(row)) {
        if (row.complaint.empty())
            rows.emplace_back(row.fields.begin(),
                              row.fields.begin() + static_cast<std::ptrdiff_t>(row.count));
        else
            rows.push_back({std::string(1, '!').append(std::to_string(row.line))});
    }
    return rows;
}

QString refusalOf(const char* columns, const char* cells) {
    std::istringstream in(std::string(columns) + "\n" + cells + "\n");
    CsvReader reader(in);
    try {
        Table table(reader, {{"mites", "", true}, {"bees", ""}});
        table.next();
        table.checkRow();
        table.count(0);
        table.number(1, 300.0, {0, 1e9, false, false});
    } catch (const std::runtime_error& error) {
        return QString::fromUtf8(error.what());
    }
    return {};
}

} // namespace

class DeskCsv : public QObject {
    Q_OBJECT

private slots:
    // RFC 4180, section 2, rules 1 to 7, with its own examples.
    void readsWhatTheRfcShows() {
        QCOMPARE(rowsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"),
                 (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
        QCOMPARE(rowsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
        QCOMPARE(rowsOf("\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
                 (Rows{{"aaa", "b \r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
        QCOMPARE(rowsOf("\"aaa\",\"b\"\"bb\",\"ccc\""), (Rows{{"aaa", "b\"bb", "ccc"}}));
    }

    void readsWhatPeopleSend() {
        QCOMPARE(rowsOf(""), Rows());
        QCOMPARE(rowsOf("\xEF\xBB\xBF"
                        "a,b\n1,2\n"),
                 (Rows{{"a", "b"}, {"1", "2"}}));
        QCOMPARE(rowsOf("\xEF\xBB\xBF\"a\",b\n"), (Rows{{"a", "b"}}));
        QCOMPARE(rowsOf("a,b\n\n1,2\n\r\n3,4\n\n"), (Rows{{"a", "b"}, {"1", "2"}, {"3", "4"}}));
        QCOMPARE(rowsOf("a\n1\n\n2\n"), (Rows{{"a"}, {"1"}, {""}, {"2"}}));
        QCOMPARE(rowsOf("a,b\n,\n1,\n"), (Rows{{"a", "b"}, {"", ""}, {"1", ""}}));
        QCOMPARE(rowsOf("a,b\n\"\",\"\"\n"), (Rows{{"a", "b"}, {"", ""}}));
    }

    void oneSlipDoesNotSwallowTheFile() {
        QCOMPARE(rowsOf("a,b\n\"1,2\n3,4\n5,6\n"), (Rows{{"a", "b"}, {"!2"}, {"3", "4"}, {"5", "6"}}));
        QCOMPARE(rowsOf("a,b\n\"1,2\n3,\"4\"\n"), (Rows{{"a", "b"}, {"!2"}, {"3", "4"}}));
        QCOMPARE(rowsOf("a,b\n\"1\"x,2\n3,4\n"), (Rows{{"a", "b"}, {"!2"}, {"3", "4"}}));
        QCOMPARE(rowsOf("a,b\n1\"x,2\n3,4\n"), (Rows{{"a", "b"}, {"!2"}, {"3", "4"}}));
        QCOMPARE(rowsOf("a,b\n1,\""), (Rows{{"a", "b"}, {"!2"}}));
        // Each of many slips is told, each good row between is kept, and lines keep their numbers.
        std::string text = "a,b\n";
        for (int i = 0; i < 200; ++i)
            text += i % 2 == 0 ? "\"1,2\n" : "3,4\n";
        const Rows rows = rowsOf(text);
        QCOMPARE(rows.size(), std::size_t(201));
        QCOMPARE(rows[199], (std::vector<std::string>{"!200"}));
        QCOMPARE(rows[200], (std::vector<std::string>{"3", "4"}));
    }

    void aCellLongerThanARowMayBeIsNotClosed() {
        const std::string text = "a,b\n\"" + std::string(kMostRowBytes, 'x') + "\n\",2\n3,4\n";
        const Rows rows = rowsOf(text);
        QCOMPARE(rows[1], (std::vector<std::string>{"!2"}));
        QCOMPARE(rows.back(), (std::vector<std::string>{"3", "4"}));
    }

    void whatIsWrittenReadsTheSame() {
        std::mt19937 random(20261125);
        const std::vector<std::string> pieces{"a", "\"", ",", "\n", "\r\n", " ", "\xC3\xA4", "=1+1", ""};
        for (int round = 0; round < 300; ++round) {
            CsvLine line;
            std::vector<std::string> cells;
            for (int i = 0; i < 4; ++i) {
                cells.emplace_back();
                for (unsigned n = random() % 5; n > 0; --n)
                    cells.back() += pieces[random() % pieces.size()];
                line.add(cells.back());
            }
            QCOMPARE(rowsOf(line.text() + "\r\n"), Rows{cells});
        }
    }

    void numbersDoNotFollowTheLocale() {
        QCOMPARE(numberText(0.1), std::string("0.1"));
        QCOMPARE(numberText(3.2087061021), std::string("3.208706102"));
        QCOMPARE(numberText(1e-12), std::string("1e-12"));
        QCOMPARE(numberText(std::numeric_limits<double>::infinity()), std::string("inf"));
        QCOMPARE(numberText(-std::numeric_limits<double>::infinity()), std::string("-inf"));
        QCOMPARE(numberText(std::nan("")), std::string());
        QCOMPARE(CsvLine().add(1.5).add(std::string_view()).add(7LL).addEmpty(2).text(),
                 std::string("1.5,,7,,"));
    }

    void everySlipNamesRowAndColumn_data() {
        QTest::addColumn<QString>("cells");
        QTest::addColumn<QString>("says");
        const auto row = [](const char* cells, const char* says) {
            QTest::newRow(cells) << QString::fromUtf8(cells) << QString::fromUtf8(says);
        };
        row("nan,300", "Row 2, column 1 (mites): \"nan\" is not a number.");
        row("inf,300", "Row 2, column 1 (mites): \"inf\" is not allowed here; a number is needed.");
        row("-1,300", "Row 2, column 1 (mites): \"-1\" is too small: it has to be at least 0.");
        row(",300", "Row 2, column 1 (mites): nothing is written here, and there is no default.");
        row("  ,300", "Row 2, column 1 (mites): nothing is written here, and there is no default.");
        row("nine,300", "Row 2, column 1 (mites): \"nine\" is not a number.");
        row("1e999,300", "Row 2, column 1 (mites): \"1e999\" is too large or too small to be read.");
        row("1e12,300", "Row 2, column 1 (mites): \"1e12\" is too large: it can be 1000000000 at most.");
        row("9.5,300", "Row 2, column 1 (mites): \"9.5\" is not a whole number.");
        row("0x9,300", "Row 2, column 1 (mites): \"0x9\" is not a number.");
        row("9,0", "Row 2, column 2 (bees): \"0\" is too small: it has to be above 0.");
        row("9,\"300,5\"", "Row 2, column 2 (bees): \"300,5\" is not a number: the decimal mark is a point.");
        row("9", "Row 2: it has 1 cell, the first row has 2.");
        row("9,300,1", "Row 2: it has 3 cells, the first row has 2.");
        row("\"9,300", "Row 2: a quotation mark is opened and not closed.");
        row("9,300", "");
        row(" 9 ,\t300", "");
        row("9.0,3e2", "");
        row("9,", "");
    }
    void everySlipNamesRowAndColumn() {
        QFETCH(QString, cells);
        QFETCH(QString, says);
        QCOMPARE(refusalOf("mites,bees", cells.toUtf8().constData()), says);
    }

    void aTableThatCannotBeUsedSaysWhy() {
        QVERIFY(refusalOf("", "9,300").startsWith(QLatin1String("There is no column \"mites\".")));
        QVERIFY(refusalOf("bees", "300").startsWith(QLatin1String("There is no column \"mites\".")));
        QVERIFY(refusalOf("mites,bees,mites", "9,300,8")
                    .startsWith(QLatin1String("Columns 1 and 3 are both named \"mites\"")));
        QVERIFY(refusalOf("mites,\"bees", "9,300").contains(QLatin1String("which names the columns")));
        std::istringstream nothing;
        CsvReader reader(nothing);
        QVERIFY_EXCEPTION_THROWN(Table(reader, {{"mites", "", true}}), InputError);
    }

    void aSentenceNeverCarriesALineBreakOrHalfACharacter() {
        QCOMPARE(shown("a\nb\"c"), std::string("\"a?b'c\""));
        const std::string umlauts = shown(std::string(1, 'x').append(QString(40, QChar(0xE4)).toStdString()));
        QVERIFY(QString::fromStdString(umlauts).toStdString() == umlauts); // still valid UTF-8
        QVERIFY(umlauts.ends_with("...\""));
    }

    void datesAreDaysOfTheCalendar() {
        QCOMPARE(seasonDay(readDate("2026-01-01")), 1);
        QCOMPARE(seasonDay(readDate("2026-06-15")), 166);
        QCOMPARE(seasonDay(readDate("2024-06-15")), 166); // the same season in a leap year
        QCOMPARE(seasonDay(readDate("2024-02-29")), 59);
        QCOMPARE(seasonDay(readDate("2026-12-31")), 365);
        const DayCount days{readDate("2026-06-15")};
        QCOMPARE(days.of(readDate("2027-04-15")), 470);
        for (const char* bad : {"", "2026-6-15", "2026-02-29", "2026-13-01", "15.06.2026", "2026-06-15T00:00",
                                "0000-01-01", "20a6-06-15"})
            QVERIFY_EXCEPTION_THROWN(readDate(bad), std::domain_error);
    }

    void treatmentsAreReadOrRefused() {
        const DayCount days{readDate("2026-06-15")};
        const auto two = readTreatments("whole 0.95 2026-08-01 42; phoretic  .9 2026-07-15 ;", days);
        QCOMPARE(two.size(), std::size_t(2));
        QCOMPARE(two[0].firstDay, 213);
        QCOMPARE(two[0].days, 42);
        QCOMPARE(two[1].reach, halfcup::mites::TreatmentReach::OnBees);
        QCOMPARE(two[1].efficacy, 0.9);
        QCOMPARE(two[1].days, 1);
        QVERIFY(readTreatments("", days).empty());
        for (const char* bad :
             {"whole", "half 0.9 2026-08-01 1", "whole 1 2026-08-01 42", "whole -.1 2026-08-01 42",
              "whole nan 2026-08-01 42", "whole 0.9 2026-08-01 0", "whole 0.9 2026-08-01 1.5",
              "whole 0.9 08-01 1", "whole 0.9 2026-08-01 1 1"})
            QVERIFY_EXCEPTION_THROWN(readTreatments(bad, days), std::domain_error);
        QCOMPARE(readCarriedIn("5 2026-08-15 2026-10-14", days).at(0).lastDay, 287);
        for (const char* bad : {"5", "5 2026-08-15", "-5 2026-08-15 2026-10-14", "5 2026-10-15 2026-08-14",
                                "inf 2026-08-15 2026-10-14"})
            QVERIFY_EXCEPTION_THROWN(readCarriedIn(bad, days), std::domain_error);
        QVERIFY_EXCEPTION_THROWN(readDates(" ; "), std::domain_error);
    }
};

QTEST_APPLESS_MAIN(DeskCsv)
#include "desk_csv.moc"
