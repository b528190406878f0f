// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/share_controller.h"

#include "exchange/keep_demo.h"
#include "exchange/keep_exchange.h"
#include "store/outgoing.h"
#include "touch/export_file.h"
#include "touch/plan_words.h"

#include <QDir>
#include <QFileInfo>

namespace halfcup::touch {

ShareController::ShareController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_people(services)
    , m_plan(services) {
    connect(services.device.files.get(), &device::FileHandover::worksChanged, this,
            &ShareController::changed);
}

QString ShareController::samplesLine() const {
    int count = 0;
    m_services.kept([&] { count = m_services.store.sampleCount(); });
    return tr("%n wash(es) to hand on", nullptr, count);
}

bool ShareController::isDemoLoaded() const {
    bool loaded = false;
    m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.yards())
            loaded = loaded || yard.demo;
    });
    return loaded;
}

QString ShareController::markLine() const {
    std::string device;
    m_services.kept([&] { device = store::Outgoing(m_services.store).device(); });
    return tr("This is phone %1. Another phone names it so when it takes in a file from here.")
        .arg(plan::phoneMark(device));
}

bool ShareController::canShowWritten() const {
    const device::FileHandover& files = *m_services.device.files;
    return !m_written.isEmpty() && files.canShare() && !files.hasShareSheet();
}

/// By the local day and minute; what lies there already is never written over.
QString ShareController::freeName(const QString& folder) const {
    const records::Moment now = m_services.now();
    const auto minutes = (now.utcMs / 60'000 + now.offsetMinutes) % (24 * 60);
    const QString stem = tr("halfcup-%1-%2", "file name: day, time")
                             .arg(QString::fromStdString(records::toIso(records::localDate(now))))
                             .arg(minutes / 60 * 100 + minutes % 60, 4, 10, QLatin1Char('0'));
    QString name = stem + QLatin1String(exchange::exchangeEnding);
    for (int copy = 2; QFileInfo::exists(QDir(folder).filePath(name)); ++copy)
        name = QStringLiteral("%1-%2%3").arg(stem).arg(copy).arg(QLatin1String(exchange::exchangeEnding));
    return name;
}

bool ShareController::writeEverything() {
    m_written.clear();
    const device::Folder folder = m_services.device.folders->exports();
    if (!folder.ok()) {
        m_failed = true;
        m_result = noPlaceToWrite(folder);
        emit changed();
        return false;
    }
    const QString path = QDir(folder.path).filePath(freeName(folder.path));
    std::optional<exchange::FileError> error;
    QString held;
    const bool read = m_services.kept([&] {
        store::Outgoing outgoing(m_services.store);
        error = exchange::writeSafely(path, [&](const exchange::ByteSink& sink) {
            exchange::writeExchange(outgoing, sink, m_services.now().utcMs);
        });
        held = plan::heldRecords(outgoing.counts());
    });
    m_failed = !read || error;
    if (error)
        m_result = fileTrouble(error->problem, path);
    else if (read) {
        const QString content = held.isEmpty() ? tr("no records yet") : held;
        m_result = m_services.device.folders->areSeen()
                       ? tr("Written to %1: %2.", "a file, 3 yards and 85 washes").arg(path, content)
                       : tr("Handed to the browser: %1 (%2).", "a file, 3 yards and 85 washes")
                             .arg(QFileInfo(path).fileName(), content);
    }
    if (!m_failed) {
        m_written = path;
        handOn(m_services, path);
    }
    emit changed();
    return !m_failed;
}

void ShareController::showWritten() {
    m_services.device.files->share(m_written,
                                   QStringLiteral("application/octet-stream")); // only its folder is shown
}

void ShareController::takeIn() {
    emit takeInWanted();
}

void ShareController::openLastTaken() {
    emit lastTakenWanted();
}

void ShareController::refresh() {
    m_written.clear();
    m_result.clear();
    m_failed = false;
    emit changed();
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
