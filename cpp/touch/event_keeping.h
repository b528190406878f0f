// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_event.h"
#include "records/event_check.h"
#include "touch/services.h"

#include <QString>

#include <vector>

/// Writing events and what follows from them. All throw store::StoreError and then have written nothing.
namespace halfcup::touch {

/// What is to be kept: events of one colony, or one of each colony of a yard.
struct EventsToKeep {
    std::vector<records::ColonyEvent> events;
    QString newColonyLabel; // of a split: the colony that is made; empty where it is not kept here
};

/// Writes them in one transaction, with the colony that a split makes and the yard that a move leads to.
void keepEvents(Services& services, const EventsToKeep& wanted);

/// Marks the event as removed (it stays in the history), and undoes what followed from it: a moved colony
/// stands where it stood, and a colony that a split made goes too where nothing else is kept of it.
void takeBackEvent(Services& services, records::ColonyEvent event);

/// The other colonies of the yard that live on that day, to be merged into.
[[nodiscard]] std::vector<records::Colony> livingColonies(Services& services, const records::RecordId& yardId,
                                                          const records::Date& day);

/// What may not be, in a sentence.
[[nodiscard]] QString refusal(Services& services, records::EventProblem problem,
                              const records::ColonyEvent& event);

/// What is asked before it is kept, each a sentence. label: of the colony.
[[nodiscard]] QString question(Services& services, records::EventProblem problem,
                               const records::ColonyEvent& event, const records::Colony& colony);

} // namespace halfcup::touch
