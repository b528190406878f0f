// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/round.h"

#include "records/field_access.h"

#include <algorithm>
#include <sstream>

namespace halfcup::records {

namespace {

std::string_view nameOf(Round::Picked picked) {
    switch (picked) {
    case Round::Picked::ByKeeper:
        return "by_keeper";
    case Round::Picked::All:
        return "all";
    case Round::Picked::AtRandom:
        break;
    }
    return "at_random";
}

Round::Picked pickedFrom(const std::string& name) {
    for (const Round::Picked each : {Round::Picked::ByKeeper, Round::Picked::All})
        if (nameOf(each) == name)
            return each;
    return Round::Picked::AtRandom;
}

} // namespace

Fields toFields(const Round& round) {
    Fields f;
    f["yard_id"] = round.yardId;
    f["started_at_ms"] = round.startedAtMs;
    f["utc_offset_min"] = std::int64_t{round.utcOffsetMinutes};
    f["ended_at_ms"] = valueOf(round.endedAtMs);
    f["picked"] = std::string(nameOf(round.picked));
    std::string ids;
    for (const RecordId& id : round.colonyIds)
        ids += ids.empty() ? id : ' ' + id;
    f["colony_ids"] = ids;
    f["demo"] = valueOf(round.demo);
    f["removed"] = valueOf(round.removed);
    return f;
}

Round roundFrom(const RecordId& id, const Fields& f) {
    Round round;
    round.id = id;
    round.yardId = textIn(f, "yard_id").value_or("");
    round.startedAtMs = integerIn(f, "started_at_ms").value_or(0);
    round.utcOffsetMinutes = static_cast<int>(integerIn(f, "utc_offset_min").value_or(0));
    round.endedAtMs = integerIn(f, "ended_at_ms");
    round.picked = pickedFrom(textIn(f, "picked").value_or(""));
    std::istringstream ids(textIn(f, "colony_ids").value_or(""));
    for (std::string each; ids >> each;)
        if (isRecordId(each) && std::ranges::find(round.colonyIds, each) == round.colonyIds.end())
            round.colonyIds.push_back(each);
    round.demo = flagIn(f, "demo");
    round.removed = flagIn(f, "removed");
    return round;
}

} // namespace halfcup::records
