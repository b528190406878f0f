// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What all pictures are made of: axes, room for words, letters, colours, the painter.
#include "pictures/label_room.h"
#include "pictures/load_axis.h"
#include "pictures/time_axis.h"
#include "pictures_kit.h"

#include <QTest>

using namespace halfcup;
using namespace halfcup::picturetest;

namespace {

double luminance(const QColor& color) { // WCAG 2.2, relative luminance
    const auto linear = [](double c) {
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

} // namespace

class PicturesPartsTest : public QObject {
    Q_OBJECT

private slots:
    void wordsStandOutInAllColours() {
        for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
            for (const Tone behind : {Tone::Page, Tone::Field})
                for (const Tone word : {Tone::Ink, Tone::Quiet, Tone::Action})
                    QVERIFY(contrast(palette->of(word), palette->of(behind)) >= 7.0);
    }

    void loadsLieOnAPlainScaleNearTheLine() {
        const LoadAxis axis(4.2, 3, 200, 0);
        QVERIFY(!axis.isLogarithmic());
        QCOMPARE(axis.end(), 6.0);
        QCOMPARE(axis.y(0), 200.0);
        QCOMPARE(axis.y(3), 100.0);
        QCOMPARE(axis.y(7), 0.0); // over the end
        QCOMPARE(axis.y(-1), 200.0);
        QCOMPARE(axis.ticks(20), (std::vector<double>{0, 1, 2, 3, 4, 5, 6}));
        QCOMPARE(axis.ticks(60), (std::vector<double>{0, 2, 4, 6}));
    }

    void highLoadsGetALogarithmicScale() {
        const LoadAxis axis(250, 3, 200, 0);
        QVERIFY(axis.isLogarithmic());
        QVERIFY(axis.end() >= 250);
        QCOMPARE(axis.y(0), 200.0);
        // ln(1 + 3) / ln(1 + 300) of the way up
        QCOMPARE(axis.end(), 300.0);
        QVERIFY(std::abs(axis.y(3) - (200 - 200 * std::log(4.0) / std::log(301.0))) < 1e-9);
        const auto ticks = axis.ticks(20);
        QCOMPARE(ticks.front(), 0.0);
        for (std::size_t i = 1; i < ticks.size(); ++i)
            QVERIFY(axis.y(ticks[i - 1]) - axis.y(ticks[i]) >= 20);
    }

    void nothingToShowStillHasAScale() {
        const LoadAxis axis(0, 0, 100, 0);
        QVERIFY(axis.end() > 0);
        QVERIFY(axis.ticks(20).size() >= 2);
        QCOMPARE(LoadAxis::text(2.5), QStringLiteral("2.5"));
        QCOMPARE(LoadAxis::text(250), QStringLiteral("250"));
    }

    void monthsAreNamedAsThereIsRoom() {
        const Type type = phoneType();
        const auto texts = [&](const records::Date& first, const records::Date& last, double width) {
            QStringList found;
            for (const TimeAxis::Tick& tick : TimeAxis(first, last, 0, width).ticks(type))
                found.append(tick.text);
            return found;
        };
        QVERIFY(texts({2026, 3, 1}, {2026, 7, 31}, 300).contains(QStringLiteral("Mar")));
        QVERIFY(texts({2026, 1, 1}, {2026, 12, 31}, 300).contains(QStringLiteral("J")));
        QVERIFY(texts({2017, 1, 1}, {2026, 12, 31}, 400).contains(QStringLiteral("2017")));
        const QStringList narrow = texts({2017, 1, 1}, {2026, 12, 31}, 250); // 25 a year, a name takes more
        QVERIFY(narrow.contains(QStringLiteral("2018")) && narrow.contains(QStringLiteral("2024")));
        QVERIFY(!narrow.contains(QStringLiteral("2019")));
    }

    void daysLieInOrder() {
        const TimeAxis axis({2026, 1, 1}, {2026, 12, 31}, 10, 374);
        QCOMPARE(axis.x({2026, 1, 1}), 10.0);
        QCOMPARE(axis.x({2026, 12, 31}), 374.0);
        QCOMPARE(axis.x({2025, 1, 1}), 10.0);
        QCOMPARE(axis.x({2026, 7, 2}), 192.0); // day 182 of 364
        QVERIFY(std::isfinite(TimeAxis({2026, 1, 1}, {2026, 1, 1}, 0, 100).x({2026, 1, 1})));
    }

    void noWordIsPutOnAnother() {
        LabelRoom room({0, 0, 100, 40});
        QVERIFY(room.take({0, 0, 40, 20}));
        QVERIFY(!room.take({30, 10, 40, 20}));
        QVERIFY(!room.take({70, 0, 40, 20})); // cut off
        const std::array places{QRectF(10, 10, 40, 20), QRectF(50, 10, 40, 20)};
        QCOMPARE(room.take(places), std::optional(places[1]));
        QVERIFY(!room.take(places));
    }

    void theTextsOfALegendAreBrokenAndNotCut() {
        const Type type = phoneType();
        const Drawing key{.size = legendKeySize};
        const Legend legend{
            {key, QStringLiteral("Treated with a substance of a very long name indeed, twice")},
            {key, QStringLiteral("Line")},
            {key, QStringLiteral("Washed")}};
        for (const double width : {150.0, 288.0, 412.0}) {
            const Drawing drawn = drawLegend(legend, {{width, 0}, type});
            QCOMPARE(wrongLabels(drawn, type), QStringList());
            QVERIFY(drawn.size.height() >= type.height());
        }
        QCOMPARE(drawLegend({}, {{300, 0}, type}).size.height(), 0.0);
    }

    void theKitSeesWhatIsWrong() { // or no picture would be held against anything
        const Type type = phoneType();
        Drawing drawing{.size = {100, 40}};
        drawing.add(Label{.text = QStringLiteral("one"), .box = type.box(QStringLiteral("one"), {0, 0})});
        QCOMPARE(wrongLabels(drawing, type), QStringList());
        drawing.add(Label{.text = QStringLiteral("two"), .box = type.box(QStringLiteral("two"), {10, 5})});
        QCOMPARE(wrongLabels(drawing, type).size(), 1);
        drawing.add(
            Label{.text = QStringLiteral("three"), .box = type.box(QStringLiteral("three"), {80, 22})});
        QCOMPARE(wrongLabels(drawing, type).size(), 2);
        drawing.add(line({0, 0}, {500, 0}, Tone::Ink, 1));
        QCOMPARE(wrongShapes(drawing).size(), 1);
        Drawing red{.size = legendKeySize}, green{.size = legendKeySize}, hatched{.size = legendKeySize};
        red.add(box({0, 0, 28, 16}, Tone::Rust));
        green.add(Shape{.path = red.things.empty() ? QPainterPath() : std::get<Shape>(red.things[0]).path,
                        .inside = Tone::Rust,
                        .opacity = 0.98});
        hatched.add(
            Shape{.path = std::get<Shape>(red.things[0]).path, .inside = Tone::Rust, .fill = Fill::HatchUp});
        QVERIFY(!alikeKeys({{red, "a"}, {green, "b"}}, Palette::day(), type).isEmpty());
        QCOMPARE(alikeKeys({{red, "a"}, {hatched, "b"}}, Palette::day(), type), QStringList());
        for (std::size_t eye = 0; eye < eyes.size(); ++eye)
            for (std::size_t row = 0; row < 9; row += 3)
                QVERIFY(std::abs(eyes[eye][row] + eyes[eye][row + 1] + eyes[eye][row + 2] - 1) < 2e-6);
    }

    void aHatchStaysInsideItsShape() {
        const Type type = phoneType();
        Drawing drawing{.size = {60, 60}};
        Shape shape = box({20, 20, 20, 20}, Tone::Ink);
        shape.fill = Fill::HatchDown;
        drawing.add(shape);
        const QImage image = imageOf(drawing, Palette::day(), type);
        int inside = 0;
        for (int y = 0; y < 60; ++y)
            for (int x = 0; x < 60; ++x)
                if (image.pixelColor(x, y) != Palette::day().of(Tone::Page)) {
                    QVERIFY(x >= 19 && x <= 40 && y >= 19 && y <= 40);
                    ++inside;
                }
        QVERIFY(inside > 40 && inside < 350); // lines, not nothing and not all
    }

    void theNearestSpotIsFound() {
        Drawing drawing{.size = {100, 100}};
        drawing.spots = {{{10, 10}, "a"}, {{30, 10}, "b"}};
        QCOMPARE(drawing.nearest({12, 10}, 20), QStringLiteral("a"));
        QCOMPARE(drawing.nearest({28, 12}, 20), QStringLiteral("b"));
        QCOMPARE(drawing.nearest({90, 90}, 20), QString());
        Drawing around{.size = {200, 200}};
        around.lay(drawing, {100, 0});
        QCOMPARE(around.nearest({110, 10}, 5), QStringLiteral("a"));
    }
};

QTEST_MAIN(PicturesPartsTest)
#include "pictures_parts.moc"
