// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Sizes of what is touched and read.
#include "touch/look.h"

#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTest>

#include <cmath>

using halfcup::touch::Look;

class TouchLookTest : public QObject {
    Q_OBJECT

    static constexpr double pixelsPerMm = 6.3;

    static double widest(const Look& look, const QString& text, double pixels, int weight) {
        QFont font(look.fontFamily());
        font.setPixelSize(static_cast<int>(std::floor(pixels)));
        font.setWeight(static_cast<QFont::Weight>(weight));
        double most = 0;
        for (const QString& word : text.split(QLatin1Char(' ')))
            most = std::max(most, QFontMetricsF(font).horizontalAdvance(word));
        return most;
    }

private slots:
    void millimetresOfTheTwoKindsOfGloves() {
        Look look(pixelsPerMm);
        QCOMPARE(look.mainHeight(), 20 * pixelsPerMm);
        QCOMPARE(look.touchHeight(), 14 * pixelsPerMm);
        QCOMPARE(look.gap(), 4 * pixelsPerMm);
        look.setThickGloves(true);
        QCOMPARE(look.mainHeight(), 26 * pixelsPerMm);
        QCOMPARE(look.touchHeight(), 18 * pixelsPerMm);
        QCOMPARE(look.gap(), 5 * pixelsPerMm);
    }

    void sentencesGrowAsAskedAndTitlesLess() {
        const Look usual(pixelsPerMm);
        const Look large(pixelsPerMm, 2.0);
        QCOMPARE(large.bodySize(), 2 * usual.bodySize());
        QCOMPARE(large.smallSize(), 2 * usual.smallSize());
        QVERIFY(large.titleSize() > usual.titleSize());
        QVERIFY(large.titleSize() < 2 * usual.titleSize());
        for (const double scale : {1.0, 1.25, 1.5, 1.75, 2.0}) {
            const Look look(pixelsPerMm, scale);
            QVERIFY(look.titleSize() > look.bodySize()); // a title stays one
            QVERIFY(look.mainSize() > look.bodySize());
            QVERIFY(look.buttonSize() >= look.bodySize());
            QVERIFY(look.bodySize() > look.smallSize());
        }
    }

    void aWordIsAsLargeAsItsPlaceLetsIt() {
        const Look look(pixelsPerMm);
        const int bold = QFont::Bold;
        const QString text = QStringLiteral("Take Behandlungsaufzeichnung back");
        QCOMPARE(look.wordSize(text, 2000, 34, bold), 34.0);
        for (double width = 150; width < 500; width += 7) {
            const double size = look.wordSize(text, width, 34, bold);
            QVERIFY(size >= 12 && size <= 34);
            if (size > 12)
                QVERIFY2(widest(look, text, size, bold) <= width, qPrintable(QString::number(width)));
            if (size < 34) // and no smaller than it must be
                QVERIFY2(widest(look, text, size + 2, bold) > width - 1, qPrintable(QString::number(width)));
        }
        QCOMPARE(look.wordSize(text, 20, 34, bold), 12.0); // then it is broken
        QCOMPARE(look.wordSize(text, 0, 34, bold), 34.0);  // not laid out yet
        QCOMPARE(look.wordSize(QString(), 20, 34, bold), 34.0);
    }

