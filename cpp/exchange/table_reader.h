// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/table_sentence.h"
#include "exchange/text_code.h"

#include <QString>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace halfcup::exchange {

/// Limits of a table that is taken in; a phone has to hold it. All [own choice].
inline constexpr std::size_t mostTableBytes = std::size_t{64} << 20;
inline constexpr std::size_t mostTableColumns = 1'000;
inline constexpr std::size_t mostTableRows = 100'000;
inline constexpr std::size_t mostCellBytes = std::size_t{1} << 20;

/// One row below the names, its cells trimmed of blanks. All cells lie in one text, because a row of fifty
/// separate strings costs more than what is in them.
class TableRow {
public:
    explicit TableRow(std::size_t line)
        : m_line(line) {}

    [[nodiscard]] std::size_t line() const { return m_line; } // of the file, from 1
    [[nodiscard]] std::size_t count() const { return m_ends.size(); }
    [[nodiscard]] std::string_view cell(std::size_t i) const; // empty where the row has no such cell
    /// Why the row cannot be used: not as many cells as names, a quotation mark not closed, a cell too long.
    [[nodiscard]] const TableSentence& complaint() const { return m_complaint; }

    void add(std::string_view cell);
    void setComplaint(TableSentence complaint) { m_complaint = std::move(complaint); }

private:
    std::size_t m_line;
    std::string m_text;
    std::vector<std::uint32_t> m_ends;
    TableSentence m_complaint;
};

struct TextTable {
    TextCode code = TextCode::Utf8;
    char separator = ',';
    std::vector<std::string> names; // of the first row that is not blank; may be empty texts
    std::vector<TableRow> rows;     // blank rows, also those of nothing but separators, are left out
};

/// Takes CSV of any dialect: cells quoted as RFC 4180 has it; comma, semicolon or tab between them, found by
/// looking which of them cuts the first rows into equally many cells (a first line "sep=;" decides); UTF-8,
/// UTF-16 or Windows-1252 (text_code.h). Throws TableError with a sentence where the whole cannot be used:
/// larger than the limits above, empty, no row of names (a day stands in it), no table. Rows that cannot be
/// used are in the table with their line and complaint: nothing is dropped.
[[nodiscard]] TextTable readTable(std::string bytes);

/// The same of a file: nothing larger than the limit is read, and nothing but a plain file.
[[nodiscard]] TextTable readTableFile(const QString& path);

} // namespace halfcup::exchange
