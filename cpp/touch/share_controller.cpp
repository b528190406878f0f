// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/share_controller.h"

#include "exchange/keep_demo.h"
#include "exchange/samples_csv.h"
#include "touch/export_file.h"
#include "touch/words.h"

#include <map>

namespace halfcup::touch {

ShareController::ShareController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString ShareController::samplesLine() const {
    int count = 0;
    m_services.kept([&] { count = m_services.store.sampleCount(); });
    return tr("%n wash(es) to hand on", nullptr, count);
}

void ShareController::setExact(bool exact) {
    m_exact = exact;
    emit changed();
}

QString ShareController::positionsLine() const {
    return m_exact ? tr("Positions go out exact. Whoever gets the file knows where your hives stand.")
                   : tr("Positions are blurred to about 1 km.");
}

bool ShareController::isDemoLoaded() const {
    bool loaded = false;
    m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.yards())
            loaded = loaded || yard.demo;
    });
    return loaded;
}

void ShareController::refresh() {
    m_result.clear();
    m_failed = false;
    emit changed();
}

bool ShareController::writeSamples(const QString& path) {
    std::map<records::RecordId, records::Colony> colonies;
    std::map<records::RecordId, records::Yard> yards;
    int rows = 0;
    std::optional<exchange::FileError> error;
    const bool read = m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.allYards()) {
            yards.emplace(yard.id, yard);
            for (const records::Colony& colony : m_services.store.allColonies(yard.id))
                colonies.emplace(colony.id, colony);
        }
        const auto detail = m_exact ? exchange::PositionDetail::Exact : exchange::PositionDetail::Blurred;
        error = exchange::writeSafely(path, [&](const exchange::ByteSink& sink) {
            exchange::CsvWriter csv(sink);
            exchange::writeSampleHeader(csv);
            m_services.store.forEachSample([&](const records::Sample& sample) {
                const records::Yard& yard = yards[sample.yardId];
                exchange::writeSampleRow(
                    csv, {sample, colonies[sample.colonyId].label, yard.name, yard.position}, detail);
                ++rows;
            });
        });
    });
    m_failed = !read || error;
    if (read)
        m_result = error ? fileTrouble(error->problem, path)
                         : tr("%n wash(es) written to %1", nullptr, rows).arg(path);
    m_exact = false; // asked for each time
    emit changed();
    return !m_failed;
}

bool ShareController::exportSamples() {
    const device::Folder folder = m_services.device.folders->exports();
    if (!folder.ok()) {
        m_failed = true;
        m_result = folder.path.isEmpty() ? tr("This phone has no place for files to hand on.")
                                         : tr("%1 cannot be written. Nothing was written.").arg(folder.path);
        emit changed();
        return false;
    }
    const QString day = QString::fromStdString(records::toIso(records::localDate(m_services.now())));
    return writeSamples(tr("%1/halfcup-washes-%2.csv", "file name").arg(folder.path, day));
}

bool ShareController::loadDemo() {
    m_failed = !m_services.kept([&] {
        const records::Moment now = m_services.now();
        exchange::DemoOptions options;
        options.untilUtcMs = now.utcMs;
        options.fitTo = now;
        try {
            exchange::keepDemo(m_services.store, exchange::readDemo(exchange::builtInDemo(), options));
            m_result =
                tr("The demo is loaded: two invented yards, marked as demo on every page and in every file.");
        } catch (const exchange::DemoError& error) {
            m_services.messages.say(QString::fromUtf8(error.what()));
        }
    });
    emit changed();
    emit recordsChanged();
    return !m_failed;
}

} // namespace halfcup::touch
