// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The comb of a hundred: where its cells lie, what they say, and whether they are told apart without colours.
#include "pictures/comb.h"
#include "pictures/comb_geometry.h"
#include "pictures_kit.h"

#include <QTest>

#include <limits>

using namespace halfcup;
using namespace halfcup::picturetest;

namespace {

constexpr double fortyMmWide = 151; // units of 1/96 inch

Drawing drawn(const Comb& comb, double width = fortyMmWide) {
    static const Type type = phoneType();
    return drawComb(comb, {{width, 0}, type});
}

QImage grey(const Drawing& drawing, double scale = 1) {
    return seenBy(imageOf(drawing, Palette::paper(), phoneType(), scale), eyes[4]);
}

/// The geometry that the drawing was made with, found again from its size.
CombGeometry geometryOf(const Drawing& drawing) {
    // A wall is a fifth of the radius of a comb without walls that fits; near enough for looking into cells.
    const double guess = CombGeometry(drawing.size, 0).radius();
    return {drawing.size, guess * 0.2};
}

/// How dark a cell is, 0 (paper) to 1 (black): mean of the pixels within the hexagon, walls included.
double inkOf(const QImage& image, const CombGeometry& comb, int cell, double scale, double part = 1) {
    const QPolygonF corners = comb.cell(cell, part);
    double sum = 0;
    int pixels = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (corners.containsPoint(QPointF(x + 0.5, y + 0.5) / scale, Qt::OddEvenFill)) {
                sum += 1 - image.pixelColor(x, y).redF();
                ++pixels;
            }
    return pixels > 0 ? sum / pixels : 0;
}

} // namespace

class PicturesCombTest : public QObject {
    Q_OBJECT

private slots:
    void aHundredCellsLieAsBeesBuildThem() {
        const CombGeometry comb({210, 310}, 0);
        QVERIFY(std::abs(comb.cellWidth() - 20) < 1e-9); // 10.5 cells are 210 wide
        for (int cell = 0; cell < CombGeometry::cells; ++cell)
            for (int other = 0; other < cell; ++other) {
                const QPointF way = comb.centre(cell) - comb.centre(other);
                // No two lie on each other, and neighbours share a wall.
                QVERIFY(std::hypot(way.x(), way.y()) > comb.cellWidth() - 1e-9);
            }
        // The second row is moved by half a cell: its first touches the first two of the row above.
        const auto apart = [&](int a, int b) {
            const QPointF way = comb.centre(a) - comb.centre(b);
            return std::hypot(way.x(), way.y());
        };
        QVERIFY(std::abs(apart(10, 0) - comb.cellWidth()) < 1e-9);
        QVERIFY(std::abs(apart(10, 1) - comb.cellWidth()) < 1e-9);
        QCOMPARE(comb.cell(5).size(), 6);
        QCOMPARE(comb.centre(-3), comb.centre(0));
        QCOMPARE(comb.centre(1000), comb.centre(99));
    }

    void theRangeBecomesCells() {
        QCOMPARE(combOf(1.4, 7.8), (Comb{1, 7, false})); // one sure, the eighth begun
        QCOMPARE(combOf(0, 0), (Comb{0, 0, false}));
        QCOMPARE(combOf(0, 0.3), (Comb{0, 1, false}));
        QCOMPARE(combOf(3, 3), (Comb{3, 0, false}));
        QCOMPARE(combOf(22.1, 40), (Comb{22, 18, false}));
        QCOMPARE(combOf(0, 100), (Comb{0, 100, false}));
        QCOMPARE(combOf(60, 100.1), (Comb{60, 40, true}));
        QCOMPARE(combOf(160, 250), (Comb{100, 0, true}));
    }

