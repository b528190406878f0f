// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// One row of CSV in the making, as RFC 4180 has it: cells with a comma, a quotation mark or a line break are
// quoted, rows end in CR LF. Numbers have ten digits and a point as decimal mark whatever the locale;
// infinity is "inf", what is not a number is an empty cell.
#include <string>
#include <string_view>

namespace halfcup::desk {

class CsvLine {
public:
    CsvLine& add(std::string_view text);
    CsvLine& add(double number);
    CsvLine& add(long long number);
    CsvLine& addEmpty(std::size_t cells);
    // Cells made by another CsvLine, not empty.
    CsvLine& addReady(std::string_view cells);
    const std::string& text() const { return m_text; }
    void clear() {
        m_text.clear();
        m_empty = true;
    }

private:
    void separate();
    std::string m_text;
    bool m_empty = true;
};

// Ten digits, as in a cell; for sentences.
std::string numberText(double number);

} // namespace halfcup::desk
