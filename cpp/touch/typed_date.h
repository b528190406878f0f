// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <QString>

#include <optional>

namespace halfcup::touch {

/// A day as somebody typed it, or the sentence that says what is wrong with it. Nothing typed is neither.
struct TypedDate {
    std::optional<records::Date> date;
    QString problem;
};

/// Reads a day: "2026-05-18", as the keeper's locale writes it in figures ("18.5.2026", "5/18/26"), or with
/// the month in words ("18 May", "May 18, 2026"). Without a year it is that day of the year which is nearest
/// to today; a year of two figures is in this century. Days that do not exist (29 February of a common year)
/// are refused and named. what: "The first day", at the start of a sentence.
[[nodiscard]] TypedDate readDate(const QString& text, const records::Date& today, const QString& what);

/// The same for a day that comes every year: "15 August", "8/15", "08-15". The year is that of today where it
/// has the day, else a leap year's.
[[nodiscard]] TypedDate readYearlyDay(const QString& text, const records::Date& today, const QString& what);

} // namespace halfcup::touch
