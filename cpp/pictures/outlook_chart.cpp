// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/outlook_chart.h"

#include "pictures/label_room.h"
#include "pictures/load_axis.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <span>

namespace halfcup::pictures {

namespace {

class OutlookWords {
    Q_DECLARE_TR_FUNCTIONS(OutlookWords)
};

constexpr double thin = 1.5;
constexpr double thick = 2.5;
constexpr double withOpacity = 0.35;
constexpr double labelGap = 5;

std::vector<qreal> nothingDash() {
    return {6, 4};
}

std::vector<qreal> autumnDash() {
    return {1.5, 3};
}

std::vector<qreal> todayDash() {
    return {6, 2, 1.5, 2};
}

QPainterPath pathOf(const QPolygonF& points) {
    QPainterPath path;
    path.addPolygon(points);
    return path;
}

class OutlookPainting {
public:
    OutlookPainting(const OutlookChart& chart, const Sheet& sheet)
        : m_chart(chart)
        , m_type(sheet.type)
        , m_at(chart, plotOf(sheet))
        , m_days(chart.start, records::plusDays(chart.start, chart.days() - 1), m_at.plot().left(),
                 m_at.plot().right())
        , m_room(QRectF(QPointF(), sheet.size)) {
        m_drawing.size = sheet.size;
    }

    Drawing make() {
        bands();
        axes();
        uprights();
        return std::move(m_drawing);
    }

private:
    static QRectF plotOf(const Sheet& sheet) {
        const double letters = sheet.type.height();
        const double left =
            std::min(sheet.type.width(QStringLiteral("2.5")) + labelGap, sheet.size.width() / 2);
        const double top = letters * 2 + 3; // the unit, and the names of days
        return {QPointF(left, top), QPointF(std::max(left + 1, sheet.size.width() - 2),
                                            std::max(top + 1, sheet.size.height() - letters - labelGap))};
    }

    void write(const QString& text, std::span<const QRectF> places, Tone tone = Tone::Ink) {
        if (const auto place = m_room.take(places))
            m_drawing.add(Label{.text = text, .box = *place, .tone = tone});
    }

    void bands() {
        m_drawing.add(
            Shape{.path = pathOf(m_at.area(m_chart.nothing)), .inside = Tone::Quiet, .fill = Fill::HatchUp});
        m_drawing.add(
            Shape{.path = pathOf(m_at.area(m_chart.with)), .inside = Tone::Action, .opacity = withOpacity});
        m_drawing.add(Shape{.path = pathOf(m_at.middle(m_chart.nothing)),
                            .outline = Tone::Ink,
                            .width = thick,
                            .dash = nothingDash()});
        m_drawing.add(
            Shape{.path = pathOf(m_at.middle(m_chart.with)), .outline = Tone::Action, .width = thick});
    }

    void axes() {
        const QRectF plot = m_at.plot();
        const double letters = m_type.height();
        m_drawing.add(line(plot.bottomLeft(), plot.bottomRight(), Tone::Quiet, thin));
        m_drawing.add(line(plot.topLeft(), plot.bottomLeft(), Tone::Quiet, thin));
        if (m_chart.line > 0)
            m_drawing.add(line({plot.left(), m_at.y(m_chart.line)}, {plot.right(), m_at.y(m_chart.line)},
                               Tone::Rust, thin));
        std::vector<double> loads{m_at.top(), 0};
        if (m_chart.line > 0)
            loads.insert(loads.begin(), m_chart.line); // matters most
        for (const double load : loads) {
            const QString text = LoadAxis::text(load);
            write(text, std::array{QRectF(plot.left() - labelGap + 1 - m_type.width(text),
                                          m_at.y(load) - letters / 2, m_type.width(text), letters)});
        }
        for (const TimeAxis::Tick& tick : m_days.ticks(m_type)) {
            if (m_days.holds(tick.day))
                m_drawing.add(line({tick.x, plot.bottom()}, {tick.x, plot.bottom() + 4}, Tone::Quiet, thin));
            if (!tick.text.isEmpty())
                write(tick.text,
                      std::array{tick.box.translated(0, m_drawing.size.height() - letters - tick.box.top())},
                      Tone::Quiet);
        }
        const QString unit = OutlookWords::tr("Mites per 100 bees");
        write(unit, std::array{m_type.box(unit, {0, 0})});
    }

