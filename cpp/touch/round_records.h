// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/round.h"
#include "season/yard_round.h"
#include "touch/services.h"

/// Rounds as the store keeps them, for the pages that show them. All throw store::StoreError.
namespace halfcup::touch {

/// The newest round of the yard that has not ended.
[[nodiscard]] std::optional<records::Round> openRound(Services& services, const records::RecordId& yardId);

/// The colonies that stand in the yard now, and the round's, with what happened to them.
[[nodiscard]] std::vector<season::ColonyOfYard>
coloniesFor(Services& services, const records::RecordId& yardId,
            const std::vector<records::RecordId>& others = {});

/// A round that goes on is read as of today, one that ended as of its last day, against the lines of that
/// day: the stricter one, where the keeper has an own line.
struct ReadRound {
    season::RoundReading reading;
    double line = 0; // per 100
};
[[nodiscard]] ReadRound readKept(Services& services, const records::Round& round);

} // namespace halfcup::touch
