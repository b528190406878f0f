// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <compare>
#include <string_view>

namespace halfcup::season {

/// Order of labels as a person reads them: runs of digits count as numbers ("2" before "10", "B2" before
/// "B10"), capital and small letters of ASCII are alike. Texts are UTF-8; other letters go by code point.
/// Only equal texts are equal: "02" and "2" are told apart, the shorter first. Any length of digits; never
/// fails.
[[nodiscard]] std::strong_ordering naturalOrder(std::string_view left, std::string_view right);

} // namespace halfcup::season
