// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/table.h"

#include "desk/csv_line.h"

#include <charconv>
#include <cmath>

namespace halfcup::desk {

namespace {

constexpr double kMostCounted = 1e9; // as in mites/checks.h: more is a slip of the keys

std::string_view trimmed(std::string_view text) {
    const auto from = text.find_first_not_of(" \t");
    return from == std::string_view::npos ? std::string_view()
                                          : text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

} // namespace

std::string shown(std::string_view text) {
    constexpr std::size_t kMost = 40;
    std::size_t cut = std::min(text.size(), kMost);
    while (cut < text.size() && cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0) == 0x80)
        --cut; // not inside a character of several bytes
    std::string result = "\"";
    for (const char c : text.substr(0, cut))
        result.push_back(static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? '?' : c == '"' ? '\'' : c);
    return result + (cut < text.size() ? "...\"" : "\"");
}

Table::Table(CsvReader& reader, std::vector<Column> columns)
    : m_reader(reader)
    , m_columns(std::move(columns)) {
    if (!m_reader.next(m_row))
        throw InputError("There is nothing to read: the first row has to name the columns.");
    if (!m_row.complaint.empty())
        throw InputError("Row " + std::to_string(m_row.line) +
                         ", which names the columns: " + m_row.complaint);
    m_places.resize(m_columns.size());
    for (std::size_t i = 0; i < m_row.count; ++i) {
        m_names.emplace_back(trimmed(m_row.fields[i]));
        bool known = false;
        for (std::size_t k = 0; k < m_columns.size() && !known; ++k) {
            if (m_names.back() != m_columns[k].name)
                continue;
            known = true;
            if (m_places[k])
                throw InputError("Columns " + std::to_string(*m_places[k] + 1) + " and " +
                                 std::to_string(i + 1) + " are both named \"" + m_columns[k].name +
                                 "\"; which one counts?");
            m_places[k] = i;
        }
        if (!known)
            m_others.push_back(i);
    }
    for (std::size_t k = 0; k < m_columns.size(); ++k)
        if (m_columns[k].needed && !m_places[k])
            throw InputError(std::string("There is no column \"") + m_columns[k].name +
                             "\". The first row has to name the columns; see --help for their names.");
}

bool Table::next() {
    return m_reader.next(m_row);
}

void Table::checkRow() const {
    if (!m_row.complaint.empty())
        complain(m_row.complaint);
    if (m_row.count != m_names.size())
        complain("it has " + std::to_string(m_row.count) + (m_row.count == 1 ? " cell" : " cells") +
                 ", the first row has " + std::to_string(m_names.size()) + ".");
}

void Table::complain(std::size_t column, const std::string& what) const {
    const std::string place =
        m_places[column]
            ? "column " + std::to_string(*m_places[column] + 1) + " (" + m_columns[column].name + ")"
            : std::string("column \"") + m_columns[column].name + "\", which is not there";
    throw RowError("Row " + std::to_string(row()) + ", " + place + ": " + what);
}

void Table::complain(const std::string& what) const {
    throw RowError("Row " + std::to_string(row()) + ": " + what);
}

std::string_view Table::cell(std::size_t column) const {
    const auto place = m_places[column];
    return place && *place < m_row.count ? trimmed(m_row.fields[*place]) : std::string_view();
}

bool Table::has(std::size_t column) const {
    return !cell(column).empty();
}

std::string Table::text(std::size_t column) const {
    if (!has(column))
        complain(column, "nothing is written here, and there is no default.");
    return std::string(cell(column));
}

double Table::number(std::size_t column, std::optional<double> byDefault, const Bounds& bounds) const {
    const std::string_view text = cell(column);
    if (text.empty()) {
        if (byDefault)
            return *byDefault;
        complain(column, "nothing is written here, and there is no default.");
    }
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error == std::errc::result_out_of_range)
        complain(column, shown(text) + " is too large or too small to be read.");
    if (error != std::errc() || end != text.data() + text.size()) {
        const bool comma = text.find_first_not_of("0123456789,-") == std::string_view::npos;
        complain(column, shown(text) + (comma ? " is not a number: the decimal mark is a point."
                                              : " is not a number."));
    }
    if (std::isnan(number))
        complain(column, shown(text) + " is not a number.");
    if (std::isinf(number)) {
        if (bounds.infinityAllowed && number > 0)
            return number;
        complain(column, shown(text) + " is not allowed here; a number is needed.");
    }
    if (number < bounds.low || (!bounds.lowIncluded && number == bounds.low))
        complain(column, shown(text) + " is too small: it has to be " +
                             (bounds.lowIncluded ? "at least " : "above ") + numberText(bounds.low) + ".");
    if (number > bounds.high)
        complain(column, shown(text) + " is too large: it can be " + numberText(bounds.high) + " at most.");
    return number;
}

std::int64_t Table::count(std::size_t column) const {
    const double number = this->number(column, std::nullopt, {0, kMostCounted, true, false});
    if (number != std::floor(number))
        complain(column, shown(cell(column)) + " is not a whole number.");
    return static_cast<std::int64_t>(number);
}

void Table::key(std::string& into) const {
    into.clear();
    for (const auto& place : m_places) {
        if (place)
            into.append(m_row.fields[*place]);
        into.push_back('\x1F');
    }
}

std::vector<std::string> Table::otherNames() const {
    std::vector<std::string> names;
    for (const std::size_t i : m_others)
        names.push_back(m_names[i]);
    return names;
}

void Table::others(std::vector<std::string>& cells) const {
    cells.resize(m_others.size());
    for (std::size_t i = 0; i < m_others.size(); ++i)
        cells[i] = m_others[i] < m_row.count ? m_row.fields[m_others[i]] : std::string();
}

} // namespace halfcup::desk
