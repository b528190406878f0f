// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/csv_reader.h"

#include "exchange/table_sentence.h"

#include <algorithm>

namespace halfcup::exchange {

namespace {

constexpr const char* notClosed = tableText("a quotation mark is opened and not closed.");

std::string& nextField(CsvRow& row) {
    if (row.count == row.fields.size())
        row.fields.emplace_back();
    std::string& field = row.fields[row.count++];
    field.clear();
    return field;
}

} // namespace

bool CsvReader::nextLine(std::string& line) {
    if (!m_again.empty()) {
        line = std::move(m_again.front());
        m_again.pop_front();
    } else if (!std::getline(m_in, line)) {
        return false;
    }
    ++m_line;
    if (!m_began) {
        m_began = true;
        if (line.starts_with("\xEF\xBB\xBF"))
            line.erase(0, 3);
    }
    return true;
}

// Takes one more line of a row. `open`: going in, the last cell is still inside its quotation marks; coming
// out with false, it still is, and another line may close it. False and not open: this is no row.
bool CsvReader::split(const std::string& text, CsvRow& row, bool& open) const {
    bool inside = open;
    open = false;
    if (!inside)
        row.count = 0;
    // The CR of a CR LF end; inside a quoted cell it is part of the cell, which is then still open here.
    const std::size_t end = text.ends_with('\r') ? text.size() - 1 : text.size();
    std::size_t at = 0;
    while (true) {
        std::string& field = inside ? row.fields[row.count - 1] : nextField(row);
        if (inside || (at < end && text[at] == '"')) {
            for (at += inside ? 0 : 1;; ++at) {
                const std::size_t quote = text.find('"', at);
                if (quote == std::string::npos) {
                    field.append(text, at);
                    open = true;
                    row.complaint = notClosed;
                    return false;
                }
                field.append(text, at, quote - at);
                at = quote + 1;
                if (at >= text.size() || text[at] != '"')
                    break;
                field.push_back('"');
            }
            inside = false;
            if (at < end && text[at] != m_shape.separator) {
                row.complaint = tableText("there is text behind a closed quotation mark.");
                return false;
            }
        } else {
            const std::size_t stop = std::min(text.find(m_shape.separator, at), end);
            if (text.find('"', at) < stop) {
                row.complaint =
                    tableText("there is a quotation mark inside a cell that does not begin with one.");
                return false;
            }
            field.append(text, at, stop - at);
            at = stop;
        }
        if (at >= end)
            return true;
        ++at; // the separator
    }
}

bool CsvReader::next(CsvRow& row) {
    do {
        if (!nextLine(m_text))
            return false;
    } while ((m_text.empty() || m_text == "\r") && m_columns != 1);
    row.line = m_line;
    row.complaint.clear();
    bool open = false;
    bool good = split(m_text, row, open);
    if (!good && open) {
        // A cell with line breaks, or a quotation mark somebody forgot: read on and see.
        std::deque<std::string> ahead;
        std::size_t bytes = m_text.size();
        while (open && bytes < m_shape.mostRowBytes && nextLine(m_more)) {
            row.fields[row.count - 1].push_back('\n');
            bytes += m_more.size() + 1;
            ahead.push_back(m_more);
            row.complaint.clear();
            good = split(m_more, row, open);
        }
        if (!good) {
            row.complaint = notClosed;
            m_line -= ahead.size();
            m_again.insert(m_again.begin(), ahead.begin(), ahead.end());
        }
    }
    if (!good)
        row.count = 0;
    if (m_columns == 0)
        m_columns = row.count;
    return true;
}

} // namespace halfcup::exchange
