// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Plays washes as fast as the disk allows, until it is killed. Each act that the program has acknowledged is
// a line on standard output, written after the act returned:
//   resumed  <sample> <step> <rinse> <figure> <events>   what was found of a draft, before anything is done
//   step     <sample> <step>
//   count    <sample> <rinse> <figure> <events>
//   leaving  <sample>                                    it is about to be abandoned
//   finished <sample> <figure>
// usage: faults_kill_wash_driver DATABASE RUN; each RUN has its own time and chance.
#include "device/fake/fake_platform.h"
#include "place/scripted_position_source.h"
#include "touch/program.h"

#include <QGuiApplication>
#include <QMetaEnum>

#include <cstdio>
#include <random>
#include <stdexcept>
#include <string>
#include <unistd.h>

using namespace halfcup;

namespace {

constexpr int coloniesOfYard = 4;
constexpr std::int64_t betweenRunsMs = 3'600'000; // each run is an hour after the one before

/// One system call a line: what was said is out of this process before the next act begins.
void acknowledge(const std::string& line) {
    const std::string text = line + "\n";
    if (write(STDOUT_FILENO, text.data(), text.size()) != static_cast<ssize_t>(text.size()))
        throw std::runtime_error("standard output takes no more");
}

class Player {
public:
    Player(device::FakePlatform& device, touch::Program& program, unsigned seed)
        : m_device(device)
        , m_store(program.store())
        , m_wash(*program.app().wash())
        , m_chance(seed) {}

    /// The draft left by the run that was killed before, or a new wash; then wash after wash.
    void play() {
        makeYard();
        const auto drafts = m_store.drafts();
        if (drafts.size() > 1)
            throw std::runtime_error("more than one draft");
        if (!drafts.empty())
            resume(drafts.front().id);
        for (;;) {
            if (m_sample.empty())
                begin();
            toTheEnd();
            m_sample.clear();
            m_device.clock->advance(60'000);
            QCoreApplication::processEvents();
        }
    }

private:
    void makeYard() {
        if (!m_store.yards().empty())
            return;
        m_store.inOneTransaction([&] {
            records::Yard yard;
            yard.id = m_store.newId();
            yard.name = "By the ford";
            m_store.save(yard);
            for (int i = 1; i <= coloniesOfYard; ++i) {
                records::Colony colony;
                colony.id = m_store.newId();
                colony.yardId = yard.id;
                colony.label = std::to_string(i);
                m_store.save(colony);
            }
        });
    }

    void resume(const records::RecordId& id) {
        if (!m_wash.resume(QString::fromStdString(id)))
            throw std::runtime_error("the draft cannot be resumed");
        m_sample = id;
        m_events = m_store.countEvents(id).size();
        const bool second = m_wash.step() == touch::WashController::SecondRinse;
        touch::CountController& count = second ? *m_wash.secondRinse() : *m_wash.count();
        acknowledge("resumed " + m_sample + " " + stepName() + (second ? " 2 " : " 1 ") +
                    std::to_string(count.mites()) + " " + std::to_string(m_events));
    }

    void begin() {
        const records::Yard yard = m_store.yards().front();
        const auto colonies = m_store.colonies(yard.id);
        const records::Colony& colony = colonies[below(static_cast<unsigned>(colonies.size()))];
        m_wash.begin(QString::fromStdString(yard.id), QString::fromStdString(colony.id));
        m_sample = m_store.drafts().front().id;
        m_events = 0;
        step();
    }

    void toTheEnd() {
        using Wash = touch::WashController;
        for (;;) {
            m_device.clock->advance(1000);
            switch (m_wash.step()) {
            case Wash::LayBoard:
            case Wash::PullBoard:
            case Wash::BoardCells:
            case Wash::OpenedCells:
                throw std::runtime_error("a wash at a step of another method");
            case Wash::Colony:
                throw std::runtime_error("a draft without a colony");
            case Wash::Safety:
                m_wash.queenSafe();
                break;
            case Wash::Scoop:
                m_wash.scooped();
                break;
            case Wash::Pour:
                m_wash.poured();
                break;
            case Wash::Shake:
                m_device.clock->advance(60'000);
                m_wash.endShake();
                break;
            case Wash::Settle:
                m_wash.endSettle();
                break;
            case Wash::Count:
                countMites(*m_wash.count(), 1, 20 + below(41));
                if (below(12) == 0) {
                    acknowledge("leaving " + m_sample);
                    m_wash.abandon();
                    return;
                }
                m_wash.endCount();
                break;
            case Wash::SecondRinse: {
                const int first = m_wash.count()->mites();
                if (below(2) == 0) {
                    m_wash.skipSecondRinse();
                } else {
                    countMites(*m_wash.secondRinse(), 2, 3 + below(6));
                    m_wash.endSecondRinse();
                }
                acknowledge("finished " + m_sample + " " + std::to_string(first));
                return;
            }
            }
            step();
        }
    }

    void countMites(touch::CountController& count, int rinse, unsigned acts) {
        for (unsigned i = 0; i < acts; ++i) {
            m_device.clock->advance(50); // twenty touches a second
            const unsigned kind = below(20);
            const bool done = kind == 0   ? count.type(QString::number(below(30)))
                              : kind <= 3 ? count.undo()
                                          : count.tap();
            if (!done)
                continue; // nothing there to undo
            ++m_events;
            acknowledge("count " + m_sample + " " + std::to_string(rinse) + " " +
                        std::to_string(count.mites()) + " " + std::to_string(m_events));
        }
        if (!count.isTouched()) // only undos, and nothing to undo
            m_events += count.tap() ? 1 : 0;
    }

    void step() { acknowledge("step " + m_sample + " " + stepName()); }

    std::string stepName() const {
        return QMetaEnum::fromType<touch::WashController::Step>().valueToKey(m_wash.step());
    }

    unsigned below(unsigned end) { return static_cast<unsigned>(m_chance() % end); }

    device::FakePlatform& m_device;
    store::Store& m_store;
    touch::WashController& m_wash;
    std::mt19937 m_chance;
    std::string m_sample;
    std::size_t m_events = 0;
};

} // namespace

int main(int argc, char** argv) {
    QGuiApplication application(argc, argv);
    if (argc != 3)
        return 2;
    try {
        const unsigned run = static_cast<unsigned>(std::stoul(argv[2]));
        device::FakePlatform device =
            device::makeFakePlatform(device::SetClock::kStartUtcMs + run * betweenRunsMs, run + 1);
        touch::ProgramOptions options;
        options.databasePath = QString::fromLocal8Bit(argv[1]);
        options.makeSource = [](const QString&) { return std::make_unique<place::ScriptedPositionSource>(); };
        touch::Program program(device.platform, options);
        Player(device, program, run).play();
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
    }
    return 1; // play() ends by a kill or a failure, never well
}
