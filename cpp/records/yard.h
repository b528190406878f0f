// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/moment.h"
#include "records/record_id.h"

#include <optional>
#include <string>

namespace halfcup::records {

/// A place on the ground, degrees: north and east positive (WGS 84). accuracyM: 95 % radius in metres where
/// known.
struct Position {
    double latitudeDeg = 0;
    double longitudeDeg = 0;
    std::optional<double> accuracyM;

    friend bool operator==(const Position&, const Position&) = default;
};

/// The lines a load is held against, in mites per 100 bees. See handbook "lines" for where they come from.
struct Lines {
    double treat = 3.0; // the trade's rule, 9 mites in a half cup: common practice, no source
    std::string treatSource = "trade-rule"; // id of the handbook value, or "own" where the keeper typed it
    std::optional<double> own;              // a stricter line of the keeper's own

    friend bool operator==(const Lines&, const Lines&) = default;
};

struct Yard {
    RecordId id;
    std::string name;
    std::optional<Position> position;
    double reachM = 150; // how far its hives may stand from the position, metres [convention]
    std::string registrationNumber;
    Lines lines; // the treat line is that of the region below where one is named
    std::string
        lineRegion; // subject of the handbook's "lines" whose figures are followed by season; or empty
    std::optional<MonthDay> turnDate;      // mites low by then; nothing: by hemisphere and latitude
    std::optional<MonthDay> firstWashFrom; // when colonies can be opened; nothing: by the first visit
    std::optional<Date> visitedOn;         // first day of this bee year on which a phone stood there
    RecordId sameAs; // made twice, on two phones: its records belong to that one (store/joining.h); or empty
    bool demo = false;
    bool removed = false;
};

/// Where a hive stands, metres from the position of its yard, or, where the yard has none, from the middle of
/// its plan.
struct Stand {
    double eastM = 0;
    double northM = 0;

    friend bool operator==(const Stand&, const Stand&) = default;
};

struct Colony {
    RecordId id;
    RecordId yardId;
    std::string label; // what is painted on the hive: "4", "B12", "nuc by the gate"
    std::string note;
    RecordId sameAs; // as a yard's
    bool demo = false;
    bool removed = false;
    std::optional<Stand> stand = {}; // where the keeper put it on the plan; nothing: by where it was sampled
};

[[nodiscard]] Fields toFields(const Yard& yard);
[[nodiscard]] Fields toFields(const Colony& colony);
/// Missing or wrongly typed fields keep their defaults.
[[nodiscard]] Yard yardFrom(const RecordId& id, const Fields& fields);
[[nodiscard]] Colony colonyFrom(const RecordId& id, const Fields& fields);

} // namespace halfcup::records
