// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Where the pictures of a report go, and their words.
#include "exchange/report_layout.h"

#include <algorithm>

namespace halfcup::exchange::report {

namespace {

constexpr double gutterMm = 6;    // between two pictures, and between a picture and words beside it
constexpr double afterMm = 4;     // under a picture with its words
constexpr double betweenMm = 1.2; // between a picture and its words
constexpr double leastMm = 20;    // no picture is made lower, however long its words are

Layout::Drawn kept(pictures::Drawing drawing) {
    return std::make_shared<const pictures::Drawing>(std::move(drawing));
}

} // namespace

Layout::Drawn Layout::drawn(const pictures::Legend& legend, double width) const {
    return legend.empty() ? nullptr
                          : kept(pictures::drawLegend(legend, {{units(width), 0}, m_faces.inPictures()}));
}

Layout::Pictured Layout::measured(const ReportPicture& picture, double width, double words, bool beside) {
    const auto heightOf = [&](const QString& text, Type type) {
        return text.isEmpty() ? 0 : m_faces.height(text, type, words) + mm(betweenMm);
    };
    Pictured made;
    made.picture = &picture;
    made.captionHeight = heightOf(picture.caption, Type::Head);
    made.sentenceHeight = heightOf(picture.sentence, Type::Small);
    made.legend = drawn(picture.legend, words);
    if (made.legend)
        made.legendHeight = pixels(made.legend->size.height()) + mm(betweenMm);
    made.drawing = kept(picture.draw({{units(width), units(mm(picture.heightMm))}, m_faces.inPictures()}));
    made.size = made.drawing->size * pixels(1);
    const double under = beside ? 0 : made.wordsHeight() + mm(betweenMm);
    const double room = std::max(m_bottom - m_top - under, mm(leastMm));
    if (made.size.height() > room) // smaller, so that it stays on its page
        made.size *= room / made.size.height();
    return made;
}

void Layout::placeDrawing(const Drawn& drawing, QPointF at, const QSizeF& size) {
    if (drawing && !drawing->size.isEmpty())
        m_pages.back().push_back({.place = {at, size}, .drawing = drawing});
}

void Layout::placePictured(const Pictured& pictured, double left, double words, bool beside) {
    const ReportPicture& picture = *pictured.picture;
    double y = m_y;
    double column = left;
    if (beside) {
        placeDrawing(pictured.drawing, {left, y}, pictured.size);
        column += pictured.size.width() + mm(gutterMm);
    }
    place({column, y, words, pictured.captionHeight}, picture.caption, Type::Head);
    y += pictured.captionHeight;
    if (!beside) {
        placeDrawing(pictured.drawing, {left, y}, pictured.size);
        y += pictured.size.height() + mm(betweenMm);
    }
    if (pictured.legend)
        placeDrawing(pictured.legend, {column, y}, pictured.legend->size * pixels(1));
    y += pictured.legendHeight;
    place({column, y, words, pictured.sentenceHeight}, picture.sentence, Type::Small);
}

void Layout::add(const ReportPicture& picture) {
    const bool beside = picture.widthMm > 0 && mm(picture.widthMm) < m_width / 2;
    const double width = picture.widthMm > 0 ? std::min(mm(picture.widthMm), m_width) : m_width;
    const double words = beside ? m_width - width - mm(gutterMm) : m_width;
    const Pictured made = measured(picture, width, words, beside);
    const double height = beside ? std::max(made.size.height(), made.wordsHeight())
                                 : made.size.height() + mm(betweenMm) + made.wordsHeight();
    need(height);
    placePictured(made, 0, words, beside);
    m_y += height + mm(afterMm);
}

void Layout::add(const ReportPictures& pictures) {
    const auto fitting = static_cast<std::size_t>((m_width + mm(gutterMm)) / mm(pictures.leastMm + gutterMm));
    const std::size_t columns = std::clamp<std::size_t>(fitting, 1, 2);
    const double width =
        (m_width - mm(gutterMm) * static_cast<double>(columns - 1)) / static_cast<double>(columns);
    Drawn legend = drawn(pictures.legend, m_width);
    for (std::size_t from = 0; from < pictures.pictures.size(); from += columns) {
        std::vector<Pictured> row;
        double height = 0;
        for (std::size_t i = from; i < std::min(from + columns, pictures.pictures.size()); ++i) {
            row.push_back(measured(pictures.pictures[i], width, width, false));
        }
        double caption = 0; // pictures beside each other begin at one height
        for (const Pictured& each : row)
            caption = std::max(caption, each.captionHeight);
        for (Pictured& each : row) {
            each.captionHeight = caption;
            height = std::max(height, each.size.height() + mm(betweenMm) + each.wordsHeight());
        }
        const double legendHeight = legend ? pixels(legend->size.height()) + mm(afterMm) : 0;
        need(legendHeight + height); // the legend stays with the first ones
        if (legend)
            placeDrawing(legend, {0, m_y}, legend->size * pixels(1));
        m_y += legendHeight;
        legend = nullptr;
        for (std::size_t i = 0; i < row.size(); ++i)
            placePictured(row[i], static_cast<double>(i) * (width + mm(gutterMm)), width, false);
        m_y += height + mm(afterMm);
    }
}

} // namespace halfcup::exchange::report
