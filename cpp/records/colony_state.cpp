// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/colony_state.h"

#include <algorithm>
#include <tuple>
#include <vector>

namespace halfcup::records {

namespace {

// Where it stood before its first move is written in that move, because the colony itself knows only where it
// stands now.
RecordId yardAtFirst(const Colony& colony, const std::vector<const ColonyEvent*>& events) {
    for (const ColonyEvent* event : events)
        if (event->kind == EventKind::Moved && event->colonyId == colony.id && !event->yardId.empty())
            return event->yardId;
    return colony.yardId;
}

void apply(ColonyState& state, const ColonyEvent& event) {
    switch (event.kind) {
    case EventKind::SupersOn:
    case EventKind::SupersOff:
        state.supersOn = Since<bool>{event.kind == EventKind::SupersOn, event.day};
        break;
    case EventKind::Brood:
        state.brood = Since<Brood>{event.brood, event.day};
        break;
    case EventKind::Strength:
        if (event.frames)
            state.frames = Since<double>{*event.frames, event.day};
        break;
    case EventKind::Floor:
        state.floor = Since<Floor>{event.floor, event.day};
        break;
    case EventKind::Requeened:
        state.stock = Since<std::string>{event.words, event.day};
        state.seriesBroken = event.day;
        break;
    case EventKind::Split:
    case EventKind::Swarmed:
        state.seriesBroken = event.day;
        break;
    case EventKind::Moved:
        if (!event.otherYardId.empty())
            state.yardId = event.otherYardId;
        break;
    case EventKind::Merged:
    case EventKind::Dead:
        state.ended = Since<EventKind>{event.kind, event.day};
        break;
    }
}

} // namespace

ColonyState stateOn(const Colony& colony, std::span<const ColonyEvent> events, const Date& day) {
    std::vector<const ColonyEvent*> inOrder;
    for (const ColonyEvent& event : events)
        if (!event.removed)
            inOrder.push_back(&event);
    std::ranges::sort(inOrder, {}, [](const ColonyEvent* event) {
        return std::tuple(event->day, event->recordedAtMs, event->id);
    });
    ColonyState state;
    state.yardId = yardAtFirst(colony, inOrder);
    for (const ColonyEvent* event : inOrder) {
        if (event->day > day)
            break;
        if (event->colonyId == colony.id)
            apply(state, *event);
        else if (event->kind == EventKind::Merged && event->otherColonyId == colony.id)
            state.seriesBroken = event->day;
    }
    return state;
}

} // namespace halfcup::records
