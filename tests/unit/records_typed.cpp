// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What a keeper types: taken as meant, or refused with the right reason. Never taken as something else.
#include "records/count.h"
#include "records/typed_input.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace halfcup::records;

namespace {

enum class Kind { Number, Count, Bees, VolumeMl, Line };

/// A value or a problem, as one of the two.
struct Outcome {
    std::optional<double> value;
    std::optional<InputProblem> problem;
};

template <typename T>
Outcome outcome(const Checked<T>& checked) {
    if (const T* value = std::get_if<T>(&checked))
        return {static_cast<double>(*value), {}};
    return {{}, std::get<InputProblem>(checked)};
}

Outcome read(Kind kind, const std::string& text) {
    switch (kind) {
    case Kind::Number:
        return outcome(readNumber(text));
    case Kind::Count:
        return outcome(readCount(text));
    case Kind::Bees:
        return outcome(readBees(text));
    case Kind::VolumeMl:
        return outcome(readVolumeMl(text));
    case Kind::Line:
        return outcome(readLine(text));
    }
    return {};
}

} // namespace

class RecordsTypedTest : public QObject {
    Q_OBJECT

private slots:
    void figuresAreTakenAsMeant_data() {
        QTest::addColumn<Kind>("kind");
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<double>("value");
        QTest::newRow("count 0") << Kind::Count << QByteArray("0") << 0.0;
        QTest::newRow("count 9") << Kind::Count << QByteArray("9") << 9.0;
        QTest::newRow("count, blanks") << Kind::Count << QByteArray(" \t12\r\n") << 12.0;
        QTest::newRow("count, zeros before") << Kind::Count << QByteArray("007") << 7.0;
        QTest::newRow("count, plus") << Kind::Count << QByteArray("+7") << 7.0;
        QTest::newRow("count, minus zero") << Kind::Count << QByteArray("-0") << 0.0;
        QTest::newRow("largest count") << Kind::Count << QByteArray("10000") << 10000.0;
        QTest::newRow("fewest bees") << Kind::Bees << QByteArray("10") << 10.0;
        QTest::newRow("bees") << Kind::Bees << QByteArray("314") << 314.0;
        QTest::newRow("most bees") << Kind::Bees << QByteArray("5000") << 5000.0;
        QTest::newRow("volume, point") << Kind::VolumeMl << QByteArray("118.294") << 118.294;
        QTest::newRow("volume, comma") << Kind::VolumeMl << QByteArray("118,294") << 118.294;
        QTest::newRow("smallest volume") << Kind::VolumeMl << QByteArray("10") << 10.0;
        QTest::newRow("largest volume") << Kind::VolumeMl << QByteArray("1000") << 1000.0;
        QTest::newRow("line, comma") << Kind::Line << QByteArray("1,7") << 1.7;
        QTest::newRow("line, no zero") << Kind::Line << QByteArray(".5") << 0.5;
        QTest::newRow("line, nothing behind") << Kind::Line << QByteArray("3.") << 3.0;
        QTest::newRow("largest line") << Kind::Line << QByteArray("100") << 100.0;
        QTest::newRow("number below zero") << Kind::Number << QByteArray("-12.5") << -12.5;
    }
    void figuresAreTakenAsMeant() {
        QFETCH(const Kind, kind);
        QFETCH(const QByteArray, text);
        const Outcome result = read(kind, text.toStdString());
        QVERIFY(result.value);
        QTEST(*result.value, "value");
    }

