// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The table a calculator reads: which column is which, and the cells of a row as numbers, counts and texts
// with every slip told in a sentence that names row and column.
//
// Rows are numbered as an editor shows lines: the header is 1. Columns may stand in any order. Columns the
// verb does not know are handed through. A cell that is empty or blank, and a column that is not there, mean
// the default. Errors: InputError for what makes the whole table unusable, RowError for one row.
#include "desk/csv_reader.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace halfcup::desk {

class InputError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};
class RowError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

struct Column {
    const char* name;
    const char* meaning; // for --help
    bool needed = false; // the header has to have it
};

// What a number in a cell may be. NaN is never allowed, infinity only where said.
struct Bounds {
    double low = 0;
    double high = 1e9;
    bool lowIncluded = true;
    bool infinityAllowed = false;
};

class Table {
public:
    // Reads the header. Throws InputError: nothing there, a needed column missing, a known column twice.
    Table(CsvReader& reader, std::vector<Column> columns);

    bool next(); // to the next row; false at the end

    std::size_t row() const { return m_row.line; }
    // Throws RowError where the row is malformed or has not as many cells as the header.
    void checkRow() const;

    bool has(std::size_t column) const;              // there and not blank
    std::string_view cell(std::size_t column) const; // trimmed; empty where the column is not there
    std::string text(std::size_t column) const;      // throws RowError where blank
    double number(std::size_t column, std::optional<double> byDefault, const Bounds& bounds) const;
    std::int64_t count(std::size_t column) const; // a whole number from 0 to 1e9
    // The raw cells of all known columns, to be compared with those of other rows. Not for malformed rows.
    void key(std::string& into) const;

    // Names and cells of the columns the verb does not know. Cells are empty for a malformed row.
    std::vector<std::string> otherNames() const;
    void others(std::vector<std::string>& cells) const;

    // "Row 3, column 2 (mites): " + what.
    [[noreturn]] void complain(std::size_t column, const std::string& what) const;
    [[noreturn]] void complain(const std::string& what) const;

private:
    CsvReader& m_reader;
    std::vector<Column> m_columns;
    std::vector<std::string> m_names;
    std::vector<std::optional<std::size_t>> m_places; // of each known column
    std::vector<std::size_t> m_others;
    CsvRow m_row;
};

// A cell's text for a sentence: in quotation marks, cut after 40 bytes, nothing that could break a line.
std::string shown(std::string_view text);

} // namespace halfcup::desk