    void whatIsNoLoadBecomesNoCell() {
        const double nan = std::numeric_limits<double>::quiet_NaN();
        const double infinite = std::numeric_limits<double>::infinity();
        QCOMPARE(combOf(nan, nan), (Comb{0, 0, false}));
        QCOMPARE(combOf(2, nan), (Comb{2, 0, false}));
        QCOMPARE(combOf(nan, 3), (Comb{0, 3, false}));
        QCOMPARE(combOf(-4, -1), (Comb{0, 0, false}));
        QCOMPARE(combOf(5, 2), (Comb{5, 0, false}));
        QCOMPARE(combOf(1, infinite), (Comb{1, 99, true}));
        QCOMPARE(combOf(-infinite, 2), (Comb{0, 2, false}));
    }

    void noneFoundIsNotSureOfAny() {
        records::Answer answer;
        answer.loadQ05 = 1.2;
        answer.loadQ95 = 2.5;
        answer.mites = 4;
        QCOMPARE(combOf(answer), (Comb{1, 2, false}));
        answer.mites = 0;
        QCOMPARE(combOf(answer), (Comb{0, 3, false}));
    }

    void theSentenceSaysWhatTheCellsSay() {
        QCOMPARE(sentenceOf(combOf(4, 6.5)),
                 QStringLiteral("Comb of a hundred cells: 4 filled, 3 more half filled."));
        QVERIFY(
            sentenceOf(combOf(60, 250)).contains(QLatin1String("60 filled, 40 more half filled, and more")));
        for (const CombPart part : {CombPart::Full, CombPart::Core, CombPart::Plus})
            QVERIFY(!meaningOf(part).isEmpty());
    }

    void nothingReachesOutOfThePicture() {
        for (const auto& [low, high] : {std::pair{0.0, 0.0}, {0.0, 0.3}, {30.0, 40.0}, {180.0, 250.0}})
            for (const double width : {40.0, fortyMmWide, 288.0, 380.0}) {
                const Drawing comb = drawn(combOf(low, high), width);
                QCOMPARE(wrongShapes(comb), QStringList());
                QVERIFY(comb.size.width() <= width + 1e-9 && comb.size.width() > width * 0.97);
                QVERIFY(std::abs(comb.size.width() / comb.size.height() - CombGeometry::aspect()) < 0.02);
            }
        const Type type = phoneType();
        const Drawing flat = drawComb(combOf(3, 5), {{288, 60}, type});
        QVERIFY(flat.size.height() <= 60 + 1e-9 && flat.size.height() > 58);
        QCOMPARE(wrongShapes(flat), QStringList());
        QVERIFY(drawComb(combOf(3, 5), {{0, 0}, type}).things.empty());
        QVERIFY(drawComb(combOf(3, 5), {{-5, 20}, type}).things.empty());
        QVERIFY(drawCombCell(true, {0, 0}).things.empty());
        QCOMPARE(wrongShapes(drawComb({-7, 3000, true}, {{200, 0}, type})), QStringList()); // no such comb
    }

    void fewShapesMakeTheComb() { // small on paper, quick on glass
        QVERIFY(drawn(combOf(30, 60)).things.size() <= 5);
        const Type type = phoneType();
        QBENCHMARK {
            QVERIFY(!drawComb(combOf(30, 60), {{288, 0}, type}).things.empty());
        }
    }

    // 40 mm wide, in grey, a printer's dot a pixel or four: each of the three kinds of cells has an ink of
    // its own, and there are as many of each as the numbers say.
    void cellsAreToldApartAtFortyMillimetresInGrey() {
        for (const double scale : {1.0, 2.0}) {
            const Comb said = combOf(22.7, 41.3); // 22 and 20
            const Drawing comb = drawn(said);
            QVERIFY(comb.size.width() <= fortyMmWide);
            const QImage image = grey(comb, scale);
            const CombGeometry geometry = geometryOf(comb);
            double fullLeast = 1, coreLeast = 1, coreMost = 0, emptyMost = 0;
            for (int cell = 0; cell < CombGeometry::cells; ++cell) {
                const double ink = inkOf(image, geometry, cell, scale);
                if (cell < said.atLeast) {
                    fullLeast = std::min(fullLeast, ink);
                } else if (cell < said.atLeast + said.perhaps) {
                    coreLeast = std::min(coreLeast, ink);
                    coreMost = std::max(coreMost, ink);
                } else if (cell >= said.atLeast + said.perhaps + CombGeometry::cellsInRow + 1) {
                    emptyMost = std::max(emptyMost, ink); // not those that share a wall with the others
                }
            }
            qInfo("ink at scale %.0f: full %.3f and more, core %.3f to %.3f, empty %.3f and less", scale,
                  fullLeast, coreLeast, coreMost, emptyMost);
            QVERIFY(fullLeast > coreMost + 0.08);
            QVERIFY(coreLeast > emptyMost + 0.08);
        }
    }

