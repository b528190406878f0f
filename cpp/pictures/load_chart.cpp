// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/load_chart.h"

#include "pictures/label_room.h"
#include "pictures/load_marks.h"
#include "pictures/load_plot.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <span>

namespace halfcup::pictures {

namespace {

using Kind = records::EventKind;

class LoadWords {
    Q_DECLARE_TR_FUNCTIONS(LoadWords)
};

constexpr int longGapDays = 100;      // washes further apart are not joined: nobody knows what was between
constexpr double narrowestBand = 3;   // one day of treatment can be seen
constexpr std::size_t fewCourses = 3; // so many are named even where the name is wider than the course
constexpr double largestRadius = 4.2;
constexpr double smallestRadius = 2;

/// Ends and beginnings first: they say that loads before and after are not one series.
constexpr std::array byImportance{Kind::Dead,  Kind::Merged, Kind::Requeened, Kind::Swarmed,
                                  Kind::Split, Kind::Moved,  Kind::SupersOn,  Kind::SupersOff};

class ChartPainting {
public:
    ChartPainting(const LoadChart& chart, const Sheet& sheet, const QString& chosen)
        : m_chart(chart)
        , m_type(sheet.type)
        , m_chosen(chosen)
        , m_at(chart, sheet)
        , m_room(QRectF(QPointF(), sheet.size))
        , m_apart(m_at.plot.width() / static_cast<double>(chart.washes.size()))
        , m_radius(std::clamp(m_apart * 0.35, smallestRadius, largestRadius)) {
        m_drawing.size = sheet.size;
    }

    Drawing make() {
        courses();
        fan();
        axes();
        lines();
        today();
        happenings();
        joints();
        ranges();
        washes();
        words();
        return std::move(m_drawing);
    }

private:
    void upright(double x, Tone tone, double width, std::vector<qreal> dash = {}) {
        Shape shape = line({x, m_at.plot.top()}, {x, m_at.plot.bottom()}, tone, width);
        shape.dash = std::move(dash);
        m_drawing.add(std::move(shape));
    }

    /// False where there is no room.
    bool write(const QString& text, std::span<const QRectF> places, Tone tone, bool backed) {
        const auto place = m_room.take(places);
        if (place)
            m_drawing.add(Label{
                .text = text, .box = *place, .alignment = Qt::AlignHCenter, .tone = tone, .backed = backed});
        return place.has_value();
    }

    [[nodiscard]] QRectF bandOf(const TreatedDays& days) const {
        const double left = m_at.days.x(days.first);
        const double right = std::max(m_at.days.x(records::plusDays(days.last, 1)), left + narrowestBand);
        return QRectF(QPointF(left, m_at.plot.top()), QPointF(right, m_at.plot.bottom())) & m_at.plot;
    }

    void courses() {
        for (const TreatedDays& days : m_chart.treated) {
            const QRectF band = bandOf(days);
            Shape hatched = box(band, Tone::Green);
            hatched.fill = Fill::HatchUp;
            hatched.opacity = 0.7;
            m_drawing.add(std::move(hatched));
            m_drawing.add(line(band.topLeft(), band.bottomLeft(), Tone::Green, 1));
            m_drawing.add(line(band.topRight(), band.bottomRight(), Tone::Green, 1));
        }
    }

