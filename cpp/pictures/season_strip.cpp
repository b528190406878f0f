// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/season_strip.h"

#include "pictures/label_room.h"
#include "pictures/picture_words.h"
#include "pictures/season_strip_marks.h"
#include "pictures/time_axis.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>

namespace halfcup::pictures {

namespace {

using records::Date;

class SeasonStripWords {
    Q_DECLARE_TR_FUNCTIONS(SeasonStripWords)
};

constexpr double widestWords = 0.4; // of the width, for the words before the rows [own choice]
constexpr double beside = 6;        // between a word and its row
constexpr double between = 2;       // between rows
constexpr double aside = 4;         // of a line and a word at its side
constexpr double pointerRoom = 8;   // between the months and the first row, for today's pointer
constexpr double laneHeight = 11;
constexpr double narrowest = 3; // a bar of one day can still be seen
constexpr double rim = 8;       // beside the year, so that marks at its ends are whole

Date monthAfter(const Date& first, int months) {
    const int month = first.month - 1 + months;
    return {first.year + month / 12, month % 12 + 1, 1};
}

/// The strip without what lies outside or cannot be.
SeasonStrip within(const SeasonStrip& strip) {
    SeasonStrip kept = strip;
    const Date last = records::plusDays(monthAfter(strip.first, 12), -1);
    const auto outside = [&](const Date& day) {
        return !records::isValid(day) || day < strip.first || day > last;
    };
    for (auto* days : {&kept.turnDates, &kept.washed, &kept.due}) {
        std::erase_if(*days, outside);
        std::ranges::sort(*days);
        days->erase(std::unique(days->begin(), days->end()), days->end()); // marks of one day are one
    }
    if (kept.today && outside(*kept.today))
        kept.today.reset();
    for (auto* spans : {&kept.flow, &kept.capped, &kept.uncapped, &kept.treatments}) {
        std::erase_if(*spans, [&](const DaySpan& span) {
            return !records::isValid(span.from) || !records::isValid(span.to) || span.to < span.from ||
                   span.to < strip.first || span.from > last;
        });
        for (DaySpan& span : *spans)
            span = {std::max(span.from, strip.first), std::min(span.to, last)};
        std::ranges::sort(*spans, {}, [](const DaySpan& span) { return std::pair(span.from, span.to); });
    }
    return kept;
}

bool isEmpty(const SeasonStrip& strip) {
    return strip.flow.empty() && strip.capped.empty() && strip.uncapped.empty() && strip.washed.empty() &&
           strip.due.empty() && strip.treatments.empty();
}

/// The lane of each span, in their order: the first that is free again, the last where none is.
std::vector<int> lanesOf(const std::vector<DaySpan>& spans) {
    std::array<std::optional<Date>, mostTreatmentLanes> busyUntil;
    std::vector<int> lanes;
    for (const DaySpan& span : spans) {
        std::size_t lane = 0;
        while (lane + 1 < busyUntil.size() && busyUntil.at(lane) && *busyUntil.at(lane) >= span.from)
            ++lane;
        busyUntil.at(lane) = std::max(busyUntil.at(lane).value_or(span.to), span.to);
        lanes.push_back(static_cast<int>(lane));
    }
    return lanes;
}

class Strip {
public:
    Strip(const SeasonStrip& strip, const Sheet& sheet)
        : m_strip(strip)
        , m_type(sheet.type)
        , m_width(sheet.size.width())
        , m_rowHeight(std::max(m_type.height() + 4, 20.0))
        , m_axis(strip.first, monthAfter(strip.first, 12), leftOf(strip), m_width - rim) {}

    Drawing draw() {
        m_top = m_type.height() + pointerRoom;
        m_drawing.size = {m_width, m_top};
        rows();
        months();
        m_drawing.lay(m_marks, {0, 0});
        upright();
        if (isEmpty(m_strip))
            nothing();
        return std::move(m_drawing);
    }

private:
    static QString flowWord() { return SeasonStripWords::tr("Supers"); }
    static QString broodWord() { return SeasonStripWords::tr("Brood"); }
    static QString washesWord() { return SeasonStripWords::tr("Washes"); }
    static QString treatedWord() { return SeasonStripWords::tr("Treated"); }

