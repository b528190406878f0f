// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/season_cells.h"

#include "desk/calculator.h"
#include "desk/calculators.h"

#include <algorithm>
#include <cstdio>

namespace halfcup::desk {

namespace {

enum Cell : std::size_t { kScenario, kGrowth, kWashDate, kLoad, kTreatments, kCarriedIn, kDates };
constexpr Bounds kLoadBounds{0, 1e6, true, false};
constexpr int kMostSeasonDays = 3650;

constexpr const char* kColumnsOut = R"(
Columns out, a row a date: scenario, growth, date, load (mites per 100 bees), mites_on_bees, mites_total,
share_on_bees, note. "whole" is the share of all mites a treatment takes away by its end, "phoretic" the
share of those on the bees. The colony's bees and brood through the year are usual figures of the
northern temperate zone.
)";

std::vector<Column> columns() {
    return {{"scenario", "a name, handed through"},
            {"growth", "low, base or high; default base"},
            {"wash_date", "day of the wash, like 2026-06-15", true},
            {"load", "full load that day, mites per 100 bees", true},
            {"treatments",
             "\"whole 0.95 2026-08-01 42; phoretic 0.9 2026-07-15\": reach, share killed, first day, days"},
            {"carried_in",
             "\"5 2026-08-15 2026-10-14\": mites a day, first day, last day; several with ; between"},
            {"dates", "days wanted, with ; between", true}};
}

std::string isoDate(std::chrono::sys_days day) {
    const std::chrono::year_month_day date(day);
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text;
}

// Calls what reads a cell and puts row and column in front of what it has to say.
template <typename Read>
auto reading(const Table& row, Cell cell, Read read) {
    try {
        return read(row.cell(cell));
    } catch (const std::domain_error& error) {
        row.complain(cell, error.what());
    }
}

mites::GrowthBand readBand(std::string_view text) {
    if (text.empty() || text == "base")
        return mites::GrowthBand::Base;
    if (text == "low")
        return mites::GrowthBand::Low;
    if (text == "high")
        return mites::GrowthBand::High;
    throw std::domain_error(shown(text) + " is neither low, base nor high.");
}

struct Scenario {
    std::string name, growth;
    mites::SeasonRun run;
    DayCount days{};
    std::vector<std::chrono::sys_days> dates;
};

Scenario readScenario(const Table& row, double shiftDays) {
    Scenario scenario;
    scenario.name = std::string(row.cell(kScenario));
    scenario.run.band = reading(row, kGrowth, readBand);
    scenario.growth = row.has(kGrowth) ? std::string(row.cell(kGrowth)) : "base";
    row.text(kWashDate);
    scenario.days.wash = reading(row, kWashDate, readDate);
    scenario.run.load = row.number(kLoad, std::nullopt, kLoadBounds);
    const DayCount& days = scenario.days;
    scenario.run.treatments =
        reading(row, kTreatments, [&](auto text) { return readTreatments(text, days); });
    scenario.run.carriedIn = reading(row, kCarriedIn, [&](auto text) { return readCarriedIn(text, days); });
    scenario.dates = reading(row, kDates, readDates);
    for (const auto date : scenario.dates) {
        if (date < days.wash)
            row.complain(kDates, isoDate(date) + " is before the wash.");
        if (days.of(date) - seasonDay(days.wash) > kMostSeasonDays)
            row.complain(kDates, isoDate(date) + " is more than ten years after the wash.");
    }
    scenario.run.startDay = seasonDay(days.wash);
    scenario.run.days =
        days.of(*std::max_element(scenario.dates.begin(), scenario.dates.end())) - scenario.run.startDay;
    scenario.run.course.shiftDays = shiftDays;
    return scenario;
}

int run(const Arguments& arguments, Streams& streams) {
    const std::string& hemisphere = arguments.options.at("--hemisphere");
    if (hemisphere != "north" && hemisphere != "south")
        throw UsageError("--hemisphere is north or south.");
    const double shiftDays = hemisphere == "south" ? mites::kSouthernShiftDays : 0;
    Input input(arguments, streams.in);
    CsvReader reader(input.stream());
    Table table(reader, columns());
    Answers answers(streams, table,
                    {"scenario", "growth", "date", "load", "mites_on_bees", "mites_total", "share_on_bees"});
    std::vector<std::string> others;
    while (table.next()) {
        table.others(others);
        try {
            table.checkRow();
            const Scenario scenario = readScenario(table, shiftDays);
            const auto days = mites::runSeason(scenario.run);
            for (const auto date : scenario.dates) {
                const mites::SeasonDay& day =
                    days.at(static_cast<std::size_t>(scenario.days.of(date) - scenario.run.startDay));
                CsvLine cells;
                cells.add(scenario.name).add(scenario.growth).add(isoDate(date));
                cells.add(day.load).add(day.onBees).add(day.total).add(day.shareOnBees);
                answers.good(others, cells.text(),
                             day.load > mites::kLoadLikelyFailing ? "The colony is likely failing." : "");
            }
        } catch (const RowError& error) {
            answers.bad(others, {std::string(table.cell(kScenario)), std::string(table.cell(kGrowth))},
                        error.what());
        } catch (const std::exception& error) {
            answers.bad(others, {std::string(table.cell(kScenario)), std::string(table.cell(kGrowth))},
                        "Row " + std::to_string(table.row()) + ": " + sentence(error));
        }
    }
    return answers.finish();
}

} // namespace

Verb seasonVerb() {
    return {.name = "season",
            .summary = "Mites on the bees and in the brood through a season, with and without treatments.",
            .usage = "[OPTIONS] [FILE]",
            .help = csvHelp() + columnHelp(columns()) + kColumnsOut,
            .options = {{"--hemisphere", "north", "north or south; the south's year runs half a year later"}},
            .run = run};
}

} // namespace halfcup::desk
