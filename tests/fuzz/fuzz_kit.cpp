// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "fuzz_kit.h"

#include "exchange/for_people.h"
#include "handbook/built_in.h"
#include "season/lines.h"
#include "season/yard_due.h"

namespace halfcup::fuzz {

namespace {

void readYard(store::Store& store, const records::Yard& yard, const handbook::Handbook& book) {
    const auto kept = store.yardRecords(yard.id);
    require(kept.has_value(), "a yard of the list is not found by its id");
    static_cast<void>(season::dueInYard(*kept, {nowMs, 120}));
    static_cast<void>(season::linesOn(yard, {2026, 6, 15}, book));
    static_cast<void>(store.latestFinished(yard.id));
    static_cast<void>(store.roundsOf(yard.id));
    static_cast<void>(store.eventsOfYard(yard.id));
    static_cast<void>(store.history(records::Kind::Yard, yard.id));
    for (const records::Colony& colony : store.allColonies(yard.id)) {
        static_cast<void>(store.eventsOf(colony.id));
        static_cast<void>(store.treatmentsOf(colony.id));
        static_cast<void>(store.history(records::Kind::Colony, colony.id));
        for (const records::Sample& sample : store.samplesOf(colony.id))
            static_cast<void>(store.countEvents(sample.id));
    }
}

} // namespace

std::string smallDatabase() {
    const Folder folder;
    const std::string path = folder.file("small.db");
    {
        std::uint64_t chance = 1;
        store::Store store(path, host(chance));
        records::Yard yard;
        yard.id = store.newId();
        yard.name = "By the ford";
        store.save(yard);
        records::Colony colony;
        colony.yardId = yard.id;
        for (const char* label : {"4", "5"}) {
            colony.id = store.newId();
            colony.label = label;
            store.save(colony);
        }
        records::Sample sample;
        sample.id = store.newId();
        sample.colonyId = colony.id;
        sample.yardId = yard.id;
        sample.startedAtMs = nowMs - 86'400'000;
        sample.state = records::SampleState::Finished;
        store.save(sample);
        store.addCount(sample.id, {0, 1, records::CountEvent::Change::Tap, 0, sample.startedAtMs});
    }
    return bytesOf(path); // closed, all of it is in the one file
}

void readAllOf(store::Store& store) {
    static const handbook::Handbook book = handbook::builtIn();
    for (const records::Yard& yard : store.allYards())
        readYard(store, yard, book);
    static_cast<void>(store.drafts());
    static_cast<void>(store.sampleCount());
    static_cast<void>(store.scoopCounts());
    std::size_t written = 0;
    const exchange::ByteSink sink = [&written](std::string_view bytes) { written += bytes.size(); };
    for (const auto dialect : {exchange::CsvDialect::Comma, exchange::CsvDialect::Semicolon}) {
        const exchange::ExportOptions options{exchange::PositionDetail::Blurred, dialect, {}};
        static_cast<void>(exchange::exportSamples(store, options, sink));
        static_cast<void>(exchange::exportCounts(store, options, sink));
        static_cast<void>(exchange::exportTreatments(store, book, options, sink));
        static_cast<void>(exchange::exportMap(store, options, sink));
    }
    require(written > 0, "the tables have not even a head");
}

} // namespace halfcup::fuzz
