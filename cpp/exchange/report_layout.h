// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/report.h"

#include <QFont>
#include <QHash>
#include <QPaintDevice>
#include <QRectF>
#include <QTextLayout>
#include <QTextOption>

#include <array>
#include <memory>
#include <vector>

/// Where the blocks of a report go on its pages. Used by report_pdf.cpp alone.
namespace halfcup::exchange::report {

enum class Type { Title, Subtitle, Heading, Body, Small, Label, Value, Head, Cell, Running, Mark };

/// One text, one picture or, where it has neither, one rule, filled. Device pixels from the upper left corner
/// of the printable area.
struct Placed {
    QRectF place;
    QString text = {};
    Type type = Type::Body;
    bool toTheRight = false;
    std::shared_ptr<const pictures::Drawing> drawing = {}; // scaled to the width of its place
    bool pale = false;                                     // a rule between rows, not one that sets apart
};
using Page = std::vector<Placed>;

/// The typefaces at the resolution of the device.
class Typefaces {
public:
    explicit Typefaces(QPaintDevice& device);

    [[nodiscard]] const QFont& font(Type type) const { return m_fonts[static_cast<std::size_t>(type)]; }
    /// Of the words in pictures; in units of 1/96 inch, as pictures are.
    [[nodiscard]] const pictures::Type& inPictures() const { return m_inPictures; }
    /// The text broken into lines of that width, its first line at 0; returns its height.
    double breakLines(QTextLayout& layout, const QString& text, Type type, double width,
                      bool toTheRight) const;
    /// The same, height alone; remembers texts, because tables repeat them.
    double height(const QString& text, Type type, double width);

private:
    QPaintDevice& m_device;
    std::array<QFont, 11> m_fonts;
    pictures::Type m_inPictures;
    QHash<QString, double> m_heights;
};

class Layout {
public:
    /// width and height of the printable area and perMm in pixels of the device.
    Layout(Typefaces& faces, double width, double height, double perMm);

    [[nodiscard]] std::vector<Page> pages(const Report& report);

    using Drawn = std::shared_ptr<const pictures::Drawing>;

private:
    /// One or two facts side by side.
    struct FactRow {
        std::vector<std::pair<const QString*, const QString*>> facts;
        bool wide = false;
        double height = 0;
    };

    void add(const ReportHeading& heading, const ReportBlock* next);
    void add(const ReportParagraph& paragraph);
    void add(const ReportFacts& facts);
    void add(const ReportTable& table);
    void add(const ReportPicture& picture);
    void add(const ReportPictures& pictures);
    void addLine(const QString& text, Type type, double spaceAfterMm);
    double addCells(const std::vector<double>& lefts, const ReportTable& table, const QStringList& cells,
                    Type type, bool place);
    void need(double height); // a new page where it does not fit

    /// What has to stand on one page at the least: pictures are not torn from their heading.
    [[nodiscard]] double leastOf(const ReportBlock* block);
    /// A picture with its words, drawn and measured, in a column.
    struct Pictured {
        const ReportPicture* picture = nullptr;
        Drawn drawing, legend;    // no legend where it has none
        QSizeF size;              // of the drawing on the page
        double captionHeight = 0; // with the space under it, as all of these
        double legendHeight = 0;
        double sentenceHeight = 0;

        [[nodiscard]] double wordsHeight() const { return captionHeight + legendHeight + sentenceHeight; }
    };
    /// width: of the picture; words: of the column of its words. beside: the words take no height from it.
    [[nodiscard]] Pictured measured(const ReportPicture& picture, double width, double words, bool beside);
    [[nodiscard]] Drawn drawn(const pictures::Legend& legend, double width) const;
    void placeDrawing(const Drawn& drawing, QPointF at, const QSizeF& size);
    [[nodiscard]] Pictured measured(const ReportPicture& picture);
    [[nodiscard]] std::vector<Pictured> measured(const ReportPictures& pictures, std::size_t from);
    [[nodiscard]] std::size_t columnsOf(const ReportPictures& pictures) const;
    [[nodiscard]] double columnWidth(const ReportPictures& pictures) const;
    [[nodiscard]] bool standsBeside(const ReportPicture& picture) const;
    [[nodiscard]] double heightOf(const Pictured& pictured, bool beside) const;
    /// Caption, picture, legend and sentence, or all but the picture beside it.
    void placePictured(const Pictured& pictured, double left, double words, bool beside);
    [[nodiscard]] double units(double pixels) const { return pixels / m_perMm / 25.4 * 96; }
    [[nodiscard]] double pixels(double units) const { return units * m_perMm * 25.4 / 96; }

    std::vector<FactRow> rowsOf(const ReportFacts& facts) const;
    void fill(QRectF where);
    void rule(double y, double thicknessMm, bool pale = false);
    void place(QRectF where, const QString& text, Type type, bool toTheRight = false);
    [[nodiscard]] double mm(double value) const { return value * m_perMm; }

    Typefaces& m_faces;
    double m_width;
    double m_top;
    double m_bottom;
    double m_perMm;
    double m_y = 0;
    std::vector<Page> m_pages;
};

} // namespace halfcup::exchange::report
