// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// CSV by RFC 4180, read back by Python's csv module.
#include "exchange/csv_writer.h"
#include "exchange_python.h"

#include <cmath>
#include <cstring>
#include <limits>
#include <random>

using exchange_test::readByPython;
using exchange_test::Rows;
using halfcup::exchange::CsvWriter;

namespace {

/// One row of texts, as the writer puts it.
std::string written(const std::vector<std::string>& cells) {
    std::string out;
    CsvWriter csv([&](std::string_view bytes) { out += bytes; });
    for (const std::string& cell : cells)
        csv.text(cell);
    csv.endRow();
    return out;
}

std::string defused(const std::string& text) {
    std::string out(1, '\'');
    return out.append(text);
}

template <typename Use>
std::string cell(Use&& use) {
    std::string out;
    CsvWriter csv([&](std::string_view bytes) { out += bytes; });
    use(csv);
    csv.endRow();
    return out.substr(0, out.size() - 2);
}

} // namespace

class ExchangeCsvTest : public QObject {
    Q_OBJECT

private slots:
    // RFC 4180, section 2: rules 1 (CRLF), 5 and 6 (quotes around), 7 (quotes doubled), with its own
    // examples.
    void bytesAreThoseOfRfc4180() {
        QCOMPARE(written({"aaa", "bbb", "ccc"}), std::string("aaa,bbb,ccc\r\n"));
        QCOMPARE(written({"aaa", "b\r\nbb", "ccc"}), std::string("aaa,\"b\r\nbb\",ccc\r\n"));
        QCOMPARE(written({"aaa", "b\"bb", "ccc"}), std::string("aaa,\"b\"\"bb\",ccc\r\n"));
        QCOMPARE(written({"a,b", "", " c "}), std::string("\"a,b\",, c \r\n"));
    }

    void textsComeBackAsTheyWere() {
        const Rows rows{
            {"4", "nuc by the gate", "a, b", "say \"hive\"", "\"\"", "\"", "line\nbreak", "line\r\nbreak",
             "\rx"},
            {"", " blank ends ", "\xF0\x9F\x90\x9D\xF0\x9F\x8D\xAF", "\xC3\x84rmel", ",", ",,", "\n",
             "'quoted'", "1;2"},
            // Right-to-left text with its marks, a word joiner, a byte order mark inside, a lone combining
            // mark.
            {"\xE2\x80\x8F\xD7\x9B\xD7\x95\xD7\x95\xD7\xA8\xD7\xAA\xE2\x80\x8E 4",
             "\xE2\x80\xAE"
             "4321\xE2\x80\xAC",
             "a\xE2\x81\xA0"
             "b",
             "x\xEF\xBB\xBF", "\xCC\x88", "x=1", "1-2"},
        };
        std::string all;
        for (const auto& row : rows)
            all += written(row);
        Rows expected = rows;
        expected[0][8] = "'\rx"; // begin like formulas
        expected[1][6] = "'\n";
        QCOMPARE(readByPython(all), expected);
    }

    // RFC 4180, section 2: TEXTDATA has no control characters; and what is left must still be defused.
    void controlCharactersAreLeftOut() {
        const std::string hidden("\x01=1+1\x7F\0x", 8);
        QCOMPARE(readByPython(written({hidden, "a\x1B[31mb", "\x02"})), (Rows{{"'=1+1x", "a[31mb", ""}}));
    }

    // What spreadsheets with a decimal comma read as numbers [common practice, no source]; that one does is
    // seen by people_outside.py.
    void semicolonsGoWithDecimalCommas() {
        std::string out;
        CsvWriter csv([&](std::string_view bytes) { out += bytes; },
                      halfcup::exchange::CsvDialect::Semicolon);
        csv.text("a;b");
        csv.number(1.5);
        csv.decimals(-0.25, 2);
        csv.text("1.5");
        csv.text("=x,y");
        csv.endRow();
        csv.number(std::int64_t{7});
        csv.endRow();
        QCOMPARE(out, std::string("\xEF\xBB\xBF\"a;b\";1,5;-0,25;1.5;'=x,y\r\n7\r\n"));
    }

    void formulasAreDefused_data() {
        QTest::addColumn<QByteArray>("text");
        for (const char* text : {"=1+1", "+1", "-1+2", "@SUM(A1)", "\t=1+1", "\r=1+1", "\n=1+1",
                                 "=HYPERLINK(\"http://x.invalid\",\"4\")", "=1,2", "-", "+49 30 1",
                                 "\xEF\xBC\x9D"
                                 "1+1",
                                 "\xEF\xBC\x8B"
                                 "1",
                                 "\xEF\xBC\x8D"
                                 "1",
                                 "\xEF\xBC\xA0"
                                 "x"})
            QTest::newRow(text) << QByteArray(text);
    }
    void formulasAreDefused() {
        QFETCH(const QByteArray, text);
        const auto rows = readByPython(written({"before", text.toStdString(), "after"}));
        QCOMPARE(rows, (Rows{{"before", defused(text.toStdString()), "after"}}));
    }

