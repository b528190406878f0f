// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Reads CSV as RFC 4180 has it, one row at a time, so that a file of any length needs the memory of one row.
//
// Taken besides: a byte order mark in front, rows that end in LF or CR LF, a last row without an end. Blank
// lines count as lines but are no rows, except in a table of one column, where they are empty cells. A row
// that cannot be taken apart (a quotation mark that is not closed, or text after a closed one) comes out as
// malformed with a sentence, and reading goes on with the very next line: one slip must not swallow the file.
// A quoted cell may span lines up to kMostRowBytes; what is longer counts as not closed.
#include <cstddef>
#include <deque>
#include <istream>
#include <string>
#include <vector>

namespace halfcup::desk {

inline constexpr std::size_t kMostRowBytes = 1 << 16;

struct CsvRow {
    std::vector<std::string> fields; // the first `count` are the row's; more may be left over for reuse
    std::size_t count = 0;
    std::size_t line = 0;  // line of the file where the row begins, from 1: what an editor shows
    std::string complaint; // empty: a good row
};

class CsvReader {
public:
    explicit CsvReader(std::istream& in)
        : m_in(in) {}

    // False at the end of the file.
    bool next(CsvRow& row);

private:
    bool nextLine(std::string& line);
    bool split(const std::string& text, CsvRow& row, bool& open) const;

    std::istream& m_in;
    std::deque<std::string> m_again; // lines read ahead for a quoted cell and given back
    std::string m_text, m_more;
    std::size_t m_line = 0;
    std::size_t m_columns = 0; // of the first row
    bool m_began = false;
};

} // namespace halfcup::desk
