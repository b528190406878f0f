// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/csv_writer.h"
#include "exchange/exchange_line.h"

#include <memory>
#include <string>

class QCryptographicHash;

namespace halfcup::exchange {

/// Writes an exchange file, or what is added to the end of one, line by line: header, parts, end. Holds one
/// line.
class ExchangeWriter {
public:
    ExchangeWriter(ByteSink sink, const ExchangeHeader& header);
    ~ExchangeWriter();

    /// One line, or several where the record has more to it than a line may hold.
    void part(const records::RecordPart& part);
    /// The last line. Without it a reader knows that the file was cut.
    void end();

    [[nodiscard]] std::int64_t lines() const { return m_lines; }

private:
    void line(std::string text);

    ByteSink m_sink;
    std::unique_ptr<QCryptographicHash> m_hash;
    std::int64_t m_lines = 0;
};

/// The ending of exchange files, with its dot.
inline constexpr const char* exchangeEnding = ".halfcup";

} // namespace halfcup::exchange
