// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/forecast_text.h"

#include "records/plain_number.h"

#include <algorithm>
#include <optional>
#include <string>

namespace halfcup::season {

namespace {

constexpr std::size_t longestText = 400; // fourteen figures need a quarter of it

/// Texts between the marks that part figures.
std::vector<std::string> parts(std::string_view text) {
    // "24,26,27" is a list; "24,5 26,0" has decimal commas, because blanks part it already.
    const bool blanksPart = text.find_first_of(" ;\t\n") != std::string_view::npos;
    const bool commaBlank = text.find(", ") != std::string_view::npos;
    const bool commaParts = !blanksPart || commaBlank;
    std::vector<std::string> found{""};
    for (const char c : text) {
        const bool mark =
            c == ' ' || c == ';' || c == '\t' || c == '\n' || c == '\r' || (c == ',' && commaParts);
        if (!mark)
            found.back() += c == ',' ? '.' : c;
        else if (!found.back().empty())
            found.emplace_back();
    }
    if (found.back().empty())
        found.pop_back();
    return found;
}

std::optional<double> figureIn(std::string part, TemperatureUnit unit) {
    const auto ends = [&](std::string_view ending) {
        if (!part.ends_with(ending))
            return false;
        part.resize(part.size() - ending.size());
        return true;
    };
    if (ends("C") || ends("c"))
        unit = TemperatureUnit::Celsius;
    else if (ends("F") || ends("f"))
        unit = TemperatureUnit::Fahrenheit;
    static_cast<void>(ends("\xC2\xB0"));                                  // the degree sign
    for (const std::string_view minus : {"\xE2\x88\x92", "\xE2\x80\x93"}) // as typed on some keyboards
        if (part.starts_with(minus)) {
            part.erase(0, minus.size());
            part.insert(part.begin(), '-');
        }
    if (part.starts_with('+'))
        part.erase(0, 1);
    const records::PlainNumber number = records::readPlainNumber(part);
    if (!number.isRead() || !(number.value > -1000 && number.value < 1000))
        return std::nullopt;
    return toCelsius(number.value, unit);
}

} // namespace

double toCelsius(double value, TemperatureUnit unit) {
    return unit == TemperatureUnit::Celsius ? value : (value - 32) * 5 / 9;
}

double fromCelsius(double celsius, TemperatureUnit unit) {
    return unit == TemperatureUnit::Celsius ? celsius : celsius * 9 / 5 + 32;
}

std::variant<std::vector<double>, Phrase> readTemperatures(std::string_view text, TemperatureUnit unit) {
    if (text.size() > longestText)
        return Phrase{phraseText("That is too long for a forecast.")};
    std::vector<double> temperatures;
    for (const std::string& part : parts(text)) {
        const auto figure = figureIn(part, unit);
        if (!figure)
            return Phrase{phraseText("\"%1\" is no temperature. Type them in a row: 24 26 27."),
                          {Words{part}}};
        temperatures.push_back(*figure);
    }
    return temperatures;
}

} // namespace halfcup::season
