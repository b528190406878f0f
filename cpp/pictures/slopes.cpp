// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/slopes.h"

#include "pictures/compared_marks.h"
#include "pictures/label_room.h"
#include "pictures/load_axis.h"
#include "pictures/picture_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace halfcup::pictures {

namespace {

class SlopesWords {
    Q_DECLARE_TR_FUNCTIONS(SlopesWords)
};

constexpr double widestLabel = 0.32; // of the width, at each end [own choice]
constexpr double beside = 9;         // between a label and its end
constexpr double fewestLines = 7;    // of letters, upright
constexpr double apart = 7;          // between the ends of two colonies with ranges
constexpr double mostLoad = 10'000;  // a damaged figure beyond this is drawn there
constexpr double lineWidth = 1.8;

bool isLoad(double load) {
    return std::isfinite(load) && load >= 0;
}

void fit(SlopeEnd& end) {
    end.middle = end.noneFound ? 0 : std::min(end.middle, mostLoad);
    end.low = isLoad(end.low) ? std::min(end.low, end.middle) : end.middle;
    end.high = isLoad(end.high) ? std::clamp(end.high, end.middle, mostLoad) : end.middle;
}

Slopes fit(const Slopes& slopes) {
    Slopes kept = slopes;
    kept.treatLine = isLoad(slopes.treatLine) ? std::min(slopes.treatLine, mostLoad) : 0;
    std::erase_if(kept.colonies, [](const Slope& each) {
        return !isLoad(each.before.middle) || !isLoad(each.after.middle);
    });
    for (Slope& each : kept.colonies) {
        each.label = marks::cleanLabel(each.label);
        fit(each.before);
        fit(each.after);
    }
    // The treated ones are what it is about, so their labels are asked for first.
    std::ranges::stable_sort(kept.colonies, std::ranges::greater(), [](const Slope& each) {
        return std::pair(each.treated, std::max(each.before.middle, each.after.middle));
    });
    return kept;
}

std::vector<qreal> untreatedDash() {
    return {5, 3};
}

Shape slopeLine(QPointF from, QPointF to, bool treated) {
    Shape shape = line(from, to, treated ? Tone::Action : Tone::Quiet, lineWidth);
    if (!treated)
        shape.dash = untreatedDash();
    return shape;
}

/// Round where treated, square where not; hollow where none was found.
Shape endPoint(QPointF at, bool treated, bool noneFound) {
    const Tone tone = treated ? Tone::Action : Tone::Quiet;
    const double r = marks::loadRadius;
    QPainterPath path;
    if (treated)
        path.addEllipse(at, r, r);
    else
        path.addRect(QRectF(at.x() - r + 0.5, at.y() - r + 0.5, 2 * r - 1, 2 * r - 1));
    return {.path = path, .inside = noneFound ? Tone::Page : tone, .outline = tone, .width = lineWidth};
}

class Picture {
public:
    Picture(const Slopes& slopes, const Sheet& sheet)
        : m_slopes(slopes)
        , m_type(sheet.type)
        , m_size(sheet.size.width(), std::max(sheet.size.height(), fewestLines * sheet.type.height()))
        , m_ranges(slopes.colonies.size() <= mostRanges)
        , m_left(columnWidth(true) + beside)
        , m_right(std::max(m_size.width() - columnWidth(false) - beside, m_left + 1))
        , m_axis(highest(), slopes.treatLine, bottomOf(), m_type.height() * 1.5)
        , m_room({{0, m_type.height()}, QSizeF(m_size.width(), m_size.height() - m_type.height())}) {}

    Drawing draw() {
        m_drawing.size = m_size;
        frame();
        for (std::size_t i = m_slopes.colonies.size(); i-- > 0;) // the first ones on top
            slope(m_slopes.colonies[i], m_ranges ? i * spread() : 0);
        treatWord();
        for (const Slope& each : m_slopes.colonies) {
            label(each, each.before, true);
            label(each, each.after, false);
        }
        return std::move(m_drawing);
    }

private:
    static QString endText(const QString& label, const SlopeEnd& end) {
        return SlopesWords::tr("%1: %2", "label of a colony, load").arg(label, words::load(end.middle));
    }

    /// As wide as its widest label, or as is allowed where there are more than can be labelled.
    [[nodiscard]] double columnWidth(bool before) const {
        const double most = m_size.width() * widestLabel;
        double widest = before ? 0 : m_type.width(treatText());
        if (m_slopes.colonies.size() * m_type.height() > m_size.height())
            return most;
        if (widest > most)
            widest = 0; // it will stand elsewhere
        for (const Slope& each : m_slopes.colonies)
            widest = std::max(widest, m_type.width(endText(each.label, before ? each.before : each.after)));
        return std::min(widest, most);
    }

