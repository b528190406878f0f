// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/event_check.h"

#include <algorithm>

namespace halfcup::records {

namespace {

bool isChosen(const ColonyEvent& event) {
    switch (event.kind) {
    case EventKind::Brood:
        return event.brood != Brood::NotKnown;
    case EventKind::Strength:
        return event.frames.has_value();
    case EventKind::Floor:
        return event.floor != Floor::NotKnown;
    case EventKind::Merged:
        return !event.otherColonyId.empty();
    case EventKind::Moved:
        return !event.otherYardId.empty();
    default:
        return true;
    }
}

bool saysNothingNew(const ColonyEvent& event, const ColonyState& before) {
    return (event.kind == EventKind::SupersOn && before.supersOn && before.supersOn->value) ||
           (event.kind == EventKind::SupersOff && before.supersOn && !before.supersOn->value);
}

} // namespace

bool isForbidding(EventProblem problem) {
    return problem < EventProblem::HoneyHeld;
}

std::vector<EventProblem> problemsOf(const ColonyEvent& event, const Colony& colony,
                                     std::span<const ColonyEvent> events,
                                     std::span<const GivenTreatment> treatments, const Date& today) {
    if (!isValid(event.day))
        return {EventProblem::ImpossibleDay}; // nothing can be said of a day that does not exist
    std::vector<EventProblem> problems;
    const ColonyState before = stateOn(colony, events, event.day);
    if (event.day > today)
        problems.push_back(EventProblem::DayInFuture);
    if (!isChosen(event))
        problems.push_back(EventProblem::NothingChosen);
    if (event.kind == EventKind::Strength && event.frames &&
        !(*event.frames >= 0 && *event.frames <= mostFrames))
        problems.push_back(EventProblem::FramesOutOfRange);
    if (event.kind == EventKind::Merged && event.otherColonyId == colony.id)
        problems.push_back(EventProblem::SameColony);
    if (event.kind == EventKind::Moved && isChosen(event) && event.otherYardId == before.yardId)
        problems.push_back(EventProblem::SameYard);
    if (event.kind == EventKind::SupersOn && holdingHoney(treatments, event.day))
        problems.push_back(EventProblem::HoneyHeld);
    if (before.ended)
        problems.push_back(EventProblem::EndedBefore);
    if (saysNothingNew(event, before))
        problems.push_back(EventProblem::SaidAlready);
    if (event.kind == EventKind::Dead || event.kind == EventKind::Merged)
        problems.push_back(EventProblem::EndsIt);
    return problems;
}

const GivenTreatment* holdingHoney(std::span<const GivenTreatment> treatments, const Date& day) {
    const GivenTreatment* longest = nullptr;
    const auto freeFrom = [](const GivenTreatment& given) {
        return honeyFrom(given.treatment).value_or(endOf(given.treatment));
    };
    for (const GivenTreatment& given : treatments)
        if (holdsHoneyOn(given.treatment, day) && (!longest || freeFrom(given) > freeFrom(*longest)))
            longest = &given;
    return longest;
}

RecordId yardAfterTakingBack(const Colony& colony, const ColonyEvent& takenBack,
                             std::span<const ColonyEvent> events, const Date& today) {
    if (takenBack.kind != EventKind::Moved)
        return colony.yardId;
    Colony before = colony;
    if (!takenBack.yardId.empty())
        before.yardId = takenBack.yardId; // holds where no other move says where it stood first
    std::vector<ColonyEvent> left(events.begin(), events.end());
    std::erase_if(left, [&](const ColonyEvent& event) { return event.id == takenBack.id; });
    return stateOn(before, left, today).yardId;
}

} // namespace halfcup::records
