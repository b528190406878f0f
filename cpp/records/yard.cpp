// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/yard.h"

#include "records/field_access.h"

namespace halfcup::records {

Fields toFields(const Yard& yard) {
    Fields f;
    f["name"] = yard.name;
    f["latitude_deg"] = yard.position ? Value{yard.position->latitudeDeg} : Value{};
    f["longitude_deg"] = yard.position ? Value{yard.position->longitudeDeg} : Value{};
    f["position_accuracy_m"] = yard.position ? valueOf(yard.position->accuracyM) : Value{};
    f["reach_m"] = yard.reachM;
    f["registration_number"] = yard.registrationNumber;
    f["treat_line"] = yard.lines.treat;
    f["treat_line_source"] = yard.lines.treatSource;
    f["own_line"] = valueOf(yard.lines.own);
    f["line_region"] = yard.lineRegion.empty() ? Value{} : Value{yard.lineRegion};
    f["turn_date"] = yard.turnDate ? Value{toText(*yard.turnDate)} : Value{};
    f["first_wash_from"] = yard.firstWashFrom ? Value{toText(*yard.firstWashFrom)} : Value{};
    f["visited_on"] = yard.visitedOn ? Value{toIso(*yard.visitedOn)} : Value{};
    f["same_as"] = yard.sameAs.empty() ? Value{} : Value{yard.sameAs};
    f["demo"] = valueOf(yard.demo);
    f["removed"] = valueOf(yard.removed);
    return f;
}

Yard yardFrom(const RecordId& id, const Fields& fields) {
    Yard yard;
    yard.id = id;
    yard.name = textIn(fields, "name").value_or("");
    const auto latitude = realIn(fields, "latitude_deg");
    const auto longitude = realIn(fields, "longitude_deg");
    if (latitude && longitude)
        yard.position = Position{*latitude, *longitude, realIn(fields, "position_accuracy_m")};
    yard.reachM = realIn(fields, "reach_m").value_or(yard.reachM);
    yard.registrationNumber = textIn(fields, "registration_number").value_or("");
    yard.lines.treat = realIn(fields, "treat_line").value_or(yard.lines.treat);
    yard.lines.treatSource = textIn(fields, "treat_line_source").value_or(yard.lines.treatSource);
    yard.lines.own = realIn(fields, "own_line");
    yard.lineRegion = textIn(fields, "line_region").value_or("");
    yard.turnDate = parseMonthDay(textIn(fields, "turn_date").value_or(""));
    yard.firstWashFrom = parseMonthDay(textIn(fields, "first_wash_from").value_or(""));
    yard.visitedOn = parseIsoDate(textIn(fields, "visited_on").value_or(""));
    yard.sameAs = textIn(fields, "same_as").value_or("");
    yard.demo = flagIn(fields, "demo");
    yard.removed = flagIn(fields, "removed");
    return yard;
}

Fields toFields(const Colony& colony) {
    Fields f;
    f["yard_id"] = colony.yardId;
    f["label"] = colony.label;
    f["note"] = colony.note;
    f["stand_east_m"] = colony.stand ? Value{colony.stand->eastM} : Value{};
    f["stand_north_m"] = colony.stand ? Value{colony.stand->northM} : Value{};
    f["same_as"] = colony.sameAs.empty() ? Value{} : Value{colony.sameAs};
    f["demo"] = valueOf(colony.demo);
    f["removed"] = valueOf(colony.removed);
    return f;
}

Colony colonyFrom(const RecordId& id, const Fields& fields) {
    Colony colony;
    colony.id = id;
    colony.yardId = textIn(fields, "yard_id").value_or("");
    colony.label = textIn(fields, "label").value_or("");
    colony.note = textIn(fields, "note").value_or("");
    const auto east = realIn(fields, "stand_east_m");
    const auto north = realIn(fields, "stand_north_m");
    if (east && north)
        colony.stand = Stand{*east, *north};
    colony.sameAs = textIn(fields, "same_as").value_or("");
    colony.demo = flagIn(fields, "demo");
    colony.removed = flagIn(fields, "removed");
    return colony;
}

} // namespace halfcup::records
