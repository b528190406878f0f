// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_layout.h"

#include <QGuiApplication>

#include <algorithm>
#include <numeric>

namespace halfcup::exchange::report {

namespace {

constexpr double runningMm = 8; // at the top for what stands on every page, and at the bottom
constexpr double gapMm = 2;     // between columns
constexpr double labelMm = 34;
constexpr double wordsInPictures = 11;      // 8.25 points, in units of 1/96 inch
constexpr double smallWordsInPictures = 10; // 7.5 points
constexpr qsizetype wideValue = 90;         // characters from which on a value takes the whole width

QFont fontFor(Type type, QPaintDevice& device) {
    QFont font(QGuiApplication::font(), &device);
    // As far apart as they are. Where that is said at all, no letters are joined, and a text comes out of the
    // file as it went in ("first", not one letter for its f and i).
    font.setLetterSpacing(QFont::PercentageSpacing, 100);
    const auto of = [&](double points, bool bold = false) {
        font.setPointSizeF(points);
        font.setBold(bold);
        return font;
    };
    switch (type) {
    case Type::Title:
        return of(19, true);
    case Type::Subtitle:
        return of(12);
    case Type::Heading:
        return of(12.5, true);
    case Type::Small:
    case Type::Label:
        return of(8);
    case Type::Head:
    case Type::Mark:
        return of(8, true);
    case Type::Cell:
    case Type::Value:
        return of(8.5);
    case Type::Running:
        return of(7.5);
    case Type::Body:
        break;
    }
    return of(9);
}

} // namespace

Typefaces::Typefaces(QPaintDevice& device)
    : m_device(device)
    , m_inPictures(QGuiApplication::font().family(), wordsInPictures, smallWordsInPictures) {
    for (std::size_t i = 0; i < m_fonts.size(); ++i)
        m_fonts[i] = fontFor(static_cast<Type>(i), device);
}

double Typefaces::breakLines(QTextLayout& layout, const QString& text, Type type, double width,
                             bool toTheRight) const {
    QTextOption option(toTheRight ? Qt::AlignRight : Qt::AlignLeft);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.setText(text);
    layout.setFont(font(type));
    layout.beginLayout();
    double height = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, height});
        height += line.height();
    }
    layout.endLayout();
    return height;
}

double Typefaces::height(const QString& text, Type type, double width) {
    const QString key = text + QChar(static_cast<char16_t>(type)) + QString::number(width);
    const auto found = m_heights.constFind(key);
    if (found != m_heights.constEnd())
        return *found;
    QTextLayout layout({}, font(type), &m_device);
    const double height = breakLines(layout, text, type, width, false);
    m_heights.insert(key, height);
    return height;
}

Layout::Layout(Typefaces& faces, double width, double height, double perMm)
    : m_faces(faces)
    , m_width(width)
    , m_top(runningMm * perMm)
    , m_bottom(height - runningMm * perMm)
    , m_perMm(perMm) {}

void Layout::place(QRectF where, const QString& text, Type type, bool toTheRight) {
    if (!text.isEmpty())
        m_pages.back().push_back({.place = where, .text = text, .type = type, .toTheRight = toTheRight});
}

void Layout::fill(QRectF where) {
    m_pages.back().push_back({.place = where});
}

void Layout::rule(double y, double thicknessMm, bool pale) {
    m_pages.back().push_back({.place = {0, y, m_width, mm(thicknessMm)}, .pale = pale});
}

void Layout::need(double height) {
    if (m_y + height <= m_bottom || m_pages.back().empty())
        return;
    m_pages.emplace_back();
    m_y = m_top;
}

void Layout::addLine(const QString& text, Type type, double spaceAfterMm) {
    const double height = m_faces.height(text, type, m_width);
    need(height);
    place({0, m_y, m_width, height}, text, type);
    m_y += height + mm(spaceAfterMm);
}

void Layout::add(const ReportHeading& heading, const ReportBlock* next) {
    m_y += mm(4);
    // Never alone at the end of a page.
    need(m_faces.height(heading.text, Type::Heading, m_width) + mm(1.5) + leastOf(next));
    addLine(heading.text, Type::Heading, 1.5);
}

void Layout::add(const ReportParagraph& paragraph) {
    if (paragraph.kind != ReportParagraph::Caution) {
        addLine(paragraph.text, paragraph.kind == ReportParagraph::Small ? Type::Small : Type::Body, 2);
        return;
    }
    const double bar = mm(1.2), inset = mm(3);
    const double height = m_faces.height(paragraph.text, Type::Body, m_width - inset);
    m_y += mm(2);
    need(height);
    fill({0, m_y, bar, height}); // a bar beside it
    place({inset, m_y, m_width - inset, height}, paragraph.text, Type::Body);
    m_y += height + mm(3);
}

