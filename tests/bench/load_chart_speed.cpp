// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

// How long the chart of a colony's loads takes: ten years, 120 washes with treatments and events, 412 x 300.
// Drawing is made when something changed; painting is what each repaint costs, on one core, in software.
// Prints the middle of many runs; the aim is 8 ms for both together at one pixel a unit.
#include "pictures/load_chart.h"
#include "pictures/painter.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <vector>

using namespace halfcup;
using namespace halfcup::pictures;

namespace {

constexpr QSizeF size(412, 300);
constexpr int runs = 101;

LoadChart tenYears() {
    LoadChart chart;
    for (int year = 2017; year <= 2026; ++year) {
        for (int i = 0; i < 12; ++i) {
            const double middle = i == 3 ? 0.2 : 0.3 + 9 * std::pow(i / 11.0, 2);
            chart.washes.push_back({.key = QStringLiteral("%1-%2").arg(year).arg(i),
                                    .day = records::plusDays({year, 4, 5}, 16 * i),
                                    .low = middle * 0.55,
                                    .middle = middle,
                                    .high = middle * 1.8,
                                    .noneFound = i == 3,
                                    .otherMethod = i % 5 == 4});
            chart.lines.push_back({{year, 4, 5}, i < 6 ? 2.0 : 3.0, 1.5});
        }
        chart.treated.push_back({{year, 8, 5}, {year, 8, 26}, QStringLiteral("Formic acid")});
        chart.treated.push_back({{year, 12, 20}, {year, 12, 20}, QStringLiteral("Oxalic acid")});
        chart.happenings.push_back({{year, 4, 25}, records::EventKind::SupersOn});
        chart.happenings.push_back({{year, 6, 1}, records::EventKind::Swarmed});
        chart.happenings.push_back({{year, 6, 20}, records::EventKind::Requeened});
        chart.happenings.push_back({{year, 7, 25}, records::EventKind::SupersOff});
    }
    for (int day = 0; day <= 60; day += 5)
        chart.ahead.push_back({records::plusDays({2026, 10, 1}, day), 2, 5 + day * 0.1, 9 + day * 0.4});
    chart.today = records::Date{2026, 10, 5};
    return chart;
}

template <class Work>
double middleMs(Work work) {
    std::vector<double> took;
    for (int i = 0; i < runs; ++i) {
        QElapsedTimer timer;
        timer.start();
        work();
        took.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
    }
    std::ranges::nth_element(took, took.begin() + runs / 2);
    return took[runs / 2];
}

} // namespace

int main(int argc, char** argv) {
    const QGuiApplication app(argc, argv);
    const Type type(QStringLiteral("Inter"), 17, 14);
    const LoadChart chart = tenYears();
    Drawing drawing;
    const double making = middleMs([&] { drawing = drawLoadChart(chart, {size, type}); });
    std::printf("%zu washes, %g x %g units, middle of %d runs\n", drawing.spots.size(), size.width(),
                size.height(), runs);
    std::printf("making the drawing   %6.2f ms\n", making);
    for (const double pixels : {1.0, 2.0, 3.0}) {
        QImage image((size * pixels).toSize(), QImage::Format_ARGB32_Premultiplied);
        const double painting = middleMs([&] {
            image.fill(Qt::transparent);
            QPainter painter(&image);
            painter.scale(pixels, pixels);
            paint(painter, drawing, Palette::day(), type);
        });
        std::printf("painting, %g pixels a unit %6.2f ms, both %6.2f ms\n", pixels, painting,
                    making + painting);
    }
    return drawing.spots.size() == 120 ? 0 : 1;
}