    [[nodiscard]] QString treatText() const {
        return m_slopes.treatLine > 0
                   ? SlopesWords::tr("treat line %1").arg(LoadAxis::text(m_slopes.treatLine))
                   : QString();
    }

    [[nodiscard]] double highest() const {
        double found = 0;
        for (const Slope& each : m_slopes.colonies)
            for (const SlopeEnd* end : {&each.before, &each.after})
                found = std::max(found, m_ranges ? end->high : end->middle);
        return found;
    }

    /// Under the axis: room for half a label, and a line that explains the scale where it needs one.
    [[nodiscard]] double bottomOf() const {
        return m_size.height() - m_type.height() * (isPressed() ? 1.6 : 0.6);
    }

    [[nodiscard]] bool isPressed() const {
        return LoadAxis(highest(), m_slopes.treatLine, 1, 0).isLogarithmic();
    }

    /// Where the ends of several colonies stand beside each other, so that their ranges can be told apart.
    [[nodiscard]] double spread() const {
        return std::min(apart, (m_right - m_left) / 4 / static_cast<double>(mostRanges));
    }

    void frame() {
        const double bottom = m_axis.y(0), top = m_axis.y(m_axis.end());
        m_drawing.add(line({m_left, bottom}, {m_right, bottom}, Tone::Quiet, 1));
        for (const double x : {m_left, m_right})
            m_drawing.add(line({x, top}, {x, bottom}, Tone::Rule, 1));
        if (m_slopes.treatLine > 0)
            m_drawing.add(marks::treatLine({m_left, m_axis.y(m_slopes.treatLine)},
                                           {m_right, m_axis.y(m_slopes.treatLine)}));
        const double half = m_size.width() / 2 - beside / 2;
        const QString before = m_type.fitted(SlopesWords::tr("before"), half);
        const QString after = m_type.fitted(SlopesWords::tr("after"), half);
        const double right = m_size.width();
        // Over their axes, each kept on its half.
        const double first =
            std::clamp(m_left - m_type.width(before) / 2, 0.0, std::max(0.0, half - m_type.width(before)));
        const double second = std::clamp(m_right - m_type.width(after) / 2, right - half,
                                         std::max(right - half, right - m_type.width(after)));
        m_drawing.add(Label{.text = before, .box = m_type.box(before, {first, 0}), .tone = Tone::Quiet});
        m_drawing.add(Label{.text = after, .box = m_type.box(after, {second, 0}), .tone = Tone::Quiet});
        if (!isPressed())
            return;
        const QString text = m_type.fitted(SlopesWords::tr("High loads are drawn closer together."), right);
        const QRectF box = m_type.box(text, {0, m_size.height() - m_type.height()});
        m_room.block(box);
        m_drawing.add(Label{.text = text, .box = box, .tone = Tone::Quiet});
    }

    void slope(const Slope& each, double inward) {
        const QPointF from(m_left + inward, m_axis.y(each.before.middle));
        const QPointF to(m_right - inward, m_axis.y(each.after.middle));
        if (m_ranges) {
            range(each.before, from.x(), each.treated);
            range(each.after, to.x(), each.treated);
        }
        m_drawing.add(slopeLine(from, to, each.treated));
        m_drawing.add(endPoint(from, each.treated, each.before.noneFound));
        m_drawing.add(endPoint(to, each.treated, each.after.noneFound));
    }

    void range(const SlopeEnd& end, double x, bool treated) {
        m_drawing.add(
            line({x, m_axis.y(end.low)}, {x, m_axis.y(end.high)}, treated ? Tone::Action : Tone::Quiet, 1.2));
    }

    /// Beside the line at an end that no colony comes near, else over it in the middle.
    void treatWord() {
        if (m_slopes.treatLine <= 0)
            return;
        const QString text = treatText();
        const QRectF box = m_type.box(text, {0, 0});
        const double y = m_axis.y(m_slopes.treatLine);
        const auto near = [&](SlopeEnd Slope::*end) {
            return std::ranges::any_of(m_slopes.colonies, [&](const Slope& each) {
                return std::abs(m_axis.y((each.*end).middle) - y) < 1.2 * m_type.height();
            });
        };
        const auto put = [&](const QRectF& place, bool backed) {
            if (!m_room.take(place))
                return false;
            m_drawing.add(Label{.text = text, .box = place, .backed = backed});
            return true;
        };
        if (!near(&Slope::after) && put(box.translated(m_right + beside, y - box.height() / 2), false))
            return;
        if (!near(&Slope::before) &&
            put(box.translated(m_left - beside - box.width(), y - box.height() / 2), false))
            return;
        if (box.width() < m_right - m_left - 4 * beside)
            put(box.translated((m_left + m_right - box.width()) / 2, y - box.height() - 1), true);
    }

