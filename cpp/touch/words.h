// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"
#include "records/sample.h"
#include "records/typed_input.h"
#include "season/forecast_text.h"
#include "store/store_error.h"
#include "touch/standing_word.h"
#include "touch/units.h"

#include <QString>

/// Figures and states as the keeper reads them, in the keeper's language and number format. The only place
/// where they are put into words, so that one figure reads the same on every page.
namespace halfcup::touch::words {

/// A load in mites per 100 bees, as sure as it is: "3.2", "16", "0". Not a number of the record, a figure to
/// read.
[[nodiscard]] QString load(double per100);
/// "1.4 to 7.8"; a zero count's range starts at 0.
[[nodiscard]] QString loadRange(const records::Answer& answer);
/// A line as it was typed: "3", "1.7".
[[nodiscard]] QString line(double per100);
/// "55 %"; near a boundary of a standing (20 and 50) to a tenth, so that the figure never contradicts the
/// sentence.
[[nodiscard]] QString chance(double chance);
/// "Over your line" and the three others, always these words.
[[nodiscard]] QString standing(StandingWord::Value value);
/// The graver standing of a finished sample; Unknown where there is none.
[[nodiscard]] StandingWord::Value headlineOf(const records::Sample& sample);

[[nodiscard]] QString mites(qint64 count); // "9 mites"
[[nodiscard]] QString cells(qint64 count); // "9 cells", of brood
[[nodiscard]] QString bees(double count);  // "about 300 bees"
[[nodiscard]] QString seconds(int count);  // "38 s"
[[nodiscard]] QString days(int count);     // "14 days"
/// "29.5 °C", "85 °F", to a tenth where it has one.
[[nodiscard]] QString temperature(double celsius, season::TemperatureUnit unit);
/// "6 m", "1.2 km"; "20 ft", "0.7 mi".
[[nodiscard]] QString distance(double metres, Units units);
[[nodiscard]] QString day(const records::Date& date);                 // "18 May"
[[nodiscard]] QString dayAndYear(const records::Date& date);          // "18 May 2026"
[[nodiscard]] QString timeOfDay(const records::Moment& moment);       // "09:41" as the locale writes it
[[nodiscard]] QString coordinates(const records::Position& position); // "48.11730 N 11.51667 E, within 6 m"
[[nodiscard]] QString measure(double millilitres);                    // "half a cup", "100 ml"
/// A text of the handbook (a unit, a region, "by label") in the keeper's language.
[[nodiscard]] QString fromHandbook(const std::string& text);
/// A text of a method (records/method.h) in the keeper's language; empty for an empty one.
[[nodiscard]] QString ofMethod(const char* text);
[[nodiscard]] QString method(const QString& methodId); // "alcohol wash"
/// "Wash colony 4": how that method is begun.
[[nodiscard]] QString begin(const std::string& methodId, const QString& colonyLabel);

/// Where a step of a wash waits, for "Colony 7 waits at: count the mites".
[[nodiscard]] QString step(records::Step step);

/// What is wrong with something typed. what: "The count", "The number of bees", at the start of a sentence.
[[nodiscard]] QString problem(records::InputProblem problem, const QString& what, double smallest,
                              double largest);

/// What stopped the database, what is safe, and what to do. path: of the database.
[[nodiscard]] QString trouble(store::StoreError::Kind kind, const QString& path);

} // namespace halfcup::touch::words
