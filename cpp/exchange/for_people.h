// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/counts_csv.h"
#include "exchange/geojson.h"
#include "exchange/selection.h"
#include "exchange/treatments_csv.h"
#include "handbook/handbook.h"
#include "records/colony_state.h"

#include <map>

/// Tables and the map out of anything that keeps records as store::Store does. Exchange and store do not know
/// each other, so these are templates (as in keep_demo.h). All read record by record, so that memory does not
/// grow with the number of washes; all return how many things went into the file.
namespace halfcup::exchange {

struct ExportOptions {
    PositionDetail detail = PositionDetail::Blurred;
    CsvDialect dialect = CsvDialect::Comma;
    Selection selection;
};

/// All yards and colonies by id, also removed ones: old records name them.
struct Names {
    std::map<records::RecordId, records::Yard> yards;
    std::map<records::RecordId, records::Colony> colonies;

    [[nodiscard]] SampleRow row(const records::Sample& sample) const;
    /// The yard; one with nothing but its id where there is none.
    [[nodiscard]] records::Yard yard(const records::RecordId& id) const;
    [[nodiscard]] std::string label(const records::RecordId& colonyId) const; // empty: unknown
};

/// The handbook's name of a substance or measure; the id where this version knows none.
[[nodiscard]] std::string substanceName(const handbook::Handbook& handbook, const std::string& id);

template <typename Keeper>
Names readNames(Keeper& keeper) {
    Names names;
    for (const records::Yard& yard : keeper.allYards()) {
        for (const records::Colony& colony : keeper.allColonies(yard.id))
            names.colonies.emplace(colony.id, colony);
        names.yards.emplace(yard.id, yard);
    }
    return names;
}

template <typename Keeper>
int exportSamples(Keeper& keeper, const ExportOptions& options, const ByteSink& sink) {
    const Names names = readNames(keeper);
    CsvWriter csv(sink, options.dialect);
    writeSampleHeader(csv);
    int rows = 0;
    keeper.forEachSample([&](const records::Sample& sample) {
        if (!options.selection.holds(sample))
            return;
        writeSampleRow(csv, names.row(sample), options.detail);
        ++rows;
    });
    return rows;
}

template <typename Keeper>
int exportCounts(Keeper& keeper, const ExportOptions& options, const ByteSink& sink) {
    const Names names = readNames(keeper);
    CsvWriter csv(sink, options.dialect);
    writeCountHeader(csv);
    int rows = 0;
    keeper.forEachSample([&](const records::Sample& sample) {
        if (options.selection.holds(sample))
            rows += writeCountRows(csv, names.row(sample), keeper.countEvents(sample.id));
    });
    return rows;
}

template <typename Keeper>
int exportTreatments(Keeper& keeper, const handbook::Handbook& handbook, const ExportOptions& options,
                     const ByteSink& sink) {
    const Names names = readNames(keeper);
    CsvWriter csv(sink, options.dialect);
    writeTreatmentHeader(csv);
    int rows = 0;
    for (records::GivenTreatment& given : keeper.allTreatments()) {
        if (!options.selection.holds(given))
            continue;
        if (given.colonyIds.empty())
            given.colonyIds.emplace_back(); // no record may be missing for want of a colony
        for (const records::RecordId& colony : given.colonyIds) {
            if (!options.selection.holdsColony(colony))
                continue;
            writeTreatmentRow(csv, {given.treatment, substanceName(handbook, given.treatment.substance),
                                    names.yard(given.treatment.yardId), colony, names.label(colony)});
            ++rows;
        }
    }
    return rows;
}

template <typename Keeper>
int exportMap(Keeper& keeper, const ExportOptions& options, const ByteSink& sink) {
    const Names names = readNames(keeper);
    std::map<records::RecordId, records::Sample> last;
    keeper.forEachSample([&](const records::Sample& sample) {
        if (!sample.answer || !options.selection.holds(sample))
            return;
        const auto [place, first] = last.try_emplace(sample.yardId, sample);
        if (!first && momentOf(place->second).utcMs <= momentOf(sample).utcMs)
            place->second = sample;
    });
    GeoJsonWriter writer(sink, options.detail);
    int features = 0;
    for (const records::Yard& yard : keeper.yards()) {
        if (!options.selection.holdsYard(yard.id))
            continue;
        YardRow row{yard, 0, {}};
        for (const records::Colony& colony : keeper.colonies(yard.id))
            if (records::stateOn(colony, keeper.eventsOf(colony.id), {9999, 12, 31}).alive())
                ++row.colonies;
        if (const auto found = last.find(yard.id); found != last.end())
            row.lastWash = found->second;
        writer.yard(row);
        ++features;
    }
    keeper.forEachSample([&](const records::Sample& sample) {
        if (!options.selection.holds(sample))
            return;
        writer.sample(names.row(sample));
        ++features;
    });
    writer.end();
    return features;
}

} // namespace halfcup::exchange
