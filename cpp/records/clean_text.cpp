// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/clean_text.h"

#include <algorithm>

namespace halfcup::records {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD

bool isUnseen(char32_t point) {
    return (point < 0x20 && point != '\n' && point != '\t') || (point >= 0x7F && point < 0xA0) ||
           point == 0x061C || point == 0x200E || point == 0x200F || (point >= 0x202A && point <= 0x202E) ||
           (point >= 0x2066 && point <= 0x2069);
}

/// The length of the well-formed character at the start of text (The Unicode Standard, table 3-7); 0 where
/// there is none. Sets its code point.
std::size_t characterAt(std::string_view text, char32_t& point) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned first = byte(0);
    const std::size_t length = first < 0x80                    ? 1
                               : first >= 0xC2 && first < 0xE0 ? 2
                               : first >= 0xE0 && first < 0xF0 ? 3
                               : first >= 0xF0 && first < 0xF5 ? 4
                                                               : 0;
    if (length == 0 || text.size() < length)
        return 0;
    point = length == 1 ? first : first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0) != 0x80)
            return 0;
        point = (point << 6) | (byte(i) & 0x3F);
    }
    const bool overlong = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
    const bool noCharacter = (point >= 0xD800 && point < 0xE000) || point > 0x10FFFF;
    return overlong || noCharacter ? 0 : length;
}

bool isPlain(char c) {
    return static_cast<unsigned char>(c) >= 0x20 && static_cast<unsigned char>(c) < 0x7F;
}

} // namespace

std::string cleanText(std::string_view text) {
    if (std::ranges::all_of(text, isPlain))
        return std::string(text);
    std::string clean;
    clean.reserve(text.size());
    while (!text.empty()) {
        char32_t point = 0;
        const std::size_t length = characterAt(text, point);
        if (length == 0)
            clean += replacement;
        else if (!isUnseen(point))
            clean += text.substr(0, length);
        text.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return clean;
}

Value cleanValue(Value value) {
    if (auto* text = std::get_if<std::string>(&value))
        *text = cleanText(*text);
    return value;
}

} // namespace halfcup::records