    void boundedWordsAreNoHigherThanTheirPlace() {
        const Look look(pixelsPerMm);
        const QString text = QStringLiteral("In die Handschuhe, den Becher streichen und schütteln");
        for (const int weight : {int(QFont::Normal), int(QFont::Bold)})
            for (double width = 120; width < 500; width += 19)
                for (double most = 20; most < 160; most += 17) {
                    const double size = look.boundedSize(text, width, most, 25, weight);
                    QVERIFY(size >= 12 && size <= look.wordSize(text, width, 25, weight));
                    const auto height = [&](double pixels) { // by Qt's other way of laying out
                        return QFontMetricsF(look.fontOf(pixels, weight))
                            .boundingRect(QRectF(0, 0, width, 10'000), Qt::TextWordWrap, text)
                            .height();
                    };
                    if (size > 12)
                        QVERIFY(height(size) <= most);
                    if (size < look.wordSize(text, width, 25, weight)) // and no smaller than it must be
                        QVERIFY(height(size + 1) > most);
                }
        QCOMPARE(look.boundedSize(text, 0, 20, 25, QFont::Bold), 25.0); // not laid out yet
        QCOMPARE(look.boundedSize(QString(), 100, 40, 25, QFont::Bold), 25.0);
    }

    void aFigureFillsItsPlaceAndStaysWhileItCounts() {
        const Look look(pixelsPerMm);
        for (const char* text : {"8", "47", "236", "12,5", "\u2013"})
            for (double height = 20; height < 300; height += 23)
                for (double width = 30; width < 400; width += 31) {
                    const QString number = QString::fromUtf8(text);
                    const QString zeros = QString(number).replace(QRegularExpression(QStringLiteral("[0-9]")),
                                                                  QStringLiteral("0"));
                    const double size = look.figureSize(number, width, height, 240);
                    QVERIFY(size >= 12 && size <= 240);
                    QFont font(look.fontFamily());
                    font.setPixelSize(static_cast<int>(size));
                    font.setBold(true);
                    const QFontMetricsF metrics(font);
                    if (size > 12) {
                        QVERIFY(metrics.horizontalAdvance(number) <= width);
                        QVERIFY(metrics.height() <= height);
                    }
                    // And no smaller than it must be for any digits (pairs as 47 stand closer): two pixels
                    // for the letters, a hundredth for the measuring.
                    font.setPixelSize(static_cast<int>(size * 1.01) + 4);
                    const QFontMetricsF larger(font);
                    if (size < 240)
                        QVERIFY(larger.height() > height - 2 ||
                                larger.horizontalAdvance(zeros) >
                                    width - 2 - static_cast<double>(number.size()));
                }
        QCOMPARE(look.figureSize(QStringLiteral("11"), 90, 200, 240),
                 look.figureSize(QStringLiteral("88"), 90, 200, 240));
        QVERIFY(look.figureSize(QStringLiteral("100"), 90, 200, 240) <
                look.figureSize(QStringLiteral("99"), 90, 200, 240));
        QCOMPARE(look.figureSize(QStringLiteral("7"), 1000, 1000, 240), 240.0);
        QCOMPARE(look.figureSize(QStringLiteral("7"), 0, 0, 240), 12.0); // not laid out yet
        QCOMPARE(look.figureSize(QString(), 100, 100, 40), 40.0);
    }

    void aPageIsRoomyByWhatStandsOnIt() {
        Look look(pixelsPerMm);
        QVERIFY(look.roomyHeight() < 568); // the smallest phone, as it comes
        look.setThickGloves(true);
        QVERIFY(look.roomyHeight() > 568);
        QVERIFY(look.roomyHeight() < 740);
        look.setFontScale(2);
        QVERIFY(look.roomyHeight() > 740);
        QVERIFY(look.roomyHeight() < 915);
    }

    /// WCAG 2.2, definition of contrast ratio: black on white is 21:1. #767676 on white is the lightest grey
    /// with 4.5:1, #595959 the lightest with 7:1 (published widely with the criteria 1.4.3 and 1.4.6; from
    /// memory).
    void contrastAsTheStandardHasIt() {
        QCOMPARE(Look::contrast(Qt::black, Qt::white), 21.0);
        QCOMPARE(Look::contrast(Qt::white, Qt::black), 21.0);
        QVERIFY(Look::contrast(QColor(0x76, 0x76, 0x76), Qt::white) >= 4.5);
        QVERIFY(Look::contrast(QColor(0x77, 0x77, 0x77), Qt::white) < 4.5);
        QVERIFY(Look::contrast(QColor(0x59, 0x59, 0x59), Qt::white) >= 7);
        QVERIFY(Look::contrast(QColor(0x5A, 0x5A, 0x5A), Qt::white) < 7);
    }

    void textHasSevenToOneInBothThemes() {
        Look look(pixelsPerMm);
        for (const bool dusk : {false, true}) {
            look.setDusk(dusk);
            for (const QColor& ground : {look.page(), look.field()})
                for (const QColor& ink : {look.ink(), look.quietInk()})
                    QVERIFY2(Look::contrast(ink, ground) >= 7, qPrintable(ink.name() + ground.name()));
            QVERIFY(Look::contrast(look.actionInk(), look.action()) >= 7);
            QVERIFY(Look::contrast(look.actionInk(), look.pressed()) >= 7);
        }
    }
};

QTEST_MAIN(TouchLookTest)
#include "touch_look.moc"
