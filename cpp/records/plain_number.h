// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>
#include <system_error>

namespace halfcup::records {

struct PlainNumber {
    double value = 0;
    std::errc error{}; // invalid_argument, or result_out_of_range: too large or too small for a double

    [[nodiscard]] bool isRead() const { return error == std::errc(); }
};

/// Reads the whole text as a decimal number, to the nearest double: digits with or without one point, a minus
/// before them or not. No exponent, no names (inf), no spaces; the same in every locale. Never throws for
/// what the text holds.
[[nodiscard]] PlainNumber readPlainNumber(std::string_view text);

} // namespace halfcup::records