    void fan() {
        if (m_chart.ahead.empty())
            return;
        QPainterPath area, middle, edges;
        const std::vector<LoadAhead>& days = m_chart.ahead;
        area.moveTo(m_at.at(days.front().day, days.front().high));
        edges.moveTo(area.currentPosition());
        for (const LoadAhead& each : days) {
            area.lineTo(m_at.at(each.day, each.high));
            edges.lineTo(area.currentPosition());
        }
        for (auto each = days.rbegin(); each != days.rend(); ++each)
            area.lineTo(m_at.at(each->day, each->low));
        area.closeSubpath();
        for (std::size_t i = 1; i < days.size(); ++i) // no word hides it
            m_room.block(QRectF(m_at.at(days[i - 1].day, std::max(days[i - 1].high, days[i].high)),
                                m_at.at(days[i].day, std::min(days[i - 1].low, days[i].low))));
        middle.moveTo(m_at.at(days.front().day, days.front().middle));
        edges.moveTo(m_at.at(days.front().day, days.front().low));
        for (const LoadAhead& each : days) {
            middle.lineTo(m_at.at(each.day, each.middle));
            edges.lineTo(m_at.at(each.day, each.low));
        }
        m_drawing.add(Shape{.path = area, .inside = Tone::Sky, .opacity = 0.3});
        m_drawing.add(Shape{.path = edges, .outline = Tone::Quiet, .width = 0.7});
        if (!m_chart.aheadUpperOnly)
            m_drawing.add(Shape{
                .path = middle, .outline = Tone::Ink, .width = 1.6, .dash = aheadDash(), .in = m_at.plot});
    }

    void axes() {
        for (const double load : m_at.loads.ticks(m_type.height() * 1.4)) {
            const double y = m_at.loads.y(load);
            m_drawing.add(line({m_at.plot.left(), y}, {m_at.plot.right(), y},
                               load == 0 ? Tone::Quiet : Tone::Rule, load == 0 ? 1.2 : 0.8));
            const QString text = LoadAxis::text(load);
            const QRectF box(m_at.plot.left() - 4 - m_type.width(text), y - m_type.height() / 2,
                             m_type.width(text), m_type.height());
            write(text, std::array{box}, Tone::Quiet, false);
        }
        bool months = false;
        for (const TimeAxis::Tick& tick : m_at.days.ticks(m_type)) {
            months = months || tick.day.month != 1;
            if (m_at.days.holds(tick.day)) {
                if (tick.year)
                    upright(tick.x, Tone::Rule, 0.8);
                m_drawing.add(line({tick.x, m_at.plot.bottom()}, {tick.x, m_at.plot.bottom() + 4},
                                   Tone::Quiet, tick.year ? 1.6 : 0.8));
            }
            if (!tick.text.isEmpty())
                write(tick.text,
                      std::array{
                          tick.box.translated(0, m_drawing.size.height() - m_type.height() - tick.box.top())},
                      Tone::Quiet, false);
        }
        captions(months);
    }

    void captions(bool withYears) {
        const auto unit = [&](const QString& text) {
            return write(text, std::array{m_type.box(text, m_at.caption.topLeft())}, Tone::Ink, false);
        };
        if (!m_at.loads.isLogarithmic() || !unit(LoadWords::tr("Mites per 100 bees, uneven scale")))
            unit(LoadWords::tr("Mites per 100 bees"));
        if (!withYears)
            return;
        const int first = m_at.days.first().year, last = m_at.days.last().year;
        const QString years =
            first == last ? QString::number(first) : LoadWords::tr("%1 to %2", "years").arg(first).arg(last);
        write(years,
              std::array{m_type.box(years, {m_at.caption.right() - m_type.width(years), m_at.caption.top()})},
              Tone::Quiet, false);
    }

    void lines() {
        const auto add = [&](auto lineOf, const std::vector<qreal>& dash) {
            QPainterPath path;
            double before = 0; // none
            for (std::size_t i = 0; i < m_chart.lines.size(); ++i) {
                const LineStep& step = m_chart.lines[i];
                const double load = lineOf(step);
                const double from = i == 0 ? m_at.plot.left() : m_at.days.x(step.from);
                const double to =
                    i + 1 < m_chart.lines.size() ? m_at.days.x(m_chart.lines[i + 1].from) : m_at.plot.right();
                if (load > 0 && before > 0)
                    path.lineTo(from, m_at.loads.y(load));
                else if (load > 0)
                    path.moveTo(from, m_at.loads.y(load));
                if (load > 0)
                    path.lineTo(to, m_at.loads.y(load));
                before = load;
            }
            if (!path.isEmpty())
                m_drawing.add(Shape{.path = path, .outline = Tone::Rust, .width = 1.8, .dash = dash});
        };
        add([](const LineStep& step) { return step.treat; }, {});
        add([](const LineStep& step) { return step.own.value_or(0); }, ownLineDash());
    }

