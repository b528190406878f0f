// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/wash_import.h"
#include "records/count.h"

#include <utility>

/// Reads from and writes into anything that keeps records as store::Store does. Exchange and store do not
/// know each other, so these are templates.
namespace halfcup::exchange {

/// keeper must outlive what is returned.
template <typename Keeper>
OnThisPhone onThisPhone(Keeper& keeper,
                        std::function<records::Lines(const records::Yard&, const records::Date&)> linesOn) {
    OnThisPhone here;
    here.yards = keeper.allYards();
    for (const records::Yard& yard : here.yards)
        for (records::Colony& colony : keeper.allColonies(yard.id))
            here.colonies.push_back(std::move(colony));
    here.hasSample = [&keeper](const records::RecordId& id) { return keeper.sample(id).has_value(); };
    here.samplesOf = [&keeper](const records::RecordId& colonyId) { return keeper.samplesOf(colonyId); };
    here.linesOn = std::move(linesOn);
    return here;
}

/// All of it as one transaction. The count of each wash is kept as a figure typed at its time. What is there
/// already, by id, is left as it is.
template <typename Keeper>
void keepImport(Keeper& keeper, const ImportRecords& records) {
    keeper.inOneTransaction([&] {
        for (const records::Yard& yard : records.yards)
            keeper.save(yard);
        for (const records::Colony& colony : records.colonies)
            keeper.save(colony);
        for (const records::Sample& sample : records.samples) {
            if (keeper.sample(sample.id))
                continue;
            keeper.save(sample);
            using Change = records::CountEvent::Change;
            keeper.addCount(sample.id, {0, 1, Change::Typed, sample.answer->mites, sample.startedAtMs});
            if (sample.answer->mitesSecondRinse)
                keeper.addCount(sample.id,
                                {0, 2, Change::Typed, *sample.answer->mitesSecondRinse, sample.startedAtMs});
        }
    });
}

} // namespace halfcup::exchange
