// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/csv_writer.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <iterator>
#include <utility>

namespace halfcup::exchange {

namespace {

/// What spreadsheets take for the beginning of a formula, or skip on the way to one; the last four are = + -
/// @ in full width (U+FF1D, U+FF0B, U+FF0D, U+FF20). After the OWASP page on CSV injection, from memory.
constexpr std::array<std::string_view, 11> formulaBegins{
    "=", "+", "-", "@", "\t", "\r", "\n", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};

bool looksLikeFormula(std::string_view value) {
    return std::ranges::any_of(formulaBegins,
                               [&](std::string_view begin) { return value.starts_with(begin); });
}

bool isUnwanted(char c) {
    return (static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\r' && c != '\n') || c == 0x7F;
}

} // namespace

CsvWriter::CsvWriter(ByteSink sink, CsvDialect dialect)
    : m_sink(std::move(sink))
    , m_dialect(dialect) {}

void CsvWriter::text(std::string_view value) {
    if (std::ranges::any_of(value, isUnwanted)) {
        std::string clean;
        std::ranges::remove_copy_if(value, std::back_inserter(clean), isUnwanted);
        return text(clean);
    }
    startCell();
    const bool defuse = looksLikeFormula(value);
    const char* const special = m_dialect == CsvDialect::Comma ? ",\"\r\n" : ";\"\r\n";
    if (value.find_first_of(special) == std::string_view::npos) {
        if (defuse)
            m_row += '\'';
        m_row += value;
        return;
    }
    m_row += defuse ? "\"'" : "\"";
    for (const char c : value) {
        if (c == '"')
            m_row += '"';
        m_row += c;
    }
    m_row += '"';
}

void CsvWriter::number(std::int64_t value) {
    raw(std::to_string(value));
}

void CsvWriter::number(double value) {
    if (!std::isfinite(value))
        return empty();
    std::array<char, 64> buffer;
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    raw({buffer.data(), written.ptr});
}

void CsvWriter::significant(double value, int digits) {
    if (!std::isfinite(value))
        return empty();
    std::array<char, 64> buffer;
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::general, std::clamp(digits, 1, 17));
    raw({buffer.data(), written.ptr});
}

void CsvWriter::decimals(double value, int count) {
    if (!std::isfinite(value))
        return empty();
    std::array<char, 384> buffer; // the largest double has 309 digits before the point
    const auto written = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                       std::chars_format::fixed, std::clamp(count, 0, 17));
    std::string_view cell(buffer.data(), written.ptr);
    if (cell.starts_with('-') && cell.find_first_of("123456789") == std::string_view::npos)
        cell.remove_prefix(1);
    raw(cell);
}

void CsvWriter::flag(bool value) {
    raw(value ? "yes" : "no");
}

void CsvWriter::empty() {
    startCell();
}

void CsvWriter::endRow() {
    m_row += "\r\n";
    if (m_dialect == CsvDialect::Semicolon && !m_anyRow)
        m_row.insert(0, "\xEF\xBB\xBF");
    m_anyRow = true;
    m_sink(m_row);
    m_row.clear();
    m_anyCell = false;
}

void CsvWriter::startCell() {
    if (m_anyCell)
        m_row += m_dialect == CsvDialect::Comma ? ',' : ';';
    m_anyCell = true;
}

void CsvWriter::raw(std::string_view value) {
    startCell();
    const std::size_t begin = m_row.size();
    m_row += value;
    if (m_dialect == CsvDialect::Semicolon)
        std::ranges::replace(m_row.begin() + static_cast<std::ptrdiff_t>(begin), m_row.end(), '.', ',');
}

} // namespace halfcup::exchange
