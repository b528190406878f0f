// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/yard_comparison.h"

#include "pictures/compared_marks.h"
#include "pictures/label_room.h"
#include "pictures/load_axis.h"
#include "pictures/picture_words.h"
#include "pictures/standing_shape.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace halfcup::pictures {

namespace {

class YardComparisonWords {
    Q_DECLARE_TR_FUNCTIONS(YardComparisonWords)
};

constexpr double widestLabel = 0.3; // of the width [own choice]
constexpr double beside = 10;       // between label, axis and mark
constexpr double markSide = 20;     // of a standing's mark
constexpr double rowPadding = 8;
constexpr std::size_t rowsAtOnce = 12; // with more the axis stands below too: the upper one is out of sight
constexpr double mostLoad = 10'000;    // a damaged figure beyond this is drawn there

double lineOrNone(double line) {
    return std::isfinite(line) && line > 0 ? std::min(line, mostLoad) : 0;
}

/// The yard as it is drawn: sorted, and without what is no load.
YardComparison fit(const YardComparison& yard) {
    YardComparison kept = yard;
    kept.treatLine = lineOrNone(yard.treatLine);
    if (kept.ownLine)
        kept.ownLine = lineOrNone(*kept.ownLine);
    if (kept.ownLine == 0.0)
        kept.ownLine.reset();
    for (ComparedColony& colony : kept.colonies) {
        colony.label = marks::cleanLabel(colony.label);
        if (!colony.load)
            continue;
        ComparedLoad& load = *colony.load;
        if (!std::isfinite(load.middle) || load.middle < 0) {
            colony.load.reset();
            continue;
        }
        load.middle = std::min(load.middle, mostLoad);
        load.low = std::isfinite(load.low) ? std::clamp(load.low, 0.0, load.middle) : load.middle;
        load.high = std::isfinite(load.high) ? std::clamp(load.high, load.middle, mostLoad) : load.middle;
        if (load.noneFound)
            load.low = 0;
    }
    std::ranges::stable_sort(kept.colonies, std::ranges::greater(), [](const ComparedColony& colony) {
        return colony.load ? colony.load->middle : -1.0;
    });
    return kept;
}

QString ageText(int days) {
    return YardComparisonWords::tr("washed %n day(s) ago", nullptr, days);
}

class Rows {
public:
    Rows(const YardComparison& yard, const Sheet& sheet)
        : m_yard(yard)
        , m_type(sheet.type)
        , m_width(sheet.size.width())
        , m_anyLoad(!yard.colonies.empty() && yard.colonies.front().load)
        , m_left(labelWidth() + beside)
        , m_right(std::max(m_width - markSide - beside, m_left + 1))
        , m_axis(highest(), yard.treatLine, m_left, m_right) {}

    Drawing draw() {
        m_drawing.size = {m_width, 0};
        if (m_yard.colonies.empty()) {
            write(m_type.fitted(YardComparisonWords::tr("No colony is kept in this yard yet."), m_width), 0,
                  Tone::Ink);
            m_drawing.size.rheight() += m_type.height();
            return std::move(m_drawing);
        }
        if (m_anyLoad) {
            head();
            m_top = m_drawing.size.height();
        }
        for (const ComparedColony& colony : m_yard.colonies)
            row(colony);
        if (m_anyLoad && m_yard.colonies.size() > rowsAtOnce)
            ticks();
        // The lines lie under the rows: they are added last, so they are put before them.
        Drawing whole{.size = m_drawing.size, .things = {}, .spots = {}};
        if (m_anyLoad)
            lines(whole);
        whole.lay(m_drawing, {0, 0});
        return whole;
    }

private:
    [[nodiscard]] double labelWidth() const {
        double widest = 0;
        for (const ComparedColony& colony : m_yard.colonies)
            widest = std::max(widest, m_type.width(colony.label));
        return std::min(widest, m_width * widestLabel);
    }

    [[nodiscard]] double highest() const {
        double found = m_yard.ownLine.value_or(0);
        for (const ComparedColony& colony : m_yard.colonies)
            if (colony.load)
                found = std::max(found, colony.load->high);
        return found;
    }

    void write(const QString& text, double left, Tone tone) {
        m_drawing.add(Label{.text = text,
                            .box = m_type.box(text, {left, m_drawing.size.height()}),
                            .tone = tone,
                            .backed = true});
    }

    void head() {
        write(m_type.fitted(YardComparisonWords::tr("Mites per 100 bees"), m_width), 0, Tone::Quiet);
        m_drawing.size.rheight() += m_type.height();
        lineNames();
        if (m_yard.treatLine > 0 || m_yard.ownLine)
            m_drawing.size.rheight() += m_type.height();
        ticks();
    }

