// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The chart of a colony's loads, looked at as a drawing.
#include "pictures/load_chart.h"
#include "pictures/load_marks.h"
#include "pictures/load_plot.h"
#include "pictures_kit.h"

#include <QTest>

#include <limits>
#include <map>

using namespace halfcup;
using namespace halfcup::picturetest;
using records::Date;
using records::EventKind;

namespace {

/// So many washes over so many years, in the months of bees only; loads rise and fall up to the highest.
LoadChart invented(int washes, int years, double highest) {
    LoadChart chart;
    const Date first{2026 - years + 1, 4, 3};
    for (int i = 0; i < washes; ++i) {
        const int year = years * i / std::max(washes, 1);
        const int ofYear = i - washes * year / years;
        const int perYear = std::max(washes / years, 1);
        const double share = std::min(1.0, static_cast<double>(ofYear) / perYear);
        const double middle = i % 7 == 3 ? 0.2 : highest * share * share;
        LoadWash wash{
            .key = QStringLiteral("wash-%1").arg(i),
            .day = records::plusDays({first.year + year, first.month, first.day}, std::lround(190 * share)),
            .low = middle * 0.55,
            .middle = middle,
            .high = middle * 1.8,
            .noneFound = i % 7 == 3,
            .otherMethod = i % 5 == 4};
        if (wash.noneFound)
            wash.high = 0.9;
        chart.washes.push_back(wash);
        chart.lines.push_back({.from = wash.day, .treat = year % 2 ? 2.0 : 3.0, .own = 1.5});
    }
    return chart;
}

/// With everything that can be in it.
LoadChart full(int washes, int years, double highest) {
    LoadChart chart = invented(washes, years, highest);
    for (int year = 2026 - years + 1; year <= 2026; ++year) {
        chart.treated.push_back({{year, 8, 5}, {year, 8, 26}, QStringLiteral("Formic acid")});
        chart.treated.push_back({{year, 12, 20}, {year, 12, 20}, QStringLiteral("Oxalic acid")});
        int day = 0;
        for (const EventKind kind :
             {EventKind::SupersOn, EventKind::Swarmed, EventKind::Split, EventKind::Merged,
              EventKind::Requeened, EventKind::Moved, EventKind::SupersOff, EventKind::Dead})
            chart.happenings.push_back({records::plusDays({year, 4, 20}, 17 * day++), kind});
    }
    const Date today{2026, 10, 20};
    for (int day = 0; day <= 60; ++day) {
        const double middle = highest * 0.5 * std::exp(0.02 * day);
        chart.ahead.push_back(
            {records::plusDays(today, day), middle * 0.5, middle, middle * (2 + day * 0.1)});
    }
    chart.today = today;
    return chart;
}

std::vector<Shape> shapesOf(const Drawing& drawing) {
    std::vector<Shape> shapes;
    for (const auto& thing : drawing.things)
        if (const auto* shape = std::get_if<Shape>(&thing))
            shapes.push_back(*shape);
    return shapes;
}

QStringList textsOf(const Drawing& drawing) {
    QStringList texts;
    for (const Label& label : drawing.labels())
        texts.append(label.text);
    return texts;
}

} // namespace

class PicturesLoadTest : public QObject {
    Q_OBJECT

private slots:
    void nothingOverlapsAndNothingIsCut_data() {
        QTest::addColumn<int>("washes");
        QTest::addColumn<int>("years");
        QTest::addColumn<double>("highest");
        for (const int washes : {0, 1, 2, 12, 200})
            for (const double highest : {0.0, 0.3, 40.0, 250.0})
                QTest::addRow("%d washes up to %g", washes, highest)
                    << washes << (washes > 12 ? 10 : 1) << highest;
        QTest::newRow("12 washes of two years") << 12 << 2 << 5.0;
        QTest::newRow("120 washes of ten years") << 120 << 10 << 12.0;
    }