    [[nodiscard]] double leftOf(const SeasonStrip& strip) const {
        double widest = rim;
        const auto word = [&](bool shown, const QString& text) {
            if (shown && m_type.width(text) + beside <= m_width * widestWords)
                widest = std::max(widest, m_type.width(text) + beside);
        };
        word(!strip.flow.empty(), flowWord());
        word(!strip.capped.empty() || !strip.uncapped.empty(), broodWord());
        word(!strip.washed.empty() || !strip.due.empty(), washesWord());
        word(!strip.treatments.empty(), treatedWord());
        return widest;
    }

    void rows() {
        if (isEmpty(m_strip))
            row({}, m_rowHeight);
        if (!m_strip.flow.empty()) {
            const QRectF all = row(flowWord(), m_rowHeight);
            for (const DaySpan& span : m_strip.flow)
                bar(marks::flow, span, all);
        }
        if (!m_strip.capped.empty() || !m_strip.uncapped.empty()) {
            const QRectF all = row(broodWord(), m_rowHeight);
            for (const DaySpan& span : m_strip.uncapped)
                bar(marks::uncapped, span, all);
            for (const DaySpan& span : m_strip.capped)
                bar(marks::capped, span, all);
        }
        if (!m_strip.washed.empty() || !m_strip.due.empty()) {
            const QRectF all = row(washesWord(), std::max(m_rowHeight, 4 * marks::washRadius + 6));
            // Each kind at a height of its own, so that one never hides the other.
            for (const Date& day : m_strip.washed)
                m_marks.add(marks::washed({noon(day), all.center().y() - marks::washRadius - 1}));
            for (const Date& day : m_strip.due)
                m_marks.add(marks::due({noon(day), all.center().y() + marks::washRadius + 1}));
        }
        if (!m_strip.treatments.empty()) {
            const std::vector<int> lanes = lanesOf(m_strip.treatments);
            const int count = *std::ranges::max_element(lanes) + 1;
            const QRectF all = row(treatedWord(), std::max(m_rowHeight, count * laneHeight + between));
            const double first = all.center().y() - count * laneHeight / 2;
            for (std::size_t i = 0; i < lanes.size(); ++i)
                bar(marks::treated, m_strip.treatments[i],
                    {all.left(), first + lanes[i] * laneHeight + 1, all.width(), laneHeight - 2});
        }
    }

    void nothing() {
        const double room = m_axis.right() - m_axis.left();
        const QString text = m_type.fitted(SeasonStripWords::tr("Nothing is recorded yet."), room);
        QRectF box = m_type.box(text, {0, 0});
        box.moveCenter({(m_axis.left() + m_axis.right()) / 2, m_top + m_rowHeight / 2});
        m_drawing.add(Label{.text = text, .box = box, .backed = true});
    }

    /// A row under the last one, with its word before it where there is room; where the year lies in it.
    QRectF row(const QString& word, double height) {
        const QRectF all(m_axis.left(), m_drawing.size.height(), m_axis.right() - m_axis.left(), height);
        m_drawing.add(box(all, Tone::Field));
        if (!word.isEmpty() && m_type.width(word) + beside <= m_axis.left())
            m_drawing.add(Label{.text = word, .box = {0, all.top(), m_axis.left() - beside, height}});
        m_drawing.size.rheight() += height + between;
        return all;
    }

    void bar(Shape (*shape)(const QRectF&), const DaySpan& span, const QRectF& in) {
        const double left = std::min(m_axis.x(span.from), m_axis.right() - narrowest);
        const double right = std::max(m_axis.x(records::plusDays(span.to, 1)), left + narrowest);
        const double height = std::min(in.height(), laneHeight);
        m_marks.add(shape({left, in.center().y() - height / 2, right - left, height}));
    }

    [[nodiscard]] double noon(const Date& day) const {
        return (m_axis.x(day) + m_axis.x(records::plusDays(day, 1))) / 2;
    }

