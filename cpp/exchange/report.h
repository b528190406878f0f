// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"
#include "pictures/type.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <utility>
#include <variant>
#include <vector>

/// What a report says, apart from how it looks: blocks in the order in which they are read. Made by
/// report_content.h, laid out by report_pdf.h. A new kind of block is a struct here, a member of Block, and a
/// function of the layout.
namespace halfcup::exchange {

struct ReportHeading {
    QString text;
};

struct ReportParagraph {
    enum Kind { Plain, Small, Caution };
    QString text;
    Kind kind = Plain;
};

/// A named thing with its fields, kept together on a page: a yard, a treatment.
struct ReportFacts {
    QString title; // may be empty
    std::vector<std::pair<QString, QString>> facts;
};

struct ReportTable {
    struct Column {
        QString name;
        double share = 1; // of the width, against the other columns
        bool toTheRight = false;
    };
    std::vector<Column> columns;
    std::vector<QStringList> rows; // as many cells as columns each
    QString nothing;               // said in place of a table without rows
};

/// A picture that is drawn for the width it gets, and painted as lines and letters, never as dots. It stays
/// on one page with its caption, its legend, and the sentence that tells its figures to whoever would rather
/// read.
struct ReportPicture {
    /// The drawing's size says how high it came out; higher than a page, it is made smaller.
    std::function<pictures::Drawing(const pictures::Sheet&)> draw;
    double heightMm = 60; // of the sheet it is asked for
    double widthMm = 0;   // 0: all there is; narrow ones have their words beside them
    QString caption;
    QString sentence;
    pictures::Legend legend;
};

/// Pictures of one kind with one legend: two beside each other where each gets leastMm, else one.
struct ReportPictures {
    std::vector<ReportPicture> pictures; // without a width of their own, as a rule without a legend
    double leastMm = 70;
    pictures::Legend legend;
};

using ReportBlock =
    std::variant<ReportHeading, ReportParagraph, ReportFacts, ReportTable, ReportPicture, ReportPictures>;

struct Report {
    QString title;    // on the first page
    QString subtitle; // under it
    QString running;  // small, on every page
    QString mark;     // on every page, so that nobody takes invented data for real; empty: all is real
    std::vector<ReportBlock> blocks;
};

} // namespace halfcup::exchange
