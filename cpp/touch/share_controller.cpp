// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/share_controller.h"

#include "exchange/keep_demo.h"

namespace halfcup::touch {

ShareController::ShareController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_people(services) {}

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

void ShareController::refresh() {
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
