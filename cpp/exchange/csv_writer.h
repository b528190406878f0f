// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

namespace halfcup::exchange {

/// Takes the next bytes of a file. It does not say how it went: what is written into asks its owner.
using ByteSink = std::function<void(std::string_view)>;

/// How tables are written. Comma: RFC 4180, a point as decimal mark, UTF-8 without a byte order mark.
/// Semicolon: as spreadsheets expect them where the comma is the decimal mark: cells parted by semicolons,
/// decimal commas, and a byte order mark, without which some take UTF-8 for something older.
enum class CsvDialect { Comma, Semicolon };

/// Writes comma-separated values by RFC 4180: cells with a comma, quote or line break are quoted, quotes
/// doubled, rows end in CR LF. UTF-8. Holds one row in memory, then hands it to the sink.
///
/// Text cells are defused: a spreadsheet takes a cell that begins with = + - @ (also in full width), a tab or
/// a line break for a formula, so such a text gets an apostrophe before it. Control characters other than tab
/// and line breaks are left out: RFC 4180 has none, and a hidden one in front would hide a formula. Numbers
/// are left alone.
class CsvWriter {
public:
    explicit CsvWriter(ByteSink sink, CsvDialect dialect = CsvDialect::Comma);

    void text(std::string_view value);
    void number(std::int64_t value);
    /// The shortest decimal text that reads back as the same double. Not finite: an empty cell.
    void number(double value);
    /// Rounded to significant digits (1 to 17), for computed figures; trailing zeros are left out.
    void significant(double value, int digits);
    /// Rounded to so many decimals (0 to 17), all of them written; never "-0.00".
    void decimals(double value, int count);
    void flag(bool value); // "yes" or "no"
    void empty();          // not known
    void endRow();

private:
    void startCell();
    void raw(std::string_view value);

    ByteSink m_sink;
    CsvDialect m_dialect;
    std::string m_row;
    bool m_anyRow = false;
    bool m_anyCell = false;
};

} // namespace halfcup::exchange