    void today() {
        if (m_chart.today)
            upright(m_at.days.x(*m_chart.today), Tone::Ink, 1.2, todayDash());
    }

    /// Each where there is room in the lane, the graver first; what finds none has a stroke at the plot's
    /// upper edge.
    void happenings() {
        LabelRoom rows(m_at.lane.adjusted(-markSize, 0, markSize, 0), 1);
        for (const Kind kind : byImportance)
            for (const Happening& each : m_chart.happenings) {
                if (each.kind != kind)
                    continue;
                const double x = m_at.days.x(each.day);
                std::vector<QRectF> places;
                for (int row = 1; row <= laneRows; ++row)
                    places.emplace_back(x - markSize / 2, m_at.lane.bottom() - row * laneRow + 1, markSize,
                                        markSize);
                const auto place = rows.take(places);
                if (!place)
                    m_drawing.add(
                        line({x, m_at.plot.top()}, {x, m_at.plot.top() + crowdedStroke}, Tone::Quiet, 1.6));
                else if (m_chart.happenings.size() <= fewHappenings)
                    m_drawing.add(line({x, m_at.lane.bottom()}, {x, m_at.plot.bottom()}, Tone::Rule, 1));
                if (place)
                    for (Shape& shape : happeningMark(kind, place->center()))
                        m_drawing.add(std::move(shape));
            }
    }

    void joints() {
        QPainterPath path;
        for (std::size_t i = 1; i < m_chart.washes.size(); ++i) {
            const LoadWash &before = m_chart.washes[i - 1], &wash = m_chart.washes[i];
            if (records::daysBetween(before.day, wash.day) > longGapDays)
                continue;
            path.moveTo(m_at.at(before.day, before.middle));
            path.lineTo(m_at.at(wash.day, wash.middle));
        }
        m_drawing.add(Shape{.path = path, .outline = Tone::Quiet, .width = 0.9});
    }

    void ranges() {
        QPainterPath path;
        for (const LoadWash& wash : m_chart.washes) {
            const QPointF low = m_at.at(wash.day, wash.noneFound ? 0 : wash.low);
            const QPointF high = m_at.at(wash.day, wash.high);
            path.moveTo(low);
            path.lineTo(high);
            if (wash.noneFound) { // an end that means something
                path.moveTo(high - QPointF(m_radius, 0));
                path.lineTo(high + QPointF(m_radius, 0));
            }
            m_room.block(QRectF(high, low).adjusted(-m_radius, -m_radius, m_radius, m_radius));
        }
        m_drawing.add(
            Shape{.path = path, .outline = Tone::Action, .width = std::clamp(m_apart * 0.2, 0.7, 1.8)});
    }

    [[nodiscard]] bool isChosen(const LoadWash& wash) const {
        return !m_chosen.isEmpty() && wash.key == m_chosen;
    }

    /// A shape for each: one path of hundreds of marks takes a painter many times as long. The open ones lie
    /// over the others, of which there are more, and the chosen one over all.
    void washes() {
        for (const bool none : {false, true})
            for (const LoadWash& wash : m_chart.washes)
                if (wash.noneFound == none && !isChosen(wash))
                    mark(wash);
        for (const LoadWash& wash : m_chart.washes)
            if (isChosen(wash))
                mark(wash);
    }

