// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"

#include <QFont>
#include <QFontMetricsF>
#include <QString>

#include <array>

namespace halfcup::pictures {

/// The letters of a picture and how much room they take. Unhinted, so that a word is as wide on paper as it
/// is on glass.
class Type {
public:
    /// normal and small: heights of letters in units, above 0.
    Type(const QString& family, double normal, double small);

    [[nodiscard]] const QFont& font(TextSize size) const { return m_fonts[index(size)]; }
    [[nodiscard]] double width(const QString& text, TextSize size = TextSize::Small) const;
    [[nodiscard]] double height(TextSize size = TextSize::Small) const; // of a line, ascent and descent
    [[nodiscard]] double ascent(TextSize size = TextSize::Small) const;
    /// The room of a text with its upper left corner there.
    [[nodiscard]] QRectF box(const QString& text, QPointF topLeft, TextSize size = TextSize::Small) const;
    /// The text, or its beginning and "…" where it is wider.
    [[nodiscard]] QString fitted(const QString& text, double width, TextSize size = TextSize::Small) const;

private:
    static std::size_t index(TextSize size) { return static_cast<std::size_t>(size); }

    std::array<QFont, 3> m_fonts;
    std::array<QFontMetricsF, 3> m_metrics;
};

/// What a picture is made for: how large it may be and in which letters.
struct Sheet {
    QSizeF size;
    const Type& type;
};

} // namespace halfcup::pictures
