// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_state.h"
#include "records/on_day.h"
#include "records/treatment.h"
#include "touch/services.h"

#include <QString>

/// What happened to a colony, in words: for its story, for a day, and for warnings. All read the store and
/// throw store::StoreError where they need a name from it.
namespace halfcup::touch::story {

/// "18 May", with its year where that is not this season's.
[[nodiscard]] QString day(const Services& services, const records::Date& date);

/// The text with a capital at its start.
[[nodiscard]] QString capitalised(QString text);

/// "Supers on", "Brood seen": the kind alone, to pick from.
[[nodiscard]] QString kindName(records::EventKind kind);
[[nodiscard]] QString broodName(records::Brood brood); // "capped brood"
[[nodiscard]] QString floorName(records::Floor floor); // "solid floor"
[[nodiscard]] QString frames(double frames);           // "8 frames of bees"

/// "Brood seen: capped brood", "Moved to Long Furrow". toldOf: the colony whose story it is; an event of
/// another is told from its side ("Colony 7 was put into this one").
[[nodiscard]] QString happened(Services& services, const records::ColonyEvent& event,
                               const records::RecordId& toldOf);

/// "Supers on since 3 May, capped brood, 8 frames of bees": what is known, the surest things first. "Nothing
/// is written down of its state yet" where nothing is.
[[nodiscard]] QString stateLine(const Services& services, const records::ColonyState& state);

/// "amitraz": the name of a substance or measure of the handbook; its id where this version knows none.
[[nodiscard]] QString substanceName(const Services& services, const std::string& id);
/// "Product (active substance)", the product alone where both are the same.
[[nodiscard]] QString treatmentName(const Services& services, const records::Treatment& treatment);
/// "20 June to 21 July 2026", one day where it was done once.
[[nodiscard]] QString course(const records::Treatment& treatment);
/// "runs", "begins on 3 August", "over" on that day.
[[nodiscard]] QString stage(const Services& services, const records::Treatment& treatment,
                            const records::Date& on);
/// "honey from 4 August", "withdrawal not written down".
[[nodiscard]] QString honey(const Services& services, const records::Treatment& treatment);
/// A sentence for one day: "No treatment holds the honey.", "Honey may be taken from 4 August 2026."
[[nodiscard]] QString honeyOnDay(const records::HoneyOnDay& honey);

} // namespace halfcup::touch::story
