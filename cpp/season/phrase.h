// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <string>
#include <variant>
#include <vector>

/// Sentences that are decided below the screens and read on them, in files and without a screen. A phrase is
/// an English template and what goes into it; who shows it translates the template (context "Phrase") and
/// writes numbers, temperatures and dates as its reader is used to.
namespace halfcup::season {

struct Celsius {
    double value;
};
struct Days { // a number of days, written with its word: "1 day", "14 days"
    int value;
};
struct Share { // a fraction, written in per cent
    double value;
};
struct Load { // mites per 100 bees
    double value;
};
struct LoadSpan { // from and to, mites per 100 bees: "2.9 to 9.4"
    double low;
    double high;
};
struct ShareSpan { // from and to, fractions, in per cent: "70 to 95 %"
    double low;
    double high;
};
struct Number { // a plain count, such as bees
    double value;
};
struct Words { // from the handbook or typed by the keeper: never translated, always plain text
    std::string value;
};
/// A word from a small fixed list, itself a template without arguments.
struct Term {
    const char* text;
};

using Argument =
    std::variant<Celsius, Days, Share, Load, LoadSpan, ShareSpan, Number, Words, Term, records::Date>;

struct Phrase {
    const char* text = ""; // %1 to %9 stand for the arguments
    std::vector<Argument> arguments = {};

    [[nodiscard]] bool empty() const { return *text == '\0'; }
};

/// Marks a template so that the translators' tool finds it (lupdate -tr-function-alias
/// tr+=phraseText). Does nothing.
constexpr const char* phraseText(const char* text) {
    return text;
}

/// The phrase in plain English, degrees Celsius and ISO dates: for programs without a screen and for tests.
[[nodiscard]] std::string inEnglish(const Phrase& phrase);

} // namespace halfcup::season