    void nothingOverlapsAndNothingIsCut() {
        QFETCH(int, washes);
        QFETCH(int, years);
        QFETCH(double, highest);
        const std::array palettes{&Palette::day(), &Palette::dusk(), &Palette::paper()};
        const std::array names{"day", "dusk", "paper"};
        const LoadChart plain = invented(washes, years, highest), all = full(washes, years, highest);
        for (const double scale : {1.0, 1.5}) {
            const Type type = phoneType(scale);
            for (const QSizeF size : {QSizeF(288, 210), QSizeF(380, 260), QSizeF(160, 100), QSizeF(600, 300)})
                for (const LoadChart* chart : {&plain, &all}) {
                    const QString chosen = washes ? chart->washes.back().key : QString();
                    const Drawing drawing = drawLoadChart(*chart, {size, type}, chosen);
                    QCOMPARE(wrongLabels(drawing, type), QStringList());
                    QCOMPARE(wrongShapes(drawing), QStringList());
                    QCOMPARE(drawing.spots.size(), static_cast<std::size_t>(washes));
                    if (size.width() < 200 || size.width() > 400)
                        continue;
                    for (std::size_t i = 0; i < palettes.size(); ++i)
                        keep(drawing, *palettes[i], type,
                             QStringLiteral("load-%1-%2-%3-%4-%5-%6")
                                 .arg(washes)
                                 .arg(highest)
                                 .arg(size.width())
                                 .arg(scale)
                                 .arg(QLatin1String(chart == &all ? "all" : "plain"),
                                      QLatin1String(names[i])));
                }
            for (const double width : {288.0, 380.0}) {
                const Drawing legend = drawLegend(legendOf(all), {{width, 0}, type});
                QCOMPARE(legend.things.empty(), washes == 0);
                QCOMPARE(wrongLabels(legend, type), QStringList());
                if (washes > 0)
                    keep(legend, Palette::day(), type,
                         QStringLiteral("load-legend-%1-%2-%3").arg(washes).arg(width).arg(scale));
            }
        }
        for (const Palette* palette : palettes)
            QCOMPARE(alikeKeys(legendOf(all), *palette, phoneType()).join(u'\n'), QString());
        QVERIFY(!sentenceOf(all).isEmpty());
    }

    void anEmptyChartSaysSo() {
        const Type type = phoneType();
        const Drawing drawing = drawLoadChart({}, {{288, 210}, type});
        QCOMPARE(textsOf(drawing), QStringList(QStringLiteral("No wash yet.")));
        QCOMPARE(sentenceOf({}), QStringLiteral("No wash yet."));
        QVERIFY(legendOf({}).empty());
        LoadChart eventsAlone;
        eventsAlone.happenings.push_back({{2026, 5, 1}, EventKind::Swarmed});
        eventsAlone.today = Date{2026, 6, 1};
        QCOMPARE(textsOf(drawLoadChart(eventsAlone, {{288, 210}, type})),
                 QStringList(QStringLiteral("No wash yet.")));
        for (const QSizeF size : {QSizeF(0, 0), QSizeF(5, 5), QSizeF(40, 300), QSizeF(300, 20)})
            for (const LoadChart& chart : {LoadChart(), full(12, 1, 5)}) {
                const Drawing small = drawLoadChart(chart, {size, type}); // harmless
                QCOMPARE(wrongLabels(small, type), QStringList());
            }
    }

    void washesLieAtTheirDaysAndLoads() {
        const Type type = phoneType();
        LoadChart chart;
        chart.washes = {{.key = "b", .day = {2026, 5, 31}, .low = 1, .middle = 2, .high = 4},
                        {.key = "a", .day = {2026, 5, 1}, .high = 1, .noneFound = true},
                        {.key = "c", .day = {2026, 6, 30}, .low = 3, .middle = 6, .high = 9}};
        chart.washes[1].middle = 0.3;
        chart.lines = {{.from = {2026, 5, 1}, .treat = 3}};
        const Drawing drawing = drawLoadChart(chart, {{300, 200}, type});
        QCOMPARE(drawing.spots.size(), std::size_t{3});
        std::map<QString, QPointF> at;
        for (const Spot& spot : drawing.spots)
            at[spot.key] = spot.at;
        // As many days lie between the first two as between the last two.
        QVERIFY(std::abs((at["b"].x() - at["a"].x()) - (at["c"].x() - at["b"].x())) < 1e-9);
        // A wash that found none lies on the ground, and loads lie in proportion: a plain scale.
        QVERIFY(std::abs((at["a"].y() - at["b"].y()) * 3 - (at["a"].y() - at["c"].y())) < 1e-9);
        QCOMPARE(drawing.nearest(at["c"] + QPointF(5, 5), 24), QStringLiteral("c"));
        // The level line at 3 crosses half way up to 6.
        const double half = (at["a"].y() + at["c"].y()) / 2;
        int level = 0;
        for (const Shape& shape : shapesOf(drawing))
            if (shape.outline == Tone::Rust && shape.dash.empty()) {
                ++level;
                QVERIFY(std::abs(shape.path.boundingRect().top() - half) < 1e-9);
                QVERIFY(shape.path.boundingRect().height() < 1e-9);
            }
        QCOMPARE(level, 1);
        const double ground = at["a"].y();
        int openMarks = 0;
        for (const Shape& shape : shapesOf(drawing))
            if (shape.inside == Tone::Page && shape.outline == Tone::Action && !shape.path.isEmpty()) {
                ++openMarks;
                QVERIFY((shape.path.boundingRect().center() - at["a"]).manhattanLength() < 1e-6);
                QCOMPARE(shape.path.boundingRect().center().y(), ground);
            }
        QCOMPARE(openMarks, 1);
    }