    void label(const Slope& each, const SlopeEnd& end, bool before) {
        const double height = m_type.height(), y = m_axis.y(end.middle);
        const double edge = before ? m_left - beside : m_right + beside;
        // The height where it may stand is sought with its edge alone: measuring letters takes longer.
        for (const double away : {0.0, -0.3, 0.3, -0.6, 0.6}) {
            const double top = y + (away - 0.5) * height;
            if (!m_room.isFree({before ? edge - 1 : edge, top, 1, height}))
                continue;
            // The load stays whole; what is written on the hive gives way.
            const double room = m_size.width() * widestLabel - m_type.width(endText({}, end));
            const QString text = endText(m_type.fitted(each.label, room), end);
            QRectF box = m_type.box(text, {edge, top});
            if (before)
                box.moveRight(edge);
            if (m_room.take(box)) {
                m_drawing.add(
                    Label{.text = text, .box = box, .tone = each.treated ? Tone::Ink : Tone::Quiet});
                return;
            }
        }
    }

    const Slopes& m_slopes;
    const Type& m_type;
    QSizeF m_size;
    bool m_ranges;
    double m_left, m_right; // of the two axes
    LoadAxis m_axis;
    LabelRoom m_room;
    Drawing m_drawing;
};

QString nothingText() {
    return SlopesWords::tr("No colony was washed both before and after it.");
}

} // namespace

Drawing drawSlopes(const Slopes& slopes, const Sheet& sheet) {
    const Slopes kept = fit(slopes);
    if (!kept.colonies.empty())
        return Picture(kept, sheet).draw();
    Drawing drawing{.size = {sheet.size.width(), sheet.type.height()}, .things = {}, .spots = {}};
    const QString text = sheet.type.fitted(nothingText(), sheet.size.width());
    drawing.add(Label{.text = text, .box = sheet.type.box(text, {0, 0})});
    return drawing;
}

Legend legendOf(const Slopes& slopes) {
    const Slopes kept = fit(slopes);
    Legend legend;
    const double middle = legendKeySize.height() / 2, right = legendKeySize.width();
    const auto any = [&](bool treated) {
        return std::ranges::any_of(kept.colonies, [=](const Slope& each) { return each.treated == treated; });
    };
    const auto none = [&](bool treated) {
        return std::ranges::any_of(kept.colonies, [=](const Slope& each) {
            return each.treated == treated && (each.before.noneFound || each.after.noneFound);
        });
    };
    const auto ends = [&](bool treated, bool hollow) {
        return std::vector<Shape>{slopeLine({5, 4}, {right - 5, 12}, treated),
                                  endPoint({5, 4}, treated, hollow),
                                  endPoint({right - 5, 12}, treated, hollow)};
    };
    if (any(true))
        legend.push_back(marks::legendEntry(ends(true, false), SlopesWords::tr("Treated colony")));
    if (any(false))
        legend.push_back(marks::legendEntry(ends(false, false), SlopesWords::tr("Untreated colony")));
    if (none(true) || none(false))
        legend.push_back(marks::legendEntry({endPoint({right / 2, middle}, none(true), true)},
                                            SlopesWords::tr("None found")));
    if (!kept.colonies.empty() && kept.colonies.size() <= mostRanges)
        legend.push_back(
            marks::legendEntry({line({right / 2, 0}, {right / 2, 2 * middle}, Tone::Action, 1.2)},
                               SlopesWords::tr("Range in 9 of 10 cases")));
    if (!kept.colonies.empty() && kept.treatLine > 0)
        legend.push_back(marks::legendEntry({marks::treatLine({0, middle}, {right, middle})},
                                            SlopesWords::tr("Treat line")));
    return legend;
}

QString sentenceOf(const Slopes& slopes) {
    const Slopes kept = fit(slopes);
    if (kept.colonies.empty())
        return nothingText();
    QStringList sentences;
    for (const Slope& each : kept.colonies)
        sentences.append(
            (each.treated
                 ? SlopesWords::tr("Colony %1: %2 mites per 100 bees before, %3 after.")
                 : SlopesWords::tr("Colony %1, not treated: %2 mites per 100 bees before, %3 after."))
                .arg(each.label, words::load(each.before.middle), words::load(each.after.middle)));
    return sentences.join(QLatin1Char(' '));
}

} // namespace halfcup::pictures
