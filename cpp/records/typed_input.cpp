// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/typed_input.h"

#include "records/count.h"
#include "records/plain_number.h"

#include <string>

namespace halfcup::records {

namespace {

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
    while (!text.empty() && blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && blank(text.back()))
        text.remove_suffix(1);
    return text;
}

/// Why a number is beyond what a double holds: digits before the mark make it huge, none make it tiny.
InputProblem beyondDouble(std::string_view digits) {
    if (digits.front() == '-')
        return InputProblem::Negative;
    const std::size_t first = digits.find_first_of("123456789");
    return first < digits.find('.') ? InputProblem::TooLarge : InputProblem::TooSmall;
}

/// A count typed with a mark is refused even where nothing stands behind it: "1,000" is a thousand to one
/// keeper and one to another.
bool hasMark(std::string_view text) {
    return text.find_first_of(".,") != std::string_view::npos;
}

Checked<double> readBetween(std::string_view text, double smallest, double largest) {
    auto read = readNumber(text);
    if (const double* value = std::get_if<double>(&read)) {
        if (*value < 0)
            return InputProblem::Negative;
        if (*value < smallest)
            return InputProblem::TooSmall;
        if (*value > largest)
            return InputProblem::TooLarge;
    }
    return read;
}

} // namespace

Checked<double> readNumber(std::string_view text) {
    std::string digits(trimmed(text));
    if (digits.empty())
        return InputProblem::Empty;
    int marks = 0;
    for (std::size_t i = 0; i < digits.size(); ++i) {
        char& c = digits[i];
        if (c == ',' || c == '.') {
            c = '.';
            ++marks;
        } else if (!((c >= '0' && c <= '9') || (i == 0 && (c == '-' || c == '+')))) {
            return InputProblem::NotANumber;
        }
    }
    if (marks > 1) // "1,000.5" may mean two things, so it means nothing
        return InputProblem::NotANumber;
    if (digits.front() == '+')
        digits.erase(0, 1);
    const PlainNumber number = readPlainNumber(digits);
    if (number.error == std::errc::result_out_of_range)
        return beyondDouble(digits);
    if (!number.isRead())
        return InputProblem::NotANumber;
    return number.value;
}

Checked<std::int64_t> readCount(std::string_view text) {
    const auto read = readBetween(text, 0, static_cast<double>(largestCount));
    if (const auto* problem = std::get_if<InputProblem>(&read))
        return *problem;
    if (hasMark(text))
        return InputProblem::NotWhole;
    return static_cast<std::int64_t>(std::get<double>(read));
}

Checked<double> readBees(std::string_view text) {
    auto read = readBetween(text, fewestBees, mostBees);
    if (std::holds_alternative<double>(read) && hasMark(text))
        return InputProblem::NotWhole;
    return read;
}

Checked<double> readVolumeMl(std::string_view text) {
    return readBetween(text, smallestScoopMl, largestScoopMl);
}

Checked<double> readLine(std::string_view text) {
    auto read = readBetween(text, 0, largestLine);
    if (const double* value = std::get_if<double>(&read); value && *value == 0)
        return InputProblem::TooSmall;
    return read;
}

std::optional<InputProblem> checkName(std::string_view text) {
    const std::string_view name = trimmed(text);
    if (name.empty())
        return InputProblem::Empty;
    std::size_t characters = 0;
    for (const char c : name)
        characters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; // counts first bytes of UTF-8
    if (characters > longestName)
        return InputProblem::TooLong;
    return std::nullopt;
}

} // namespace halfcup::records
