// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// Does the durable work of one journey as fast as the disk allows, until it is killed. Each act is a line on
// standard output, written after the store has returned; kill_store_test.py knows what each line promises.
// usage: faults_kill_store_driver JOURNEY FOLDER RUN; each RUN has its own time and chance.
//   treatment, tray: FOLDER/halfcup.db        merge: FOLDER/other.halfcup besides
//   restore: FOLDER/one.halfcup-backup and two.halfcup-backup        migration: an earlier FOLDER/halfcup.db
//   prepare: makes the files the others need
#include "exchange/keep_exchange.h"
#include "store/backup.h"
#include "store/merge.h"
#include "store/outgoing.h"
#include "store/restore.h"

#include <QFile>

#include <cstdio>
#include <random>
#include <stdexcept>
#include <unistd.h>

using namespace halfcup;
using records::Colony;
using records::Sample;
using records::SampleState;
using records::Yard;

namespace {

constexpr std::int64_t startMs = 1'781'514'000'000; // 2026-06-15 09:00 UTC
constexpr int yardsOfMerge = 6;

void acknowledge(const std::string& line) {
    const std::string text = line + "\n";
    if (write(STDOUT_FILENO, text.data(), text.size()) != static_cast<ssize_t>(text.size()))
        throw std::runtime_error("standard output takes no more");
}

class Driver {
public:
    Driver(std::string folder, unsigned run)
        : m_folder(std::move(folder))
        , m_nowMs(startMs + run * 3'600'000LL)
        , m_chance(run + 1)
        , m_run(run) {}

    void prepare() {
        m_chance.seed(1'000'000); // other ids than any run makes
        {
            const auto store = open(m_folder + "/other.db");
            for (int yard = 1; yard <= yardsOfMerge; ++yard)
                addYard(*store, "Other " + std::to_string(yard), 8);
            store::Outgoing outgoing(*store);
            QFile file(QString::fromStdString(m_folder + "/other.halfcup"));
            if (!file.open(QIODevice::WriteOnly))
                throw std::runtime_error("no file for the merge");
            exchange::writeExchange(
                outgoing,
                [&](std::string_view text) { file.write(text.data(), static_cast<qint64>(text.size())); },
                m_nowMs);
        }
        for (const char* name : {"one", "two"}) {
            const std::string path = m_folder + "/" + name + ".db";
            addYard(*open(path), name, 10);
            store::makeBackup(path, m_folder + "/" + name + store::backupEnding, {m_nowMs, 0});
        }
    }

    void treatments() {
        const auto store = open(path());
        acknowledge("open");
        const Yard yard = anyYard(*store);
        const auto colonies = store->colonies(yard.id);
        for (int i = 0;; ++i) {
            records::GivenTreatment entry;
            entry.treatment.id = store->newId();
            entry.treatment.yardId = yard.id;
            entry.treatment.substance = "oxalic-acid";
            entry.treatment.batch = "B-" + std::to_string(m_run) + "-" + std::to_string(i);
            entry.treatment.firstDay = entry.treatment.lastDay = {2026, 6, 15};
            for (const Colony& colony : colonies)
                if (m_chance() % 3 != 0)
                    entry.colonyIds.push_back(colony.id);
            store->save(entry);
            acknowledge("treated " + entry.treatment.id + " " + entry.treatment.batch + " " +
                        std::to_string(entry.colonyIds.size()));
            entry.treatment.removedOn = records::Date{2026, 6, 20};
            entry.colonyIds.clear();
            entry.colonyIds.push_back(colonies.front().id);
            m_nowMs += 1000;
            store->save(entry);
            acknowledge("removed " + entry.treatment.id + " " + entry.treatment.batch + " 1");
            m_nowMs += 1000;
        }
    }

