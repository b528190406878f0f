// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Makes a database of many washes for handing_on.py: handing_on_make DATABASE SAMPLES. Every wash is kept as
// the app keeps one, but in one step instead of fifteen, with three acts of counting.
#include "store/store.h"

#include <cstdio>
#include <cstdlib>

using namespace halfcup;

int main(int argc, char** argv) {
    if (argc != 3) {
        std::fputs("usage: handing_on_make DATABASE SAMPLES\n", stderr);
        return 2;
    }
    const int samples = std::atoi(argv[2]);
    std::int64_t nowMs = 1'700'000'000'000;
    std::uint64_t chance = 1;
    store::Store store(argv[1],
                       {[&] { return nowMs += 20; },
                        [&] { return chance = chance * 6364136223846793005U + 1442695040888963407U; }});
    store.inOneTransaction([&] {
        std::vector<records::Colony> colonies;
        for (int yard = 0; yard < 20; ++yard) {
            records::Yard made;
            made.id = store.newId();
            made.name = "Yard " + std::to_string(yard);
            store.save(made);
            for (int i = 0; i < 40; ++i) {
                records::Colony colony;
                colony.id = store.newId();
                colony.yardId = made.id;
                colony.label = std::to_string(i);
                store.save(colony);
                colonies.push_back(colony);
            }
        }
        for (int i = 0; i < samples; ++i) {
            const records::Colony& colony = colonies[static_cast<std::size_t>(i) % colonies.size()];
            records::Sample sample;
            sample.id = store.newId();
            sample.colonyId = colony.id;
            sample.yardId = colony.yardId;
            sample.state = records::SampleState::Finished;
            sample.startedAtMs = nowMs;
            sample.scoopedAtMs = nowMs;
            sample.finishedAtMs = nowMs + 300'000;
            sample.stamp.state = records::PositionState::Stamped;
            sample.stamp.position = {52.0 + i * 1e-6, 13.0 + i * 1e-6, 4.5};
            sample.scoop.beesMean = 300 + i % 50;
            sample.scoop.beesCv = 0.1;
            sample.answer = records::Answer{};
            sample.answer->mites = i % 30;
            sample.answer->loadQ05 = i % 30 / 6.0;
            sample.answer->loadQ50 = i % 30 / 3.0;
            sample.answer->loadQ95 = i % 30 / 1.5;
            store.save(sample);
            for (int act = 0; act < 3; ++act)
                store.addCount(sample.id, {0, 1, records::CountEvent::Change::Tap, 0, nowMs});
        }
    });
    return 0;
}
