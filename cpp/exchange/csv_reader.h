// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <deque>
#include <istream>
#include <string>
#include <vector>

namespace halfcup::exchange {

/// What differs between files that call themselves CSV.
struct CsvShape {
    char separator = ',';
    /// A quoted cell may span lines up to so many bytes of its row; what is longer counts as not closed.
    std::size_t mostRowBytes = std::size_t{1} << 16;
};

struct CsvRow {
    std::vector<std::string> fields; // the first `count` are the row's; more may be left over for reuse
    std::size_t count = 0;
    std::size_t line = 0;  // line of the file where the row begins, from 1: what an editor shows
    std::string complaint; // empty: a good row; else a sentence marked with tableText()
};

/// Reads CSV as RFC 4180 has it, one row at a time, so that a file of any length needs the memory of one row.
/// UTF-8 or any other code that keeps ASCII as it is.
///
/// Taken besides: another separator, a byte order mark in front, rows that end in LF or CR LF, a last row
/// without an end. Blank lines count as lines but are no rows, except in a table of one column, where they
/// are empty cells. A row that cannot be taken apart (a quotation mark that is not closed, or text after a
/// closed one) comes out as malformed with a sentence, and reading goes on with the very next line: one slip
/// must not swallow the file.
class CsvReader {
public:
    explicit CsvReader(std::istream& in, CsvShape shape = {})
        : m_in(in)
        , m_shape(shape) {}

    /// False at the end of the file.
    bool next(CsvRow& row);

private:
    bool nextLine(std::string& line);
    bool split(const std::string& text, CsvRow& row, bool& open) const;

    std::istream& m_in;
    CsvShape m_shape;
    std::deque<std::string> m_again; // lines read ahead for a quoted cell and given back
    std::string m_text, m_more;
    std::size_t m_line = 0;
    std::size_t m_columns = 0; // of the first row
    bool m_began = false;
};

} // namespace halfcup::exchange