    void linesAreStepsAsTheyWereThen() {
        const Type type = phoneType();
        LoadChart chart = invented(2, 1, 2);
        chart.washes[0].day = {2026, 5, 1};
        chart.washes[1].day = {2026, 8, 1};
        chart.lines = {{.from = {2026, 8, 1}, .treat = 3}, {.from = {2026, 5, 1}, .treat = 2, .own = 1}};
        const Sheet sheet{{300, 200}, type};
        const LoadPlot plot(fitToShow(chart), sheet);
        int steps = 0, dashed = 0;
        for (const Shape& shape : shapesOf(drawLoadChart(chart, sheet))) {
            if (shape.outline != Tone::Rust)
                continue;
            if (shape.dash.empty()) {
                ++steps;
                QCOMPARE(shape.path.boundingRect().bottom(), plot.loads.y(2));
                QCOMPARE(shape.path.boundingRect().top(), plot.loads.y(3));
                QCOMPARE(shape.path.boundingRect().left(), plot.plot.left());
                QCOMPARE(shape.path.boundingRect().right(), plot.plot.right());
            } else { // the own line was given up on 1 August
                ++dashed;
                QCOMPARE(shape.path.boundingRect().right(), plot.days.x({2026, 8, 1}));
            }
        }
        QCOMPARE(steps, 1);
        QCOMPARE(dashed, 1);
    }

    void treatmentsAreBandsFromFirstDayToLast() {
        const Type type = phoneType();
        LoadChart chart = invented(6, 1, 4);
        chart.treated = {{{2026, 5, 10}, {2026, 6, 8}, QStringLiteral("Thymol")},
                         {{2026, 7, 1}, {2026, 7, 1}, {}},
                         {{2026, 6, 1}, {2026, 5, 1}, QStringLiteral("ends before it begins")},
                         {{2020, 6, 1}, {2020, 6, 20}, QStringLiteral("long ago")}};
        const Sheet sheet{{300, 200}, type};
        const LoadPlot plot(fitToShow(chart), sheet);
        const Drawing drawing = drawLoadChart(chart, sheet);
        std::vector<QRectF> bands;
        for (const Shape& shape : shapesOf(drawing))
            if (shape.inside && shape.fill == Fill::HatchUp)
                bands.push_back(shape.path.boundingRect());
        QCOMPARE(bands.size(), std::size_t{2});
        QCOMPARE(bands[0].left(), plot.days.x({2026, 5, 10}));
        QCOMPARE(bands[0].right(), plot.days.x({2026, 6, 9})); // the last day is part of it
        QVERIFY(bands[1].width() >= 3);                        // one day can still be seen
        QVERIFY(textsOf(drawing).contains(QStringLiteral("Thymol")));
        QVERIFY(!textsOf(drawing).contains(QStringLiteral("long ago")));
    }

    void theFanIsShownWithoutPressingTheWashesDown() {
        const Type type = phoneType();
        LoadChart chart = full(12, 1, 6);
        for (LoadAhead& ahead : chart.ahead)
            ahead.high *= 50;
        const Drawing drawing = drawLoadChart(chart, {{300, 200}, type});
        QCOMPARE(wrongShapes(drawing), QStringList());
        const LoadSpan span = spanOf(fitToShow(chart));
        QVERIFY(span.highest < 6 * 1.8 * 1.7);
        QVERIFY(span.last >= chart.ahead.back().day);
        QVERIFY(textsOf(drawing).contains(QStringLiteral("Today")));
    }

    void eachHappeningHasAMarkOfItsOwn() {
        const Type type = phoneType();
        for (const EventKind kind : records::allEventKinds) {
            LoadChart chart = invented(3, 1, 2);
            const std::size_t without = shapesOf(drawLoadChart(chart, {{300, 200}, type})).size();
            chart.happenings.push_back({{2026, 6, 1}, kind});
            const std::size_t with = shapesOf(drawLoadChart(chart, {{300, 200}, type})).size();
            QCOMPARE(with > without, hasMark(kind));
            QCOMPARE(happeningName(kind).isEmpty(), !hasMark(kind));
        }
        // Many on one day: what finds no room has a stroke, none lies on another.
        LoadChart crowded = invented(3, 1, 2);
        for (const EventKind kind : records::allEventKinds)
            crowded.happenings.push_back({{2026, 6, 1}, kind});
        QCOMPARE(wrongShapes(drawLoadChart(crowded, {{300, 200}, type})), QStringList());
        QCOMPARE(legendOf(crowded).size(), legendOf(invented(3, 1, 2)).size() + 8 + 1);
    }

