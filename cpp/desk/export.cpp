// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/export_calendar.h"
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "desk/table.h"
#include "exchange/for_people.h"
#include "exchange/keep_exchange.h"
#include "exchange/report_content.h"
#include "exchange/report_pdf.h"
#include "exchange/safe_file.h"
#include "handbook/built_in.h"
#include "season/bee_year.h"
#include "season/turn_date.h"
#include "store/outgoing.h"

#include <QGuiApplication>
#include <QTranslator>

#include <array>
#include <filesystem>

namespace halfcup::desk {

namespace {

using exchange::ByteSink;
using exchange::ExportOptions;

// What a writer of one format works with.
struct Job {
    store::Store& store;
    const Arguments& arguments;
    ExportOptions options;
    records::Moment on;
};

exchange::ReportSeason seasonFor(const records::Yard& yard, const exchange::ReportRequest& request) {
    const auto period = request.selection.periods.find(yard.id);
    const records::Date first =
        period == request.selection.periods.end()
            ? season::beeYearBegin(records::localDate(request.writtenAt), season::beeYearStart(yard))
            : period->second.first;
    return {first, season::turnDateFrom(yard, first)};
}

void writePdf(const Job& job, const ByteSink& sink) {
    const exchange::Paper paper =
        job.arguments.options.at("--paper") == "letter" ? exchange::Paper::Letter : exchange::Paper::A4;
    const exchange::ReportRecords read = exchange::readForReport(job.store, job.options.selection);
    exchange::ReportRequest request{job.options.selection, job.options.detail, job.on, {}};
    for (const records::Yard& yard : read.yards)
        request.seasons.emplace(yard.id, seasonFor(yard, request));
    // Fonts come from the toolkit, which wants an application, but no screen.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {}); // about screens
    std::string name = "halfcup-desk";
    std::array<char*, 2> words{name.data(), nullptr};
    int count = 1;
    const QGuiApplication application(count, words.data());
    QTranslator english; // "1 mite", "2 mites"
    if (english.load(QStringLiteral(":/halfcup/desk/english.qm")))
        QCoreApplication::installTranslator(&english);
    exchange::writeReportPdf(exchange::buildReport(read, request, handbook::builtIn()), paper, sink);
}

void writeCalendar(const Job& job, const ByteSink& sink) {
    const exchange::Selection& selection = job.options.selection;
    if (!selection.colonyId.empty() || !selection.periods.empty() ||
        job.options.detail != ExportOptions{}.detail)
        throw UsageError(
            "A calendar holds the year ahead of one yard or all: no --colony, --year or --exact.");
    std::vector<records::YardRecords> yards;
    for (records::YardRecords& each : yardsOn(job.store, records::localDate(job.on)))
        if (selection.holdsYard(each.yard.id))
            yards.push_back(std::move(each));
    sink(calendarOf(yards, job.on));
}

void writeEverything(const Job& job, const ByteSink& sink) {
    const exchange::Selection& selection = job.options.selection;
    if (!selection.colonyId.empty() || !selection.yardId.empty() || !selection.periods.empty())
        throw UsageError("An exchange file holds everything: no --colony, --yard or --year.");
    store::Outgoing outgoing(job.store);
    exchange::writeExchange(outgoing, sink, utcNowMs());
}

// The formats. One more is one more line here.
struct Format {
    const char* name;
    const char* meaning;
    bool text; // may go to standard output
    void (*write)(const Job&, const ByteSink&);
};

constexpr std::array formats{
    Format{
        "csv", "washes, boards and brood counts, a row each", true,
        [](const Job& job, const ByteSink& sink) { exchange::exportSamples(job.store, job.options, sink); }},
    Format{
        "counts", "acts of counting (CSV), a row each", true,
        [](const Job& job, const ByteSink& sink) { exchange::exportCounts(job.store, job.options, sink); }},
    Format{"treatments", "treatments (CSV), a row a treatment and colony", true,
           [](const Job& job, const ByteSink& sink) {
               exchange::exportTreatments(job.store, handbook::builtIn(), job.options, sink);
           }},
    Format{"geojson", "yards and samples for a map (RFC 7946)", true,
           [](const Job& job, const ByteSink& sink) { exchange::exportMap(job.store, job.options, sink); }},
    Format{"ical", "the year ahead as a calendar (RFC 5545)", true, writeCalendar},
    Format{"exchange", "everything, for another phone; positions exact", true, writeEverything},
    Format{"pdf", "a report for an inspector or a vet", false, writePdf},
};

const Format& formatOf(const std::string& name) {
    std::string all;
    for (const Format& format : formats) {
        if (name == format.name)
            return format;
        all += (all.empty() ? "" : ", ") + std::string(format.name);
    }
    throw UsageError((name.empty() ? "--as says what to write" : "--as " + shown(name) + " is none") +
                     " of: " + all + ".");
}

int yearOf(const std::string& text) {
    const auto day = records::parseIsoDate(text + "-01-01");
    if (!day)
        throw UsageError("--year " + shown(text) + " is not a year like 2026.");
    return day->year;
}

exchange::Selection selectionOf(const Arguments& arguments, store::Store& store) {
    exchange::Selection selection;
    const std::string &colony = arguments.options.at("--colony"), &yard = arguments.options.at("--yard");
    const std::string &in = arguments.options.at("--in"), &year = arguments.options.at("--year");
    if (!colony.empty() && !yard.empty())
        throw UsageError("Either --colony or --yard: for a colony of one yard, --colony with --in.");
    if (!in.empty() && colony.empty())
        throw UsageError("--in names the yard of a --colony.");
    if (!colony.empty())
        selection.colonyId = findColony(store, colony, in).colony.id;
    if (!yard.empty()) {
        for (const records::Yard& each : store.yards())
            if (each.name == yard || each.id == yard) {
                if (!selection.yardId.empty())
                    throw std::runtime_error("There are several yards " + shown(yard) + ": give the id.");
                selection.yardId = each.id;
            }
        if (selection.yardId.empty())
            throw std::runtime_error("There is no yard " + shown(yard) + ".");
    }
    if (arguments.has("--calendar-year") && year.empty())
        throw UsageError("--calendar-year goes with --year.");
    if (!year.empty())
        for (const records::Yard& each : store.allYards()) {
            const auto start =
                arguments.has("--calendar-year") ? season::BeeYearStart::January : season::beeYearStart(each);
            const auto [first, last] = season::beeYear(yearOf(year), start);
            selection.periods.emplace(each.id, exchange::Period{first, last});
        }
    return selection;
}

std::string sentenceFor(exchange::FileProblem problem) {
    using Problem = exchange::FileProblem;
    switch (problem) {
    case Problem::FolderMissing:
        return "its folder is not there.";
    case Problem::NotAllowed:
        return "there is no permission to write there.";
    case Problem::DiskFull:
        return "the disk is full.";
    case Problem::NotAFile:
        return "it is a folder.";
    case Problem::Failed:
        break;
    }
    return "the system does not let it.";
}

void oneOf(const Arguments& arguments, const char* option, const char* first, const char* second) {
    const std::string& given = arguments.options.at(option);
    if (given != first && given != second)
        throw UsageError(std::string(option) + " " + shown(given) + " is neither " + first + " nor " +
                         second + ".");
}

int run(const Arguments& arguments, Streams& streams) {
    const Format& format = formatOf(arguments.options.at("--as"));
    oneOf(arguments, "--dialect", "comma", "semicolon");
    oneOf(arguments, "--paper", "a4", "letter");
    if (arguments.words.size() < 2)
        throw UsageError("Which database, and into which file?");
    const std::string& out = arguments.words[1];
    if (out == "-" && !format.text)
        throw UsageError("A report is no text: name a file for it.");
    const auto store = openStore(arguments.words[0]);
    std::error_code error;
    if (out != "-" && std::filesystem::equivalent(arguments.words[0], out, error))
        throw UsageError("That is the database itself.");
    ExportOptions options;
    options.selection = selectionOf(arguments, *store);
    if (arguments.has("--exact"))
        options.detail = exchange::PositionDetail::Exact;
    if (arguments.options.at("--dialect") == "semicolon")
        options.dialect = exchange::CsvDialect::Semicolon;
    const Job job{*store, arguments, options, noonOn(dayFrom("--on", arguments.options.at("--on")))};
    if (out == "-") {
        format.write(job, [&](std::string_view bytes) { streams.out << bytes; });
        return 0;
    }
    const auto trouble = exchange::writeSafely(QString::fromLocal8Bit(out.c_str()),
                                               [&](const ByteSink& sink) { format.write(job, sink); });
    if (trouble)
        throw std::runtime_error(shown(out) + " was not written: " + sentenceFor(trouble->problem));
    return 0;
}

std::string helpText() {
    std::string help = "--as says what is written into OUT (- is standard output, for texts):\n";
    for (const Format& format : formats)
        help += "  " + std::string(format.name) +
                std::string(12 - std::string_view(format.name).size(), ' ') + format.meaning + "\n";
    return help +
           "\nPositions are blurred to about 1 km, and a report has none, unless --exact is given.\n"
           "Text that a spreadsheet would take for a formula gets an apostrophe before it. Washes not\n"
           "finished are left out. A file is written whole or not at all.\n";
}

} // namespace

Verb exportVerb() {
    return {.name = "export",
            .summary = "Writes tables, a map, a calendar or a report for people.",
            .usage = "--as FORMAT [OPTIONS] DATABASE OUT",
            .help = helpText(),
            .options = {{"--as", "", "the format, as above"},
                        {"--exact", "", "positions exact: whoever gets the file knows where the hives stand",
                         true},
                        {"--dialect", "comma",
                         "comma, or semicolon with decimal commas, for spreadsheets that expect these"},
                        {"--paper", "a4", "a4 or letter, of a report"},
                        {"--colony", "", "one colony alone, by label or id"},
                        {"--in", "", "name of the yard, where two have a colony of that label"},
                        {"--yard", "", "one yard alone, by name or id"},
                        {"--year", "",
                         "one bee year alone, by the year it begins in: from January in the "
                         "north, from July in the south"},
                        {"--calendar-year", "", "with --year: from January everywhere", true},
                        {"--on", "", "the day it is written on, as 2026-05-18; today where not given"}},
            .mostWords = 2,
            .run = run};
}

} // namespace halfcup::desk
