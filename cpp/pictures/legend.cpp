// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/legend.h"

#include <algorithm>

namespace halfcup::pictures {

namespace {

constexpr double beside = 6;      // between key and meaning
constexpr double between = 14;    // between columns
constexpr double under = 4;       // between rows
constexpr double narrowest = 130; // of a column; narrower ones only break lines
constexpr double widestLine = 20; // heights of letters; from there on a column breaks lines too

/// The text in lines no wider than that; a word that is wider has a line of its own.
QStringList broken(const QString& text, double width, const Type& type) {
    QStringList lines;
    QString line;
    for (const QString& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (!line.isEmpty() && type.width(longer) > width) {
            lines.append(line);
            line = word;
        } else {
            line = longer;
        }
    }
    if (!line.isEmpty())
        lines.append(line);
    return lines;
}

} // namespace

Drawing drawLegend(const Legend& legend, const Sheet& sheet) {
    Drawing drawing{.size = {sheet.size.width(), 0}, .things = {}, .spots = {}};
    if (legend.empty())
        return drawing;
    const double key = legendKeySize.width() + beside;
    double widest = narrowest;
    for (const LegendEntry& entry : legend)
        widest = std::max(widest, key + sheet.type.width(entry.meaning));
    widest = std::min(widest, std::max(narrowest, key + widestLine * sheet.type.height()));
    const int columns = std::clamp(static_cast<int>((sheet.size.width() + between) / (widest + between)), 1,
                                   static_cast<int>(legend.size()));
    const double width = (sheet.size.width() - (columns - 1) * between) / columns;
    const double lineHeight = std::max(sheet.type.height(), legendKeySize.height());
    double top = 0, rowHeight = 0;
    for (std::size_t i = 0; i < legend.size(); ++i) {
        const int column = static_cast<int>(i) % columns;
        if (column == 0 && i > 0) {
            top += rowHeight + under;
            rowHeight = 0;
        }
        const double left = column * (width + between);
        drawing.lay(legend[i].key, {left, top + (lineHeight - legendKeySize.height()) / 2});
        double y = top;
        for (const QString& line : broken(legend[i].meaning, width - key, sheet.type)) {
            drawing.add(Label{.text = line, .box = {left + key, y, sheet.type.width(line), lineHeight}});
            y += lineHeight;
        }
        rowHeight = std::max(rowHeight, std::max(y - top, lineHeight));
    }
    drawing.size.setHeight(top + rowHeight);
    return drawing;
}

} // namespace halfcup::pictures
