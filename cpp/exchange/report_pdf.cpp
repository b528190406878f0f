// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_pdf.h"

#include "exchange/report_layout.h"
#include "pictures/painter.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontDatabase>
#include <QPainter>
#include <QPdfWriter>

#include <stdexcept>

namespace halfcup::exchange {

namespace {

constexpr int dotsPerInch = 1200; // fine enough that letters keep their places at any magnification
constexpr double marginMm = 15;

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

/// Draws what was placed, and what stands on every page.
class Press {
public:
    Press(QPdfWriter& paper, report::Typefaces& faces)
        : m_paper(paper)
        , m_faces(faces)
        , m_painter(&paper)
        , m_layout({}, faces.font(report::Type::Body), &paper) {}

    void print(const Report& report, const std::vector<report::Page>& pages) {
        for (std::size_t i = 0; i < pages.size(); ++i) {
            if (i > 0)
                m_paper.newPage();
            for (const report::Placed& each : pages[i])
                print(each);
            const double width = m_paper.width();
            const double foot = m_paper.height() - mm(5);
            print(
                {.place = {0, foot, width * 0.8, 0}, .text = report.running, .type = report::Type::Running});
            print({.place = {width * 0.8, foot, width * 0.2, 0},
                   .text = ReportText::tr("page %1 of %2").arg(i + 1).arg(pages.size()),
                   .type = report::Type::Running,
                   .toTheRight = true});
            if (!report.mark.isEmpty())
                print({.place = {0, 0, width, 0},
                       .text = report.mark,
                       .type = report::Type::Mark,
                       .toTheRight = true});
        }
    }

private:
    double mm(double value) const { return value * dotsPerInch / 25.4; }

    void print(const report::Placed& each) {
        const pictures::Palette& palette = pictures::Palette::paper();
        if (each.drawing) {
            m_painter.save();
            m_painter.translate(each.place.topLeft());
            const double scale = each.place.width() / each.drawing->size.width();
            m_painter.scale(scale, scale);
            pictures::paint(m_painter, *each.drawing, palette, m_faces.inPictures());
            m_painter.restore();
            return;
        }
        if (each.text.isEmpty())
            return m_painter.fillRect(each.place,
                                      palette.of(each.pale ? pictures::Tone::Rule : pictures::Tone::Ink));
        m_faces.breakLines(m_layout, each.text, each.type, each.place.width(), each.toTheRight);
        m_layout.draw(&m_painter, each.place.topLeft());
    }

    QPdfWriter& m_paper;
    report::Typefaces& m_faces;
    QPainter m_painter;
    QTextLayout m_layout;
};

} // namespace

int writeReportPdf(const Report& report, Paper paper, const ByteSink& sink) {
    if (QFontDatabase::families().isEmpty())
        throw std::runtime_error("There is no font on this machine, so no report can be written.");
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    QPdfWriter pdf(&file);
    pdf.setTitle(report.running);
    pdf.setCreator(QStringLiteral("Halfcup"));
    pdf.setResolution(dotsPerInch);
    pdf.setPageSize(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
    pdf.setPageMargins(QMarginsF(marginMm, marginMm, marginMm, marginMm), QPageLayout::Millimeter);
    report::Typefaces faces(pdf);
    report::Layout layout(faces, pdf.width(), pdf.height(), dotsPerInch / 25.4);
    const std::vector<report::Page> pages = layout.pages(report);
    Press(pdf, faces).print(report, pages);
    sink({file.data().constData(), static_cast<std::size_t>(file.data().size())});
    return static_cast<int>(pages.size());
}

} // namespace halfcup::exchange
