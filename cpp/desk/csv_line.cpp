// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/csv_line.h"

#include <array>
#include <charconv>
#include <cmath>

namespace halfcup::desk {

namespace {
constexpr int kDigits = 10;
}

std::string numberText(double number) {
    if (std::isnan(number))
        return {};
    if (std::isinf(number))
        return number > 0 ? "inf" : "-inf";
    std::array<char, 40> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), number,
                                   std::chars_format::general, kDigits);
    return std::string(buffer.data(), end.ptr);
}

void CsvLine::separate() {
    if (!m_empty)
        m_text.push_back(',');
    m_empty = false;
}

CsvLine& CsvLine::add(std::string_view text) {
    separate();
    if (text.find_first_of(",\"\r\n") == std::string_view::npos) {
        m_text.append(text);
        return *this;
    }
    m_text.push_back('"');
    for (const char c : text) {
        if (c == '"')
            m_text.push_back('"');
        m_text.push_back(c);
    }
    m_text.push_back('"');
    return *this;
}

CsvLine& CsvLine::add(double number) {
    separate();
    m_text.append(numberText(number));
    return *this;
}

CsvLine& CsvLine::add(long long number) {
    separate();
    m_text.append(std::to_string(number));
    return *this;
}

CsvLine& CsvLine::addEmpty(std::size_t cells) {
    for (std::size_t i = 0; i < cells; ++i)
        separate();
    return *this;
}

CsvLine& CsvLine::addReady(std::string_view cells) {
    separate();
    m_text.append(cells);
    return *this;
}

} // namespace halfcup::desk