    void upright(int day, std::vector<qreal> dash) {
        Shape shape =
            line({m_at.x(day), m_at.plot().top()}, {m_at.x(day), m_at.plot().bottom()}, Tone::Ink, thin);
        shape.dash = std::move(dash);
        m_drawing.add(std::move(shape));
    }

    /// The days that count, the gravest first; named above the plot where there is room.
    void uprights() {
        const auto add = [&](int day, std::vector<qreal> dash, const QString& name) {
            if (day < 0 || day >= m_chart.days())
                return;
            upright(day, std::move(dash));
            const double width = m_type.width(name), x = m_at.x(day);
            const double right = m_drawing.size.width() - width;
            std::vector<QRectF> places;
            for (const double left : {x - width / 2, x - width, x})
                places.emplace_back(std::clamp(left, 0.0, std::max(0.0, right)),
                                    m_at.plot().top() - m_type.height() - 1, width, m_type.height());
            write(name, places);
        };
        add(m_chart.turnDay, {}, OutlookWords::tr("Turn date"));
        add(m_chart.autumnDay, autumnDash(), OutlookWords::tr("Mid-autumn"));
        if (m_chart.today > 0) // else it starts today
            add(m_chart.today, todayDash(), OutlookWords::tr("Today"));
    }

    const OutlookChart& m_chart;
    const Type& m_type;
    OutlookPlot m_at;
    TimeAxis m_days;
    LabelRoom m_room;
    Drawing m_drawing;
};

Drawing keyOf(std::vector<Shape> shapes) {
    Drawing key;
    key.size = legendKeySize;
    for (Shape& shape : shapes)
        key.add(std::move(shape));
    return key;
}

Drawing bandKey(bool nothing) {
    const double width = legendKeySize.width(), height = legendKeySize.height();
    Shape area = box({0, 0, width, height}, nothing ? Tone::Quiet : Tone::Action);
    Shape middle = line({0, height / 2}, {width, height / 2}, nothing ? Tone::Ink : Tone::Action, thick);
    if (nothing) {
        area.fill = Fill::HatchUp;
        middle.dash = nothingDash();
    } else {
        area.opacity = withOpacity;
    }
    return keyOf({area, middle});
}

Drawing uprightKey(std::vector<qreal> dash) {
    Shape shape = line({legendKeySize.width() / 2, 0}, {legendKeySize.width() / 2, legendKeySize.height()},
                       Tone::Ink, thin);
    shape.dash = std::move(dash);
    return keyOf({shape});
}

} // namespace

Drawing drawOutlook(const OutlookChart& chart, const Sheet& sheet) {
    if (chart.days() >= 2 && records::isValid(chart.start))
        return OutlookPainting(chart, sheet).make();
    Drawing drawing;
    drawing.size = sheet.size;
    const QString text = sheet.type.fitted(OutlookWords::tr("No outlook."), sheet.size.width());
    QRectF box = sheet.type.box(text, {0, 0});
    box.moveCenter(QRectF(QPointF(), sheet.size).center());
    if (LabelRoom(QRectF(QPointF(), sheet.size)).take(box))
        drawing.add(Label{.text = text, .box = box, .tone = Tone::Quiet});
    return drawing;
}

Legend legendOf(const OutlookChart& chart) {
    if (chart.days() < 2)
        return {};
    const auto within = [&](int day) { return day >= 0 && day < chart.days(); };
    Legend legend{{bandKey(true), OutlookWords::tr("If nothing is done, and its range")}};
    if (!chart.with.middle.empty())
        legend.push_back({bandKey(false), OutlookWords::tr("With the treatment, and its range")});
    if (chart.line > 0)
        legend.push_back(
            {keyOf({line({0, legendKeySize.height() / 2}, {legendKeySize.width(), legendKeySize.height() / 2},
                         Tone::Rust, thin)}),
             OutlookWords::tr("Your treat line")});
    if (within(chart.turnDay))
        legend.push_back({uprightKey({}), OutlookWords::tr("Turn date")});
    if (within(chart.autumnDay))
        legend.push_back({uprightKey(autumnDash()), OutlookWords::tr("Mid-autumn")});
    if (within(chart.today) && chart.today > 0)
        legend.push_back({uprightKey(todayDash()), OutlookWords::tr("Today")});
    return legend;
}

} // namespace halfcup::pictures