    /// Over their lines; where two of them stand close, each on its own side.
    void lineNames() {
        LabelRoom room({0, m_drawing.size.height(), m_width, m_type.height()}, 4);
        const auto name = [&](double load, const QString& text, std::optional<double> other) {
            const QRectF box = m_type.box(text, {0, m_drawing.size.height()});
            const double x = m_axis.y(load);
            double left = x - box.width() / 2;
            if (other && std::abs(m_axis.y(*other) - x) < 2 * box.width())
                left = *other < load ? x - 2 : x - box.width() + 2;
            left = std::clamp(left, 0.0, std::max(0.0, m_width - box.width()));
            if (const QRectF place = box.translated(left, 0); room.take(place))
                m_drawing.add(Label{.text = text, .box = place});
        };
        const double treat = m_yard.treatLine;
        if (treat > 0)
            name(treat, YardComparisonWords::tr("treat line %1").arg(LoadAxis::text(treat)), m_yard.ownLine);
        if (m_yard.ownLine)
            name(*m_yard.ownLine, YardComparisonWords::tr("own line %1").arg(LoadAxis::text(*m_yard.ownLine)),
                 treat > 0 ? std::optional(treat) : std::nullopt);
    }

    void ticks() {
        LabelRoom room({0, m_drawing.size.height(), m_width, m_type.height()}, 4);
        for (const double load : m_axis.ticks(m_type.width(LoadAxis::text(m_axis.end())) + beside)) {
            const QString text = LoadAxis::text(load);
            const QRectF box =
                m_type.box(text, {m_axis.y(load) - m_type.width(text) / 2, m_drawing.size.height()});
            if (room.take(box))
                m_drawing.add(Label{.text = text, .box = box, .tone = Tone::Quiet});
            m_ticks.push_back(m_axis.y(load));
        }
        m_drawing.size.rheight() += m_type.height();
    }

    void row(const ComparedColony& colony) {
        const double top = m_drawing.size.height();
        const double height = std::max(m_type.height() + rowPadding, markSide + 4);
        const double y = top + height / 2;
        const QString label = m_type.fitted(colony.label, m_left - beside);
        m_drawing.add(line({0, top}, {m_width, top}, Tone::Rule, 1));
        m_drawing.add(Label{.text = label, .box = m_type.box(label, {0, y - m_type.height() / 2})});
        m_drawing.spots.push_back({{m_width / 2, y}, colony.key});
        m_drawing.size.rheight() += height;
        if (!colony.load) {
            const QString text = m_type.fitted(YardComparisonWords::tr("not washed"), m_right - m_left);
            m_drawing.add(Label{.text = text,
                                .box = m_type.box(text, {m_left, y - m_type.height() / 2}),
                                .tone = Tone::Quiet,
                                .backed = true});
            addStanding(m_drawing, std::nullopt, markBox(y));
            return;
        }
        const ComparedLoad& load = *colony.load;
        const double middle = load.noneFound ? 0 : load.middle;
        for (Shape& shape :
             marks::rangeAcross(m_axis.y(load.low), m_axis.y(middle), m_axis.y(load.high), y, load.noneFound))
            m_drawing.add(std::move(shape));
        addStanding(m_drawing, load.standing, markBox(y));
        if (load.ageDays > freshDays) {
            m_drawing.size.rheight() -= rowPadding / 2;
            write(m_type.fitted(ageText(load.ageDays), m_width), 0, Tone::Quiet);
            m_drawing.size.rheight() += m_type.height() + rowPadding / 2;
        }
    }

    [[nodiscard]] QRectF markBox(double y) const {
        return {m_width - markSide, y - markSide / 2, markSide, markSide};
    }

    void lines(Drawing& drawing) const {
        const double bottom =
            m_drawing.size.height() - (m_yard.colonies.size() > rowsAtOnce ? m_type.height() : 0);
        for (const double x : m_ticks)
            drawing.add(line({x, m_top}, {x, bottom}, Tone::Rule, 1));
        if (m_yard.treatLine > 0)
            drawing.add(
                marks::treatLine({m_axis.y(m_yard.treatLine), m_top}, {m_axis.y(m_yard.treatLine), bottom}));
        if (m_yard.ownLine)
            drawing.add(
                marks::ownLine({m_axis.y(*m_yard.ownLine), m_top}, {m_axis.y(*m_yard.ownLine), bottom}));
    }

