// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/dates.h"
#include "touch/services.h"

#include <QString>

#include <span>
#include <string>

/// The dates ahead for any calendar, in the keeper's language. Written from the Season page and from Export.
namespace halfcup::touch {

/// "Alder Bend, colonies 4, 7": where something is to be done.
[[nodiscard]] QString placeOf(const season::SeasonDate& date, std::span<const records::YardRecords> yards);

/// The dates as iCalendar. What is late stands on today: a day that has passed rings nobody.
[[nodiscard]] std::string seasonCalendar(const Services& services,
                                         std::span<const records::YardRecords> yards,
                                         std::span<const season::SeasonDate> dates);

/// "halfcup-season-2026-05-18.ics"
[[nodiscard]] QString calendarFileName(const records::Date& today);

} // namespace halfcup::touch