std::vector<Layout::FactRow> Layout::rowsOf(const ReportFacts& facts) const {
    std::vector<FactRow> rows;
    bool open = false; // the last row has room for a second one
    for (const auto& [label, value] : facts.facts) {
        const bool wide = value.size() > wideValue;
        if (wide || !open)
            rows.push_back({{}, wide, 0});
        rows.back().facts.push_back({&label, &value});
        open = !wide && !open;
    }
    for (FactRow& row : rows) {
        const double value = row.wide ? m_width - mm(labelMm) : m_width / 2 - mm(labelMm + gapMm);
        for (const auto& [label, text] : row.facts)
            row.height = std::max({row.height, m_faces.height(*label, Type::Label, mm(labelMm - gapMm)),
                                   m_faces.height(*text, Type::Value, value)});
        row.height += mm(0.5);
    }
    return rows;
}

void Layout::add(const ReportFacts& facts) {
    const std::vector<FactRow> rows = rowsOf(facts);
    double all = mm(1.5);
    if (!facts.title.isEmpty())
        all += m_faces.height(facts.title, Type::Head, m_width) + mm(1);
    for (const FactRow& row : rows)
        all += row.height;
    need(std::min(all, m_bottom - m_top));
    rule(m_y, 0.2);
    m_y += mm(1.5);
    if (!facts.title.isEmpty())
        addLine(facts.title, Type::Head, 1);
    for (const FactRow& row : rows) {
        need(row.height); // only where all of it is longer than a page
        double left = 0;
        const double value = row.wide ? m_width - mm(labelMm) : m_width / 2 - mm(labelMm + gapMm);
        for (const auto& [label, text] : row.facts) {
            // A little lower, so that its smaller letters stand on the same line.
            place({left, m_y + mm(0.16), mm(labelMm - gapMm), row.height}, *label, Type::Label);
            place({left + mm(labelMm), m_y, value, row.height}, *text, Type::Value);
            left += m_width / 2;
        }
        m_y += row.height;
    }
    m_y += mm(2);
}

double Layout::addCells(const std::vector<double>& lefts, const ReportTable& table, const QStringList& cells,
                        Type type, bool place) {
    double height = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const double width = lefts[i + 1] - lefts[i] - mm(gapMm);
        const QString& text = cells[static_cast<qsizetype>(i)];
        height = std::max(height, m_faces.height(text, type, width));
        if (place && !text.isEmpty())
            this->place({lefts[i], m_y, width, 0}, text, type, table.columns[i].toTheRight);
    }
    return height;
}

void Layout::add(const ReportTable& table) {
    if (table.rows.empty())
        return addLine(table.nothing, Type::Body, 2);
    double shares = 0;
    QStringList names;
    for (const ReportTable::Column& column : table.columns) {
        shares += column.share;
        names.append(column.name);
    }
    std::vector<double> lefts{0};
    for (const ReportTable::Column& column : table.columns)
        lefts.push_back(lefts.back() + (m_width + mm(gapMm)) * column.share / shares);
    const auto head = [&] {
        m_y += addCells(lefts, table, names, Type::Head, true) + mm(0.8);
        rule(m_y, 0.3);
        m_y += mm(1);
    };
    need(mm(16)); // the head and a row
    head();
    for (const QStringList& row : table.rows) {
        const double height = addCells(lefts, table, row, Type::Cell, false);
        const std::size_t pages = m_pages.size();
        need(height);
        if (m_pages.size() > pages)
            head();
        addCells(lefts, table, row, Type::Cell, true);
        m_y += height + mm(0.6);
        rule(m_y, 0.1, true);
        m_y += mm(0.7);
    }
    m_y += mm(2);
}

std::vector<Page> Layout::pages(const Report& report) {
    m_pages.assign(1, {});
    m_y = m_top;
    addLine(report.title, Type::Title, 1);
    addLine(report.subtitle, Type::Subtitle, 4);
    for (std::size_t i = 0; i < report.blocks.size(); ++i)
        if (const auto* heading = std::get_if<ReportHeading>(&report.blocks[i]))
            add(*heading, i + 1 < report.blocks.size() ? &report.blocks[i + 1] : nullptr);
        else
            std::visit(
                [&]<typename Block>(const Block& block) {
                    if constexpr (!std::is_same_v<Block, ReportHeading>)
                        add(block);
                },
                report.blocks[i]);
    return std::move(m_pages);
}

} // namespace halfcup::exchange::report
