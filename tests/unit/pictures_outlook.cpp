// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The load ahead, with and without a treatment, looked at as a drawing.
#include "pictures/outlook_chart.h"
#include "pictures_kit.h"

#include <QTest>

#include <limits>

using namespace halfcup;
using namespace halfcup::picturetest;

namespace {

OutlookBand bandTo(double last, int days) {
    OutlookBand band;
    for (int day = 0; day < days; ++day) {
        const double load = last * day / std::max(days - 1, 1);
        band.low.push_back(load / 2);
        band.middle.push_back(load);
        band.high.push_back(load * 2);
    }
    return band;
}

OutlookChart rising(double last, int days = 101) {
    OutlookChart chart;
    chart.start = {2026, 6, 1};
    chart.nothing = bandTo(last, days);
    chart.line = 3;
    return chart;
}

QStringList textsOf(const Drawing& drawing) {
    QStringList texts;
    for (const Label& label : drawing.labels())
        texts.append(label.text);
    return texts;
}

} // namespace

class PicturesOutlookTest : public QObject {
    Q_OBJECT

private slots:
    void theTopIsOverTheLineAndTheMiddle() {
        QCOMPARE(OutlookPlot(rising(1), {20, 0, 180, 90}).top(), 4.0); // the line at 3 decides
        QCOMPARE(OutlookPlot(rising(8), {20, 0, 180, 90}).top(), 10.0);
        QCOMPARE(OutlookPlot(rising(500), {20, 0, 180, 90}).top(), 30.0); // cut off
    }

    void loadsAndDaysLieWhereTheyShould() {
        const OutlookPlot plot(rising(8), {20, 0, 200, 100});
        QCOMPARE(plot.y(0), 100.0);
        QCOMPARE(plot.y(5), 50.0);
        QCOMPARE(plot.y(1000), 0.0);
        QCOMPARE(plot.y(-3), 100.0);
        QCOMPARE(plot.y(std::numeric_limits<double>::quiet_NaN()), 100.0);
        QCOMPARE(plot.x(0), 20.0);
        QCOMPARE(plot.x(50), 120.0);
        QCOMPARE(plot.x(100), 220.0);
        QCOMPARE(plot.area(rising(8).nothing).size(), 202);
        QCOMPARE(plot.middle(rising(8).nothing).last(), QPointF(220, 20));
        QVERIFY(plot.area({}).isEmpty());
    }

    void anEmptyChartIsHarmless() {
        const OutlookPlot plot({}, {20, 0, 0, 0});
        QVERIFY(plot.plot().isEmpty());
        QCOMPARE(plot.x(5), 20.0);
        const Type type = phoneType();
        for (const OutlookChart& chart : {OutlookChart(), rising(4, 1)}) {
            QCOMPARE(textsOf(drawOutlook(chart, {{288, 140}, type})),
                     QStringList(QStringLiteral("No outlook.")));
            QVERIFY(legendOf(chart).empty());
        }
        for (const QSizeF size : {QSizeF(0, 0), QSizeF(10, 10), QSizeF(60, 200)})
            QCOMPARE(wrongLabels(drawOutlook(rising(4), {size, type}), type), QStringList());
    }

    void nothingOverlapsAndNothingIsCut() {
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        for (const double scale : {1.0, 1.5, 2.0}) {
            const Type type = phoneType(scale);
            for (const double width : {288.0, 380.0})
                for (const double last : {0.0, 0.3, 6.0, 40.0, 250.0})
                    for (const int turn : {-1, 0, 61, 75, 140, 900}) {
                        OutlookChart chart = rising(last, 150);
                        chart.with = bandTo(last / 3, 150);
                        chart.turnDay = turn;
                        chart.autumnDay = 142;
                        chart.today = 12;
                        chart.with.high[7] = nan;
                        const Drawing drawing = drawOutlook(chart, {{width, 150}, type});
                        QCOMPARE(wrongLabels(drawing, type), QStringList());
                        QCOMPARE(wrongShapes(drawing), QStringList());
                        if (turn == 75)
                            keep(drawing, scale == 1.5 ? Palette::dusk() : Palette::day(), type,
                                 QStringLiteral("outlook-%1-%2-%3").arg(last).arg(width).arg(scale));
                        QCOMPARE(wrongLabels(drawLegend(legendOf(chart), {{width, 0}, type}), type),
                                 QStringList());
                    }
        }
    }

    void theDaysThatCountAreNamed() {
        const Type type = phoneType();
        OutlookChart chart = rising(6, 150);
        chart.turnDay = 75;
        chart.autumnDay = 142;
        const Drawing drawing = drawOutlook(chart, {{288, 150}, type});
        QVERIFY(textsOf(drawing).contains(QStringLiteral("Turn date")));
        QVERIFY(textsOf(drawing).contains(QStringLiteral("Mid-autumn")));
        QVERIFY(!textsOf(drawing).contains(QStringLiteral("Today")));
        QVERIFY(textsOf(drawing).contains(QStringLiteral("Jul")));
        QVERIFY(textsOf(drawing).contains(QStringLiteral("3"))); // the line
    }

    void allEyesTellTheKeysApart() {
        OutlookChart chart = rising(6, 150);
        chart.with = bandTo(2, 150);
        chart.turnDay = 75;
        chart.autumnDay = 142;
        chart.today = 9;
        QCOMPARE(legendOf(chart).size(), std::size_t{6});
        for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
            QCOMPARE(alikeKeys(legendOf(chart), *palette, phoneType()).join(u'\n'), QString());
        keep(drawLegend(legendOf(chart), {{288, 0}, phoneType()}), Palette::day(), phoneType(),
             QStringLiteral("outlook-legend"));
    }
};

QTEST_MAIN(PicturesOutlookTest)
#include "pictures_outlook.moc"