    void theRestIsRefusedWithItsReason_data() {
        QTest::addColumn<Kind>("kind");
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<InputProblem>("problem");
        using P = InputProblem;
        for (const Kind kind : {Kind::Number, Kind::Count, Kind::Bees, Kind::VolumeMl, Kind::Line}) {
            const auto row = [&](const char* name, const QByteArray& text, P problem) {
                QTest::addRow("%s, kind %d", name, static_cast<int>(kind)) << kind << text << problem;
            };
            row("empty", "", P::Empty);
            row("blanks", " \t\n ", P::Empty);
            row("word", "nine", P::NotANumber);
            row("number and unit", "9 mites", P::NotANumber);
            row("two numbers", "9 9", P::NotANumber);
            row("sign alone", "-", P::NotANumber);
            row("two signs", "+-9", P::NotANumber);
            row("point alone", ".", P::NotANumber);
            row("two marks", "1,000.5", P::NotANumber);
            row("exponent", "1e3", P::NotANumber);
            row("hexadecimal", "0x20", P::NotANumber);
            row("not a number", "nan", P::NotANumber);
            row("endless", "inf", P::NotANumber);
            row("a half", "\xC2\xBD", P::NotANumber);
            row("other digits", "\xD9\xA3\xD9\xA0", P::NotANumber);
            row("nul inside", QByteArray("3\0 0", 4), P::NotANumber);
            row("400 digits", QByteArray(400, '9'), P::TooLarge);
        }
        QTest::newRow("count over the limit") << Kind::Count << QByteArray("10001") << P::TooLarge;
        QTest::newRow("count of 30 digits") << Kind::Count << QByteArray(30, '7') << P::TooLarge;
        QTest::newRow("count below 0") << Kind::Count << QByteArray("-1") << P::Negative;
        QTest::newRow("count far below 0") << Kind::Count << "-" + QByteArray(400, '9') << P::Negative;
        QTest::newRow("count with fraction") << Kind::Count << QByteArray("8.5") << P::NotWhole;
        QTest::newRow("count with comma") << Kind::Count << QByteArray("8,5") << P::NotWhole;
        // One thousand, grouped as many write it, must not become one mite.
        QTest::newRow("grouped count") << Kind::Count << QByteArray("1,000") << P::NotWhole;
        QTest::newRow("grouped count, point") << Kind::Count << QByteArray("1.000") << P::NotWhole;
        QTest::newRow("no bees") << Kind::Bees << QByteArray("0") << P::TooSmall;
        QTest::newRow("too few bees") << Kind::Bees << QByteArray("9") << P::TooSmall;
        QTest::newRow("too many bees") << Kind::Bees << QByteArray("5001") << P::TooLarge;
        QTest::newRow("bees below 0") << Kind::Bees << QByteArray("-300") << P::Negative;
        QTest::newRow("half a bee") << Kind::Bees << QByteArray("300.5") << P::NotWhole;
        QTest::newRow("no volume") << Kind::VolumeMl << QByteArray("0") << P::TooSmall;
        QTest::newRow("volume too small") << Kind::VolumeMl << QByteArray("9.99") << P::TooSmall;
        QTest::newRow("volume too large") << Kind::VolumeMl << QByteArray("1000.1") << P::TooLarge;
        QTest::newRow("volume below 0") << Kind::VolumeMl << QByteArray("-118") << P::Negative;
        QTest::newRow("line at 0") << Kind::Line << QByteArray("0") << P::TooSmall;
        QTest::newRow("line below 0") << Kind::Line << QByteArray("-3") << P::Negative;
        QTest::newRow("line over a hundred") << Kind::Line << QByteArray("100.5") << P::TooLarge;
        QTest::newRow("line too small to be one")
            << Kind::Line << "0." + QByteArray(400, '0') + "1" << P::TooSmall;
    }
    void theRestIsRefusedWithItsReason() {
        QFETCH(const Kind, kind);
        QFETCH(const QByteArray, text);
        const Outcome result = read(kind, text.toStdString());
        QVERIFY2(!result.value, "it was taken");
        QTEST(*result.problem, "problem");
    }

    void anyTextGivesAFigureInRangeOrAProblem() {
        std::mt19937 random(23);
        const std::string letters = "0123456789.,-+ eE\t\xC3x";
        for (int i = 0; i < 100'000; ++i) {
            std::string text(random() % 12, ' ');
            for (char& c : text)
                c = letters[random() % letters.size()];
            if (const auto count = outcome(readCount(text)).value)
                QVERIFY(*count >= 0 && *count <= static_cast<double>(largestCount) &&
                        *count == std::floor(*count));
            if (const auto bees = outcome(readBees(text)).value)
                QVERIFY(*bees >= fewestBees && *bees <= mostBees && *bees == std::floor(*bees));
            if (const auto line = outcome(readLine(text)).value)
                QVERIFY(*line > 0 && *line <= largestLine);
            if (const auto volume = outcome(readVolumeMl(text)).value)
                QVERIFY(*volume >= smallestScoopMl && *volume <= largestScoopMl);
            if (const auto number = outcome(readNumber(text)).value)
                QVERIFY(std::isfinite(*number));
        }
    }

    void namesFitALabel() {
        QVERIFY(!checkName("4"));
        QVERIFY(!checkName("  nuc by the gate  "));
        QVERIFY(!checkName("\xE2\x9C\xBF meadow")); // a flower
        QCOMPARE(checkName(""), std::optional{InputProblem::Empty});
        QCOMPARE(checkName(" \t\n"), std::optional{InputProblem::Empty});
        std::string umlauts; // two bytes each: characters count, not bytes
        for (std::size_t i = 0; i < longestName; ++i)
            umlauts += "\xC3\xA4";
        QVERIFY(!checkName(umlauts));
        QVERIFY(!checkName(" " + umlauts + " "));
        QCOMPARE(checkName(umlauts + "x"), std::optional{InputProblem::TooLong});
    }
};

QTEST_GUILESS_MAIN(RecordsTypedTest)
#include "records_typed.moc"
