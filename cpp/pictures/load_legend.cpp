// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_chart.h"
#include "pictures/load_marks.h"
#include "pictures/load_plot.h"
#include "pictures/picture_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <algorithm>

namespace halfcup::pictures {

namespace {

using words::load;

class LoadLegend {
    Q_DECLARE_TR_FUNCTIONS(LoadLegend)
};

constexpr double middleX = legendKeySize.width() / 2;
constexpr double middleY = legendKeySize.height() / 2;

Drawing keyOf(std::vector<Shape> shapes) {
    Drawing key;
    key.size = legendKeySize;
    for (Shape& shape : shapes)
        key.add(std::move(shape));
    return key;
}

Drawing washKey(bool noneFound, bool otherMethod) {
    const double y = noneFound ? 12 : middleY;
    std::vector<Shape> shapes;
    if (noneFound) {
        shapes.push_back(line({middleX, 2}, {middleX, y}, Tone::Action, 1.8));
        shapes.push_back(line({middleX - 4, 2}, {middleX + 4, 2}, Tone::Action, 1.8));
    } else {
        shapes.push_back(line({middleX, 0}, {middleX, 16}, Tone::Action, 1.8));
    }
    shapes.push_back({.path = washOutline({middleX, y}, otherMethod && noneFound ? 3 : 4, otherMethod),
                      .inside = noneFound ? Tone::Page : Tone::Action,
                      .outline = Tone::Action,
                      .width = noneFound ? 1.6 : 0});
    return keyOf(std::move(shapes));
}

Drawing lineKey(std::vector<qreal> dash) {
    Shape shape = line({0, middleY}, {legendKeySize.width(), middleY}, Tone::Rust, 1.8);
    shape.dash = std::move(dash);
    return keyOf({shape});
}

Drawing courseKey() {
    Shape hatched = box({6, 0, 16, 16}, Tone::Green);
    hatched.fill = Fill::HatchUp;
    hatched.opacity = 0.7;
    return keyOf({hatched, line({6, 0}, {6, 16}, Tone::Green, 1), line({22, 0}, {22, 16}, Tone::Green, 1)});
}

Drawing aheadKey(bool upperOnly) {
    QPainterPath area(QPointF(2, 11));
    area.lineTo(26, 1);
    area.lineTo(26, 13);
    area.closeSubpath();
    const Shape range{
        .path = area, .inside = Tone::Sky, .opacity = 0.3, .outline = Tone::Quiet, .width = 0.7};
    Shape middle = line({2, 11}, {26, 7}, Tone::Ink, 1.6);
    middle.dash = aheadDash();
    return upperOnly ? keyOf({range}) : keyOf({range, middle});
}

Drawing todayKey() {
    Shape shape = line({middleX, 0}, {middleX, legendKeySize.height()}, Tone::Ink, 1.2);
    shape.dash = todayDash();
    return keyOf({shape});
}

QString dayAndYear(const records::Date& date) {
    return QLocale().toString(QDate(date.year, date.month, date.day),
                              LoadLegend::tr("d MMMM yyyy", "date format, as in 18 May 2026"));
}

QString lastWash(const LoadWash& wash) {
    if (wash.noneFound)
        return LoadLegend::tr("The last wash, on %1, found none: at most %2 mites per 100 bees.")
            .arg(dayAndYear(wash.day), load(wash.high));
    return LoadLegend::tr("The last wash, on %1: %2 mites per 100 bees, between %3 and %4.")
        .arg(dayAndYear(wash.day), load(wash.middle), load(wash.low), load(wash.high));
}

} // namespace

Legend legendOf(const LoadChart& chart) {
    const LoadChart fit = fitToShow(chart);
    Legend legend;
    const auto any = [&](bool none, bool other) {
        return std::ranges::any_of(fit.washes, [&](const LoadWash& wash) {
            return wash.noneFound == none && wash.otherMethod == other;
        });
    };
    if (any(false, false))
        legend.push_back({washKey(false, false),
                          LoadLegend::tr("A wash, and the range that holds the true load 9 times in 10")});
    if (any(true, false))
        legend.push_back({washKey(true, false),
                          LoadLegend::tr("A wash that found none: the load may be up to the stroke")});
    if (any(false, true))
        legend.push_back({washKey(false, true), LoadLegend::tr("Counted another way, as by a sugar roll")});
    if (any(true, true))
        legend.push_back(
            {washKey(true, true), LoadLegend::tr("Counted another way, and none found: up to the stroke")});
    if (std::ranges::any_of(fit.lines, [](const LineStep& step) { return step.treat > 0; }))
        legend.push_back({lineKey({}), LoadLegend::tr("The treat line, as it was then")});
    if (std::ranges::any_of(fit.lines, [](const LineStep& step) { return step.own.has_value(); }))
        legend.push_back({lineKey(ownLineDash()), LoadLegend::tr("Your own line, as it was then")});
    if (!fit.treated.empty())
        legend.push_back({courseKey(), LoadLegend::tr("Treated, from the first day to the last")});
    if (!fit.ahead.empty())
        legend.push_back({aheadKey(fit.aheadUpperOnly),
                          LoadLegend::tr("The load ahead if nothing is done, and its range")});
    if (fit.today)
        legend.push_back({todayKey(), LoadLegend::tr("Today")});
    for (const records::EventKind kind : records::allEventKinds)
        if (std::ranges::find(fit.happenings, kind, &Happening::kind) != fit.happenings.end())
            legend.push_back({keyOf(happeningMark(kind, {middleX, middleY})), happeningName(kind)});
    if (fit.happenings.size() > fewHappenings)
        legend.push_back({keyOf({line({middleX, 2}, {middleX, 2 + crowdedStroke}, Tone::Quiet, 1.6)}),
                          LoadLegend::tr("Something happened, and there was no room for its mark")});
    return legend;
}

QString sentenceOf(const LoadChart& chart) {
    const LoadChart fit = fitToShow(chart);
    if (fit.washes.empty())
        return LoadLegend::tr("No wash yet.");
    QStringList sentences;
    if (fit.washes.size() > 1) {
        const auto highest = std::ranges::max_element(fit.washes, {}, &LoadWash::middle);
        sentences.append(LoadLegend::tr("%n wash(es) since %1.", nullptr, static_cast<int>(fit.washes.size()))
                             .arg(dayAndYear(fit.washes.front().day)));
        if (!highest->noneFound)
            sentences.append(LoadLegend::tr("The highest load was %1 mites per 100 bees, on %2.")
                                 .arg(load(highest->middle), dayAndYear(highest->day)));
    }
    sentences.append(lastWash(fit.washes.back()));
    if (!fit.lines.empty() && fit.lines.back().treat > 0)
        sentences.append(
            LoadLegend::tr("The treat line is %1.").arg(QLocale().toString(fit.lines.back().treat, 'g', 4)));
    if (!fit.treated.empty()) {
        const TreatedDays& last = fit.treated.back();
        const QString name = last.name.simplified();
        sentences.append(name.isEmpty() ? LoadLegend::tr("Last treated from %1 to %2.")
                                              .arg(dayAndYear(last.first), dayAndYear(last.last))
                                        : LoadLegend::tr("Last treated from %1 to %2: %3.")
                                              .arg(dayAndYear(last.first), dayAndYear(last.last), name));
    }
    if (!fit.ahead.empty()) {
        const LoadAhead& last = fit.ahead.back();
        sentences.append(
            fit.aheadUpperOnly
                ? LoadLegend::tr("If nothing is done, at most about %1 on %2.")
                      .arg(load(last.high), dayAndYear(last.day))
                : LoadLegend::tr("If nothing is done, about %1 on %2, between %3 and %4.")
                      .arg(load(last.middle), dayAndYear(last.day), load(last.low), load(last.high)));
    }
    return sentences.join(QLatin1Char(' '));
}

} // namespace halfcup::pictures
