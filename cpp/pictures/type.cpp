// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/type.h"

#include <cmath>

namespace halfcup::pictures {

namespace {

/// Letters as far apart as they are, in per cent: where that is said at all, Qt joins none. Joined ones come
/// out of a PDF as one letter, and nobody finds "first" by typing it.
constexpr double noLigatures = 100;

QFont fontOf(const QString& family, double height, bool strong) {
    QFont font(family);
    // QFont counts whole pixels; what is lost of a fraction is under a thirtieth of the height.
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(height))));
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setLetterSpacing(QFont::PercentageSpacing, noLigatures);
    return font;
}

} // namespace

Type::Type(const QString& family, double normal, double small)
    : m_fonts{fontOf(family, small, false), fontOf(family, normal, false), fontOf(family, normal, true)}
    , m_metrics{QFontMetricsF(m_fonts[0]), QFontMetricsF(m_fonts[1]), QFontMetricsF(m_fonts[2])} {}

double Type::width(const QString& text, TextSize size) const {
    return m_metrics[index(size)].horizontalAdvance(text);
}

double Type::height(TextSize size) const {
    return m_metrics[index(size)].height();
}

double Type::ascent(TextSize size) const {
    return m_metrics[index(size)].ascent();
}

QRectF Type::box(const QString& text, QPointF topLeft, TextSize size) const {
    return {topLeft, QSizeF(width(text, size), height(size))};
}

QString Type::fitted(const QString& text, double width, TextSize size) const {
    return m_metrics[index(size)].elidedText(text, Qt::ElideRight, width);
}

} // namespace halfcup::pictures
