// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/demo_fields.h"
#include "exchange/demo_reader.h"

#include <map>
#include <string>

namespace halfcup::exchange {

/// The moment or the day moved by whole years; 29 February becomes the 28th where the year has none.
[[nodiscard]] records::Moment movedByYears(const records::Moment& moment, int years);
[[nodiscard]] records::Date movedByYears(records::Date date, int years);

/// Reads one event and one treatment of the demo, all but their ids. colonies: those read before, by id.
/// Throws DemoError.
[[nodiscard]] records::ColonyEvent
readDemoEvent(DemoFields& fields, const std::map<std::string, records::Colony>& colonies, int years);
[[nodiscard]] records::GivenTreatment
readDemoTreatment(DemoFields& fields, const std::map<std::string, records::Colony>& colonies, int years);

} // namespace halfcup::exchange
