// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/record_id.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace halfcup::records {

/// A yard round: some of a yard's colonies, washed one after another, for the yard's own figure. Which
/// samples belong to it follows from colony and time (season/yard_round.h), so that two phones can wash one
/// round together.
struct Round {
    enum class Picked { AtRandom, ByKeeper, All };

    RecordId id;
    RecordId yardId;
    std::int64_t startedAtMs = 0; // UTC
    int utcOffsetMinutes = 0;
    std::optional<std::int64_t> endedAtMs; // nothing while it goes on
    Picked picked = Picked::AtRandom;
    std::vector<RecordId> colonyIds; // in the order in which they are to be washed
    bool demo = false;
    bool removed = false;
};

[[nodiscard]] Fields toFields(const Round& round);
/// Missing or wrongly typed fields keep their defaults; what is no id in the list of colonies is left out.
[[nodiscard]] Round roundFrom(const RecordId& id, const Fields& fields);

} // namespace halfcup::records
