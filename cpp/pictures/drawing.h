// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

/// A picture before it is painted: shapes and words with their places, in the order in which they are laid on
/// each other. Every picture of the app is made as one of these, so that screen and paper show the same and a
/// test can look at it without pixels. Lengths are units: device-independent pixels on a screen, 1/96 inch on
/// paper; y grows downwards from the upper left corner.
namespace halfcup::pictures {

/// What a colour is for; palette.h says what it is in daylight, at dusk and on paper. Honey, Rust, Sky and
/// Green only repeat what a shape, a hatch or a word already says.
enum class Tone { Page, Ink, Quiet, Rule, Field, Action, Honey, Rust, Sky, Green };

/// How an area is filled. Hatches are drawn as lines, so that they look alike on glass and on paper.
enum class Fill { Solid, HatchUp, HatchDown };

struct Shape {
    QPainterPath path = {};
    std::optional<Tone> inside = {}; // nothing: not filled
    Fill fill = Fill::Solid;
    double opacity = 1; // of the inside, 0 to 1
    std::optional<Tone> outline = {};
    double width = 1;              // of the outline
    std::vector<qreal> dash = {};  // lengths of strokes and gaps in units; empty: a whole line
    bool roundCap = false;         // ends and corners of the outline
    std::optional<QRectF> in = {}; // nothing of it is painted outside of this
};

/// Sizes of words, relative to what the person reads with (type.h).
enum class TextSize { Small, Normal, Strong };

struct Label {
    QString text = {};
    QRectF box = {};                         // as large as the text, see Type::box()
    Qt::Alignment alignment = Qt::AlignLeft; // across; the text stands in the middle of the box upright
    TextSize size = TextSize::Small;
    Tone tone = Tone::Ink;
    bool backed = false; // a piece of page behind it, where it lies on something
};

/// Something in the picture that can be touched or asked for.
struct Spot {
    QPointF at = {};
    QString key = {}; // whose, "" never
};

struct Drawing {
    QSizeF size = {};
    std::vector<std::variant<Shape, Label>> things = {};
    std::vector<Spot> spots = {};

    void add(Shape shape) { things.emplace_back(std::move(shape)); }
    void add(Label label) { things.emplace_back(std::move(label)); }

    /// The key of the spot nearest to the point, among those no further than reach; empty where there is
    /// none.
    [[nodiscard]] QString nearest(QPointF point, double reach) const;
    /// The labels alone, in painting order.
    [[nodiscard]] std::vector<Label> labels() const;
    /// Everything of the other one, moved by the offset, laid over this.
    void lay(const Drawing& other, QPointF offset);
};

/// Shapes that most pictures need. A width of 0 draws nothing.
[[nodiscard]] Shape line(QPointF from, QPointF to, Tone tone, double width);
[[nodiscard]] Shape box(const QRectF& rect, Tone inside);

} // namespace halfcup::pictures