    // A core is a dot in a cell, a full cell has no gap between wall and middle: by shape, not by darkness.
    void aCoreStandsFreeInItsCell() {
        constexpr double scale = 4;
        const Comb said = combOf(10, 20);
        const Drawing comb = drawn(said);
        const QImage image = grey(comb, scale);
        const CombGeometry geometry = geometryOf(comb);
        const double paper = 0.02;
        for (const int cell : {3, 14}) {
            const QPointF middle = geometry.centre(cell) * scale;
            int gaps = 0; // changes from paper to ink on the way from the middle to the right wall
            bool wasPaper = false;
            for (double x = middle.x(); x < middle.x() + geometry.cellWidth() * scale / 2; ++x) {
                const bool isPaper =
                    1 - image.pixelColor(static_cast<int>(x), static_cast<int>(middle.y())).redF() < paper;
                gaps += wasPaper && !isPaper;
                wasPaper = isPaper;
            }
            QCOMPARE(gaps, cell == 3 ? 0 : 1);
        }
    }

    void aLoadOverAHundredIsMarkedAndSaid() {
        const Comb over = combOf(90, 250);
        const QImage with = grey(drawn(over), 2);
        const QImage without = grey(drawn({90, 10, false}), 2);
        const CombGeometry geometry = geometryOf(drawn(over));
        const double more = inkOf(with, geometry, 99, 2) - inkOf(without, geometry, 99, 2);
        QVERIFY2(more > 0.05, qPrintable(QString::number(more)));
        QVERIFY(std::abs(inkOf(with, geometry, 98, 2) - inkOf(without, geometry, 98, 2)) < 0.01);
        QCOMPARE(legendOf(over).back().meaning, QStringLiteral("and more than the comb holds"));
    }

    void theLegendSaysWhatIsShown() {
        const Type type = phoneType();
        QCOMPARE(legendOf(combOf(3, 3)).size(), std::size_t{1});
        QCOMPARE(legendOf(combOf(3, 5)).size(), std::size_t{2});
        QCOMPARE(legendOf(combOf(3, 500)).size(), std::size_t{3});
        for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
            QCOMPARE(alikeKeys(legendOf(combOf(3, 500)), *palette, type), QStringList());
        for (const double scale : {1.0, 1.5})
            for (const double width : {fortyMmWide, 288.0}) {
                const Type letters = phoneType(scale);
                QCOMPARE(wrongLabels(drawLegend(legendOf(combOf(3, 500)), {{width, 0}, letters}), letters),
                         QStringList());
            }
    }

    void picturesForPeople() {
        const Type type = phoneType();
        keep(drawn(combOf(22, 41)), Palette::paper(), type, QStringLiteral("comb-paper-40mm"));
        keep(drawn(combOf(0, 0)), Palette::day(), type, QStringLiteral("comb-none"));
        keep(drawn(combOf(90, 250), 288), Palette::dusk(), type, QStringLiteral("comb-over"));
        keep(drawLegend(legendOf(combOf(3, 500)), {{288, 0}, type}), Palette::paper(), type,
             QStringLiteral("comb-legend"));
    }
};

QTEST_MAIN(PicturesCombTest)
#include "pictures_comb.moc"