    const YardComparison& m_yard;
    const Type& m_type;
    double m_width;
    bool m_anyLoad;
    double m_left, m_right; // of the axis
    LoadAxis m_axis;        // lying: zero at the left
    double m_top = 0;       // of the first row
    std::vector<double> m_ticks;
    Drawing m_drawing;
};

std::size_t countWashed(const YardComparison& yard) {
    return std::ranges::count_if(yard.colonies,
                                 [](const ComparedColony& colony) { return colony.load.has_value(); });
}

QString inWords(const ComparedColony& colony) {
    QStringList parts;
    if (!colony.load)
        return YardComparisonWords::tr("Colony %1: not washed.").arg(colony.label);
    const ComparedLoad& load = *colony.load;
    if (load.noneFound)
        parts.append(YardComparisonWords::tr("Colony %1: none found, up to %2 per 100 bees.")
                         .arg(colony.label, words::load(load.high)));
    else
        parts.append(
            YardComparisonWords::tr("Colony %1: %2 per 100 bees, %3 to %4 in 9 of 10 cases.")
                .arg(colony.label, words::load(load.middle), words::load(load.low), words::load(load.high)));
    if (load.standing)
        parts.append(
            YardComparisonWords::tr("%1.", "a standing as a sentence").arg(words::standing(*load.standing)));
    if (load.ageDays > freshDays)
        parts.append(YardComparisonWords::tr("Washed %n day(s) ago.", nullptr, load.ageDays));
    return parts.join(QLatin1Char(' '));
}

} // namespace

Drawing drawYardComparison(const YardComparison& yard, const Sheet& sheet) {
    const YardComparison kept = fit(yard);
    return Rows(kept, sheet).draw();
}

Legend legendOf(const YardComparison& yard) {
    const YardComparison kept = fit(yard);
    Legend legend;
    const QPointF middle(legendKeySize.width() / 2, legendKeySize.height() / 2);
    const auto any = [&](auto&& what) {
        return std::ranges::any_of(
            kept.colonies, [&](const ComparedColony& colony) { return colony.load && what(*colony.load); });
    };
    if (any([](const ComparedLoad& load) { return !load.noneFound; }))
        legend.push_back(
            marks::legendEntry(marks::rangeAcross(3, 12, 25, middle.y(), false),
                               YardComparisonWords::tr("Latest wash, with the range of 9 in 10 cases")));
    if (any([](const ComparedLoad& load) { return load.noneFound; }))
        legend.push_back(
            marks::legendEntry(marks::rangeAcross(6, 6, 25, middle.y(), true),
                               YardComparisonWords::tr("None found; the load can be up to the stroke")));
    if (countWashed(kept) > 0 && kept.treatLine > 0)
        legend.push_back(
            marks::legendEntry({marks::treatLine({0, middle.y()}, {legendKeySize.width(), middle.y()})},
                               YardComparisonWords::tr("Treat line")));
    if (countWashed(kept) > 0 && kept.ownLine)
        legend.push_back(
            marks::legendEntry({marks::ownLine({0, middle.y()}, {legendKeySize.width(), middle.y()})},
                               YardComparisonWords::tr("Own line")));
    const auto mark = [&](std::optional<mites::Standing> standing, const QString& meaning) {
        LegendEntry entry = marks::legendEntry({}, meaning);
        addStanding(entry.key, standing, {{0, 0}, legendKeySize});
        legend.push_back(std::move(entry));
    };
    for (const mites::Standing each :
         {mites::Standing::Over, mites::Standing::Close, mites::Standing::CannotTell, mites::Standing::Under})
        if (any([&](const ComparedLoad& load) { return load.standing == each; }))
            mark(each, words::standing(each));
    if (countWashed(kept) < kept.colonies.size())
        mark(std::nullopt, YardComparisonWords::tr("Not washed"));
    return legend;
}

QString sentenceOf(const YardComparison& yard) {
    const YardComparison kept = fit(yard);
    if (kept.colonies.empty())
        return YardComparisonWords::tr("No colony is kept in this yard yet.");
    const std::size_t washed = countWashed(kept);
    if (washed == 0)
        return YardComparisonWords::tr("No wash yet in %n colony(ies).", nullptr,
                                       static_cast<int>(kept.colonies.size()));
    QStringList sentences{YardComparisonWords::tr("%n colony(ies), the highest load first.", nullptr,
                                                  static_cast<int>(washed))};
    const auto over = std::ranges::count_if(kept.colonies, [](const ComparedColony& colony) {
        return colony.load && colony.load->standing == mites::Standing::Over;
    });
    sentences.append(over == 0 ? YardComparisonWords::tr("None of them is over its line.")
                               : YardComparisonWords::tr("%n of them is (are) over the line.", nullptr,
                                                         static_cast<int>(over)));
    sentences.append(inWords(kept.colonies.front()));
    if (washed < kept.colonies.size())
        sentences.append(YardComparisonWords::tr("%n colony(ies) not washed.", nullptr,
                                                 static_cast<int>(kept.colonies.size() - washed)));
    return sentences.join(QLatin1Char(' '));
}

QStringList rowsInWords(const YardComparison& yard) {
    QStringList rows;
    for (const ComparedColony& colony : fit(yard).colonies)
        rows.append(inWords(colony));
    return rows;
}

} // namespace halfcup::pictures