    void mark(const LoadWash& wash) {
        const QPointF at = m_at.at(wash.day, wash.noneFound ? 0 : wash.middle);
        if (!wash.key.isEmpty())
            m_drawing.spots.push_back({at, wash.key});
        if (isChosen(wash)) {
            upright(at.x(), Tone::Ink, 1);
            m_drawing.add(Shape{.path = washOutline(at, m_radius + 4, wash.otherMethod),
                                .inside = Tone::Page,
                                .outline = Tone::Ink,
                                .width = 2});
        }
        Shape shape{.path = washOutline(at, m_radius, wash.otherMethod),
                    .inside = wash.noneFound ? Tone::Page : Tone::Action};
        if (wash.noneFound) {
            shape.outline = Tone::Action;
            shape.width = std::clamp(m_radius * 0.4, 1.0, 1.6);
        }
        m_drawing.add(std::move(shape));
    }

    /// Beside a level line at the plot's right end, over it or under it, or at its left end.
    void writeAtLine(const QString& text, double load) {
        const double height = m_type.height(), width = m_type.width(text), y = m_at.loads.y(load);
        std::vector<QRectF> places;
        for (const double left : {m_at.plot.right() - width - 2, m_at.plot.left() + 3})
            for (const double top : {y - height - 1, y + 2})
                if (top >= m_at.plot.top() && top + height <= m_at.plot.bottom())
                    places.emplace_back(left, top, width, height);
        write(text, places, Tone::Ink, true);
    }

    /// In the plot, where nothing lies under them; the most important first.
    void words() {
        const LineStep* last = m_chart.lines.empty() ? nullptr : &m_chart.lines.back();
        if (last && last->treat > 0)
            writeAtLine(LoadWords::tr("Treat line"), last->treat);
        for (auto days = m_chart.treated.rbegin(); days != m_chart.treated.rend(); ++days) {
            const QString name = days->name.simplified();
            const QRectF band = bandOf(*days);
            const double width = m_type.width(name), height = m_type.height();
            if (name.isEmpty() || width > m_at.plot.width() ||
                (band.width() < width / 3 && m_chart.treated.size() > fewCourses))
                continue;
            const double left = std::clamp(band.center().x() - width / 2, m_at.plot.left() + 1,
                                           std::max(m_at.plot.left() + 1, m_at.plot.right() - width));
            std::vector<QRectF> places;
            for (int row = 0; row < 3; ++row)
                places.emplace_back(left, m_at.plot.top() + 2 + row * (height + 2), width, height);
            write(name, places, Tone::Ink, true);
        }
        if (last && last->own)
            writeAtLine(LoadWords::tr("Your own line"), *last->own);
        if (m_chart.today) {
            const QString text = LoadWords::tr("Today");
            const double x = m_at.days.x(*m_chart.today), width = m_type.width(text);
            const double top = m_at.plot.top() + 2;
            write(text,
                  std::array{m_type.box(text, {x - 3 - width, top}), m_type.box(text, {x + 3, top}),
                             m_type.box(text, {x - 3 - width, top + m_type.height() + 2})},
                  Tone::Ink, true);
        }
    }

    const LoadChart& m_chart;
    const Type& m_type;
    QString m_chosen;
    LoadPlot m_at;
    LabelRoom m_room;
    double m_apart; // washes, on average
    double m_radius;
    Drawing m_drawing;
};

Drawing emptyChart(const Sheet& sheet) {
    Drawing drawing;
    drawing.size = sheet.size;
    const QString text = sheet.type.fitted(LoadWords::tr("No wash yet."), sheet.size.width());
    QRectF box = sheet.type.box(text, {0, 0});
    box.moveCenter(QRectF(QPointF(), sheet.size).center());
    LabelRoom room(QRectF(QPointF(), sheet.size));
    if (room.take(box))
        drawing.add(Label{.text = text, .box = box, .alignment = Qt::AlignHCenter, .tone = Tone::Quiet});
    return drawing;
}

} // namespace

Drawing drawLoadChart(const LoadChart& chart, const Sheet& sheet, const QString& chosen) {
    const LoadChart fit = fitToShow(chart);
    return fit.washes.empty() ? emptyChart(sheet) : ChartPainting(fit, sheet, chosen).make();
}

} // namespace halfcup::pictures
