// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/derived_id.h"

#include <QCryptographicHash>

namespace halfcup::exchange {

records::RecordId derivedId(std::int64_t utcMs, const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts) {
        if (!text.empty())
            text += '\x1F';
        text += part;
    }
    const QByteArray hash = QCryptographicHash::hash(
        QByteArrayView(text.data(), static_cast<qsizetype>(text.size())), QCryptographicHash::Sha256);
    const auto number = [&](qsizetype from) {
        std::uint64_t value = 0;
        for (qsizetype i = from; i < from + 8; ++i)
            value = value << 8 | static_cast<unsigned char>(hash.at(i));
        return value;
    };
    return records::makeRecordId(utcMs, number(0), number(8));
}

} // namespace halfcup::exchange