    void tray() {
        const auto store = open(path());
        acknowledge("open");
        const Yard yard = anyYard(*store);
        for (;;) {
            for (const Colony& colony : store->colonies(yard.id)) {
                Sample jar;
                jar.id = store->newId();
                jar.colonyId = colony.id;
                jar.yardId = yard.id;
                jar.jar = colony.label;
                jar.startedAtMs = m_nowMs += 1000;
                jar.scoopedAtMs = m_nowMs;
                store->save(jar);
                acknowledge("jar " + jar.id + " " + jar.jar);
            }
            for (Sample jar : store->drafts()) { // those of a run before, too
                const auto there = static_cast<int>(store->countEvents(jar.id).size());
                for (int tap = 1; tap <= 3; ++tap) {
                    store->addCount(jar.id, {0, 1, records::CountEvent::Change::Tap, 0, m_nowMs += 50});
                    acknowledge("counted " + jar.id + " " + std::to_string(there + tap));
                }
                jar.state = SampleState::Finished;
                jar.finishedAtMs = m_nowMs;
                store->save(jar);
                acknowledge("finished " + jar.id);
            }
        }
    }

    void takeIn() {
        const auto store = open(path());
        acknowledge("open");
        for (int i = 0;; ++i) {
            addYard(*store, "Own", 1); // so that each merge has something of this phone's beside it
            acknowledge("own " + m_last);
            store::Merge merge(*store);
            exchange::takeExchangeFile(merge, QString::fromStdString(m_folder + "/other.halfcup"));
            merge.finish();
            merge.keep();
            acknowledge("taken " + std::to_string(yardsOfMerge));
            if (i >= 2)
                pause();
        }
    }

    void restore() {
        acknowledge("open");
        for (;;)
            for (const char* name : {"one", "two"}) {
                m_nowMs += 1000;
                const auto restored =
                    store::restoreBackup(m_folder + "/" + name + store::backupEnding, path(), host());
                acknowledge(std::string("restored ") + name + " " +
                            (restored.keptAside.empty() ? "-" : restored.keptAside));
                addYard(*open(path()), "Own", 1);
                acknowledge("own " + m_last);
            }
    }

    void migration() {
        acknowledge("open");
        const auto store = open(path());
        acknowledge("migrated");
        for (;;) {
            addYard(*store, "Own", 1);
            acknowledge("own " + m_last);
        }
    }

private:
    std::string path() const { return m_folder + "/halfcup.db"; }
    store::StoreHost host() {
        return {[this] { return m_nowMs; }, [this] { return m_chance(); }};
    }
    std::unique_ptr<store::Store> open(const std::string& where) {
        return std::make_unique<store::Store>(where, host());
    }

    void addYard(store::Store& store, const std::string& name, int colonies) {
        store.inOneTransaction([&] {
            Yard yard;
            yard.id = store.newId();
            yard.name = name;
            store.save(yard);
            for (int i = 1; i <= colonies; ++i) {
                Colony colony;
                colony.id = store.newId();
                colony.yardId = yard.id;
                colony.label = std::to_string(i);
                store.save(colony);
            }
            m_last = yard.id;
        });
        m_nowMs += 1000;
    }

    Yard anyYard(store::Store& store) {
        if (store.yards().empty())
            addYard(store, "By the ford", 4);
        return store.yards().front();
    }

    std::string m_folder;
    std::int64_t m_nowMs;
    std::mt19937_64 m_chance;
    unsigned m_run;
    std::string m_last;
};

} // namespace

int main(int argc, char** argv) {
    if (argc != 4)
        return 2;
    try {
        const std::string journey = argv[1];
        Driver driver(argv[2], static_cast<unsigned>(std::stoul(argv[3])));
        if (journey == "prepare") {
            driver.prepare();
            return 0;
        }
        if (journey == "treatment")
            driver.treatments();
        if (journey == "tray")
            driver.tray();
        if (journey == "merge")
            driver.takeIn();
        if (journey == "restore")
            driver.restore();
        if (journey == "migration")
            driver.migration();
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s\n", error.what());
    }
    return 1; // ends by a kill or a failure, never well
}
