// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_folder.h"
#include "exchange/keep_exchange.h"

namespace halfcup::exchange {

/// What came of one look into the exchange folder.
template <typename Plan>
struct FolderLook {
    FolderTrouble trouble = FolderTrouble::None;
    struct File {
        std::string name;
        ExchangeReport report;
    };
    std::vector<File> taken;
    std::vector<std::string> waiting; // files that are still on their way
    Plan plan;                        // what they brought
    bool written = false;             // the own file has something new
    std::optional<FileError> writing; // why it could not be written
};

/// Takes in what the other phones put into the folder, then adds to this phone's own file what they do not
/// have. Merge and Outgoing as store's; Keeper is what both are made from. state is brought up to date, also
/// where the writing fails; keep it afterwards.
template <typename Merge, typename Outgoing, typename Plan, typename Keeper>
FolderLook<Plan> exchangeThrough(const ExchangeFolder& folder, FolderState& state, Keeper& keeper,
                                 std::int64_t nowMs) {
    FolderLook<Plan> look;
    look.trouble = folder.trouble();
    if (look.trouble != FolderTrouble::None)
        return look;
    const std::vector<Arrival> arrivals = folder.look(state, nowMs, look.waiting);
    if (!arrivals.empty()) {
        Merge merge(keeper);
        for (const Arrival& arrival : arrivals) {
            merge.from({arrival.name, {}, true});
            look.taken.push_back({arrival.name, folder.read(arrival, takerFor(merge, arrival.name, true))});
        }
        look.plan = merge.finish();
        merge.keep();
        for (std::size_t i = 0; i < arrivals.size(); ++i)
            if (look.taken[i].report.refusal != ExchangeRefusal::CannotRead)
                state.others[arrivals[i].name] = arrivals[i].then;
    }

    Outgoing outgoing(keeper);
    const auto now = outgoing.now();
    const bool asLeft = folder.ownFileIsAsLeft(state);
    if (asLeft && now.ownStamp == state.ownStamp && now.merge == state.merge)
        return look;
    std::int64_t parts = 0;
    if (asLeft) {
        const typename Outgoing::Mark since{state.ownStamp, state.merge};
        outgoing.forEachPartSince(since, [&](const records::RecordPart&) { ++parts; });
    }
    const auto content = [&](const ByteSink& sink) {
        ExchangeWriter writer(sink, headerFor(outgoing, nowMs));
        const auto add = [&](const records::RecordPart& part) { writer.part(part); };
        if (asLeft)
            outgoing.forEachPartSince({state.ownStamp, state.merge}, add);
        else
            outgoing.forEachPart(add);
        writer.end();
    };
    if (!asLeft)
        look.writing = folder.writeAnew(state, content);
    else if (parts > 0)
        look.writing = folder.append(state, content);
    if (!look.writing) {
        look.written = !asLeft || parts > 0;
        state.ownStamp = now.ownStamp;
        state.merge = now.merge;
    }
    return look;
}

} // namespace halfcup::exchange
