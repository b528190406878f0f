// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/moment.h"
#include "records/record_id.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace halfcup::records {

/// What can happen to a colony besides washes and treatments. Things that happen are kept as events and never
/// as edits, so that the state on any past day can be told (colony_state.h).
enum class EventKind {
    SupersOn,
    SupersOff,
    Brood,     // what was seen in the brood nest
    Strength,  // frames covered with bees
    Floor,     // which floor the hive stands on since
    Split,     // bees and brood were taken out; other colony: the new one, where it is kept
    Merged,    // put together with the other colony, which goes on; this one ends
    Requeened, // words: the stock
    Moved,     // other yard: where it stands since
    Swarmed,
    Dead,
};

inline constexpr std::array allEventKinds{EventKind::SupersOn, EventKind::SupersOff, EventKind::Brood,
                                          EventKind::Strength, EventKind::Floor,     EventKind::Split,
                                          EventKind::Merged,   EventKind::Requeened, EventKind::Moved,
                                          EventKind::Swarmed,  EventKind::Dead};

/// What was seen of brood. Mites hide under cappings only, so open brood alone counts as no hiding place.
enum class Brood { NotKnown, None, OpenOnly, Capped };
enum class Floor { NotKnown, Solid, Screened };

struct ColonyEvent {
    RecordId id;
    RecordId colonyId;
    RecordId yardId; // where the colony stood before it happened
    EventKind kind = EventKind::SupersOn;
    Date day;                      // the keeper's local date
    std::int64_t recordedAtMs = 0; // UTC; settles the order within a day
    Brood brood = Brood::NotKnown; // of Brood
    Floor floor = Floor::NotKnown; // of Floor
    std::optional<double> frames;  // of Strength: frames covered with bees, 0 to mostFrames
    RecordId otherColonyId;        // of Split and Merged; may be empty
    RecordId otherYardId;          // of Moved
    std::string words;             // the stock of Requeened; a note of any other
    bool demo = false;
    bool removed = false;
};

inline constexpr double mostFrames = 60; // more than any hive holds [convention]

[[nodiscard]] Fields toFields(const ColonyEvent& event);
/// Missing or wrongly typed fields keep their defaults; nothing where the kind or the day is not one this
/// version knows, because an event that is misread would change the colony's state.
[[nodiscard]] std::optional<ColonyEvent> colonyEventFrom(const RecordId& id, const Fields& fields);

[[nodiscard]] std::string_view nameOf(EventKind kind);
[[nodiscard]] std::string_view nameOf(Brood brood);
[[nodiscard]] std::string_view nameOf(Floor floor);
[[nodiscard]] std::optional<EventKind> eventKindFrom(std::string_view name);
/// An unknown word reads as NotKnown.
[[nodiscard]] Brood broodFrom(std::string_view name);
[[nodiscard]] Floor floorFrom(std::string_view name);

} // namespace halfcup::records
