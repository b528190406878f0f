// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/keep_exchange.h"
#include "exchange/safe_file.h"
#include "records/colony_event.h"
#include "store/merge.h"
#include "store/outgoing.h"
#include "store/store.h"

#include <QDir>
#include <QTemporaryDir>

#include <memory>
#include <stdexcept>

namespace halfcup::screens {

/// Another keeper's phone: a store of its own, with its own clock and chance, that writes files and reads
/// them.
class OtherPhone {
public:
    explicit OtherPhone(std::int64_t nowMs)
        : m_nowMs(nowMs) {
        m_store = std::make_unique<store::Store>(
            m_folder.filePath(QStringLiteral("other.db")).toStdString(),
            store::StoreHost{[this] { return m_nowMs; }, [this] { return m_chance += 0x9E3779B97F4A7C15U; }});
    }

    store::Store& store() { return *m_store; }
    void wait(std::int64_t ms) { m_nowMs += ms; }
    std::int64_t nowMs() const { return m_nowMs; }

    records::Yard addYard(const std::string& name) {
        records::Yard yard;
        yard.id = m_store->newId();
        yard.name = name;
        m_store->save(yard);
        return yard;
    }

    records::Colony addColony(const records::Yard& yard, const std::string& label) {
        records::Colony colony;
        colony.id = m_store->newId();
        colony.yardId = yard.id;
        colony.label = label;
        m_store->save(colony);
        return colony;
    }

    /// Left at the count: what a wash is before its answer.
    records::Sample addWash(const records::Colony& colony) {
        records::Sample sample;
        sample.id = m_store->newId();
        sample.colonyId = colony.id;
        sample.yardId = colony.yardId;
        sample.startedAtMs = m_nowMs;
        sample.scoopedAtMs = m_nowMs;
        sample.abandonedAtMs = m_nowMs;
        sample.state = records::SampleState::Abandoned;
        m_store->save(sample);
        return sample;
    }

    void addStrength(const records::Colony& colony, double frames) {
        records::ColonyEvent event;
        event.id = m_store->newId();
        event.colonyId = colony.id;
        event.yardId = colony.yardId;
        event.kind = records::EventKind::Strength;
        event.frames = frames;
        event.day = records::localDate({m_nowMs, 0});
        event.recordedAtMs = m_nowMs;
        m_store->save(event);
    }

    /// Everything, as a file of that name in the folder; its path.
    QString write(const QString& folder, const QString& name) {
        const QString path = QDir(folder).filePath(name);
        store::Outgoing out(*m_store);
        if (exchange::writeSafely(
                path, [&](const exchange::ByteSink& sink) { exchange::writeExchange(out, sink, m_nowMs); }))
            throw std::runtime_error("The file of the other phone could not be written.");
        return path;
    }

    /// All of a file, without looking at it first.
    void takeIn(const QString& path) {
        store::Merge merge(*m_store);
        if (!exchange::takeExchangeFile(merge, path).isWhole())
            throw std::runtime_error("The other phone could not read the file.");
        merge.finish();
        merge.keep();
    }

private:
    QTemporaryDir m_folder;
    std::int64_t m_nowMs;
    std::uint64_t m_chance = 77;
    std::unique_ptr<store::Store> m_store;
};

} // namespace halfcup::screens