    void whatIsNoLoadIsLeftOut() {
        const Type type = phoneType();
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        constexpr double infinite = std::numeric_limits<double>::infinity();
        LoadChart chart = invented(4, 1, 3);
        for (const double bad : {nan, infinite, -infinite, -1.0}) {
            chart.washes.push_back({.key = "bad", .day = {2026, 6, 1}, .middle = bad});
            chart.washes.push_back(
                {.key = "ends", .day = {2026, 6, 2}, .low = bad, .middle = 1, .high = bad});
            chart.lines.push_back({.from = {2026, 6, 1}, .treat = bad, .own = bad});
            chart.ahead.push_back({{2026, 7, 1}, bad, bad, bad});
            chart.ahead.push_back({{2026, 7, 2}, bad, 1, bad});
        }
        chart.washes.push_back({.key = "huge", .day = {2026, 6, 3}, .middle = 1e300, .high = 1e308});
        chart.washes.push_back({.key = "no day", .day = {2026, 2, 30}, .middle = 1, .high = 2});
        const Drawing drawing = drawLoadChart(chart, {{300, 200}, type});
        QCOMPARE(wrongShapes(drawing), QStringList());
        QCOMPARE(wrongLabels(drawing, type), QStringList());
        QCOMPARE(drawing.spots.size(), std::size_t{4 + 4 + 1});
        for (const Spot& spot : drawing.spots)
            QVERIFY(std::isfinite(spot.at.x() + spot.at.y()) && spot.key != QLatin1String("bad"));
        QCOMPARE(wrongShapes(drawSmallLoads(chart, {96, 32})), QStringList());
    }

    void hostileNamesDoNoHarm() {
        const Type type = phoneType();
        for (const QString& name : {QString(), QString(100, u'W'), QStringLiteral("\u202Edica cimrof\u202C"),
                                    QStringLiteral("two\nlines"), QStringLiteral("حمض الفورميك")}) {
            LoadChart chart = invented(6, 1, 4);
            chart.treated = {{{2026, 5, 10}, {2026, 6, 8}, name}};
            const Drawing drawing = drawLoadChart(chart, {{288, 210}, type});
            QCOMPARE(wrongLabels(drawing, type), QStringList());
            QVERIFY(!textsOf(drawing).join(u' ').contains(u'\n'));
            keep(drawing, Palette::day(), type, QStringLiteral("load-hostile-%1").arg(name.size()));
        }
    }

    void theSentenceTellsTheLastWash() {
        LoadChart chart;
        chart.washes = {{.key = "a", .day = {2026, 4, 12}, .low = 2.2, .middle = 4.1, .high = 7.4}};
        chart.lines = {{.from = {2026, 4, 12}, .treat = 3}};
        QCOMPARE(sentenceOf(chart),
                 QStringLiteral("The last wash, on 12 April 2026: 4.1 mites per 100 bees, between 2.2 and "
                                "7.4. The treat line is 3."));
        chart.washes.push_back({.key = "b", .day = {2026, 5, 12}, .high = 0.96, .noneFound = true});
        const QString more = sentenceOf(chart);
        QVERIFY(more.contains(QLatin1String("12 May 2026, found none: at most 1.0 mites")));
        QVERIFY(more.contains(QLatin1String("highest load was 4.1")));
    }

    void theSmallOneHasNoWordsAndStressesTheLast() {
        for (const int washes : {0, 1, 2, 12, 200})
            for (const double highest : {0.0, 0.3, 40.0, 250.0}) {
                const Drawing drawing = drawSmallLoads(full(washes, washes > 12 ? 10 : 1, highest), {96, 32});
                QVERIFY(drawing.labels().empty() && drawing.spots.empty());
                QCOMPARE(wrongShapes(drawing), QStringList());
                QCOMPARE(drawing.things.empty(), washes == 0);
                keep(drawing, Palette::day(), phoneType(),
                     QStringLiteral("small-%1-%2").arg(washes).arg(highest));
            }
        const Drawing drawing = drawSmallLoads(invented(5, 1, 4), {96, 32});
        const Shape last = shapesOf(drawing).back();
        QCOMPARE(last.path.boundingRect().center().x(), 91.0);
        QVERIFY(last.path.boundingRect().width() > 5);
        QVERIFY(drawSmallLoads(invented(5, 1, 4), {4, 4}).things.empty());
    }
};

QTEST_MAIN(PicturesLoadTest)
#include "pictures_load.moc"
