// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/record_id.h"

#include <cstdio>

namespace halfcup::records {

RecordId makeRecordId(std::int64_t utcMs, std::uint64_t chanceHigh, std::uint64_t chanceLow) {
    const std::uint64_t time = static_cast<std::uint64_t>(utcMs) & 0xFFFF'FFFF'FFFFULL;
    char text[40];
    const int length = std::snprintf(text, sizeof text, "%08x-%04x-%04x-%04x-%012llx",
                                     static_cast<unsigned>(time >> 16), static_cast<unsigned>(time & 0xFFFF),
                                     static_cast<unsigned>(0x7000 | (chanceHigh & 0x0FFF)),
                                     static_cast<unsigned>(0x8000 | ((chanceLow >> 48) & 0x3FFF)),
                                     static_cast<unsigned long long>(chanceLow & 0xFFFF'FFFF'FFFFULL));
    return {text, static_cast<std::size_t>(length)};
}

bool isRecordId(std::string_view text) {
    if (text.size() != 36)
        return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (i == 8 || i == 13 || i == 18 || i == 23) {
            if (c != '-')
                return false;
        } else if (!((c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'))) {
            return false;
        }
    }
    return text[14] == '7' && (text[19] == '8' || text[19] == '9' || text[19] == 'a' || text[19] == 'b');
}

std::int64_t madeAtUtcMs(std::string_view id) {
    if (!isRecordId(id))
        return -1;
    std::int64_t value = 0;
    for (std::size_t i = 0; i < 13; ++i) {
        if (i == 8)
            continue;
        const char c = id[i];
        value = value * 16 + (c <= '9' ? c - '0' : c - 'a' + 10);
    }
    return value;
}

} // namespace halfcup::records