    /// Letters over the rows, and hairlines through them. Where twelve letters have no room, the first month
    /// of each quarter is named.
    void months() {
        const double bottom = m_drawing.size.height() - between;
        std::vector<Label> names;
        for (int i = 0; i < 12; ++i) {
            const double left = m_axis.x(monthAfter(m_strip.first, i));
            if (i > 0)
                m_drawing.add(line({left, m_top}, {left, bottom}, Tone::Rule, 1));
            const QString text = nameOf(i, QLocale::NarrowFormat);
            const double room = m_axis.x(monthAfter(m_strip.first, i + 1)) - left;
            if (m_type.width(text) + 2 <= room)
                names.push_back(
                    {.text = text, .box = {left, 0, room, m_type.height()}, .alignment = Qt::AlignHCenter});
        }
        if (names.size() < 12) {
            names.clear();
            for (int i = 0; i < 12; i += 3) {
                const double left = m_axis.x(monthAfter(m_strip.first, i));
                const double room = m_axis.x(monthAfter(m_strip.first, i + 3)) - left - 4;
                const QString text = m_type.fitted(nameOf(i, QLocale::ShortFormat), room);
                names.push_back({.text = text, .box = {left, 0, room, m_type.height()}});
            }
        }
        for (Label& name : names)
            m_drawing.add(std::move(name));
    }

    [[nodiscard]] QString nameOf(int index, QLocale::FormatType format) const {
        return QLocale().standaloneMonthName(monthAfter(m_strip.first, index).month, format);
    }

    /// Turn dates and today through all rows, with their words below.
    void upright() {
        const double bottom = m_drawing.size.height() - between;
        for (const Date& day : m_strip.turnDates)
            for (Shape& shape : marks::turnDate(m_axis.x(day), m_top - pointerRoom, bottom))
                m_drawing.add(std::move(shape));
        if (m_strip.today)
            for (Shape& shape : marks::today(noon(*m_strip.today), m_top - pointerRoom, bottom))
                m_drawing.add(std::move(shape));
        if (m_strip.turnDates.empty() && !m_strip.today) {
            m_drawing.size.setHeight(bottom);
            return;
        }
        m_drawing.size.setHeight(bottom + between + m_type.height());
        LabelRoom room({0, bottom + between, m_width, m_type.height()}, aside);
        const std::optional<double> now = m_strip.today ? std::optional(noon(*m_strip.today)) : std::nullopt;
        const auto word = [&](double x, const QString& text, Tone tone, std::optional<double> neighbour) {
            const QRectF box = m_type.box(text, {0, bottom + between});
            const double last = std::max(0.0, m_width - box.width());
            std::vector<double> lefts{std::clamp(x - box.width() / 2, 0.0, last), x + aside,
                                      x - box.width() - aside};
            if (neighbour && std::abs(*neighbour - x) < box.width()) { // leave it its side
                const bool before = *neighbour < x;
                lefts = {before ? lefts[1] : lefts[2], std::clamp(x - (before ? 0 : box.width()), 0.0, last),
                         lefts[0]};
            }
            std::vector<QRectF> places;
            for (const double left : lefts)
                places.push_back(box.translated(left, 0));
            if (const auto place = room.take(places))
                m_drawing.add(Label{.text = text, .box = *place, .tone = tone});
        };
        for (const Date& day : m_strip.turnDates)
            word(m_axis.x(day), SeasonStripWords::tr("turn date %1", "day").arg(words::day(day)), Tone::Ink,
                 now);
        if (now)
            word(*now, SeasonStripWords::tr("today"), Tone::Action, std::nullopt);
    }

