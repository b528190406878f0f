// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/csv_reader.h"

#include <algorithm>

namespace halfcup::desk {

namespace {

constexpr const char* kNotClosed = "a quotation mark is opened and not closed.";

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

// False with a complaint where the text is no row; `open`: it may become one with another line behind it.
bool CsvReader::split(const std::string& text, CsvRow& row, bool& open) const {
    row.count = 0;
    open = false;
    // The CR of a CR LF end; inside a quoted cell it is part of the cell, which is then still open here.
    const std::size_t end = text.ends_with('\r') ? text.size() - 1 : text.size();
    std::size_t at = 0;
    while (true) {
        std::string& field = nextField(row);
        if (at < end && text[at] == '"') {
            for (++at;; ++at) {
                const std::size_t quote = text.find('"', at);
                if (quote == std::string::npos) {
                    open = true;
                    row.complaint = kNotClosed;
                    return false;
                }
                field.append(text, at, quote - at);
                at = quote + 1;
                if (at >= text.size() || text[at] != '"')
                    break;
                field.push_back('"');
            }
            if (at < end && text[at] != ',') {
                row.complaint = "there is text behind a closed quotation mark.";
                return false;
            }
        } else {
            const std::size_t comma = std::min(text.find(',', at), end);
            if (text.find('"', at) < comma) {
                row.complaint = "there is a quotation mark inside a cell that does not begin with one.";
                return false;
            }
            field.append(text, at, comma - at);
            at = comma;
        }
        if (at >= end)
            return true;
        ++at; // the comma
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
        std::string text = m_text;
        while (open && text.size() < kMostRowBytes && nextLine(m_more)) {
            text.append(1, '\n').append(m_more);
            ahead.push_back(m_more);
            row.complaint.clear();
            good = split(text, row, open);
        }
        if (!good) {
            row.count = 0;
            row.complaint = kNotClosed;
            m_line -= ahead.size();
            m_again.insert(m_again.begin(), ahead.begin(), ahead.end());
        }
    } else if (!good) {
        row.count = 0;
    }
    if (m_columns == 0)
        m_columns = row.count;
    return true;
}

} // namespace halfcup::desk
