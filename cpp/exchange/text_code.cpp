// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/text_code.h"

#include "exchange/table_sentence.h"

#include <QStringDecoder>

#include <algorithm>
#include <array>

namespace halfcup::exchange {

namespace {

/// What the bytes 0x80 to 0x9F are in Windows-1252 (WHATWG Encoding Standard, index windows-1252).
constexpr std::array<char16_t, 32> upperControls{
    0x20AC, 0x0081, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0x008D, 0x017D, 0x008F, 0x0090, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x009D, 0x017E, 0x0178};

void appendUtf8(std::string& to, char16_t c) {
    if (c < 0x80) {
        to += static_cast<char>(c);
    } else if (c < 0x800) {
        to += static_cast<char>(0xC0 | (c >> 6));
        to += static_cast<char>(0x80 | (c & 0x3F));
    } else {
        to += static_cast<char>(0xE0 | (c >> 12));
        to += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
        to += static_cast<char>(0x80 | (c & 0x3F));
    }
}

std::string fromWindows1252(const std::string& bytes) {
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 8);
    for (const char each : bytes) {
        const auto byte = static_cast<unsigned char>(each);
        appendUtf8(text, byte >= 0x80 && byte < 0xA0 ? upperControls[byte - 0x80u] : char16_t{byte});
    }
    return text;
}

bool isUtf8(const std::string& bytes) {
    return QByteArrayView(bytes.data(), static_cast<qsizetype>(bytes.size())).isValidUtf8();
}

std::string fromUtf16(const std::string& bytes, QStringDecoder::Encoding encoding) {
    QStringDecoder decoder(encoding);
    const QString text = decoder(QByteArrayView(bytes.data() + 2, static_cast<qsizetype>(bytes.size()) - 2));
    if (decoder.hasError() || bytes.size() % 2 != 0)
        throw TableError({tableText("The file says that it is UTF-16, but its text is broken. Save it again "
                                    "as CSV in UTF-8."),
                          {}});
    return text.toStdString();
}

DecodedText decodedAny(std::string bytes) {
    if (bytes.starts_with("\xFF\xFE"))
        return {fromUtf16(bytes, QStringDecoder::Utf16LE), TextCode::Utf16};
    if (bytes.starts_with("\xFE\xFF"))
        return {fromUtf16(bytes, QStringDecoder::Utf16BE), TextCode::Utf16};
    if (bytes.starts_with("\xEF\xBB\xBF"))
        bytes.erase(0, 3);
    if (isUtf8(bytes))
        return {std::move(bytes), TextCode::Utf8};
    return {fromWindows1252(bytes), TextCode::Windows1252};
}

} // namespace

DecodedText decodedText(std::string bytes) {
    if (bytes.starts_with("PK\x03\x04"))
        throw TableError({tableText("This is a spreadsheet's own file. Save it there as CSV (text), and take "
                                    "that file."),
                          {}});
    DecodedText decoded = decodedAny(std::move(bytes));
    std::string& text = decoded.utf8;
    if (const std::size_t zero = text.find('\0'); zero != std::string::npos) {
        const auto line =
            1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(zero), '\n');
        throw TableError(
            {tableText("Line %1 has a zero byte, which no text has. This is not a table, or it is "
                       "damaged."),
             {std::to_string(line)}});
    }
    if (text.find('\n') == std::string::npos)
        std::ranges::replace(text, '\r', '\n'); // as very old computers wrote it
    return decoded;
}

} // namespace halfcup::exchange
