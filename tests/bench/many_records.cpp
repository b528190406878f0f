// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "many_records.h"

#include "handbook/built_in.h"
#include "records/judgement.h"
#include "season/lines.h"
#include "store/store.h"

#include <algorithm>

namespace halfcup::bench {

namespace {

constexpr int coloniesOfYard = 20;
constexpr std::int64_t monthMs = 30LL * 86'400'000;
constexpr int samplesOfTransaction = 10'000;

class Maker {
public:
    Maker(const std::string& path, int colonies, int samples)
        : m_samples(samples)
        , m_months(samples / colonies)
        , m_store(path,
                  {[this] { return m_nowMs += 20; },
                   [this] { return m_chance = m_chance * 6364136223846793005U + 1442695040888963407U; }})
        , m_handbook(handbook::builtIn()) {
        m_nowMs = lastWashMs - (m_months + 1) * monthMs;
        m_store.inOneTransaction([&] { makeColonies(colonies); });
    }

    void makeSamples() {
        for (int made = 0; made < m_samples; made += samplesOfTransaction)
            m_store.inOneTransaction([&] {
                for (int i = made; i < std::min(m_samples, made + samplesOfTransaction); ++i)
                    makeSample(i);
            });
    }

private:
    void makeColonies(int colonies) {
        for (int i = 0; i < colonies; ++i) {
            if (i % coloniesOfYard == 0) {
                records::Yard yard;
                yard.id = m_store.newId();
                yard.name = "Yard " + std::to_string(i / coloniesOfYard + 1);
                yard.position = records::Position{52.0 + i / coloniesOfYard * 0.02, 13.0, 6.0};
                m_store.save(yard);
                m_yards.push_back(yard);
            }
            records::Colony colony;
            colony.id = m_store.newId();
            colony.yardId = m_yards.back().id;
            colony.label = std::to_string(i % coloniesOfYard + 1);
            m_store.save(colony);
            m_colonies.push_back(colony);
        }
    }

    void makeSample(int i) {
        const auto place = static_cast<std::size_t>(i) % m_colonies.size();
        const records::Colony& colony = m_colonies[place];
        const records::Yard& yard = m_yards[place / coloniesOfYard];
        const auto month = static_cast<std::int64_t>(static_cast<std::size_t>(i) / m_colonies.size());
        m_nowMs = std::max(m_nowMs, lastWashMs - (m_months - month) * monthMs);
        records::Sample sample;
        sample.id = m_store.newId();
        sample.colonyId = colony.id;
        sample.yardId = colony.yardId;
        sample.state = records::SampleState::Finished;
        sample.step = records::Step::Answer;
        sample.startedAtMs = m_nowMs;
        sample.scoopedAtMs = m_nowMs;
        sample.finishedAtMs = m_nowMs + 300'000;
        sample.stamp.state = records::PositionState::Stamped;
        sample.stamp.position = {yard.position->latitudeDeg + i % 7 * 1e-5, 13.0, 4.5};
        sample.scoop.beesMean = 300 + i % 50;
        sample.scoop.beesCv = 0.1;
        const std::int64_t mites = (i * 7 + static_cast<int>(place)) % 23;
        sample.answer = records::answerOf(
            sample, mites, std::nullopt, season::linesOn(yard, records::localDate({m_nowMs, 0}), m_handbook));
        m_store.save(sample);
        for (int act = 0; act < 3; ++act)
            m_store.addCount(sample.id, {0, 1, records::CountEvent::Change::Tap, 0, m_nowMs});
    }

    int m_samples;
    int m_months;
    std::int64_t m_nowMs = 0;
    std::uint64_t m_chance = 1;
    store::Store m_store;
    handbook::Handbook m_handbook;
    std::vector<records::Yard> m_yards;
    std::vector<records::Colony> m_colonies;
};

} // namespace

void makeManyRecords(const std::string& path, int colonies, int samples) {
    Maker(path, colonies, samples).makeSamples();
}

} // namespace halfcup::bench
