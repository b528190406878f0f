// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/demo_loading.h"

#include <QFile>

namespace halfcup::touch {

std::string demoText() {
    QFile file(QStringLiteral(":/halfcup/demo-data/season.json"));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return file.readAll().toStdString();
}

void loadDemo(store::Store& store, const exchange::Demo& demo) {
    store.inOneTransaction([&] {
        for (const records::Yard& yard : demo.yards)
            store.save(yard);
        for (const records::Colony& colony : demo.colonies)
            store.save(colony);
        for (const exchange::DemoSample& each : demo.samples) {
            store.save(each.sample);
            if (store.countEvents(each.sample.id).empty())
                for (const records::CountEvent& event : each.counts)
                    store.addCount(each.sample.id, event);
        }
        for (const records::ColonyEvent& event : demo.events)
            store.save(event);
        for (const exchange::DemoTreatment& each : demo.treatments)
            store.save(store::TreatmentEntry{each.treatment, each.colonyIds});
    });
}

} // namespace halfcup::touch
