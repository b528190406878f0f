// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/colony_event.h"

#include "records/field_access.h"

namespace halfcup::records {

std::string_view nameOf(EventKind kind) {
    switch (kind) {
    case EventKind::SupersOn:
        return "supers_on";
    case EventKind::SupersOff:
        return "supers_off";
    case EventKind::Brood:
        return "brood";
    case EventKind::Strength:
        return "strength";
    case EventKind::Floor:
        return "floor";
    case EventKind::Split:
        return "split";
    case EventKind::Merged:
        return "merged";
    case EventKind::Requeened:
        return "requeened";
    case EventKind::Moved:
        return "moved";
    case EventKind::Swarmed:
        return "swarmed";
    case EventKind::Dead:
        return "dead";
    }
    return "";
}

std::string_view nameOf(Brood brood) {
    switch (brood) {
    case Brood::None:
        return "none";
    case Brood::OpenOnly:
        return "open_only";
    case Brood::Capped:
        return "capped";
    case Brood::NotKnown:
        break;
    }
    return "not_known";
}

std::string_view nameOf(Floor floor) {
    switch (floor) {
    case Floor::Solid:
        return "solid";
    case Floor::Screened:
        return "screened";
    case Floor::NotKnown:
        break;
    }
    return "not_known";
}

std::optional<EventKind> eventKindFrom(std::string_view name) {
    for (const EventKind kind : allEventKinds)
        if (nameOf(kind) == name)
            return kind;
    return std::nullopt;
}

Brood broodFrom(std::string_view name) {
    for (const Brood brood : {Brood::None, Brood::OpenOnly, Brood::Capped})
        if (nameOf(brood) == name)
            return brood;
    return Brood::NotKnown;
}

Floor floorFrom(std::string_view name) {
    for (const Floor floor : {Floor::Solid, Floor::Screened})
        if (nameOf(floor) == name)
            return floor;
    return Floor::NotKnown;
}

Fields toFields(const ColonyEvent& event) {
    Fields f;
    f["colony_id"] = event.colonyId;
    f["yard_id"] = event.yardId.empty() ? Value{} : Value{event.yardId};
    f["event"] = std::string(nameOf(event.kind));
    f["day"] = toIso(event.day);
    f["recorded_at_ms"] = event.recordedAtMs;
    f["brood"] = event.kind == EventKind::Brood ? Value{std::string(nameOf(event.brood))} : Value{};
    f["floor"] = event.kind == EventKind::Floor ? Value{std::string(nameOf(event.floor))} : Value{};
    f["frames"] = valueOf(event.frames);
    f["other_colony_id"] = event.otherColonyId.empty() ? Value{} : Value{event.otherColonyId};
    f["other_yard_id"] = event.otherYardId.empty() ? Value{} : Value{event.otherYardId};
    f["words"] = event.words;
    f["demo"] = valueOf(event.demo);
    f["removed"] = valueOf(event.removed);
    return f;
}

std::optional<ColonyEvent> colonyEventFrom(const RecordId& id, const Fields& fields) {
    const auto kind = eventKindFrom(textIn(fields, "event").value_or(""));
    const auto day = parseIsoDate(textIn(fields, "day").value_or(""));
    if (!kind || !day)
        return std::nullopt;
    ColonyEvent event;
    event.id = id;
    event.colonyId = textIn(fields, "colony_id").value_or("");
    event.yardId = textIn(fields, "yard_id").value_or("");
    event.kind = *kind;
    event.day = *day;
    event.recordedAtMs = integerIn(fields, "recorded_at_ms").value_or(0);
    event.brood = broodFrom(textIn(fields, "brood").value_or(""));
    event.floor = floorFrom(textIn(fields, "floor").value_or(""));
    event.frames = realIn(fields, "frames");
    event.otherColonyId = textIn(fields, "other_colony_id").value_or("");
    event.otherYardId = textIn(fields, "other_yard_id").value_or("");
    event.words = textIn(fields, "words").value_or("");
    event.demo = flagIn(fields, "demo");
    event.removed = flagIn(fields, "removed");
    return event;
}

} // namespace halfcup::records
