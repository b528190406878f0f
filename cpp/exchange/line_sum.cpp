// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/line_sum.h"

#include <boost/crc.hpp>

#include <cstdio>

namespace halfcup::exchange {

std::string lineSum(std::string_view text) {
    boost::crc_32_type crc;
    crc.process_bytes(text.data(), text.size());
    char digits[9];
    std::snprintf(digits, sizeof digits, "%08x", static_cast<unsigned>(crc.checksum()));
    return digits;
}

} // namespace halfcup::exchange