    const SeasonStrip& m_strip;
    const Type& m_type;
    double m_width;
    double m_rowHeight;
    TimeAxis m_axis;
    double m_top = 0; // of the first row
    Drawing m_drawing;
    Drawing m_marks; // of the rows, laid over the months
};

} // namespace

Drawing drawSeasonStrip(const SeasonStrip& strip, const Sheet& sheet) {
    if (!records::isValid(strip.first) || strip.first.day != 1)
        return {.size = {sheet.size.width(), 0}, .things = {}, .spots = {}};
    const SeasonStrip kept = within(strip);
    return Strip(kept, sheet).draw();
}

Legend legendOf(const SeasonStrip& strip) {
    Legend legend;
    if (!records::isValid(strip.first) || strip.first.day != 1)
        return legend;
    const SeasonStrip kept = within(strip);
    const QRectF all({0, 0}, legendKeySize);
    const QRectF wide = all.adjusted(1, 3, -1, -3);
    const auto add = [&](bool shown, std::vector<Shape> shapes, const QString& meaning) {
        if (!shown)
            return;
        Drawing key{.size = legendKeySize, .things = {}, .spots = {}};
        for (Shape& shape : shapes)
            key.add(std::move(shape));
        legend.push_back({std::move(key), meaning});
    };
    add(!kept.flow.empty(), {marks::flow(wide)}, SeasonStripWords::tr("Supers on, for the nectar flow"));
    add(!kept.capped.empty(), {marks::capped(wide)}, SeasonStripWords::tr("Capped brood seen"));
    add(!kept.uncapped.empty(), {marks::uncapped(wide)}, SeasonStripWords::tr("No capped brood seen"));
    add(!kept.washed.empty(), {marks::washed(all.center())}, SeasonStripWords::tr("Washed"));
    add(!kept.due.empty(), {marks::due(all.center())}, SeasonStripWords::tr("Wash due"));
    add(!kept.treatments.empty(), {marks::treated(wide)},
        SeasonStripWords::tr("Treatment, from its first to its last day"));
    add(!kept.turnDates.empty(), marks::turnDate(all.center().x() - 3, 0, all.height()),
        SeasonStripWords::tr("Turn date: mites must be low by then"));
    add(kept.today.has_value(), marks::today(all.center().x(), 0, all.height()),
        SeasonStripWords::tr("Today"));
    return legend;
}

QString sentenceOf(const SeasonStrip& strip) {
    if (!records::isValid(strip.first) || strip.first.day != 1)
        return SeasonStripWords::tr("Nothing is recorded yet.");
    const SeasonStrip kept = within(strip);
    QStringList sentences{SeasonStripWords::tr("Twelve months from %1 %2.", "month, year")
                              .arg(QLocale().standaloneMonthName(kept.first.month))
                              .arg(kept.first.year)};
    if (isEmpty(kept))
        sentences.append(SeasonStripWords::tr("Nothing is recorded yet."));
    const auto spans = [&](const std::vector<DaySpan>& all, const char* text) {
        for (const DaySpan& span : all)
            sentences.append(SeasonStripWords::tr(text).arg(words::day(span.from), words::day(span.to)));
    };
    spans(kept.flow, QT_TRANSLATE_NOOP("SeasonStripWords", "Supers on from %1 to %2."));
    spans(kept.capped, QT_TRANSLATE_NOOP("SeasonStripWords", "Capped brood from %1 to %2."));
    spans(kept.uncapped, QT_TRANSLATE_NOOP("SeasonStripWords", "No capped brood from %1 to %2."));
    if (!kept.washed.empty())
        sentences.append(
            SeasonStripWords::tr("Washed on %n day(s).", nullptr, static_cast<int>(kept.washed.size())));
    if (!kept.due.empty())
        sentences.append(
            SeasonStripWords::tr("Washes due on %n day(s).", nullptr, static_cast<int>(kept.due.size())));
    spans(kept.treatments, QT_TRANSLATE_NOOP("SeasonStripWords", "Treated from %1 to %2."));
    for (const Date& day : kept.turnDates)
        sentences.append(SeasonStripWords::tr("Turn date %1.", "day").arg(words::day(day)));
    if (kept.today)
        sentences.append(SeasonStripWords::tr("Today is %1.", "day").arg(words::day(*kept.today)));
    return sentences.join(QLatin1Char(' '));
}

} // namespace halfcup::pictures
