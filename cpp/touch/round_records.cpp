// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/round_records.h"

#include "season/lines.h"

#include <algorithm>

namespace halfcup::touch {

std::optional<records::Round> openRound(Services& services, const records::RecordId& yardId) {
    for (const records::Round& round : services.store.roundsOf(yardId))
        if (!round.endedAtMs)
            return round;
    return std::nullopt;
}

std::vector<season::ColonyOfYard> coloniesFor(Services& services, const records::RecordId& yardId,
                                              const std::vector<records::RecordId>& others) {
    std::vector<season::ColonyOfYard> colonies;
    for (const records::Colony& colony : services.store.colonies(yardId))
        colonies.push_back({colony, {}});
    for (const records::RecordId& id : others) {
        const auto known = std::ranges::any_of(
            colonies, [&](const season::ColonyOfYard& each) { return each.colony.id == id; });
        if (const auto colony = known ? std::nullopt : services.store.colony(id))
            colonies.push_back({*colony, {}});
    }
    for (season::ColonyOfYard& each : colonies)
        each.events = services.store.eventsOf(each.colony.id);
    return colonies;
}

ReadRound readKept(Services& services, const records::Round& round) {
    const records::Date day =
        round.endedAtMs ? records::localDate({*round.endedAtMs, round.utcOffsetMinutes}) : services.today();
    std::vector<records::Sample> samples;
    for (const records::RecordId& id : round.colonyIds)
        for (records::Sample& sample : services.store.samplesOf(id))
            samples.push_back(std::move(sample));
    ReadRound read;
    if (const auto yard = services.store.yard(round.yardId)) {
        const records::Lines lines = season::linesOn(*yard, day, services.handbook());
        read.line = std::min(lines.treat, lines.own.value_or(lines.treat));
    }
    read.reading = season::readRound(round, coloniesFor(services, round.yardId, round.colonyIds), samples,
                                     read.line, day);
    return read;
}

} // namespace halfcup::touch
