// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Reading tables that other programs wrote: dialects, codes, limits, slips.
#include "exchange/csv_reader.h"
#include "patience.h"
#include "table_kit.h"

#include <QProcess>
#include <QStandardPaths>
#include <QStringEncoder>
#include <QTemporaryDir>

#include <sstream>

using namespace halfcup::exchange;
using namespace halfcup::tabletest;

namespace {

std::string cellOf(const TextTable& table, std::size_t row, std::size_t column) {
    return std::string(table.rows.at(row).cell(column));
}

std::string utf16(const QString& text, QStringConverter::Encoding encoding) {
    QStringEncoder encoder(encoding, QStringConverter::Flag::WriteBom);
    const QByteArray bytes = encoder(text);
    return bytes.toStdString();
}

} // namespace

class ExchangeTable : public QObject {
    Q_OBJECT

private slots:
    void separatorIsFoundByLooking_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<char>("separator");
        QTest::newRow("comma") << QByteArray("day,colony,mites\n2024-05-01,4,9\n") << ',';
        QTest::newRow("semicolon, decimal commas")
            << QByteArray("Datum;Volk;Befall\n1.5.2024;4;3,2\n") << ';';
        QTest::newRow("tab") << QByteArray("day\tcolony\tmites\n2024-05-01\t4, by the gate\t9\n") << '\t';
        QTest::newRow("commas in names")
            << QByteArray("Datum;Volk;Milben, gesamt\n1.5.2024;4;9\n2.5.2024;5, neu;3\n") << ';';
        QTest::newRow("in quotation marks")
            << QByteArray("day,colony,note\n2024-05-01,4,\"a;b;c;d\"\n2024-05-01,5,\"a;b;c;d\"\n") << ',';
        QTest::newRow("named") << QByteArray("sep=;\r\nday;a,b\r\n2024-05-01;c,d\r\n") << ';';
    }

    void separatorIsFoundByLooking() {
        QFETCH(QByteArray, text);
        QFETCH(char, separator);
        const TextTable table = readTable(text.toStdString());
        QCOMPARE(table.separator, separator);
        QVERIFY(table.names.size() >= 2);
        QVERIFY(table.rows.at(0).complaint().empty());
    }

    void codesOfLetters() {
        const QString text = QStringLiteral("Volk,Notiz\r\n4,Größe – gut €\r\n");
        const std::string expected = "Größe – gut €";
        for (const std::string& bytes :
             {text.toStdString(), "\xEF\xBB\xBF" + text.toStdString(), utf16(text, QStringConverter::Utf16LE),
              utf16(text, QStringConverter::Utf16BE)}) {
            const TextTable table = readTable(bytes);
            QCOMPARE(table.names.at(0), std::string("Volk"));
            QCOMPARE(cellOf(table, 0, 1), expected);
        }
        // Bytes by the WHATWG Encoding Standard, index windows-1252: 96 is an en dash, 80 the euro.
        const TextTable old = readTable("Volk;Notiz\r\n4;Gr\xF6\xDF"
                                        "e \x96 gut \x80\r\n");
        QCOMPARE(old.code, TextCode::Windows1252);
        QCOMPARE(cellOf(old, 0, 1), expected);
    }

    // A letter that somebody's program could not read is a letter, not a sign of another code.
    void theReplacementCharacterIsUtf8() {
        const TextTable table = readTable("a,b\n1,Gr\xEF\xBF\xBD\xC3\x9F\n");
        QCOMPARE(table.code, TextCode::Utf8);
        QCOMPARE(readTable("a,b\n1,cut\xC3\n").code, TextCode::Windows1252);
    }

    void allOfWindows1252AsPythonHasIt() {
        // Python's codec is another implementation; it leaves the five open bytes undefined.
        std::string bytes = "a,b\n";
        QProcess python;
        python.start("python3",
                     {"-c", "import sys\nfor i in range(128, 256):\n"
                            "  try: sys.stdout.buffer.write(bytes([i]).decode('cp1252').encode() + b'\\n')\n"
                            "  except UnicodeDecodeError: sys.stdout.buffer.write(b'-\\n')"});
        QVERIFY(python.waitForFinished(30'000));
        const QList<QByteArray> lines = python.readAllStandardOutput().split('\n');
        QVERIFY(lines.size() >= 128);
        for (int i = 128; i < 256; ++i)
            bytes += std::string(1, static_cast<char>(i)) + "x,\xFF\n";
        const TextTable table = readTable(bytes);
        for (int i = 128; i < 256; ++i) {
            const QByteArray theirs = lines.at(i - 128);
            if (theirs != "-" && i != 0xA0) // a no-break space at the edge is trimmed
                QCOMPARE(QByteArray::fromStdString(cellOf(table, static_cast<std::size_t>(i - 128), 0)),
                         theirs + "x");
        }
    }

    void slipsAreNamedByTheirLineAndSwallowNothing() {
        const TextTable table = readTable("a,b,c\n"
                                          "1,2,3\n"
                                          "1,2\n"
                                          "1,\"open,3\n"
                                          "1,\"two\nlines\",3\n"
                                          "1,\"x\"y,3\n"
                                          ",,\n"
                                          "7,8,9\n");
        QCOMPARE(table.rows.size(), std::size_t{6});
        QCOMPARE(english(table.rows[1].complaint()),
                 std::string("the row of names has 3 cells, this one 2."));
        QCOMPARE(table.rows[1].line(), std::size_t{3});
        // The mark opened in line 4 is closed by the one that opens line 5's cell, and text follows it.
        QCOMPARE(table.rows[2].line(), std::size_t{4});
        QVERIFY(!table.rows[2].complaint().empty());
        QCOMPARE(cellOf(table, 3, 1), std::string("two\nlines"));
        QCOMPARE(table.rows[4].line(), std::size_t{7});
        QCOMPARE(english(table.rows[4].complaint()),
                 std::string("there is text behind a closed quotation mark."));
        QCOMPARE(table.rows[5].line(), std::size_t{9});
        QCOMPARE(cellOf(table, 5, 2), std::string("9"));
    }

    void whatIsNoTableIsSaid() {
        QCOMPARE(refusal(""), QStringLiteral("There is nothing in this file."));
        QCOMPARE(refusal("\n\n,,\n"), QStringLiteral("There is nothing in this file."));
        QVERIFY(refusal("PK\x03\x04 and so on").contains("Save it there as CSV"));
        QVERIFY(refusal(std::string("a,b\n1,\0\n", 8)).startsWith("Line 2 has a zero byte"));
        QVERIFY(refusal("\xFF\xFE"
                        "a")
                    .contains("UTF-16"));
        QVERIFY(refusal("2024-05-01,4,9\n2024-05-08,4,3\n").startsWith("The first row has a day in it"));
        QVERIFY(refusal("a,\"b\n").startsWith("Line 1, which has to name the columns"));
        QVERIFY(readTable("day,colony,mites\n").rows.empty()); // names alone: a table of nothing
    }

    void limits() {
        std::string wide = "a";
        for (std::size_t i = 0; i < mostTableColumns; ++i)
            wide += ",a";
        QVERIFY(refusal(wide + "\n").startsWith("The table has 1001 columns"));
        std::string high = "a,b\n";
        for (std::size_t i = 0; i <= mostTableRows; ++i)
            high += "1,2\n";
        QVERIFY(refusal(high).startsWith("The table has more than 100,000 rows"));
        const TextTable table = readTable("a,b\n1," + std::string(mostCellBytes + 1, 'x') + "\n1,2\n");
        QCOMPARE(english(table.rows.at(0).complaint()),
                 std::string("cell 2 is longer than a million letters."));
        QVERIFY(table.rows.at(1).complaint().empty());
        QVERIFY(refusal(std::string(mostTableBytes + 1, 'x')).startsWith("The file is larger than 64 MB"));
    }

    // A cell opened and never closed, over more lines than it may have, again and again: each line is read a
    // few times, not once for each line before it.
    void readingStaysLinear() {
        constexpr int blocks = 5, lines = 600'000;
        std::string hostile = "a,b\n";
        for (int block = 0; block < blocks; ++block) {
            hostile += "1,\"\n";
            for (int i = 0; i < lines; ++i)
                hostile += "\"\"\n";
        }
        std::istringstream in(hostile);
        CsvReader reader(in, {',', mostCellBytes});
        CsvRow row;
        int rows = 0, malformed = 0;
        QElapsedTimer timer;
        timer.start();
        while (reader.next(row)) {
            ++rows;
            malformed += !row.complaint.empty();
        }
        QCOMPARE(rows, 1 + blocks * (1 + lines));
        QCOMPARE(malformed, blocks);
        QVERIFY2(static_cast<double>(timer.elapsed()) < 20'000 * patience(),
                 qPrintable(QString::number(timer.elapsed())));
    }

    void filesThatAreNone() {
        const QTemporaryDir folder;
        const auto said = [](const QString& path) {
            try {
                static_cast<void>(readTableFile(path));
            } catch (const TableError& error) {
                return QString::fromUtf8(error.what());
            }
            return QString();
        };
        QVERIFY(said(folder.filePath("none.csv")).endsWith("is not there any more."));
        QVERIFY(said(folder.path()).endsWith("is no file."));
        QFile sparse(folder.filePath("sparse.csv")); // 2 GB that take no room
        QVERIFY(sparse.open(QIODevice::WriteOnly) && sparse.resize(2'000'000'000));
        sparse.close();
        QVERIFY(said(sparse.fileName()).startsWith("The file is larger than 64 MB"));
    }

    // Gnumeric's ssconvert as the writer: a spreadsheet, not ours, saved as text in its own ways.
    void asASpreadsheetWritesIt() {
        const QString converter = QStandardPaths::findExecutable("ssconvert");
        if (converter.isEmpty())
            QSKIP("ssconvert (Debian's package gnumeric) is not here.");
        const QTemporaryDir folder;
        QFile source(folder.filePath("source.csv"));
        QVERIFY(source.open(QIODevice::WriteOnly));
        source.write("Day,Colony,Mites,Note\n2024-05-18,4,9,\"says \"\"so\"\", he, "
                     "and\nsmiles\"\n2024-06-01,B12,0,Größe\n");
        source.close();
        const auto convert = [&](const QStringList& options, const QString& from, const QString& to) {
            QProcess process;
            process.start(converter, options + QStringList{folder.filePath(from), folder.filePath(to)});
            return process.waitForFinished(60'000) && process.exitCode() == 0;
        };
        QVERIFY(convert({}, "source.csv", "sheet.xlsx"));
        QVERIFY2(refusal(QByteArray("PK\x03\x04").toStdString()).contains("CSV"), "a sheet is told apart");
        const QStringList shapes{"separator=; format=preserve charset=WINDOWS-1252 eol=windows",
                                 "separator='\t' format=preserve charset=UTF-16 eol=unix",
                                 "separator=, format=preserve charset=UTF-8 quoting-mode=always"};
        for (const QString& shape : shapes) {
            QVERIFY(convert({"-T", "Gnumeric_stf:stf_assistant", "-O", shape}, "sheet.xlsx", "out.txt"));
            const TextTable table = readTableFile(folder.filePath("out.txt"));
            QVERIFY2(table.names == (std::vector<std::string>{"Day", "Colony", "Mites", "Note"}),
                     qPrintable(shape));
            QCOMPARE(table.rows.size(), std::size_t{2});
            QCOMPARE(cellOf(table, 0, 3), std::string("says \"so\", he, and\nsmiles"));
            QCOMPARE(cellOf(table, 1, 1), std::string("B12"));
            QCOMPARE(cellOf(table, 1, 3), std::string("Größe"));
            const auto rows = readWashes(table, rulesFor(table, "Home"));
            QCOMPARE(rows.at(0).state, RowState::Good);
            QCOMPARE(rows.at(0).wash.mites, 9);
            QCOMPARE(halfcup::records::toIso(halfcup::records::localDate(rows.at(1).wash.at)),
                     std::string("2024-06-01"));
        }
    }
};

QTEST_GUILESS_MAIN(ExchangeTable)
#include "exchange_table.moc"
