// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Labels in the order in which a person reads them.
#include <QCollator>
#include <QTest>

#ifndef Q_MOC_RUN // moc of Qt 6.4 stumbles over <compare>
#include "season/natural_order.h"
#endif

#include <random>

using halfcup::season::naturalOrder;

class SeasonOrderTest : public QObject {
    Q_OBJECT

private slots:
    void labelsInOrder() {
        const std::vector<std::string> sorted{"",
                                              "1",
                                              "01",
                                              "2",
                                              "2a",
                                              "2b",
                                              "10",
                                              "B",
                                              "b",
                                              "B2",
                                              "b2",
                                              "B02",
                                              "B10",
                                              "b11",
                                              "nuc 9",
                                              "nuc 10",
                                              "\xC3\x84rmel",
                                              "\xF0\x9F\x90\x9D",
                                              "\xF0\x9F\x90\x9D\x32"};
        for (std::size_t i = 0; i < sorted.size(); ++i)
            for (std::size_t j = 0; j < sorted.size(); ++j) {
                const auto order = naturalOrder(sorted[i], sorted[j]);
                QVERIFY2((order < 0) == (i < j) && (order == 0) == (i == j),
                         (sorted[i] + " and " + sorted[j]).c_str());
            }
    }

    void numbersLongerThanAnyIntegerAreCompared() {
        const std::string nines(80, '9');
        QVERIFY(naturalOrder("hive " + nines, "hive 1" + std::string(80, '0')) < 0);
        QVERIFY(naturalOrder("hive " + std::string(80, '0') + "5", "hive 6") < 0);
        QVERIFY(naturalOrder("0", "00") < 0);
    }

    // Qt's collator with numeric mode, an implementation of its own, on labels of digits and small letters.
    void agreesWithQtOnPlainLabels() {
        QCollator collator(QLocale(QLocale::English));
        collator.setNumericMode(true);
        if (collator.compare(QStringLiteral("2"), QStringLiteral("10")) >= 0)
            QSKIP("This Qt was built without ICU and compares without numbers, so there is nothing to "
                  "compare with.");
        std::mt19937 random(37);
        const auto any = [&] {
            std::string label(1, static_cast<char>('a' + random() % 3));
            return label + std::to_string(1 + random() % 300);
        };
        for (int i = 0; i < 5'000; ++i) {
            const std::string a = any();
            const std::string b = any();
            const int theirs = collator.compare(QString::fromStdString(a), QString::fromStdString(b));
            QCOMPARE(naturalOrder(a, b) < 0, theirs < 0);
        }
    }

    void anyBytesGiveAnOrder() {
        std::mt19937 random(41);
        const auto any = [&] {
            std::string text(random() % 5, ' ');
            for (char& c : text)
                c = std::string("0192aB\xC3\xA4\xFF", 9)[random() % 9];
            return text;
        };
        for (int i = 0; i < 100'000; ++i) {
            const std::string a = any();
            const std::string b = any();
            const std::string c = any();
            QCOMPARE(naturalOrder(a, b) == 0, a == b);
            QCOMPARE(naturalOrder(a, b) < 0, naturalOrder(b, a) > 0);
            if (naturalOrder(a, b) < 0 && naturalOrder(b, c) < 0)
                QVERIFY2(naturalOrder(a, c) < 0, (a + "|" + b + "|" + c).c_str());
        }
    }
};

QTEST_GUILESS_MAIN(SeasonOrderTest)
#include "season_order.moc"