    void numbersAreLeftAlone() {
        QCOMPARE(cell([](CsvWriter& c) { c.number(std::int64_t{-7}); }), std::string("-7"));
        QCOMPARE(cell([](CsvWriter& c) { c.number(-0.25); }), std::string("-0.25"));
        QCOMPARE(cell([](CsvWriter& c) { c.number(118.294); }), std::string("118.294"));
        QCOMPARE(cell([](CsvWriter& c) { c.number(3.0); }), std::string("3"));
        QCOMPARE(cell([](CsvWriter& c) { c.number(std::numeric_limits<std::int64_t>::min()); }),
                 std::string("-9223372036854775808"));
        QCOMPARE(cell([](CsvWriter& c) { c.significant(3.20871234, 6); }), std::string("3.20871"));
        QCOMPARE(cell([](CsvWriter& c) { c.significant(0.5, 6); }), std::string("0.5"));
        QCOMPARE(cell([](CsvWriter& c) { c.decimals(-33.896, 2); }), std::string("-33.90"));
        QCOMPARE(cell([](CsvWriter& c) { c.decimals(-0.001, 2); }), std::string("0.00"));
        QCOMPARE(cell([](CsvWriter& c) { c.decimals(799.4, 0); }), std::string("799"));
        QCOMPARE(cell([](CsvWriter& c) { c.flag(true); }), std::string("yes"));
        QCOMPARE(cell([](CsvWriter& c) { c.flag(false); }), std::string("no"));
    }

    void whatIsNoNumberIsEmpty() {
        for (const double value : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
            QCOMPARE(cell([&](CsvWriter& c) { c.number(value); }), std::string());
            QCOMPARE(cell([&](CsvWriter& c) { c.significant(value, 6); }), std::string());
            QCOMPARE(cell([&](CsvWriter& c) { c.decimals(value, 2); }), std::string());
        }
    }

    void doublesReadBackExactly() {
        std::mt19937_64 random(43);
        std::string all;
        std::vector<double> values{0.0, 5e-324, 1.7976931348623157e308, -118.294, 0.1, 1e22};
        for (int i = 0; i < 2'000; ++i) {
            const std::uint64_t bits = random();
            double value = 0;
            static_assert(sizeof value == sizeof bits);
            std::memcpy(&value, &bits, sizeof value);
            if (std::isfinite(value))
                values.push_back(value);
        }
        CsvWriter csv([&](std::string_view bytes) { all += bytes; });
        for (const double value : values) {
            csv.number(value);
            csv.decimals(value, 17); // as long as it gets, and still inside its buffer
            csv.endRow();
        }
        const Rows rows = readByPython(all);
        QCOMPARE(rows.size(), values.size());
        for (std::size_t i = 0; i < values.size(); ++i)
            QCOMPARE(QByteArray::fromStdString(rows[i][0]).toDouble(), values[i]);
    }

    void anyTextSurvives() {
        const std::vector<std::string> letters{"a",
                                               "\"",
                                               ",",
                                               "\r",
                                               "\n",
                                               "=",
                                               "'",
                                               " ",
                                               ";",
                                               "\t",
                                               "\xC3\xA4",
                                               "\xF0\x9F\x90\x9D",
                                               "\xE2\x80\x8F",
                                               "\xEF\xBC\x9D"};
        std::mt19937 random(47);
        Rows expected;
        std::string all;
        for (int i = 0; i < 5'000; ++i) {
            std::vector<std::string> row(3);
            for (std::string& text : row)
                for (unsigned n = random() % 6; n > 0; --n)
                    text += letters[random() % letters.size()];
            all += written(row);
            for (std::string& text : row)
                if (!text.empty() && (std::string("=\t\r\n").find(text[0]) != std::string::npos ||
                                      text.starts_with("\xEF\xBC\x9D")))
                    text = defused(text);
            expected.push_back(row);
        }
        QCOMPARE(readByPython(all), expected);
    }

    void rowsAreHandedOnOneByOne() { // a file of any length needs memory for one row
        std::vector<std::string> pieces;
        CsvWriter csv([&](std::string_view bytes) { pieces.emplace_back(bytes); });
        for (int i = 0; i < 3; ++i) {
            csv.number(std::int64_t{i});
            csv.endRow();
        }
        QCOMPARE(pieces, (std::vector<std::string>{"0\r\n", "1\r\n", "2\r\n"}));
    }
};

QTEST_GUILESS_MAIN(ExchangeCsvTest)
#include "exchange_csv.moc"
