// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/situation.h"
#include "touch/services.h"

#include <QString>

#include <optional>
#include <vector>

namespace halfcup::touch {

/// Whom a treatment is for, and what is so: what the pages Treat, Situation and Choice work on together.
struct TreatScope {
    records::YardRecords kept;
    std::vector<records::Colony> colonies; // concerned, all alive on the day
    bool wholeYard = false;
    records::Date from;
    std::vector<double> highsC, lowsC; // the forecast as typed; empty: none

    [[nodiscard]] bool demo() const { return kept.yard.demo; }
};

/// One colony of the yard, or all of it where colonyId is empty. Nothing where there is no such yard or
/// colony, or nothing lives there. Throws store::StoreError.
[[nodiscard]] std::optional<TreatScope> readScope(Services& services, const records::RecordId& yardId,
                                                  const records::RecordId& colonyId,
                                                  const records::Date& from);

/// From events and treatments, with the forecast.
[[nodiscard]] season::Situation situationIn(const TreatScope& scope, const handbook::Handbook& handbook);

/// "Colony 4, Alder Bend", "Alder Bend, 5 colonies".
[[nodiscard]] QString scopeName(const TreatScope& scope);

/// The situation in one line: "From 18 May: supers on, capped brood, no forecast yet".
[[nodiscard]] QString situationLine(const season::Situation& situation, const Services& services);

/// Where a value of the handbook comes from and how well it is known, in one line; empty where there is none
/// of that id.
[[nodiscard]] QString sourceLine(const handbook::Handbook& handbook, const std::string& entryId);

} // namespace halfcup::touch
