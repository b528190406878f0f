// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace halfcup::exchange {

/// How the letters of a text file are written as bytes.
enum class TextCode {
    Utf8,
    Utf16,      // told by its byte order mark
    Windows1252 // guessed, because it is not UTF-8: what spreadsheets of western Europe and America write
};

struct DecodedText {
    std::string utf8; // without a byte order mark; line ends as they were, a lone CR as LF
    TextCode code = TextCode::Utf8;
};

/// The text of a file. A byte order mark decides; without one, what is valid UTF-8 is UTF-8, and all else is
/// taken as Windows-1252 (table: WHATWG Encoding Standard, index windows-1252; the five bytes that it leaves
/// open become the control characters of their number). Throws TableError: a zero byte, UTF-16 that is
/// broken, a spreadsheet's own file (a ZIP archive) in place of a text.
[[nodiscard]] DecodedText decodedText(std::string bytes);

} // namespace halfcup::exchange
