// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/phrase.h"

#include <charconv>
#include <cmath>

namespace halfcup::season {

namespace {

// As short as it can be said: 29.5, 30, 0.0251.
std::string figure(double value) {
    char text[64];
    const auto [end, error] = std::to_chars(text, text + sizeof text, value, std::chars_format::general, 4);
    return error == std::errc() ? std::string(text, end) : std::string("?");
}

// A load as sure as it is: 0.081, 2.9, 18.
std::string loadFigure(double per100) {
    if (per100 >= 10)
        return std::to_string(std::llround(per100));
    char text[64];
    const auto [end, error] = std::to_chars(text, text + sizeof text, per100, std::chars_format::general, 2);
    return error == std::errc() ? std::string(text, end) : std::string("?");
}

struct English {
    std::string operator()(const Celsius& celsius) const { return figure(celsius.value) + " C"; }
    std::string operator()(const Days& days) const {
        return std::to_string(days.value) + (days.value == 1 ? " day" : " days");
    }
    std::string operator()(const Share& share) const { return figure(share.value * 100) + " %"; }
    std::string operator()(const Load& load) const { return loadFigure(load.value) + " per 100"; }
    std::string operator()(const LoadSpan& span) const {
        return loadFigure(span.low) + " to " + loadFigure(span.high);
    }
    std::string operator()(const ShareSpan& span) const {
        return (span.low == span.high ? "" : figure(span.low * 100) + " to ") + figure(span.high * 100) +
               " %";
    }
    std::string operator()(const Number& number) const {
        return std::to_string(static_cast<long long>(std::llround(number.value)));
    }
    std::string operator()(const Words& words) const { return words.value; }
    std::string operator()(const Term& term) const { return term.text; }
    std::string operator()(const records::Date& date) const { return records::toIso(date); }
};

} // namespace

std::string inEnglish(const Phrase& phrase) {
    std::string text;
    for (const char* at = phrase.text; *at != '\0'; ++at) {
        const bool isMark = *at == '%' && at[1] >= '1' && at[1] <= '9';
        const std::size_t index = isMark ? static_cast<std::size_t>(at[1] - '1') : 0;
        if (isMark && index < phrase.arguments.size()) {
            text += std::visit(English{}, phrase.arguments[index]);
            ++at;
        } else {
            text += *at;
        }
    }
    return text;
}

} // namespace halfcup::season
