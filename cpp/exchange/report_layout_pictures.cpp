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

bool Layout::standsBeside(const ReportPicture& picture) const {
    return picture.widthMm > 0 && mm(picture.widthMm) < m_width / 2;
}

double Layout::heightOf(const Pictured& pictured, bool beside) const {
    return beside ? std::max(pictured.size.height(), pictured.wordsHeight())
                  : pictured.size.height() + mm(betweenMm) + pictured.wordsHeight();
}

Layout::Pictured Layout::measured(const ReportPicture& picture) {
    const double width = picture.widthMm > 0 ? std::min(mm(picture.widthMm), m_width) : m_width;
    return standsBeside(picture) ? measured(picture, width, m_width - width - mm(gutterMm), true)
                                 : measured(picture, width, m_width, false);
}

std::size_t Layout::columnsOf(const ReportPictures& pictures) const {
    return m_width + mm(gutterMm) >= 2 * mm(pictures.leastMm + gutterMm) ? 2 : 1;
}

double Layout::columnWidth(const ReportPictures& pictures) const {
    const auto columns = static_cast<double>(columnsOf(pictures));
    return (m_width - mm(gutterMm) * (columns - 1)) / columns;
}

/// One row, its pictures beginning at one height.
std::vector<Layout::Pictured> Layout::measured(const ReportPictures& pictures, std::size_t from) {
    const double width = columnWidth(pictures);
    std::vector<Pictured> row;
    double caption = 0;
    for (std::size_t i = from; i < std::min(from + columnsOf(pictures), pictures.pictures.size()); ++i) {
        row.push_back(measured(pictures.pictures[i], width, width, false));
        caption = std::max(caption, row.back().captionHeight);
    }
    for (Pictured& each : row)
        each.captionHeight = caption;
    return row;
}

double Layout::leastOf(const ReportBlock* block) {
    constexpr double ofOthersMm = 24;
    if (const auto* picture = block ? std::get_if<ReportPicture>(block) : nullptr)
        return heightOf(measured(*picture), standsBeside(*picture));
    const auto* several = block ? std::get_if<ReportPictures>(block) : nullptr;
    if (!several)
        return mm(ofOthersMm);
    const Drawn legend = drawn(several->legend, m_width);
    double height = 0;
    for (const Pictured& each : measured(*several, 0))
        height = std::max(height, heightOf(each, false));
    return height + (legend ? pixels(legend->size.height()) + mm(afterMm) : 0);
}

void Layout::add(const ReportPicture& picture) {
    const bool beside = standsBeside(picture);
    const Pictured made = measured(picture);
    const double height = heightOf(made, beside);
    need(height);
    placePictured(made, 0, beside ? m_width - made.size.width() - mm(gutterMm) : m_width, beside);
    m_y += height + mm(afterMm);
}

void Layout::add(const ReportPictures& pictures) {
    const double width = columnWidth(pictures);
    Drawn legend = drawn(pictures.legend, m_width);
    for (std::size_t from = 0; from < pictures.pictures.size(); from += columnsOf(pictures)) {
        const std::vector<Pictured> row = measured(pictures, from);
        double height = 0;
        for (const Pictured& each : row)
            height = std::max(height, heightOf(each, false));
        const double legendHeight = legend ? pixels(legend->size.height()) + mm(afterMm) : 0;
        need(legendHeight + height); // the legend stays with the first ones
        if (legend)
            placeDrawing(legend, {0, m_y}, legend->size * pixels(1));
        m_y += legendHeight;
        legend = nullptr;
        double left = 0;
        for (const Pictured& each : row) {
            placePictured(each, left, width, false);
            left += width + mm(gutterMm);
        }
        m_y += height + mm(afterMm);
    }
}

} // namespace halfcup::exchange::report
