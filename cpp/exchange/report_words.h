// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "records/colony_event.h"
#include "records/sample.h"
#include "records/treatment.h"

#include <QString>

#include <string>

/// Records in words for a report. Loads, chances and standings read as they do on the screens: a test holds
/// them against touch/words.h.
namespace halfcup::exchange::report {

/// Longest text of one field in a report, in characters [own choice]; longer ones end in three dots.
inline constexpr qsizetype longestText = 400;

/// A text of the keeper's for paper: one line, without control characters and without the marks that
/// override the direction of text, by which a name could be made to read as another.
[[nodiscard]] QString clean(const std::string& text);

[[nodiscard]] QString day(const records::Date& date);              // "18 May 2026"
[[nodiscard]] QString load(double per100);                         // "3.2"
[[nodiscard]] QString loadRange(const records::Answer& answer);    // "1.4 to 7.8"
[[nodiscard]] QString loadAndRange(const records::Answer& answer); // "3.2 (1.4 to 7.8)"
[[nodiscard]] QString linesOf(const records::Answer& answer);      // "3", "3; own 2"
[[nodiscard]] QString dayOf(const records::Sample& sample);        // local day of the scoop
[[nodiscard]] QString figure(double value);                        // "12", "1.7": at most three digits
[[nodiscard]] QString chance(double chance);                       // "55 %"
[[nodiscard]] QString standing(const records::Sample& sample);     // "Over your line"
[[nodiscard]] QString method(const std::string& id);               // "Alcohol wash"
/// "Supers on", "Moved to Long Furrow". other: the label of the other colony or the name of the other yard.
[[nodiscard]] QString happened(const records::ColonyEvent& event, const QString& other);
/// "published", "common practice": how well a value is known.
[[nodiscard]] QString mark(handbook::Mark mark);

} // namespace halfcup::exchange::report
