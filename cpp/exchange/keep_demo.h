// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/demo_reader.h"

namespace halfcup::exchange {

/// Writes the demo into anything that keeps records as store::Store does, as one transaction. Exchange and
/// store do not know each other, so this is a template. Loading it again changes nothing: its ids are always
/// the same.
template <typename Keeper>
void keepDemo(Keeper& keeper, const Demo& demo) {
    keeper.inOneTransaction([&] {
        for (const records::Yard& yard : demo.yards)
            keeper.save(yard);
        for (const records::Colony& colony : demo.colonies)
            keeper.save(colony);
        for (const DemoSample& each : demo.samples) {
            keeper.save(each.sample);
            keeper.addDemoCounts(each.sample.id, each.counts);
        }
        for (const records::ColonyEvent& event : demo.events)
            keeper.save(event);
        for (const records::GivenTreatment& given : demo.treatments)
            keeper.save(given);
    });
}

} // namespace halfcup::exchange
