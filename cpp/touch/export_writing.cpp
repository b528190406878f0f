// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the files of the page Export are filled with.
#include "touch/export_controller.h"

#include "exchange/report_content.h"
#include "exchange/report_pdf.h"
#include "season/bee_year.h"
#include "season/turn_date.h"
#include "touch/season_calendar.h"
#include "touch/season_controller.h"

namespace halfcup::touch {

QString ExportController::writeReport(const exchange::ByteSink& sink) {
    exchange::ReportRequest request;
    request.selection = selection();
    request.detail = m_exact ? exchange::PositionDetail::Exact : exchange::PositionDetail::Blurred;
    request.writtenAt = m_services.now();
    const auto records = exchange::readForReport(m_services.store, request.selection);
    for (const records::Yard& yard : records.yards) {
        const auto period = request.selection.periods.find(yard.id);
        const records::Date first =
            period == request.selection.periods.end()
                ? season::beeYearBegin(records::localDate(request.writtenAt), season::beeYearStart(yard))
                : period->second.first;
        request.seasons[yard.id] = {first, season::turnDateFrom(yard, first)};
    }
    const int pages =
        exchange::writeReportPdf(exchange::buildReport(records, request, m_services.handbook()),
                                 m_letter ? exchange::Paper::Letter : exchange::Paper::A4, sink);
    return tr("Report of %n page(s)", nullptr, pages);
}

QString ExportController::writeCalendar(const exchange::ByteSink& sink) {
    std::vector<records::YardRecords> yards;
    for (const records::Yard& yard : m_services.store.yards())
        if (auto kept = m_services.store.yardRecords(yard.id))
            yards.push_back(std::move(*kept));
    const auto dates = season::seasonDates(yards, m_services.now(), SeasonController::daysAhead);
    sink(seasonCalendar(m_services, yards, dates));
    return tr("%n date(s)", nullptr, static_cast<int>(dates.size()));
}

QString ExportController::writeInto(const exchange::ByteSink& sink) {
    exchange::ExportOptions options;
    options.detail = m_exact ? exchange::PositionDetail::Exact : exchange::PositionDetail::Blurred;
    options.dialect = m_semicolon ? exchange::CsvDialect::Semicolon : exchange::CsvDialect::Comma;
    store::Store& store = m_services.store;
    switch (m_kind) {
    case Samples:
        return tr("%n wash(es)", nullptr, exchange::exportSamples(store, options, sink));
    case Counts:
        return tr("%n touch(es) of counting", nullptr, exchange::exportCounts(store, options, sink));
    case Treatments:
        return tr("%n row(s), one a treatment and colony", nullptr,
                  exchange::exportTreatments(store, m_services.handbook(), options, sink));
    case Map:
        return tr("%n place(s)", nullptr, exchange::exportMap(store, options, sink));
    case Calendar:
        return writeCalendar(sink);
    case Report:
        break;
    }
    return writeReport(sink);
}

} // namespace halfcup::touch
